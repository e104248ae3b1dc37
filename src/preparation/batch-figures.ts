// The figures of a batch that its steps, its cautions and what to watch for are worded from.
import type { Quantity } from "../quantity";
import type { Account } from "./account";
import type { Completeness } from "./completeness";
import type { Crystallising } from "./crystallising";
import type { DissolvingHeat } from "./dissolving-heat";
import type { Feed } from "./feed";
import type { Heat } from "./heat";
import type { Isolation } from "./isolation";
import type { Pace } from "./pace";
import type { GasEvolved, Vessel } from "./vessel";
import type { Waste } from "./waste";

/** Figures of a batch that its words are made from. */
export interface BatchFigures {
  readonly materialBalance: Account;
  readonly product: {
    readonly formula: string;
    readonly name: string;
    readonly amount: Quantity<"amount of substance">;
    readonly theoreticalYield: Quantity<"mass">;
  };
  readonly feeds: readonly Feed[];
  readonly isolation: Isolation;
  readonly gas: readonly GasEvolved[];
  readonly vessel: Vessel | undefined;
  /** How fast to add; undefined where no gas is given off. */
  readonly additionRate: Pace | undefined;
  readonly heat: Heat;
  /** Of each feed that is dissolved, before anything is mixed. */
  readonly dissolvingHeat: readonly DissolvingHeat[];
  /** For a product that stays in the liquor; undefined for others. */
  readonly crystallising: Crystallising | undefined;
  /** For a product that precipitates; undefined for one that crystallises. */
  readonly completeness: Completeness | undefined;
  readonly waste: Waste;
}

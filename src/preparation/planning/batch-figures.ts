// The figures of a batch that its steps, its cautions and what to watch for are worded from.
import type { Quantity } from "../../quantity";
import type { Completeness } from "../procedure/completeness";
import type { Crystallising } from "../procedure/crystallising";
import type { Feed } from "../procedure/feed";
import type { Isolation } from "../procedure/isolation";
import type { Account } from "../reaction/account";
import type { DissolvingHeat } from "../reaction/dissolving-heat";
import type { Heat } from "../reaction/heat";
import type { Waste } from "../safety/waste";
import type { Pace } from "./pace";
import type { GasEvolved, Vessel } from "./vessel";

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

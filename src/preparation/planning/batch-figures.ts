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
  /** What was put in, what reacts and what is left, in moles and in grams. */
  readonly materialBalance: Account;
  /** The product in the form that was asked for, and how much of it the limiting material can give. */
  readonly product: {
    readonly formula: string;
    readonly key: string;
    readonly name: string;
    readonly amount: Quantity<"amount of substance">;
    readonly theoreticalYield: Quantity<"mass">;
    /** The most of it, where acid of the liquor is counted as taking its full share of the metal that makes the product; undefined for no more than the theory. */
    readonly most: Quantity<"mass"> | undefined;
    /** Colour and kind of the solid by the registry, such as `pale green`; undefined where they are not known. */
    readonly looks: string | undefined;
  };
  /** How each material goes in: dissolved in how much water, diluted, or as it is. */
  readonly feeds: readonly Feed[];
  /** How the product leaves the liquor, and why so. */
  readonly isolation: Isolation;
  /** Gases that are given off; empty where there are none. */
  readonly gas: readonly GasEvolved[];
  /** What has to fit into the vessel, and the smallest that will do; undefined where no liquid is known. */
  readonly vessel: Vessel | undefined;
  /** How fast to add; undefined where no gas is given off. */
  readonly additionRate: Pace | undefined;
  /** Heat of the reaction and the rise in temperature that it may cause; of a metal that goes through lye that of its first stage. */
  readonly heat: Heat;
  /** Of each feed that is dissolved, before anything is mixed. */
  readonly dissolvingHeat: readonly DissolvingHeat[];
  /** For a product that stays in the liquor; undefined for others. */
  readonly crystallising: Crystallising | undefined;
  /** For a product that precipitates; undefined for one that crystallises. */
  readonly completeness: Completeness | undefined;
  /** Alcohol that the steps take, or may take, and that no pack of the plan brings; undefined for none. */
  readonly alcohol: Quantity<"volume"> | undefined;
  /** What is left over, by vessel, and how it is made harmless. */
  readonly waste: Waste;
}

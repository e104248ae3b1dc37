// What is said of a reaction before anybody weighs anything: does it go, how far, what forms in its place, and why.
import type { SolidsAllowed } from "../../aqueous";
import type { Quantity } from "../../quantity";
import type { SourceKey } from "../data/sources";

/** How a reaction fares. */
export type FeasibilityVerdict = "goes" | "goes in part" | "another solid forms" | "does not go" | "unknown";

/** What a reason is about. */
export type FeasibilityCode =
  /** The equilibrium of the whole mixture. */
  | "equilibrium"
  /** The same with the carbon dioxide kept, or gone. */
  | "carbon-dioxide-kept"
  | "carbon-dioxide-gone"
  /** The solid as it is after standing. */
  | "aged"
  /** Both sides of the doubt of a constant. */
  | "doubt"
  /** A second solid that no washing removes, or one in place of the product. */
  | "second-solid"
  | "another-solid"
  /** A solid stays what it was. */
  | "stays"
  /** Acid that the reaction sets free holds the product back. */
  | "acid-holds-back"
  /** An excess takes the product back, or makes another solid of it. */
  | "redissolves"
  | "excess"
  /** The acid of the product is stronger than the one put in. */
  | "acid-strength"
  /** One sparingly soluble solid into another: the constant, and the excess it asks for. */
  | "solid-to-solid"
  /** The compound does not exist in water. */
  | "not-in-water"
  /** A salt of an acid cation and a weak acid. */
  | "hydrolysis"
  /** A salt that no bench gets as a solid. */
  | "only-in-solution"
  /** Potentials forbid it, or two of the things react with each other first. */
  | "potentials"
  | "redox-partners"
  /** Acid takes an anion apart. */
  | "apart-in-acid"
  /** No water carries them to each other: they meet in fire or in a melt, which no plan includes. */
  | "only-by-fire"
  /** A metal, oxide or solid that its own coat protects, or that acids leave alone. */
  | "passive"
  | "attacks-water"
  | "coats"
  | "solid-excess"
  | "fired-oxide"
  /** Which salt of a liquor crystallises first. */
  | "salt-pair"
  | "double-salt"
  /** What heat does by the table of thermal steps. */
  | "thermal"
  /** Figures are for another amount of water than planned. */
  | "water"
  /** What is missing. */
  | "missing";

/** Why, with the figures it rests on. */
export interface FeasibilityReason {
  /** What the reason is about, for programs. */
  readonly code: FeasibilityCode;
  /** One sentence for a person to read. */
  readonly text: string;
  /** Figures behind the text; empty where there are none. */
  readonly numbers: readonly Quantity[];
  /** What the reason rests on, in words. */
  readonly source: string;
}

/** A solid that stands at the end. */
export interface FormedSolid {
  /** As printed, crystal water included. */
  readonly formula: string;
  /** The same in the one spelling of `canonicalFormula`: what rows are joined by. */
  readonly key: string;
  /** In formula units. */
  readonly amount: Quantity<"amount of substance">;
  /** Dry, crystal water included. */
  readonly mass: Quantity<"mass">;
  /** Part of its metal that is in it: 1 for all that was put in. */
  readonly share: Quantity<"number">;
}

/** Does it go? */
export interface Feasibility {
  /** In a word or a few: does it go, and how far. */
  readonly verdict: FeasibilityVerdict;
  /** Part of the theoretical yield that forms; undefined where no figure can be had. */
  readonly share?: Quantity<"number"> | undefined;
  /** What stands at the end, most first; the product itself among it. */
  readonly solids: readonly FormedSolid[];
  /** Each with its figures and what it rests on. */
  readonly reasons: readonly FeasibilityReason[];
}

/** A number of a reason before it is made into a quantity. */
export interface Figure {
  readonly value: number;
  readonly unit: string;
  readonly label: string;
}

/** A reason as a judge gives it. */
export interface Reason {
  readonly code: FeasibilityCode;
  readonly text: string;
  readonly figures?: readonly Figure[];
  readonly source: SourceKey | "constants";
  /** What takes the acid that keeps a product dissolved: mol for one mole of product, the pH to stop at, and the share that stands then. */
  readonly base?:
    | {
        readonly formula: string;
        readonly called: string;
        readonly moles: number;
        readonly pH: number;
        readonly share: number;
      }
    | undefined;
  /** What a liquor gives in figures of this judge: a batch that says it itself does without. */
  readonly isCrop?: true;
}

/** A solid as a judge gives it, for the whole batch. */
export interface Solid {
  readonly formula: string;
  readonly moles: number;
  readonly share: number;
}

/** The beaker a ruling on a solid rests on: its figures, with their uncertainty, are made from it when looked at. */
export interface Basis {
  readonly pours: readonly { readonly formula: string; readonly moles: number }[];
  /** kg */
  readonly water: number;
  readonly carbonDioxide: "kept" | "leaves";
  readonly solids: SolidsAllowed;
  readonly celsius: number;
  /** Formula units of the product in one of each solid; solids that are none are left out. */
  readonly units: ReadonlyMap<string, number>;
}

/** What a judge says. */
export interface Ruling {
  readonly basis?: Basis | undefined;
  readonly verdict: FeasibilityVerdict;
  readonly share?: number | undefined;
  readonly solids: readonly Solid[];
  readonly reasons: readonly Reason[];
}

/** Codes by which a plan that does not go is known and meant: the error's own, and its last part. */
export const DOES_NOT_GO = ["does-not-go", "plan.does-not-go"] as const;

// A route as it is handed out: its steps, what it takes, what it costs, how it ranks, and the trial that comes first.
import type { TemperatureLike } from "../amount";
import type { BalancedEquation } from "../equation";
import type { RecordHead } from "../foundation/record";
import type { Plan, ShelfMaterial } from "../preparation";
import type { PriceDimension, Quantity, QuantityLike, UnitPriceDimension } from "../quantity";
import type { FamilyCode } from "./data/families";
import type { TrialEndCode } from "./endings";
import type { RouteEvidence } from "./evidence";
import type { Margin } from "./margin";
import type { RouteReason } from "./reason";
import type { TrialRecord } from "./trial-read";

/** What a route is ranked by. */
export interface RankParts {
  /** Tried here or published 0, same kind with this metal 0.5, computed only 1; of the weakest step. */
  readonly evidence: number;
  /** The nearest margin: 0 far from failing. */
  readonly margin: number;
  /** Number of steps, and how sure their kinds are. */
  readonly steps: number;
  /** Part of the theory that is lost over all steps. */
  readonly yield: number;
  /** Money for a gram; a price that is not known counts as half. */
  readonly cost: number;
  /** What is in excess and cannot be removed. */
  readonly excess: number;
  /** Other solids beside the product, salts that washing leaves in what is taken on, and salts that no washing takes. */
  readonly purity: number;
  /** Gases by what they ask for, and by their volume for a gram of the target; the worst of them. */
  readonly gas: number;
  /** Metals in the waste that must be precipitated. */
  readonly waste: number;
  /** Oven, furnace, kiln. */
  readonly equipment: number;
  /** Settling and drying are a day, crystals several. */
  readonly time: number;
  /** Wash water for a gram of the target, over all steps; half where a wash could not be planned. */
  readonly washing: number;
  /** Precipitates that keep much liquor and adsorb alkali: hydroxides and other slimes 1, basic carbonates 0.5; of the worst step. */
  readonly gel: number;
  /** How little product 100 g of the dearest jar, by its price per gram, give; half where a price or a mass is not known. */
  readonly dearest: number;
}

/** A place. */
export interface Rank {
  /** Sum of the parts, each with its weight; the smallest is the best. */
  readonly score: number;
  /** Each part by itself, before the weights. */
  readonly parts: RankParts;
}

/** The trial of one step. */
export interface TrialStep {
  /** For two grams of its product. */
  readonly plan: Plan;
  /** What should be seen: colour, gas, mass, pH. */
  readonly expect: readonly string[];
  /** What ends the route here, in words. */
  readonly ends: readonly string[];
  /** The same as codes, in the same order, to give back with the run as `{ run, ended }`. */
  readonly endCodes: readonly TrialEndCode[];
  /** What was tried of it already, a line for each trial that was given. */
  readonly tried: readonly string[];
}

/** The trial of a route. */
export interface Trial {
  /** Mass of each product that the trial is for. */
  readonly product: Quantity<"mass">;
  /** One for each step of the route. */
  readonly steps: readonly TrialStep[];
}

/** What stands dry at the end of a step. */
export interface StepPurity {
  /** Mass fraction of the product: as titrated in a trial, else by the contents of the last vessel. */
  readonly assay: Quantity<"number">;
  /** What else is known to be in it, by mass of the whole, the most first. */
  readonly also: readonly { readonly formula: string; readonly key: string; readonly share: Quantity<"number"> }[];
}

/** One step of a route. */
export interface RouteStep {
  /** The kind of reaction, and its name in words. */
  readonly family: FamilyCode;
  /** The kind of reaction in words. */
  readonly name: string;
  /** As balanced; its coefficients are the smallest whole numbers. */
  readonly equation: BalancedEquation;
  /** What it makes, in the form that stands. */
  readonly product: string;
  /** The same in the one spelling of `canonicalFormula`: what rows are joined by. */
  readonly key: string;
  /** Whether it is brought out, or stays dissolved and is used as the liquor it is in. */
  readonly kept: "solid" | "liquor";
  /** For as much as the next step, or the wanted mass, asks of it. */
  readonly plan: Plan;
  /** Part of the theory that comes out, by the plan's own work and usual losses. */
  readonly yield: Quantity<"number">;
  /**
   * What stands dry at the end by the plan: how much of it is the product, and what else is in it; undefined of a liquor. What an
   * intermediate brings is in the quantities of the next plan.
   */
  readonly purity: StepPurity | undefined;
  /** How well the step is vouched for. */
  readonly evidence: RouteEvidence;
  /** How far it is from failing, the nearest first. */
  readonly margins: readonly Margin[];
  /** Why it goes, with figures and sources. */
  readonly reasons: readonly RouteReason[];
  /** Whether what is in excess can be got rid of, and how. */
  readonly excess: "none" | "washes out" | "evaporates" | "filtered off" | "stays";
}

/** One line of the list of what a route takes from the shelf. */
export interface RouteMaterial {
  /** Name that the person gives it on the shelf. */
  readonly material: string;
  /** As printed, crystal water included. */
  readonly form: string;
  /** The same in the one spelling of `canonicalFormula`: what rows are joined by. */
  readonly key: string;
  /** Over all steps. */
  readonly portion: Quantity<"mass"> | Quantity<"volume">;
  /** Steps that use it, from 1. */
  readonly steps: readonly number[];
}

/** A jar that would do in place of one that the route takes. */
export interface Swap {
  /** The jar that the route takes. */
  readonly instead: string;
  /** The jar that would do in its place. */
  readonly use: string;
}

/** A way from the shelf to the target. */
export interface Route {
  /** What marks it among records. */
  readonly kind: "route";
  /** Formula of what is made, as printed. */
  readonly target: string;
  /** The same in the one spelling of `canonicalFormula`: what rows are joined by. */
  readonly key: string;
  /** In the order of the work. */
  readonly steps: readonly RouteStep[];
  /** Mass of the target that the plans are for. */
  readonly wanted: Quantity<"mass">;
  /** Part of the theory over all steps, on the longest way. */
  readonly yield: Quantity<"number">;
  /** The most that the jars give, where all say how much there is. */
  readonly most: Quantity<"mass"> | undefined;
  /** All materials of all steps, with their amounts. */
  readonly inventory: readonly RouteMaterial[];
  /** What the materials cost together. */
  readonly cost: {
    readonly total: Quantity<PriceDimension> | undefined;
    readonly perGram: Quantity<UnitPriceDimension> | undefined;
    readonly missing: readonly string[];
  };
  /** What the work needs beside vessels, filter and balance. */
  readonly equipment: readonly string[];
  /** Gas given off, by step. */
  readonly gas: readonly {
    readonly formula: string;
    readonly key: string;
    readonly volume: Quantity<"volume">;
    readonly hood: boolean;
    readonly step: number;
  }[];
  /** Liquor that is left, and the metals in it. */
  readonly waste: { readonly volume: Quantity<"volume"> | undefined; readonly metals: readonly string[] };
  /** The weakest of all steps. */
  readonly evidence: RouteEvidence;
  /** The nearest of all steps. */
  readonly margin: Margin;
  /** Other jars of the same kind: any soluble carbonate, any strong acid. */
  readonly swaps: readonly Swap[];
  /** Why it stands where it does among the routes. */
  readonly rank: Rank;
  /** Two grams first: what to see, and what ends the route. */
  readonly trial: Trial;
  /** What could not be computed. */
  readonly unknown: readonly string[];
  /** The steps, the evidence and the reasons, a line each. */
  toString(): string;
  /** Plain data, as `fromJSON` reads it back. */
  toJSON(): RouteRecord;
}

/** One step of a route as plain data: the kind of reaction, what it makes, and what from, in the order of the kind. */
export interface RouteStepRecord {
  /** Code of the kind of reaction. */
  readonly family: FamilyCode;
  /** What the step makes, in the form that stands. */
  readonly product: string;
  /** As the shelf had them, in the order of the kind. */
  readonly materials: readonly ShelfMaterial[];
  /** Its product stays dissolved, and is used as the liquor it is in. */
  readonly kept?: "liquor";
}

/** A route as plain data, from which `routeFromJSON` makes its plans again. */
export interface RouteRecord extends RecordHead<"route"> {
  /** As printed, with subscripts; crystal water included. */
  readonly target: string;
  /** As `quantity` reads it. */
  readonly wanted: QuantityLike<"mass">;
  /** Of room and solutions; absent where it was not given. */
  readonly temperature?: TemperatureLike;
  /** In the order of the work. */
  readonly steps: readonly RouteStepRecord[];
  /** Other jars of the same kind that would do. */
  readonly swaps: readonly Swap[];
  /** As it was when the record was written. */
  readonly rank: Rank;
  /** Trials of its steps, where there were any. */
  readonly trials?: readonly TrialRecord[];
  /** The record of the facts that it was found with, where there were any. */
  readonly facts?: object;
}

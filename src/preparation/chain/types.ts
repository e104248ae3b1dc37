// A chain of preparations: what is asked, and what it comes to.

import type { OverallEquation } from "../../equation";
import type { Facts } from "../../foundation/facts";
import type { RecordHead } from "../../foundation/record";
import type { PriceDimension, Quantity, QuantityLike, UnitPriceDimension } from "../../quantity";
import type { Plan } from "../plan";
import type { Figure, MovedFigure } from "../planning/figures";
import type { PlanRequest, Scale } from "../request/request";
import type { CostLine } from "../shelf/cost";

/** One step: a preparation without its scale, which follows from the step after it. */
export interface ChainStep extends Omit<PlanRequest, "scale"> {
  /** Yield assumed; 100 % unless given. */
  readonly expectedYield?: QuantityLike<"number" | "mass fraction", `${number} %`> | undefined;
}

/** A chain to plan. */
export interface ChainRequest {
  /** Facts of the caller's own, for all steps that bring none. */
  readonly facts?: Facts | undefined;
  /** First to last. The product of a step is a material of the next, under its `productName` (its formula unless given). */
  readonly steps: readonly ChainStep[];
  /** Mass or amount wanted of the last product. */
  readonly wanted: Extract<Scale, { product: unknown }>["product"];
}

/** One line of the shopping list. */
export interface ChainMaterial {
  /** Name that the person gives it on the shelf. */
  readonly material: string;
  /** As printed, crystal water included. */
  readonly form: string;
  /** Over all steps. */
  readonly portion: Quantity<"mass"> | Quantity<"volume">;
  /** Steps that use it, from 1. */
  readonly steps: readonly number[];
}

/** A chain, planned. */
export interface Chain {
  /** What marks it among records. */
  readonly kind: "chain";
  /** What was asked, copied and frozen. */
  readonly request: ChainRequest;
  /** One plan for each step, first step first. */
  readonly plans: readonly Plan[];
  /** Of all steps together; or why there is none. */
  readonly overall: OverallEquation | undefined;
  /** Why there is no overall equation. */
  readonly overallMissing: string | undefined;
  /** What must be on the shelf; what one step makes for the next is not in it. */
  readonly inventory: readonly ChainMaterial[];
  /** What all steps together cost. */
  readonly cost: {
    readonly lines: readonly CostLine[];
    readonly total: Quantity<PriceDimension> | undefined;
    /** For each gram of the last product at the assumed yields. */
    readonly perGram: Quantity<UnitPriceDimension> | undefined;
    readonly missing: readonly string[];
  };
  /** Mass of each product at the assumed yields. */
  readonly expected: readonly Quantity<"mass">[];
  /** For a chain that was read back: its figures that this release of the library computes otherwise. */
  readonly moved: readonly MovedFigure[];
  /** The figures of the chain as plain data. */
  figures(): Figure[];
  /** What is made, in one line. */
  toString(): string;
  /** Plain data, as `fromJSON` reads it back. */
  toJSON(): ChainRecord;
}

/** A chain as plain data: the request it was made from, and its figures as they were then. */
export interface ChainRecord extends RecordHead<"chain"> {
  /** The request that makes the chain again. */
  readonly request: ChainRequest;
  /** As they were when the record was written. */
  readonly figures?: readonly Figure[];
}

// What a quantity looks like from outside, and everything that is accepted where one is wanted.
import type { Facts } from "../../foundation/facts";
import type { FormatOptions } from "../text/format-options";
import type { Distribution } from "../text/read";
import type { DimensionOf, Unchecked, UnitDimension } from "../text/text";
import type { Naming, Node } from "./graph";
import type { QuantityRecord } from "./json";
import type { NumberLike } from "./read-number";
import type { Decimal } from "./real";

/** The brand carries the graph node, so that another loaded copy of the library can compute with it. */
export const BRAND: unique symbol = /* @__PURE__ */ Symbol.for("preparative.quantity/1");

/**
 * A magnitude with a unit. Made by `quantity(...)`; `D` is the name of its dimension; `any` where only the run tells it, as
 * of a product or a quotient, and such a value is checked where it is used.
 *
 * @category Quantities
 * @example
 * quantity("250.0 g").in("kg").toString() // => "0.25"
 */
// biome-ignore lint/suspicious/noExplicitAny: a computed quantity must be assignable to any dimension; run time checks it
export interface Quantity<D extends string = any> {
  /** The value in its own unit: exact up to 60 digits, else to 40 significant digits. */
  readonly value: Decimal;
  /** Symbol of the unit it is shown in. */
  readonly unit: string;
  /** Name of what it measures: "mass", "amount of substance", "concentration". */
  readonly dimension: D;
  /** Combined standard uncertainty in `unit`, correlations included; undefined when no input carries one. */
  readonly standardUncertainty: Decimal | undefined;
  /** What the value is called, where somebody named it. */
  readonly symbol: string | undefined;
  /** What it is, in words. */
  readonly label: string | undefined;
  /** Key of the source of a figure that stands in a table. */
  readonly source: string | undefined;
  /** The value as a plain number in another unit. */
  in(unit: string): Decimal;
  /** The same quantity shown in another unit. */
  to(unit: string): Quantity<D>;
  /** The sum, in the unit of the first; what both depend on is counted once. */
  plus(other: QuantityLike): Quantity<D>;
  /** The difference, in the unit of the first: `x.minus(x)` is exactly 0. Of two temperatures it is a temperature difference. */
  minus(other: QuantityLike): Quantity;
  /** The product, with a quantity or a pure number. */
  times(other: QuantityLike | NumberLike): Quantity;
  /** The quotient, by a quantity or a pure number, not 0. */
  dividedBy(other: QuantityLike | NumberLike): Quantity;
  /** With the opposite sign. */
  negated(): Quantity<D>;
  /** Raised to a whole power between -12 and 12. */
  toThePower(exponent: number): Quantity;
  /** -1, 0 or 1: which is larger. */
  compare(other: QuantityLike): -1 | 0 | 1;
  /** Same dimension, same value, same standard uncertainty (to 30 digits). */
  equals(other: QuantityLike): boolean;
  /** Is the value above 0? */
  isPositive(): boolean;
  /** Is the value exactly 0? */
  isZero(): boolean;
  /** The same value under a name; named results become the steps of `explain`. */
  named(naming: Naming): Quantity<D>;
  /** As text, rounded once: by the uncertainty, or to the digits asked for. */
  format(options?: FormatOptions): string;
  /** Value, standard uncertainty and unit, rounded by the uncertainty. */
  toString(): string;
  /** Plain data, as `fromJSON` reads it back. */
  toJSON(): QuantityRecord;
  /** The value as a plain number, in another unit if one is named: for programs that plot or store it. */
  toNumber(unit?: string): number;
  /** Always an error: `a < b` and `a + b` would compare and join texts. Use `compare`, `plus` and `minus`. */
  valueOf(): never;
  /** @internal */
  readonly [BRAND]: Node;
}

/** A value with its unit apart, for callers who do not build text. */
export interface Measured<U extends string = string> {
  /** The figure, in the unit beside it. */
  readonly value: NumberLike;
  /** Unit of value and uncertainty. */
  readonly unit: U;
  /** Standard uncertainty in `unit`. */
  readonly standardUncertainty?: NumberLike | undefined;
  /** Half-width of a tolerance or limit in `unit`; `distribution` says how it spreads (rectangular unless given). */
  readonly halfWidth?: NumberLike | undefined;
  /** Smallest step of the display in `unit`: a rectangle of half that width, u = d/√12. */
  readonly readability?: NumberLike | undefined;
  /** Shape of the uncertainty; normal where nothing is said. */
  readonly distribution?: Distribution | undefined;
  /** Degrees of freedom of the standard uncertainty; infinite unless given. */
  readonly degreesOfFreedom?: number | undefined;
}

/**
 * The dimension of what stands for a quantity, as far as its type says it: of a literal text, of a quantity whose
 * dimension is known, of a unit. Unchecked where only the run says it.
 *
 * @category Quantities
 * @example
 * import type { DimensionIn } from "preparative";
 * const gram: DimensionIn<"1 g"> = "mass";
 * gram // => "mass"
 */
export type DimensionIn<Q> = Q extends string
  ? DimensionOf<Q>
  : Q extends { readonly dimension: infer D extends string }
    ? D
    : Q extends { readonly unit: infer U extends string }
      ? UnitDimension<U>
      : Unchecked;

/** Whatever stands for a quantity. */
// biome-ignore lint/suspicious/noExplicitAny: as for Quantity, a computed one must be assignable to any dimension
export type QuantityLike<D extends string = any, T extends string = string, U extends string = string> =
  | T
  | Quantity<D>
  | Measured<U>;

/** Details of an input that its text does not say. */
export interface InputNaming extends Naming {
  /** How the half-width of a ± in the text is meant, when the text does not say. */
  readonly distribution?: Distribution | undefined;
  /** Degrees of freedom of the standard uncertainty. */
  readonly degreesOfFreedom?: number | undefined;
  /**
   * The sign before the decimals of the text: a point unless given. With `","` a point between digits is refused, as a
   * comma is without it: it may group thousands.
   */
  readonly decimalSign?: "." | "," | undefined;
  /** Facts of the caller's own, whose units the text may have. */
  readonly facts?: Facts | undefined;
}

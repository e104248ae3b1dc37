import { type ErrorWithCode, errorClass } from "../foundation/error";

/** Codes of everything that can be refused in the quantity layer; docs/guide/errors.md tells cause and cure. */
export type QuantityErrorCode =
  | "quantity.not-a-number"
  | "quantity.not-a-quantity"
  | "quantity.decimal-comma"
  | "quantity.look-alike"
  | "quantity.unknown-unit"
  | "quantity.ambiguous-unit"
  | "quantity.wrong-dimension"
  | "quantity.division-by-zero"
  | "quantity.out-of-range"
  | "quantity.too-long"
  | "quantity.empty-interval"
  | "quantity.uncertainty"
  | "quantity.correlation"
  | "quantity.readings"
  | "quantity.format"
  | "quantity.unknown-option"
  | "quantity.bad-option"
  | "quantity.json";

/**
 * A quantity that cannot be read, converted or computed.
 *
 * @category Errors
 * @example
 * const outcome = tryQuantity("3 cups");
 * outcome.ok ? "" : outcome.error.code // => "quantity.ambiguous-unit"
 */
export class QuantityError extends /* @__PURE__ */ errorClass<QuantityErrorCode>("QuantityError") {}

/** What the details of a quantity's error hold, by code. */
export interface QuantityErrorDetails {
  /** A character that looks like another one. */
  readonly "quantity.look-alike": { readonly codePoint: string };
}

/**
 * Why a quantity was refused. Comparing `code` tells what `details` hold.
 *
 * @category Errors
 * @example
 * const outcome = tryQuantity("12.5 \u0433" as "12.5 g");
 * if (!outcome.ok && outcome.error.code === "quantity.look-alike") {
 *   outcome.error.details.codePoint // => "U+0433"
 * }
 */
export type QuantityRefusal = ErrorWithCode<QuantityErrorCode, QuantityErrorDetails>;

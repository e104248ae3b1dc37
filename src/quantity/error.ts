import { errorClass } from "../foundation/error";

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

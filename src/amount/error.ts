// Errors of the amount layer.
import { errorClass } from "../foundation/error";

/** Codes of everything that can be refused in the amount layer. */
export type AmountErrorCode =
  | "amount.not-positive"
  | "amount.negative"
  | "amount.fraction-above-one"
  | "amount.outside-range"
  | "amount.ambiguous-percent"
  | "amount.unknown-strength"
  | "amount.unknown-word"
  | "amount.missing-density"
  | "amount.missing-formula"
  | "amount.missing-equivalents"
  | "amount.no-equivalents"
  | "amount.missing-input"
  | "amount.too-many-inputs"
  | "amount.several-readings"
  | "amount.no-density-table"
  | "amount.no-virial-data"
  | "amount.not-possible"
  | "amount.glassware"
  | "amount.readings"
  | "amount.not-in-equation"
  | "amount.same-side"
  | "amount.too-long"
  | "amount.unknown-option"
  | "amount.bad-option";

/**
 * An amount, strength or gas question that cannot be answered as asked. Codes start with `amount.`.
 *
 * @category Errors
 * @example
 * const outcome = attempt(() => amountOf("-1 g", "NaCl"));
 * outcome.ok ? "" : outcome.error.code // => "amount.not-positive"
 */
export class AmountError extends /* @__PURE__ */ errorClass<AmountErrorCode>("AmountError") {}

/** What the details of an amount's error hold, by code. */
export interface AmountErrorDetails {
  /** A per cent that does not say of what. */
  readonly "amount.ambiguous-percent": { readonly readings: readonly string[] };
  /** No table of densities has the solute. */
  readonly "amount.no-density-table": { readonly solute: string };
}

// Errors of the equation layer.
import type { ElementErrorCode } from "../element";
import type { FormulaErrorCode, FormulaErrorDetails } from "../formula";
import { type ErrorWithCode, errorClass } from "../foundation/error";
import type { ImpossibleDetails, UnderdeterminedDetails, WrongCoefficientsDetails } from "./error-details";

/** Codes of everything that can be refused in the equation layer. */
export type EquationErrorCode =
  | "equation.not-an-equation"
  | "equation.not-a-formula"
  | "equation.not-a-record"
  | "equation.no-arrow"
  | "equation.several-arrows"
  | "equation.backward-arrow"
  | "equation.empty-term"
  | "equation.doubtful-plus"
  | "equation.bad-coefficient"
  | "equation.too-long"
  | "equation.too-many-species"
  | "equation.bad-option"
  | "equation.unknown-option"
  | "equation.impossible"
  | "equation.underdetermined"
  | "equation.wrong-coefficients"
  | "equation.unknown-species"
  | "equation.ambiguous-species"
  | "equation.bad-ratio"
  | "equation.only-spectators"
  | "equation.no-net-reaction"
  | "equation.steps-do-not-chain"
  | "equation.nothing-left"
  | "equation.too-many-reactions"
  | "equation.not-redox"
  | "equation.half-reaction-given"
  | "equation.halves-not-unique"
  | "equation.oxidation-state-unknown"
  | "equation.no-such-element"
  | "equation.bad-matrix";

/**
 * An equation that cannot be read, balanced or interpreted. Codes start with `equation.`.
 *
 * @category Errors
 * @example
 * const outcome = tryBalance("C + O2 -> CO + CO2");
 * outcome.ok ? "" : outcome.error.code // => "equation.underdetermined"
 */
export class EquationError extends /* @__PURE__ */ errorClass<EquationErrorCode>("EquationError") {}

/** What the details of an equation's error hold, by code. */
export interface EquationErrorDetails extends FormulaErrorDetails {
  /** No coefficients balance it. */
  readonly "equation.impossible": ImpossibleDetails;
  /** More than one reaction balances it. */
  readonly "equation.underdetermined": UnderdeterminedDetails;
  /** The coefficients as written do not balance it. */
  readonly "equation.wrong-coefficients": WrongCoefficientsDetails;
}

/**
 * Why an equation was refused: by its own layer or for a formula in it. Comparing `code` tells what `details` hold.
 *
 * @category Errors
 * @example
 * const outcome = tryBalance("C + O2 -> CO + CO2");
 * if (!outcome.ok && outcome.error.code === "equation.underdetermined") {
 *   outcome.error.details.elementary // => ["2 C + O2 -> 2 CO", "C + O2 -> CO2"]
 * }
 */
export type EquationRefusal = ErrorWithCode<
  EquationErrorCode | FormulaErrorCode | ElementErrorCode,
  EquationErrorDetails
>;

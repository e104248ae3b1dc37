// Errors of the formula layer.
import type { ElementErrorCode, ElementErrorDetails } from "../element";
import { type ErrorWithCode, errorClass } from "../foundation/error";

/** Codes of everything that can be refused in the formula layer. */
export type FormulaErrorCode =
  | "formula.not-text"
  | "formula.bad-option"
  | "formula.unknown-option"
  | "formula.empty"
  | "formula.unknown-symbol"
  | "formula.look-alike"
  | "formula.unexpected-character"
  | "formula.unexpected-space"
  | "formula.unclosed-bracket"
  | "formula.unmatched-bracket"
  | "formula.mismatched-bracket"
  | "formula.empty-group"
  | "formula.empty-part"
  | "formula.misplaced-number"
  | "formula.leading-zero"
  | "formula.zero-count"
  | "formula.count-too-large"
  | "formula.decimal-comma"
  | "formula.unknown-number"
  | "formula.misplaced-charge"
  | "formula.ambiguous-charge"
  | "formula.fractional-charge"
  | "formula.roman-numeral"
  | "formula.ambiguous-label"
  | "formula.wrong-atomic-number"
  | "formula.impossible-mass-number"
  | "formula.unknown-phase"
  | "formula.too-long"
  | "formula.too-deep"
  | "formula.no-standard-mass"
  | "formula.negative-count"
  | "formula.nothing-left"
  | "formula.bad-factor"
  | "formula.group-not-found"
  | "formula.no-composition"
  | "formula.mixed-composition"
  | "formula.not-positive"
  | "formula.over-hundred"
  | "formula.no-simple-ratio"
  | "formula.molar-mass-mismatch"
  | "formula.no-common-element"
  | "formula.ambiguous-basis";

/**
 * A formula that cannot be read, or a question it cannot answer. Codes start with `formula.`.
 *
 * @category Errors
 * @example
 * const outcome = tryParseFormula("NACL");
 * outcome.ok ? "" : outcome.error.code // => "formula.unknown-symbol"
 */
export class FormulaError extends /* @__PURE__ */ errorClass<FormulaErrorCode>("FormulaError") {}

/** What the details of a formula's error hold, by code. */
export interface FormulaErrorDetails extends ElementErrorDetails {
  /** A character that looks like an ASCII one. */
  readonly "formula.look-alike": { readonly codePoint: string; readonly ascii: string };
  /** Letters that are no element. */
  readonly "formula.unknown-symbol": { readonly written: string; readonly hint?: string };
  /** Ratios that no small whole numbers meet, and what comes nearest. */
  readonly "formula.no-simple-ratio": {
    readonly ratios: Readonly<Record<string, number>>;
    readonly candidates: readonly {
      readonly formula: string;
      readonly multiplier: number;
      readonly deviation: number;
      readonly residual: number;
    }[];
  };
}

/**
 * Why a formula was refused: by its own layer, or for an element in it. Comparing `code` tells what `details` hold.
 *
 * @category Errors
 * @example
 * const outcome = tryParseFormula("CuSo4");
 * if (!outcome.ok && outcome.error.code === "formula.unknown-symbol") {
 *   outcome.error.details.written // => "So"
 * }
 */
export type FormulaRefusal = ErrorWithCode<FormulaErrorCode | ElementErrorCode, FormulaErrorDetails>;

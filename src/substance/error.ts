// The one error class of this layer.
import type { ElementErrorCode } from "../element";
import type { FormulaErrorCode, FormulaErrorDetails } from "../formula";
import { type ErrorWithCode, errorClass } from "../foundation/error";
import type { QuantityErrorCode } from "../quantity";
import type { NameReading } from "./names/name-reading";

/** Codes a {@link SubstanceError} can carry. */
export type SubstanceErrorCode =
  | "substance.ambiguous-name"
  | "substance.bad-input"
  | "substance.no-name"
  | "substance.no-strength"
  | "substance.too-long"
  | "substance.unknown-code"
  | "substance.unknown-option"
  | "substance.unknown-name";

/**
 * A name, a formula or a shop word that cannot be answered.
 *
 * @category Errors
 * @example
 * new SubstanceError("substance.unknown-name", "no such name").code // => "substance.unknown-name"
 */
export class SubstanceError extends /* @__PURE__ */ errorClass<SubstanceErrorCode>("SubstanceError") {}

/** Longest name or formula this layer reads, in UTF-16 code units. */
const LONGEST_TEXT = 500;

/** The text trimmed, or an error: every entry point passes what it was given through here. */
export function readableText(value: unknown, what: string): string {
  if (typeof value !== "string")
    throw new SubstanceError(
      "substance.bad-input",
      `expected ${what} as text, got ${value === null ? "null" : typeof value}`,
    );
  const text = value.normalize("NFC").trim();
  if (text === "")
    throw new SubstanceError("substance.bad-input", `expected ${what}, got an empty text`, { input: value });
  if (text.length > LONGEST_TEXT)
    throw new SubstanceError("substance.too-long", `${what} longer than ${LONGEST_TEXT} characters`, {
      details: { length: text.length, limit: LONGEST_TEXT },
    });
  return text;
}

/** An error for an argument of the wrong kind. */
export function badInput(what: string, hint?: string): SubstanceError {
  return new SubstanceError("substance.bad-input", `expected ${what}`, hint === undefined ? {} : { hint });
}

/** What the details of a substance's error hold, by code. */
export interface SubstanceErrorDetails extends FormulaErrorDetails {
  /** A name that several substances go by. */
  readonly "substance.ambiguous-name": { readonly readings: readonly NameReading[] };
  /** A name that nothing reads: the nearest ones that something does. */
  readonly "substance.unknown-name": { readonly nearest: readonly string[] };
  /** A formula without a name: its parts. */
  readonly "substance.no-name": { readonly parts: readonly string[] };
}

/**
 * Why a name, a formula or a shop word was refused. Comparing `code` tells what `details` hold.
 *
 * @category Errors
 * @example
 * const outcome = tryFormulaOf("blue vitrol");
 * if (!outcome.ok && outcome.error.code === "substance.unknown-name") {
 *   outcome.error.details.nearest // => ["blue vitriol"]
 * }
 */
export type SubstanceRefusal = ErrorWithCode<
  SubstanceErrorCode | FormulaErrorCode | ElementErrorCode | QuantityErrorCode,
  SubstanceErrorDetails
>;

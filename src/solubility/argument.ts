// Arguments that callers without types may get wrong: refused by name, before anything reads them. What is left out is a
// missing option, what is of another kind a bad one.
import { isRecord, shown } from "../element/argument";
import { SolubilityError } from "./error";

function refused(value: unknown, argument: string, wanted: string): SolubilityError {
  const code = value === undefined ? "solubility.missing-option" : "solubility.bad-option";
  return new SolubilityError(code, `${argument} must be ${wanted}, not ${shown(value)}`, { details: { argument } });
}

/** A request, or one entry of a list, as an object with fields. */
export function needRecord(value: unknown, argument: string): void {
  if (!isRecord(value)) throw refused(value, argument, "an object");
}

/** A list of anything. */
export function needList(value: unknown, argument: string): void {
  if (!Array.isArray(value)) throw refused(value, argument, "a list");
}

/** A list of objects with fields. */
export function needRecords(value: unknown, argument: string): void {
  needList(value, argument);
  for (const [i, entry] of (value as readonly unknown[]).entries()) needRecord(entry, `${argument}[${i}]`);
}

/** Text, or left out. */
export function needTextOption(value: unknown, argument: string): void {
  if (value !== undefined && typeof value !== "string") throw refused(value, argument, "text");
}

/** One of the words that are known, or left out. */
export function needChoice(value: unknown, argument: string, known: readonly string[]): void {
  if (value === undefined || known.includes(value as string)) return;
  throw refused(value, argument, `one of ${known.join(", ")}`);
}

/** A figure to draw with. */
export function needNumber(value: unknown, argument: string): void {
  if (typeof value !== "number") throw refused(value, argument, "a number");
}

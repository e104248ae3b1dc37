// Arguments that callers without types may get wrong: refused by name, before anything reads them.
import type { WeightConvention } from "./atomic-weight";
import { ElementError } from "./error";

/** @internal */
export const CONVENTIONS: readonly WeightConvention[] = ["conventional", "abridged", "midpoint"];

/** @internal What a value is, in words that are safe for any value. */
export function kindOf(value: unknown): string {
  if (value === null) return "null";
  return Array.isArray(value) ? "a list" : typeof value;
}

/** @internal Is it an object with fields, and no list? */
export function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/** Options as an object. */
export function needOptions(value: unknown): void {
  if (!isRecord(value)) throw new ElementError("element.bad-option", `options are an object, not ${kindOf(value)}`);
}

/** One of the words an option knows, or left out. */
export function needChoice(value: unknown, option: string, known: readonly string[]): void {
  if (value === undefined || known.includes(value as string)) return;
  throw new ElementError("element.bad-option", `${option} is one of ${known.join(", ")}, not ${shown(value)}`);
}

/** @internal A value for a message: text in quotes, anything else by its kind. */
export function shown(value: unknown): string {
  return typeof value === "string" ? `'${value.slice(0, 40)}'` : kindOf(value);
}

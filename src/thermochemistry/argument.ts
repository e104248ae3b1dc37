// Arguments that callers without types may get wrong: refused by name, before anything reads them. What is left out is a
// missing option, what is of another kind a bad one.
import { isRecord, shown } from "../element/argument";
import { ThermochemistryError } from "./error";

function refused(value: unknown, argument: string, wanted: string): ThermochemistryError {
  const code = value === undefined ? "thermochemistry.missing-option" : "thermochemistry.bad-option";
  return new ThermochemistryError(code, `${argument} must be ${wanted}, not ${shown(value)}`, {
    details: { argument },
  });
}

/** A request, options or a table by formula as an object with fields. */
export function needRecord(value: unknown, argument: string): void {
  if (!isRecord(value)) throw refused(value, argument, "an object");
}

/** A list, or left out. */
export function needListOption(value: unknown, argument: string): void {
  if (value !== undefined && !Array.isArray(value)) throw refused(value, argument, "a list");
}

/** Text, or left out. */
export function needTextOption(value: unknown, argument: string): void {
  if (value !== undefined && typeof value !== "string") throw refused(value, argument, "text");
}

// Arguments that callers without types may get wrong: refused by name, before anything reads them. Only slow paths come
// here; text that reads well, and a molar mass without options, never do.
import { CONVENTIONS, isRecord, kindOf, shown } from "../element/argument";
import { FormulaError } from "./error";

/** Options as an object. */
export function needOptions(value: unknown, what = "options"): void {
  if (!isRecord(value)) throw badOption(`${what} must be an object, not ${kindOf(value)}`);
}

/** Options of a molar mass. */
export function needMassOptions(value: unknown): void {
  needOptions(value);
  const { convention, weights } = value as { readonly convention?: unknown; readonly weights?: unknown };
  if (convention !== undefined && !(CONVENTIONS as readonly unknown[]).includes(convention)) {
    throw badOption(`convention is one of ${CONVENTIONS.join(", ")}, not ${shown(convention)}`);
  }
  if (weights !== undefined) needOptions(weights, "weights");
}

/** Text, or left out. */
export function needTextOption(value: unknown, option: string): void {
  if (value !== undefined && typeof value !== "string") throw badOption(`${option} is text, not ${kindOf(value)}`);
}

/** A list, or left out. */
export function needListOption(value: unknown, option: string): void {
  if (value !== undefined && !Array.isArray(value)) throw badOption(`${option} is a list, not ${kindOf(value)}`);
}

/** A number, or left out. */
export function needNumberOption(value: unknown, option: string): void {
  if (value === undefined || (typeof value === "number" && !Number.isNaN(value))) return;
  throw badOption(`${option} is a number, not ${Number.isNaN(value) ? "NaN" : kindOf(value)}`);
}

/** Neither text nor a formula. */
export function notText(value: unknown, argument: string): FormulaError {
  return new FormulaError("formula.not-text", `${argument} must be text or a Formula, not ${kindOf(value)}`, {
    hint: 'such as "CuSO4·5H2O"',
  });
}

function badOption(problem: string): FormulaError {
  return new FormulaError("formula.bad-option", problem);
}

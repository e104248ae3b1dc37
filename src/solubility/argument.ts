// Arguments that callers without types may get wrong: refused by name, before anything reads them. What is left out is a
// missing option, what is of another kind a bad one.
import { ArgumentGuard } from "../foundation/argument";
import { SolubilityError } from "./error";

/** The guard of this layer. */
export const guard = /* @__PURE__ */ new ArgumentGuard(SolubilityError, {
  unknown: "solubility.unknown-option",
  bad: "solubility.bad-option",
  missing: "solubility.missing-option",
  notPositive: "solubility.not-positive",
});

/** Text, or left out. */
export function needTextOption(value: unknown, argument: string): void {
  if (value !== undefined) guard.text(value, argument);
}

/** One of the words that are known, or left out. */
export function needChoice(value: unknown, argument: string, known: readonly string[]): void {
  if (value !== undefined) guard.choice(value, argument, known);
}

// Arguments that callers without types may get wrong: refused by name, before anything reads them. What is left out is a
// missing option, what is of another kind a bad one.
import { ArgumentGuard } from "../foundation/argument";
import { ThermochemistryError } from "./error";

/** The guard of this layer. */
export const guard = /* @__PURE__ */ new ArgumentGuard(ThermochemistryError, {
  unknown: "thermochemistry.unknown-option",
  bad: "thermochemistry.bad-option",
  missing: "thermochemistry.missing-option",
  notPositive: "thermochemistry.not-positive",
});

/** A list, or left out. */
export function needListOption(value: unknown, argument: string): void {
  if (value !== undefined) guard.list(value, argument);
}

/** Text, or left out. */
export function needTextOption(value: unknown, argument: string): void {
  if (value !== undefined) guard.text(value, argument);
}

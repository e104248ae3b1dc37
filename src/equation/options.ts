// The options of this layer and the guard that looks through them. Options of several functions build on each other, so
// each list of fields does too.
import type { ReadOptions } from "../formula";
import { ArgumentGuard, type Fields, type KnownFields } from "../foundation/argument";
import { EquationError } from "./error";

/** The guard of this layer. */
export const guard = /* @__PURE__ */ new ArgumentGuard(EquationError, {
  unknown: "equation.unknown-option",
  bad: "equation.bad-option",
});

/** How an equation text is read. */
export interface EquationOptions extends ReadOptions {
  /** `"check"` (default) keeps given coefficients, so that they are checked; `"ignore"` drops them. */
  readonly coefficients?: "check" | "ignore" | undefined;
  /** `"keep"` (default) leaves a species that stands on both sides; `"cancel"` takes the spectators out. */
  readonly spectators?: "keep" | "cancel" | undefined;
}

/** @internal What is meant where no options are given: nothing to look through. */
export const NO_OPTIONS: EquationOptions = {};

export const EQUATION = {
  coefficients: true,
  spectators: true,
  n: true,
  x: true,
  digitsBeforeSign: true,
} as const satisfies Fields<EquationOptions>;

/** Options with none but the known fields, and the words of those that every function of the layer takes. */
export function needOptions(options: EquationOptions, known: KnownFields): void {
  guard.fields(options, known);
  const { coefficients, spectators } = options;
  if (coefficients !== undefined) guard.choice(coefficients, "coefficients", ["check", "ignore"]);
  if (spectators !== undefined) guard.choice(spectators, "spectators", ["keep", "cancel"]);
}

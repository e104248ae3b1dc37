// The options of this room and the guard that looks through them. Options of several functions build on each other, so
// each list of fields does too.
import { ArgumentGuard, type Fields, type KnownFields } from "../foundation/argument";
import type { BalanceOptions } from "./balance/balance";
import type { Condition } from "./balance/condition";
import type { SpaceOptions } from "./balance/space";
import { EquationError } from "./error";
import type { EquationLists, EquationOptions } from "./read/parse";
import type { HalfReactionOptions } from "./redox/half";
import type { OverallOptions } from "./redox/overall";

/** The guard of this layer. */
export const guard = /* @__PURE__ */ new ArgumentGuard(EquationError, {
  unknown: "equation.unknown-option",
  bad: "equation.bad-option",
});

export const EQUATION = {
  coefficients: true,
  spectators: true,
  n: true,
  x: true,
  digitsBeforeSign: true,
} as const satisfies Fields<EquationOptions>;

/** An equation given as lists. */
export const LISTS = { reactants: true, products: true } as const satisfies Fields<EquationLists>;

const CONDITION = { species: true, ratio: true } as const satisfies Fields<Condition>;

export const BALANCE = { ...EQUATION, conditions: [CONDITION] } as const satisfies Fields<BalanceOptions>;

export const HALF = { ...EQUATION, medium: true } as const satisfies Fields<HalfReactionOptions>;

export const SPACE = { ...EQUATION, limit: true } as const satisfies Fields<SpaceOptions>;

export const OVERALL = { ...BALANCE, intermediates: true, multipliers: true } as const satisfies Fields<OverallOptions>;

/** Options with none but the known fields, and the words of those that every function of the layer takes. */
export function needOptions(options: EquationOptions, known: KnownFields): void {
  guard.fields(options, known);
  const { coefficients, spectators } = options;
  if (coefficients !== undefined) guard.choice(coefficients, "coefficients", ["check", "ignore"]);
  if (spectators !== undefined) guard.choice(spectators, "spectators", ["keep", "cancel"]);
}

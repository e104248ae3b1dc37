// Arguments that callers without types may get wrong: refused by name, before anything reads them. What is left out is a
// missing option, what is of another kind a bad one.
import { ArgumentGuard, type Fields } from "../foundation/argument";
import { ThermochemistryError } from "./error";
import type { formationEnthalpy } from "./formation";
import type { EnthalpyOptions } from "./reaction";
import type { TemperatureRiseRequest, waterCarriedByGas } from "./temperature";

/** The guard of this layer. */
export const guard = /* @__PURE__ */ new ArgumentGuard(ThermochemistryError, {
  unknown: "thermochemistry.unknown-option",
  bad: "thermochemistry.bad-option",
  missing: "thermochemistry.missing-option",
});

export const RISE = {
  heat: true,
  enthalpy: true,
  amount: true,
  mass: true,
  heatCapacity: true,
  start: true,
  hydrates: true,
} as const satisfies Fields<TemperatureRiseRequest>;

export const SWEPT = { gas: true, temperature: true, pressure: true } as const satisfies Fields<
  Parameters<typeof waterCarriedByGas>[0]
>;

export const WHICH = { state: true, form: true } as const satisfies Fields<
  NonNullable<Parameters<typeof formationEnthalpy>[1]>
>;

export const ENTHALPY = { states: true, forms: true } as const satisfies Fields<EnthalpyOptions>;

/** A list, or left out. */
export function needListOption(value: unknown, argument: string): void {
  if (value !== undefined) guard.list(value, argument);
}

/** Text, or left out. */
export function needTextOption(value: unknown, argument: string): void {
  if (value !== undefined) guard.text(value, argument);
}

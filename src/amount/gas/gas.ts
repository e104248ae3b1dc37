// Gases: ideal unless a second-virial correction is asked for, with the conditions always stated on the result.

import { molarMass } from "../../formula";
import type { Fields } from "../../foundation/argument";
import { bringsFacts, type LookupOptions, withItsFacts } from "../../foundation/facts";
import { type Quantity, sum } from "../../quantity";
import {
  type AmountLike,
  type DensityLike,
  type FormulaLike,
  formulaOfArgument,
  grouped,
  guard,
  listed,
  positive,
  type TemperatureLike,
  type VolumeLike,
} from "../argument";
import { AmountError } from "../error";
import { molarGasConstant } from "./constants";
import { type GasConditions, MEASURED_GAS, molarVolume, NAMED_GAS, type State, stateOf } from "./gas-state";

const GAS_CHANGE = { from: MEASURED_GAS, to: MEASURED_GAS } as const satisfies Fields<
  Parameters<typeof gasVolumeAt>[1]
>;

const OF_ONE_GAS = { ...NAMED_GAS, facts: true } as const satisfies Fields<
  NonNullable<Parameters<typeof gasDensity>[1]>
>;

const GAS_VESSEL = { volume: true, temperature: true } as const satisfies Fields<Parameters<typeof gasPressure>[1]>;

/**
 * Volume that one mole of a gas occupies.
 *
 * @param conditions - temperature (25 °C unless given), pressure (101.325 kPa unless given), and the model
 * @returns molar volume in L/mol, with the conditions among its assumptions
 * @throws {AmountError} `amount.not-positive`, `amount.not-possible`, `amount.outside-range`, `amount.no-virial-data`,
 *   `amount.missing-formula`
 * @source ideal gas law with R of the SI Brochure, 9th ed. (2019)
 * @category Gas
 * @example
 * molarVolumeOfGas().format({ decimals: 3 }) // => "24.465 L/mol"
 * molarVolumeOfGas({ temperature: "0 °C" }).format({ decimals: 3 }) // => "22.414 L/mol"
 */
export function molarVolumeOfGas(conditions: GasConditions = {}): Quantity<"molar volume"> {
  const state = stateOf(conditions);
  return molarVolume(state)
    .to("L/mol")
    .named({
      symbol: `V(m${state.name === "" ? "" : `, ${state.name.slice(1, -1)}`})`,
      rule: state.B === undefined ? "molar volume = R T / p" : "molar volume = R T / p + B",
      assumption: state.words,
    });
}

/**
 * Volume that an amount of gas occupies.
 *
 * @param amount - amount of gas, > 0
 * @param conditions - temperature (25 °C unless given), pressure (101.325 kPa unless given), over water or dry, model; `gas`,
 *   which is refused (`amount.not-possible`) where it is a liquid or a solid there: water at 25 °C, a salt
 * @returns volume in L, with the conditions among its assumptions: `explain(volume).assumptions`
 * @throws {AmountError} `amount.not-positive`, `amount.not-possible`, `amount.outside-range`, `amount.no-virial-data`,
 *   `amount.missing-formula`
 * @throws {QuantityError} `quantity.wrong-dimension`
 * @source ideal gas law with R of the SI Brochure, 9th ed. (2019)
 * @category Gas
 * @example
 * gasVolume("1 mol").format({ decimals: 2 }) // => "24.47 L"
 * explain(gasVolume("1 mol", { temperature: "20 °C", pressure: "100 kPa" })).assumptions // => ["ideal gas at 20 °C and 100 kPa"]
 */
export function gasVolume(amount: AmountLike, conditions: GasConditions = {}): Quantity<"volume"> {
  const state = stateOf(conditions);
  const n = positive(amount, "amount of substance", "amount", { symbol: `n${state.name}`, label: "amount of gas" });
  const { T, p, B } = state;
  const volume = B === undefined ? n.times(molarGasConstant()).times(T).dividedBy(p) : n.times(molarVolume(state));
  return volume.to("L").named({
    symbol: `V${state.name}`,
    rule: B === undefined ? "volume = amount × R × T / p" : "volume = amount × (R T / p + B)",
    assumption: state.words,
  });
}

/**
 * Amount of gas in a volume.
 *
 * @param volume - volume of the gas, > 0
 * @param conditions - as for {@link gasVolume}
 * @returns amount in mol, with the conditions among its assumptions
 * @throws {AmountError} as for {@link gasVolume}
 * @throws {QuantityError} `quantity.wrong-dimension`
 * @source ideal gas law with R of the SI Brochure, 9th ed. (2019)
 * @category Gas
 * @example
 * gasAmount("24.0 L", { temperature: "20 °C" }).format({ decimals: 3 }) // => "0.998 mol"
 */
export function gasAmount(volume: VolumeLike, conditions: GasConditions = {}): Quantity<"amount of substance"> {
  const state = stateOf(conditions);
  const V = positive(volume, "volume", "volume", { symbol: `V${state.name}`, label: "volume of gas" });
  const { T, p, B } = state;
  const n = B === undefined ? p.times(V).dividedBy(molarGasConstant().times(T)) : V.dividedBy(molarVolume(state));
  return n.to("mol").named({
    symbol: `n${state.name}`,
    rule: B === undefined ? "amount = p V / (R T)" : "amount = volume / (R T / p + B)",
    assumption: state.words,
  });
}

/**
 * Pressure of one gas or a mixture in a vessel: the amounts add up.
 *
 * @param amounts - amount of each gas, > 0
 * @param vessel - its volume, and the temperature (25 °C unless given)
 * @returns total pressure in kPa, as ideal gases
 * @throws {AmountError} `amount.not-positive`, `amount.missing-input`
 * @throws {QuantityError} `quantity.wrong-dimension`
 * @source ideal gas law; law of partial pressures
 * @category Gas
 * @example
 * gasPressure(["8.80 mol"], { volume: "217 L", temperature: "25 °C" }).format({ decimals: 1 }) // => "100.5 kPa"
 */
export function gasPressure(
  amounts: readonly AmountLike[],
  vessel: { readonly volume: VolumeLike; readonly temperature?: TemperatureLike | undefined },
): Quantity<"pressure"> {
  if (listed(amounts, "amounts").length === 0)
    throw new AmountError("amount.missing-input", "no amount of gas was given");
  const { T, words } = stateOf({ temperature: grouped(vessel, GAS_VESSEL).temperature }, false);
  const V = positive(vessel.volume, "volume", "volume", { symbol: "V", label: "volume of the vessel" });
  const each = amounts.map((amount, i) =>
    positive(amount, "amount of substance", "amount", { symbol: amounts.length === 1 ? "n" : `n${i + 1}` }),
  );
  const n = each.length === 1 ? each[0]! : sum(each, { symbol: "n", rule: "amount = sum of the amounts" });
  return n
    .times(molarGasConstant())
    .times(T)
    .dividedBy(V)
    .to("kPa")
    .named({ symbol: "p", rule: "pressure = amount × R × T / volume", assumption: words });
}

/**
 * The volume a measured portion of gas has at other conditions.
 *
 * @param volume - volume as measured, > 0
 * @param change - conditions it was measured at (`from`) and is wanted at (`to`); each 25 °C and 101.325 kPa unless given
 * @returns volume in L at the wanted conditions
 * @throws {AmountError} as for {@link gasVolume}
 * @throws {QuantityError} `quantity.wrong-dimension`
 * @source combined gas law
 * @category Gas
 * @example
 * gasVolumeAt("0.300 L", { from: { temperature: "10 °C" }, to: { temperature: "30 °C" } }).format({ decimals: 3 }) // => "0.321 L"
 */
export function gasVolumeAt(
  volume: VolumeLike,
  change: {
    readonly from?: Pick<GasConditions, "temperature" | "pressure" | "collectedOver"> | undefined;
    readonly to?: Pick<GasConditions, "temperature" | "pressure" | "collectedOver"> | undefined;
  },
): Quantity<"volume"> {
  const V = positive(volume, "volume", "volume", { symbol: "V1", label: "volume as measured" });
  const before = stateOf(grouped(change, GAS_CHANGE).from ?? {});
  const after = stateOf(change.to ?? {});
  const at = (s: State, index: number): { T: Quantity; p: Quantity } => ({
    T: s.T.named({ symbol: `T${index}` }),
    p: s.p.named({ symbol: `p${index}` }),
  });
  const [a, b] = [at(before, 1), at(after, 2)];
  return V.times(a.p)
    .times(b.T)
    .dividedBy(b.p.times(a.T))
    .to("L")
    .named({
      symbol: "V2",
      rule: "p1 V1 / T1 = p2 V2 / T2",
      assumption: before.words === after.words ? before.words : `${before.words}, then ${after.words}`,
    });
}

/**
 * Density of a gas.
 *
 * @param gas - its formula
 * @param conditions - as for {@link gasVolume}
 * @returns density in g/L, with the conditions among its assumptions
 * @throws {AmountError} as for {@link gasVolume}
 * @throws {FormulaError} those of `parseFormula`
 * @source ideal gas law with R of the SI Brochure, 9th ed. (2019)
 * @category Gas
 * @example
 * gasDensity("N2", { temperature: "273 K", pressure: "1 atm" }).format({ decimals: 2, uncertainty: "none" }) // => "1.25 g/L"
 */
export function gasDensity(
  gas: FormulaLike,
  conditions: LookupOptions & Omit<GasConditions, "gas"> = {},
): Quantity<"density"> {
  if (bringsFacts(conditions)) return withItsFacts(conditions, guard, (others) => gasDensity(gas, others));
  const formula = formulaOfArgument(gas);
  const state = stateOf({ ...grouped(conditions, OF_ONE_GAS), gas: formula });
  const { T, p, B } = state;
  const M = molarMass(formula);
  const density = B === undefined ? M.times(p).dividedBy(molarGasConstant().times(T)) : M.dividedBy(molarVolume(state));
  return density.to("g/L").named({
    symbol: `ρ${state.name}`,
    rule: B === undefined ? "density = M p / (R T)" : "density = M / (R T / p + B)",
    assumption: state.words,
  });
}

/**
 * Molar mass of an unknown gas or vapour from its density.
 *
 * @param density - measured density, > 0; or divide a mass by a volume: `quantity("3.243e-2 g").dividedBy("56.0 mL")`
 * @param conditions - temperature and pressure it was measured at, over water or dry
 * @returns molar mass in g/mol, as ideal gas
 * @throws {AmountError} `amount.not-positive`, `amount.not-possible`
 * @throws {QuantityError} `quantity.wrong-dimension`
 * @source ideal gas law with R of the SI Brochure, 9th ed. (2019)
 * @category Gas
 * @example
 * molarMassOfGas("1.98 g/L", { temperature: "0 °C" }).format({ decimals: 1 }) // => "44.4 g/mol"
 */
export function molarMassOfGas(
  density: DensityLike,
  conditions: Pick<GasConditions, "temperature" | "pressure" | "collectedOver"> = {},
): Quantity<"molar mass"> {
  const { T, p, words } = stateOf(grouped(conditions, MEASURED_GAS));
  const rho = positive(density, "density", "density", { symbol: "ρ", label: "density of the gas" });
  return rho
    .times(molarGasConstant())
    .times(T)
    .dividedBy(p)
    .to("g/mol")
    .named({ symbol: "M", rule: "molar mass = density × R × T / p", assumption: words });
}

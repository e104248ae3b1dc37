// How warm the batch gets: heat over mass times heat capacity, both shown, and what that does to it. No heat is taken to
// be lost unless given, so the rise is the most there can be; evolving gas carries water vapour and heat away.

import {
  type AmountLike,
  type MassLike,
  type PressureLike,
  type TemperatureLike,
  vapourPressureOfWater,
} from "../amount";
import { Formula, molarMass, parseFormula } from "../formula";
import type { Fields } from "../foundation/argument";
import { bringsFacts, type LookupOptions, withItsFacts } from "../foundation/facts";
import { readable } from "../foundation/readable";
import { ATMOSPHERE_TEXT } from "../foundation/standards";
import { type Quantity, type QuantityLike, quantity, type SpecificHeatCapacityText } from "../quantity";
import { expectDimension } from "../quantity/internal";
import { solidTransitions } from "../solubility";
import { guard, needListOption } from "./argument";
import { cite } from "./data/sources";
import { ThermochemistryError } from "./error";
import { formationEnthalpy } from "./formation";

const RISE = {
  heat: true,
  enthalpy: true,
  amount: true,
  mass: true,
  heatCapacity: true,
  start: true,
  hydrates: true,
  facts: true,
} as const satisfies Fields<TemperatureRiseRequest>;

const SWEPT = { gas: true, temperature: true, pressure: true, facts: true } as const satisfies Fields<
  Parameters<typeof waterCarriedByGas>[0]
>;

/** What `temperatureRise` needs to know. */
export interface TemperatureRiseRequest extends LookupOptions {
  /** Heat of the reaction, negative when given off; or give `enthalpy` with `amount`. */
  readonly heat?: QuantityLike<"energy">;
  /** For each mole of reaction, negative when heat is given off. */
  readonly enthalpy?: QuantityLike<"molar energy">;
  /** Moles of reaction as the equation is written. */
  readonly amount?: AmountLike;
  /** Mass of everything that is warmed, > 0. */
  readonly mass: MassLike;
  /** Heat capacity of the batch; default 4.0 ± 0.18 J/(g K), water and moderate salt solutions. */
  readonly heatCapacity?: QuantityLike<"specific heat capacity", SpecificHeatCapacityText>;
  /** Temperature before mixing; without it only the rise is stated. */
  readonly start?: TemperatureLike;
  /** Hydrates lying in the batch as solids, to warn when they melt or lose water. */
  readonly hydrates?: readonly (string | Formula)[];
}

/** How warm a batch gets. */
export interface TemperatureRise {
  /** Positive when the batch warms up. */
  readonly rise: Quantity<"temperature difference">;
  /** Temperature after; undefined where no start was given. */
  readonly end: Quantity<"temperature"> | undefined;
  /** Heat set free, positive. */
  readonly heatReleased: Quantity<"energy">;
  /** Whether it would end at 100 °C or above; a salt solution boils a little higher. */
  readonly boils: boolean | undefined;
  /** Whether it would end at 0 °C or below; a salt solution freezes further down. */
  readonly freezes: boolean | undefined;
  /** What was assumed, in words. */
  readonly assumptions: readonly string[];
  /** What to know before relying on it. */
  readonly warnings: readonly string[];
}

/** Heat capacity of water near room temperature; a rectangular spread covers moderate salt solutions. */
const WATER_CAPACITY = { value: "4.0", unit: "J/(g K)", halfWidth: "0.18", distribution: "rectangular" } as const;

function heatOf(request: TemperatureRiseRequest): Quantity {
  const { heat, enthalpy, amount } = request;
  if (heat !== undefined && (enthalpy !== undefined || amount !== undefined)) {
    throw new ThermochemistryError(
      "thermochemistry.conflicting-options",
      "heat given, and enthalpy with amount as well",
    );
  }
  if (heat !== undefined)
    return expectDimension(heat, "energy", "heat").named({ symbol: "q", label: "heat of the reaction" });
  if (enthalpy === undefined || amount === undefined) {
    throw new ThermochemistryError("thermochemistry.missing-option", "how much heat?", {
      hint: "give heat, or enthalpy with the amount of reaction",
    });
  }
  return expectDimension(enthalpy, "molar energy", "enthalpy")
    .times(expectDimension(amount, "amount of substance", "amount"))
    .to("kJ")
    .named({ symbol: "q", label: "heat of the reaction", rule: "heat = enthalpy × amount of reaction" });
}

function positiveOf(like: QuantityLike, dimension: string, argument: string): Quantity {
  return guard.positive(expectDimension(like, dimension, argument), argument);
}

/** Hydrates that do not outlive the end temperature. */
function hydrateWarnings(hydrates: readonly (string | Formula)[], end: number): string[] {
  return hydrates.flatMap((hydrate) => {
    let changes: ReturnType<typeof solidTransitions>;
    if (!(hydrate instanceof Formula)) parseFormula(hydrate);
    try {
      changes = solidTransitions(hydrate);
    } catch {
      return [];
    }
    const own = changes.find(
      ({ below, celsius }) => below !== undefined && celsius <= end && sameSolid(below, String(hydrate)),
    );
    return own === undefined ? [] : [`${hydrate} melts in its own water or loses it above ${own.celsius} °C`];
  });
}

const sameSolid = (a: string, b: string): boolean => parseFormula(a).hasSameComposition(parseFormula(b));

/**
 * Temperature rise of a batch from the heat of its reaction, with no heat lost.
 *
 * @param request - heat (negative when given off) or enthalpy with amount of reaction; mass of the batch; heat capacity
 *   (default 4.0 ± 0.18 J/(g K), water and moderate salt solutions); start temperature
 * @returns rise, end temperature, and whether it would boil or freeze
 * @throws {ThermochemistryError} `thermochemistry.missing-option`, `thermochemistry.conflicting-options`,
 *   `thermochemistry.not-positive`, `thermochemistry.bad-option`
 * @source heat balance; heat capacity of water: general physics, spread for salt solutions common practice
 * @category Heat
 * @example
 * temperatureRise({ heat: "-42 kJ", mass: "1 kg", heatCapacity: "4.2 J/(g K)", start: "20 °C" }).end?.toString() // => "30 °C"
 */
export function temperatureRise(request: TemperatureRiseRequest): TemperatureRise {
  if (bringsFacts(request)) return withItsFacts(request, guard, temperatureRise);
  guard.fields(request, RISE, "request");
  needListOption(request.hydrates, "hydrates");
  const heat = heatOf(request);
  const mass = positiveOf(request.mass, "mass", "mass").named({ symbol: "m", label: "mass of the batch" });
  const assumptions = ["no heat is lost to the vessel or the room"];
  const capacity =
    request.heatCapacity === undefined
      ? quantity(WATER_CAPACITY, {
          symbol: "c",
          label: "heat capacity of the batch",
          assumption: "the batch warms like a watery solution",
          source: cite("commonPractice"),
        })
      : positiveOf(request.heatCapacity, "specific heat capacity", "heatCapacity").named({
          symbol: "c",
          label: "heat capacity of the batch",
        });
  if (request.heatCapacity === undefined)
    assumptions.push("the batch has the heat capacity of a watery solution, 3.82 to 4.18 J/(g K)");
  const released = heat.negated().named({ symbol: "−q", label: "heat set free" });
  const rise = riseOf(released, mass, capacity);
  const end =
    request.start === undefined
      ? undefined
      : expectDimension(request.start, "temperature", "start")
          .to("°C")
          .plus(rise)
          .named({ label: "end temperature", rule: "start + rise" });
  const celsius = end?.toNumber("°C");
  const warnings: string[] = [];
  const boils = celsius === undefined ? undefined : celsius >= 100;
  const freezes = celsius === undefined ? undefined : celsius <= 0;
  if (boils === true)
    warnings.push("would boil: add slowly, cool, or dilute; the figure stops meaning a temperature at 100 °C");
  if (freezes === true) warnings.push("ends at or below 0 °C: water would freeze, a salt solution only further down");
  if (celsius !== undefined) warnings.push(...hydrateWarnings(request.hydrates ?? [], celsius));
  return readable({ rise, end, heatReleased: released, boils, freezes, assumptions, warnings });
}

/** Heat over mass times heat capacity, as the temperature difference it is. */
function riseOf(released: Quantity, mass: Quantity, capacity: Quantity): Quantity {
  return released.dividedBy(mass.times(capacity)).named({
    symbol: "ΔT",
    label: "temperature rise",
    rule: "rise = heat set free / (mass × heat capacity)",
  });
}

/** Water carried off by an evolving gas. */
export interface WaterCarriedByGas {
  /** Water that leaves as vapour. */
  readonly amount: Quantity<"amount of substance">;
  /** The same as a mass. */
  readonly mass: Quantity<"mass">;
  /** Heat the evaporation takes from the batch, positive. */
  readonly heatTaken: Quantity<"energy">;
}

/**
 * Water that an evolving gas carries off as vapour, leaving saturated.
 *
 * @param request - amount of dry gas, temperature of the batch (0 to below 100 °C), pressure (default 101.325 kPa)
 * @returns amount and mass of water, and the heat its evaporation takes
 * @throws {ThermochemistryError} `thermochemistry.not-positive`, `thermochemistry.missing-option`,
 *   `thermochemistry.bad-option`, `thermochemistry.outside-range` when the batch boils
 * @throws {AmountError} `amount.outside-range` below 0 or above 100 °C
 * @source Dalton's law with the vapour pressure of water; evaporation 44.0 kJ/mol from the NBS tables
 * @category Heat
 * @example
 * waterCarriedByGas({ gas: "1 mol", temperature: "25 °C" }).mass.format({ significant: 2 }) // => "0.58 g"
 */
export function waterCarriedByGas(
  request: LookupOptions & {
    readonly gas: AmountLike;
    readonly temperature: TemperatureLike;
    readonly pressure?: PressureLike;
  },
): WaterCarriedByGas {
  if (bringsFacts(request)) return withItsFacts(request, guard, waterCarriedByGas);
  guard.fields(request, SWEPT, "request");
  const gas = positiveOf(request.gas, "amount of substance", "gas").named({
    symbol: "n(gas)",
    label: "dry gas given off",
  });
  const pressure = positiveOf(request.pressure ?? ATMOSPHERE_TEXT, "pressure", "pressure").named({
    symbol: "p",
    label: "pressure",
  });
  const vapour = vapourPressureOfWater(request.temperature);
  if (vapour.compare(pressure) >= 0) {
    throw new ThermochemistryError(
      "thermochemistry.outside-range",
      "the batch boils: gas carries off water without limit",
      {
        details: { vapourPressure: String(vapour), pressure: String(pressure) },
      },
    );
  }
  const amount = gas
    .times(vapour)
    .dividedBy(pressure.minus(vapour))
    .named({ symbol: "n(H2O)", label: "water vapour carried off", rule: "n(gas) × p(H2O) / (p − p(H2O))" });
  const evaporation = formationEnthalpy("H2O(g)").enthalpy.minus(formationEnthalpy("H2O(l)").enthalpy).named({
    symbol: "ΔvapH",
    label: "heat of evaporation of water at 25 °C",
    rule: "enthalpy of formation of the vapour − of the liquid",
  });
  return readable({
    amount,
    mass: amount
      .times(molarMass("H2O"))
      .to("g")
      .named({ label: "mass of water carried off", rule: "amount × molar mass" }),
    heatTaken: amount
      .times(evaporation)
      .to("kJ")
      .named({ label: "heat taken by evaporation", rule: "amount × heat of evaporation" }),
  });
}

// Pure water: vapour pressure and density. Kept here because gas collected over water and every dilution need them; each
// is one published equation, evaluated when asked.

import { ZERO_CELSIUS } from "../../foundation/standards";
import { applyFunction, isQuantity, type Quantity } from "../../quantity";
import { expectDimension } from "../../quantity/internal";
import type { TemperatureLike } from "../argument";
import { cite } from "../data/sources";
import { AmountError } from "../error";

/** @internal The temperature in kelvin, refused outside the range the liquid is liquid at 1 atm. */
function liquidWater(temperature: TemperatureLike): Quantity {
  const T = expectDimension(temperature, "temperature", "temperature").to("K");
  const celsius = T.in("°C");
  if (celsius.greaterThanOrEqualTo(0) && celsius.lessThanOrEqualTo(100)) return named(T);
  throw new AmountError(
    "amount.outside-range",
    `water at ${celsius} °C: these equations are used from 0 °C to 100 °C`,
    {
      details: { quantity: "temperature", low: "0 °C", high: "100 °C", value: `${celsius} °C` },
    },
  );
}

const named = (T: Quantity): Quantity => T.named({ symbol: T.symbol ?? "T", label: T.label ?? "temperature" });

// Saturation line of Wagner and Pruss: ln(p/pc) = (Tc/T) (a1 v + a2 v^1.5 + a3 v^3 + a4 v^3.5 + a5 v^4 + a6 v^7.5), v = 1 - T/Tc.
const CRITICAL_KELVIN = 647.096;
const CRITICAL_KPA = 22064;
const SATURATION: readonly (readonly [factor: number, exponent: number])[] = [
  [-7.85951783, 1],
  [1.84408259, 1.5],
  [-11.7866497, 3],
  [22.6807411, 3.5],
  [-15.9618719, 4],
  [1.80122502, 7.5],
];

const seriesAt = (v: number): number => SATURATION.reduce((s, [a, e]) => s + a * v ** e, 0);

/** @internal Saturation pressure of water in kPa; undefined above the critical point, and over ice that of water at 0 °C. */
export function saturationPressure(kelvin: number): number | undefined {
  if (kelvin > CRITICAL_KELVIN) return undefined;
  const t = Math.max(kelvin, ZERO_CELSIUS);
  return CRITICAL_KPA * Math.exp((CRITICAL_KELVIN / t) * seriesAt(1 - t / CRITICAL_KELVIN));
}

/**
 * Vapour pressure of pure water: what a gas collected over water carries with it.
 *
 * @param temperature - 0 °C to 100 °C
 * @returns saturation pressure in kPa; the equation itself is good to 0.03 % here, which is left out of the uncertainty
 * @throws {AmountError} `amount.outside-range`
 * @throws {QuantityError} `quantity.wrong-dimension`
 * @source Wagner and Pruss, J. Phys. Chem. Ref. Data 31, 387 (2002), equation 2.5
 * @category Gas
 * @example
 * vapourPressureOfWater("25 °C").format({ decimals: 3 }) // => "3.170 kPa"
 */
export function vapourPressureOfWater(temperature: TemperatureLike): Quantity<"pressure"> {
  const T = liquidWater(temperature);
  const series = seriesAt;
  const slope = (v: number): number => SATURATION.reduce((s, [a, e]) => s + a * e * v ** (e - 1), 0);
  const pressure = (t: number): number =>
    CRITICAL_KPA * Math.exp((CRITICAL_KELVIN / t) * series(1 - t / CRITICAL_KELVIN));
  return applyFunction(
    [T],
    {
      name: "p_sat",
      unit: "kPa",
      value: ([t]) => Number(pressure(t!.toNumber()).toPrecision(12)),
      partials: ([t]) => {
        const k = t!.toNumber();
        const v = 1 - k / CRITICAL_KELVIN;
        return [-pressure(k) * ((CRITICAL_KELVIN / k ** 2) * series(v) + slope(v) / k)];
      },
    },
    {
      symbol: "p(H₂O)",
      label: "vapour pressure of water",
      rule: "vapour pressure of water from the saturation equation",
      source: cite("wagnerPruss2002"),
    },
  );
}

// Kell's equation: density in kg/m3 at 1 atm from the temperature in °C.
const KELL = [999.83952, 16.945176, -7.9870401e-3, -46.170461e-6, 105.56302e-9, -280.54253e-12] as const;
const KELL_BELOW = 16.87985e-3;

/**
 * Density of pure air-free water at 1 atm.
 *
 * @param temperature - 0 °C to 100 °C
 * @returns density in g/mL; the equation is good to 0.00001 g/mL below 40 °C
 * @throws {AmountError} `amount.outside-range`
 * @throws {QuantityError} `quantity.wrong-dimension`
 * @source Kell, J. Chem. Eng. Data 20, 97 (1975), on the temperature scale of 1968
 * @category Solutions
 * @example
 * densityOfWater("20 °C").format({ decimals: 4 }) // => "0.9982 g/mL"
 */
export function densityOfWater(temperature: TemperatureLike): Quantity<"density"> {
  if (isQuantity(temperature)) return densityAt(temperature);
  if (typeof temperature !== "string") return kellDensity(temperature);
  // One temperature written the same way is one constant, whoever asks; a Quantity may carry an uncertainty of its own.
  const before = densities.get(temperature);
  if (before !== undefined) return before;
  const T = expectDimension(temperature, "temperature", "temperature");
  const density = kellDensity(T);
  // Two readings that happen to be written alike are still two readings.
  if (T.standardUncertainty === undefined && densities.size < MOST_DENSITIES) densities.set(temperature, density);
  return density;
}

const measured = /* @__PURE__ */ new WeakMap<Quantity, Quantity<"density">>();

/** One measurement has one density, and is asked for it again and again: at every vessel of one room. */
function densityAt(temperature: Quantity): Quantity<"density"> {
  const before = measured.get(temperature);
  if (before !== undefined) return before;
  const density = kellDensity(temperature as Quantity<"temperature">);
  measured.set(temperature, density);
  return density;
}

const MOST_DENSITIES = 100;
const densities = /* @__PURE__ */ new Map<string, Quantity<"density">>();

function kellDensity(temperature: TemperatureLike): Quantity<"density"> {
  const T = liquidWater(temperature);
  const above = (t: number): number => KELL.reduceRight((s, a) => s * t + a, 0);
  const aboveSlope = (t: number): number => KELL.reduceRight((s, a, i) => (i === 0 ? s : s * t + i * a), 0);
  return applyFunction(
    [T],
    {
      name: "ρ_water",
      unit: "g/mL",
      value: ([k]) => {
        const t = k!.toNumber() - ZERO_CELSIUS;
        return Number((above(t) / (1 + KELL_BELOW * t) / 1000).toPrecision(10));
      },
      partials: ([k]) => {
        const t = k!.toNumber() - ZERO_CELSIUS;
        const below = 1 + KELL_BELOW * t;
        return [(aboveSlope(t) - (KELL_BELOW * above(t)) / below) / below / 1000];
      },
    },
    {
      symbol: "ρ(H₂O)",
      label: "density of water",
      rule: "density of water from Kell's equation",
      source: cite("kell1975"),
    },
  );
}

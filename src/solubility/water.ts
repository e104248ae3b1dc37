// Liquid water read between the rows of its table: density and vapour pressure, 0 to 100 °C.
import { cite } from "../foundation/bibliography";
import { attempt, type Result } from "../foundation/error";
import { expectDimension, type Quantity, type QuantityLike, quantity, type TemperatureText } from "../quantity";
import { WATER } from "./data/water";
import { SolubilityError } from "./error";
import { cubicAt, monotoneSlopes } from "./monotone";

interface Curve {
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly slopes: readonly number[];
}

let density: Curve | undefined;
let pressure: Curve | undefined;

function curve(x: readonly number[], y: readonly number[]): Curve {
  return { x, y, slopes: monotoneSlopes(x, y) };
}

const inverse = (celsius: number): number => -1 / (celsius + 273.15);

function celsiusOf(temperature: QuantityLike): number {
  const celsius = expectDimension(temperature, "temperature", "temperature").in("°C").toNumber();
  if (celsius < 0 || celsius > 100) {
    throw new SolubilityError(
      "solubility.outside-range",
      `liquid water is tabulated from 0 to 100 °C, not at ${celsius} °C`,
      {
        details: { celsius, from: 0, to: 100 },
      },
    );
  }
  return celsius;
}

/**
 * Density of air-free liquid water under 101.325 kPa.
 *
 * @param temperature - 0 to 100 °C
 * @returns density in g/mL; standard uncertainty 0.00003 g/mL, that of reading between the rows
 * @throws {SolubilityError} `solubility.outside-range`
 * @source Kell, J. Chem. Eng. Data 20, 97 (1975)
 * @category Water
 * @example
 * waterDensity("20 °C").in("g/mL").toString() // => "0.998204"
 */
export function waterDensity(temperature: QuantityLike<"temperature", TemperatureText>): Quantity<"density"> {
  const celsius = celsiusOf(temperature);
  density ??= curve(
    WATER.map((row) => row.celsius),
    WATER.map((row) => Number(row.density)),
  );
  const exact = WATER.find((row) => row.celsius === celsius);
  const value = exact?.density ?? cubicAt(density.x, density.y, density.slopes, celsius).value.toFixed(6);
  return quantity(
    { value, unit: "g/mL", standardUncertainty: "0.00003" },
    { symbol: "ρ(H2O)", label: `density of water at ${celsius} °C`, source: cite("kell1975") },
  );
}

/**
 * Saturation vapour pressure of water.
 *
 * @param temperature - 0 to 100 °C
 * @returns pressure in kPa; standard uncertainty 0.05 %
 * @throws {SolubilityError} `solubility.outside-range`
 * @source Wagner and Pruss, J. Phys. Chem. Ref. Data 31, 387 (2002)
 * @category Water
 * @example
 * waterVapourPressure("25 °C").in("kPa").toString() // => "3.1698"
 */
export function waterVapourPressure(temperature: QuantityLike<"temperature", TemperatureText>): Quantity<"pressure"> {
  const celsius = celsiusOf(temperature);
  pressure ??= curve(
    WATER.map((row) => inverse(row.celsius)),
    WATER.map((row) => Math.log(Number(row.vapourPressure))),
  );
  const exact = WATER.find((row) => row.celsius === celsius);
  const read = () =>
    Math.exp(cubicAt(pressure!.x, pressure!.y, pressure!.slopes, inverse(celsius)).value).toPrecision(5);
  const value = exact?.vapourPressure ?? read();
  return quantity(
    { value, unit: "kPa", standardUncertainty: (Number(value) * 0.0005).toPrecision(2) },
    { symbol: "p(H2O)", label: `vapour pressure of water at ${celsius} °C`, source: cite("wagnerPruss2002") },
  );
}

/**
 * As `waterDensity`, but gives the refusal back as data.
 *
 * @category Water
 * @example
 * tryWaterDensity("120 °C").ok // => false
 */
export function tryWaterDensity(temperature: QuantityLike<"temperature", TemperatureText>): Result<Quantity> {
  return attempt(() => waterDensity(temperature));
}

/**
 * As `waterVapourPressure`, but gives the refusal back as data.
 *
 * @category Water
 * @example
 * tryWaterVapourPressure("25 °C").ok // => true
 */
export function tryWaterVapourPressure(temperature: QuantityLike<"temperature", TemperatureText>): Result<Quantity> {
  return attempt(() => waterVapourPressure(temperature));
}

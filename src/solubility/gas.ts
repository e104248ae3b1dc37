// Gases in water under one atmosphere: seven gases, 0 to 40 °C, read like a solubility curve. Two bases are in print and
// are kept apart: one atmosphere of gas with its water vapour ("total"), or of the gas alone ("partial").

import type { TemperatureLike } from "../amount";
import { GASES, type GasRow } from "../aqueous/internal";
import { Formula, parseFormula } from "../formula";
import { readable } from "../foundation/readable";
import { type Quantity, quantity } from "../quantity";
import { expectDimension } from "../quantity/internal";
import { needChoice } from "./argument";
import { inverse } from "./curves/branch";
import { cubicAt, monotoneSlopes } from "./curves/monotone";
import { cite, type SourceKey } from "./data/sources";
import { SolubilityError } from "./error";

/** What is 101.325 kPa over the water. */
export type GasPressureBasis = "total" | "partial";

/** How much of a gas dissolves. */
export interface GasSolubility {
  /** Formula of the gas. */
  readonly gas: string;
  /** Name of the gas. */
  readonly name: string;
  /** Temperature in °C. */
  readonly celsius: number;
  /** Grams of gas, dissolved and reacted, per 100 g of water. */
  readonly perHundredGramsWater: Quantity<"mass">;
  /** What stands at 101.325 kPa: gas and water vapour together, or the gas alone. */
  readonly pressure: GasPressureBasis;
  /** Key of the source; `cite` prints it. */
  readonly source: SourceKey;
  /** What to know before relying on it. */
  readonly warnings: readonly string[];
}

/** Relative standard uncertainty: the two bases agree within 2 to 8 % after the vapour-pressure correction. */
const TRUST: Readonly<Record<string, number>> = { SO2: 0.05, NH3: 0.05, Cl2: 0.02 };
const USUAL_TRUST = 0.015;

function valueAt(row: GasRow, celsius: number): string {
  const printed = row.points.find(([at]) => at === celsius)?.[1];
  if (printed !== undefined) return printed;
  const x = row.points.map(([at]) => inverse(at));
  const y = row.points.map(([, grams]) => Math.log(Number(grams)));
  return Math.exp(cubicAt(x, y, monotoneSlopes(x, y), inverse(celsius)).value).toPrecision(4);
}

/**
 * How much of a gas dissolves in water under one atmosphere.
 *
 * @param gas - CO2, O2, NH3, SO2, H2S, Cl2 or HCl
 * @param temperature - within the row, at most 0 to 40 °C
 * @param pressure - what is 101.325 kPa: the gas with its water vapour (`"total"`, default) or the gas alone
 * @returns grams per 100 g water with standard uncertainty; gas that has reacted with the water is counted
 * @throws {SolubilityError} `solubility.no-data`, `solubility.outside-range`, `solubility.bad-option`
 * @source each row of the table names its own
 * @category Solubility
 * @example
 * gasSolubility("CO2", "20 °C").perHundredGramsWater.value.toString() // => "0.1688"
 */
export function gasSolubility(
  gas: string | Formula,
  temperature: TemperatureLike,
  pressure: GasPressureBasis = "total",
): GasSolubility {
  needChoice(pressure, "pressure", ["total", "partial"]);
  const formula = gas instanceof Formula ? gas : parseFormula(gas);
  const rows = GASES().filter((row) => parseFormula(row.gas).hasSameComposition(formula));
  const row = rows.find((candidate) => candidate.pressure === pressure);
  if (row === undefined) {
    throw new SolubilityError("solubility.no-data", `no solubility of ${formula} as a gas (${pressure} pressure)`, {
      input: formula.toString(),
      position: 0,
      hint:
        rows.length === 0
          ? `known: ${[...new Set(GASES().map((g) => g.gas))].join(", ")}`
          : `known: ${rows[0]!.pressure} pressure`,
    });
  }
  const celsius = expectDimension(temperature, "temperature", "temperature").toNumber("°C");
  const [from, to] = [row.points[0]![0], row.points.at(-1)![0]];
  if (celsius < from || celsius > to) {
    throw new SolubilityError(
      "solubility.outside-range",
      `${row.name} is tabulated from ${from} to ${to} °C, not at ${celsius} °C`,
      {
        details: { gas: row.gas, celsius, from, to },
      },
    );
  }
  const value = valueAt(row, celsius);
  const relative = TRUST[row.gas] ?? USUAL_TRUST;
  const warnings = row.note === undefined ? [] : [row.note];
  if (row.source === "memory")
    warnings.unshift(
      `recalled from memory${row.believed === undefined ? "" : `, believed to stand in ${row.believed}`}`,
    );
  if (row.read !== undefined) warnings.unshift(`recalled from memory but for the figures at ${row.read}`);
  return readable({
    gas: row.gas,
    name: row.name,
    celsius,
    perHundredGramsWater: quantity(
      { value, unit: "g", standardUncertainty: (Number(value) * relative).toPrecision(3) },
      {
        symbol: `S(${row.gas}, ${celsius} °C)`,
        label: `${row.name} in 100 g of water at ${celsius} °C under 101.325 kPa (${pressure})`,
        source: cite(row.source),
      },
    ),
    pressure,
    source: row.source,
    warnings,
  });
}

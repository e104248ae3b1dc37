// The second virial coefficient of a gas: how far the molar volume falls short of the ideal one near atmospheric pressure.

import type { Formula } from "../../formula";
import { constitutionOf } from "../../ion";
import { applyFunction, type Quantity, quantity } from "../../quantity";
import { expectDimension } from "../../quantity/internal";
import { type FormulaLike, formulaOfArgument, inSymbol, type TemperatureLike } from "../argument";
import { cite } from "../data/sources";
import { VIRIAL_COEFFICIENTS, type VirialRow } from "../data/virial";
import { AmountError } from "../error";

const REFERENCE_KELVIN = 298.15;

let rowsByGas: Map<string, VirialRow> | undefined;

/** The row of a gas; the index is made on first use. */
function rowOf(gas: Formula): VirialRow | undefined {
  rowsByGas ??= new Map(VIRIAL_COEFFICIENTS.map((row) => [constitutionOf(row.gas).identity, row]));
  return rowsByGas.get(constitutionOf(gas).identity);
}

/**
 * Second virial coefficient B of a gas, the correction in V/n = R T/p + B.
 *
 * @param gas - CO2, NH3, H2, O2, SO2 or Cl2
 * @param temperature - within the range of the row, 0 °C or 15 °C to 50 °C or 100 °C
 * @returns B in cm3/mol, negative where the gas occupies less space than an ideal one, with standard uncertainty
 * @throws {AmountError} `amount.no-virial-data`, `amount.outside-range`
 * @source CRC Handbook, virial coefficients of selected gases (coefficients from memory)
 * @category Gas
 * @example
 * secondVirialCoefficient("CO2", "25 °C").toString() // => "-127.0 ± 4.0 cm3/mol"
 */
export function secondVirialCoefficient(gas: FormulaLike, temperature: TemperatureLike): Quantity<"molar volume"> {
  const formula = formulaOfArgument(gas);
  const row = rowOf(formula);
  if (row === undefined) {
    throw new AmountError(
      "amount.no-virial-data",
      `no second virial coefficient of ${inSymbol(formula)} is tabulated`,
      {
        hint: `tabulated: ${VIRIAL_COEFFICIENTS.map((r) => r.gas).join(", ")}; leave out model to calculate as an ideal gas`,
      },
    );
  }
  const T = expectDimension(temperature, "temperature", "temperature").to("K");
  const celsius = T.in("°C");
  const [low, high] = row.celsius;
  if (celsius.lessThan(low) || celsius.greaterThan(high)) {
    throw new AmountError(
      "amount.outside-range",
      `B of ${row.gas} is tabulated from ${low} °C to ${high} °C, not at ${celsius} °C`,
      {
        hint: "leave out model to calculate as an ideal gas",
        details: { quantity: "temperature", low: `${low} °C`, high: `${high} °C`, value: `${celsius} °C` },
      },
    );
  }
  const a = row.coefficients.map(Number);
  const fit = quantity(
    { value: 0, unit: "cm3/mol", standardUncertainty: row.standardUncertainty },
    {
      symbol: "δB",
      label: `doubt of B(${inSymbol(formula)})`,
      source: cite(row.source),
    },
  );
  return applyFunction(
    [T, fit],
    {
      name: "B",
      unit: "cm3/mol",
      value: ([t]) => {
        const x = REFERENCE_KELVIN / t!.toNumber() - 1;
        return Number(a.reduceRight((s, c) => s * x + c, 0).toPrecision(10));
      },
      partials: ([t]) => {
        const k = t!.toNumber();
        const x = REFERENCE_KELVIN / k - 1;
        const slope = a.reduceRight((s, c, i) => (i === 0 ? s : s * x + i * c), 0);
        return [(-slope * REFERENCE_KELVIN) / k ** 2, 1];
      },
    },
    {
      symbol: `B(${inSymbol(formula)})`,
      label: `second virial coefficient of ${row.gas}`,
      rule: "B(T) = sum of a(i) (298.15 K / T - 1)^(i-1)",
      source: cite(row.source),
    },
  );
}

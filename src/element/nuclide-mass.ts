// Masses of nuclides as shared constants (AME2020). Kept apart from the compositions: every molar mass may meet a labelled
// nuclide, few programs ask what occurs.

import { type Quantity, quantity } from "../quantity";
import { WEIGHTS } from "./data/atomic-weights";
import { NUCLIDE_MASS_SOURCE, NUCLIDE_MASSES, type NuclideMassRow } from "./data/nuclide-masses";
import { cite } from "./data/sources";
import { ElementError } from "./error";
import { elementIndexOf, NUCLIDE_BASE, symbolAt } from "./symbols";

// Rows and constants by 1000 Z + A, filled on first use.
const rows = /* @__PURE__ */ new Map<number, NuclideMassRow>();
const masses = /* @__PURE__ */ new Map<number, Quantity>();

/** @internal Row by atomic number and mass number. */
export function nuclideMassRow(atomicNumber: number, massNumber: number): NuclideMassRow {
  if (rows.size === 0) {
    for (const row of NUCLIDE_MASSES()) rows.set((elementIndexOf(row[0]) + 1) * NUCLIDE_BASE + row[1], row);
  }
  const found = rows.get(atomicNumber * NUCLIDE_BASE + massNumber);
  if (found !== undefined) return found;
  const symbol = symbolAt(atomicNumber - 1);
  const known = massNumbersOf(symbol);
  throw new ElementError("element.unknown-nuclide", `the mass of ${massNumber}${symbol} is not in the table`, {
    hint: `of ${WEIGHTS()[atomicNumber - 1]!.name} the table has ${known.join(", ")}`,
    details: { symbol, massNumber, known },
  });
}

/** @internal Mass numbers in the table, lightest first. */
export function massNumbersOf(symbol: string): number[] {
  return NUCLIDE_MASSES()
    .filter((row) => row[0] === symbol)
    .map((row) => row[1]);
}

/** @internal Molar mass of the atoms of one nuclide, one shared constant each. */
export function nuclideMass(atomicNumber: number, massNumber: number): Quantity {
  const key = atomicNumber * NUCLIDE_BASE + massNumber;
  let mass = masses.get(key);
  if (mass === undefined) {
    const [symbol, , concise] = nuclideMassRow(atomicNumber, massNumber);
    const [value, digits] = concise.split(/[()]/) as [string, string?];
    const decimals = value.length - value.indexOf(".") - 1;
    mass = quantity(
      { value, unit: "g/mol", ...(digits === undefined ? {} : { standardUncertainty: `${digits}e-${decimals}` }) },
      {
        symbol: `A(${massNumber}${symbol})`,
        label: `mass of ${massNumber}${symbol} atoms`,
        source: cite(NUCLIDE_MASS_SOURCE),
      },
    );
    masses.set(key, mass);
  }
  return mass;
}

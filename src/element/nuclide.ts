// Nuclides: masses (AME2020) and natural compositions. Only programs that ask for a nuclide carry the table.

import { cite } from "../foundation/bibliography";
import { attempt, type Result } from "../foundation/error";
import { type Quantity, quantity } from "../quantity";
import { ATOMIC_WEIGHTS } from "./data/atomic-weights";
import { NUCLIDES, type NuclideRow } from "./data/nuclides";
import { elementIndex } from "./element";
import { ElementError } from "./error";
import { elementIndexOf, NUCLIDE_BASE } from "./symbols";

/** One nuclide. */
export interface Nuclide {
  readonly symbol: string;
  readonly atomicNumber: number;
  readonly massNumber: number;
  /** Molar mass of the neutral atoms in g/mol, with standard uncertainty. */
  readonly mass: Quantity;
  /** Mole fraction in normal material as decimal text; undefined for a nuclide that does not occur. */
  readonly composition: string | undefined;
  /** Is the mass an estimate from trends, not a measurement? */
  readonly estimated: boolean;
  /** The row as published, in decimal texts. */
  readonly row: NuclideRow;
}

const masses = /* @__PURE__ */ new Map<NuclideRow, Quantity>();

/** @internal The shared mass constant of a row. */
export function nuclideMass(row: NuclideRow): Quantity {
  let mass = masses.get(row);
  if (mass === undefined) {
    mass = quantity(
      { value: row.mass, unit: "g/mol", ...(row.uncertainty === "0" ? {} : { standardUncertainty: row.uncertainty }) },
      {
        symbol: `A(${row.massNumber}${row.symbol})`,
        label: `mass of ${row.massNumber}${row.symbol} atoms`,
        source: cite(row.source),
      },
    );
    masses.set(row, mass);
  }
  return mass;
}

// Rows by 1000 Z + A, filled on first use.
const byNumber = /* @__PURE__ */ new Map<number, NuclideRow>();

/** @internal Row by atomic number and mass number. */
export function nuclideRow(atomicNumber: number, massNumber: number): NuclideRow {
  if (byNumber.size === 0) {
    for (const row of NUCLIDES) byNumber.set((elementIndexOf(row.symbol) + 1) * NUCLIDE_BASE + row.massNumber, row);
  }
  const found = byNumber.get(atomicNumber * NUCLIDE_BASE + massNumber);
  if (found !== undefined) return found;
  const { symbol, name } = ATOMIC_WEIGHTS[atomicNumber - 1]!;
  const known = NUCLIDES.filter((candidate) => candidate.symbol === symbol).map(({ massNumber: a }) => a);
  throw new ElementError("element.unknown-nuclide", `the mass of ${massNumber}${symbol} is not in the table`, {
    hint: `of ${name} the table has ${known.join(", ")}`,
    details: { symbol, massNumber, known },
  });
}

function read(which: string): { atomicNumber: number; massNumber: number } {
  const text = which.trim();
  if (text === "D" || text === "T") return { atomicNumber: 1, massNumber: text === "D" ? 2 : 3 };
  const before = /^\[?(\d{1,3})([A-Z][a-z]?)\]?$/.exec(text);
  const after = /^([A-Za-z]{1,14})-(\d{1,3})$/.exec(text);
  const name = before?.[2] ?? after?.[1];
  if (name !== undefined) {
    const index = before === null ? elementIndex(name) : elementIndexOf(name);
    if (index >= 0) return { atomicNumber: index + 1, massNumber: Number(before?.[1] ?? after![2]) };
  }
  throw new ElementError("element.not-a-nuclide", `"${text.slice(0, 40)}" names no nuclide`, {
    input: which.slice(0, 200),
    position: 0,
    hint: 'write "13C", "[13C]" or "carbon-13"',
  });
}

/**
 * A nuclide with its mass and natural composition.
 *
 * @param which - `"13C"`, `"[13C]"`, `"C-13"`, `"carbon-13"`, `"D"` or `"T"`
 * @throws {ElementError} `element.not-a-nuclide`, `element.unknown-nuclide`, `element.unknown`
 * @source AME2020 (Chin. Phys. C 45 (2021) 030003); compositions TICE 2013 (Pure Appl. Chem. 88 (2016) 293)
 * @category Elements
 * @example
 * nuclide("12C").mass.value // => 12
 * nuclide("carbon-13").composition // => "0.0106"
 */
export function nuclide(which: string): Nuclide {
  const { atomicNumber, massNumber } = read(which);
  return toNuclide(nuclideRow(atomicNumber, massNumber), atomicNumber);
}

function toNuclide(row: NuclideRow, atomicNumber: number): Nuclide {
  return {
    symbol: row.symbol,
    atomicNumber,
    massNumber: row.massNumber,
    mass: nuclideMass(row),
    composition: row.composition,
    estimated: row.estimated === true,
    row,
  };
}

/**
 * {@link nuclide}, with the outcome as data.
 *
 * @category Elements
 * @example
 * tryNuclide("99C").ok // => false
 */
export function tryNuclide(which: string): Result<Nuclide> {
  return attempt(() => nuclide(which));
}

/**
 * The nuclides of an element in the table, lightest first: all that occur in nature, and the longest-lived one of an
 * element that has no standard atomic weight.
 *
 * @throws {ElementError} `element.unknown`
 * @category Elements
 * @example
 * nuclidesOf("Cu").map((n) => n.massNumber) // => [63, 65]
 */
export function nuclidesOf(which: string | number): Nuclide[] {
  const index = elementIndex(which);
  const { symbol } = ATOMIC_WEIGHTS[index]!;
  return NUCLIDES.filter((row) => row.symbol === symbol).map((row) => toNuclide(row, index + 1));
}

/**
 * As {@link nuclidesOf}, but gives the refusal back as data.
 *
 * @category Elements
 * @example
 * tryNuclidesOf("Xx").ok // => false
 */
export function tryNuclidesOf(which: string | number): Result<Nuclide[]> {
  return attempt(() => nuclidesOf(which));
}

/** @internal The most abundant nuclide of an element, for monoisotopic masses; undefined if none occurs. */
export function mostAbundant(index: number): NuclideRow | undefined {
  const { symbol } = ATOMIC_WEIGHTS[index]!;
  let best: NuclideRow | undefined;
  for (const row of NUCLIDES) {
    if (row.symbol !== symbol || row.composition === undefined) continue;
    if (best === undefined || Number(row.composition) > Number(best.composition)) best = row;
  }
  return best;
}

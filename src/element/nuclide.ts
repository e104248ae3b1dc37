// Nuclides: masses (AME2020) and natural compositions (TICE 2013).

import { kindOf } from "../foundation/argument";
import { frozen } from "../foundation/frozen";
import { readable } from "../foundation/readable";
import type { Quantity } from "../quantity";
import { ISOTOPIC_COMPOSITIONS, type IsotopicCompositionRow } from "./data/isotopic-compositions";
import { elementIndex } from "./element";
import { ElementError } from "./error";
import { massNumbersOf, nuclideMass, nuclideMassRow } from "./nuclide-mass";
import { elementIndexOf, symbolAt } from "./symbols";

/** One nuclide. */
export interface Nuclide {
  /** Of its element. */
  readonly symbol: string;
  /** Protons in the nucleus. */
  readonly atomicNumber: number;
  /** Protons and neutrons in the nucleus. */
  readonly massNumber: number;
  /** Molar mass of the neutral atoms in g/mol, with standard uncertainty. */
  readonly mass: Quantity<"molar mass">;
  /** Mole fraction in normal material as decimal text; undefined for a nuclide that does not occur. */
  readonly composition: string | undefined;
  /** Is the mass an estimate from trends, not a measurement? */
  readonly estimated: boolean;
  /** The composition as published, in decimal texts with bounds and best measurement. */
  readonly isotopicComposition: IsotopicCompositionRow | undefined;
}

function read(which: string): { atomicNumber: number; massNumber: number } {
  if (typeof which !== "string") {
    throw new ElementError("element.not-a-nuclide", `a nuclide is named by text, not ${kindOf(which)}`, {
      hint: 'write "13C", "[13C]" or "carbon-13"',
    });
  }
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
  return toNuclide(atomicNumber, massNumber);
}

function toNuclide(atomicNumber: number, massNumber: number): Nuclide {
  const [symbol, , , estimated] = nuclideMassRow(atomicNumber, massNumber);
  const row = ISOTOPIC_COMPOSITIONS().find((r) => r.symbol === symbol && r.massNumber === massNumber);
  return frozen(
    readable({
      symbol,
      atomicNumber,
      massNumber,
      mass: nuclideMass(atomicNumber, massNumber),
      composition: row?.composition,
      estimated: estimated !== undefined,
      isotopicComposition: row,
    }),
  );
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
  return massNumbersOf(symbolAt(index)).map((massNumber) => toNuclide(index + 1, massNumber));
}

/** @internal Mass number of the most abundant nuclide of an element, for monoisotopic masses; undefined if none occurs. */
export function mostAbundant(index: number): number | undefined {
  const symbol = symbolAt(index);
  let best: IsotopicCompositionRow | undefined;
  for (const row of ISOTOPIC_COMPOSITIONS()) {
    if (row.symbol !== symbol) continue;
    if (best === undefined || Number(row.composition) > Number(best.composition)) best = row;
  }
  return best?.massNumber;
}

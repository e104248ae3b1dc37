// A second, independent arithmetic for problems composed here: abridged atomic weights and a reader of counts, nothing of
// the library. Abridged to five figures, so a result on them is good to one in ten thousand or a little worse.
import { expect, test } from "vitest";
import type { Quantity } from "../../src/quantity";

/** Atomic weights abridged to five significant figures: IUPAC Technical Report 2021, table 3 (memory). */
const WEIGHTS: Readonly<Record<string, number>> = {
  H: 1.008,
  C: 12.011,
  N: 14.007,
  O: 15.999,
  Na: 22.99,
  Mg: 24.305,
  Al: 26.982,
  P: 30.974,
  S: 32.06,
  Cl: 35.45,
  K: 39.098,
  Ca: 40.078,
  Cr: 51.996,
  Mn: 54.938,
  Fe: 55.845,
  Co: 58.933,
  Ni: 58.693,
  Cu: 63.546,
  Zn: 65.38,
  Ag: 107.87,
  Cd: 112.41,
  Sn: 118.71,
  I: 126.9,
  Ba: 137.33,
  Pb: 207.2,
};

/** Molar mass from counts written out: `M("Cu S O4")`, and `M("Cu S O4", 5)` with five waters. */
export function M(counts: string, waters = 0): number {
  let mass = waters * (2 * 1.008 + 15.999);
  for (const part of counts.split(" ")) {
    const [, symbol, count] = /^([A-Z][a-z]?)(\d*)$/.exec(part)!;
    mass += WEIGHTS[symbol!]! * Number(count === "" ? 1 : count);
  }
  return mass;
}

/** Molar gas constant in kPa L/(mol K), from k and N(A) of the SI Brochure, 9th ed. */
export const R = 8.314462618;

/** What results on five-figure weights are good to, relative. */
export const ABRIDGED = 2e-4;

/** A problem, its answer by hand and in what unit, what the library says, and what the two may differ by. */
export type Row = readonly [question: string, hand: number, unit: string, result: () => Quantity, within?: number];

/** One test for each problem. */
export function check(rows: readonly Row[]): void {
  for (const [question, hand, unit, result, within = ABRIDGED] of rows) {
    test(question, () => {
      expect(Math.abs(result().in(unit).toNumber() / hand - 1)).toBeLessThan(within);
    });
  }
}

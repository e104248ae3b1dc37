// Acids of the bench with the hydrogen that a base takes from them.
import type { SourceKey } from "./sources";

/** One acid. */
export interface AcidRow {
  /** Hill formula, without crystal water. */
  readonly formula: string;
  readonly protons: bigint;
  readonly source: SourceKey;
}

export const ACIDS: readonly AcidRow[] = [
  { formula: "ClH", protons: 1n, source: "commonPractice" },
  { formula: "BrH", protons: 1n, source: "commonPractice" },
  { formula: "HI", protons: 1n, source: "commonPractice" },
  { formula: "FH", protons: 1n, source: "commonPractice" },
  { formula: "HNO3", protons: 1n, source: "commonPractice" },
  { formula: "ClHO4", protons: 1n, source: "commonPractice" },
  { formula: "H2O4S", protons: 2n, source: "commonPractice" },
  { formula: "H3O4P", protons: 3n, source: "commonPractice" },
  { formula: "H3NO3S", protons: 1n, source: "commonPractice" },
  { formula: "CH2O2", protons: 1n, source: "commonPractice" },
  { formula: "C2H4O2", protons: 1n, source: "commonPractice" },
  { formula: "C2H2O4", protons: 2n, source: "commonPractice" },
  { formula: "C4H6O6", protons: 2n, source: "commonPractice" },
  { formula: "C6H8O7", protons: 3n, source: "commonPractice" },
];

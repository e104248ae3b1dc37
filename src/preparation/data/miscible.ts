// Liquids that mix with water in any proportion, or that water absorbs eagerly: no solubility limits them.
import type { SourceKey } from "./sources";

/** One liquid. */
interface MiscibleRow {
  /** Hill formula. */
  readonly formula: string;
  readonly source: SourceKey;
}

export const MISCIBLE: readonly MiscibleRow[] = [
  { formula: "H2O4S", source: "commonPractice" },
  { formula: "HNO3", source: "commonPractice" },
  { formula: "H3O4P", source: "commonPractice" },
  { formula: "ClHO4", source: "commonPractice" },
  { formula: "CH2O2", source: "commonPractice" },
  { formula: "C2H4O2", source: "commonPractice" },
  { formula: "H2O2", source: "commonPractice" },
  { formula: "CH4O", source: "commonPractice" },
  { formula: "C2H6O", source: "commonPractice" },
  { formula: "C3H8O", source: "commonPractice" },
  { formula: "C3H6O", source: "commonPractice" },
  { formula: "C3H8O3", source: "commonPractice" },
  { formula: "C2H4O", source: "commonPractice" },
];

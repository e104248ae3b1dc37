// What leaves a drying cake with the water.
import type { SourceKey } from "./sources";

export const VOLATILE: readonly { readonly formula: string; readonly source: SourceKey }[] = [
  { formula: "H3N", source: "commonPractice" },
  { formula: "ClH", source: "commonPractice" },
  { formula: "HNO3", source: "commonPractice" },
  { formula: "C2H4O2", source: "commonPractice" },
  { formula: "CH2O2", source: "commonPractice" },
  { formula: "H2O2", source: "commonPractice" },
  { formula: "CH4O", source: "commonPractice" },
  { formula: "C2H6O", source: "commonPractice" },
  { formula: "C3H8O", source: "commonPractice" },
  { formula: "C3H6O", source: "commonPractice" },
];

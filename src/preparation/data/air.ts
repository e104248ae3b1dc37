// What air makes of a powder that stands open: oxides slake, bases take up carbon dioxide. Common practice; the reactions are those of
// any textbook.
import type { SourceKey } from "./sources";

/** A powder and what it becomes; every atom of its metal stays. */
interface ChangedInAirRow {
  readonly formula: string;
  readonly becomes: readonly string[];
  readonly source: SourceKey;
}

export const CHANGED_IN_AIR: readonly ChangedInAirRow[] = [
  { formula: "CaO", becomes: ["Ca(OH)2", "CaCO3"], source: "commonPractice" },
  { formula: "Ca(OH)2", becomes: ["CaCO3"], source: "commonPractice" },
  { formula: "SrO", becomes: ["Sr(OH)2", "SrCO3"], source: "commonPractice" },
  { formula: "Sr(OH)2", becomes: ["SrCO3"], source: "commonPractice" },
  { formula: "BaO", becomes: ["Ba(OH)2", "BaCO3"], source: "commonPractice" },
  { formula: "Ba(OH)2", becomes: ["BaCO3"], source: "commonPractice" },
  { formula: "MgO", becomes: ["Mg(OH)2"], source: "commonPractice" },
];

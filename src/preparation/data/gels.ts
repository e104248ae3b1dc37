// Precipitates that keep much liquor.
import type { SourceKey } from "./sources";

/** Solids beside hydroxides and cyanidoferrates that precipitate as slimes, by Hill formula without crystal water. */
export const GELS: readonly { readonly formula: string; readonly source: SourceKey }[] = [
  { formula: "MnO2", source: "commonPractice" },
  { formula: "FeHO2", source: "commonPractice" },
  { formula: "AlHO2", source: "commonPractice" },
  { formula: "O2Si", source: "commonPractice" },
  { formula: "O2Sn", source: "commonPractice" },
];

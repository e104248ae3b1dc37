// Precipitates that keep much liquor.
import type { SourceKey } from "./sources";

/** Solids beside hydroxides and cyanidoferrates that precipitate as slimes, by formula without crystal water, as the registry spells it. */
export const GELS: readonly { readonly formula: string; readonly source: SourceKey }[] = [
  { formula: "MnO2", source: "commonPractice" },
  { formula: "FeO(OH)", source: "commonPractice" },
  { formula: "AlO(OH)", source: "commonPractice" },
  { formula: "SiO2", source: "commonPractice" },
  { formula: "SnO2", source: "commonPractice" },
];

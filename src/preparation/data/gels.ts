// Precipitates that keep much liquor.
import type { SourceKey } from "./sources";

/** A solid that precipitates as a slime. */
export interface GelRow {
  /** Without crystal water, as the registry spells it. */
  readonly formula: string;
  /** The whole liquor stiffens to a jelly. */
  readonly sets?: true;
  readonly source: SourceKey;
}

/** Beside hydroxides and cyanidoferrates; none of them dissolves in water. */
export const GELS: readonly GelRow[] = [
  { formula: "MnO2", source: "commonPractice" },
  { formula: "FeO(OH)", source: "commonPractice" },
  { formula: "AlO(OH)", source: "commonPractice" },
  { formula: "SiO2", sets: true, source: "commonPractice" },
  { formula: "H2SiO3", sets: true, source: "commonPractice" },
  { formula: "H4SiO4", sets: true, source: "commonPractice" },
  { formula: "H2WO4", source: "commonPractice" },
  { formula: "SnO2", source: "commonPractice" },
];

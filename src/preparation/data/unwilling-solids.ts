// Solids that do not react as their equation says: those that coat what they form from, and oxides that have been fired.
import type { SourceKey } from "./sources";

/** Oxides that acids leave alone, or take only hot and strong, once they have been fired. */
interface FiredOxideRow {
  readonly oxide: string;
  /** Which acids dissolve it: none, or strong ones, hot and slowly. */
  readonly dissolves: "not in acid" | "in hot strong acid";
  readonly source: SourceKey;
}

export const FIRED_OXIDES: readonly FiredOxideRow[] = [
  { oxide: "SiO2", dissolves: "not in acid", source: "commonPractice" },
  { oxide: "TiO2", dissolves: "not in acid", source: "commonPractice" },
  { oxide: "ZrO2", dissolves: "not in acid", source: "commonPractice" },
  { oxide: "SnO2", dissolves: "not in acid", source: "commonPractice" },
  { oxide: "Cr2O3", dissolves: "not in acid", source: "commonPractice" },
  { oxide: "WO3", dissolves: "not in acid", source: "commonPractice" },
  { oxide: "Al2O3", dissolves: "in hot strong acid", source: "commonPractice" },
  { oxide: "Fe2O3", dissolves: "in hot strong acid", source: "commonPractice" },
  { oxide: "Fe3O4", dissolves: "in hot strong acid", source: "commonPractice" },
  { oxide: "NiO", dissolves: "in hot strong acid", source: "commonPractice" },
  { oxide: "CeO2", dissolves: "in hot strong acid", source: "commonPractice" },
  { oxide: "Co3O4", dissolves: "in hot strong acid", source: "commonPractice" },
];

/** Solids of which a new one grows as a tight skin on the grains of the old: lumps stop, powder goes slowly. */
export const COATING = {
  anionsOf: ["CO3^2-", "O^2-", "OH-"],
  source: "commonPractice",
} as const satisfies { anionsOf: readonly string[]; source: SourceKey };

// Solids that do not react as their equation says: those that coat what they form from, and oxides that have been fired.
import type { SourceKey } from "./sources";

/** Oxides that acids and lye leave alone, or take only hot and strong, once they have been fired. */
export interface FiredOxideRow {
  readonly formula: string;
  /** Which acids dissolve it: none, or strong ones, hot and slowly, or the one or the other by how hot it has been. */
  readonly dissolves: "not in acid" | "in hot strong acid" | "by its heat";
  /** Whether lye leaves it alone as well, or takes it only where it is a gel; undefined where lye dissolves it. */
  readonly inLye?: "stays" | "as gel";
  readonly source: SourceKey;
}

export const FIRED_OXIDES: readonly FiredOxideRow[] = [
  { formula: "SiO2", dissolves: "not in acid", inLye: "as gel", source: "commonPractice" },
  { formula: "TiO2", dissolves: "not in acid", inLye: "stays", source: "commonPractice" },
  { formula: "ZrO2", dissolves: "not in acid", inLye: "stays", source: "commonPractice" },
  { formula: "SnO2", dissolves: "not in acid", inLye: "stays", source: "commonPractice" },
  { formula: "Cr2O3", dissolves: "not in acid", inLye: "stays", source: "commonPractice" },
  { formula: "WO3", dissolves: "not in acid", source: "commonPractice" },
  { formula: "Al2O3", dissolves: "by its heat", inLye: "stays", source: "commonPractice" },
  { formula: "Fe2O3", dissolves: "in hot strong acid", inLye: "stays", source: "commonPractice" },
  { formula: "Fe3O4", dissolves: "in hot strong acid", inLye: "stays", source: "commonPractice" },
  { formula: "NiO", dissolves: "in hot strong acid", inLye: "stays", source: "commonPractice" },
  { formula: "CeO2", dissolves: "in hot strong acid", inLye: "stays", source: "commonPractice" },
  { formula: "Co3O4", dissolves: "in hot strong acid", inLye: "stays", source: "commonPractice" },
];

/** Solids of which a new one grows as a tight skin on the grains of the old: lumps stop, powder goes slowly. */
export const COATING = {
  anionsOf: ["CO3^2-", "O^2-", "OH-"],
  source: "commonPractice",
} as const satisfies { anionsOf: readonly string[]; source: SourceKey };

/** The charge of the metal from which its oxide is the anhydride of an acid: tungstic, molybdic, vanadic, chromic. */
export const ANHYDRIDES = { from: 5, source: "commonPractice" } as const satisfies { from: number; source: SourceKey };

/** Aluminates that water knows with water in them only: hydrogarnet in the end, ettringite beside sulfate. */
export const DRY_ALUMINATES: readonly {
  readonly cation: string;
  readonly instead: string;
  readonly from: string;
  readonly source: SourceKey;
}[] = [
  { cation: "Ca^2+", instead: "lime and aluminate give hydrates there, Ca₃Al₂(OH)₁₂ in the end, and with sulfate ettringite, Ca₆Al₂(SO₄)₃(OH)₁₂·26H₂O; more lime than the aluminium salt takes is bound so, and no washing separates them", from: "CaCO₃ and Al₂O₃", source: "commonPractice" },
  { cation: "Sr^2+", instead: "strontia and aluminate give hydrates there, Sr₃Al₂(OH)₁₂ in the end", from: "SrCO₃ and Al₂O₃", source: "commonPractice" },
];

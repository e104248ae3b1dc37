// Acids of the bench: the hydrons a base takes from them, the anion that is left, and whether dilute water takes the first
// hydron completely. The steps with their constants stand in `acid-steps.ts`.
import { once } from "../../foundation/memo";
import type { SourceKey } from "./sources";

/** One acid. */
export interface AcidRow {
  /** As the registry spells it, without crystal water. */
  readonly formula: string;
  /** Hydrons a base takes from one molecule. */
  readonly protons: number;
  /** What is left when all of them have gone. */
  readonly anion: string;
  /** Completely dissociated in dilute water (the first hydron of sulfuric acid, and for counting both). */
  readonly strong?: true;
  /** So weak (pKa of the first step above 6) that what holds it is not sour. */
  readonly veryWeak?: true;
  readonly source: SourceKey;
}

export const ACIDS = /* @__PURE__ */ once((): readonly AcidRow[] => [
  { formula: "HCl", protons: 1, anion: "Cl-", strong: true, source: "commonPractice" },
  { formula: "HBr", protons: 1, anion: "Br-", strong: true, source: "commonPractice" },
  { formula: "HI", protons: 1, anion: "I-", strong: true, source: "commonPractice" },
  { formula: "HNO3", protons: 1, anion: "NO3-", strong: true, source: "commonPractice" },
  { formula: "H2SO4", protons: 2, anion: "SO4^2-", strong: true, source: "commonPractice" },
  { formula: "HClO3", protons: 1, anion: "ClO3-", strong: true, source: "commonPractice" },
  { formula: "HClO4", protons: 1, anion: "ClO4-", strong: true, source: "commonPractice" },
  { formula: "HBrO3", protons: 1, anion: "BrO3-", strong: true, source: "commonPractice" },
  { formula: "HMnO4", protons: 1, anion: "MnO4-", strong: true, source: "commonPractice" },
  { formula: "H2CrO4", protons: 2, anion: "CrO4^2-", strong: true, source: "commonPractice" },
  { formula: "H2Cr2O7", protons: 2, anion: "Cr2O7^2-", strong: true, source: "commonPractice" },
  { formula: "H2SeO4", protons: 2, anion: "SeO4^2-", strong: true, source: "commonPractice" },
  { formula: "HBF4", protons: 1, anion: "BF4-", strong: true, source: "commonPractice" },
  { formula: "H2SiF6", protons: 2, anion: "SiF6^2-", strong: true, source: "commonPractice" },
  { formula: "HAuCl4", protons: 1, anion: "[AuCl4]^-", strong: true, source: "commonPractice" },
  { formula: "H2PtCl6", protons: 2, anion: "[PtCl6]^2-", strong: true, source: "commonPractice" },
  { formula: "HF", protons: 1, anion: "F-", source: "commonPractice" },
  { formula: "H2S", protons: 2, anion: "S^2-", veryWeak: true, source: "commonPractice" },
  { formula: "H2Se", protons: 2, anion: "Se^2-", source: "commonPractice" },
  { formula: "HCN", protons: 1, anion: "CN-", veryWeak: true, source: "commonPractice" },
  { formula: "HN3", protons: 1, anion: "N3-", source: "commonPractice" },
  { formula: "HNO2", protons: 1, anion: "NO2-", source: "commonPractice" },
  { formula: "H2SO3", protons: 2, anion: "SO3^2-", source: "commonPractice" },
  { formula: "H2CO3", protons: 2, anion: "CO3^2-", veryWeak: true, source: "commonPractice" },
  { formula: "H3PO4", protons: 3, anion: "PO4^3-", source: "commonPractice" },
  { formula: "H3PO3", protons: 2, anion: "HPO3^2-", source: "commonPractice" },
  { formula: "H3PO2", protons: 1, anion: "H2PO2-", source: "commonPractice" },
  { formula: "H3AsO4", protons: 3, anion: "AsO4^3-", source: "commonPractice" },
  { formula: "H3BO3", protons: 1, anion: "H2BO3-", veryWeak: true, source: "commonPractice" },
  { formula: "H3NSO3", protons: 1, anion: "NH2SO3-", source: "commonPractice" },
  { formula: "HCOOH", protons: 1, anion: "HCOO-", source: "commonPractice" },
  { formula: "CH3COOH", protons: 1, anion: "CH3COO-", source: "commonPractice" },
  { formula: "H2C2O4", protons: 2, anion: "C2O4^2-", source: "commonPractice" },
  { formula: "C4H6O6", protons: 2, anion: "C4H4O6^2-", source: "commonPractice" },
  { formula: "C6H8O7", protons: 3, anion: "C6H5O7^3-", source: "commonPractice" },
]);

// Compounds that leave a pot as gas at bench temperatures, and what a workroom does with them. Water vapour is not counted.
// Shares of the air are from memory of national lists (8 h figures), which differ.
import type { SourceKey } from "./sources";

/** One gas. */
export interface GasRow {
  /** Hill formula. */
  readonly formula: string;
  /** Belongs under a hood whatever the quantity. */
  readonly hood?: true;
  /** Water holds on to it: it stays in a wet batch. */
  readonly keptByWater?: true;
  readonly source: SourceKey;
  /** Share of a room's air it should stay under. */
  readonly limit?: { readonly share: string; readonly what: string; readonly source: SourceKey };
}

export const GASES: readonly GasRow[] = [
  { formula: "CO2", source: "commonPractice", limit: { share: "0.5 %", what: "8 h limit", source: "memory" } },
  { formula: "H2", source: "commonPractice", limit: { share: "0.4 %", what: "a tenth of the lower explosive limit", source: "memory" } },
  { formula: "O2", source: "commonPractice" },
  { formula: "N2", source: "commonPractice" },
  { formula: "N2O", source: "commonPractice" },
  { formula: "NO", hood: true, source: "commonPractice" },
  { formula: "NO2", hood: true, source: "commonPractice" },
  { formula: "Cl2", hood: true, source: "commonPractice" },
  { formula: "O2S", hood: true, source: "commonPractice" },
  { formula: "O3S", hood: true, keptByWater: true, source: "commonPractice" },
  { formula: "H2S", hood: true, source: "commonPractice" },
  { formula: "CO", hood: true, source: "commonPractice" },
  { formula: "CHN", hood: true, source: "commonPractice" },
  { formula: "ClH", hood: true, keptByWater: true, source: "commonPractice" },
  { formula: "H3N", keptByWater: true, source: "commonPractice" },
  { formula: "BrH", hood: true, keptByWater: true, source: "commonPractice" },
  { formula: "HI", hood: true, keptByWater: true, source: "commonPractice" },
  { formula: "FH", hood: true, keptByWater: true, source: "commonPractice" },
  { formula: "CH4", source: "commonPractice" },
  { formula: "C2H2", source: "commonPractice" },
  { formula: "H3P", hood: true, source: "commonPractice" },
];

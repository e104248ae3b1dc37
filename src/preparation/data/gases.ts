// Compounds that leave a pot as gas at bench temperatures, and what a workroom does with them. Water vapour is not counted.
// Shares of the air are from memory of national lists (8 h figures), which differ.
import type { SourceKey } from "./sources";

/** One gas. */
export interface GasRow {
  /** As the registry spells it. */
  readonly formula: string;
  /** Belongs under a hood whatever the quantity. */
  readonly hood?: true;
  /** Water holds on to it: it stays in a wet batch. */
  readonly keptByWater?: true;
  /** Leaves a drying cake with the water. */
  readonly leavesCake?: true;
  /** It burns. */
  readonly burns?: true;
  /** A solid may be heated in it: it is the air of a furnace, or reduces. */
  readonly furnace?: true;
  readonly source: SourceKey;
  /** Share of a room's air it should stay under. */
  readonly limit?: { readonly share: string; readonly what: string; readonly source: SourceKey };
}

export const GASES: readonly GasRow[] = [
  { formula: "CO2", source: "commonPractice", limit: { share: "0.5 %", what: "8 h limit", source: "memory" } },
  { formula: "H2", burns: true, furnace: true, source: "commonPractice", limit: { share: "0.4 %", what: "a tenth of the lower explosive limit", source: "memory" } },
  { formula: "O2", furnace: true, source: "commonPractice" },
  { formula: "N2", source: "commonPractice" },
  { formula: "N2O", source: "commonPractice" },
  { formula: "NO", hood: true, source: "commonPractice" },
  { formula: "NO2", hood: true, source: "commonPractice" },
  { formula: "Cl2", hood: true, source: "commonPractice" },
  { formula: "SO2", hood: true, source: "commonPractice" },
  { formula: "SO3", hood: true, keptByWater: true, source: "commonPractice" },
  { formula: "H2S", hood: true, burns: true, source: "commonPractice" },
  { formula: "CO", hood: true, burns: true, furnace: true, source: "commonPractice" },
  { formula: "HCN", hood: true, source: "commonPractice" },
  { formula: "HCl", hood: true, keptByWater: true, leavesCake: true, source: "commonPractice" },
  { formula: "NH3", keptByWater: true, leavesCake: true, source: "commonPractice" },
  { formula: "HBr", hood: true, keptByWater: true, source: "commonPractice" },
  { formula: "HI", hood: true, keptByWater: true, source: "commonPractice" },
  { formula: "HF", hood: true, keptByWater: true, source: "commonPractice" },
  { formula: "CH4", burns: true, furnace: true, source: "commonPractice" },
  { formula: "C2H2", burns: true, source: "commonPractice" },
  { formula: "PH3", hood: true, burns: true, source: "commonPractice" },
];

/** What is written for a gas in water, and is known in no other way. */
export const GASES_IN_WATER: readonly { readonly formula: string; readonly gas: string; readonly source: SourceKey }[] = [
  { formula: "H2CO3", gas: "CO2", source: "commonPractice" },
  { formula: "H2SO3", gas: "SO2", source: "commonPractice" },
  { formula: "NH4OH", gas: "NH3", source: "commonPractice" },
];

/** Words of a pack for a gas under pressure. */
export const CYLINDERS = { words: ["cylinder", "steel bottle"], source: "commonPractice" } as const satisfies {
  words: readonly string[];
  source: SourceKey;
};

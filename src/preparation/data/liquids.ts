// Liquids that mix with water in any proportion, or that water absorbs eagerly: no solubility limits them.
import type { SourceKey } from "./sources";

/** One liquid. */
export interface LiquidRow {
  /** As the registry spells it. */
  readonly formula: string;
  /** Leaves a drying cake with the water. */
  readonly leavesCake?: true;
  /** Brings a salt out of water, or rinses it. */
  readonly antisolvent?: true;
  readonly source: SourceKey;
}

export const LIQUIDS: readonly LiquidRow[] = [
  { formula: "H2SO4", source: "commonPractice" },
  { formula: "HNO3", leavesCake: true, source: "commonPractice" },
  { formula: "H3PO4", source: "commonPractice" },
  { formula: "HClO4", source: "commonPractice" },
  { formula: "HCOOH", leavesCake: true, source: "commonPractice" },
  { formula: "CH3COOH", leavesCake: true, source: "commonPractice" },
  { formula: "H2O2", leavesCake: true, source: "commonPractice" },
  { formula: "CH3OH", leavesCake: true, antisolvent: true, source: "commonPractice" },
  { formula: "C2H5OH", leavesCake: true, antisolvent: true, source: "commonPractice" },
  { formula: "C3H8O", leavesCake: true, antisolvent: true, source: "commonPractice" },
  { formula: "CH3COCH3", leavesCake: true, antisolvent: true, source: "commonPractice" },
  { formula: "C3H8O3", source: "commonPractice" },
  { formula: "CH3CHO", leavesCake: true, source: "commonPractice" },
];

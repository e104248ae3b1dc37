// Liquids that mix with water in any proportion, or that water absorbs eagerly: no solubility limits them.
import type { SourceKey } from "./sources";

/** One liquid. */
export interface LiquidRow {
  /** As the registry spells it. */
  readonly formula: string;
  /** Leaves a drying cake with the water. */
  readonly leavesCake?: true;
  /** Boils at so many °C, lower than water: it leaves a liquor before the water does. From memory of handbooks. */
  readonly boils?: string;
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
  { formula: "CH3OH", leavesCake: true, boils: "65", antisolvent: true, source: "commonPractice" },
  { formula: "C2H5OH", leavesCake: true, boils: "78", antisolvent: true, source: "commonPractice" },
  { formula: "C3H8O", leavesCake: true, boils: "82", antisolvent: true, source: "commonPractice" },
  { formula: "CH3COCH3", leavesCake: true, boils: "56", antisolvent: true, source: "commonPractice" },
  { formula: "C3H8O3", source: "commonPractice" },
  { formula: "CH3CHO", leavesCake: true, boils: "20", source: "commonPractice" },
];

/** Liquids that do not mix with water, or that water takes apart: parting and distilling liquids is no work of these procedures. */
export const NOT_MIXING: readonly { readonly formula: string; readonly source: SourceKey }[] = [
  { formula: "Br2", source: "commonPractice" },
  { formula: "SnCl4", source: "commonPractice" },
  { formula: "TiCl4", source: "commonPractice" },
  { formula: "SiCl4", source: "commonPractice" },
  { formula: "PCl3", source: "commonPractice" },
  { formula: "POCl3", source: "commonPractice" },
  { formula: "S2Cl2", source: "commonPractice" },
  { formula: "SOCl2", source: "commonPractice" },
  { formula: "CS2", source: "commonPractice" },
  { formula: "CCl4", source: "commonPractice" },
  { formula: "CHCl3", source: "commonPractice" },
  { formula: "CH3COOC2H5", source: "commonPractice" },
  { formula: "(C2H5)2O", source: "commonPractice" },
  { formula: "Hg", source: "commonPractice" },
];

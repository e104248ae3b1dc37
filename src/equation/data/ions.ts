// Ligands, and complexes without a row in the ion layer's table, that are told apart inside a formula, with the charges they
// carry. Where more than one charge is known, the first that leaves whole oxidation states is taken. Ions that stand in salts
// have their row in the ion layer; a charge listed here goes before those of that table.
import type { SourceKey } from "./sources";

/** A unit inside a formula: spelling, possible charges, source. */
export interface UnitRow {
  readonly formula: string;
  readonly charges: readonly number[];
  readonly source: SourceKey;
}

// biome-ignore format: a table, one unit a line
export const UNITS: readonly UnitRow[] = [
  { formula: "AsO3", charges: [-3, -1], source: "redBook2005" },
  { formula: "B(OH)4", charges: [-1], source: "redBook2005" },
  { formula: "Al(OH)6", charges: [-3], source: "redBook2005" },
  { formula: "AlCl4", charges: [-1], source: "redBook2005" },
  { formula: "SnO2", charges: [-2], source: "redBook2005" },
  { formula: "ZnO2", charges: [-2], source: "redBook2005" },
  { formula: "PtCl4", charges: [-2], source: "redBook2005" },
  { formula: "NH3", charges: [0], source: "redBook2005" },
  { formula: "H2O", charges: [0], source: "redBook2005" },
  { formula: "CO", charges: [0], source: "redBook2005" },
  { formula: "N2H4", charges: [0], source: "redBook2005" },
  { formula: "CO(NH2)2", charges: [0], source: "redBook2005" },
  { formula: "N2H4CO", charges: [0], source: "redBook2005" },
  { formula: "CH4N2O", charges: [0], source: "redBook2005" },
  { formula: "Fe(CN)6", charges: [-4, -3], source: "redBook2005" },
  { formula: "Cr(CN)6", charges: [-3, -4], source: "redBook2005" },
  { formula: "Mn(CN)6", charges: [-3, -4], source: "redBook2005" },
  { formula: "Co(CN)6", charges: [-3, -4], source: "redBook2005" },
  { formula: "NO", charges: [1], source: "redBook2005" },
  { formula: "UO2", charges: [2], source: "redBook2005" },
  { formula: "VO2", charges: [1], source: "redBook2005" },
  { formula: "VO", charges: [2], source: "redBook2005" },
];

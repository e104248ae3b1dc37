// Ligands: formula, charge as used for counting oxidation numbers, name in a coordination entity (Red Book 2005: Tables VII
// and IX, table numbers from memory). Older names are general knowledge (`memory`) that is read, never given out.
import { once } from "../../foundation/memo";
import type { SourceKey } from "./sources";

/** One ligand. */
export interface LigandRow {
  readonly formula: string;
  readonly charge: number;
  readonly name: string;
  readonly also?: readonly string[];
  /** Other ways it is written inside a complex. */
  readonly written?: readonly string[];
  /** Counted with bis, tris, tetrakis. */
  readonly bis?: true;
  readonly source: SourceKey;
}

export const LIGANDS = /* @__PURE__ */ once((): readonly LigandRow[] => [
  { formula: "NH3", charge: 0, name: "ammine", also: ["ammino", "amine"], written: ["H3N"], source: "redBook2005" },
  { formula: "H2O", charge: 0, name: "aqua", also: ["aquo"], written: ["OH2"], source: "redBook2005" },
  { formula: "CO", charge: 0, name: "carbonyl", source: "redBook2005" },
  { formula: "NO", charge: 0, name: "nitrosyl", source: "redBook2005" },
  { formula: "N2", charge: 0, name: "dinitrogen", bis: true, source: "redBook2005" },
  { formula: "O2", charge: -2, name: "peroxido", also: ["peroxo"], source: "redBook2005" },
  { formula: "CN", charge: -1, name: "cyanido", also: ["cyano"], source: "redBook2005" },
  { formula: "F", charge: -1, name: "fluorido", also: ["fluoro"], source: "redBook2005" },
  { formula: "Cl", charge: -1, name: "chlorido", also: ["chloro"], source: "redBook2005" },
  { formula: "Br", charge: -1, name: "bromido", also: ["bromo"], source: "redBook2005" },
  { formula: "I", charge: -1, name: "iodido", also: ["iodo"], source: "redBook2005" },
  { formula: "H", charge: -1, name: "hydrido", also: ["hydro"], source: "redBook2005" },
  { formula: "OH", charge: -1, name: "hydroxido", also: ["hydroxo", "hydroxy"], written: ["HO"], source: "redBook2005" },
  { formula: "O", charge: -2, name: "oxido", also: ["oxo"], source: "redBook2005" },
  { formula: "S", charge: -2, name: "sulfido", also: ["thio", "thioxo"], source: "redBook2005" },
  { formula: "NH2", charge: -1, name: "amido", also: ["azanido"], source: "redBook2005" },
  { formula: "N3", charge: -1, name: "azido", source: "redBook2005" },
  { formula: "SCN", charge: -1, name: "thiocyanato", also: ["thiocyanato-S", "thiocyanato-κS"], source: "redBook2005" },
  { formula: "NCS", charge: -1, name: "isothiocyanato", also: ["thiocyanato-N", "thiocyanato-κN"], source: "redBook2005" },
  { formula: "OCN", charge: -1, name: "cyanato", written: ["NCO"], source: "redBook2005" },
  { formula: "NO2", charge: -1, name: "nitrito-κN", also: ["nitrito-N", "nitrito-N-", "nitro"], bis: true, source: "redBook2005" },
  { formula: "ONO", charge: -1, name: "nitrito-κO", also: ["nitrito-O", "nitrito"], bis: true, source: "redBook2005" },
  { formula: "NO3", charge: -1, name: "nitrato", source: "redBook2005" },
  { formula: "SO4", charge: -2, name: "sulfato", source: "redBook2005" },
  { formula: "SO3", charge: -2, name: "sulfito", source: "redBook2005" },
  { formula: "S2O3", charge: -2, name: "thiosulfato", bis: true, source: "redBook2005" },
  { formula: "CO3", charge: -2, name: "carbonato", source: "redBook2005" },
  { formula: "C2O4", charge: -2, name: "oxalato", also: ["ethanedioato"], bis: true, source: "redBook2005" },
  { formula: "CH3COO", charge: -1, name: "acetato", also: ["ethanoato"], written: ["CH3CO2", "O2CCH3", "OAc"], bis: true, source: "redBook2005" },
  { formula: "C4H4O6", charge: -2, name: "tartrato", bis: true, source: "redBook2005" },
  { formula: "C6H5O7", charge: -3, name: "citrato", bis: true, source: "redBook2005" },
  { formula: "C10H12N2O8", charge: -4, name: "ethylenediaminetetraacetato", bis: true, source: "redBook2005" },
  { formula: "NH2CH2CH2NH2", charge: 0, name: "ethane-1,2-diamine", also: ["ethylenediamine"], written: ["C2H8N2", "C2H4(NH2)2", "H2NCH2CH2NH2"], bis: true, source: "redBook2005" },
  { formula: "C5H5N", charge: 0, name: "pyridine", bis: true, source: "redBook2005" },
  { formula: "C10H8N2", charge: 0, name: "2,2'-bipyridine", also: ["bipyridine", "bipyridyl"], bis: true, source: "redBook2005" },
  { formula: "C12H8N2", charge: 0, name: "1,10-phenanthroline", also: ["phenanthroline"], bis: true, source: "redBook2005" },
  { formula: "P(C6H5)3", charge: 0, name: "triphenylphosphane", also: ["triphenylphosphine"], written: ["PPh3", "C18H15P"], bis: true, source: "redBook2005" },
  { formula: "C5H7O2", charge: -1, name: "acetylacetonato", also: ["pentane-2,4-dionato"], bis: true, source: "redBook2005" },
  { formula: "C4H7N2O2", charge: -1, name: "dimethylglyoximato", bis: true, source: "redBook2005" },
  { formula: "C2H4NO2", charge: -1, name: "glycinato", written: ["NH2CH2COO"], bis: true, source: "redBook2005" },
]);

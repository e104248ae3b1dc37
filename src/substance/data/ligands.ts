// Ligands: formula, charge, name in a coordination entity, older names. After the Red Book 2005, Tables VII and IX
// (`redBook2005`, table numbers from memory); charges as used for counting oxidation numbers.

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
}

export const LIGANDS: readonly LigandRow[] = [
  { formula: "NH3", charge: 0, name: "ammine", also: ["ammino", "amine"], written: ["H3N"] },
  { formula: "H2O", charge: 0, name: "aqua", also: ["aquo"], written: ["OH2"] },
  { formula: "CO", charge: 0, name: "carbonyl" },
  { formula: "NO", charge: 0, name: "nitrosyl" },
  { formula: "N2", charge: 0, name: "dinitrogen", bis: true },
  { formula: "O2", charge: -2, name: "peroxido", also: ["peroxo"] },
  { formula: "CN", charge: -1, name: "cyanido", also: ["cyano"] },
  { formula: "F", charge: -1, name: "fluorido", also: ["fluoro"] },
  { formula: "Cl", charge: -1, name: "chlorido", also: ["chloro"] },
  { formula: "Br", charge: -1, name: "bromido", also: ["bromo"] },
  { formula: "I", charge: -1, name: "iodido", also: ["iodo"] },
  { formula: "H", charge: -1, name: "hydrido", also: ["hydro"] },
  { formula: "OH", charge: -1, name: "hydroxido", also: ["hydroxo", "hydroxy"], written: ["HO"] },
  { formula: "O", charge: -2, name: "oxido", also: ["oxo"] },
  { formula: "S", charge: -2, name: "sulfido", also: ["thio", "thioxo"] },
  { formula: "NH2", charge: -1, name: "amido", also: ["azanido"] },
  { formula: "N3", charge: -1, name: "azido" },
  { formula: "SCN", charge: -1, name: "thiocyanato", also: ["thiocyanato-S", "thiocyanato-κS"] },
  { formula: "NCS", charge: -1, name: "isothiocyanato", also: ["thiocyanato-N", "thiocyanato-κN"] },
  { formula: "OCN", charge: -1, name: "cyanato", written: ["NCO"] },
  { formula: "NO2", charge: -1, name: "nitrito-κN", also: ["nitrito-N", "nitrito-N-", "nitro"], bis: true },
  { formula: "ONO", charge: -1, name: "nitrito-κO", also: ["nitrito-O", "nitrito"], bis: true },
  { formula: "NO3", charge: -1, name: "nitrato" },
  { formula: "SO4", charge: -2, name: "sulfato" },
  { formula: "SO3", charge: -2, name: "sulfito" },
  { formula: "S2O3", charge: -2, name: "thiosulfato", bis: true },
  { formula: "CO3", charge: -2, name: "carbonato" },
  { formula: "C2O4", charge: -2, name: "oxalato", also: ["ethanedioato"], bis: true },
  {
    formula: "CH3COO",
    charge: -1,
    name: "acetato",
    also: ["ethanoato"],
    written: ["CH3CO2", "O2CCH3", "OAc"],
    bis: true,
  },
  { formula: "C4H4O6", charge: -2, name: "tartrato", bis: true },
  { formula: "C6H5O7", charge: -3, name: "citrato", bis: true },
  { formula: "C10H12N2O8", charge: -4, name: "ethylenediaminetetraacetato", bis: true },
  {
    formula: "NH2CH2CH2NH2",
    charge: 0,
    name: "ethane-1,2-diamine",
    also: ["ethylenediamine"],
    written: ["C2H8N2", "C2H4(NH2)2", "H2NCH2CH2NH2"],
    bis: true,
  },
  { formula: "C5H5N", charge: 0, name: "pyridine", bis: true },
  { formula: "C10H8N2", charge: 0, name: "2,2'-bipyridine", also: ["bipyridine", "bipyridyl"], bis: true },
  { formula: "C12H8N2", charge: 0, name: "1,10-phenanthroline", also: ["phenanthroline"], bis: true },
  {
    formula: "P(C6H5)3",
    charge: 0,
    name: "triphenylphosphane",
    also: ["triphenylphosphine"],
    written: ["PPh3", "C18H15P"],
    bis: true,
  },
  { formula: "C5H7O2", charge: -1, name: "acetylacetonato", also: ["pentane-2,4-dionato"], bis: true },
  { formula: "C4H7N2O2", charge: -1, name: "dimethylglyoximato", bis: true },
  { formula: "C2H4NO2", charge: -1, name: "glycinato", written: ["NH2CH2COO"], bis: true },
];

// Known forms of salts: how many waters, which of them is the solid beside its own solution at what temperature, and which
// are sold. A range is the stable solid in contact with water at about 1 atm; a form without one may still exist dry.
import { once } from "../../foundation/memo";
import type { SourceKey } from "./sources";

/** One form of a salt. */
export interface HydrateFormEntry {
  /** Waters for each anhydrous formula unit, as text: "5", "0.5", "8/3". */
  readonly waters: string;
  /** Where the form is listed. */
  readonly source: SourceKey;
  /** Temperature in °C from which it is the solid beside its solution; from the freezing point unless given. */
  readonly from?: string;
  /** Temperature in °C up to which it is; up to the boil unless given. */
  readonly upTo?: string;
  /** Where the range comes from; absent when there is no range. */
  readonly rangeSource?: SourceKey;
  /** Sold in shops under a common name. */
  readonly sold?: true;
}

/** One salt with its forms, fewest waters first. */
export interface HydrateFormsRow {
  readonly salt: string;
  readonly forms: readonly HydrateFormEntry[];
}

// biome-ignore format: a table, one form a line
export const HYDRATE_FORMS = /* @__PURE__ */ once((): readonly HydrateFormsRow[] => [
  {
    salt: "(NH4)2C2O4",
    forms: [
      { waters: "1", source: "aiic" },
    ],
  },
  {
    salt: "(NH4)2Co(SO4)2",
    forms: [
      { waters: "6", source: "aiic" },
    ],
  },
  {
    salt: "(NH4)2Cu(SO4)2",
    forms: [
      { waters: "6", source: "memory" },
    ],
  },
  {
    salt: "(NH4)2Fe(SO4)2",
    forms: [
      { waters: "6", source: "aiic", sold: true },
    ],
  },
  {
    salt: "(NH4)2Mg(SO4)2",
    forms: [
      { waters: "6", source: "memory" },
    ],
  },
  {
    salt: "(NH4)2Ni(SO4)2",
    forms: [
      { waters: "6", source: "aiic" },
    ],
  },
  {
    salt: "(NH4)2SO3",
    forms: [
      { waters: "0", source: "memory", from: "81", rangeSource: "memory" },
      { waters: "1", source: "memory", upTo: "81", rangeSource: "memory" },
    ],
  },
  {
    salt: "(NH4)2Zn(SO4)2",
    forms: [
      { waters: "6", source: "memory" },
    ],
  },
  {
    salt: "(NH4)6Mo7O24",
    forms: [
      { waters: "4", source: "aiic" },
    ],
  },
  {
    salt: "AgClO4",
    forms: [
      { waters: "0", source: "memory", from: "43", rangeSource: "memory" },
      { waters: "1", source: "memory", upTo: "43", rangeSource: "memory" },
    ],
  },
  {
    salt: "AgF",
    forms: [
      { waters: "0", source: "memory", from: "39.5", rangeSource: "memory" },
      { waters: "2", source: "memory", from: "18.7", upTo: "39.5", rangeSource: "memory" },
      { waters: "4", source: "memory", upTo: "18.7", rangeSource: "memory" },
    ],
  },
  {
    salt: "Al(NO3)3",
    forms: [
      { waters: "9", source: "aiic", upTo: "73", rangeSource: "memory" },
    ],
  },
  {
    salt: "Al2(SO4)3",
    forms: [
      { waters: "0", source: "aiic" },
      { waters: "14", source: "memory", sold: true },
      { waters: "16", source: "aiic", sold: true },
      { waters: "18", source: "aiic", sold: true },
    ],
  },
  {
    salt: "AlCl3",
    forms: [
      { waters: "0", source: "aiic" },
      { waters: "6", source: "aiic" },
    ],
  },
  {
    salt: "Ba(CH3COO)2",
    forms: [
      { waters: "0", source: "memory", from: "41", rangeSource: "memory" },
      { waters: "1", source: "memory", from: "24.7", upTo: "41", rangeSource: "memory" },
      { waters: "3", source: "memory", upTo: "24.7", rangeSource: "memory" },
    ],
  },
  {
    salt: "Ba(IO3)2",
    forms: [
      { waters: "0", source: "memory", from: "35", rangeSource: "memory" },
      { waters: "1", source: "memory", upTo: "35", rangeSource: "memory" },
    ],
  },
  {
    salt: "Ba(OH)2",
    forms: [
      { waters: "0", source: "aiic" },
      { waters: "8", source: "aiic", upTo: "78", rangeSource: "memory" },
    ],
  },
  {
    salt: "BaCl2",
    forms: [
      { waters: "0", source: "aiic" },
      { waters: "2", source: "aiic" },
    ],
  },
  {
    salt: "BaI2",
    forms: [
      { waters: "2", source: "memory", from: "26", rangeSource: "memory" },
      { waters: "7.5", source: "memory", upTo: "26", rangeSource: "memory" },
    ],
  },
  {
    salt: "C3N3O3Cl2Na",
    forms: [
      { waters: "0", source: "aiic", sold: true },
      { waters: "2", source: "aiic", sold: true },
    ],
  },
  {
    salt: "C6H12O6",
    forms: [
      { waters: "0", source: "memory", from: "50", rangeSource: "memory" },
      { waters: "1", source: "memory", upTo: "50", rangeSource: "memory" },
    ],
  },
  {
    salt: "C6H8O7",
    forms: [
      { waters: "0", source: "aiic", from: "36", rangeSource: "memory", sold: true },
      { waters: "1", source: "aiic", upTo: "36", rangeSource: "memory", sold: true },
    ],
  },
  {
    salt: "Ca(CH3COO)2",
    forms: [
      { waters: "1", source: "nzioc", from: "84", rangeSource: "memory" },
      { waters: "2", source: "memory", upTo: "84", rangeSource: "memory" },
    ],
  },
  {
    salt: "Ca(ClO3)2",
    forms: [
      { waters: "0", source: "memory", from: "76", rangeSource: "memory" },
      { waters: "2", source: "memory", upTo: "76", rangeSource: "memory" },
    ],
  },
  {
    salt: "Ca(H2PO4)2",
    forms: [
      { waters: "1", source: "aiic", sold: true },
    ],
  },
  {
    salt: "Ca(IO3)2",
    forms: [
      { waters: "0", source: "memory", from: "57", rangeSource: "memory" },
      { waters: "1", source: "memory", from: "33", upTo: "57", rangeSource: "memory" },
      { waters: "6", source: "memory", upTo: "33", rangeSource: "memory" },
    ],
  },
  {
    salt: "Ca(NO3)2",
    forms: [
      { waters: "0", source: "aiic", from: "51.1", rangeSource: "memory" },
      { waters: "3", source: "memory", from: "42.7", upTo: "51.1", rangeSource: "memory" },
      { waters: "4", source: "aiic", upTo: "42.7", rangeSource: "memory", sold: true },
    ],
  },
  {
    salt: "Ca2B6O11",
    forms: [
      { waters: "5", source: "aiic", sold: true },
    ],
  },
  {
    salt: "Ca3(C6H5O7)2",
    forms: [
      { waters: "4", source: "aiic" },
    ],
  },
  {
    salt: "CaBr2",
    forms: [
      { waters: "4", source: "memory", from: "34", upTo: "50", rangeSource: "memory" },
      { waters: "6", source: "memory", upTo: "34", rangeSource: "memory" },
    ],
  },
  {
    salt: "CaC2O4",
    forms: [
      { waters: "1", source: "memory" },
    ],
  },
  {
    salt: "CaCl2",
    forms: [
      { waters: "0", source: "aiic", sold: true },
      { waters: "1", source: "memory" },
      { waters: "2", source: "aiic", from: "45", rangeSource: "memory", sold: true },
      { waters: "4", source: "memory", from: "30", upTo: "45", rangeSource: "memory" },
      { waters: "6", source: "aiic", upTo: "30", rangeSource: "memory" },
    ],
  },
  {
    salt: "CaHPO4",
    forms: [
      { waters: "0", source: "aiic", from: "36", rangeSource: "memory" },
      { waters: "2", source: "aiic", upTo: "36", rangeSource: "memory" },
    ],
  },
  {
    salt: "CaSO4",
    forms: [
      { waters: "0", source: "aiic", sold: true },
      { waters: "0.5", source: "aiic", sold: true },
      { waters: "2", source: "aiic", sold: true },
    ],
  },
  {
    salt: "Cd(NO3)2",
    forms: [
      { waters: "2", source: "memory", from: "59.4", rangeSource: "memory" },
      { waters: "4", source: "aiic", upTo: "59.4", rangeSource: "memory" },
    ],
  },
  {
    salt: "CdBr2",
    forms: [
      { waters: "0", source: "memory", from: "36", rangeSource: "memory" },
      { waters: "4", source: "memory", upTo: "36", rangeSource: "memory" },
    ],
  },
  {
    salt: "CdCl2",
    forms: [
      { waters: "1", source: "memory", from: "34", rangeSource: "memory" },
      { waters: "2.5", source: "memory", upTo: "34", rangeSource: "memory" },
    ],
  },
  {
    salt: "CdSO4",
    forms: [
      { waters: "0", source: "aiic" },
      { waters: "1", source: "memory", from: "43", rangeSource: "memory" },
      { waters: "8/3", source: "aiic", upTo: "43", rangeSource: "memory" },
    ],
  },
  {
    salt: "Co(CH3COO)2",
    forms: [
      { waters: "4", source: "aiic" },
    ],
  },
  {
    salt: "Co(NO3)2",
    forms: [
      { waters: "3", source: "memory", from: "55", rangeSource: "memory" },
      { waters: "6", source: "aiic", upTo: "55", rangeSource: "memory" },
    ],
  },
  {
    salt: "Co3(PO4)2",
    forms: [
      { waters: "8", source: "memory" },
    ],
  },
  {
    salt: "CoC2O4",
    forms: [
      { waters: "2", source: "memory" },
    ],
  },
  {
    salt: "CoCl2",
    forms: [
      { waters: "0", source: "aiic" },
      { waters: "2", source: "memory", from: "52", rangeSource: "memory" },
      { waters: "6", source: "aiic", upTo: "52", rangeSource: "memory" },
    ],
  },
  {
    salt: "CoI2",
    forms: [
      { waters: "4", source: "memory", from: "27", rangeSource: "memory" },
      { waters: "6", source: "memory", upTo: "27", rangeSource: "memory" },
    ],
  },
  {
    salt: "CoSO4",
    forms: [
      { waters: "0", source: "aiic" },
      { waters: "1", source: "memory", from: "64", rangeSource: "memory" },
      { waters: "6", source: "memory", from: "43", upTo: "64", rangeSource: "memory" },
      { waters: "7", source: "aiic", upTo: "43", rangeSource: "memory" },
    ],
  },
  {
    salt: "Cr(NO3)3",
    forms: [
      { waters: "9", source: "aiic" },
    ],
  },
  {
    salt: "CrCl3",
    forms: [
      { waters: "0", source: "aiic" },
      { waters: "6", source: "aiic" },
    ],
  },
  {
    salt: "Cu(CH3COO)2",
    forms: [
      { waters: "1", source: "aiic", sold: true },
    ],
  },
  {
    salt: "Cu(HCOO)2",
    forms: [
      { waters: "0", source: "sds73", from: "59", rangeSource: "sds73" },
      { waters: "2", source: "sds73", from: "44.6", upTo: "59", rangeSource: "sds73" },
      { waters: "4", source: "sds73", upTo: "44.6", rangeSource: "sds73" },
    ],
  },
  {
    salt: "Cu(NO3)2",
    forms: [
      { waters: "2.5", source: "aiic", from: "26", rangeSource: "memory" },
      { waters: "3", source: "aiic" },
      { waters: "6", source: "memory", upTo: "26", rangeSource: "memory" },
    ],
  },
  {
    salt: "CuCl2",
    forms: [
      { waters: "0", source: "aiic" },
      { waters: "2", source: "aiic" },
    ],
  },
  {
    salt: "CuSO4",
    forms: [
      { waters: "0", source: "aiic" },
      { waters: "1", source: "memory", sold: true },
      { waters: "3", source: "memory", from: "96", rangeSource: "memory" },
      { waters: "5", source: "aiic", upTo: "96", rangeSource: "memory", sold: true },
    ],
  },
  {
    salt: "Fe(NO3)3",
    forms: [
      { waters: "9", source: "aiic" },
    ],
  },
  {
    salt: "Fe3(PO4)2",
    forms: [
      { waters: "8", source: "memory" },
    ],
  },
  {
    salt: "FeC2O4",
    forms: [
      { waters: "2", source: "aiic" },
    ],
  },
  {
    salt: "FeCl2",
    forms: [
      { waters: "0", source: "aiic" },
      { waters: "2", source: "memory", from: "77", rangeSource: "memory" },
      { waters: "4", source: "aiic", from: "12", upTo: "77", rangeSource: "memory" },
      { waters: "6", source: "memory", upTo: "12", rangeSource: "memory" },
    ],
  },
  {
    salt: "FeCl3",
    forms: [
      { waters: "0", source: "aiic", from: "66", rangeSource: "memory", sold: true },
      { waters: "2", source: "memory", from: "56", upTo: "66", rangeSource: "memory" },
      { waters: "2.5", source: "memory", from: "37", upTo: "56", rangeSource: "memory" },
      { waters: "6", source: "aiic", upTo: "37", rangeSource: "memory", sold: true },
    ],
  },
  {
    salt: "FePO4",
    forms: [
      { waters: "2", source: "memory" },
    ],
  },
  {
    salt: "FeSO4",
    forms: [
      { waters: "0", source: "aiic" },
      { waters: "1", source: "aiic", from: "64", rangeSource: "memory", sold: true },
      { waters: "4", source: "memory", from: "56.6", upTo: "64", rangeSource: "memory" },
      { waters: "7", source: "aiic", upTo: "56.6", rangeSource: "memory", sold: true },
    ],
  },
  {
    salt: "H2C2O4",
    forms: [
      { waters: "0", source: "aiic", sold: true },
      { waters: "2", source: "aiic", sold: true },
    ],
  },
  {
    salt: "K2C2O4",
    forms: [
      { waters: "1", source: "aiic" },
    ],
  },
  {
    salt: "K2CO3",
    forms: [
      { waters: "0", source: "aiic", sold: true },
      { waters: "1.5", source: "aiic", sold: true },
    ],
  },
  {
    salt: "K2Cu(SO4)2",
    forms: [
      { waters: "6", source: "memory" },
    ],
  },
  {
    salt: "K2HPO4",
    forms: [
      { waters: "0", source: "memory", from: "48", rangeSource: "memory" },
      { waters: "3", source: "memory", from: "14", upTo: "48", rangeSource: "memory" },
      { waters: "6", source: "memory", upTo: "14", rangeSource: "memory" },
    ],
  },
  {
    salt: "K2Mg(SO4)2",
    forms: [
      { waters: "6", source: "memory", sold: true },
    ],
  },
  {
    salt: "K2Ni(SO4)2",
    forms: [
      { waters: "6", source: "memory" },
    ],
  },
  {
    salt: "K2Zn(SO4)2",
    forms: [
      { waters: "6", source: "memory" },
    ],
  },
  {
    salt: "K2[Cu(C2O4)2]",
    forms: [
      { waters: "2", source: "memory" },
    ],
  },
  {
    salt: "K3C6H5O7",
    forms: [
      { waters: "1", source: "aiic" },
    ],
  },
  {
    salt: "K3[Al(C2O4)3]",
    forms: [
      { waters: "3", source: "memory" },
    ],
  },
  {
    salt: "K3[Cr(C2O4)3]",
    forms: [
      { waters: "3", source: "memory" },
    ],
  },
  {
    salt: "K3[Fe(C2O4)3]",
    forms: [
      { waters: "3", source: "memory" },
    ],
  },
  {
    salt: "K4[Fe(CN)6]",
    forms: [
      { waters: "0", source: "memory", from: "87", rangeSource: "memory" },
      { waters: "3", source: "aiic", upTo: "87", rangeSource: "memory", sold: true },
    ],
  },
  {
    salt: "KAl(SO4)2",
    forms: [
      { waters: "0", source: "aiic", sold: true },
      { waters: "12", source: "aiic", sold: true },
    ],
  },
  {
    salt: "KCH3COO",
    forms: [
      { waters: "0.5", source: "memory", from: "41", rangeSource: "memory" },
      { waters: "1.5", source: "memory", upTo: "41", rangeSource: "memory" },
    ],
  },
  {
    salt: "KCr(SO4)2",
    forms: [
      { waters: "12", source: "aiic", sold: true },
    ],
  },
  {
    salt: "KF",
    forms: [
      { waters: "0", source: "memory", from: "40.2", rangeSource: "memory" },
      { waters: "2", source: "memory", from: "17.7", upTo: "40.2", rangeSource: "memory" },
      { waters: "4", source: "memory", upTo: "17.7", rangeSource: "memory" },
    ],
  },
  {
    salt: "KFe(SO4)2",
    forms: [
      { waters: "12", source: "memory" },
    ],
  },
  {
    salt: "KMgCl3",
    forms: [
      { waters: "6", source: "memory" },
    ],
  },
  {
    salt: "KNaC4H4O6",
    forms: [
      { waters: "4", source: "aiic", sold: true },
    ],
  },
  {
    salt: "KOH",
    forms: [
      { waters: "1", source: "memory", from: "33", rangeSource: "memory" },
      { waters: "2", source: "memory", upTo: "33", rangeSource: "memory" },
    ],
  },
  {
    salt: "Li2SO4",
    forms: [
      { waters: "0", source: "aiic" },
      { waters: "1", source: "aiic" },
    ],
  },
  {
    salt: "LiBr",
    forms: [
      { waters: "1", source: "memory", from: "34", rangeSource: "memory" },
      { waters: "2", source: "memory", upTo: "34", rangeSource: "memory" },
    ],
  },
  {
    salt: "LiCl",
    forms: [
      { waters: "0", source: "aiic", from: "94", rangeSource: "memory" },
      { waters: "1", source: "aiic", from: "19", upTo: "94", rangeSource: "memory" },
      { waters: "2", source: "memory", upTo: "19", rangeSource: "memory" },
    ],
  },
  {
    salt: "LiClO4",
    forms: [
      { waters: "1", source: "memory", from: "95", rangeSource: "memory" },
      { waters: "3", source: "memory", upTo: "95", rangeSource: "memory" },
    ],
  },
  {
    salt: "LiI",
    forms: [
      { waters: "1", source: "memory", from: "75", rangeSource: "memory" },
      { waters: "3", source: "memory", upTo: "75", rangeSource: "memory" },
    ],
  },
  {
    salt: "LiNO3",
    forms: [
      { waters: "0", source: "memory", from: "29.9", rangeSource: "memory" },
      { waters: "3", source: "memory", upTo: "29.9", rangeSource: "memory" },
    ],
  },
  {
    salt: "LiOH",
    forms: [
      { waters: "0", source: "aiic" },
      { waters: "1", source: "aiic" },
    ],
  },
  {
    salt: "Mg(BrO3)2",
    forms: [
      { waters: "0", source: "memory", from: "80", rangeSource: "memory" },
      { waters: "6", source: "memory", upTo: "80", rangeSource: "memory" },
    ],
  },
  {
    salt: "Mg(CH3COO)2",
    forms: [
      { waters: "4", source: "aiic" },
    ],
  },
  {
    salt: "Mg(IO3)2",
    forms: [
      { waters: "4", source: "memory", from: "10", rangeSource: "memory" },
      { waters: "10", source: "memory", upTo: "10", rangeSource: "memory" },
    ],
  },
  {
    salt: "Mg(NO3)2",
    forms: [
      { waters: "2", source: "memory", from: "89", rangeSource: "memory" },
      { waters: "6", source: "aiic", upTo: "89", rangeSource: "memory" },
    ],
  },
  {
    salt: "Mg5(CO3)4(OH)2",
    forms: [
      { waters: "4", source: "aiic", sold: true },
    ],
  },
  {
    salt: "MgC2O4",
    forms: [
      { waters: "2", source: "memory" },
    ],
  },
  {
    salt: "MgCO3",
    forms: [
      { waters: "0", source: "aiic", sold: true },
      { waters: "3", source: "memory" },
    ],
  },
  {
    salt: "MgCl2",
    forms: [
      { waters: "0", source: "aiic" },
      { waters: "6", source: "aiic", sold: true },
    ],
  },
  {
    salt: "MgCrO4",
    forms: [
      { waters: "5", source: "memory", from: "17", rangeSource: "memory" },
      { waters: "7", source: "memory", upTo: "17", rangeSource: "memory" },
    ],
  },
  {
    salt: "MgHPO4",
    forms: [
      { waters: "3", source: "aiic" },
    ],
  },
  {
    salt: "MgI2",
    forms: [
      { waters: "6", source: "memory", from: "43", rangeSource: "memory" },
      { waters: "8", source: "memory", upTo: "43", rangeSource: "memory" },
    ],
  },
  {
    salt: "MgSO3",
    forms: [
      { waters: "3", source: "memory", from: "40", rangeSource: "memory" },
      { waters: "6", source: "memory", upTo: "40", rangeSource: "memory" },
    ],
  },
  {
    salt: "MgSO4",
    forms: [
      { waters: "0", source: "aiic" },
      { waters: "1", source: "aiic", from: "68", rangeSource: "memory", sold: true },
      { waters: "6", source: "nzioc", from: "48", upTo: "68", rangeSource: "memory" },
      { waters: "7", source: "aiic", upTo: "48", rangeSource: "memory", sold: true },
    ],
  },
  {
    salt: "Mn(CH3COO)2",
    forms: [
      { waters: "4", source: "aiic" },
    ],
  },
  {
    salt: "Mn(NO3)2",
    forms: [
      { waters: "4", source: "nzioc", from: "25.8", rangeSource: "memory" },
      { waters: "6", source: "memory", upTo: "25.8", rangeSource: "memory" },
    ],
  },
  {
    salt: "MnC2O4",
    forms: [
      { waters: "2", source: "memory" },
    ],
  },
  {
    salt: "MnCl2",
    forms: [
      { waters: "0", source: "aiic" },
      { waters: "2", source: "memory", from: "58", rangeSource: "memory" },
      { waters: "4", source: "aiic", upTo: "58", rangeSource: "memory" },
    ],
  },
  {
    salt: "MnSO4",
    forms: [
      { waters: "0", source: "aiic" },
      { waters: "1", source: "aiic", from: "24", rangeSource: "memory", sold: true },
      { waters: "4", source: "aiic", sold: true },
      { waters: "5", source: "memory", from: "9", upTo: "24", rangeSource: "memory" },
      { waters: "7", source: "memory", upTo: "9", rangeSource: "memory" },
    ],
  },
  {
    salt: "NH4Al(SO4)2",
    forms: [
      { waters: "12", source: "aiic", sold: true },
    ],
  },
  {
    salt: "NH4Cr(SO4)2",
    forms: [
      { waters: "12", source: "memory" },
    ],
  },
  {
    salt: "NH4Fe(SO4)2",
    forms: [
      { waters: "12", source: "aiic" },
    ],
  },
  {
    salt: "NH4MgPO4",
    forms: [
      { waters: "6", source: "aiic" },
    ],
  },
  {
    salt: "Na2B4O7",
    forms: [
      { waters: "0", source: "aiic", sold: true },
      { waters: "4", source: "memory", from: "58.2", rangeSource: "memory" },
      { waters: "5", source: "nzioc", sold: true },
      { waters: "10", source: "aiic", upTo: "58.2", rangeSource: "memory", sold: true },
    ],
  },
  {
    salt: "Na2C10H14N2O8",
    forms: [
      { waters: "2", source: "aiic" },
    ],
  },
  {
    salt: "Na2CO3",
    forms: [
      { waters: "0", source: "aiic", sold: true },
      { waters: "1", source: "aiic", from: "35.4", rangeSource: "memory", sold: true },
      { waters: "7", source: "memory", from: "32", upTo: "35.4", rangeSource: "memory" },
      { waters: "10", source: "aiic", upTo: "32", rangeSource: "memory", sold: true },
    ],
  },
  {
    salt: "Na2Cr2O7",
    forms: [
      { waters: "0", source: "memory", from: "84.6", rangeSource: "memory" },
      { waters: "2", source: "aiic", upTo: "84.6", rangeSource: "memory" },
    ],
  },
  {
    salt: "Na2CrO4",
    forms: [
      { waters: "0", source: "memory", from: "62.8", rangeSource: "memory" },
      { waters: "4", source: "memory", from: "25.9", upTo: "62.8", rangeSource: "memory" },
      { waters: "6", source: "memory", from: "19.5", upTo: "25.9", rangeSource: "memory" },
      { waters: "10", source: "memory", upTo: "19.5", rangeSource: "memory" },
    ],
  },
  {
    salt: "Na2HPO4",
    forms: [
      { waters: "0", source: "aiic", from: "95", rangeSource: "memory" },
      { waters: "2", source: "aiic", from: "48.1", upTo: "95", rangeSource: "memory" },
      { waters: "7", source: "aiic", from: "35.2", upTo: "48.1", rangeSource: "memory" },
      { waters: "12", source: "aiic", upTo: "35.2", rangeSource: "memory" },
    ],
  },
  {
    salt: "Na2MoO4",
    forms: [
      { waters: "2", source: "aiic", from: "10", rangeSource: "memory" },
      { waters: "10", source: "memory", upTo: "10", rangeSource: "memory" },
    ],
  },
  {
    salt: "Na2S",
    forms: [
      { waters: "0", source: "aiic" },
      { waters: "3", source: "memory", sold: true },
      { waters: "9", source: "aiic", upTo: "49", rangeSource: "memory", sold: true },
    ],
  },
  {
    salt: "Na2S2O3",
    forms: [
      { waters: "0", source: "aiic", from: "66", rangeSource: "memory", sold: true },
      { waters: "2", source: "memory", from: "48.2", upTo: "66", rangeSource: "memory" },
      { waters: "5", source: "aiic", upTo: "48.2", rangeSource: "memory", sold: true },
    ],
  },
  {
    salt: "Na2SO3",
    forms: [
      { waters: "0", source: "aiic", from: "33.4", rangeSource: "memory", sold: true },
      { waters: "7", source: "aiic", upTo: "33.4", rangeSource: "memory", sold: true },
    ],
  },
  {
    salt: "Na2SO4",
    forms: [
      { waters: "0", source: "aiic", from: "32.38", rangeSource: "memory", sold: true },
      { waters: "10", source: "aiic", upTo: "32.38", rangeSource: "memory", sold: true },
    ],
  },
  {
    salt: "Na2SiO3",
    forms: [
      { waters: "0", source: "aiic" },
      { waters: "5", source: "nzioc", sold: true },
      { waters: "9", source: "nzioc" },
    ],
  },
  {
    salt: "Na2SnO3",
    forms: [
      { waters: "3", source: "niteGhs" },
    ],
  },
  {
    salt: "Na2WO4",
    forms: [
      { waters: "2", source: "aiic" },
    ],
  },
  {
    salt: "Na2[Fe(CN)5NO]",
    forms: [
      { waters: "2", source: "aiic" },
    ],
  },
  {
    salt: "Na3C6H5O7",
    forms: [
      { waters: "2", source: "aiic", from: "45", rangeSource: "memory", sold: true },
      { waters: "5.5", source: "memory", upTo: "45", rangeSource: "memory", sold: true },
    ],
  },
  {
    salt: "Na3H(CO3)2",
    forms: [
      { waters: "2", source: "aiic", sold: true },
    ],
  },
  {
    salt: "Na3PO4",
    forms: [
      { waters: "0", source: "aiic", sold: true },
      { waters: "12", source: "aiic", upTo: "70", rangeSource: "memory", sold: true },
    ],
  },
  {
    salt: "Na4P2O7",
    forms: [
      { waters: "0", source: "aiic", from: "79", rangeSource: "memory" },
      { waters: "10", source: "aiic", upTo: "79", rangeSource: "memory" },
    ],
  },
  {
    salt: "Na4[Fe(CN)6]",
    forms: [
      { waters: "0", source: "memory", from: "82", rangeSource: "memory" },
      { waters: "10", source: "memory", upTo: "82", rangeSource: "memory", sold: true },
    ],
  },
  {
    salt: "NaAl(SO4)2",
    forms: [
      { waters: "0", source: "nzioc", sold: true },
      { waters: "12", source: "canadaDsl", sold: true },
    ],
  },
  {
    salt: "NaBO2",
    forms: [
      { waters: "2", source: "memory", from: "54", rangeSource: "memory" },
      { waters: "4", source: "aiic", upTo: "54", rangeSource: "memory" },
    ],
  },
  {
    salt: "NaBO3",
    forms: [
      { waters: "1", source: "aiic", sold: true },
      { waters: "4", source: "aiic", sold: true },
    ],
  },
  {
    salt: "NaBr",
    forms: [
      { waters: "0", source: "memory", from: "50.7", rangeSource: "memory" },
      { waters: "2", source: "memory", upTo: "50.7", rangeSource: "memory" },
    ],
  },
  {
    salt: "NaCH3COO",
    forms: [
      { waters: "0", source: "aiic", from: "58", rangeSource: "memory", sold: true },
      { waters: "3", source: "aiic", upTo: "58", rangeSource: "memory", sold: true },
    ],
  },
  {
    salt: "NaHCOO",
    forms: [
      { waters: "0", source: "memory", from: "25", rangeSource: "memory" },
      { waters: "2", source: "memory", from: "17", upTo: "25", rangeSource: "memory" },
      { waters: "3", source: "memory", upTo: "17", rangeSource: "memory" },
    ],
  },
  {
    salt: "NaCN",
    forms: [
      { waters: "0", source: "memory", from: "34.7", rangeSource: "memory" },
      { waters: "2", source: "memory", upTo: "34.7", rangeSource: "memory" },
    ],
  },
  {
    salt: "NaCl",
    forms: [
      { waters: "0", source: "memory", from: "0.1", rangeSource: "memory", sold: true },
      { waters: "2", source: "memory", upTo: "0.1", rangeSource: "memory" },
    ],
  },
  {
    salt: "NaClO4",
    forms: [
      { waters: "0", source: "memory", from: "52.8", rangeSource: "memory" },
      { waters: "1", source: "memory", upTo: "52.8", rangeSource: "memory" },
    ],
  },
  {
    salt: "NaH2PO4",
    forms: [
      { waters: "0", source: "aiic", from: "57.4", rangeSource: "memory" },
      { waters: "1", source: "aiic", from: "40.8", upTo: "57.4", rangeSource: "memory" },
      { waters: "2", source: "aiic", upTo: "40.8", rangeSource: "memory" },
    ],
  },
  {
    salt: "NaHSO4",
    forms: [
      { waters: "0", source: "aiic", from: "58", rangeSource: "memory", sold: true },
      { waters: "1", source: "aiic", upTo: "58", rangeSource: "memory" },
    ],
  },
  {
    salt: "NaI",
    forms: [
      { waters: "0", source: "memory", from: "68", rangeSource: "memory" },
      { waters: "2", source: "memory", upTo: "68", rangeSource: "memory" },
    ],
  },
  {
    salt: "NaIO3",
    forms: [
      { waters: "0", source: "memory", from: "73", rangeSource: "memory" },
      { waters: "1", source: "memory", from: "20", upTo: "73", rangeSource: "memory" },
      { waters: "5", source: "memory", upTo: "20", rangeSource: "memory" },
    ],
  },
  {
    salt: "NaIO4",
    forms: [
      { waters: "0", source: "memory", from: "34.5", rangeSource: "memory" },
      { waters: "3", source: "memory", upTo: "34.5", rangeSource: "memory" },
    ],
  },
  {
    salt: "NaOH",
    forms: [
      { waters: "0", source: "aiic", from: "62", rangeSource: "memory", sold: true },
      { waters: "1", source: "memory", from: "15", upTo: "62", rangeSource: "memory" },
      { waters: "3.5", source: "memory", from: "5", upTo: "15", rangeSource: "memory" },
      { waters: "4", source: "memory", upTo: "5", rangeSource: "memory" },
    ],
  },
  {
    salt: "NaSCN",
    forms: [
      { waters: "0", source: "memory", from: "30", rangeSource: "memory" },
      { waters: "1", source: "memory", upTo: "30", rangeSource: "memory" },
    ],
  },
  {
    salt: "Ni(CH3COO)2",
    forms: [
      { waters: "4", source: "aiic" },
    ],
  },
  {
    salt: "Ni(NO3)2",
    forms: [
      { waters: "2", source: "memory", from: "85", rangeSource: "memory" },
      { waters: "4", source: "memory", from: "54", upTo: "85", rangeSource: "memory" },
      { waters: "6", source: "aiic", upTo: "54", rangeSource: "memory" },
    ],
  },
  {
    salt: "Ni3(OH)4CO3",
    forms: [
      { waters: "4", source: "aiic", sold: true },
    ],
  },
  {
    salt: "NiBr2",
    forms: [
      { waters: "3", source: "memory", from: "28", rangeSource: "memory" },
      { waters: "6", source: "memory", upTo: "28", rangeSource: "memory" },
    ],
  },
  {
    salt: "NiC2O4",
    forms: [
      { waters: "2", source: "memory" },
    ],
  },
  {
    salt: "NiCl2",
    forms: [
      { waters: "0", source: "aiic" },
      { waters: "2", source: "memory", from: "64", rangeSource: "memory" },
      { waters: "4", source: "memory", from: "29", upTo: "64", rangeSource: "memory" },
      { waters: "6", source: "aiic", upTo: "29", rangeSource: "memory" },
    ],
  },
  {
    salt: "NiI2",
    forms: [
      { waters: "4", source: "memory", from: "43", rangeSource: "memory" },
      { waters: "6", source: "memory", upTo: "43", rangeSource: "memory" },
    ],
  },
  {
    salt: "NiSO4",
    forms: [
      { waters: "0", source: "aiic" },
      { waters: "6", source: "nzioc", from: "31", rangeSource: "memory" },
      { waters: "7", source: "aiic", upTo: "31", rangeSource: "memory" },
    ],
  },
  {
    salt: "Pb(CH3COO)2",
    forms: [
      { waters: "3", source: "aiic" },
    ],
  },
  {
    salt: "SnCl2",
    forms: [
      { waters: "0", source: "aiic", sold: true },
      { waters: "2", source: "aiic", sold: true },
    ],
  },
  {
    salt: "SnCl4",
    forms: [
      { waters: "0", source: "aiic" },
      { waters: "5", source: "aiic" },
    ],
  },
  {
    salt: "Sr(BrO3)2",
    forms: [
      { waters: "0", source: "memory", from: "75", rangeSource: "memory" },
      { waters: "1", source: "memory", upTo: "75", rangeSource: "memory" },
    ],
  },
  {
    salt: "Sr(CH3COO)2",
    forms: [
      { waters: "0.5", source: "memory", from: "9.7", rangeSource: "memory" },
      { waters: "4", source: "memory", upTo: "9.7", rangeSource: "memory" },
    ],
  },
  {
    salt: "Sr(HCOO)2",
    forms: [
      { waters: "0", source: "memory", from: "72", rangeSource: "memory" },
      { waters: "2", source: "memory", upTo: "72", rangeSource: "memory" },
    ],
  },
  {
    salt: "Sr(NO3)2",
    forms: [
      { waters: "0", source: "aiic", from: "29.3", rangeSource: "memory" },
      { waters: "4", source: "memory", upTo: "29.3", rangeSource: "memory" },
    ],
  },
  {
    salt: "Sr(OH)2",
    forms: [
      { waters: "0", source: "aiic" },
      { waters: "8", source: "aiic" },
    ],
  },
  {
    salt: "SrBr2",
    forms: [
      { waters: "2", source: "memory", from: "89", rangeSource: "memory" },
      { waters: "6", source: "memory", upTo: "89", rangeSource: "memory" },
    ],
  },
  {
    salt: "SrCl2",
    forms: [
      { waters: "0", source: "aiic" },
      { waters: "2", source: "memory", from: "61", rangeSource: "memory" },
      { waters: "6", source: "aiic", upTo: "61", rangeSource: "memory" },
    ],
  },
  {
    salt: "SrI2",
    forms: [
      { waters: "2", source: "memory", from: "84", rangeSource: "memory" },
      { waters: "6", source: "memory", upTo: "84", rangeSource: "memory" },
    ],
  },
  {
    salt: "Zn(CH3COO)2",
    forms: [
      { waters: "2", source: "aiic" },
    ],
  },
  {
    salt: "Zn(NO3)2",
    forms: [
      { waters: "4", source: "memory", from: "36.4", upTo: "45.5", rangeSource: "memory" },
      { waters: "6", source: "aiic", upTo: "36.4", rangeSource: "memory" },
    ],
  },
  {
    salt: "Zn3(PO4)2",
    forms: [
      { waters: "4", source: "nzioc" },
    ],
  },
  {
    salt: "ZnBr2",
    forms: [
      { waters: "0", source: "memory", from: "35", rangeSource: "memory" },
      { waters: "2", source: "memory", upTo: "35", rangeSource: "memory" },
    ],
  },
  {
    salt: "ZnC2O4",
    forms: [
      { waters: "2", source: "memory" },
    ],
  },
  {
    salt: "ZnCl2",
    forms: [
      { waters: "0", source: "memory", from: "28", rangeSource: "memory", sold: true },
      { waters: "1.5", source: "memory", upTo: "28", rangeSource: "memory" },
    ],
  },
  {
    salt: "ZnI2",
    forms: [
      { waters: "0", source: "memory", from: "0", rangeSource: "memory" },
      { waters: "2", source: "memory", upTo: "0", rangeSource: "memory" },
    ],
  },
  {
    salt: "ZnSO4",
    forms: [
      { waters: "0", source: "aiic" },
      { waters: "1", source: "aiic", from: "48", rangeSource: "memory", sold: true },
      { waters: "6", source: "nzioc", from: "38", upTo: "48", rangeSource: "memory" },
      { waters: "7", source: "aiic", upTo: "38", rangeSource: "memory", sold: true },
    ],
  },
  {
    salt: "[Cu(NH3)4]SO4",
    forms: [
      { waters: "1", source: "memory" },
    ],
  },
  {
    salt: "AlF3",
    forms: [
      { waters: "3", source: "memory" },
    ],
  },
  {
    salt: "Al(ClO4)3",
    forms: [
      { waters: "9", source: "memory" },
    ],
  },
  {
    salt: "(NH4)2CO3",
    forms: [
      { waters: "1", source: "memory" },
    ],
  },
  {
    salt: "(NH4)3PO4",
    forms: [
      { waters: "3", source: "memory" },
    ],
  },
  {
    salt: "Ba(BrO3)2",
    forms: [
      { waters: "1", source: "memory" },
    ],
  },
  {
    salt: "BaBr2",
    forms: [
      { waters: "2", source: "memory" },
    ],
  },
  {
    salt: "Ba(ClO3)2",
    forms: [
      { waters: "1", source: "memory" },
    ],
  },
  {
    salt: "Ba2[Fe(CN)6]",
    forms: [
      { waters: "6", source: "memory" },
    ],
  },
  {
    salt: "Ba(NO2)2",
    forms: [
      { waters: "1", source: "memory" },
    ],
  },
  {
    salt: "BaC2O4",
    forms: [
      { waters: "2", source: "memory" },
    ],
  },
  {
    salt: "Ba(ClO4)2",
    forms: [
      { waters: "3", source: "memory" },
    ],
  },
  {
    salt: "BaS",
    forms: [
      { waters: "6", source: "memory" },
    ],
  },
  {
    salt: "Ba(SCN)2",
    forms: [
      { waters: "3", source: "memory" },
    ],
  },
  {
    salt: "Cd(HCOO)2",
    forms: [
      { waters: "2", source: "memory" },
    ],
  },
  {
    salt: "CdC2O4",
    forms: [
      { waters: "3", source: "memory" },
    ],
  },
  {
    salt: "Cd(ClO4)2",
    forms: [
      { waters: "6", source: "memory" },
    ],
  },
  {
    salt: "Ca(C7H5O2)2",
    forms: [
      { waters: "3", source: "memory" },
    ],
  },
  {
    salt: "CaI2",
    forms: [
      { waters: "6", source: "memory", upTo: "40", rangeSource: "memory" },
    ],
  },
  {
    salt: "Ca(NO2)2",
    forms: [
      { waters: "4", source: "memory" },
    ],
  },
  {
    salt: "Ca(ClO4)2",
    forms: [
      { waters: "4", source: "memory" },
    ],
  },
  {
    salt: "CaSO3",
    forms: [
      { waters: "0.5", source: "memory" },
    ],
  },
  {
    salt: "Co(BrO3)2",
    forms: [
      { waters: "6", source: "memory" },
    ],
  },
  {
    salt: "CoBr2",
    forms: [
      { waters: "6", source: "memory", upTo: "40", rangeSource: "memory" },
    ],
  },
  {
    salt: "Co(ClO3)2",
    forms: [
      { waters: "6", source: "memory", upTo: "30", rangeSource: "memory" },
    ],
  },
  {
    salt: "CoF2",
    forms: [
      { waters: "4", source: "memory" },
    ],
  },
  {
    salt: "Co(IO3)2",
    forms: [
      { waters: "2", source: "memory" },
    ],
  },
  {
    salt: "Co(ClO4)2",
    forms: [
      { waters: "6", source: "memory" },
    ],
  },
  {
    salt: "CuF2",
    forms: [
      { waters: "2", source: "memory" },
    ],
  },
  {
    salt: "CuSiF6",
    forms: [
      { waters: "4", source: "memory" },
    ],
  },
  {
    salt: "Cu(IO3)2",
    forms: [
      { waters: "1", source: "memory" },
    ],
  },
  {
    salt: "CuC2O4",
    forms: [
      { waters: "0.5", source: "memory" },
    ],
  },
  {
    salt: "Cu(ClO4)2",
    forms: [
      { waters: "6", source: "memory" },
    ],
  },
  {
    salt: "Fe(NO3)2",
    forms: [
      { waters: "6", source: "memory" },
    ],
  },
  {
    salt: "Fe(ClO4)2",
    forms: [
      { waters: "6", source: "memory" },
    ],
  },
  {
    salt: "FeF3",
    forms: [
      { waters: "3", source: "memory" },
    ],
  },
  {
    salt: "PbSiF6",
    forms: [
      { waters: "4", source: "memory" },
    ],
  },
  {
    salt: "Pb(ClO4)2",
    forms: [
      { waters: "3", source: "memory" },
    ],
  },
  {
    salt: "LiCH3COO",
    forms: [
      { waters: "2", source: "memory", upTo: "57.8", rangeSource: "memory" },
    ],
  },
  {
    salt: "Li2CrO4",
    forms: [
      { waters: "2", source: "memory" },
    ],
  },
  {
    salt: "LiHCOO",
    forms: [
      { waters: "1", source: "memory" },
    ],
  },
  {
    salt: "LiNO2",
    forms: [
      { waters: "1", source: "memory" },
    ],
  },
  {
    salt: "MgBr2",
    forms: [
      { waters: "6", source: "memory" },
    ],
  },
  {
    salt: "Mg(HCOO)2",
    forms: [
      { waters: "2", source: "memory" },
    ],
  },
  {
    salt: "MgSiF6",
    forms: [
      { waters: "6", source: "memory" },
    ],
  },
  {
    salt: "Mg(NO2)2",
    forms: [
      { waters: "3", source: "memory" },
    ],
  },
  {
    salt: "Mg(ClO4)2",
    forms: [
      { waters: "6", source: "memory" },
    ],
  },
  {
    salt: "MgS2O3",
    forms: [
      { waters: "6", source: "memory" },
    ],
  },
  {
    salt: "MnBr2",
    forms: [
      { waters: "4", source: "memory" },
    ],
  },
  {
    salt: "Ni(ClO3)2",
    forms: [
      { waters: "6", source: "memory", upTo: "40", rangeSource: "memory" },
    ],
  },
  {
    salt: "NiF2",
    forms: [
      { waters: "4", source: "memory" },
    ],
  },
  {
    salt: "Ni(HCOO)2",
    forms: [
      { waters: "2", source: "memory" },
    ],
  },
  {
    salt: "Ni(ClO4)2",
    forms: [
      { waters: "6", source: "memory" },
    ],
  },
  {
    salt: "KC7H5O2",
    forms: [
      { waters: "3", source: "memory" },
    ],
  },
  {
    salt: "K3PO4",
    forms: [
      { waters: "7", source: "memory" },
    ],
  },
  {
    salt: "NaClO",
    forms: [
      { waters: "5", source: "memory" },
    ],
  },
  {
    salt: "NaMnO4",
    forms: [
      { waters: "3", source: "memory" },
    ],
  },
  {
    salt: "Sr(NO2)2",
    forms: [
      { waters: "1", source: "memory" },
    ],
  },
  {
    salt: "SrS2O3",
    forms: [
      { waters: "5", source: "memory" },
    ],
  },
  {
    salt: "Zn(ClO3)2",
    forms: [
      { waters: "6", source: "memory", upTo: "10", rangeSource: "memory" },
    ],
  },
  {
    salt: "ZnF2",
    forms: [
      { waters: "4", source: "memory" },
    ],
  },
  {
    salt: "Zn(HCOO)2",
    forms: [
      { waters: "2", source: "memory" },
    ],
  },
  {
    salt: "Zn(MnO4)2",
    forms: [
      { waters: "6", source: "memory" },
    ],
  },
  {
    salt: "ZnSO3",
    forms: [
      { waters: "2", source: "memory" },
    ],
  },
  {
    salt: "ZnC4H4O6",
    forms: [
      { waters: "2", source: "memory" },
    ],
  },
  {
    salt: "Bi(NO3)3",
    forms: [
      { waters: "5", source: "aiic" },
    ],
  },
  {
    salt: "Fe2(SO4)3",
    forms: [
      { waters: "0", source: "aiic", sold: true },
      { waters: "5", source: "memory", sold: true },
      { waters: "9", source: "memory", sold: true },
    ],
  },
]);

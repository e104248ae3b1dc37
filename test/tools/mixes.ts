// Materials of the pairs that are asked of as mixes, in five spellings each, and the one way to ask.
import { expect } from "vitest";
import { cautions } from "../../src/substance";

/** Five ways to write each: formula, systematic name, old or shop name, and two more. */
const SPELLINGS: Readonly<Record<string, readonly [string, string, string, string, string]>> = {
  hypochlorite: ["NaClO", "sodium hypochlorite", "bleach", "NaOCl", "ClNaO"],
  calciumHypochlorite: ["Ca(ClO)2", "calcium hypochlorite", "pool shock", "Ca(OCl)2", "CaCl2O2"],
  hydrochloric: ["HCl", "hydrochloric acid", "muriatic acid", "ClH", "spirits of salt"],
  acetic: ["CH3COOH", "acetic acid", "vinegar", "C2H4O2", "HC2H3O2"],
  sulfuric: ["H2SO4", "sulfuric acid", "oil of vitriol", "battery acid", "H2O4S"],
  nitric: ["HNO3", "nitric acid", "aqua fortis", "HNO3", "HONO2"],
  citric: ["C6H8O7", "citric acid", "citric acid monohydrate", "C6H8O7·H2O", "C6H8O7.H2O"],
  bisulfate: ["NaHSO4", "sodium hydrogensulfate", "sodium bisulfate", "NaHSO4·H2O", "HNaO4S"],
  ammonia: ["NH3", "ammonia", "household ammonia", "NH4OH", "H3N"],
  urea: ["CO(NH2)2", "urea", "carbonic diamide", "(NH2)2CO", "CO(NH2)2"],
  acetone: ["CH3COCH3", "acetone", "propanone", "(CH3)2CO", "C3H6O"],
  ethanol: ["C2H5OH", "ethanol", "alcohol", "CH3CH2OH", "C2H6O"],
  peroxide: ["H2O2", "hydrogen peroxide", "peroxide", "H2O2", "HOOH"],
  permanganate: ["KMnO4", "potassium permanganate", "permanganate of potash", "KMnO4", "KMnO4"],
  chlorate: ["KClO3", "potassium chlorate", "chlorate of potash", "KClO3", "ClKO3"],
  sodiumChlorate: ["NaClO3", "sodium chlorate", "sodium chlorate", "NaClO3", "ClNaO3"],
  perchlorate: ["KClO4", "potassium perchlorate", "perchlorate of potash", "KClO4", "ClKO4"],
  nitratePotash: ["KNO3", "potassium nitrate", "saltpetre", "KNO3", "nitre"],
  ammoniumNitrate: ["NH4NO3", "ammonium nitrate", "ammonium nitrate", "H4N2O3", "NH4NO3"],
  nitrite: ["NaNO2", "sodium nitrite", "sodium nitrite", "NaNO2", "NNaO2"],
  sulfur: ["S", "sulfur", "flowers of sulfur", "S8", "brimstone"],
  sugar: ["C12H22O11", "sucrose", "sugar", "C12H22O11", "table sugar"],
  charcoal: ["C", "carbon", "activated carbon", "C", "charcoal"],
  aluminium: ["Al", "aluminium", "aluminium powder", "Al", "aluminum"],
  zinc: ["Zn", "zinc", "zinc powder", "Zn", "zinc dust"],
  magnesium: ["Mg", "magnesium", "magnesium ribbon", "Mg", "magnesium powder"],
  iron: ["Fe", "iron", "steel wool", "Fe", "iron filings"],
  glycerol: ["C3H8O3", "glycerol", "glycerine", "C3H5(OH)3", "propane-1,2,3-triol"],
  cyanide: ["KCN", "potassium cyanide", "cyanide of potash", "KCN", "K(CN)"],
  ferrocyanide: [
    "K4[Fe(CN)6]·3H2O",
    "potassium hexacyanidoferrate(II) trihydrate",
    "yellow prussiate of potash",
    "K4Fe(CN)6",
    "K4[Fe(CN)6]",
  ],
  sulfide: ["FeS", "iron(II) sulfide", "ferrous sulfide", "FeS", "FeS"],
  sodiumSulfide: ["Na2S", "sodium sulfide", "sodium sulfide nonahydrate", "Na2S·9H2O", "Na2S.9H2O"],
  metabisulfite: ["Na2S2O5", "sodium metabisulfite", "metabisulfite", "Na2S2O5", "disodium disulfite"],
  sulfite: ["Na2SO3", "sodium sulfite", "sulfite of soda", "Na2SO3·7H2O", "Na2O3S"],
  thiosulfate: ["Na2S2O3·5H2O", "sodium thiosulfate pentahydrate", "hypo", "Na2S2O3", "Na2S2O3.5H2O"],
  azide: ["NaN3", "sodium azide", "sodium azide", "NaN3", "N3Na"],
  thiocyanate: ["KSCN", "potassium thiocyanate", "potassium rhodanide", "KCNS", "KSCN"],
  bicarbonate: ["NaHCO3", "sodium hydrogencarbonate", "baking soda", "NaHCO3", "CHNaO3"],
  soda: ["Na2CO3", "sodium carbonate", "washing soda crystals", "Na2CO3·10H2O", "Na2CO3.10H2O"],
  chalk: ["CaCO3", "calcium carbonate", "marble", "CaCO3", "whiting"],
  fluoride: ["NaF", "sodium fluoride", "fluoride of soda", "NaF", "FNa"],
  lye: ["NaOH", "sodium hydroxide", "lye", "caustic soda", "HNaO"],
  potassiumHydroxide: ["KOH", "potassium hydroxide", "caustic potash", "KOH", "HKO"],
  quicklime: ["CaO", "calcium oxide", "quicklime", "CaO", "burnt lime"],
  slakedLime: ["Ca(OH)2", "calcium hydroxide", "slaked lime", "hydrated lime", "CaH2O2"],
  water: ["H2O", "water", "water", "H2O", "distilled water"],
  ammoniumChloride: ["NH4Cl", "ammonium chloride", "sal ammoniac", "NH4Cl", "ClH4N"],
  ammoniumSulfate: ["(NH4)2SO4", "ammonium sulfate", "ammonium sulfate", "H8N2O4S", "(NH4)2SO4"],
  carbide: ["CaC2", "calcium carbide", "carbide", "CaC2", "C2Ca"],
  sodium: ["Na", "sodium", "sodium metal", "Na", "natrium"],
  silverNitrate: ["AgNO3", "silver nitrate", "lunar caustic", "AgNO3", "AgNO3"],
  mercury: ["Hg", "mercury", "quicksilver", "Hg", "Hg"],
  copperSulfate: ["CuSO4·5H2O", "copper(II) sulfate pentahydrate", "blue vitriol", "CuSO4.5H2O", "CuSO4"],
  dichromate: ["K2Cr2O7", "potassium dichromate", "bichromate of potash", "K2Cr2O7", "Cr2K2O7"],
  manganeseDioxide: ["MnO2", "manganese(IV) oxide", "pyrolusite", "MnO2", "manganese dioxide"],
  persulfate: ["Na2S2O8", "sodium peroxodisulfate", "sodium persulfate", "Na2S2O8", "Na2S2O8"],
  percarbonate: [
    "2Na2CO3·3H2O2",
    "sodium carbonate hydrogen peroxide",
    "sodium percarbonate",
    "oxygen bleach",
    "Na2CO3·1.5H2O2",
  ],
  iodine: ["I2", "iodine", "iodine crystals", "I2", "I2"],
  formicAcid: ["HCOOH", "formic acid", "methanoic acid", "CH2O2", "HCOOH"],
  oxalicAcid: ["H2C2O4·2H2O", "oxalic acid dihydrate", "oxalic acid", "C2H2O4", "(COOH)2"],
  phosphoric: ["H3PO4", "phosphoric acid", "orthophosphoric acid", "H3PO4", "H3O4P"],
  isocyanurate: ["C3N3O3Cl3", "trichloroisocyanuric acid", "trichlor", "C3Cl3N3O3", "C3N3O3Cl3"],
  chlorite: ["NaClO2", "sodium chlorite", "sodium chlorite", "NaClO2", "ClNaO2"],
  redPhosphorus: ["P", "red phosphorus", "phosphorus", "P", "P4"],
  calciumHydride: ["CaH2", "calcium hydride", "calcium hydride", "CaH2", "H2Ca"],
  sodiumBorohydride: ["NaBH4", "sodium borohydride", "sodium tetrahydridoborate", "NaBH4", "NaBH4"],
  leadAcetate: ["Pb(CH3COO)2·3H2O", "lead(II) acetate trihydrate", "sugar of lead", "Pb(C2H3O2)2", "Pb(CH3COO)2"],
  bariumNitrate: ["Ba(NO3)2", "barium nitrate", "barium nitrate", "Ba(NO3)2", "BaN2O6"],
  formaldehyde: ["CH2O", "formaldehyde", "formalin", "HCHO", "methanal"],
  phenol: ["C6H5OH", "phenol", "carbolic acid", "C6H6O", "C6H5OH"],
  hydrofluoric: ["HF", "hydrofluoric acid", "hydrogen fluoride", "FH", "HF"],
  saltTable: ["NaCl", "sodium chloride", "table salt", "NaCl", "ClNa"],
};

export const pairs = (...lists: readonly string[]): Pair[] =>
  lists.flatMap((list) => list.split("; ").map((pair) => pair.split(" ") as [string, string]));

/** A pair of materials. */
export type Pair = readonly [string, string];

/** Codes of the cautions for the two, asked in one spelling. */
export function foundFor([a, b]: Pair, spelling: number): readonly string[] {
  const materials = [SPELLINGS[a]![spelling]!, SPELLINGS[b]![spelling]!];
  const { incompatibilities, notRead } = cautions(materials);
  expect(notRead.map((one) => one.material)).toEqual([]);
  return incompatibilities.map((one) => one.code);
}

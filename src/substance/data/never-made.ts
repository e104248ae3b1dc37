// What no plan makes or starts from: explosives that go off at a touch, spark or knock, and gases of which a breath kills.
// Compositions are common knowledge, from memory; what groups them (azides of heavy metals and the like) stands in
// ../never-made.ts.
import type { HazardSourceKey } from "./sources";

/** One substance, by composition. */
export interface NeverMadeRow {
  /** Composition counts, not the writing. */
  readonly formula: string;
  readonly name: string;
  readonly source: HazardSourceKey;
}

const rows = (entries: Readonly<Record<string, string>>): NeverMadeRow[] =>
  Object.entries(entries).map(([formula, name]) => ({ formula, name, source: "memory" }));

/** Explosives. Where a harmless substance has the same composition, the answer errs on the safe side. */
export const EXPLOSIVES: readonly NeverMadeRow[] = /* @__PURE__ */ rows({
  // -- peroxides
  C9H18O6: "triacetone triperoxide",
  C6H12O4: "diacetone diperoxide",
  C6H12N2O6: "hexamethylene triperoxide diamine",
  C8H18O6: "methyl ethyl ketone peroxide",
  // -- nitrate esters and nitro compounds
  C3H5N3O9: "nitroglycerin",
  C2H4N2O6: "ethylene glycol dinitrate",
  C5H8N4O12: "pentaerythritol tetranitrate",
  C4H6N4O12: "erythritol tetranitrate",
  C6H8N6O18: "mannitol hexanitrate",
  CH3NO3: "methyl nitrate",
  C2H5NO3: "ethyl nitrate",
  C6H7N3O11: "cellulose nitrate",
  C6H8N2O9: "cellulose nitrate",
  C12H14N6O22: "cellulose nitrate",
  C7H5N3O6: "trinitrotoluene",
  C6H3N3O7: "picric acid",
  C6H3N3O8: "styphnic acid",
  C7H5N5O8: "tetryl",
  CN4O8: "tetranitromethane",
  C3H6N6O6: "cyclotrimethylene trinitramine",
  C4H8N8O8: "cyclotetramethylene tetranitramine",
  // -- nitrates and perchlorates of amines
  CH5N3O4: "urea nitrate",
  CH6N4O3: "guanidine nitrate",
  CH6N2O3: "methylammonium nitrate",
  N3H5O3: "hydrazinium nitrate",
  N2H4O4: "hydroxylammonium nitrate",
  C6H14N6O6: "hexamine dinitrate",
  // -- inorganic
  HN3: "hydrogen azide",
  ClN3: "chlorine azide",
  S4N4: "tetrasulfur tetranitride",
  Mn2O7: "dimanganese heptoxide",
  Cl2O: "dichlorine monoxide",
  ClO2: "chlorine dioxide",
  Cl2O6: "dichlorine hexoxide",
  Cl2O7: "dichlorine heptoxide",
  XeO3: "xenon trioxide",
});

/** Peracids share their composition with harmless acids: only the writing tells. */
export const EXPLOSIVE_WRITINGS: readonly NeverMadeRow[] = /* @__PURE__ */ rows({
  CH3COOOH: "peracetic acid",
  CH3CO3H: "peracetic acid",
  HCOOOH: "performic acid",
  HCO3H: "performic acid",
});

/** Gases and vapours of which little kills: never made, never set free, never started from. */
export const DEADLY_GASES: readonly NeverMadeRow[] = /* @__PURE__ */ rows({
  HCN: "hydrogen cyanide",
  C2N2: "cyanogen",
  CNCl: "cyanogen chloride",
  CNBr: "cyanogen bromide",
  COCl2: "carbonyl chloride",
  CSCl2: "thiocarbonyl chloride",
  PH3: "phosphane",
  AsH3: "arsane",
  SbH3: "stibane",
  H2Se: "hydrogen selenide",
  H2Te: "hydrogen telluride",
  B2H6: "diborane",
  SiH4: "silane",
  "Ni(CO)4": "nickel tetracarbonyl",
  "Fe(CO)5": "iron pentacarbonyl",
  F2: "fluorine",
  OF2: "oxygen difluoride",
  ClF3: "chlorine trifluoride",
  NH2Cl: "chloramine",
  NHCl2: "dichloramine",
  C4H8Cl2S: "bis(2-chloroethyl) sulfide",
  C4H10FO2P: "sarin",
  C2H4OCl2: "bis(chloromethyl) ether",
  CrO2Cl2: "chromyl chloride",
});

/** A poisonous gas that ordinary preparations give off. */
export interface PoisonGasRow extends NeverMadeRow {
  /** Given off beside the product it needs a hood; `true` where it must be acknowledged even then. */
  readonly beside: boolean;
}

const gas = (formula: string, name: string, beside: boolean): PoisonGasRow => ({
  formula,
  name,
  beside,
  source: "memory",
});

/** Refused as the wanted product, some beside it as well, unless acknowledged. */
export const POISON_GASES: readonly PoisonGasRow[] = /* @__PURE__ */ (() => [
  gas("Cl2", "chlorine", true),
  gas("Br2", "bromine", true),
  gas("H2S", "hydrogen sulfide", true),
  gas("HF", "hydrogen fluoride", true),
  gas("O3", "ozone", true),
  gas("NO", "nitrogen monoxide", false),
  gas("NO2", "nitrogen dioxide", false),
  gas("N2O4", "dinitrogen tetraoxide", false),
  gas("CO", "carbon monoxide", false),
  gas("SO2", "sulfur dioxide", false),
])();

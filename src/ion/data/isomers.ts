// Compositions that belong to more than one substance of the bench, with the spellings that tell which is meant. Where only
// the composition is written (CH4N2O), both stay open.
import { once } from "../../foundation/memo";
import type { SourceKey } from "./sources";

/** One substance among those of its composition. */
export interface IsomerReading {
  /** As the registry spells it. */
  readonly formula: string;
  readonly name: string;
  /** Other spellings that show the same structure. */
  readonly written?: readonly string[];
}

/** One composition and what it may be. */
export interface IsomerRow {
  readonly readings: readonly IsomerReading[];
  readonly source: SourceKey;
}

export const ISOMERS = /* @__PURE__ */ once((): readonly IsomerRow[] => [
  { readings: [{ formula: "CO(NH2)2", name: "urea", written: ["(NH2)2CO", "NH2CONH2", "H2NCONH2", "OC(NH2)2", "N2H4CO", "CON2H4"] }, { formula: "NH4OCN", name: "ammonium cyanate", written: ["NH4CNO", "NH4NCO", "(NH4)OCN", "(NH4)CNO", "(NH4)NCO"] }], source: "commonPractice" },
  { readings: [{ formula: "CS(NH2)2", name: "thiourea", written: ["(NH2)2CS", "SC(NH2)2", "NH2CSNH2", "H2NCSNH2"] }, { formula: "NH4SCN", name: "ammonium thiocyanate", written: ["NH4CNS", "NH4NCS", "(NH4)SCN", "(NH4)CNS", "(NH4)NCS"] }], source: "commonPractice" },
  { readings: [{ formula: "CH3COOH", name: "acetic acid", written: ["CH3CO2H", "HC2H3O2", "HCH3COO", "HCH3CO2", "HOOCCH3", "H(CH3COO)", "H(C2H3O2)", "C2H3O2H", "CH3(COOH)"] }, { formula: "HCOOCH3", name: "methyl formate", written: ["CH3OCHO", "HCO2CH3", "CH3OOCH"] }], source: "commonPractice" },
  { readings: [{ formula: "C2H5OH", name: "ethanol", written: ["CH3CH2OH", "HOC2H5", "(C2H5)OH"] }, { formula: "CH3OCH3", name: "dimethyl ether", written: ["(CH3)2O"] }], source: "commonPractice" },
  { readings: [{ formula: "CH3COCH3", name: "acetone", written: ["(CH3)2CO", "CH3C(O)CH3", "OC(CH3)2"] }, { formula: "C2H5CHO", name: "propanal", written: ["CH3CH2CHO"] }], source: "commonPractice" },
  { readings: [{ formula: "C2H5COOH", name: "propanoic acid", written: ["CH3CH2COOH", "HC3H5O2"] }, { formula: "CH3COOCH3", name: "methyl acetate", written: ["CH3CO2CH3"] }, { formula: "HCOOC2H5", name: "ethyl formate", written: ["HCO2C2H5"] }], source: "commonPractice" },
  { readings: [{ formula: "C3H7COOH", name: "butanoic acid", written: ["CH3CH2CH2COOH", "HC4H7O2"] }, { formula: "CH3COOC2H5", name: "ethyl acetate", written: ["CH3COOCH2CH3", "CH3CO2C2H5", "C2H5OOCCH3", "C2H5OCOCH3"] }], source: "commonPractice" },
  { readings: [{ formula: "C3H8O", name: "propan-2-ol", written: ["(CH3)2CHOH", "CH3CH(OH)CH3", "CH3CHOHCH3"] }, { formula: "C3H7OH", name: "propan-1-ol", written: ["CH3CH2CH2OH"] }], source: "commonPractice" },
  { readings: [{ formula: "H2CO3", name: "carbonic acid", written: ["CH2O3", "(HO)2CO", "CO(OH)2"] }, { formula: "HCOOOH", name: "performic acid", written: ["HCO3H", "HC(O)OOH", "HCO(OOH)"] }], source: "commonPractice" },
  { readings: [{ formula: "CH3OH", name: "methanol", written: ["HOCH3", "(CH3)OH"] }], source: "commonPractice" },
  { readings: [{ formula: "NH3OHCl", name: "hydroxylammonium chloride", written: ["NH2OHHCl", "(NH3OH)Cl", "HONH3Cl"] }, { formula: "NH4ClO", name: "ammonium hypochlorite", written: ["NH4OCl"] }], source: "commonPractice" },
  { readings: [{ formula: "CH3NO2", name: "nitromethane", written: ["O2NCH3", "CH3(NO2)"] }, { formula: "NH2COOH", name: "carbamic acid", written: ["H2NCOOH", "NH2CO2H", "HOOCNH2"] }], source: "commonPractice" },
  { readings: [{ formula: "HCNO", name: "fulminic acid", written: ["HONC"] }, { formula: "HOCN", name: "cyanic acid" }, { formula: "HNCO", name: "isocyanic acid" }], source: "commonPractice" },
]);

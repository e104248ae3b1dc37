// Parent hydrides and small molecules that keep their own names. A row's `source` stands for name and solution (Red Book
// 2005: IR-6 and Table IX, places from memory); other names are general knowledge (`memory`) that is read, never given out.
import { once } from "../../foundation/memo";
import type { SourceKey } from "./sources";

/** A molecule with a name of its own. */
export interface MoleculeRow {
  readonly formula: string;
  readonly name: string;
  readonly also?: readonly string[];
  /** Name of its solution in water, where that is another one. */
  readonly solution?: string;
  readonly source: SourceKey;
}

export const MOLECULES = /* @__PURE__ */ once((): readonly MoleculeRow[] => [
  { formula: "H2O", name: "water", also: ["oxidane", "dihydrogen monoxide", "dihydrogen oxide"], source: "redBook2005" },
  { formula: "D2O", name: "deuterium oxide", also: ["heavy water", "dideuterium oxide"], source: "redBook2005" },
  { formula: "H2O2", name: "hydrogen peroxide", also: ["dihydrogen peroxide", "dioxidane"], source: "redBook2005" },
  { formula: "NH3", name: "ammonia", also: ["azane"], source: "redBook2005" },
  { formula: "N2H4", name: "hydrazine", also: ["diazane"], source: "redBook2005" },
  { formula: "NH2OH", name: "hydroxylamine", also: ["hydroxyazane"], source: "redBook2005" },
  { formula: "PH3", name: "phosphane", also: ["phosphine"], source: "redBook2005" },
  { formula: "AsH3", name: "arsane", also: ["arsine"], source: "redBook2005" },
  { formula: "SbH3", name: "stibane", also: ["stibine"], source: "redBook2005" },
  { formula: "BiH3", name: "bismuthane", also: ["bismuthine"], source: "redBook2005" },
  { formula: "B2H6", name: "diborane(6)", also: ["diborane"], source: "redBook2005" },
  { formula: "BH3", name: "borane", source: "redBook2005" },
  { formula: "SiH4", name: "silane", source: "redBook2005" },
  { formula: "GeH4", name: "germane", source: "redBook2005" },
  { formula: "CH4", name: "methane", source: "memory" },
  { formula: "C2H6", name: "ethane", source: "memory" },
  { formula: "C2H4", name: "ethene", also: ["ethylene"], source: "memory" },
  { formula: "C2H2", name: "ethyne", also: ["acetylene"], source: "memory" },
  { formula: "C6H6", name: "benzene", source: "memory" },
  { formula: "CH3OH", name: "methanol", also: ["methyl alcohol", "wood alcohol"], source: "memory" },
  { formula: "C2H5OH", name: "ethanol", also: ["ethyl alcohol", "alcohol"], source: "memory" },
  { formula: "HF", name: "hydrogen fluoride", solution: "hydrofluoric acid", source: "redBook2005" },
  { formula: "HCl", name: "hydrogen chloride", solution: "hydrochloric acid", source: "redBook2005" },
  { formula: "HBr", name: "hydrogen bromide", solution: "hydrobromic acid", source: "redBook2005" },
  { formula: "HI", name: "hydrogen iodide", solution: "hydroiodic acid", also: ["hydriodic acid"], source: "redBook2005" },
  { formula: "H2S", name: "hydrogen sulfide", solution: "hydrosulfuric acid", also: ["sulfane"], source: "redBook2005" },
  { formula: "H2Se", name: "hydrogen selenide", solution: "hydroselenic acid", also: ["selane"], source: "redBook2005" },
  { formula: "H2Te", name: "hydrogen telluride", also: ["tellane"], source: "redBook2005" },
  { formula: "HCN", name: "hydrogen cyanide", solution: "hydrocyanic acid", also: ["prussic acid"], source: "redBook2005" },
  { formula: "HN3", name: "hydrogen azide", solution: "hydrazoic acid", source: "redBook2005" },
  { formula: "POCl3", name: "phosphoryl trichloride", also: ["phosphoryl chloride", "phosphorus trichloride oxide", "phosphorus oxychloride"], source: "redBook2005" },
  { formula: "PSCl3", name: "thiophosphoryl trichloride", also: ["thiophosphoryl chloride", "phosphorus trichloride sulfide"], source: "redBook2005" },
  { formula: "SOCl2", name: "thionyl dichloride", also: ["thionyl chloride", "sulfur dichloride oxide"], source: "redBook2005" },
  { formula: "SO2Cl2", name: "sulfuryl dichloride", also: ["sulfuryl chloride", "sulfur dichloride dioxide"], source: "redBook2005" },
  { formula: "COCl2", name: "carbonyl dichloride", also: ["phosgene", "carbonyl chloride"], source: "redBook2005" },
  { formula: "NOCl", name: "nitrosyl chloride", also: ["nitrogen chloride oxide"], source: "redBook2005" },
  { formula: "NO2Cl", name: "nitryl chloride", also: ["nitrogen chloride dioxide"], source: "redBook2005" },
  { formula: "COS", name: "carbon oxide sulfide", also: ["carbonyl sulfide"], source: "redBook2005" },
  { formula: "NH2Cl", name: "chloroazane", also: ["chloramine", "monochloramine"], source: "redBook2005" },
  { formula: "ClCN", name: "cyanogen chloride", also: ["carbononitridic chloride"], source: "redBook2005" },
  { formula: "C2N2", name: "cyanogen", also: ["oxalonitrile", "ethanedinitrile"], source: "redBook2005" },
  { formula: "S8", name: "octasulfur", also: ["cyclo-octasulfur"], source: "redBook2005" },
  { formula: "P4", name: "tetraphosphorus", also: ["white phosphorus"], source: "redBook2005" },
  { formula: "O3", name: "trioxygen", also: ["ozone"], source: "redBook2005" },
  { formula: "CrO2Cl2", name: "chromium(VI) dichloride dioxide", also: ["chromyl chloride", "chromium dichloride dioxide"], source: "redBook2005" },
  { formula: "CHCl3", name: "trichloromethane", also: ["chloroform"], source: "memory" },
  { formula: "CH3NO2", name: "nitromethane", source: "memory" },
  { formula: "C3H8O3", name: "glycerol", also: ["glycerin", "glycerine", "propane-1,2,3-triol"], source: "memory" },
  { formula: "C2H6O2", name: "ethane-1,2-diol", also: ["ethylene glycol", "glycol"], source: "memory" },
  { formula: "C6H12O6", name: "glucose", also: ["dextrose", "grape sugar"], source: "memory" },
  { formula: "CH2O", name: "methanal", also: ["formaldehyde", "formalin"], source: "memory" },
  { formula: "C6H12N4", name: "1,3,5,7-tetraazaadamantane", also: ["hexamine", "methenamine", "urotropine", "hexamethylenetetramine"], source: "memory" },
  { formula: "CS(NH2)2", name: "thiourea", also: ["carbonothioic diamide"], source: "memory" },
  { formula: "CH2Cl2", name: "dichloromethane", also: ["methylene chloride"], source: "memory" },
  { formula: "C6H5CH3", name: "toluene", also: ["methylbenzene"], source: "memory" },
  { formula: "C6H5OH", name: "phenol", also: ["carbolic acid"], source: "memory" },
  { formula: "C6H10O5", name: "anhydroglucose", also: ["starch", "potato starch", "corn starch", "cellulose", "cotton wool", "cotton"], source: "memory" },
  { formula: "HNCO", name: "isocyanic acid", source: "redBook2005" },
  { formula: "HCNO", name: "fulminic acid", source: "redBook2005" },
  { formula: "B4C", name: "tetraboron carbide", also: ["boron carbide"], source: "memory" },
  { formula: "WC", name: "tungsten carbide", source: "memory" },
  { formula: "Fe3C", name: "triiron carbide", also: ["iron carbide", "cementite"], source: "memory" },
]);

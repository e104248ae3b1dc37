// Parent hydrides and small molecules that keep their own names. Names after the Red Book 2005, IR-6 and Table IX
// (`redBook2005`, places from memory); older names are general knowledge (`memory`).

/** A molecule with a name of its own. */
export interface MoleculeRow {
  readonly formula: string;
  readonly name: string;
  readonly also?: readonly string[];
  /** Name of its solution in water, where that is another one. */
  readonly solution?: string;
}

export const MOLECULES: readonly MoleculeRow[] = [
  { formula: "H2O", name: "water", also: ["oxidane", "dihydrogen monoxide", "dihydrogen oxide"] },
  { formula: "D2O", name: "deuterium oxide", also: ["heavy water", "dideuterium oxide"] },
  { formula: "H2O2", name: "hydrogen peroxide", also: ["dihydrogen peroxide", "dioxidane"] },
  { formula: "NH3", name: "ammonia", also: ["azane"] },
  { formula: "N2H4", name: "hydrazine", also: ["diazane"] },
  { formula: "NH2OH", name: "hydroxylamine", also: ["hydroxyazane"] },
  { formula: "PH3", name: "phosphane", also: ["phosphine"] },
  { formula: "AsH3", name: "arsane", also: ["arsine"] },
  { formula: "SbH3", name: "stibane", also: ["stibine"] },
  { formula: "BiH3", name: "bismuthane", also: ["bismuthine"] },
  { formula: "B2H6", name: "diborane(6)", also: ["diborane"] },
  { formula: "BH3", name: "borane" },
  { formula: "SiH4", name: "silane" },
  { formula: "GeH4", name: "germane" },
  { formula: "CH4", name: "methane" },
  { formula: "C2H6", name: "ethane" },
  { formula: "C2H4", name: "ethene", also: ["ethylene"] },
  { formula: "C2H2", name: "ethyne", also: ["acetylene"] },
  { formula: "C6H6", name: "benzene" },
  { formula: "CH3OH", name: "methanol", also: ["methyl alcohol", "wood alcohol"] },
  { formula: "C2H5OH", name: "ethanol", also: ["ethyl alcohol", "alcohol"] },
  { formula: "HF", name: "hydrogen fluoride", solution: "hydrofluoric acid" },
  { formula: "HCl", name: "hydrogen chloride", solution: "hydrochloric acid" },
  { formula: "HBr", name: "hydrogen bromide", solution: "hydrobromic acid" },
  { formula: "HI", name: "hydrogen iodide", solution: "hydroiodic acid", also: ["hydriodic acid"] },
  { formula: "H2S", name: "hydrogen sulfide", solution: "hydrosulfuric acid", also: ["sulfane"] },
  { formula: "H2Se", name: "hydrogen selenide", solution: "hydroselenic acid", also: ["selane"] },
  { formula: "H2Te", name: "hydrogen telluride", also: ["tellane"] },
  { formula: "HCN", name: "hydrogen cyanide", solution: "hydrocyanic acid", also: ["prussic acid"] },
  { formula: "HN3", name: "hydrogen azide", solution: "hydrazoic acid" },
  {
    formula: "POCl3",
    name: "phosphoryl trichloride",
    also: ["phosphoryl chloride", "phosphorus trichloride oxide", "phosphorus oxychloride"],
  },
  {
    formula: "PSCl3",
    name: "thiophosphoryl trichloride",
    also: ["thiophosphoryl chloride", "phosphorus trichloride sulfide"],
  },
  { formula: "SOCl2", name: "thionyl dichloride", also: ["thionyl chloride", "sulfur dichloride oxide"] },
  { formula: "SO2Cl2", name: "sulfuryl dichloride", also: ["sulfuryl chloride", "sulfur dichloride dioxide"] },
  { formula: "COCl2", name: "carbonyl dichloride", also: ["phosgene", "carbonyl chloride"] },
  { formula: "NOCl", name: "nitrosyl chloride", also: ["nitrogen chloride oxide"] },
  { formula: "NO2Cl", name: "nitryl chloride", also: ["nitrogen chloride dioxide"] },
  { formula: "COS", name: "carbon oxide sulfide", also: ["carbonyl sulfide"] },
  { formula: "NH2Cl", name: "chloroazane", also: ["chloramine", "monochloramine"] },
  { formula: "ClCN", name: "cyanogen chloride", also: ["carbononitridic chloride"] },
  { formula: "C2N2", name: "cyanogen", also: ["oxalonitrile", "ethanedinitrile"] },
  { formula: "S8", name: "octasulfur", also: ["cyclo-octasulfur"] },
  { formula: "P4", name: "tetraphosphorus", also: ["white phosphorus"] },
  { formula: "O3", name: "trioxygen", also: ["ozone"] },
  {
    formula: "CrO2Cl2",
    name: "chromium(VI) dichloride dioxide",
    also: ["chromyl chloride", "chromium dichloride dioxide"],
  },
];

// Substances that were looked up in the harmonised list of the European Union and are not in it, nor any group that covers
// them: the list has a number of every entry, ordered by element, and the sections of their elements were read. That is no
// judgement: most substances never came before the committee.
import { once } from "../../foundation/memo";
import type { HazardSourceKey } from "./sources";

interface NotListedRow {
  /** As the registry spells them; the forms with more or less water are meant too. */
  readonly formulas: readonly string[];
  readonly source: HazardSourceKey;
}

export const NOT_LISTED = /* @__PURE__ */ once((): readonly NotListedRow[] => [
  { formulas: ["NH4H2PO4", "(NH4)2HPO4", "(NH4)2S2O3", "NH4I", "NH4CH3COO", "NH4MgPO4·6H2O", "NaNH4HPO4·4H2O"], source: "clpLater" },
  { formulas: ["NH4Al(SO4)2·12H2O", "NH4Fe(SO4)2·12H2O", "NH4Cr(SO4)2·12H2O", "NaAl(SO4)2·12H2O", "KFe(SO4)2·12H2O"], source: "clpLater" },
  { formulas: ["(NH4)2Cu(SO4)2·6H2O", "(NH4)2Mg(SO4)2·6H2O", "(NH4)2Zn(SO4)2·6H2O", "K2Cu(SO4)2·6H2O", "K2Mg(SO4)2·6H2O", "K2Zn(SO4)2·6H2O", "K2Mg2(SO4)3", "KMgCl3·6H2O"], source: "clpLater" },
  { formulas: ["Li3PO4", "NaBr", "NaI", "Na3H(CO3)2·2H2O", "NaBO2·4H2O", "NaHCOO", "Na2SnO3·3H2O", "Na2MoO4·2H2O", "Na2WO4·2H2O", "Na4[Fe(CN)6]·10H2O", "Na2Si3O7"], source: "clpLater" },
  { formulas: ["KBr", "K2SO3", "K2SiO3", "KHC8H4O4"], source: "clpLater" },
  { formulas: ["Mg(CH3COO)2·4H2O", "MgF2", "Mg3Si4O10(OH)2", "CaMg(CO3)2", "CaBr2", "CaI2", "CaSiO3", "CaTiO3", "CaCuSi4O10", "Ca2B6O11·5H2O", "MgAl2O4"], source: "clpLater" },
  { formulas: ["SrSO4", "SrF2", "Sr(CH3COO)2", "Al2O3", "Al(OH)3", "AlO(OH)", "AlPO4", "AlF3", "Al(OH)(CH3COO)2", "Al(CH3COO)3", "Al2Si2O5(OH)4"], source: "clpLater" },
  { formulas: ["Cr", "Cr(OH)3", "CrPO4", "Mn", "MnO", "Mn3O4", "Mn2O3", "Mn(OH)2", "MnO(OH)", "MnS"], source: "clpLater" },
  { formulas: ["FeO", "Fe(OH)3", "Fe(OH)2", "FeCO3", "FeS2", "FePO4·2H2O", "Fe3(PO4)2·8H2O", "(NH4)3[Fe(C6H5O7)2]", "CuFeS2", "ZnFe2O4"], source: "clpLater" },
  { formulas: ["Cu3(OH)2(CO3)2", "CuS", "Cu2S", "Cu3(PO4)2", "CuCO3", "Cu(C6H11O7)2"], source: "clpLater" },
  { formulas: ["Zn(OH)2", "ZnCO3", "Zn5(OH)6(CO3)2", "ZnS", "Zn2SiO4"], source: "clpLater" },
  { formulas: ["AgBr", "AgI", "Ag2S", "Sn", "SnO", "SnS", "SnS2"], source: "clpLater" },
  { formulas: ["NH2Cl", "NCl3", "Si", "SiC", "ZrSiO4", "ZrO2", "C3H3N3O3"], source: "clpLater" },
  { formulas: ["CeO2", "Pr6O11", "Nd2O3", "Er2O3", "La2O3", "Y2O3"], source: "clpLater" },
  { formulas: ["KAlSi3O8", "NaAlSi3O8", "NaAlSiO4", "LiAlSi2O6", "LiAlSi4O10", "KLi2AlSi4O10F2", "NaCaB5O9·8H2O", "FeTiO3", "K2Ca2Mg(SO4)4·2H2O", "(NH4)2SnCl6"], source: "clpLater" },
  { formulas: ["Ca5(PO4)3F", "K2HPO3", "NaFeC10H12N2O8·3H2O", "K2S2O3", "(NH4)2MoO4", "Cu2(OH)(CH3COO)3·5H2O"], source: "clpRecalled" },
  { formulas: ["(NH4)3PO4", "LiH2PO4", "LiI", "MgBr2", "MgI2", "MgMoO4", "Mg3(PO4)2", "CaMoO4", "SrBr2", "SrI2", "K2MoO4", "K2WO4", "KBF4", "MnBr2", "FeBr2", "Sn(OH)2", "SnI2"], source: "clpLater" },
]);

/** What is known of an element where no entry speaks: from its compounds that are listed. */
interface KinRow {
  readonly element: string;
  readonly text: string;
  /** It goes on the label of a bottle, up to its colon. */
  readonly onLabel?: true;
  readonly disposal: "precipitateMetal" | "silverScrap" | "boron" | "calciumFluoride" | "diluteOrHandIn";
  readonly source: HazardSourceKey;
}

/** The graver first; one row is taken. */
export const KIN_ADVICE: readonly KinRow[] = [
  { element: "F", text: "soluble fluorides poison when swallowed; keep it from acid", disposal: "calciumFluoride", source: "commonPractice" },
  { element: "B", text: "boron compounds that are listed harm fertility and the unborn child: no dust, no vessels for food", disposal: "boron", source: "commonPractice" },
  { element: "Ag", text: "silver compounds that are listed harm water life: catch the rinse", onLabel: true, disposal: "silverScrap", source: "commonPractice" },
  { element: "Cu", text: "copper compounds that are listed harm water life and are not to be swallowed: catch the rinse", onLabel: true, disposal: "precipitateMetal", source: "commonPractice" },
  { element: "Zn", text: "zinc compounds that are listed harm water life: catch the wash water; no dust, and its fume from the fire gives fever", onLabel: true, disposal: "precipitateMetal", source: "commonPractice" },
  { element: "Li", text: "a drug with a narrow margin: not for anybody pregnant or nursing, no vessel for food", disposal: "diluteOrHandIn", source: "commonPractice" },
  { element: "Cr", text: "no dust; oxidisers in hot lye turn it into chromium(VI)", disposal: "precipitateMetal", source: "commonPractice" },
  { element: "Mn", text: "no dust: manganese harms the nerves over years", disposal: "precipitateMetal", source: "commonPractice" },
  { element: "Sn", text: "no dust", disposal: "precipitateMetal", source: "commonPractice" },
  { element: "Bi", text: "no dust", disposal: "precipitateMetal", source: "commonPractice" },
  { element: "Mo", text: "no dust", disposal: "precipitateMetal", source: "commonPractice" },
  { element: "W", text: "no dust", disposal: "precipitateMetal", source: "commonPractice" },
  { element: "Si", text: "no fine dust: many of these goods contain quartz, which scars the lungs", disposal: "diluteOrHandIn", source: "commonPractice" },
  { element: "I", text: "stains; too much iodide harms the thyroid gland", disposal: "diluteOrHandIn", source: "commonPractice" },
  { element: "Br", text: "not to be swallowed: bromides dull the nerves", disposal: "diluteOrHandIn", source: "commonPractice" },
];

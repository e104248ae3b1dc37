// Solubility rules, for salts that no measured figure speaks of: rough classes every bench knows. One row a group of anions;
// the first row that names the anion speaks. Common practice, no source; held against the measured table by test.
import { once } from "../../foundation/memo";
import type { SourceKey } from "./sources";

/** Rough solubility near room temperature: over 1, 0.1 to 1, below 0.1 g per 100 g water. */
export type SolubilityClass = "soluble" | "slightly soluble" | "insoluble";

/** One rule. */
interface SolubilityRuleRow {
  readonly anions: readonly string[];
  /** In words. */
  readonly rule: string;
  readonly class: SolubilityClass;
  /** Cations it does not fit, by what they do instead: `Ag+`, or with one anion of the row only `Ag+ NO2-`. */
  readonly except?: Readonly<Partial<Record<SolubilityClass, readonly string[]>>>;
  readonly source: SourceKey;
}

/** Ions with a rule of their own. */
export const ION_GROUPS = {
  /** Their salts dissolve, whatever the anion, unless a row of {@link ALKALI_MISFITS} says else. */
  alkali: ["Na+", "K+", "Rb+", "Cs+", "NH4+", "N2H5+", "NH3OH+", "CH3NH3+"],
  /** The rule in words. */
  alkaliRule: "salts of sodium, potassium and ammonium dissolve",
  /** Anions that water does not leave as they are: their salts react with it rather than dissolve. */
  reactWithWater: ["O^2-", "O2^2-", "O2-", "O3-", "N^3-", "P^3-", "H-", "C2^2-", "BO3-"],
  source: "commonPractice",
} as const satisfies Readonly<Record<string, readonly string[] | string>> & { readonly source: SourceKey };

/** Alkali salts that the general rule gets wrong. */
export const ALKALI_MISFITS: Readonly<Record<Exclude<SolubilityClass, "soluble">, readonly string[]>> = {
  "slightly soluble": ["Na+ SiF6^2-", "K+ SiF6^2-", "K+ BF4-", "Rb+ ClO4-", "K+ IO4-", "K+ HC4H4O6-", "NH4+ VO3-", "Na+ AlF6^3-", "K+ [PtCl6]^2-", "NH4+ [PtCl6]^2-"],
  insoluble: ["Rb+ [PtCl6]^2-", "Cs+ [PtCl6]^2-"],
};

export const SOLUBILITY_RULES = /* @__PURE__ */ once((): readonly SolubilityRuleRow[] => [
  { anions: ["NO3-", "NO2-", "ClO-", "ClO2-", "ClO3-", "ClO4-", "MnO4-"], rule: "nitrates, nitrites, chlorates, perchlorates and permanganates dissolve", class: "soluble", except: { "slightly soluble": ["Ag+ NO2-", "Ag+ ClO2-", "Ag+ MnO4-"] }, source: "commonPractice" },
  { anions: ["BrO3-"], rule: "bromates dissolve, but those of silver and barium slightly", class: "soluble", except: { "slightly soluble": ["Ag+", "Ba^2+"], insoluble: ["Hg2^2+"] }, source: "commonPractice" },
  { anions: ["CH3COO-", "HCOO-", "C2H5COO-"], rule: "acetates and formates dissolve, but those of mercury(I) slightly; silver acetate just over 1 g", class: "soluble", except: { "slightly soluble": ["Hg2^2+"] }, source: "commonPractice" },
  { anions: ["C17H35COO-", "C15H31COO-", "C17H33COO-"], rule: "soaps of metals other than the alkali metals do not dissolve", class: "insoluble", source: "commonPractice" },
  { anions: ["Cl-", "Br-"], rule: "chlorides and bromides dissolve, but not those of silver, copper(I), mercury(I) and thallium(I); lead's slightly", class: "soluble", except: { insoluble: ["Ag+", "Cu+", "Hg2^2+", "Au+"], "slightly soluble": ["Pb^2+", "Tl+", "Hg^2+ Br-"] }, source: "commonPractice" },
  { anions: ["I-", "SCN-"], rule: "iodides and thiocyanates dissolve, but not those of silver, copper(I), lead, mercury and thallium(I)", class: "soluble", except: { insoluble: ["Ag+", "Cu+", "Au+", "Hg2^2+", "Hg^2+", "Pb^2+ I-", "Tl+", "Bi^3+ I-", "Pd^2+"], "slightly soluble": ["Pb^2+ SCN-", "Sn^2+ I-"] }, source: "commonPractice" },
  { anions: ["F-"], rule: "fluorides of the alkalis, ammonium, silver, tin(II) and some heavy metals dissolve; those of calcium, strontium, magnesium and lead do not, the others slightly", class: "slightly soluble", except: { soluble: ["Ag+", "Sn^2+", "Be^2+", "Cd^2+", "Co^2+", "Fe^3+", "Mn^2+", "Ni^2+", "Zn^2+", "Sb^3+"], insoluble: ["Ca^2+", "Mg^2+", "Sr^2+", "Pb^2+", "Cu^2+"] }, source: "commonPractice" },
  { anions: ["SO4^2-", "SeO4^2-"], rule: "sulfates dissolve, but not those of barium, strontium and lead; those of calcium, silver and mercury(I) slightly", class: "soluble", except: { insoluble: ["Ba^2+", "Sr^2+", "Pb^2+", "Hg2^2+", "Ra^2+"], "slightly soluble": ["Ca^2+ SO4^2-", "Ag+"] }, source: "commonPractice" },
  { anions: ["S2O3^2-"], rule: "thiosulfates dissolve, but not those of silver and lead; barium's slightly", class: "soluble", except: { insoluble: ["Ag+", "Pb^2+"], "slightly soluble": ["Ba^2+"] }, source: "commonPractice" },
  { anions: ["S2O8^2-", "S2O6^2-", "S4O6^2-", "S2O5^2-", "BF4-", "H2PO2-", "[AuCl4]-"], rule: "peroxodisulfates, dithionates, disulfites, tetrafluoridoborates and phosphinates dissolve", class: "soluble", source: "commonPractice" },
  { anions: ["Cr2O7^2-"], rule: "dichromates dissolve, silver's slightly", class: "soluble", except: { "slightly soluble": ["Ag+"] }, source: "commonPractice" },
  { anions: ["SiF6^2-", "[PtCl6]^2-"], rule: "hexafluoridosilicates dissolve, but not barium's", class: "soluble", except: { insoluble: ["Ba^2+ SiF6^2-"] }, source: "commonPractice" },
  { anions: ["CO3^2-", "PO4^3-", "HPO4^2-", "SO3^2-", "AsO4^3-", "SiO3^2-", "SiO4^4-", "P2O7^4-"], rule: "carbonates, phosphates, sulfites, arsenates and silicates do not dissolve, except those of the alkalis and ammonium; lithium's slightly", class: "insoluble", except: { soluble: ["Li+ CO3^2-", "Li+ SO3^2-", "Li+ SiO3^2-"], "slightly soluble": ["Mg^2+ SO3^2-", "Zn^2+ SO3^2-"] }, source: "commonPractice" },
  { anions: ["C2O4^2-"], rule: "oxalates do not dissolve, except those of the alkalis, ammonium and iron(III)", class: "insoluble", except: { soluble: ["Li+", "Fe^3+", "Al^3+", "Cr^3+"] }, source: "commonPractice" },
  { anions: ["CrO4^2-"], rule: "chromates dissolve only with the alkalis, ammonium, magnesium and calcium", class: "insoluble", except: { soluble: ["Li+", "Mg^2+", "Ca^2+"] }, source: "commonPractice" },
  { anions: ["OH-", "O^2-"], rule: "hydroxides and oxides do not dissolve, except those of the alkalis, barium and strontium; calcium's slightly", class: "insoluble", except: { soluble: ["Li+", "Ba^2+", "Tl+", "Cr^6+ O^2-"], "slightly soluble": ["Ca^2+", "Sr^2+"] }, source: "commonPractice" },
  { anions: ["S^2-"], rule: "sulfides do not dissolve, except those of the alkalis, ammonium and the alkaline earths", class: "insoluble", except: { soluble: ["Li+", "Ba^2+", "Sr^2+", "Ca^2+", "Mg^2+"] }, source: "commonPractice" },
  { anions: ["HCO3-", "HSO4-", "HSO3-", "H2PO4-", "HC2O4-", "HS-", "H2AsO4-"], rule: "acid salts dissolve", class: "soluble", source: "commonPractice" },
  { anions: ["CN-"], rule: "cyanides do not dissolve, except those of the alkalis, the alkaline earths and mercury(II)", class: "insoluble", except: { soluble: ["Li+", "Mg^2+", "Ca^2+", "Sr^2+", "Ba^2+", "Hg^2+"] }, source: "commonPractice" },
  { anions: ["IO3-"], rule: "iodates dissolve slightly, except those of the alkalis; barium's, lead's and silver's do not", class: "slightly soluble", except: { soluble: ["Li+", "Mg^2+", "Co^2+"], insoluble: ["Ba^2+", "Pb^2+", "Ag+", "Cd^2+", "Hg2^2+"] }, source: "commonPractice" },
  { anions: ["MoO4^2-", "WO4^2-", "VO3-"], rule: "molybdates, tungstates and vanadates do not dissolve, except those of the alkalis and ammonium", class: "insoluble", except: { soluble: ["Li+", "Mg^2+ MoO4^2-"] }, source: "commonPractice" },
  { anions: ["BO2-", "BO3^3-", "B4O7^2-", "AsO3^3-", "HAsO3^2-", "HAsO4^2-", "C4H4O6^2-", "C6H5O7^3-"], rule: "borates, arsenites, tartrates and citrates do not dissolve, except those of the alkalis and ammonium", class: "insoluble", except: { soluble: ["Li+"] }, source: "commonPractice" },
  { anions: ["[Fe(CN)6]^4-", "[Fe(CN)6]^3-"], rule: "hexacyanidoferrates of heavy metals do not dissolve", class: "insoluble", except: { soluble: ["Li+", "Mg^2+", "Ca^2+", "Sr^2+", "Fe^3+ [Fe(CN)6]^3-"] }, source: "commonPractice" },
]);

// Which materials must not meet, by class. 58 of the rules were matched to printed lists, nine of them with the gas that
// forms, and 32 to safety summaries of single substances; what else forms, and the rest, rests on memory of the books named.
// Under which condition a rule applies is data: see CONDITIONS. `a` and `b` are classes (see classes.ts), either way round.
import { once } from "../../foundation/memo";
import type { HazardSourceKey } from "./sources";

/** Class of a material, worked out from its formula. */
export type HazardClass =
  | "acetic acid"
  | "acetylene"
  | "acid"
  | "acid former"
  | "acid salt"
  | "active metal"
  | "alcohol"
  | "alkali metal"
  | "alkali nitrate"
  | "alkali peroxide"
  | "aluminium"
  | "amine"
  | "ammonia"
  | "ammonium"
  | "ammonium nitrate"
  | "ammonium oxalate"
  | "antimony"
  | "arsenic"
  | "arsenide"
  | "azide"
  | "bromate"
  | "bromide"
  | "bromine"
  | "cadmium"
  | "calcium hypochlorite"
  | "carbide"
  | "carbon"
  | "carbon dioxide"
  | "carbonate"
  | "chlorate"
  | "chloride"
  | "chlorinated solvent"
  | "chlorine"
  | "chlorite"
  | "chloroform"
  | "chloroisocyanurate"
  | "chromium(III)"
  | "chromium(VI)"
  | "copper"
  | "copper metal"
  | "cyanide"
  | "cyanido complex"
  | "decay metal"
  | "fluoride"
  | "formaldehyde"
  | "formate"
  | "formic acid"
  | "glycerol"
  | "glycol"
  | "gold"
  | "hexamine"
  | "higher oxide"
  | "hydride"
  | "hydrobromic acid"
  | "hydrochloric acid"
  | "hydrofluoric acid"
  | "hydrogen"
  | "hydrogen sulfide"
  | "hydrogencarbonate"
  | "hydrolysing chloride"
  | "hypochlorite"
  | "iodate"
  | "iodide"
  | "iodine"
  | "ketone"
  | "lead"
  | "lime"
  | "lye"
  | "magnesium powder"
  | "manganese"
  | "mercury"
  | "metal oxide"
  | "metal powder"
  | "nitrate"
  | "nitric acid"
  | "nitrite"
  | "nitromethane"
  | "organic"
  | "organic salt"
  | "oxalate"
  | "oxalic acid"
  | "oxidiser"
  | "oxygen"
  | "percarbonate"
  | "perchlorate"
  | "permanganate"
  | "peroxide"
  | "peroxide salt"
  | "persulfate"
  | "phosphide"
  | "phosphorus"
  | "pitting chloride"
  | "polysulfide"
  | "pool chlorine"
  | "quicklime"
  | "selenide"
  | "silica"
  | "silicide"
  | "silver"
  | "silver oxide"
  | "silver salt"
  | "strong amine"
  | "strong base"
  | "sugar"
  | "sulfide"
  | "sulfite"
  | "sulfur"
  | "sulfur dioxide"
  | "sulfuric acid"
  | "thiocyanate"
  | "thiosulfate"
  | "tin"
  | "urea"
  | "water"
  | "zinc";

/** A circumstance that a rule asks for in place of a second material. */
export type Circumstance = "closed vessel" | "kitchen";

/** What a rule needs beside the two materials. */
export type MeetingCondition =
  | "strong acid"
  | "concentrated acid"
  | "strong peroxide"
  | "weak peroxide"
  | "strong"
  | "both strong"
  | "solid lye"
  | "water poured into the strong acid"
  | "dry"
  | "ground together"
  | "ignited"
  | "heated"
  | "hot and alkaline"
  | "fired with alkali"
  | "kept closed"
  | "fire";

/** How it can be determined whether a condition is met. */
export interface ConditionRow {
  /**
   * `strength`: by the strength of the materials of these classes; `weakness`: where that is ruled out; `dryness`: not where one of
   * the two comes in much water; `heat`: by the temperature; `work`: by how the work is done, which nothing in a list of materials tells.
   */
  readonly by: "strength" | "weakness" | "dryness" | "heat" | "work";
  /** Classes whose strength counts; all where none are named. */
  readonly of?: readonly HazardClass[];
  /** Mass % up to which it is ruled out; 10 unless given. */
  readonly above?: number;
}

const ACIDS: readonly HazardClass[] = ["acid", "sulfuric acid", "nitric acid", "hydrochloric acid", "hydrobromic acid"];

export const CONDITIONS: Readonly<Record<MeetingCondition, ConditionRow>> = {
  "strong acid": { by: "strength", of: ACIDS },
  "concentrated acid": { by: "strength", of: ["sulfuric acid"], above: 50 },
  "strong peroxide": { by: "strength", of: ["peroxide"] },
  "weak peroxide": { by: "weakness", of: ["peroxide"] },
  strong: { by: "strength" },
  "both strong": { by: "strength" },
  "solid lye": { by: "strength", of: ["lye", "strong base"] },
  "water poured into the strong acid": { by: "work", of: ACIDS },
  dry: { by: "dryness" },
  "ground together": { by: "dryness" },
  ignited: { by: "dryness" },
  heated: { by: "heat" },
  "hot and alkaline": { by: "work" },
  "fired with alkali": { by: "work" },
  "kept closed": { by: "work" },
  fire: { by: "work" },
};

/** One rule. */
export interface IncompatibilityRow {
  readonly code: string;
  readonly a: readonly (HazardClass | "gas" | "toxic")[];
  /** Empty where the material alone is the trouble. */
  readonly b?: readonly (HazardClass | Circumstance)[];
  readonly what: string;
  /** Formulas of what forms, where a gas or a solid can be named. */
  readonly products?: readonly string[];
  /** `forbid`: not to be planned; `warn`: may be what is wanted, with the caution printed. */
  readonly severity: "forbid" | "warn";
  /** Only under one of these; without any the rule always applies. */
  readonly conditions?: readonly MeetingCondition[];
  /** A third class that must be there too. */
  readonly with?: HazardClass;
  /** What it does not hold for, of the second. */
  readonly unless?: HazardClass;
  readonly source: HazardSourceKey;
}

export const INCOMPATIBILITIES = /* @__PURE__ */ once((): readonly IncompatibilityRow[] => [
  { code: "hypochlorite-acid", a: ["hypochlorite"], b: ["acid"], what: "acid sets chlorine free", products: ["Cl2"], severity: "forbid", source: "melbourneGases" },
  { code: "hypochlorite-ammonia", a: ["hypochlorite"], b: ["ammonia", "ammonium"], what: "chlorinates ammonia", products: ["NH2Cl", "NHCl2", "NCl3"], severity: "forbid", source: "nfpaHousehold" },
  { code: "hypochlorite-amine", a: ["hypochlorite"], b: ["amine"], what: "makes nitrogen chlorides", products: ["NCl3", "N2"], severity: "forbid", source: "prudentPractices" },
  { code: "hypochlorite-solvent", a: ["hypochlorite"], b: ["alcohol", "ketone"], what: "chlorinates the solvent with heat", products: ["CHCl3", "HCl"], severity: "forbid", source: "nfpaHousehold" },
  { code: "hypochlorite-peroxide", a: ["hypochlorite"], b: ["peroxide"], what: "quick oxygen with heat", products: ["O2"], severity: "warn", source: "firePoolGoods" },
  { code: "hypochlorite-catalyst", a: ["hypochlorite"], b: ["decay metal"], what: "the metal makes it decompose", products: ["O2"], severity: "warn", source: "memory" },
  { code: "hypochlorite-reducer", a: ["hypochlorite"], b: ["sulfite", "thiosulfate"], what: "violent reduction", products: ["SO2"], severity: "warn", conditions: ["dry", "strong"], source: "firePoolGoods" },
  { code: "calcium-hypochlorite-acid", a: ["calcium hypochlorite"], b: ["acid"], what: "acid sets chlorine free", products: ["Cl2"], severity: "forbid", source: "incompatibilityLists" },
  { code: "calcium-hypochlorite-organic", a: ["calcium hypochlorite"], b: ["organic"], what: "sets it alight", products: ["Cl2"], severity: "forbid", source: "firePoolGoods" },
  { code: "calcium-hypochlorite-isocyanurate", a: ["calcium hypochlorite"], b: ["chloroisocyanurate"], what: "gas and explosion when damp", products: ["Cl2", "NCl3"], severity: "forbid", source: "tradeSheets" },
  { code: "calcium-hypochlorite-carbon", a: ["calcium hypochlorite"], b: ["carbon", "sulfur", "phosphorus", "metal powder"], what: "fire or explosion", products: ["CO2", "Cl2"], severity: "forbid", source: "incompatibilityLists" },
  { code: "isocyanurate-ammonia", a: ["chloroisocyanurate"], b: ["ammonia", "amine", "ammonium"], what: "makes nitrogen trichloride", products: ["NCl3"], severity: "forbid", source: "firePoolGoods" },
  { code: "isocyanurate-acid", a: ["chloroisocyanurate"], b: ["acid"], what: "sets chlorine free", products: ["Cl2"], severity: "forbid", source: "tradeSheets" },
  { code: "pool-products", a: ["pool chlorine"], b: ["pool chlorine"], what: "a damp mixture burns or explodes", products: ["Cl2", "NCl3"], severity: "forbid", source: "clpRegulation" },
  { code: "chlorite-acid", a: ["chlorite"], b: ["acid"], what: "sets chlorine dioxide free", products: ["ClO2"], severity: "forbid", source: "memory" },
  { code: "chlorate-fuel", a: ["chlorate"], b: ["sulfur", "phosphorus", "carbon", "sugar", "metal powder", "organic", "sulfide", "thiocyanate", "cyanide", "cyanido complex", "organic salt"], what: "explodes under friction", severity: "forbid", source: "incompatibilityLists" },
  { code: "chlorate-acid", a: ["chlorate"], b: ["acid"], what: "sets chlorine dioxide free", products: ["ClO2"], severity: "forbid", source: "incompatibilityLists" },
  { code: "chlorate-ammonium", a: ["chlorate", "bromate", "chlorite"], b: ["ammonium"], what: "makes an ammonium salt that explodes by itself", severity: "forbid", source: "incompatibilityLists" },
  { code: "perchlorate-fuel", a: ["perchlorate"], b: ["organic", "metal powder", "sugar", "sulfur", "carbon", "phosphorus", "sulfide", "organic salt", "thiocyanate", "cyanide", "cyanido complex"], what: "explosive mixture", severity: "forbid", source: "prudentPractices" },
  { code: "persulfate-fuel", a: ["persulfate"], b: ["organic", "sulfite", "thiosulfate", "metal powder", "sulfur", "carbon", "sugar"], what: "fire", products: ["O2"], severity: "warn", source: "reactionSummaries" },
  { code: "nitrate-fuel", a: ["nitrate"], b: ["organic", "sugar", "sulfur", "carbon", "aluminium", "phosphorus"], what: "burns or explodes", products: ["N2", "CO2"], severity: "forbid", conditions: ["dry", "heated", "ground together"], source: "prudentPractices" },
  { code: "ammonium-nitrate-fuel", a: ["ammonium nitrate"], b: ["metal powder", "sulfur", "carbon", "organic", "chlorate", "nitrite", "acid", "sulfide"], what: "decomposes or explodes", products: ["NO2"], severity: "forbid", conditions: ["dry", "heated", "strong"], source: "incompatibilityLists" },
  { code: "nitrite-acid", a: ["nitrite"], b: ["acid"], what: "red fumes", products: ["NO", "NO2"], severity: "warn", source: "melbourneGases" },
  { code: "nitrite-ammonium", a: ["nitrite"], b: ["ammonium"], what: "decomposes violently when hot", products: ["N2"], severity: "forbid", conditions: ["heated", "dry"], source: "incompatibilityLists" },
  { code: "nitrite-amine", a: ["nitrite"], b: ["amine"], what: "gas, or nitrosamines", products: ["N2"], severity: "warn", source: "memory" },
  { code: "permanganate-hydrochloric", a: ["permanganate"], b: ["hydrochloric acid"], what: "sets chlorine free", products: ["Cl2"], severity: "forbid", conditions: ["strong acid"], source: "reactionSummaries" },
  { code: "permanganate-sulfuric", a: ["permanganate"], b: ["sulfuric acid"], what: "makes an explosive oxide", products: ["Mn2O7"], severity: "forbid", conditions: ["concentrated acid"], source: "incompatibilityLists" },
  { code: "permanganate-organic", a: ["permanganate"], b: ["alcohol", "sugar", "organic"], what: "catches fire by itself", severity: "forbid", conditions: ["dry", "strong"], source: "incompatibilityLists" },
  { code: "permanganate-peroxide", a: ["permanganate"], b: ["peroxide"], what: "violent oxygen", products: ["O2"], severity: "warn", conditions: ["strong peroxide"], source: "memory" },
  { code: "permanganate-fuel", a: ["permanganate"], b: ["sulfur", "sulfide", "ammonium", "metal powder", "carbon", "phosphorus"], what: "fire or explosion", products: ["N2"], severity: "forbid", conditions: ["dry"], source: "reactionSummariesFirst" },
  { code: "peroxide-ketone", a: ["peroxide"], b: ["ketone"], what: "makes explosive peroxides", severity: "forbid", source: "incompatibilityLists" },
  { code: "peroxide-catalyst", a: ["peroxide"], b: ["decay metal", "metal powder", "manganese", "silver", "silver salt", "iodide"], what: "decays fast and hot", products: ["O2"], severity: "warn", conditions: ["strong peroxide"], source: "incompatibilityLists" },
  // all of 10 % warms its water by some 70 K, of 3 % by 20 K: 98 kJ/mol
  { code: "peroxide-catalyst-weak", a: ["peroxide"], b: ["decay metal", "metal powder", "manganese", "silver", "silver salt", "iodide"], what: "foams: open vessel, in portions", products: ["O2"], severity: "warn", conditions: ["weak peroxide"], source: "memory" },
  { code: "peroxide-organic", a: ["peroxide"], b: ["alcohol", "acetic acid", "formic acid", "sugar", "strong amine", "organic"], what: "fire, or peracids", severity: "forbid", conditions: ["strong peroxide"], source: "incompatibilityLists" },
  { code: "peroxide-base", a: ["peroxide"], b: ["strong base"], what: "decays fast", products: ["O2"], severity: "warn", source: "memory" },
  { code: "percarbonate-fuel", a: ["percarbonate"], b: ["organic", "acid", "metal powder"], what: "oxygen and pressure", products: ["O2"], severity: "warn", source: "memory" },
  { code: "acid-cyanide", a: ["acid"], b: ["cyanide"], what: "deadly gas", products: ["HCN"], severity: "forbid", source: "melbourneGases" },
  { code: "acid-cyanido-complex", a: ["acid"], b: ["cyanido complex"], what: "deadly gas", products: ["HCN"], severity: "forbid", conditions: ["heated", "strong acid"], source: "memory" },
  { code: "acid-sulfide", a: ["acid"], b: ["sulfide"], what: "deadly gas", products: ["H2S"], severity: "forbid", source: "melbourneGases" },
  { code: "acid-polysulfide", a: ["acid"], b: ["polysulfide"], what: "deadly gas and sulfur", products: ["H2S"], severity: "forbid", source: "memory" },
  { code: "acid-sulfite", a: ["acid"], b: ["sulfite"], what: "choking gas", products: ["SO2"], severity: "warn", source: "clpAnnexVI" },
  { code: "acid-thiosulfate", a: ["acid"], b: ["thiosulfate"], what: "sulfur and a choking gas", products: ["SO2"], severity: "warn", source: "memory" },
  { code: "acid-azide", a: ["acid"], b: ["azide"], what: "deadly and explosive gas", products: ["HN3"], severity: "forbid", source: "melbourneGases" },
  { code: "acid-thiocyanate", a: ["acid"], b: ["thiocyanate"], what: "poison gas", products: ["HCN", "COS"], severity: "warn", conditions: ["heated", "strong acid"], source: "clpAnnexVI" },
  { code: "acid-carbonate", a: ["acid"], b: ["carbonate"], what: "foams; bursts a closed vessel", products: ["CO2"], severity: "warn", source: "memory" },
  { code: "acid-fluoride", a: ["acid"], b: ["fluoride"], what: "poisonous burning acid", products: ["HF"], severity: "forbid", source: "clpAnnexVI" },
  { code: "acid-arsenic-metal", a: ["acid"], b: ["arsenic"], what: "deadly gas", products: ["AsH3"], severity: "forbid", with: "active metal", source: "melbourneGases" },
  { code: "acid-antimony-metal", a: ["acid"], b: ["antimony"], what: "deadly gas", products: ["SbH3"], severity: "forbid", with: "active metal", source: "memory" },
  { code: "acid-phosphide", a: ["acid"], b: ["phosphide", "carbide"], what: "deadly gas", products: ["PH3"], severity: "forbid", source: "reactionSummariesFirst" },
  { code: "acid-metal", a: ["acid"], b: ["active metal"], what: "flammable gas and heat", products: ["H2"], severity: "warn", source: "incompatibilityLists" },
  { code: "acid-base", a: ["acid"], b: ["strong base"], what: "boils and splashes", severity: "warn", conditions: ["both strong"], source: "incompatibilityLists" },
  { code: "water-sulfuric", a: ["sulfuric acid"], b: ["water"], what: "boils and spits: acid into water, never the other way", severity: "forbid", conditions: ["water poured into the strong acid"], source: "prudentPractices" },
  { code: "water-lye", a: ["lye"], b: ["water"], what: "boils and spits: the solid into cold water, in portions", severity: "warn", conditions: ["solid lye"], source: "reactionSummaries" },
  { code: "water-quicklime", a: ["quicklime"], b: ["water"], what: "slakes with great heat", severity: "warn", source: "incompatibilityLists" },
  { code: "water-carbide", a: ["carbide"], b: ["water"], what: "flammable gas", products: ["C2H2"], severity: "warn", source: "incompatibilityLists" },
  { code: "water-alkali-metal", a: ["alkali metal"], b: ["water"], what: "fire and explosion", products: ["H2"], severity: "forbid", source: "incompatibilityLists" },
  { code: "water-hydrolysing", a: ["hydrolysing chloride"], b: ["water"], what: "violent hydrolysis", products: ["HCl"], severity: "warn", source: "reactionSummaries" },
  { code: "fire-magnesium", a: ["magnesium powder"], b: ["water", "carbon dioxide"], what: "feeds a magnesium fire", products: ["H2"], severity: "forbid", conditions: ["fire"], source: "incompatibilityLists" },
  { code: "base-aluminium", a: ["strong base"], b: ["aluminium"], what: "hydrogen and heat", products: ["H2"], severity: "warn", source: "reactionSummaries" },
  { code: "base-zinc-tin", a: ["strong base"], b: ["zinc", "tin"], what: "hydrogen", products: ["H2"], severity: "warn", source: "reactionSummaries" },
  { code: "base-ammonium", a: ["lye"], b: ["ammonium"], what: "ammonia gas", products: ["NH3"], severity: "warn", source: "reactionSummaries" },
  { code: "lime-ammonium", a: ["lime"], b: ["ammonium", "urea"], what: "ammonia gas", products: ["NH3"], severity: "warn", source: "memory" },
  { code: "lye-chloroform-acetone", a: ["lye"], b: ["chloroform"], what: "violent", severity: "forbid", with: "ketone", source: "memory" },
  { code: "silver-ammonia", a: ["silver salt"], b: ["ammonia"], what: "explosive deposits on keeping", products: ["Ag3N"], severity: "forbid", source: "incompatibilityLists" },
  { code: "silver-oxide-ammonia", a: ["silver oxide"], b: ["ammonia"], what: "explosive deposits on keeping", products: ["Ag3N"], severity: "forbid", source: "incompatibilityLists" },
  { code: "silver-ethanol-nitric", a: ["silver salt"], b: ["alcohol"], what: "makes a fulminate", severity: "forbid", with: "nitric acid", source: "memory" },
  { code: "silver-oxalate", a: ["silver salt"], b: ["oxalate"], what: "explosive salt", products: ["Ag2C2O4"], severity: "forbid", source: "memory" },
  { code: "silver-acetylene", a: ["silver", "silver salt"], b: ["acetylene", "carbide"], what: "explosive salt", products: ["Ag2C2"], severity: "forbid", source: "incompatibilityLists" },
  { code: "copper-acetylene", a: ["copper"], b: ["acetylene", "carbide"], what: "explosive salt", products: ["Cu2C2"], severity: "forbid", source: "incompatibilityLists" },
  { code: "mercury-acetylene-ammonia", a: ["mercury"], b: ["acetylene", "carbide", "ammonia"], what: "explosive salts", products: ["Hg2C2"], severity: "forbid", source: "incompatibilityLists" },
  { code: "iodine-ammonia", a: ["iodine"], b: ["ammonia"], what: "explodes at a touch", products: ["NI3"], severity: "forbid", source: "incompatibilityLists" },
  { code: "iodine-metal", a: ["iodine"], b: ["aluminium", "zinc"], what: "violet fire with a drop of water", products: ["I2"], severity: "warn", source: "reactionSummaries" },
  { code: "halogen-ammonia", a: ["bromine", "chlorine"], b: ["ammonia", "ammonium", "amine", "azide"], what: "violent; nitrogen halides", products: ["NCl3"], severity: "forbid", source: "incompatibilityLists" },
  { code: "chlorine-fuel", a: ["chlorine"], b: ["hydrogen", "acetylene", "metal powder"], what: "explosion started by light or a spark", products: ["HCl"], severity: "forbid", source: "incompatibilityLists" },
  { code: "nitric-organic", a: ["nitric acid"], b: ["organic", "alcohol", "ketone"], what: "fire or explosion", products: ["NO2"], severity: "forbid", conditions: ["strong acid"], source: "incompatibilityLists" },
  { code: "nitric-metal", a: ["nitric acid"], b: ["copper metal", "silver", "zinc", "metal powder"], what: "red-brown gas", products: ["NO2", "NO"], severity: "warn", source: "melbourneGases" },
  { code: "nitric-sulfide", a: ["nitric acid"], b: ["sulfide", "hydrogen sulfide"], what: "violent", products: ["NO2"], severity: "forbid", source: "reactionSummariesFirst" },
  { code: "nitric-hydrochloric", a: ["nitric acid"], b: ["hydrochloric acid"], what: "aqua regia: gas and pressure", products: ["Cl2", "NOCl"], severity: "forbid", conditions: ["kept closed"], source: "reactionSummariesFirst" },
  { code: "nitric-hydrochloric-organic", a: ["nitric acid"], b: ["hydrochloric acid"], what: "violent", products: ["NO2"], severity: "forbid", with: "organic", source: "memory" },
  { code: "sulfuric-oxidiser", a: ["sulfuric acid"], b: ["chlorate", "perchlorate", "permanganate"], what: "explosive", products: ["ClO2"], severity: "forbid", conditions: ["concentrated acid"], source: "incompatibilityLists" },
  { code: "sulfuric-halide", a: ["sulfuric acid"], b: ["chloride"], what: "acid fumes", products: ["HCl"], severity: "warn", conditions: ["strong acid"], source: "reactionSummariesFirst" },
  { code: "sulfuric-bromide", a: ["sulfuric acid"], b: ["bromide"], what: "acid fumes", products: ["HBr"], severity: "warn", conditions: ["strong acid"], source: "reactionSummariesFirst" },
  { code: "sulfuric-iodide", a: ["sulfuric acid"], b: ["iodide"], what: "iodine vapour", products: ["I2"], severity: "warn", conditions: ["strong acid"], source: "reactionSummariesFirst" },
  { code: "sulfuric-nitrate", a: ["sulfuric acid"], b: ["nitrate"], what: "nitric acid vapour and red-brown gas", products: ["HNO3", "NO2"], severity: "warn", conditions: ["strong acid"], source: "melbourneGases" },
  { code: "sulfuric-oxalate", a: ["sulfuric acid"], b: ["oxalate", "formate"], what: "poison gas", products: ["CO"], severity: "warn", conditions: ["strong acid"], source: "memory" },
  { code: "sulfuric-sugar", a: ["sulfuric acid"], b: ["sugar"], what: "hot char", products: ["CO", "SO2"], severity: "warn", conditions: ["strong acid"], source: "memory" },
  { code: "chromate-organic", a: ["chromium(VI)"], b: ["organic", "alcohol"], what: "fire; spreads a carcinogen", severity: "forbid", source: "incompatibilityLists" },
  { code: "chromate-sulfite", a: ["chromium(VI)"], b: ["sulfite", "thiosulfate"], what: "reacts fast and hot, and sulfur dioxide leaves it; spreads a carcinogen", products: ["SO2"], severity: "forbid", source: "incompatibilityLists" },
  { code: "chromate-acetic", a: ["chromium(VI)"], b: ["acetic acid", "glycerol"], what: "catches fire", severity: "forbid", source: "incompatibilityLists" },
  { code: "chromate-chloride-sulfuric", a: ["chromium(VI)"], b: ["chloride"], what: "red carcinogenic vapour", products: ["CrO2Cl2"], severity: "forbid", with: "sulfuric acid", source: "memory" },
  { code: "chromium-oxidiser", a: ["chromium(III)"], b: ["hypochlorite", "peroxide", "strong base"], what: "turns to chromate", severity: "warn", conditions: ["hot and alkaline"], source: "memory" },
  { code: "chromium-fired", a: ["chromium(III)"], b: ["oxidiser"], what: "turns to chromate", severity: "warn", conditions: ["fired with alkali"], source: "memory" },
  // sulfuric acid covers lead with its sulfate, of which 4 mg dissolve in 100 g of water
  { code: "lead-acid", a: ["lead"], b: ["acid"], unless: "sulfuric acid", what: "soluble poison", severity: "forbid", source: "memory" },
  { code: "mercury-cadmium", a: ["mercury", "cadmium"], what: "cumulative poison: not for home work", severity: "forbid", source: "clpAnnexVI" },
  { code: "cadmium-acid", a: ["cadmium"], b: ["acid"], what: "poison; fume when hot", severity: "forbid", source: "memory" },
  { code: "azide-metal", a: ["azide"], b: ["copper", "lead", "silver", "silver salt", "mercury", "cadmium", "gold"], what: "explodes at a touch", severity: "forbid", source: "incompatibilityLists" },
  { code: "thermite", a: ["metal oxide"], b: ["aluminium", "magnesium powder"], what: "very hot fire", severity: "forbid", conditions: ["dry", "ignited"], source: "reactionSummaries" },
  { code: "magnesium-oxidiser", a: ["magnesium powder"], b: ["nitrate", "chlorate", "perchlorate", "permanganate", "persulfate", "chromium(VI)", "peroxide salt"], what: "flash fire", severity: "forbid", conditions: ["dry"], source: "reactionSummaries" },
  { code: "metal-sulfur", a: ["metal powder"], b: ["sulfur"], what: "flash reaction", products: ["SO2"], severity: "warn", conditions: ["heated"], source: "reactionSummariesFirst" },
  { code: "zinc-ammonium-nitrate", a: ["zinc"], b: ["ammonium nitrate"], what: "fire started by water", severity: "forbid", conditions: ["dry"], source: "incompatibilityLists" },
  { code: "calcium-hypochlorite-ammonium", a: ["calcium hypochlorite"], b: ["ammonium"], what: "makes nitrogen trichloride", products: ["NCl3"], severity: "forbid", source: "firePoolGoods" },
  { code: "calcium-hypochlorite-nitromethane", a: ["calcium hypochlorite"], b: ["nitromethane", "glycol"], what: "explosion or fire", severity: "forbid", source: "memory" },
  { code: "hydrogen-oxygen", a: ["hydrogen"], b: ["oxygen"], what: "explosion", products: ["H2O"], severity: "forbid", source: "incompatibilityLists" },
  { code: "sulfur-dioxide-oxidiser", a: ["sulfur dioxide"], b: ["peroxide", "hypochlorite"], what: "violent heat", severity: "warn", source: "memory" },
  { code: "sulfite-chlorate", a: ["sulfite"], b: ["chlorate", "chlorite"], what: "violent", products: ["ClO2"], severity: "forbid", source: "memory" },
  { code: "oxalic-silver-mercury", a: ["oxalic acid"], b: ["silver salt", "mercury"], what: "explosive oxalates", products: ["Ag2C2O4", "HgC2O4"], severity: "forbid", source: "incompatibilityLists" },
  { code: "oxalic-permanganate", a: ["oxalic acid"], b: ["permanganate"], what: "a burst of gas", products: ["CO2"], severity: "warn", conditions: ["dry", "strong acid"], source: "reactionSummariesFirst" },
  { code: "ammonium-oxalate-hypochlorite", a: ["ammonium oxalate"], b: ["hypochlorite"], what: "violent", products: ["N2", "NCl3"], severity: "forbid", source: "incompatibilityLists" },
  { code: "closed-vessel", a: ["gas"], b: ["closed vessel"], what: "bursts", severity: "forbid", source: "memory" },
  { code: "kitchen", a: ["toxic"], b: ["kitchen"], what: "poisoning", severity: "forbid", source: "memory" },
  { code: "halogen-metal", a: ["bromine", "chlorine"], b: ["metal powder", "alkali metal"], what: "catches fire on meeting", severity: "forbid", source: "incompatibilityLists" },
  { code: "water-hydride", a: ["hydride"], b: ["water", "acid", "alcohol"], what: "hydrogen, with heat that can set it alight", products: ["H2"], severity: "forbid", source: "incompatibilityLists" },
  { code: "peroxide-salt-fuel", a: ["peroxide salt"], b: ["organic", "sulfur", "carbon", "metal powder", "phosphorus"], what: "fire, set off by friction or a drop of water", severity: "forbid", source: "incompatibilityLists" },
  { code: "alkali-peroxide-water", a: ["alkali peroxide"], b: ["water", "acid"], what: "great heat and oxygen that sets fuel alight", products: ["O2"], severity: "warn", source: "reactionSummaries" },
  { code: "permanganate-reducer", a: ["permanganate"], b: ["sulfite", "thiosulfate"], what: "heat; fire where dry", severity: "warn", conditions: ["dry", "strong"], source: "reactionSummaries" },
  { code: "chromate-hydrochloric", a: ["chromium(VI)"], b: ["hydrochloric acid"], what: "acid is oxidised to chlorine", products: ["Cl2"], severity: "forbid", conditions: ["strong acid"], source: "reactionSummaries" },
  { code: "hydrofluoric-silica", a: ["hydrofluoric acid"], b: ["silica"], what: "attacks glass and sand; poison gas", products: ["SiF4"], severity: "warn", source: "reactionSummariesFirst" },
  { code: "lye-chloroform", a: ["lye"], b: ["chloroform"], what: "heats up by itself and can burst the flask", products: ["CO"], severity: "warn", source: "memory" },
  { code: "halogenate-fuel", a: ["bromate", "iodate"], b: ["sulfur", "carbon", "phosphorus", "sugar", "organic", "metal powder", "sulfide", "organic salt", "thiocyanate", "cyanide", "cyanido complex"], what: "burns or explodes", severity: "forbid", conditions: ["dry", "heated", "ground together"], source: "incompatibilityLists" },
  { code: "bromate-acid", a: ["bromate"], b: ["acid"], what: "sets bromine free", products: ["Br2"], severity: "forbid", source: "memory" },
  { code: "halogenate-hydrohalic", a: ["bromate", "iodate", "chlorate"], b: ["hydrochloric acid", "hydrobromic acid"], what: "sets halogen free", products: ["Cl2", "Br2"], severity: "forbid", source: "reactionSummariesFirst" },
  { code: "chlorite-fuel", a: ["chlorite"], b: ["organic", "sugar", "sulfur", "carbon", "phosphorus", "metal powder", "sulfide", "organic salt"], what: "fire or explosion", severity: "forbid", conditions: ["dry", "heated"], source: "memory" },
  { code: "nitrate-reducer", a: ["nitrate"], b: ["thiosulfate", "thiocyanate", "sulfite", "organic salt"], what: "burns or explodes", products: ["N2"], severity: "warn", conditions: ["dry", "heated"], source: "memory" },
  { code: "nitrite-reducer", a: ["nitrite"], b: ["thiosulfate", "thiocyanate", "cyanide"], what: "explodes when hot", products: ["N2"], severity: "forbid", conditions: ["dry", "heated"], source: "reactionSummariesFirst" },
  { code: "cyanide-oxidiser", a: ["cyanide"], b: ["nitrate", "chlorate", "perchlorate", "permanganate", "peroxide salt"], what: "explodes when it melts", severity: "forbid", conditions: ["dry", "heated"], source: "memory" },
  { code: "hypochlorite-cyanide", a: ["hypochlorite", "pool chlorine", "chlorine", "bromine"], b: ["cyanide", "thiocyanate"], what: "deadly gas", products: ["CNCl"], severity: "forbid", source: "memory" },
  { code: "hypochlorite-azide", a: ["hypochlorite", "pool chlorine"], b: ["azide"], what: "explosive gas", products: ["ClN3"], severity: "forbid", source: "memory" },
  { code: "hypochlorite-acid-salt", a: ["hypochlorite"], b: ["acid salt"], what: "the salt is acid enough to set chlorine free", products: ["Cl2"], severity: "forbid", source: "memory" },
  { code: "isocyanurate-organic", a: ["chloroisocyanurate"], b: ["organic", "alcohol", "ketone", "sugar", "sulfur", "carbon", "metal powder"], what: "fire; chlorinates it with heat", products: ["Cl2"], severity: "forbid", source: "tradeSheets" },
  { code: "nitric-urea", a: ["nitric acid"], b: ["urea", "strong amine", "hexamine"], what: "makes an explosive nitrate", products: ["CH5N3O4"], severity: "forbid", conditions: ["strong acid"], source: "memory" },
  { code: "nitric-fuel", a: ["nitric acid"], b: ["carbon", "sulfur", "phosphorus"], what: "violent; fire", products: ["NO2"], severity: "forbid", conditions: ["strong acid"], source: "memory" },
  { code: "nitration", a: ["nitrate", "nitric acid"], b: ["sulfuric acid"], what: "nitrates what burns: explosive products", products: ["NO2"], severity: "forbid", conditions: ["strong acid"], with: "organic", source: "memory" },
  { code: "peroxide-sulfuric", a: ["peroxide"], b: ["sulfuric acid"], what: "makes peroxosulfuric acid: explodes with anything that burns", products: ["H2SO5"], severity: "forbid", conditions: ["both strong"], source: "reactionSummariesFirst" },
  { code: "peroxide-hexamine", a: ["peroxide"], b: ["hexamine"], what: "makes a primary explosive", products: ["C6H12N2O6"], severity: "forbid", source: "memory" },
  { code: "hydrochloric-higher-oxide", a: ["hydrochloric acid"], b: ["higher oxide"], what: "acid is oxidised to chlorine", products: ["Cl2"], severity: "forbid", source: "reactionSummaries" },
  { code: "hydrochloric-persulfate", a: ["hydrochloric acid", "hydrobromic acid"], b: ["persulfate"], what: "acid is oxidised to chlorine", products: ["Cl2"], severity: "forbid", source: "reactionSummariesFirst" },
  { code: "hydrochloric-formaldehyde", a: ["hydrochloric acid"], b: ["formaldehyde"], what: "makes a carcinogenic ether", products: ["C2H4OCl2"], severity: "forbid", source: "memory" },
  { code: "chromate-fuel", a: ["chromium(VI)"], b: ["aluminium", "sulfur", "carbon", "phosphorus"], what: "burns or explodes", severity: "forbid", conditions: ["dry", "ignited"], source: "reactionSummaries" },
  { code: "phosphorus-base", a: ["phosphorus"], b: ["strong base"], what: "deadly gas", products: ["PH3"], severity: "forbid", source: "melbourneGases" },
  { code: "phosphorus-oxidiser", a: ["phosphorus"], b: ["oxidiser", "bromine", "chlorine"], what: "fire or explosion", severity: "forbid", source: "reactionSummaries" },
  { code: "alkali-metal-alcohol", a: ["alkali metal"], b: ["alcohol"], what: "hydrogen, with heat that can set it alight", products: ["H2"], severity: "forbid", source: "incompatibilityLists" },
  { code: "alkali-metal-acid", a: ["alkali metal"], b: ["acid"], what: "fire and explosion", products: ["H2"], severity: "forbid", source: "reactionSummaries" },
  { code: "alkali-metal-chlorinated", a: ["alkali metal"], b: ["chlorinated solvent"], what: "explodes at a knock", severity: "forbid", source: "incompatibilityLists" },
  { code: "metal-chlorinated", a: ["aluminium", "magnesium powder", "zinc"], b: ["chlorinated solvent"], what: "may start late, then explode", products: ["HCl"], severity: "forbid", source: "incompatibilityLists" },
  { code: "aluminium-chloride-salt", a: ["aluminium"], b: ["pitting chloride"], what: "boils by itself and gives hydrogen", products: ["H2"], severity: "warn", source: "memory" },
  { code: "azide-chlorinated", a: ["azide"], b: ["chlorinated solvent"], what: "explosive azides of the solvent", severity: "forbid", source: "memory" },
  { code: "gold-ammonia", a: ["gold"], b: ["ammonia"], what: "explodes at a touch", severity: "forbid", source: "reactionSummaries" },
  { code: "acid-selenide", a: ["acid"], b: ["selenide"], what: "deadly gas", products: ["H2Se"], severity: "forbid", source: "memory" },
  { code: "acid-arsenide", a: ["acid"], b: ["arsenide"], what: "deadly gas", products: ["AsH3"], severity: "forbid", source: "memory" },
  { code: "acid-silicide", a: ["acid"], b: ["silicide"], what: "gas that burns by itself in air", products: ["SiH4"], severity: "forbid", source: "memory" },
  { code: "water-phosphide", a: ["phosphide"], b: ["water"], what: "deadly gas", products: ["PH3"], severity: "forbid", source: "reactionSummaries" },
  { code: "acid-former-cyanide", a: ["acid former", "acid salt", "carbon dioxide", "hydrogencarbonate"], b: ["cyanide"], what: "acid enough to set a deadly gas free", products: ["HCN"], severity: "forbid", source: "memory" },
  { code: "acid-former-azide", a: ["acid former", "acid salt"], b: ["azide"], what: "acid enough to set a deadly and explosive gas free", products: ["HN3"], severity: "forbid", source: "memory" },
  { code: "acid-former-hypochlorite", a: ["acid former"], b: ["hypochlorite", "chloroisocyanurate", "chlorite", "chlorate"], what: "acid enough to set chlorine or its dioxide free", products: ["Cl2"], severity: "forbid", source: "memory" },
  { code: "acid-former-sulfide", a: ["acid former"], b: ["sulfide"], what: "acid enough to set a deadly gas free", products: ["H2S"], severity: "forbid", source: "memory" },
  { code: "acid-salt-sulfide", a: ["acid salt"], b: ["sulfide"], what: "acid enough to set a deadly gas free", products: ["H2S"], severity: "warn", source: "memory" },
  { code: "nitrate-metal", a: ["alkali nitrate"], b: ["metal powder", "sulfide", "cyanido complex"], what: "flash fire", severity: "forbid", conditions: ["dry", "ground together", "ignited"], source: "memory" },
  { code: "oxidiser-hydride", a: ["oxidiser"], b: ["hydride"], what: "fire or explosion", products: ["H2"], severity: "forbid", source: "reactionSummariesFirst" },
  { code: "higher-oxide-fuel", a: ["higher oxide"], b: ["sulfur", "phosphorus"], what: "catches fire when ground", severity: "forbid", conditions: ["dry", "ground together"], source: "memory" },
]);

// Peculiar products: those that change if they are kept warm in their liquor, and those whose water no formula fixes.
import type { SourceKey } from "./sources";

/** A product not to be warmed in its liquor. */
export interface NotWarmRow {
  /** With crystal water just this hydrate, without it the salt with any. */
  readonly formulas: readonly string[];
  /** Any product with an anion of these names. */
  readonly groups?: readonly string[];
  /** Any product with ammonia bound to its metal. */
  readonly ammine?: true;
  readonly why: string;
  /** How long it stands cold, where it comes out slowly. */
  readonly stands?: { readonly text: string; readonly source: SourceKey };
  /** Warmest that a solution of one that dissolves may be. */
  readonly upTo?: string;
  /** It crystallises in the cold, as it forms: its feeds are strong, and nothing is boiled down. */
  readonly asItForms?: true;
  readonly source: SourceKey;
}

export const NOT_WARM: readonly NotWarmRow[] = [
  { formulas: ["Cu(OH)2"], why: "warm it turns into black copper oxide", source: "commonPractice" },
  { formulas: ["Co(OH)2", "Fe(OH)2", "Mn(OH)2"], why: "warm it oxidises in air sooner, and turns brown; keep it covered with its liquor and go on soon", source: "commonPractice" },
  { formulas: ["MgCO3", "ZnCO3", "NiCO3", "CoCO3", "PbCO3", "CdCO3"], why: "warm it turns basic", source: "commonPractice" },
  { formulas: ["Cu3(PO4)2", "Co3(PO4)2", "Ni3(PO4)2"], why: "warm it turns basic", stands: { text: "let it stand overnight in its liquor, stirred now and then: slimy at first, it turns crystalline and settles", source: "commonPractice" }, source: "commonPractice" },
  { formulas: ["KCr(SO4)2", "NH4Cr(SO4)2", "NaCr(SO4)2"], why: "above 40 °C it turns green, slowly, and above 60 °C at once: green it hardly crystallises", upTo: "40 °C", source: "commonPractice" },
  { formulas: ["NH4Fe(SO4)2", "KFe(SO4)2", "NaFe(SO4)2"], why: "hot a yellow basic sulfate separates from it", upTo: "60 °C", source: "commonPractice" },
  { formulas: ["CaHPO4·2H2O"], why: "above 40 °C it turns into the salt without water and into apatite", source: "memory" },
  { formulas: ["NH4MgPO4·6H2O"], why: "above 50 °C it loses water and ammonia", stands: { text: "let it stand cold an hour or more, or overnight, for the last of it comes out slowly", source: "talbot" }, source: "memory" },
  { formulas: ["MgCO3·3H2O"], why: "above 50 °C it turns basic", source: "memory" },
  { formulas: ["NaHCO3", "KHCO3", "NH4HCO3"], why: "warm it gives off carbon dioxide", upTo: "20 °C", asItForms: true, source: "commonPractice" },
  { formulas: ["K2S2O5", "Na2S2O5"], groups: ["hydrogensulfite"], why: "warm it gives off sulfur dioxide", upTo: "25 °C", asItForms: true, source: "commonPractice" },
  { formulas: ["2Na2CO3·3H2O2", "CO(NH2)2·H2O2"], groups: ["peroxide", "peroxoborate"], why: "warm it gives off oxygen", upTo: "25 °C", asItForms: true, source: "commonPractice" },
  { formulas: [], groups: ["peroxodisulfate", "peroxosulfate"], why: "warm it gives off oxygen, and hydrogensulfate is left", upTo: "40 °C", source: "commonPractice" },
  { formulas: ["Fe4[Fe(CN)6]3", "KFe[Fe(CN)6]", "Fe3[Fe(CN)6]2", "Cu2[Fe(CN)6]", "Zn2[Fe(CN)6]"], why: "hot and sour its liquor gives off traces of hydrogen cyanide", source: "commonPractice" },
  { formulas: [], ammine: true, why: "warm it loses ammonia", source: "commonPractice" },
];

/** Salts whose fine needles felt together and hold their liquor like a sponge, by the names of their anions. */
export const FELTED = {
  groups: ["lactate"],
  cooled:
    ", stirred now and then and given a day, for it comes slowly, and undisturbed it sets to a felt of fine needles with the liquor in it,",
  pressed: "press them hard, for they hold liquor like a sponge",
  source: "commonPractice",
} as const satisfies { groups: readonly string[]; cooled: string; pressed: string; source: SourceKey };

/** Anions whose salts may be warm for a while, and that boiling down spoils. */
interface NotBoiledDownRow {
  /** Names of the anions. */
  readonly groups: readonly string[];
  /** Only where a metal of the salt holds ligands. */
  readonly complex?: true;
  readonly why: string;
  readonly source: SourceKey;
}

export const NOT_BOILED_DOWN: readonly NotBoiledDownRow[] = [
  { groups: ["carbonate"], complex: true, why: "boiled it loses carbonate and ammonia, and dark oxide precipitates", source: "commonPractice" },
  { groups: ["hydrogencarbonate"], why: "boiled it gives off carbon dioxide", source: "commonPractice" },
  { groups: ["sulfite", "hydrogensulfite", "disulfite", "dithionite"], why: "in hot liquor air soon oxidises it", source: "commonPractice" },
  { groups: ["hypochlorite", "chlorite"], why: "boiled it turns into chlorate and chloride", source: "commonPractice" },
];

/** A precipitate that stands warm in its liquor, and no warmer than this. */
interface DigestedRow {
  readonly formulas: readonly string[];
  readonly at: string;
  readonly why: string;
  /** Hot its liquor keeps less of it. */
  readonly filteredHot?: true;
  /** It cannot be filtered without, and is mixed as hot. */
  readonly needed?: true;
  /** It is heated at once, and this is long enough. */
  readonly heatedFor?: string;
  readonly mixedAt?: string;
  readonly source: SourceKey;
}

export const DIGESTED: readonly DigestedRow[] = [
  { formulas: ["Cu2CO3(OH)2", "Cu3(CO3)2(OH)2"], at: "50 to 65 °C", why: "hotter it loses carbon dioxide and water, and turns black", source: "memory" },
  { formulas: ["Ca3(C6H5O7)2", "Ca3(C6H5O7)2·4H2O"], at: "60 to 90 °C", why: "it dissolves less hot than cold: filter it hot, and wash it with hot water", filteredHot: true, source: "commonPractice" },
  { formulas: ["Fe3O4"], at: "80 to 90 °C, covered", needed: true, why: "when it is done all of it is black and a magnet draws it through the wall; brown in it is iron that air has oxidised", source: "commonPractice" },
  { formulas: ["CaC2O4·H2O", "MnC2O4·2H2O", "FeC2O4·2H2O", "CoC2O4·2H2O", "NiC2O4·2H2O", "ZnC2O4·2H2O"], at: "80 to 90 °C", needed: true, heatedFor: "15 to 30 minutes", why: "cold it stays so fine that it runs through the paper", source: "commonPractice" },
  { formulas: ["BaSO4"], at: "80 to 95 °C", needed: true, mixedAt: "60 °C", why: "made and filtered cold it is so fine that it runs through the paper: take paper of a fine grade, and pour the first filtrate back where it is cloudy", source: "commonPractice" },
];

/** A precipitate that comes slowly out of a liquor that is not strong, and as a crust on what is put in as a solid. */
export interface SlowlyRow {
  readonly formula: string;
  /** How long it is stirred or stands, in the room and hot. */
  readonly cold: string;
  readonly hot: string;
  readonly test: string;
  readonly source: SourceKey;
}

// gypsum stays supersaturated for minutes to hours (cement and desalination know it): how long at the bench is common practice
export const COMES_SLOWLY: readonly SlowlyRow[] = [
  { formula: "CaSO4·2H2O", cold: "let it stand for an hour or more, overnight if there is time, stirring now and then (a pinch of gypsum starts it)", hot: "stir it there for half an hour or more", test: "a little of it, filtered clear and left for a quarter of an hour, stays clear", source: "commonPractice" },
];

/** Salts that leave fine metal or oxide as they decompose, which glows or takes fire in air, and give carbon monoxide. */
export const LEAVES_FINE_METAL: { readonly groups: readonly string[]; readonly metals: readonly string[]; readonly source: SourceKey } = {
  groups: ["oxalate", "formate"],
  metals: ["Fe", "Co", "Ni", "Cu", "Pb"],
  source: "commonPractice",
};

/** A precipitate as it dries in air. */
interface VariableWaterRow {
  readonly formula: string;
  /** Waters per formula unit, fewest and most. */
  readonly from: number;
  readonly to: number;
  readonly source: SourceKey;
}

export const VARIABLE_WATER: readonly VariableWaterRow[] = [
  { formula: "Fe4[Fe(CN)6]3", from: 10, to: 16, source: "memory" },
];

/** An oxide that is got from water, where others stop at the hydroxide. */
export interface OxideFromWaterRow {
  readonly formula: string;
  /** The hydroxide, how warm it is kept until it is the oxide, °C, and what is seen then; undefined where it loses its water at once. */
  readonly turns?: { readonly of: string; readonly at: string; readonly until: string };
  readonly source: SourceKey;
}

export const OXIDES_FROM_WATER: readonly OxideFromWaterRow[] = [
  { formula: "Ag2O", source: "commonPractice" },
  { formula: "HgO", source: "commonPractice" },
  { formula: "Cu2O", source: "commonPractice" },
  { formula: "CuO", turns: { of: "Cu(OH)2", at: "85", until: "all of it is black" }, source: "commonPractice" },
  { formula: "ZnO", turns: { of: "Zn(OH)2", at: "85", until: "two hours have passed: oxide and hydroxide are both white, and only what a dry sample loses when it is fired tells them apart" }, source: "commonPractice" },
  { formula: "Bi2O3", turns: { of: "BiO(OH)", at: "95", until: "all of it is yellow" }, source: "commonPractice" },
  { formula: "PbO", turns: { of: "Pb(OH)2", at: "95", until: "no more of it is white" }, source: "commonPractice" },
  { formula: "SnO", turns: { of: "Sn(OH)2", at: "95", until: "all of it is dark" }, source: "commonPractice" },
  { formula: "SiO2", source: "commonPractice" },
  { formula: "TiO2", source: "commonPractice" },
  { formula: "SnO2", source: "commonPractice" },
  { formula: "ZrO2", source: "commonPractice" },
  { formula: "WO3", source: "commonPractice" },
  { formula: "MoO3", source: "commonPractice" },
  { formula: "V2O5", source: "commonPractice" },
  { formula: "Sb2O3", source: "commonPractice" },
];

/** Salts that give off ammonia and carbon dioxide from the room on: lumps of them coat themselves, and warm they go. */
export const GOES_IN_AIR = {
  formulas: ["NH4HCO3", "(NH4)2CO3", "(NH4)2CO3·H2O"],
  gives: "ammonia and carbon dioxide",
  kept: "20 to 25 °C",
  never: "35 °C",
  // decomposes from about 36 °C on
  source: "memory",
} as const satisfies { formulas: readonly string[]; gives: string; kept: string; never: string; source: SourceKey };

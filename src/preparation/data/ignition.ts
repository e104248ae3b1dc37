// What ignition of a dry sample leaves, the usual reading at the bench, and the carbonates and hydroxides a precipitation
// of each metal may give. Losses are calculated from the formulas; which residue forms is common practice, no source, and
// for cobalt, manganese and iron depends on air and heat: the row names what is assumed.
import type { SourceKey } from "./sources";

/** Residue of one solid. */
interface IgnitionRow {
  readonly formula: string;
  readonly residue: string;
  /** What is assumed of air and heat. */
  readonly condition?: string;
  readonly source: SourceKey;
}

export const IGNITION: readonly IgnitionRow[] = [
  { formula: "CaCO3", residue: "CaO", condition: "above 850 °C", source: "commonPractice" },
  { formula: "CaC2O4·H2O", residue: "CaCO3", condition: "near 500 °C", source: "commonPractice" },
  { formula: "NaHCO3", residue: "Na2CO3", source: "commonPractice" },
  { formula: "KHCO3", residue: "K2CO3", source: "commonPractice" },
  { formula: "CuSO4·5H2O", residue: "CuSO4", condition: "220 to 250 °C", source: "commonPractice" },
  { formula: "KAl(SO4)2·12H2O", residue: "KAl(SO4)2", source: "commonPractice" },
  { formula: "K2Mg(SO4)2·6H2O", residue: "K2Mg(SO4)2", condition: "at 200 °C", source: "memory" },
  { formula: "Na2CO3", residue: "Na2CO3", condition: "below 850 °C: nothing is lost", source: "commonPractice" },
  { formula: "K2CO3", residue: "K2CO3", condition: "below 890 °C: nothing is lost", source: "commonPractice" },
  { formula: "BaCO3", residue: "BaCO3", condition: "below 1000 °C: nothing is lost", source: "commonPractice" },
];

/** How hot phosphates with hydrogen or ammonium are ignited: those of alkali metals have lost all of it as they melt, the others not before they glow white-red. */
export const CONDENSES = {
  at: "at bright red heat, 900 to 1000 °C: cooler, some hydrogen stays in it",
  withAlkali: "at red heat",
  alkali: ["Li", "Na", "K", "Rb", "Cs"],
  source: "wiley1895",
} as const satisfies {
  readonly at: string;
  readonly withAlkali: string;
  readonly alkali: readonly string[];
  readonly source: SourceKey;
};

/** Salts that do not bear ignition without crystal water either: they give off sulfur and sulfur dioxide, and no one thing is left. */
export const NEVER_IGNITED = {
  groups: ["thiosulfate", "sulfite", "hydrogensulfite", "disulfite", "dithionite"],
  source: "commonPractice",
} as const satisfies { readonly groups: readonly string[]; readonly source: SourceKey };

/** Oxide that carbonates, hydroxides and oxalates of a metal leave. */
interface OxideRow {
  readonly metal: string;
  readonly oxide: string;
  readonly condition?: string;
  /** No burner and no small kiln is so hot. */
  readonly furnace?: true;
  readonly source: SourceKey;
}

export const OXIDES: readonly OxideRow[] = [
  { metal: "Cu", oxide: "CuO", source: "commonPractice" },
  { metal: "Zn", oxide: "ZnO", source: "commonPractice" },
  { metal: "Mg", oxide: "MgO", source: "commonPractice" },
  { metal: "Ni", oxide: "NiO", source: "commonPractice" },
  { metal: "Co", oxide: "Co3O4", condition: "in air, below 900 °C", source: "commonPractice" },
  { metal: "Mn", oxide: "Mn2O3", condition: "in air, 550 to 900 °C", source: "commonPractice" },
  { metal: "Fe", oxide: "Fe2O3", condition: "in air", source: "commonPractice" },
  { metal: "Al", oxide: "Al2O3", source: "commonPractice" },
  { metal: "Cr", oxide: "Cr2O3", source: "commonPractice" },
  { metal: "Ca", oxide: "CaO", condition: "above 850 °C", source: "commonPractice" },
  { metal: "Sr", oxide: "SrO", condition: "above 1200 °C", furnace: true, source: "commonPractice" },
  { metal: "Pb", oxide: "PbO", condition: "315 to 880 °C", source: "commonPractice" },
  { metal: "Cd", oxide: "CdO", source: "commonPractice" },
  { metal: "Bi", oxide: "Bi2O3", source: "commonPractice" },
];

/** Hydrates whose acid leaves with their water, or that air turns as they lose it: heat leaves no salt without water, but the oxide of the metal, or no one thing. */
export const LOSES_ITS_ACID: readonly {
  readonly anion: string;
  readonly cations: readonly string[];
  /** The metal's oxide is left, so heated; undefined where what is left is no one thing. */
  readonly oxideWhere?: string;
  readonly source: SourceKey;
}[] = [
  { anion: "NO3-", cations: ["Cu^2+", "Zn^2+", "Mg^2+", "Co^2+", "Ni^2+", "Mn^2+", "Cd^2+", "Al^3+", "Fe^3+", "Cr^3+", "Bi^3+"], oxideWhere: "under a hood: nitrogen oxides and acid leave, the last at red heat", source: "commonPractice" },
  { anion: "SO4^2-", cations: ["Fe^2+"], oxideWhere: "in air at red heat, under a hood: sulfur oxides leave; cooler, air makes brown basic sulfates of it before its water is gone", source: "ferrousSulfateInAir" },
  { anion: "Cl-", cations: ["Fe^2+", "Mg^2+", "Al^3+", "Fe^3+", "Cr^3+", "Bi^3+", "Sn^2+", "Sn^4+"], source: "commonPractice" },
];

/** What a precipitation of a metal as carbonate may give, wanted or not; the hydroxide is the end of washing too alkaline. */
interface PrecipitatesRow {
  readonly metal: string;
  readonly solids: readonly string[];
  /** Those that books write and no liquor gives: they form under pressure only. */
  readonly onBooksOnly?: readonly string[];
  readonly source: SourceKey;
}

export const PRECIPITATES: readonly PrecipitatesRow[] = [
  { metal: "Cu", solids: ["Cu2(OH)2CO3", "Cu3(OH)2(CO3)2", "CuCO3", "Cu(OH)2"], onBooksOnly: ["CuCO3"], source: "commonPractice" },
  { metal: "Zn", solids: ["Zn5(OH)6(CO3)2", "ZnCO3", "Zn(OH)2"], source: "commonPractice" },
  { metal: "Mg", solids: ["Mg5(CO3)4(OH)2·4H2O", "Mg5(CO3)4(OH)2·5H2O", "Mg4(CO3)3(OH)2·3H2O", "Mg4(CO3)3(OH)2·4H2O", "MgCO3·3H2O", "MgCO3", "Mg(OH)2"], source: "commonPractice" },
  { metal: "Ni", solids: ["Ni3(OH)4CO3·4H2O", "Ni3(OH)4CO3", "NiCO3", "Ni(OH)2"], source: "commonPractice" },
  { metal: "Co", solids: ["Co2(OH)2CO3", "CoCO3", "Co(OH)2"], source: "commonPractice" },
  { metal: "Pb", solids: ["Pb3(OH)2(CO3)2", "PbCO3"], source: "commonPractice" },
  { metal: "Mn", solids: ["MnCO3", "Mn(OH)2"], source: "commonPractice" },
];

/** What a hydroxide holds back of the salt it is precipitated from, where base is short or the liquor strong. */
interface BasicSaltsRow {
  readonly metal: string;
  readonly solids: readonly string[];
  readonly source: SourceKey;
}

export const BASIC_SALTS: readonly BasicSaltsRow[] = [
  { metal: "Cu", solids: ["Cu4(OH)6SO4", "Cu2(OH)3Cl", "Cu2(OH)3NO3"], source: "epaEquilibria" },
  { metal: "Zn", solids: ["Zn5(OH)8Cl2"], source: "epaEquilibria" },
  { metal: "Zn", solids: ["Zn4(OH)6SO4·4H2O", "Zn5(OH)8Cl2·H2O"], source: "memory" },
  { metal: "Pb", solids: ["Pb(OH)Cl"], source: "epaEquilibria" },
  { metal: "Co", solids: ["Co2(OH)3Cl"], source: "memory" },
  { metal: "Ni", solids: ["Ni2(OH)3Cl"], source: "memory" },
  { metal: "Mg", solids: ["Mg2(OH)3Cl·4H2O"], source: "memory" },
];

/** Metals that a lye precipitates as a basic salt first, and does not dissolve again in excess. */
export const BASIC_BEFORE_HYDROXIDE: { readonly metals: readonly string[]; readonly source: SourceKey } = {
  metals: ["Cu", "Co", "Ni", "Cd"],
  source: "commonPractice",
};

/** Metals whose compounds leave poison in the air of a hot crucible: whatever they are with, or with these only. */
export const POISON_VAPOUR: readonly {
  readonly metals: readonly string[];
  readonly withOneOf?: readonly string[];
  readonly source: SourceKey;
}[] = [
  { metals: ["Hg", "As", "Cd", "Tl"], source: "commonPractice" },
  { metals: ["Pb"], withOneOf: ["Cl", "Br", "I"], source: "commonPractice" },
];

/** How a sample is heated that is to lose its water alone, °C. */
export const WATER_ALONE = {
  /** Below what takes more than water, by so much. */
  below: 100,
  /** A lower hydrate keeps so much longer than it took to form that a cooler oven stops at it. */
  stops: 50,
  source: "commonPractice",
} as const satisfies { below: number; stops: number; source: SourceKey };

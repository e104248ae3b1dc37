// Metals in acids, lyes and salt solutions: standard potentials, and what keeps a metal from doing what its potential allows.
import { once } from "../../foundation/memo";
import type { SourceKey } from "./sources";

/** A couple: an element from one oxidation state to another, in acid solution at 25 °C. */
export interface CoupleRow {
  readonly element: string;
  readonly high: number;
  readonly low: number;
  /** V against hydrogen. */
  readonly volts: string;
  readonly source: SourceKey;
}

// Rounded to 0.01 V from the table of OpenStax, which prints the handbook's; Fe(3, 0), Sn(4, 0) and Cl(5, -1) are sums of its
// steps. From NBS: out of free energies of formation. From memory: what neither has, or has against the handbooks.
const row = (
  element: string,
  high: number,
  low: number,
  volts: string,
  source: SourceKey = "openStax2e",
): CoupleRow => ({ element, high, low, volts, source });

export const COUPLES = /* @__PURE__ */ once((): readonly CoupleRow[] => [
  row("Li", 1, 0, "-3.04"), row("K", 1, 0, "-2.93"), row("Rb", 1, 0, "-2.98"), row("Cs", 1, 0, "-3.03", "memory"), row("Ba", 2, 0, "-2.91"), row("Sr", 2, 0, "-2.90", "nbs1982"),
  row("Ca", 2, 0, "-2.87"), row("Na", 1, 0, "-2.71"), row("Mg", 2, 0, "-2.37"), row("La", 3, 0, "-2.38", "memory"), row("Ce", 3, 0, "-2.32", "nbs1982"), row("Be", 2, 0, "-1.85"),
  row("Al", 3, 0, "-1.66"), row("Ti", 2, 0, "-1.63"), row("Mn", 2, 0, "-1.18", "nbs1982"), row("V", 2, 0, "-1.13", "memory"), row("Zn", 2, 0, "-0.76"), row("Cr", 3, 0, "-0.74"), row("Cr", 2, 0, "-0.91"),
  row("Fe", 2, 0, "-0.45"), row("Fe", 3, 0, "-0.04"), row("Cd", 2, 0, "-0.40"), row("In", 3, 0, "-0.34"), row("Tl", 1, 0, "-0.34", "memory"), row("Co", 2, 0, "-0.28"), row("Ni", 2, 0, "-0.26"),
  row("Sn", 2, 0, "-0.14"), row("Sn", 4, 0, "0.01"), row("Pb", 2, 0, "-0.13"), row("H", 1, 0, "0.00"), row("Sb", 3, 0, "0.20", "memory"), row("As", 3, 0, "0.25", "memory"), row("Bi", 3, 0, "0.31", "memory"),
  row("Cu", 2, 0, "0.34"), row("Cu", 1, 0, "0.52"), row("Ag", 1, 0, "0.80"), row("Hg", 2, 0, "0.85"), row("Hg", 1, 0, "0.80"), row("Pd", 2, 0, "0.95", "memory"), row("Pt", 2, 0, "1.20"), row("Au", 3, 0, "1.50"),
  row("Cu", 2, 1, "0.16", "nbs1982"), row("Fe", 3, 2, "0.77"), row("Sn", 4, 2, "0.15"), row("Ce", 4, 3, "1.61"), row("Co", 3, 2, "1.83"), row("Cr", 6, 3, "1.36", "memory"), row("Mn", 7, 2, "1.51"), row("Mn", 7, 4, "1.70", "nbs1982"),
  row("Mn", 4, 2, "1.23"), row("N", 5, 2, "0.96"), row("N", 5, 4, "0.80", "memory"), row("N", 5, 3, "0.94", "memory"), row("O", -1, -2, "1.78"), row("O", 0, -2, "1.23"), row("O", 0, -1, "0.70"),
  row("F", 0, -1, "2.87"), row("Cl", 0, -1, "1.36", "nbs1982"), row("Cl", 1, -1, "1.48"), row("Cl", 5, -1, "1.44"), row("Br", 0, -1, "1.07", "memory"), row("Br", 5, -1, "1.42", "memory"), row("I", 0, -1, "0.54"), row("I", 5, 0, "1.20", "memory"), row("I", 5, -1, "1.09", "memory"),
  row("S", 0, -2, "0.14"), row("S", 2.5, 2, "0.08", "memory"), row("S", 6, 4, "0.17", "memory"), row("S", 7, 6, "2.01", "memory"),
]);

/** A metal that does not dissolve in an acid although its potential allows it. */
interface PassiveRow {
  readonly metal: string;
  /** Anions of the acid. */
  readonly anions: readonly string[];
  /** It stops, or it is only slow. */
  readonly stops: boolean;
  readonly why: string;
  readonly source: SourceKey;
}

export const PASSIVE: readonly PassiveRow[] = [
  { metal: "Pb", anions: ["SO4^2-"], stops: true, why: "lead sulfate coats the metal", source: "commonPractice" },
  { metal: "Pb", anions: ["Cl-", "Br-"], stops: true, why: "lead chloride coats the metal", source: "commonPractice" },
  { metal: "Pb", anions: ["PO4^3-", "F-", "C2O4^2-", "CO3^2-"], stops: true, why: "its insoluble salt coats the metal", source: "commonPractice" },
  { metal: "Al", anions: ["NO3-"], stops: true, why: "nitric acid makes the oxide film thicker", source: "commonPractice" },
  { metal: "Cr", anions: ["NO3-"], stops: true, why: "nitric acid makes chromium passive", source: "commonPractice" },
  { metal: "Ti", anions: ["NO3-", "SO4^2-", "Cl-", "CH3COO-"], stops: true, why: "its oxide film resists all cold dilute acids but hydrofluoric", source: "commonPractice" },
  { metal: "Al", anions: ["SO4^2-", "CH3COO-", "C6H5O7^3-", "PO4^3-"], stops: false, why: "the oxide film makes it slow: warm, or a little chloride", source: "commonPractice" },
  { metal: "Ca", anions: ["SO4^2-", "C2O4^2-", "PO4^3-", "F-"], stops: false, why: "the salt coats the metal", source: "commonPractice" },
  { metal: "Mg", anions: ["F-", "PO4^3-", "C2O4^2-"], stops: true, why: "its insoluble salt coats the metal", source: "commonPractice" },
];

/** Metals that lye dissolves with hydrogen. */
export const IN_LYE = { metals: ["Al", "Zn", "Ga", "Be", "Sn", "Si"], source: "commonPractice" } as const;

/** Hydroxido complexes that metals go into lye as, with its alkali metal for M. */
export const LYE_COMPLEXES: readonly { readonly metal: string; readonly complex: string; readonly source: SourceKey }[] = [
  { metal: "Al", complex: "M[Al(OH)4]", source: "commonPractice" },
  { metal: "Zn", complex: "M2[Zn(OH)4]", source: "commonPractice" },
  { metal: "Sn", complex: "M2[Sn(OH)4]", source: "commonPractice" },
];

/** Metals that take hydrogen from cold water, and one that does so beside whatever else it does. */
export const IN_WATER = {
  metals: ["Li", "Na", "K", "Rb", "Cs", "Ca", "Sr", "Ba"],
  slowly: ["Mg", "La", "Ce"],
  film: "its hydroxide covers it, so that cold water takes next to nothing of it and hot water little; ammonium salts and acids keep it clean",
  source: "commonPractice",
} as const;

/** Anions that any acid but the weakest takes apart into two states of their own element. */
export const APART_IN_ACID: readonly { readonly anion: string; readonly gives: readonly string[]; readonly why: string; readonly source: SourceKey }[] = [
  { anion: "S2O3^2-", gives: ["S", "SO2"], why: "acid takes thiosulfate apart into sulfur, milky at first and slow to settle, and sulfur dioxide", source: "commonPractice" },
];

/** Acids of which the anion, not the hydrogen, oxidises a metal: they give no hydrogen. */
export const OXIDISING_ACIDS = { anions: ["NO3-"], but: ["Mg", "Mn"], source: "commonPractice" } as const;

/** Elements that water neither dissolves nor carries to a metal, and the metal that takes sulfur in the cold all the same. */
export const FIRE_ONLY = {
  elements: ["S", "S8", "P", "P4", "C", "Si", "B", "Se", "Te"],
  not: ["Hg"],
  source: "commonPractice",
} as const;

/** What water does not bring to react below the boil, whatever the potentials say, and what does so all the same. */
interface SluggishRow {
  readonly formulas: readonly string[];
  /** Salts of this anion without free acid, where its element is reduced. */
  readonly oxidiser?: { readonly anion: string; readonly element: string };
  /** Partners by their formula, by an anion, by the anion of an acid. */
  readonly molecules: readonly string[];
  readonly anions: readonly string[];
  readonly acids: readonly string[];
  /** Where it does react. */
  readonly elsewhere: string;
  readonly source: SourceKey;
}

export const SLUGGISH: readonly SluggishRow[] = [
  { formulas: ["S", "S8"], molecules: ["SO2"], anions: ["OH-", "O^2-", "S^2-", "HS-", "SO3^2-", "CN-"], acids: ["NO3-"], elsewhere: "in fire", source: "commonPractice" },
  { formulas: ["C"], molecules: [], anions: [], acids: [], elsewhere: "in fire", source: "commonPractice" },
  { formulas: [], oxidiser: { anion: "NO3-", element: "N" }, molecules: ["Zn", "Al", "Mg", "Cd", "Fe"], anions: [], acids: ["NO3-", "SO4^2-", "HSO4-", "Cl-", "H2PO4-"], elsewhere: "in a melt", source: "commonPractice" },
];

/** Oxides that these oxidise in melted alkali and leave alone in lye of a vessel; from permanganate manganate comes in lye as well. */
export const MELT_ONLY = {
  oxides: ["MnO2", "Cr2O3", "FeCr2O4"],
  molecules: ["O2"],
  anions: ["NO3-", "ClO3-", "ClO4-"],
  source: "commonPractice",
} as const satisfies { readonly source: SourceKey } & Record<"oxides" | "molecules" | "anions", readonly string[]>;

/** Sulfuric acid oxidises a metal by its sulfur from this strength and temperature on; those it leaves alone even so. */
export const HOT_SULFURIC = {
  not: ["Au", "Pt", "Ir", "Rh", "Pb"],
  strength: "90 %",
  at: "200 °C",
  source: "commonPractice",
} as const;

/** Anions of which water sets a deadly gas free where the cation takes their hydroxide: no plan opens that, known and meant or not. */
export const DEADLY_FROM_WATER: readonly { readonly anion: string; readonly gas: string; readonly source: SourceKey }[] = [
  { anion: "S^2-", gas: "H2S", source: "commonPractice" },
  { anion: "HS-", gas: "H2S", source: "commonPractice" },
  { anion: "Se^2-", gas: "H2Se", source: "commonPractice" },
  { anion: "CN-", gas: "HCN", source: "commonPractice" },
];

/** So many volts uphill that no strength of plain salts in water makes up for it: K is below 1e-6 for each electron. */
export const FAR_UPHILL = {
  below: -0.36,
  why: "it goes the other way round, and no strength or warmth of plain salts in water changes that",
  source: "commonPractice",
} as const satisfies { below: number; why: string; source: SourceKey };

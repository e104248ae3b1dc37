// What shows at the bench that a reaction by oxidation or reduction is done, where the colours of the solid and its liquor tell.
import type { SourceKey } from "./sources";

/** The end of a reaction that is seen. */
export interface EndRow {
  /** The product. */
  readonly formula: string;
  /** What oxidises, by the names of its anions or by formula; whatever does where none is named. */
  readonly by?: { readonly groups: readonly string[]; readonly molecules: readonly string[] };
  /** How warm it is kept until then; undefined where the room is warm enough. */
  readonly at?: string;
  /** At the least, at that warmth. */
  readonly time?: string;
  /** What is seen, after "until". */
  readonly until: string;
  /** What is seen while more of what reduces the oxidiser is needed, or of the oxidiser. */
  readonly short?: string;
  readonly lacks?: "oxidiser";
  /** How much of that is put in at a time, and at most, as shares of the product. */
  readonly portion?: { readonly each: string; readonly most?: string };
  /** Beside indicator paper and what is in the packs. */
  readonly atHand?: "iron(III) chloride solution" | "iodide starch paper";
  /** What tells that there is enough of the {oxidiser}, in the line of the test. */
  readonly enough?: string;
  /** pH and more that paper shows to the end where lye is in the plan, and what comes of less. */
  readonly alkaline?: { readonly from: string; readonly else: string };
  /** How the clear liquor looks until then. */
  readonly liquor?: string;
  readonly source: SourceKey;
}

/** What nitric acid leaves of a salt whose metal was to be displaced, while it takes the metal. */
interface StaysInAcidRow {
  readonly formulas: readonly string[];
  readonly looks: string;
  readonly source: SourceKey;
}

/** A metal that displaces another, where none of it is to be left: how long it takes, and what tells. */
export const METAL_GONE = {
  pieces: { time: "some hours to overnight" },
  powder: { time: "half an hour or more" },
  test: "gives no gas in a little fresh dilute acid, cold",
  source: "commonPractice",
} as const satisfies {
  pieces: { time: string };
  powder: { time: string };
  test: string;
  source: SourceKey;
};

/** Iron(II) that an oxidiser makes iron(III) of in a complex: what tells that none is left, and what is done where some is. */
export const IRON_OXIDISED = {
  from: "Fe^2+",
  test: "a drop of it in a little water turns no deep blue with a drop of hexacyanidoferrate(III) solution",
  short: "where yellow solid stays, or it does, let it cool below 40 °C, put in a little more of the {oxidiser}, and warm it again",
  atHand: "hexacyanidoferrate(III) solution",
  source: "commonPractice",
} as const satisfies { from: string; test: string; short: string; atHand: string; source: SourceKey };

/** Metals whose salts plain water makes basic: what is left of such a salt clouds it. */
export const SALT_GONE = {
  metals: ["Bi", "Sb"],
  test: "a drop of the clear liquor gives no white cloud in a glass of water",
  milky: "where the liquor itself turns milky, put a little more of the {acid} to it until it is clear, and test it then",
  source: "commonPractice",
} as const satisfies { metals: readonly string[]; test: string; milky: string; source: SourceKey };

/** Metals that a magnet draws: none of them is left in the powder of another. */
export const MAGNETIC = {
  metals: ["Fe", "Ni", "Co"],
  test: "a magnet held to the glass draws no grains",
  source: "commonPractice",
} as const satisfies { metals: readonly string[]; test: string; source: SourceKey };

/** What a strip, sheet or wire of metal that is put into a liquor must be. */
export const BARE_METAL = {
  text: "with no other metal, paint or grease on it",
  source: "commonPractice",
} as const satisfies { text: string; source: SourceKey };

/** A base that is left where a gas makes an acid salt of it, by the anion of that salt. */
export const BASE_LEFT: readonly {
  readonly anion: string;
  readonly text: string;
  readonly atHand: "magnesium sulfate solution";
  readonly source: SourceKey;
}[] = [
  { anion: "HCO3-", text: "put some magnesium sulfate solution to a few drops of the clear liquor, diluted with ten times as much cold water: a cloud is carbonate, and more gas is needed (hydrogencarbonate gives none cold)", atHand: "magnesium sulfate solution", source: "commonPractice" },
];

/** What paper shows under a gas where it has made a carbonate of all hydroxide: what it dissolves of itself is still in the liquor. */
export const UNDER_GAS = {
  gas: "CO2",
  from: "hydroxide",
  to: "carbonate",
  below: "9",
  wait: "five minutes",
  source: "commonPractice",
} as const satisfies {
  gas: string;
  from: string;
  to: string;
  below: string;
  wait: string;
  source: SourceKey;
};

export const STAYS_IN_NITRIC_ACID: readonly StaysInAcidRow[] = [
  { formulas: ["AgCl", "AgBr", "AgI"], looks: "white or yellow", source: "commonPractice" },
  { formulas: ["PbSO4"], looks: "white", source: "commonPractice" },
];

/** A complex whose metal takes its ligands slowly: clear is not done. */
export interface SlowComplexRow {
  /** The ion of the metal in it, and how it is called. */
  readonly ion: string;
  readonly called: string;
  readonly at: string;
  readonly time: string;
  /** What brings the last ligand in, where all are of one kind: without it the metal keeps something else in that place. */
  readonly catalyst?: {
    readonly ligand: string;
    readonly formula: string;
    readonly called: "activated charcoal";
    /** By mass of the product. */
    readonly share: string;
    readonly without: string;
  };
  /** What brings an anion in beside the ligands, and why; mass of the strong acid for each mass of the product. */
  readonly bound?: {
    readonly anion: string;
    /** Coordination number of the metal. */
    readonly places: number;
    readonly acid: string;
    readonly called: string;
    readonly strength: string;
    readonly times: string;
    /** Of that the least over what the ammonia in the pot takes first. */
    readonly over: string;
    readonly at: string;
    readonly time: string;
    readonly text: string;
  };
  /** What is seen when an oxidising anion of the metal has been reduced. */
  readonly reduced?: {
    readonly groups: readonly string[];
    readonly until: string;
    /** As warm are the ligands as it comes to them: it foams at once, and no acid salt of theirs settles. */
    readonly ligandsAt: string;
  };
  readonly source: SourceKey;
}

export const SLOW_COMPLEXES: readonly SlowComplexRow[] = [
  // chloropentaammine: to 10 g of CoCl2·6H2O 0.44 mol of NH3 and 0.36 mol of HCl (from memory): of the NH3 0.17 is bound, and 0.09
  // mol of HCl is over the rest, 9 g of the strong acid for 10.5 g of product. Hexaamminecobalt(III) chloride over charcoal: 60 °C for half an hour, or four hours of air in the cold (from memory)
  { ion: "Co^3+", called: "cobalt(III)", at: "60 °C", time: "for half an hour", catalyst: { ligand: "NH3", formula: "C", called: "activated charcoal", share: "8 %", without: "red or violet is the pentaammine, which forms without it" }, bound: { anion: "Cl-", places: 6, acid: "HCl", called: "concentrated hydrochloric acid", strength: "36 %", times: "3.3", over: "0.9", at: "85 °C", time: "for 20 minutes", text: "from it alone chloride comes in beside the ammonia, and purple red crystals separate; before, the liquor contains a red aqua complex" }, source: "memory" },
  { ion: "Cr^3+", called: "chromium(III)", at: "80 °C", time: "for half an hour", reduced: { groups: ["chromate", "dichromate"], until: "no more gas rises and a drop of it, diluted with water on a white plate, shows neither orange nor yellow", ligandsAt: "60 °C" }, source: "memory" },
];

/** A complex that forms over the hydroxide of its metal, which its weak acid takes in the heat only. */
export interface OverHydroxideRow {
  readonly metals: readonly string[];
  readonly anions: readonly string[];
  readonly from: string;
  readonly to: string;
  readonly time: string;
  /** Of the clear liquor. */
  readonly pH: string;
  readonly source: SourceKey;
}

export const OVER_HYDROXIDE: readonly OverHydroxideRow[] = [
  { metals: ["Al", "Fe", "Cr"], anions: ["C2O4^2-", "C6H5O7^3-", "C4H4O6^2-"], from: "80 °C", to: "100 °C", time: "20 to 40 minutes", pH: "4 to 6", source: "commonPractice" },
];

/** Ligands beside which a metal keeps its other places: each takes one. */
export const MONODENTATE: readonly { readonly formula: string; readonly source: SourceKey }[] = [
  { formula: "NH3", source: "commonPractice" },
  { formula: "H2O", source: "commonPractice" },
];

/** Iron beside a salt of another metal goes as hydroxide before the other does, once it is iron(III) and the liquor is no longer acid. */
export const IRON_OUT = {
  /** Cation of the salt that the pack has besides, and whether it is to be oxidised first. */
  cations: { "Fe^2+": true, "Fe^3+": false },
  oxidiser: "H2O2",
  solid: "FeO(OH)",
  pH: "3.5 to 4",
  time: "10 to 15 minutes",
  /** What keeps the crystals from a basic salt after that. */
  acidTo: "1 to 2",
  source: "commonPractice",
} as const satisfies { readonly source: SourceKey } & Record<string, unknown>;

/** Sulfates of metals with two charges that crystallise as one with each other where one of them has seven waters, and what a little iron among them is done about. */
export const VITRIOLS = {
  metals: ["Mg", "Mn", "Fe", "Co", "Ni", "Cu", "Zn"],
  anion: "SO4^2-",
  waters: "7",
  /** Of the metals those that stay behind in acid. */
  stay: ["Cu"],
  iron: {
    metal: "Fe",
    as: "FeSO4·7H2O",
    perPeroxide: "2",
    strength: "3 %",
    test: "a drop of the clear liquor turns deep blue with a drop of hexacyanidoferrate(III) solution",
    atHand: "hexacyanidoferrate(III) solution",
  },
  source: "commonPractice",
} as const satisfies { readonly source: SourceKey } & Record<string, unknown>;

export const ENDS: readonly EndRow[] = [
  { formula: "CuCl", at: "60 °C", until: "the solid is white and neither green nor brown is left in the liquor", liquor: "green or brown", source: "memory" },
  { formula: "CuBr", at: "60 °C", until: "the solid is white and neither green nor brown is left in the liquor", liquor: "green or brown", source: "memory" },
  { formula: "CuI", until: "the solid is nearly white and no more iodine colours the liquor brown", source: "commonPractice" },
  // 50 to 60; colder it stays yellow and runs through the paper
  { formula: "Cu2O", at: "55 °C", until: "no green or blue is left and the solid is brick red, no longer yellow", alkaline: { from: "9", else: "with less it stays blue, or goes on to copper metal" }, liquor: "green or blue", source: "memory" },
  // hot it gets dense enough to settle and to be filtered
  { formula: "MnO2", by: { groups: ["permanganate"], molecules: [] }, at: "80 °C", until: "neither purple nor pink is left in the clear liquor", short: "if it stays purple", portion: { each: "2 %" }, liquor: "purple or pink", source: "commonPractice" },
  // what oxidises in lye or hot goes on to permanganate where much of it is left
  { formula: "MnO2", by: { groups: ["hypochlorite", "peroxodisulfate"], molecules: ["Br2", "Cl2"] }, at: "80 °C", time: "for half an hour", until: "nothing pale is left in the solid", short: "if the clear liquor turns purple", portion: { each: "2 %", most: "5 %" }, atHand: "iodide starch paper", enough: "a drop of the clear liquor still turns iodide starch paper blue: where it does not, put in a tenth more of the {oxidiser}, and keep it hot as before", source: "commonPractice" },
  // the dioxide decays what is left of it
  { formula: "MnO2", by: { groups: [], molecules: ["H2O2"] }, at: "80 °C", until: "it is brown-black all through and no more gas rises", enough: "some drops more of the {oxidiser} foam in it and darken nothing", source: "commonPractice" },
  { formula: "FeO(OH)", until: "it is brown all through, with no green or black left in it", short: "if it stays green", lacks: "oxidiser", source: "commonPractice" },
  { formula: "Fe(OH)3", until: "it is brown all through, with no green or black left in it", short: "if it stays green", lacks: "oxidiser", source: "commonPractice" },
  { formula: "PbO2", at: "85 °C", until: "the solid is dark brown all through, with nothing white or orange in it", short: "if it stays light", lacks: "oxidiser", atHand: "iodide starch paper", enough: "a drop of the liquor still turns iodide starch paper blue: where it does not, a little more of the {oxidiser} is needed", source: "commonPractice" },
  // hexacyanidoferrate(II) gives Prussian blue with iron(III), hexacyanidoferrate(III) a brown liquor
  { formula: "K3[Fe(CN)6]", until: "a drop of the clear liquor turns brown, and no longer blue, with a drop of iron(III) chloride solution", short: "if it stays blue", lacks: "oxidiser", atHand: "iron(III) chloride solution", source: "commonPractice" },
];

/** Solids of which the metal is not oxidised all the way, and that weigh nearly as much as the product. */
export const LESS_OXIDISED: readonly { readonly product: string; readonly others: readonly string[]; readonly source: SourceKey }[] = [
  { product: "MnO2", others: ["MnO(OH)", "Mn(OH)2"], source: "commonPractice" },
  { product: "PbO2", others: ["PbO", "Pb(OH)2"], source: "commonPractice" },
  { product: "FeO(OH)", others: ["Fe(OH)2"], source: "commonPractice" },
];

/** Acid sets hydrogen cyanide free from a cyanido complex, warm: its liquor is made neutral before it is warmed, by this salt of an alkali metal. */
export const MADE_NEUTRAL = {
  anion: "CO3^2-",
  by: [
    { cation: "K+", called: "potassium carbonate" },
    { cation: "Na+", called: "sodium carbonate" },
  ],
  precipitates: "Mn^2+",
  source: "commonPractice",
} as const;

/** Permanganate that is left beside a dissolved product, in this warmth and after this time. */
export const CLEARED = { least: "0.01 g", at: "80 °C", time: "for 20 minutes", cold: "for an hour", source: "commonPractice" } as const;

/** A product that acid splits into a metal and its salt: how much of the metal is left tells it from its neighbours. */
export const SPLIT_BY_ACID: readonly {
  readonly product: string;
  /** The acid takes its salt, and leaves the metal. */
  readonly equation: string;
  readonly metal: string;
  readonly acid: string;
  /** What leaves none of the metal. */
  readonly none: string;
  readonly source: SourceKey;
}[] = [
  { product: "Cu2O", equation: "Cu2O + H2SO4 -> Cu + CuSO4 + H2O", metal: "Cu", acid: "cold dilute sulfuric acid, which turns blue,", none: "CuO", source: "commonPractice" },
];

// What fire is known to ask for: the usual temperature of mixed oxides from their grinds, and metals over a displacement that
// dilute acid removes. From memory of the trade.
import type { SourceKey } from "./sources";

/** A fired product and the temperature it is usually fired at, °C. */
interface FiringRow {
  readonly formula: string;
  readonly at: string;
  /** Where heat takes it apart again, °C; undefined where that is not known. */
  readonly below?: string;
  /** How long it is kept there, in words, where it is longer than usual. */
  readonly kept?: string;
  /** What is known besides, in words. */
  readonly note?: string;
  readonly source: SourceKey;
}

export const FIRING: readonly FiringRow[] = [
  { formula: "CoAl2O4", at: "1200", source: "memory" },
  { formula: "NiAl2O4", at: "1200", source: "memory" },
  { formula: "ZnAl2O4", at: "1100", source: "memory" },
  { formula: "MgAl2O4", at: "1400", source: "memory" },
  { formula: "CuCr2O4", at: "800", source: "memory" },
  { formula: "CoCr2O4", at: "1100", source: "memory" },
  { formula: "ZnCr2O4", at: "1000", source: "memory" },
  { formula: "ZnFe2O4", at: "1000", source: "memory" },
  { formula: "MgFe2O4", at: "1100", source: "memory" },
  { formula: "NiFe2O4", at: "1100", source: "memory" },
  { formula: "CoFe2O4", at: "1000", source: "memory" },
  { formula: "BaFe12O19", at: "1200", source: "memory" },
  { formula: "SrFe12O19", at: "1200", source: "memory" },
  { formula: "BaTiO3", at: "1200", source: "memory" },
  { formula: "SrTiO3", at: "1200", source: "memory" },
  { formula: "CaTiO3", at: "1300", source: "memory" },
  { formula: "MgTiO3", at: "1300", source: "memory" },
  // type I 650 to 800, lemon yellow; hotter it loses its colour
  { formula: "Pb2SnO4", at: "700", source: "memory" },
  { formula: "PbTiO3", at: "850", source: "memory" },
  { formula: "Co2SiO4", at: "1250", source: "memory" },
  { formula: "Zn2SiO4", at: "1250", source: "memory" },
  { formula: "CaSiO3", at: "1200", source: "memory" },
  { formula: "Na2SiO3", at: "1050", source: "memory" },
  // 1350 to 1450; the rest of the lime shows in its alkali
  { formula: "CaAl2O4", at: "1400", source: "memory" },
  { formula: "Ca3Al2O6", at: "1350", source: "memory" },
  // an article on chromium in it found wollastonite and cassiterite left at 1400
  { formula: "CaSnSiO5", at: "1250", note: "1250 to 1300 °C is usual; it forms slowly, and without a mineraliser tin oxide may be left even at 1400 °C", source: "memory" },
  // 850 to 950; from some 1000 on it goes to a dark glass
  { formula: "CaCuSi4O10", at: "900", below: "1000", kept: "for an hour, and then at 800 °C for 10 hours or more (up to 100), for the blue forms slowly", source: "egyptianBlueFirst" },
];

/** What takes oxygen from the air in a kiln that is not opened while it glows. */
export const SPREAD_IN_AIR = {
  layer: "in a layer no thicker than 2 cm, in a kiln that is vented",
  source: "commonPractice",
} as const satisfies { layer: string; source: SourceKey };

/** A solid that takes up oxygen of the air in the fire, and the temperature at which it does, °C. */
interface FiredInAirRow {
  readonly feed: string;
  readonly product: string;
  readonly at: string;
  readonly source: SourceKey;
}

export const FIRED_IN_AIR: readonly FiredInAirRow[] = [
  // 450 to 480; pages of the trade say 400 to 500 and 480 to 510
  { feed: "PbO", product: "Pb3O4", at: "480", source: "memory" },
  { feed: "BaO", product: "BaO2", at: "550", source: "memory" },
  { feed: "CoO", product: "Co3O4", at: "700", source: "memory" },
  { feed: "CoCO3", product: "Co3O4", at: "700", source: "memory" },
  { feed: "Co(OH)2", product: "Co3O4", at: "700", source: "memory" },
  { feed: "Cu", product: "CuO", at: "700", source: "memory" },
  // oxalates come apart at 250 to 450; short of air they leave metal, which glows in air
  { feed: "CoC2O4·2H2O", product: "Co3O4", at: "700", source: "memory" },
  { feed: "CoC2O4", product: "Co3O4", at: "700", source: "memory" },
  { feed: "NiC2O4·2H2O", product: "NiO", at: "600", source: "memory" },
  { feed: "FeC2O4·2H2O", product: "Fe2O3", at: "600", source: "memory" },
  { feed: "MnC2O4·2H2O", product: "Mn2O3", at: "700", source: "memory" },
  { feed: "CuC2O4", product: "CuO", at: "500", source: "memory" },
];

/** A metal that dilute sulfuric acid takes, with its sulfate. */
export interface AcidTakesRow {
  readonly metal: string;
  readonly sulfate: string;
  /** Its skin makes it slow in the cold. */
  readonly warm?: true;
  readonly source: SourceKey;
}

export const ACID_TAKES: readonly AcidTakesRow[] = [
  { metal: "Zn", sulfate: "ZnSO4", source: "commonPractice" },
  { metal: "Fe", sulfate: "FeSO4", source: "commonPractice" },
  { metal: "Mg", sulfate: "MgSO4", source: "commonPractice" },
  { metal: "Al", sulfate: "Al2(SO4)3", warm: true, source: "commonPractice" },
];

/**
 * Ligands whose plain salt with the metal hardly dissolves and stands in the way of the complex: its solution is hot, and the metal
 * goes into it. Never a cyanide, and no ammonia, which heat drives out.
 */
export const MIXED_HOT = { anions: ["C2O4^2-"], at: "85 °C", solidFirst: "for half an hour, as cool as that", source: "commonPractice" } as const satisfies {
  anions: readonly string[];
  at: string;
  solidFirst: string;
  source: SourceKey;
};

/** What warm liquor takes apart, and alkali sooner: the vessel is cooled before it comes, and kept cool while it does. */
export const POURED_COLD = {
  formulas: ["H2O2"],
  /** Anions whose salts make a liquor strongly alkaline; ammonia does as well. */
  alkaline: ["OH-", "CO3^2-", "PO4^3-", "BO2-", "SiO3^2-"],
  from: "25 °C",
  inAlkali: "30 °C",
  elsewhere: "40 °C",
  why: "warm or in alkali it decomposes, the faster the warmer, and foams over",
  source: "commonPractice",
} as const satisfies { formulas: readonly string[]; alkaline: readonly string[]; from: string; inAlkali: string; elsewhere: string; why: string; source: SourceKey };

/** A salt that ammonia is to make an ammine of: dissolved warm in little water, for more would keep more of that; and cooled before the ammonia comes. */
export const WARM_FOR_AMMINE = {
  at: "60 °C",
  cooledTo: "25 °C",
  /** With the ammonia it gets warm: some 20 K of 92 kJ/mol for copper. */
  neverAbove: "40 °C",
  why: "it gets warm with the ammonia, and hot it drives it off; crystals that come dissolve in it",
  source: "commonPractice",
} as const satisfies { at: string; cooledTo: string; neverAbove: string; why: string; source: SourceKey };

/** Acids whose hydrogen those metals take. */
export const ACIDS_ON_METAL = { acids: ["HCl", "HBr", "H2SO4"], source: "commonPractice" } as const satisfies {
  acids: readonly string[];
  source: SourceKey;
};

/** Metals that dilute sulfuric acid leaves alone. */
export const ACID_LEAVES = {
  metals: ["Cu", "Ag", "Au", "Hg", "Pt", "Pd", "Bi", "Sb"],
  // it dissolves as well, but slowly, and the metal beside it first
  cold: ["Sn"],
  source: "commonPractice",
} as const;

/** What reacts with what is dissolved only near the boil. */
export interface SlowRow {
  readonly formulas: readonly string[];
  readonly at: string;
  /** Only where it makes one of these. */
  readonly to?: readonly string[];
  /** How long, in words. */
  readonly time: string;
  readonly source: SourceKey;
}

export const SLOW_IN_THE_COLD: readonly SlowRow[] = [
  // sulfur into sulfite: an hour and a half and more (a preparation of 1936), two hours (a web page)
  { formulas: ["S", "S8"], at: "95 °C", time: "for an hour or two", source: "commonPractice" },
  { formulas: ["Cu"], to: ["CuCl", "CuBr", "CuI"], at: "80 °C", time: "until the blue is gone", source: "commonPractice" },
  // a reducing sugar and an alkaline solution of copper
  { formulas: ["C6H12O6"], at: "80 °C", time: "until its colour changes no more", source: "commonPractice" },
];

/** Metals that acid or water takes fast, even in pieces. */
export const QUICK_METALS: { readonly symbols: readonly string[]; readonly source: SourceKey } = {
  symbols: ["Li", "Na", "K", "Ca", "Sr", "Ba", "Mg", "Al"],
  source: "commonPractice",
};

/** Ions of the salts that melt together with an oxide in fire. */
export const FUSES_OXIDES = {
  cations: ["Li+", "Na+", "K+", "Rb+", "Cs+"],
  anions: ["OH-", "CO3^2-", "HCO3-", "O^2-", "O2^2-", "NO3-", "NO2-"],
  source: "commonPractice",
} as const;

/** Words of a pack for metal in few long pieces, of which one can hang in a liquor. */
export const LONG_PIECES = {
  words: ["foil", "sheet", "plate", "wire", "rod", "stick", "bar", "ribbon", "strip", "pipe", "tube", "mesh", "gauze", "coil"],
  source: "commonPractice",
} as const;

/** Powders that water alone does not wet. */
export const NOT_WETTED = { formulas: ["S", "S8"], source: "commonPractice" } as const;

/** Solids that go on by themselves once heat has started them, and throw their residue about. */
export const RUNS_BY_ITSELF = { formulas: ["(NH4)2Cr2O7"], filled: "10 %", source: "commonPractice" } as const;

/** Metals that dilute or cold acid hardly dissolves: the acid is used as strong as it is, and warm once the metal is in it. */
export const SLOW_IN_ACID = {
  metals: ["Sn"],
  acid: "HCl",
  at: "60 °C",
  /** Hotter, and acid of 30 % boils: at some 87 °C. */
  range: "50 to 60 °C",
  as: "granulated (melted and poured into water in a thin stream, the ladle dry, goggles on) or as thin sheet",
  pure: "Pure metal only, no solder and no pewter: of antimony or arsenic in it acid makes stibine and arsine, very poisonous gases",
  time: "some hours to a day",
  left: "Metal that is left keeps air from spoiling the liquor: lift it out only before the liquor is filtered, rinse, dry and weigh it, and count the product from what has dissolved",
  source: "commonPractice",
} as const;

/** Oxides and dense carbonates that acid dissolves hardly in the cold. */
export const WARM_IN_ACID: readonly {
  readonly formulas: readonly string[];
  readonly at: string;
  readonly source: SourceKey;
}[] = [
  { formulas: ["MgCO3", "FeCO3", "CaMg(CO3)2", "CuO", "NiO", "CoO", "Co3O4", "MnO", "Fe2O3", "Fe3O4", "Cr2O3", "CdO", "SnO"], at: "60 °C", source: "commonPractice" },
  // what is sold is gibbsite; a fresh gel dissolves in the cold
  { formulas: ["Al(OH)3"], at: "80 °C", source: "commonPractice" },
];

/** Metals that dilute acid takes slowly in the cold: it is warm before the first portion, and never boils. */
export const WARM_FOR_METAL = {
  metals: ["Fe", "Ni", "Co"],
  acid: "H2SO4",
  at: "60 °C",
  kept: "60 to 70 °C",
  /** Warming, if all were added at once, that slow portions carry off. */
  upTo: "60 ΔK",
  time: "an hour or two",
  source: "commonPractice",
} as const satisfies {
  metals: readonly string[];
  acid: string;
  at: string;
  kept: string;
  upTo: string;
  time: string;
  source: SourceKey;
};

/** Where a solid goes into acid, and what comes of it crystallises in the cold: in a crust on the solid, with gas shut in. */
export const KEPT_DISSOLVED = {
  /** Warm enough, the coldest of these that keeps all of it dissolved, or the last. */
  at: ["30 °C", "35 °C", "40 °C", "45 °C", "50 °C", "55 °C", "60 °C"],
  /** More warming than this by the reaction, and it needs no other heat. */
  warmsItself: "20 ΔK",
  source: "commonPractice",
} as const satisfies { at: readonly string[]; warmsItself: string; source: SourceKey };

/** Solids that a flame under the vessel lights where they stick to its rim. */
export const LIT_BY_FLAME = { formulas: ["S", "S8", "P", "P4"], source: "commonPractice" } as const satisfies {
  formulas: readonly string[];
  source: SourceKey;
};

/** Classes of salts of which a hot liquor gives off gas that irritates. */
export const IRRITATES_HOT = { classes: ["sulfite"], source: "commonPractice" } as const satisfies {
  classes: readonly string[];
  source: SourceKey;
};

/** Elements that burn once they are hot in air: nothing to fill a crucible with. */
export const BURNS_IN_AIR = {
  elements: ["Li", "Na", "K", "Rb", "Cs", "Mg", "Ca", "Sr", "Ba", "Al", "Ti", "Zr", "P", "S"],
  source: "commonPractice",
} as const satisfies { elements: readonly string[]; source: SourceKey };

/**
 * When a solid gives off gas at one atmosphere: heat over entropy of the gas. 138 J/(K mol) is the rule of Le Chatelier and Forcrand
 * (from memory); with the most that gases have, 180, the temperature is no higher than the true one.
 */
export const GIVES_OFF_GAS = { entropy: "180 J/(K mol)", hottestKiln: "1500 °C", source: "memory" } as const satisfies {
  entropy: string;
  hottestKiln: string;
  source: SourceKey;
};

/** How warm a salt with much crystal water is dried before it is fired. */
export const DRIED_FIRST: { readonly at: string; readonly source: SourceKey } = { at: "100 to 150 °C", source: "commonPractice" };

/** Hydrates that swell to a foam as heat drives their water out: borates, alums and sulfates of their kind, and whatever has so much water. */
export const PUFFS_UP = {
  kinds: [{ anions: ["B4O7^2-", "BO2-"] }, { cations: ["Al^3+", "Fe^3+", "Cr^3+"], anions: ["SO4^2-"] }],
  waters: "10",
  filled: "33 %",
  source: "commonPractice",
} as const satisfies {
  kinds: readonly { readonly cations?: readonly string[]; readonly anions: readonly string[] }[];
  waters: string;
  filled: string;
  source: SourceKey;
};

/** Metals of which oxides or salts leave a hot crucible as fume. */
export const FUMING_METALS = { metals: ["Pb", "Cd", "As", "Sb", "Hg", "Tl"], source: "commonPractice" } as const;

/** Metals whose oxides hot carbon, or a flame short of air, reduces: zinc and cadmium leave as vapour, the rest stay as metal. */
export const REDUCED_IN_FIRE = {
  metals: ["Zn", "Cd", "Pb", "Cu", "Co", "Ni", "Fe", "Sn", "Bi", "Sb", "Ag"],
  source: "commonPractice",
} as const satisfies { metals: readonly string[]; source: SourceKey };

/** Hydroxides and basic carbonates hold water and are sold by the assay; the rest of these metals' is carbonate or stone. */
export const REST_IS_NO_WATER = { metals: ["Ca", "Sr", "Ba"], source: "commonPractice" } as const;

/** A charge whose dust harms for good is ground as a slip: it dries in its crucible before it is fired. */
export const WET_GRINDING: { readonly driedAt: string; readonly source: SourceKey } = {
  driedAt: "105 °C",
  source: "commonPractice",
};

/** What a crucible is made of, by the highest temperature it is usual at; the first that stands it. */
export const CRUCIBLES: readonly { readonly upTo?: string; readonly of: string; readonly source: SourceKey }[] = [
  { upTo: "1000 °C", of: "", source: "commonPractice" },
  { of: "alumina or fireclay (the glaze of porcelain softens and sticks that hot)", source: "commonPractice" },
];

/** A light powder is blown out by the gas that leaves it, if it comes fast. */
export const GAS_FROM_LIGHT_POWDER: { readonly pace: string; readonly source: SourceKey } = {
  pace: "100 to 150 °C an hour",
  source: "commonPractice",
};

/** Where a kiln is opened, and what was in it is touched; hotter than `closedBelow` it cracks a jar, or air that cools shuts its lid fast. */
export const KILN_OPENED: { readonly below: string; readonly closedBelow: string; readonly source: SourceKey } = {
  below: "50 °C",
  closedBelow: "100 °C",
  source: "commonPractice",
};

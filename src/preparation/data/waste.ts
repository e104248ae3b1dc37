// Metals in a waste: how they are precipitated as hydroxide or carbonate, and which need not be. pH figures from memory.
import type { SourceKey } from "./sources";

/** How a metal is precipitated. */
export interface WasteMetalRow {
  readonly metal: string;
  /** Charge of the ion that is precipitated. */
  readonly charge: bigint;
  readonly pH: string;
  /** What precipitates it, where that is not soda: one formula unit for each atom. */
  readonly precipitant?: string;
  readonly note?: string;
  /** Its salts are so sour that soda frees gas from them: no carbonate of it falls. */
  readonly foams?: true;
  /** So poisonous that its liquors go to the waste whole: what is boiled down from them keeps traces. */
  readonly poison?: true;
  /** Groups that have it as an oxidiser: soda precipitates nothing of them. */
  readonly oxidising?: {
    readonly groups: readonly string[];
    readonly note: string;
    /** Formula units of sodium disulfite that reduce an atom of it in acid liquor. */
    readonly disulfite: string;
    /** What is seen then. */
    readonly until: string;
  };
  readonly source: SourceKey;
}

export const WASTE_METALS: readonly WasteMetalRow[] = [
  { metal: "Fe", charge: 2n, pH: "4 to 7 as Fe(III); let Fe(II) oxidise in air first", source: "memory" },
  { metal: "Al", charge: 3n, foams: true, pH: "6 to 7", source: "memory" },
  { metal: "Cr", charge: 3n, foams: true, poison: true, pH: "8 to 9 as Cr(III)", oxidising: { groups: ["chromate", "dichromate"], note: "chromium(VI) must be reduced first: soda does not precipitate it", disulfite: "0.75", until: "all of it is green" }, source: "memory" },
  { metal: "Cu", charge: 2n, pH: "8 to 9.5", source: "memory" },
  { metal: "Zn", charge: 2n, pH: "9 to 9.5", source: "memory" },
  { metal: "Pb", charge: 2n, poison: true, pH: "9 to 9.5, or as sulfate", source: "memory" },
  { metal: "Co", charge: 2n, poison: true, pH: "9.5 to 10", source: "memory" },
  { metal: "Ni", charge: 2n, poison: true, pH: "10 to 10.5", source: "memory" },
  { metal: "Mn", charge: 2n, pH: "10 and above", oxidising: { groups: ["permanganate", "manganate"], note: "permanganate must be reduced first: soda does not precipitate it", disulfite: "1.25", until: "no purple is left" }, source: "memory" },
  { metal: "Sr", charge: 2n, pH: "8 and above, as carbonate with soda", source: "memory" },
  { metal: "Ba", charge: 2n, poison: true, pH: "any, as sulfate with sodium sulfate", precipitant: "Na2SO4", note: "barium is precipitated with sulfate, not soda alone", source: "memory" },
  { metal: "Ag", charge: 1n, pH: "any, as chloride", precipitant: "NaCl", note: "silver is precipitated as chloride and kept", source: "memory" },
  { metal: "Cd", charge: 2n, poison: true, pH: "9.5 to 10", source: "memory" },
  { metal: "Sn", charge: 2n, foams: true, pH: "4 to 8", source: "memory" },
  { metal: "Bi", charge: 3n, foams: true, pH: "4 to 8", source: "memory" },
];

/** Less than this a drop of anything settles. */
export const WORTH_TREATING = { amount: "1 mmol", source: "commonPractice" } as const satisfies {
  readonly amount: string;
  readonly source: SourceKey;
};

/** Metals that every liquor contains and nobody precipitates. */
export const LEFT_IN_WASTE: readonly { readonly metals: readonly string[]; readonly source: SourceKey }[] = [
  { metals: ["Na", "K", "Li", "Mg", "Ca"], source: "commonPractice" },
];

/** Metals that the ammonia of an alkaline waste holds in solution. */
export const HELD_BY_AMMONIA: {
  readonly metals: readonly string[];
  /** What drives the ammonia out of the warm liquor: one formula unit for each ammonium. */
  readonly reagent: string;
  readonly source: SourceKey;
} = {
  metals: ["Cu", "Ni", "Co", "Zn", "Cd"],
  reagent: "NaOH",
  source: "commonPractice",
};

/** Ligands that hold metals in a liquor, where soda or lye should precipitate them. */
interface HoldingLigandRow {
  readonly name: string;
  /** As it stands in water. */
  readonly formula: string;
  /** Name of the group in a formula. */
  readonly group: string;
  /** What takes the ligand out as a solid, out of complexes that come apart. */
  readonly takenBy?: { readonly reagent: string; readonly called: string; readonly solid: string };
  readonly source: SourceKey;
}

export const HOLDING_LIGANDS: readonly HoldingLigandRow[] = [
  { name: "ammonia", formula: "NH3", group: "ammine", source: "commonPractice" },
  { name: "oxalate", formula: "C2O4^2-", group: "oxalate", takenBy: { reagent: "CaCl2", called: "calcium chloride", solid: "calcium oxalate" }, source: "commonPractice" },
  { name: "citrate", formula: "C6H5O7^3-", group: "citrate", source: "commonPractice" },
  { name: "tartrate", formula: "C4H4O6^2-", group: "tartrate", source: "commonPractice" },
  { name: "EDTA", formula: "C10H12N2O8^4-", group: "ethylenediaminetetraacetate", source: "commonPractice" },
  { name: "thiosulfate", formula: "S2O3^2-", group: "thiosulfate", source: "commonPractice" },
  { name: "glycinate", formula: "C2H4NO2^-", group: "glycinate", source: "commonPractice" },
  { name: "cyanide", formula: "CN^-", group: "cyanide", source: "commonPractice" },
];

/** Oxalate is as poisonous after soda as before: calcium takes it out of the neutral liquor. */
export const OXALATE_OUT = {
  ligand: "oxalate",
  acid: "H2C2O4",
  reagent: "CaCl2",
  note: "soda leaves its oxalate dissolved, which is poisonous: then stir in calcium chloride ({mass} of it dry) until no more calcium oxalate settles, and filter",
  source: "commonPractice",
} as const satisfies { ligand: string; acid: string; reagent: string; note: string; source: SourceKey };

/** Cyanido complexes: what precipitates salts of their metals does nothing to them, and sulfide gives its poison gas with a sour liquor. */
export const HELD_BY_CYANIDE = {
  ligand: "cyanide",
  note: "cyanide keeps {ions} in solution, out of which neither soda nor sulfide takes it: put none to it for that",
  source: "commonPractice",
} as const satisfies { ligand: string; note: string; source: SourceKey };

/** A sparing cyanidoferrate with salt of its metal in excess: nothing else of the cyanidoferrate is dissolved. */
export const CYANIDOFERRATE_LEFT = {
  note: "it contains a cyanidoferrate, which the {metals} in excess keeps in the solid: leave it as it is, by itself; no alkali and no soda, which break the {product} into hydroxide and soluble cyanidoferrate, no strong acid, bleach, sulfide or heat, which give poison gas; let what is in it settle, and take the solid to collection as hazardous waste",
  source: "commonPractice",
} as const satisfies { note: string; source: SourceKey };

/** Ammines of a liquor without acid: soda precipitates nothing beside so much ammonia, and acid makes no more of them than ammonium, which gives it back. */
export const AMMINE_LEFT = {
  ligand: "ammonia",
  note: "ammonia keeps the {metals} of the complex in solution, and soda precipitates none of it: put nothing to it, and give it to collection as it is, as hazardous waste",
  source: "commonPractice",
} as const satisfies { ligand: string; note: string; source: SourceKey };

/** A ligand that holds metals in the liquor of a soda waste, with its acid as it is put in. */
export interface ChelateRow {
  readonly name: string;
  /** Name of the group in a formula. */
  readonly group: string;
  readonly acids: readonly string[];
}

/** Ligands out of which soda precipitates hardly any of these metals, whatever its pH. */
export const CHELATE_LEFT: {
  readonly metals: readonly string[];
  readonly ligands: readonly ChelateRow[];
  readonly note: string;
  readonly source: SourceKey;
} = {
  metals: ["Cu", "Ni", "Co", "Fe", "Zn"],
  ligands: [
    { name: "glycinate", group: "glycinate", acids: ["NH2CH2COOH"] },
    { name: "citrate", group: "citrate", acids: ["C6H8O7"] },
    { name: "tartrate", group: "tartrate", acids: ["C4H6O6"] },
    { name: "EDTA", group: "ethylenediaminetetraacetate", acids: ["C10H16N2O8"] },
  ],
  note: "{ligands} the {metals} in solution, and soda precipitates hardly any of it: put nothing to it, and give it to collection as it is, as hazardous waste",
  source: "commonPractice",
};

/** Metals whose complexes come apart so slowly that neither acid nor soda precipitates the metal. */
export const SLOW_METALS: readonly { readonly metals: readonly string[]; readonly source: SourceKey }[] = [
  { metals: ["Co", "Cr", "Rh", "Ir", "Pt"], source: "commonPractice" },
];

/** Anions of acid salts that are an acid in any liquor: what they free gas from, and what soda neutralises, one hydrogen each. */
export const ACID_ANIONS: { readonly anions: readonly string[]; readonly source: SourceKey } = {
  anions: ["HSO4-", "HSeO4-"],
  source: "commonPractice",
};

/** Gas that acid frees from a salt that is over, by the name of its anion: one for each anion. */
export const FREED_FROM_EXCESS: readonly { readonly group: string; readonly gas: string; readonly source: SourceKey }[] = [
  { group: "sulfite", gas: "SO2", source: "commonPractice" },
  { group: "hydrogensulfite", gas: "SO2", source: "commonPractice" },
  { group: "carbonate", gas: "CO2", source: "commonPractice" },
  { group: "hydrogencarbonate", gas: "CO2", source: "commonPractice" },
];

/** Free halogens in a waste: a reducer takes them, soda does not. */
export const FREE_HALOGENS = {
  formulas: ["I2", "Br2", "Cl2"],
  reagent: "Na2S2O3",
  note: "{halogen} is in it: stir in sodium thiosulfate or sulfite by pinches until it is colourless, before soda",
  source: "commonPractice",
} as const;

/** Salts of which acid and a little of a reducer set a halogen free; sulfite for each halogen: XO3- + 3 SO3^2- = X- + 3 SO4^2-. */
export const HALATES = {
  groups: [
    { name: "iodate", sulfite: "3" },
    { name: "bromate", sulfite: "3" },
    { name: "periodate", sulfite: "4" },
  ],
  reagent: "Na2SO3",
  note: "{salt} is in it: with acid and a little sulfite it sets free its halogen: stir in an excess of sodium sulfite first ({mass} of it dry), before any acid",
  source: "commonPractice",
} as const;

/** By-products that cost less than the heat to boil their liquor down. */
export const NEVER_KEPT = {
  formulas: ["NaCl"],
  why: "common salt is not worth the boiling",
  source: "commonPractice",
} as const satisfies { readonly formulas: readonly string[]; readonly why: string; readonly source: SourceKey };

// What light, air and plain water do to salts on the bench, and what is done against it.
import type { SourceKey } from "./sources";

/** One kind of care. */
export interface ProtectionRow {
  /** Cations it holds for, with their charge. */
  readonly cations: readonly string[];
  /** Elements that precipitate as fine powder. */
  readonly elements?: readonly string[];
  /** Names of anions, where the salt needs one of them as well. */
  readonly groups?: readonly string[];
  /** When the salt is dissolved, stands in its liquor, or when the product is dried and kept. */
  readonly when: "dissolving" | "standing" | "crystallising" | "drying";
  /** What to do, in words; undefined where the flags say it. */
  readonly text?: string;
  /** The last wash of the cake is with alcohol, where that does not dissolve it. */
  readonly alcohol?: true;
  /** Its liquor is covered from the air: nothing is evaporated in a wide dish. */
  readonly covered?: true;
  /** Acid of which a little stays in the liquor until the crystals are off. */
  readonly acid?: string;
  /** Plain water makes it basic: more of it clears nothing, and crystals are not rinsed. */
  readonly noWater?: true;
  /** Boiling drives its acid out. */
  readonly notBoiled?: true;
  /** So many times what the salt weighs of that acid, not drops. */
  readonly times?: string;
  /** A little acid of its own anion, for `{acid}` in the text. */
  readonly drops?: true;
  /** Light changes it. */
  readonly dark?: true;
  /** Share of it in the water of its feed, where no solubility is known. */
  readonly thin?: string;
  /** What precipitates it is poured into it, and not it into that. */
  readonly first?: true;
  /** The same where acid comes into the same vessel later. */
  readonly beforeAcid?: string;
  /** What is added from such a mass fraction on; where it begins is a choice, for glass is attacked the more the stronger and hotter it is. */
  readonly strong?: { readonly from: string; readonly text: string };
  /** What tap water contains clouds it. */
  readonly distilled?: true;
  /** No air is sucked through it, and it dries in a closed vessel. */
  readonly airless?: true;
  /** Its colour once air has oxidised it, where that shows. */
  readonly oxidised?: string;
  readonly source: SourceKey;
}

export const PROTECTION: readonly ProtectionRow[] = [
  { cations: ["Na+", "K+", "Li+"], groups: ["hydroxide"], when: "dissolving", text: "in glass or stainless steel, for lye dissolves aluminium", beforeAcid: "in glass, for lye dissolves aluminium, and the hot acid after it steel", strong: { from: "8 %", text: "in steel where it is kept hot, for so strong it attacks glass as well" }, source: "commonPractice" },
  { cations: ["Fe^2+"], when: "dissolving", drops: true, text: "use boiled-out water with a few drops of {acid}, so that neither air nor water changes it", source: "commonPractice" },
  { cations: ["Sn^2+"], when: "dissolving", drops: true, times: "1", noWater: true, text: "stir it into the acid, warm that until it is clear, and add the water then, boiled out: water alone makes a basic salt of it", source: "commonPractice" },
  { cations: ["Pb^2+"], groups: ["acetate"], when: "dissolving", drops: true, distilled: true, text: "use distilled water with a few drops of {acid} in it, or it stays cloudy with carbonate and basic salt", source: "commonPractice" },
  { cations: ["Ag+"], when: "dissolving", distilled: true, text: "use distilled water: the chloride of tap water would cloud it", source: "commonPractice" },
  { cations: ["Pb^2+"], when: "dissolving", distilled: true, text: "use distilled water, here and for the washes: sulfate, carbonate and chloride of tap water would cloud it", source: "commonPractice" },
  { cations: ["Ba^2+"], when: "dissolving", distilled: true, text: "use distilled water: the sulfate of tap water would cloud it", source: "commonPractice" },
  { cations: ["Na+", "K+", "NH4+"], groups: ["tartrate"], when: "dissolving", distilled: true, text: "use distilled or rain water: the calcium of hard water precipitates as its tartrate", source: "commonPractice" },
  { cations: ["Na+", "K+"], groups: ["stearate", "palmitate", "oleate"], when: "dissolving", thin: "3 %", first: true, distilled: true, text: "in hot soft or distilled water (75 to 85 °C), and keep it hot: cold, soap swells and does not get clear, and hard water takes part of it as lime soap", source: "commonPractice" },
  { cations: ["Fe^2+"], when: "crystallising", drops: true, covered: true, text: "keep the liquor covered and just acid with a few drops of {acid}, or air oxidises it to iron(III)", source: "commonPractice" },
  { cations: ["Al^3+", "Zn^2+", "Mg^2+", "Fe^3+"], groups: ["chloride"], when: "crystallising", acid: "HCl", text: "keep it acid with a little hydrochloric acid: neutral it loses hydrogen chloride as it is boiled down, and a basic chloride is left", source: "commonPractice" },
  { cations: ["Sn^2+"], groups: ["chloride"], when: "crystallising", acid: "HCl", noWater: true, covered: true, text: "keep it strongly acid with hydrochloric acid to the end, covered from the air: with too little acid it turns cloudy, and a basic chloride is left", source: "commonPractice" },
  { cations: ["Fe^3+"], groups: ["sulfate"], when: "crystallising", text: "it is pale violet to light brown: rusty brown it has too little acid, and takes a little more dilute sulfuric acid", source: "commonPractice" },
  { cations: ["Bi^3+", "Sb^3+"], when: "crystallising", drops: true, noWater: true, text: "keep it strongly acid with {acid} to the end, under a hood: with too little it turns cloudy, and a basic salt is left", source: "commonPractice" },
  { cations: ["Zn^2+", "Cu^2+", "Pb^2+", "Al^3+"], groups: ["acetate"], when: "crystallising", acid: "CH3COOH", notBoiled: true, text: "keep it smelling of acetic acid, with a few drops more as the smell goes, and do not boil it: without free acid a basic acetate separates", source: "commonPractice" },
  { cations: ["Bi^3+", "Sb^3+"], when: "dissolving", drops: true, times: "2.5", noWater: true, text: "stir it into the acid until it is clear, and add the water then, a little at a time: water alone makes a basic salt of it", source: "commonPractice" },
  { cations: ["Fe^3+", "Ti^4+", "Sn^4+"], when: "dissolving", drops: true, noWater: true, text: "put a few drops of {acid} into the water first, so that it does not hydrolyse", source: "commonPractice" },
  { cations: ["Mn^2+", "Co^2+", "Fe^2+"], groups: ["hydroxide", "carbonate"], when: "drying", alcohol: true, airless: true, oxidised: "brown", source: "commonPractice" },
  { cations: ["Cu+"], groups: ["chloride", "bromide"], when: "drying", alcohol: true, airless: true, oxidised: "green", source: "commonPractice" },
  { cations: ["Sn^2+"], groups: ["hydroxide", "carbonate"], when: "drying", alcohol: true, airless: true, source: "commonPractice" },
  { cations: ["Fe^2+"], groups: ["sulfate"], when: "drying", alcohol: true, text: "press it between paper before, and bottle it tightly as soon as it is dry: damp it turns brown, and in dry air white", source: "commonPractice" },
  { cations: ["Cu+"], groups: ["oxide"], when: "drying", alcohol: true, text: "fine and damp it turns to copper(II) in air", source: "commonPractice" },
  { cations: ["Fe^2+", "Sn^2+", "Cu+"], groups: ["chloride", "bromide"], when: "drying", airless: true, text: "press it between paper before, and bottle it tightly after", source: "commonPractice" },
  { cations: [], elements: ["Cu", "Fe", "Sn", "Bi", "Cd"], when: "drying", alcohol: true, text: "do not leave it damp: metal powder tarnishes in air", source: "commonPractice" },
  // its sponge warms itself as it turns to oxide and basic carbonate
  { cations: [], elements: ["Pb"], when: "drying", alcohol: true, airless: true, source: "commonPractice" },
  { cations: ["Ag+"], when: "standing", dark: true, text: "in the dark, and keep light from it until it is bottled", source: "commonPractice" },
  { cations: ["Pb^2+"], groups: ["iodide"], when: "drying", dark: true, text: "keep it in the dark", source: "commonPractice" },
  { cations: ["Ag+"], when: "drying", dark: true, text: "keep it in the dark", source: "commonPractice" },
];

/** Salts that turn basic as their liquor is boiled down, where metal, oxide or carbonate has taken all of its acid. */
export const SOURED = {
  cations: ["Zn^2+", "Cu^2+", "Ni^2+", "Co^2+", "Mn^2+"],
  text: "bring it to pH 3 to 4 with a few drops of {acid}: what was in excess has taken its acid, and basic salt would cloud it",
  source: "commonPractice",
} as const satisfies { readonly cations: readonly string[]; readonly text: string; readonly source: SourceKey };

/** Salts whose crystals come only from liquor with much free acid, and how what brings their cation is dissolved for that. */
interface KeptSourRow {
  readonly cation: string;
  readonly anion: string;
  /** Mass of the acid for each mass of the salt. */
  readonly times: string;
  /** Mass of water for each mass of the salt, where no solubility is known. */
  readonly water: string;
  readonly text: string;
  readonly source: SourceKey;
}

export const KEPT_SOUR: readonly KeptSourRow[] = [
  // some 2 to 3 mL of strong acid for 50 g of the alum (from memory)
  { cation: "Fe^3+", anion: "SO4^2-", times: "0.8", water: "0.4", text: "it dissolves slowly: warm it to 50 to 60 °C, no warmer, for an hour or more", source: "memory" },
];

/** Acids that keep a salt from water without bringing another anion, or oxidising it. */
export const DROPS: readonly {
  readonly anion: string;
  readonly acid: "dilute sulfuric acid" | "dilute hydrochloric acid" | "dilute nitric acid" | "dilute acetic acid";
  readonly formula: string;
  readonly source: SourceKey;
}[] = [
  { anion: "SO4^2-", acid: "dilute sulfuric acid", formula: "H2SO4", source: "commonPractice" },
  { anion: "Cl-", acid: "dilute hydrochloric acid", formula: "HCl", source: "commonPractice" },
  { anion: "NO3-", acid: "dilute nitric acid", formula: "HNO3", source: "commonPractice" },
  { anion: "CH3COO-", acid: "dilute acetic acid", formula: "CH3COOH", source: "commonPractice" },
];

/** The first wash of a metal whose liquor keeps a salt that plain water makes basic. */
export const FIRST_WASH = {
  strength: "1 %",
  because: "plain water makes a basic salt of the {salt} left in it",
  source: "commonPractice",
} as const satisfies { strength: string; because: string; source: SourceKey };

/** Complexes that light takes apart, by the name of their ligand. */
export const IN_THE_DARK: readonly { readonly metal: string; readonly ligand: string; readonly source: SourceKey }[] = [
  { metal: "Fe", ligand: "oxalate", source: "commonPractice" },
];

// What a kiln does beside the firing itself: what forms in air beside the product and is washed out of it.
import type { SourceKey } from "./sources";

/**
 * Chromium fired in air with lime or alkali: some of it becomes chromate, which water takes out. The groups have it as chromate
 * already, and are wanted; with copper and other weak bases no chromate stands such heat.
 */
export const CHROMATE_FROM_FIRE = {
  metal: "Cr",
  name: "chromate",
  anion: "CrO4^2-",
  with: [
    { symbol: "Na", cation: "Na+" },
    { symbol: "K", cation: "K+" },
    { symbol: "Ca", cation: "Ca^2+" },
    { symbol: "Sr", cation: "Sr^2+" },
    { symbol: "Ba", cation: "Ba^2+" },
    { symbol: "Li", cation: "Li+" },
    { symbol: "Rb", cation: "Rb+" },
    { symbol: "Cs", cation: "Cs+" },
  ],
  wanted: ["chromate", "dichromate"],
  /** Hot water for the washing, times the theory. */
  water: "5",
  /** Before the raw cake is touched. */
  raw: "with gloves on, for the raw cake may hold chromate (chromium(VI), poisonous, causes cancer), crush it wet, under a little water, without dust",
  /** What the wash water shows. */
  yellow: "Yellow is chromate: none of that water down the drain",
  source: "commonPractice",
} as const satisfies {
  metal: string;
  name: string;
  anion: string;
  with: readonly { readonly symbol: string; readonly cation: string }[];
  wanted: readonly string[];
  water: string;
  raw: string;
  yellow: string;
  source: SourceKey;
};

/** Lime and its like that a fire leaves free show by their alkali, their carbonates by their gas; cements are alkaline by themselves. */
export const FREE_BASE = {
  metals: ["Ca", "Sr", "Ba"],
  alkaline: ["Ca3SiO5", "Ca2SiO4", "Ca3Al2O6", "CaAl2O4", "Ca12Al14O33", "BaAl2O4", "SrAl2O4", "Sr3Al2O6"],
  /** Fired hotter it takes up water slowly, and a pinch read at once shows nothing. */
  deadBurnt: { above: "1100 °C", wetted: "ground fine and ten minutes in a little warm boiled water" },
  source: "commonPractice",
} as const satisfies {
  metals: readonly string[];
  alkaline: readonly string[];
  deadBurnt: { above: string; wetted: string };
  source: SourceKey;
};

/**
 * Carbonates of the alkali metals give their carbon dioxide off to silica that is over, and become its silicate: soda and sand in
 * the glass furnace, from 700 to 850 °C on.
 */
export const GLASS = {
  silica: "SiO2",
  silicates: { Na2CO3: "Na2SiO3", K2CO3: "K2SiO3", Li2CO3: "Li2SiO3" },
  from: "800 °C",
  source: "commonPractice",
} as const satisfies { silica: string; silicates: Record<string, string>; from: string; source: SourceKey };

/** What water takes of a flux out of a powder that it leaves alone. */
export const FLUX_OUT = {
  /** Metals whose fired oxides and silicates water leaves alone, where no alkali metal is in them. */
  metals: ["Ti", "V", "Cr", "Mn", "Fe", "Co", "Ni", "Cu", "Zn", "Zr", "Sn", "Pr"],
  /** What a flux becomes in the fire that water takes, where no table has its solubility. */
  taken: ["B2O3", "Na2B4O7", "K2B4O7"],
  water: "10",
  end: "until what runs off dries on glass without a film and paper shows the same as of the water alone",
  source: "commonPractice",
} as const satisfies {
  metals: readonly string[];
  taken: readonly string[];
  water: string;
  end: string;
  source: SourceKey;
};

/** What silver nitrate tells of a condensed phosphate: orthophosphate that has not reacted is yellow with it. */
export const FIRED_PHOSPHATE = {
  wanted: ["diphosphate", "metaphosphate", "triphosphate", "tripolyphosphate"],
  /** Anions of the feed that are orthophosphate. */
  feed: ["phosphate"],
  text: "Test it: a pinch in cold water with a drop of silver nitrate gives a white precipitate; yellow in it is orthophosphate that has not reacted: crush it and heat it again. Metaphosphate is white as well, but clouds egg white in water made sour with vinegar, which diphosphate does not",
  source: "commonPractice",
} as const satisfies { wanted: readonly string[]; feed: readonly string[]; text: string; source: SourceKey };

/** How long powders of one colour are ground together. */
export const GROUND_ALIKE: { readonly until: string; readonly source: SourceKey } = {
  until: "for 20 to 30 minutes, scraped together now and then, until no grit is felt (alike in colour, they show no specks)",
  source: "commonPractice",
};

/** A charge that melts: a crucible that it does not leave, kept liquid as long as gas leaves it, and out of it before it is hard. */
export const MELT = {
  filled: "33 %",
  /** K above where it melts, and K no more than which that may be above where it forms. */
  over: 20,
  most: 200,
  /** Beside alkali, what takes up the oxides of a crucible. */
  fluxes: ["PbO", "B2O3", "Na2B4O7", "K2B4O7", "Bi2O3"],
  crucible: "that may be lost (the melt eats clay, porcelain and alumina, and takes some of it up)",
  kept: "kept so hot because what forms melts hotter than what it forms from: a crust would shut the gas in",
  care: "Face shield and leather gloves, and nothing damp near it: a drop of water throws melt about",
  poured:
    "Melt it once more then and pour it out thin on a dry steel plate (what sticks to the crucible is in the weighing and not in the jar), crush it as soon as it is cold and bottle it at once, tightly closed",
  held: "What has melted holds to its crucible: break it out, the crucible with it if there is no other way",
  source: "commonPractice",
} as const satisfies {
  readonly source: SourceKey;
  readonly over: number;
  readonly most: number;
  readonly fluxes: readonly string[];
} & Record<"filled" | "crucible" | "kept" | "care" | "poured" | "held", string>;

// What the work itself asks care for, whatever the substances: heat, gas, strong liquids, flammable liquids, what fire drives
// off. Each row belongs to one step and holds under one condition; our own words.
import { once } from "../../foundation/memo";
import type { SourceKey } from "./sources";

/** One step of the work. */
export type WorkStep =
  | "weighing"
  | "dissolving"
  | "mixing"
  | "heating"
  | "isolating"
  | "drying"
  | "ignition test"
  | "waste";

/** When a row holds; decided from the materials, the products and the figures of the plan. */
export type WorkCondition =
  | "strong acid"
  | "diluted acid"
  | "strong alkali"
  | "strong ammonia"
  | "fluoride in acid"
  | "dissolving warms"
  | "mixing warms"
  | "hung metal warms"
  | "boils"
  | "heat not known"
  | "heat of a gas not known"
  | "gas"
  | "gas by and by"
  | "gas led in"
  | "gas through a trap"
  | "gas for the hood"
  | "flammable gas"
  | "metal in lye"
  | "metal in acid"
  | "iron in acid"
  | "technical metal in acid"
  | "metal fume"
  | "reduced in fire"
  | "chromium fired"
  | "chromium and tin fired"
  | "vapour"
  | "oxygen"
  | "solid into acid"
  | "ammonia"
  | "goes in air"
  | "ammonia in a hot liquor"
  | "ammonia in a cold liquor"
  | "cyanide and acid"
  | "redox"
  | "antisolvent"
  | "boiled down"
  | "paper that burns"
  | "drying limit"
  | "heat sets it off"
  | "stands grinding"
  | "not ground"
  | "ground wet"
  | "is a halogen"
  | "acid left"
  | "metals left"
  | "puffs up"
  | "leaves fine metal"
  | "always";

/** Anions whose salts feed a fire, by the names of their groups. */
export const FEEDS_FIRE = {
  groups: ["nitrate", "chlorate", "perchlorate", "permanganate"],
  source: "commonPractice",
} as const satisfies { readonly groups: readonly string[]; readonly source: SourceKey };

/** Metals that are never sold so pure that their gas in acid is hydrogen alone; others are where an assay is stated below 100 %. */
export const SMELLS_IN_ACID = { iron: ["Fe"], technical: ["Zn", "Sn", "Cd", "Ni"], source: "commonPractice" } as const satisfies {
  readonly iron: readonly string[];
  readonly technical: readonly string[];
  readonly source: SourceKey;
};

/** One reminder. */
export interface WorkCautionRow {
  readonly step: WorkStep;
  readonly when: WorkCondition;
  readonly text: string;
  /** What the work is done in for it. */
  readonly asks?: "fume hood" | "vented kiln";
  readonly source: SourceKey;
}

export const WORK_CAUTIONS = /* @__PURE__ */ once((): readonly WorkCautionRow[] => [
  { step: "weighing", when: "strong acid", text: "goggles and gloves on before the bottle is opened; measure it over a tray", source: "commonPractice" },
  { step: "weighing", when: "strong alkali", text: "goggles and gloves on before the pack is opened; weigh it quickly, it absorbs water", source: "commonPractice" },
  { step: "weighing", when: "strong ammonia", text: "open it cold, under a hood or outdoors, with goggles on", source: "commonPractice" },
  { step: "weighing", when: "fluoride in acid", text: "fluoride and acid attack glass, porcelain and enamel: all vessels, rods, funnels and dishes of polyethylene or polypropylene, warmed in hot water only", source: "commonPractice" },
  { step: "dissolving", when: "strong acid", text: "where it is diluted, the acid goes into the water, in a thin stream and stirred, never water into the acid", source: "commonPractice" },
  { step: "dissolving", when: "strong alkali", text: "sprinkle it into cold water and stir, never water onto it: hot lye spits", source: "commonPractice" },
  { step: "dissolving", when: "dissolving warms", text: "the water warms as it dissolves: in portions, in a vessel that stands heat", source: "commonPractice" },
  { step: "mixing", when: "diluted acid", text: "diluted acid is hot: let it cool before anything goes in, or to the warmth that a step says", source: "commonPractice" },
  { step: "mixing", when: "mixing warms", text: "mixing gives heat: add slowly and keep cold water at hand", source: "commonPractice" },
  { step: "mixing", when: "hung metal warms", text: "it gives heat: lift the metal out while the vessel is too warm to hold, and keep cold water at hand", source: "commonPractice" },
  { step: "mixing", when: "boils", text: "added all at once it would boil over: small portions, cooled in between", source: "commonPractice" },
  { step: "mixing", when: "heat not known", text: "how warm it gets is not known: try a spoonful first", source: "commonPractice" },
  { step: "mixing", when: "heat of a gas not known", text: "how warm it gets is not known: a slow stream, stopped while the vessel is too warm to hold", source: "commonPractice" },
  { step: "mixing", when: "gas", text: "gas is given off: open vessel, never stoppered, in portions, in moving air", source: "commonPractice" },
  { step: "mixing", when: "gas by and by", text: "gas is given off for hours: loosely covered, never stoppered, in moving air", source: "commonPractice" },
  { step: "mixing", when: "gas led in", text: "what is not absorbed, or is set free, needs a way out: no closed vessel, moving air; the tube out of the liquid before the valve is closed", source: "commonPractice" },
  { step: "mixing", when: "gas through a trap", text: "gas is given off: its only way out is the tube to the trap, which is never closed; in portions", source: "commonPractice" },
  { step: "mixing", when: "gas for the hood", text: "the gas is poisonous: under a hood that works, or not at all", source: "commonPractice" },
  { step: "mixing", when: "flammable gas", text: "the gas burns: no flame, no spark, no switch nearby", source: "commonPractice" },
  { step: "mixing", when: "metal in lye", text: "the gas carries a mist of lye, which burns eyes and lungs: loosely covered, no face over it, under a hood or outdoors", source: "commonPractice" },
  { step: "mixing", when: "metal in acid", text: "the gas carries a mist of acid, which stings eyes and lungs: loosely covered, no face over it, under a hood or outdoors", source: "commonPractice" },
  { step: "mixing", when: "iron in acid", text: "steel and iron smell in acid, of what their phosphorus, sulfur and carbon give beside the hydrogen: under a hood or outdoors, and away where it smells", source: "commonPractice" },
  { step: "mixing", when: "technical metal in acid", text: "of technical metal the hydrogen may bring traces of arsine, phosphine or hydrogen sulfide, which are poisonous: under a hood or outdoors, and away where it smells of garlic or rotten eggs", source: "commonPractice" },
  { step: "mixing", when: "vapour", text: "what forms beside the product boils near room temperature, and its vapour burns: under a hood, no flame, no spark, warmed by a water bath only", source: "commonPractice" },
  { step: "mixing", when: "oxygen", text: "oxygen is given off: nothing that burns nearby", source: "commonPractice" },
  { step: "mixing", when: "solid into acid", text: "the solid goes into the acid, never the acid onto the solid", source: "commonPractice" },
  { step: "mixing", when: "ammonia", text: "it smells of ammonia: under a hood or in moving air", source: "commonPractice" },
  { step: "mixing", when: "goes in air", text: "ground and wet it gives off ammonia and carbon dioxide: window open or fan on", source: "commonPractice" },
  { step: "mixing", when: "cyanide and acid", text: "cold and dilute only, and under a hood: warm or strong acid sets hydrogen cyanide free from the complex", source: "commonPractice" },
  { step: "mixing", when: "redox", text: "it may start late and then run fast: wait for each portion before the next", source: "commonPractice" },
  { step: "heating", when: "always", text: "no tight lid, tongs, heat-proof gloves and base; hot and cold look alike", source: "commonPractice" },
  { step: "heating", when: "always", text: "a burn is held under cool running water for 20 minutes, and shown to a doctor where it blisters", source: "commonPractice" },
  { step: "heating", when: "gas", text: "gas is given off: never in a closed vessel; heat slowly", source: "commonPractice" },
  { step: "heating", when: "gas for the hood", text: "the gas is poisonous: under a hood that works, or outdoors with nobody downwind, or not at all; no kiln catches it", source: "commonPractice" },
  { step: "heating", when: "flammable gas", text: "the gas burns: no open flame for heating", source: "commonPractice" },
  { step: "heating", when: "metal fume", text: "hot it gives off poisonous fume of its metal, which no dust mask holds: under a hood that works, or in a kiln with a flue outdoors, with nobody near; the crucible serves for nothing else after", asks: "fume hood", source: "commonPractice" },
  { step: "heating", when: "reduced in fire", text: "in an electric kiln or a clear flame with air to spare, vented outdoors; never in reduction or with carbon, which takes the oxygen from the metal", asks: "vented kiln", source: "commonPractice" },
  { step: "heating", when: "chromium fired", text: "chromium leaves it as vapour and turns tin-white ware pink: none of that in the same kiln, nor in the next firing", source: "commonPractice" },
  { step: "heating", when: "chromium and tin fired", text: "no zinc near it, in the charge, the kiln or a glaze: it turns the pink brown", source: "commonPractice" },
  { step: "heating", when: "oxygen", text: "oxygen is given off: nothing that burns near or in the dish", source: "commonPractice" },
  { step: "heating", when: "ammonia", text: "ammonia is given off: under a hood or outdoors", asks: "fume hood", source: "commonPractice" },
  { step: "isolating", when: "antisolvent", text: "alcohol and acetone are very flammable: no flame, no hot plate, in moving air", source: "commonPractice" },
  { step: "isolating", when: "boiled down", text: "hot liquor scalds and spits near the end: goggles on, never boil it dry", source: "commonPractice" },
  { step: "isolating", when: "heat sets it off", text: "it decomposes violently when it is heated dry: evaporate it on a water bath, never over a flame, never to the end; nothing that burns, no ammonium salt, acid or metal powder nearby", source: "commonPractice" },
  { step: "isolating", when: "ammonia in a hot liquor", text: "warm liquor gives off ammonia: under a hood or outdoors", source: "commonPractice" },
  { step: "isolating", when: "ammonia in a cold liquor", text: "warm liquor gives off ammonia: filter it cold", source: "commonPractice" },
  { step: "drying", when: "paper that burns", text: "paper or cloth that dries with it burns like tinder: rinse it before it is thrown away", source: "commonPractice" },
  { step: "drying", when: "antisolvent", text: "wet with alcohol or acetone it dries in open air, not in an oven", source: "commonPractice" },
  { step: "drying", when: "heat sets it off", text: "never in an oven: it dries in the air of a room, away from anything that burns", source: "commonPractice" },
  { step: "drying", when: "heat sets it off", text: "never crushed or ground: loosen it with a clean plastic spatula", source: "commonPractice" },
  { step: "drying", when: "stands grinding", text: "crush and bottle it without raising dust; wipe up wet", source: "commonPractice" },
  { step: "isolating", when: "is a halogen", text: "its vapour is poisonous, and stains: under a hood or outdoors", source: "commonPractice" },
  { step: "drying", when: "not ground", text: "bottle it without raising dust, and do not grind it; wipe up wet", source: "commonPractice" },
  { step: "drying", when: "ground wet", text: "what mortar, sieve and plate are rinsed with is collected: it settles, and the sediment is waste of its metal, nothing for the sink", source: "commonPractice" },
  { step: "drying", when: "ground wet", text: "bottle it without raising dust, and grind it wet only; wipe up wet", source: "commonPractice" },
  { step: "drying", when: "drying limit", text: "keep below the drying limit: more heat changes the product", source: "commonPractice" },
  { step: "drying", when: "leaves fine metal", text: "heated dry it gives carbon monoxide and a powder that takes fire in air", source: "commonPractice" },
  { step: "ignition test", when: "always", text: "open crucible, tongs, heat-proof gloves and base; hot and cold look alike", source: "commonPractice" },
  { step: "ignition test", when: "puffs up", text: "it puffs up: no more than a third of the crucible, slowly", source: "commonPractice" },
  { step: "waste", when: "acid left", text: "soda foams in it: in portions, in a large open vessel", source: "commonPractice" },
  { step: "waste", when: "metals left", text: "metals are dissolved in it: precipitate them before anything else is decided", source: "commonPractice" },
]);

/** What a solid gives off at red heat. */
export type FumeGround = "sulfur" | "nitrogen oxides" | "ammonia" | "organic" | "cyanide" | "chlorine" | "carbonate";

/** A fume and its ground. */
export interface FumeRow {
  readonly of: FumeGround;
  /** Only where the residue is free of this element: sulfates and chlorides may be all that is left. */
  readonly element?: string;
  readonly text: string;
  readonly source: SourceKey;
}

export const IGNITION_FUMES: readonly FumeRow[] = [
  { of: "sulfur", element: "S", text: "sulfur oxides are given off: under a hood or outdoors", source: "commonPractice" },
  { of: "nitrogen oxides", text: "brown nitrogen oxides are given off: under a hood that works", source: "commonPractice" },
  { of: "ammonia", text: "ammonia is given off: under a hood or outdoors", source: "commonPractice" },
  { of: "organic", element: "C", text: "carbon monoxide and smoke are given off: under a hood or outdoors", source: "commonPractice" },
  { of: "cyanide", text: "cyanides must not be ignited: poison fumes", source: "commonPractice" },
  { of: "chlorine", element: "Cl", text: "chlorides give off hydrogen chloride: under a hood or outdoors", source: "commonPractice" },
  { of: "carbonate", element: "C", text: "carbon dioxide is given off: heat slowly, grains are thrown out", source: "commonPractice" },
];

// What a kiln does beside the firing itself: what forms in air beside the product and is washed out of it.
import type { SourceKey } from "./sources";

/**
 * Chromium fired in air with lime or alkali: some of it becomes chromate, which water takes out. The groups have it as chromate
 * already, and are wanted; with copper and other weak bases no chromate stands such heat.
 */
export const CHROMATE_FROM_FIRE = {
  metal: "Cr",
  name: "chromate",
  with: ["Li", "Na", "K", "Rb", "Cs", "Ca", "Sr", "Ba"],
  wanted: ["chromate", "dichromate"],
  /** Hot water for the washing, times the theory. */
  water: "5",
  /** How the cake is washed, and what it shows. */
  text: "Yellow is chromate (chromium(VI), poisonous, causes cancer): gloves, no dust of the raw cake, and none of the water down the drain",
  source: "commonPractice",
} as const satisfies {
  metal: string;
  name: string;
  with: readonly string[];
  wanted: readonly string[];
  water: string;
  text: string;
  source: SourceKey;
};

/** Lime and its like that a fire leaves free show by their alkali, their carbonates by their gas; cements are alkaline by themselves. */
export const FREE_BASE = {
  metals: ["Ca", "Sr", "Ba"],
  alkaline: ["Ca3SiO5", "Ca2SiO4", "Ca3Al2O6", "CaAl2O4", "Ca12Al14O33", "BaAl2O4", "SrAl2O4", "Sr3Al2O6"],
  source: "commonPractice",
} as const satisfies { metals: readonly string[]; alkaline: readonly string[]; source: SourceKey };

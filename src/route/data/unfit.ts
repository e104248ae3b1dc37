// What chemistry allows and a bench does not: solids that air takes before they are dry, feeds that water takes apart, and what heat
// does only in part or only in a furnace nobody has. Graded by somebody who had not seen the code, from general knowledge.
import type { SourceKey } from "./sources";

/** A substance that is no product or no feed of a step. */
interface UnfitRow {
  readonly formula: string;
  readonly as: "product" | "feed" | "either";
  readonly why: string;
  readonly source: SourceKey;
}

export const UNFIT: readonly UnfitRow[] = [
  { formula: "Fe(OH)2", as: "either", why: "air oxidises it while it is filtered", source: "commonPractice" },
  { formula: "Mn(OH)2", as: "either", why: "air oxidises it while it is filtered", source: "commonPractice" },
  { formula: "FeCO3", as: "either", why: "air oxidises it while it is filtered and dried", source: "commonPractice" },
  { formula: "CaS", as: "feed", why: "water takes it apart slowly and sets hydrogen sulfide free", source: "commonPractice" },
  { formula: "SrS", as: "feed", why: "water takes it apart and sets hydrogen sulfide free", source: "commonPractice" },
  { formula: "BaS", as: "feed", why: "water takes it apart and sets hydrogen sulfide free", source: "commonPractice" },
  { formula: "MgS", as: "feed", why: "water takes it apart and sets hydrogen sulfide free", source: "commonPractice" },
  { formula: "Al2S3", as: "feed", why: "water takes it apart and sets hydrogen sulfide free", source: "commonPractice" },
];

/** A step by heat that nobody takes for a preparation. */
interface UnfitHeatRow {
  readonly from: string;
  readonly to: string;
  readonly why: string;
  readonly source: SourceKey;
}

export const UNFIT_BY_HEAT: readonly UnfitHeatRow[] = [
  { from: "CuO", to: "Cu2O", why: "only above some 1030 °C, and it takes the oxygen back as it cools", source: "commonPractice" },
  { from: "NaNO3", to: "NaNO2", why: "only in part: nitrate, nitrite and oxide stay together", source: "commonPractice" },
  { from: "KNO3", to: "KNO2", why: "only in part: nitrate, nitrite and oxide stay together", source: "commonPractice" },
  { from: "Li2CO3", to: "Li2O", why: "it melts first, is not complete without a vacuum and attacks the crucible", source: "commonPractice" },
  { from: "(NH4)2SO4", to: "NH4HSO4", why: "nothing tells where to stop: letovicite before it, disulfate after it", source: "commonPractice" },
];

// Liquors so sour or so alkaline that skin and eyes do not stand them.
import type { SourceKey } from "./sources";

/** What the regulation takes a mixture for by its pH, where nothing else is known of it. */
export const EXTREME_PH = {
  sour: "2",
  alkaline: "11.5",
  /** By mass of acid or base: of a thinner one skin has little to fear, whatever its pH, for it brings too little of either. */
  from: "1 %",
  burns: "this liquor has a pH of {pH}: taken as corrosive to skin and eyes; goggles, gloves and apron, and rinse splashes off at once with much water",
  harmsEyes: "this liquor has a pH of {pH}: taken as damaging to eyes; goggles and gloves, and rinse splashes out at once with much water",
  irritates: "this liquor has a pH of {pH}: it stings in eyes and on skin; goggles and gloves, and rinse splashes off with much water",
  source: "clpExtremePh",
} as const satisfies {
  readonly sour: string;
  readonly alkaline: string;
  readonly from: string;
  readonly burns: string;
  readonly harmsEyes: string;
  readonly irritates: string;
  readonly source: SourceKey;
};

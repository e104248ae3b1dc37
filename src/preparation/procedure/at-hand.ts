/** Small things at hand for a step, of which no pack of the plan brings any. */
export type AtHand =
  | "cold-water bath"
  | "hot-water bath"
  | "ice"
  | "indicator paper"
  | "baking soda"
  | "strong ammonia"
  | "washing-up liquid"
  | "seed crystals"
  | "drops of alcohol"
  | "activated charcoal"
  | "iron(III) chloride solution"
  | "potassium carbonate"
  | "sodium carbonate"
  | "bright piece of the metal";

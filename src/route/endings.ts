// Outcomes of a trial that end the route, by code; and the words for them on its page.

/** An outcome of a trial that ends the route. */
export type TrialEndCode =
  | "too-little"
  | "stays-clear"
  | "no-gas"
  | "oil-or-other-crop"
  | "not-constant"
  | "liquor-turns-cloudy"
  | "liquor-leaves-nothing";

/** What is seen; of too little the page tells the mass as well. */
export const ENDINGS: Readonly<Record<TrialEndCode, string>> = {
  "too-little": "less than half of the dry product",
  "stays-clear": "the liquor stays clear",
  "no-gas": "no gas",
  "oil-or-other-crop": "an oil, or another crop than the one described",
  "not-constant": "the mass does not become constant",
  "liquor-turns-cloudy": "the filtered liquor turns cloudy",
  "liquor-leaves-nothing": "a drop of it dried on glass leaves hardly anything",
};

/** Part of the expected mass below which a trial has failed. */
export const HALF = 0.5;

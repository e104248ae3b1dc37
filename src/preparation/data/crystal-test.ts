// How a sample of rinsed crystals is tested for a salt that forms beside them, and what may be in them without disturbing the test.
import type { SourceKey } from "./sources";

/** Tests of crystals: by the ion, beside which anions of the product its reagent gives nothing of its own at such thinness. */
export const CRYSTAL_TEST = {
  sample: "1 g",
  water: "100 mL",
  /** As much of that is diluted, to no more than that, in steps of as much where it is to be thinner. */
  taken: "10 mL",
  most: "250 mL",
  step: "100 mL",
  of: [
    { ion: "Cl-", beside: ["NO3-", "NO2-", "HCO3-", "CO3^2-", "SO4^2-", "ClO3-", "ClO4-", "CH3COO-", "HCOO-", "C2O4^2-"] },
    { ion: "SO4^2-", beside: ["NO3-", "NO2-", "HCO3-", "CO3^2-", "Cl-", "Br-", "CH3COO-", "HCOO-"] },
  ],
  source: "commonPractice",
} as const satisfies {
  sample: string;
  water: string;
  taken: string;
  most: string;
  step: string;
  of: readonly { readonly ion: string; readonly beside: readonly string[] }[];
  source: SourceKey;
};

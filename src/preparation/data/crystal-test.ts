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

/** An acid whose acid salts of alkali metals dissolve far less than it does: they crystallise with it, and no rinse takes them out. */
interface AcidSaltRow {
  readonly acid: string;
  /** Anion of the acid salt. */
  readonly anion: string;
  readonly cations: readonly string[];
  readonly source: SourceKey;
}

export const ACID_SALTS: readonly AcidSaltRow[] = [
  { acid: "H2C2O4", anion: "HC2O4-", cations: ["Na+", "K+"], source: "memory" },
  { acid: "C4H6O6", anion: "HC4H4O6-", cations: ["K+"], source: "memory" },
];

/** What tells whether crystals of an acid have such a salt in them, and what frees them of it. */
export const ASH_TEST = {
  test: "1 g of the dry crystals, heated little by little on a clean lid under a hood until nothing smokes, is to leave nothing that turns wet red litmus paper blue",
  again: "crystals that leave some are crystallised from 10 % hydrochloric acid, and then from water",
  source: "commonPractice",
} as const satisfies { test: string; again: string; source: SourceKey };

// The base that takes the acid which a precipitation sets free and which keeps the rest of its product dissolved: a
// hydrogencarbonate, of which a little too much makes the liquor hardly alkaline.
import type { SourceKey } from "./sources";

/** A base of the shelf for a product. */
export interface BaseForAcidRow {
  /** Of a product with this cation it brings no strange ion; undefined for any other. */
  readonly cation?: string;
  readonly formula: string;
  /** What the shelf calls it. */
  readonly called: string;
  readonly source: SourceKey;
}

/** The first row that fits holds. */
export const BASES_FOR_ACID: readonly BaseForAcidRow[] = [
  { cation: "K+", formula: "KHCO3", called: "potassium hydrogencarbonate", source: "commonPractice" },
  { cation: "NH4+", formula: "NH4HCO3", called: "ammonium hydrogencarbonate", source: "commonPractice" },
  { formula: "NaHCO3", called: "baking soda", source: "commonPractice" },
];

/**
 * How the amount is found: in so many steps up to what takes all the acid, the first that is within `nearly` of the most that
 * precipitates; not spoken of where it brings less than `worth` of the theory more, or the liquor is less sour than `soursBelow`.
 */
export const BASE_SEARCH = { steps: 20, nearly: "1 %", worth: "2 %", soursBelow: "4", source: "commonPractice" } as const satisfies {
  steps: number;
  nearly: string;
  worth: string;
  soursBelow: string;
  source: SourceKey;
};

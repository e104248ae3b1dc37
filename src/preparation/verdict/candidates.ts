// What the product of a run may be: what the plan counts on, what air makes of it, the salt without its water.

import type { Formula } from "../../formula";
import { anhydrousOf, crystalWater } from "../../hydrate";
import type { Batch } from "../planning/batch";
import { type Candidate, candidatesLike, changedInAir } from "../reaction/candidates";
import type { Evidence } from "./evidence";
import type { Observed } from "./observations";

/** What air makes of the product, but for what was put in: what is left of that is reported with the materials. */
export const inAirOf = ({ setting: { materials, product } }: Observed): Formula[] =>
  changedInAir(product.formula).filter((formula) => !materials.some(({ form }) => form.hasSameComposition(formula)));

/** The product without its water, which every hydrate may lose. */
export const driedOf = ({ setting: { product } }: Observed): Formula[] =>
  crystalWater(product.formula).waters.n === 0n ? [] : [anhydrousOf(product.formula)];

/** All of them, and which are so by air or only where a test says it. */
export function candidatesOf(observed: Observed, batch: Batch): Pick<Evidence, "candidates" | "inAir" | "onlyByTest"> {
  const more = (formulas: readonly Formula[]) =>
    candidatesLike(formulas, observed.setting.product.formula, batch.product.amount).filter(
      (one) => !batch.candidates.some(({ formula }) => formula === one.formula),
    );
  const [inAir, dried] = [more(inAirOf(observed)), more(driedOf(observed))];
  const names = (list: readonly Candidate[]) => new Set(list.map(({ formula }) => formula));
  return { candidates: [...batch.candidates, ...inAir, ...dried], inAir: names(inAir), onlyByTest: names(dried) };
}

// The crystals that the steps of a batch bring, crop by crop.

import type { Quantity } from "../../quantity";
import type { Batch } from "../planning/batch";
import { exact } from "../planning/exact";
import { MOTHER, POT } from "../procedure/bench";

/** Crops that the steps take: the first, and what boiling its liquor down brings. */
function crops({ steps }: Batch): readonly Quantity[] {
  const isCrop = ({ operation, vessel }: Batch["steps"][number]): boolean =>
    operation === "cool" && (vessel === MOTHER || vessel === POT);
  const last = steps.at(-1)?.after.solids ?? [];
  const again = steps.filter((step) => isCrop(step) && step.vessel === MOTHER).map(({ after }) => after.solids);
  return [last, ...again].map((solids) => solids.reduce<Quantity>((all, { mass }) => all.plus(mass), exact("0 g")));
}

/** All that the steps of a crystallisation bring; undefined where nothing is cooled. */
export function grownBy(batch: Batch): Quantity | undefined {
  const { isolation, product, steps } = batch;
  if (isolation.how !== "crystallise") return undefined;
  const own = steps.at(-1)?.after.solids.find(({ formula }) => formula === product.formula);
  const isCooled = steps.some(({ operation, vessel }) => operation === "cool" && vessel === POT);
  if (own === undefined || !isCooled) return undefined;
  return crops(batch).reduce((sum, one) => sum.plus(one));
}

/** All the crystals that the steps bring, with what crystallises along; undefined where nothing is cooled or it is all of the theory. */
export function crystalsOf(batch: Batch): Quantity | undefined {
  const all = grownBy(batch);
  return all !== undefined && all.compare(batch.product.theoreticalYield) < 0 ? all : undefined;
}

/** Product of another batch that the steps leave with this one: weighed with it, and no yield. */
export const ofOtherBatches = ({ steps }: Pick<Batch, "steps">): Quantity =>
  steps.reduce<Quantity>(
    (all, one) => (one.ofAnotherBatch === undefined ? all : all.plus(one.ofAnotherBatch)),
    exact("0 g"),
  );

/** The same without what is of another batch. */
export function yieldOfSteps(batch: Batch): Quantity | undefined {
  const all = grownBy(batch)?.minus(ofOtherBatches(batch)).to("g");
  return all !== undefined && all.compare(batch.product.theoreticalYield) < 0 ? all : undefined;
}

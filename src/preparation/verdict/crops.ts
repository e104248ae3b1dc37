// What the steps of a batch bring where that is less than the theory: crystals, crop by crop, and what of a precipitate the equilibrium
// of its liquor lets go.

import type { Quantity } from "../../quantity";
import type { Batch } from "../planning/batch";
import { exact, lessThanAll, planned } from "../planning/exact";
import { POT } from "../procedure/bench";
import { isAtEquilibrium } from "../procedure/completeness";
import { isSecondCrop } from "../procedure/step";
import type { Candidate } from "../reaction/candidates";

type Grown = Pick<Batch, "isolation" | "product" | "steps">;

/** Crops that the steps take: the first, and what boiling its liquor down brings. */
function crops({ steps }: Grown): readonly Quantity[] {
  const last = steps.at(-1)?.after.solids ?? [];
  const again = steps.filter(isSecondCrop).map(({ after }) => after.solids);
  return [last, ...again].map((solids) => solids.reduce<Quantity>((all, { mass }) => all.plus(mass), exact("0 g")));
}

/** All that the steps of a crystallisation bring; undefined where nothing is cooled. */
export function grownBy(batch: Grown): Quantity | undefined {
  const { isolation, product, steps } = batch;
  if (isolation.how !== "crystallise") return undefined;
  const own = steps.at(-1)?.after.solids.find(({ formula }) => formula === product.formula);
  const isCooled = steps.some(({ operation, vessel }) => operation === "cool" && vessel === POT);
  if (own === undefined || !isCooled) return undefined;
  return crops(batch).reduce((sum, one) => sum.plus(one));
}

/** Crystals of the wanted form that the first cooling brings, without those of another batch; undefined where the steps do not say. */
export function firstCropOf(batch: Grown): Quantity | undefined {
  if (batch.isolation.how !== "crystallise") return undefined;
  const own = batch.steps.at(-1)?.after.solids.find(({ formula }) => formula === batch.product.formula)?.mass;
  return own?.minus(ofOtherBatches(batch)).to("g");
}

/** Are two formulas, as they are printed, the same salt with any water? */
export const isSameSalt = (one: string, other: string): boolean => one.split("·")[0] === other.split("·")[0];

/** What a candidate weighs: of another hydrate so much of its theory as the crystals are of theirs, for the liquor keeps the same salt. */
export function massInCrop(
  { product }: Pick<Batch, "product">,
  { formula, theoreticalYield }: Pick<Candidate, "formula" | "theoreticalYield">,
  crop: Quantity | undefined,
): Quantity {
  const theory = product.theoreticalYield;
  return crop === undefined || crop.compare(theory) >= 0 || !isSameSalt(formula, product.formula)
    ? theoreticalYield
    : theoreticalYield.times(crop).dividedBy(theory).to("g");
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
export function yieldOfSteps(batch: Grown): Quantity | undefined {
  const all = grownBy(batch)?.minus(ofOtherBatches(batch)).to("g");
  return all !== undefined && all.compare(batch.product.theoreticalYield) < 0 ? all : undefined;
}

/**
 * The part of a precipitate that its liquor lets go, where the equilibrium keeps more than handling takes; undefined where it is nearly
 * all, where another solid stands beside it, or where no constant of its own tells.
 */
export function precipitatedOf(batch: Batch): Quantity | undefined {
  const { completeness, isolation, product, steps } = batch;
  if (isolation.how !== "precipitate" || !isAtEquilibrium(completeness)) return undefined;
  const solids = steps.at(-1)?.after.solids ?? [];
  const own = solids.find(({ formula }) => formula === product.formula)?.mass;
  const others = solids.filter(({ formula }) => formula !== product.formula);
  const little = product.theoreticalYield.times(planned("worthAWord"));
  if (own === undefined || others.some(({ mass }) => mass.compare(little) > 0)) return undefined;
  const most = product.theoreticalYield.times(lessThanAll(planned("handlingLoss")));
  return own.compare(most) < 0 ? own : undefined;
}

/** What the steps bring where that is less than the theory: undefined where it is all of it, or nobody knows. */
export const broughtBySteps = (batch: Batch): Quantity | undefined => crystalsOf(batch) ?? precipitatedOf(batch);

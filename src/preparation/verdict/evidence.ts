// Figures and words that every explanation of a dry mass uses: what a difference must be to count, what losses explain.
import type { Quantity } from "../../quantity";
import { asMassOfWater } from "../exact";
import { keptByWater } from "../fate";
import type { Evidence } from "./verdict";

/** Standard uncertainties a difference must exceed to be called one (coverage factor 2, JCGM 100:2008, 6.3.3). */
export const COVERAGE = 2;

export const grams = (q: Quantity): string => q.to("g").format({ significant: 3, uncertainty: "none" });
export const percent = (q: Quantity, figures = 3): string =>
  q.to("%").format({ significant: figures, uncertainty: "none" });

/** Is a above b by more than twice the uncertainty of their difference? */
export function clearlyAbove(a: Quantity, b: Quantity): boolean {
  const difference = a.minus(b);
  if (!difference.isPositive()) return false;
  return difference.value.greaterThan(difference.standardUncertainty?.times(COVERAGE) ?? 0);
}

/** Is the balance too coarse for this mass to say anything? */
export const isTooCoarse = (dry: Quantity): boolean =>
  dry.standardUncertainty?.times(COVERAGE).greaterThan(dry.value.times("0.05")) ?? false;

/** What stays in the liquor: from the filtrate that was measured, else from the washing as planned. */
function keptByLiquor({ batch, observed }: Evidence): Quantity | undefined {
  const { product, temperature } = observed.setting;
  const volume = observed.filtrateVolume;
  if (volume !== undefined) {
    return keptByWater(product.formula, asMassOfWater(volume), temperature);
  }
  const washed = batch.washing !== undefined && "plan" in batch.washing ? batch.washing.plan.productLost : undefined;
  const completeness = batch.completeness;
  const inLiquor = completeness !== undefined && "dissolved" in completeness ? completeness.dissolved : undefined;
  if (washed === undefined || inLiquor === undefined) return washed ?? inLiquor;
  return washed.plus(inLiquor);
}

/** The least dry mass that solubility and handling explain. */
export function leastExplained(evidence: Evidence): { least: Quantity; kept: Quantity | undefined } {
  const { theoreticalYield } = evidence.batch.product;
  const kept = keptByLiquor(evidence);
  const afterHandling = theoreticalYield.minus(theoreticalYield.times(evidence.handlingLoss));
  return { least: kept === undefined ? afterHandling : afterHandling.minus(kept), kept };
}

// When a difference between two masses counts, and how both are written.
import type { Quantity } from "../../quantity";

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

// When a difference between two masses counts, how likely one is, and how shares are written.

import type { Quantity } from "../../quantity";
import { inPlainNumbers, nodeOf } from "../../quantity/internal";
import { BELIEFS, type BeliefName } from "../data/beliefs";
import { planned } from "../planning/exact";

/** Standard uncertainties a difference must exceed to be called one (coverage factor 2, JCGM 100:2008, 6.3.3). */
export const COVERAGE = 2;

export const percent = (q: Quantity, figures = 3): string =>
  q.to("%").format({ significant: figures, uncertainty: "none" });

/** Is a above b by more than twice the uncertainty of their difference? */
export function clearlyAbove(a: Quantity, b: Quantity): boolean {
  const difference = a.minus(b);
  if (!difference.isPositive()) return false;
  const { value, u } = inPlainNumbers(nodeOf(difference));
  return value > COVERAGE * u;
}

/** Standard uncertainties by which a is above b; nothing where it is not. */
function above(a: Quantity, b: Quantity): number {
  const difference = a.minus(b);
  if (!difference.isPositive()) return 0;
  const { value, u } = inPlainNumbers(nodeOf(difference));
  return value / u;
}

/** Above the rounding of plain numbers. */
const SURELY = 1 + 1e-9;

/**
 * Is a mass so far below another less a third that figures exclude it, whatever the three have in common? No sum is less certain than
 * its terms together, and those are known where the sum would have to be traced anew.
 */
export function isFarBelow(found: Quantity, whole: Quantity, less: Quantity): boolean {
  const [own, all, gone] = [found, whole, less].map((one) => inPlainNumbers(nodeOf(one))) as [Plain, Plain, Plain];
  return all.value - gone.value - own.value > COVERAGE * SURELY * (own.u + all.u + gone.u);
}
type Plain = ReturnType<typeof inPlainNumbers>;

/** Normal density at so many standard uncertainties, as a part of that at its top. */
export const likelihoodAt = (z: number): number => Math.exp((-z * z) / 2);

/**
 * Likelihood of what was found, of an explanation that allows everything from the least to the most: its unknown is taken where it
 * fits best, so that it is 1 within, and falls as the normal density outside.
 */
export function likelihoodWithin(found: Quantity, least: Quantity, most: Quantity): number {
  return likelihoodAt(found.compare(most) > 0 ? above(found, most) : above(least, found));
}

/** Likelihood of a figure where another one is to be expected. */
export const likelihoodOf = (found: Quantity, expected: Quantity): number =>
  likelihoodWithin(found, expected, expected);

/** Below this the figures exclude an explanation: two standard uncertainties. */
export const EXCLUDED = /* @__PURE__ */ likelihoodAt(COVERAGE);

/** A belief of the table. */
export const belief = (name: BeliefName): number => BELIEFS[name].value;

/** Is the balance too coarse for this mass to say anything? */
export const isTooCoarse = (dry: Quantity): boolean =>
  dry.standardUncertainty?.times(COVERAGE).greaterThan(dry.times(planned("tooCoarse")).in(dry.unit)) ?? false;

// What a pack has besides and nobody knows, in a mass that was fired: it may have been water that left, or it stays.
import type { Quantity } from "../../quantity";
import { belief, clearlyAbove, percent } from "./difference";
import { type Evidence, mayLeaveFire, mostExplained, usuallyWaterInFire } from "./evidence";
import type { Finding } from "./finding";

/** More is missing than handling takes, and what the pack has besides was water that left; nothing in a mass that is fired without it. */
export function leftAsWater(evidence: Evidence, lost: Quantity): Finding | undefined {
  const { expected, grams, handlingLoss } = evidence;
  const may = mayLeaveFire(evidence);
  const left = lost.minus(expected.plus(may).times(handlingLoss)).to("g");
  if (!may.isPositive() || !clearlyAbove(lost, lost.minus(left))) return undefined;
  return {
    code: "loss-explained",
    text: `${grams(lost)} is missing: of the ${grams(may)} that the pack contains besides ${grams(left)} and more was water or something else that heat drives out, if no more than ${percent(handlingLoss, 2)} was lost in handling`,
    mass: lost,
    figure: left.dividedBy(may).to("%"),
    likelihood: undefined,
    weight: belief("handling"),
    next: "dry a weighed sample of the pack: what it loses is its water",
  };
}

/** How much of what the pack has besides must be no water for a mass to fit; undefined where it fits without. */
export function onlyWithoutWater(evidence: Evidence): Quantity | undefined {
  const { dry } = evidence;
  const water = usuallyWaterInFire(evidence);
  const fits = mostExplained(evidence).minus(water);
  return water.isPositive() && clearlyAbove(dry, fits) ? dry.minus(fits).to("g") : undefined;
}

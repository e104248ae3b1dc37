// More crystals than the liquor can give by the steps, and less than the theory: they are wet, or the liquor was boiled or cooled
// further than the sheet says. What was recorded of the liquor goes before what the sheet says of it.

import type { Quantity } from "../../quantity";
import { asVolumeOfWater, exact } from "../planning/exact";
import { saltsInCrop } from "./along";
import { broughtBySteps, crystalsOf, precipitatedOf } from "./crops";
import { belief, clearlyAbove } from "./difference";
import { afterLosses, type Evidence, keptAtTheFilter, onHotFilter } from "./evidence";
import type { Finding } from "./finding";
import { doubted, tooMuch } from "./heavy";
import { isOffPure } from "./titrated";

/**
 * What the steps bring in crystals, as long as nothing is recorded of the liquor itself: its volume, or crops one by one, of which the
 * later ones are boiled for as far as anybody likes.
 */
const givenBy = ({ batch, observed }: Evidence): Quantity | undefined =>
  observed.filtrateVolume !== undefined || observed.crops > 1 ? undefined : broughtBySteps(batch);

/** Clearly more than the liquor gives by the steps, its water and its solubility as uncertain as they are. */
export function isRich(evidence: Evidence): boolean {
  const given = givenBy(evidence);
  if (given === undefined) return false;
  const theory = evidence.batch.product.theoreticalYield;
  const most = theory.minus(doubted(theory.minus(given), "keptDoubt"));
  return clearlyAbove(evidence.dry, afterLosses(evidence, most));
}

/** More of a precipitate than its liquor lets go: the cake's own water and salts, another solid, or less liquor than planned. */
function tooMuchPrecipitate(evidence: Evidence, given: Quantity): Finding[] {
  const { batch, dry, expected, grams } = evidence;
  const crop = afterLosses(evidence, given);
  const over = dry.minus(crop).to("g");
  const kept = expected.minus(dry).to("g");
  return [
    ...tooMuch({ ...evidence, expected: crop }),
    {
      code: "boiled-further",
      text: `${grams(dry)} is ${grams(over)} more than the ${grams(crop)} that precipitates at the equilibrium of the liquor as planned: so little as the missing ${grams(kept)} of ${batch.product.formula} stays dissolved only in less of it, or in a colder or another one`,
      mass: over,
      figure: undefined,
      likelihood: undefined,
      weight: belief("boiledFurther"),
      next: "measure the filtrate (filtrateVolume) and its pH, and ignite or titrate a weighed sample",
    },
  ];
}

/** What it may mean, in the order of belief. */
export function tooRich(evidence: Evidence): Finding[] {
  const part = precipitatedOf(evidence.batch);
  if (part !== undefined) return tooMuchPrecipitate(evidence, part);
  const { batch, dry, dryness, expected, grams, identity, observed } = evidence;
  const { isolation, product } = batch;
  const given = crystalsOf(batch);
  if (given === undefined || isolation.how !== "crystallise") return [];
  const crop = afterLosses(evidence, given);
  const over = dry.minus(crop).to("g");
  // Nothing is wet that stands still, or that a test finds pure.
  const isPure = observed.assay !== undefined && !isOffPure(evidence);
  const isDry = dryness.constant === true || isPure || identity?.remaining[0] === product.formula;
  const left = expected.minus(dry).minus(onHotFilter(evidence)).to("g");
  const kept = asVolumeOfWater(left.dividedBy(keptAtTheFilter(evidence, isolation)).times(exact("100 g")).to("g"));
  // more than all of it crystallises from no liquor
  const further: Finding[] = left.isPositive() ? [boiledFurther(evidence, left, kept)] : [];
  return [
    {
      code: "wet",
      text: `${grams(dry)} is ${grams(over)} more than the ${grams(crop)} that the liquor gives by the steps: so much water left in it would explain it${dryness.constant === true ? ", but it is at constant mass" : ""}`,
      mass: over,
      figure: over.dividedBy(dry).to("%"),
      likelihood: undefined,
      weight: belief(isDry ? "wetAtConstantMass" : "wet"),
      next: "dry again to constant mass",
    },
    ...further,
    ...saltsInCrop(evidence, over),
  ];
}

/** The liquor kept less than the steps leave it. */
const boiledFurther = ({ grams }: Evidence, left: Quantity, kept: Quantity): Finding => ({
  code: "boiled-further",
  text: `so much crystallises if the liquor was boiled down or cooled further than the steps say: about ${kept.format({ significant: 2, uncertainty: "none" })} of mother liquor keeps the ${grams(left)} that is missing`,
  mass: left as Quantity<"mass">,
  figure: kept,
  likelihood: undefined,
  weight: belief("boiledFurther"),
  next: "measure the mother liquor and record it (filtrateVolume), with the temperature at the filter",
});

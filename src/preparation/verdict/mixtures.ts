// Two solids together, where no single one fits: their shares by the ignition or the titration of a sample, held against the mass; by
// the mass alone the range that losses allow.
import { type Quantity, quantity } from "../../quantity";
import type { SampleMixture } from "../identity/mixtures";
import { exact, lessThanAll, planned } from "../planning/exact";
import { nextByFire } from "./by-fire";
import { belief, EXCLUDED, likelihoodAt, likelihoodWithin, percent } from "./difference";
import { afterLosses, type Evidence, leastExplained } from "./evidence";
import type { Finding } from "./finding";
import { isWideAndLight } from "./other-forms";
import type { Standing } from "./seen";
import { isApart, isOffPure } from "./titrated";

/** The part of the theory that is there, if the first makes up this share of the mass: each gram counts by its own theory. */
const yieldOf = (dry: Quantity, share: Quantity, one: Quantity, other: Quantity): Quantity =>
  dry.times(share.dividedBy(one).plus(lessThanAll(share).dividedBy(other)));

const NEXT = "wash and dry one half again, and ignite or titrate it: a mixture keeps its shares, water and salts go";

/** Shares that ignition tells, and with them the yield. */
function byIgnition(evidence: Evidence, least: Quantity): Finding[] {
  const { batch, dry, expected, grams, identity } = evidence;
  if (identity === undefined) return [];
  // Where a single solid does, two are as good and asked for by nothing.
  const expects = belief(identity.verdict === "none fits" ? "mixtureTested" : "mixtureBesideOne");
  const theoryOf = (formula: string): Quantity | undefined => {
    const theory = evidence.candidates.find((one) => one.formula === formula)?.theoreticalYield;
    return theory === undefined ? undefined : afterLosses(evidence, theory);
  };
  const wanted = batch.product.formula;
  return identity.mixtures.flatMap((mixture: SampleMixture): Finding[] => {
    const [name, partner] = mixture.formulas;
    if (mixture.kind !== "two solids" || !mixture.formulas.includes(wanted)) return [];
    // A small part is what another sample would not have.
    const small = mixture.share.compare(lessThanAll(mixture.share)) < 0 ? mixture.share : lessThanAll(mixture.share);
    if (small.compare(planned("smallPart")) < 0) return [];
    const [one, other] = [theoryOf(name!), theoryOf(partner!)];
    if (one === undefined || other === undefined) return [];
    const part = yieldOf(dry, mixture.share, one, other);
    const byMass = likelihoodWithin(part, least.dividedBy(expected), exact("1"));
    const likelihood = byMass * likelihoodAt(mixture.off ?? 0);
    if (likelihood < EXCLUDED) return [];
    return [
      {
        code: "mixture-fits",
        text: `${grams(dry)} is ${percent(part)} of the theory for ${mixture.text}, as ignition finds`,
        mass: dry.times(mixture.share).to("g") as Quantity<"mass">,
        figure: part.to("%"),
        likelihood,
        weight: likelihood * expects,
        next: nextByFire(evidence, NEXT),
      },
    ];
  });
}

/** The share of the wanted solid beside another of the same metal, by what a titration of the metal found. */
function byTitration(evidence: Evidence, least: Quantity): Finding[] {
  const { batch, dry, expected, grams, observed } = evidence;
  const { assay } = observed;
  if (assay === undefined || !isApart(assay)) return [];
  const expects = belief(isOffPure(evidence) ? "mixture" : "mixtureBesideOne");
  const own = afterLosses(evidence, batch.product.theoreticalYield);
  return evidence.candidates.flatMap(({ formula, wanted, theoreticalYield }): Finding[] => {
    if (wanted) return [];
    const other = afterLosses(evidence, theoreticalYield);
    // The other solid counts as so much of the product by its metal.
    const counts = own.dividedBy(other);
    const share = assay.minus(counts).dividedBy(lessThanAll(counts)).to("%");
    if (!isPart(share)) return [];
    const part = yieldOf(dry, share, own, other);
    const likelihood = likelihoodWithin(part, least.dividedBy(expected), exact("1"));
    if (likelihood < EXCLUDED) return [];
    return [
      {
        code: "mixture-fits",
        text: `the titration would find the same in ${percent(share, 2)} of ${batch.product.formula} with ${formula}: ${grams(dry)} of that is ${percent(part)} of the theory`,
        mass: dry.times(share).to("g") as Quantity<"mass">,
        figure: part.to("%"),
        likelihood,
        weight: likelihood * expects,
        next: nextByFire(evidence, NEXT),
      },
    ];
  });
}

/** A share that is neither nothing nor all; how sure that is says the weight. */
const isPart = (share: Quantity): boolean => share.isPositive() && lessThanAll(share).isPositive();

/** What the mass alone allows, where no share of nothing or all of it does: as much as brings it from the least of the theory to all. */
function byMass(evidence: Evidence, least: Quantity): Finding[] {
  const { batch, dry, expected, grams } = evidence;
  const own = afterLosses(evidence, batch.product.theoreticalYield);
  return evidence.candidates.flatMap(({ formula, wanted, theoreticalYield }): Finding[] => {
    if (wanted || evidence.onlyByTest.has(formula)) return [];
    const other = afterLosses(evidence, theoreticalYield);
    const [kept, all] = [least.dividedBy(expected), exact("1")];
    // dry = yield × own × other / (share × own + (1 - share) × other), solved for the share of the other.
    const shareAt = (part: Quantity): number =>
      own.times(part).dividedBy(dry).minus(all).dividedBy(own.dividedBy(other).minus(all)).toNumber("");
    const ends = [shareAt(kept), shareAt(all)].sort((a, b) => a - b);
    // Beyond either end one of the two alone would do.
    if (!ends.every(Number.isFinite) || ends[0]! <= 0 || ends[1]! >= 1) return [];
    const shown = ends.map((end) => `${Math.round(100 * end)}`);
    return [
      {
        code: "mixture-fits",
        text: `${grams(dry)} is what ${batch.product.formula} with ${shown[0]} to ${shown[1]} % of ${formula} would give`,
        mass: theoreticalYield,
        figure: quantity({ value: (100 * ends[0]!).toPrecision(3), unit: "%" }),
        likelihood: 1,
        weight: belief(isWideAndLight(evidence) ? "otherFormOfLight" : "mixture"),
        next: nextByFire(
          evidence,
          `${evidence.dryness.constant === true ? "" : "dry to constant mass, then "}ignite or titrate a weighed sample: it gives the share`,
        ),
      },
    ];
  });
}

/** Mixtures of two, where no single solid fits all the figures; what tests tell goes before what the mass allows. */
export function mixturesThatFit(evidence: Evidence, standing: Standing): Finding[] {
  const { least } = leastExplained(evidence);
  const tested = [...byIgnition(evidence, least), ...byTitration(evidence, least)];
  const isTested = evidence.identity !== undefined || isOffPure(evidence);
  return isTested || standing === "fits" ? tested : [...tested, ...byMass(evidence, least)];
}

// Another formula in place of the one asked for: what the mass, ignition and titration say of each candidate.

import { list } from "../../foundation/wording";
import type { Quantity } from "../../quantity";
import type { IdentityCandidate } from "../identity/types";
import { exact, lessThanAll, planned } from "../planning/exact";
import { standsInPlace } from "../planning/in-place";
import { type Candidate, isOnBooksOnly } from "../reaction/candidates";
import type { Setting } from "../request/setting";
import { nextByFire } from "./by-fire";
import { isSameSalt, massInCrop } from "./crops";
import {
  belief,
  COVERAGE,
  clearlyAbove,
  EXCLUDED,
  isTooCoarse,
  likelihoodAt,
  likelihoodWithin,
  percent,
} from "./difference";
import {
  afterLosses,
  cropOf,
  type Evidence,
  leastExplained,
  mayLeaveFire,
  othersByFire,
  standsBesideInFire,
  staysInFire,
} from "./evidence";
import type { Finding, FindingCode } from "./finding";
import { assayLikelihood } from "./titrated";

const isMaterial = ({ materials }: Setting, formula: string): boolean =>
  materials.some((material) => material.formName === formula);

/**
 * Did the drying take more than damp or badly drained crystals keep, and come to an end? Then it took crystal water too. It began with
 * the drained crystals where these were weighed and nothing was lost since, else with the first weighing.
 */
export function lostInDrying({ batch, observed, dry, dryness, losses }: Evidence): boolean {
  const isOfCrystals = batch.isolation.how === "crystallise" && losses.length === 0;
  const first = (isOfCrystals ? observed.wetCake : undefined) ?? observed.dried[0];
  if (dryness.constant !== true || first === undefined) return false;
  const damp = planned("dampHolds");
  // A hot filter before the crystals keeps what was left over.
  const filters = batch.steps.filter(({ operation }) => operation === "filter").map(({ after }) => after);
  const cake =
    filters.find(({ solids }) => solids.some(({ formula }) => formula === batch.product.formula)) ?? filters[0];
  const solid = cake?.solids.reduce((all, one) => all.plus(one.mass), exact("0 g"));
  const drained =
    cake === undefined || solid === undefined || batch.isolation.how !== "crystallise"
      ? damp
      : cake.mass.minus(solid).dividedBy(cake.mass).times(planned("poorlyDrained"));
  const most = drained.compare(damp) > 0 ? drained : damp;
  return first.minus(dry).dividedBy(first).compare(most) > 0;
}

/** Share of the product that the liquor kept before crystals lost their water; nothing where they did not. */
function leftInLiquor(evidence: Evidence): Quantity {
  const kept = lostInDrying(evidence) || othersByFire(evidence).length > 0 ? leastExplained(evidence).kept : undefined;
  return kept?.dividedBy(evidence.batch.product.theoreticalYield) ?? exact("0");
}

/** What a candidate weighs in the crystals that the liquor let go. */
const asCrop = (evidence: Evidence, candidate: Pick<Candidate, "formula" | "theoreticalYield">): Quantity =>
  massInCrop(evidence.batch, candidate, cropOf(evidence));

/** Other formulas for the same metal whose theory covers the mass, handling allowed for. */
export function otherFormulas(evidence: Evidence): Finding[] {
  const { batch, grams, handlingLoss, identity, observed } = evidence;
  const isTested = identity !== undefined || observed.assay !== undefined || lostInDrying(evidence);
  const usual = lessThanAll(handlingLoss).minus(leftInLiquor(evidence));
  return evidence.candidates.flatMap((candidate): Finding[] => {
    if (candidate.wanted || (evidence.onlyByTest.has(candidate.formula) && !isTested)) return [];
    const all = afterLosses(evidence, candidate.theoreticalYield).plus(staysInFire(evidence));
    // crystals that weigh more than the crop did not leave in the liquor what the steps say
    const crop = leftInLiquor(evidence).isPositive() ? all : afterLosses(evidence, asCrop(evidence, candidate));
    const isCrop = crop.compare(all) < 0 && !clearlyAbove(evidence.dry, crop);
    const theory = isCrop ? crop : all;
    const byFire = identity?.candidates.find((c) => c.formula === candidate.formula);
    // Water that ignition finds beside the formula is no part of it.
    const dry = byFire?.fits === true ? evidence.dry.times(lessThanAll(byFire.water)).to("g") : evidence.dry;
    const ratio = dry.dividedBy(theory).to("%");
    // Far above in round figures is clearly above: uncertainties are worked out only near the line.
    if (ratio.compare(planned("farAbove")) > 0 && !isTooCoarse(dry)) return [];
    // What ignition identifies is that solid, however much of it was lost.
    const isIdentified = othersByFire(evidence).includes(candidate.formula);
    const least = theory.minus(mayLeaveFire(evidence)).times(isIdentified ? exact("0") : usual);
    const byMass = likelihoodWithin(dry, least, theory);
    if (byMass < EXCLUDED) return [];
    const titrated = assayLikelihood(evidence, candidate.theoreticalYield);
    const share = byFire?.share;
    // What was put in dry and is not done yet is reported with the materials.
    if (batch.isolation.how === "residue" && isMaterial(observed.setting, candidate.formula)) return [];
    const hydrate = isSameSalt(candidate.formula, batch.product.formula);
    const byAssay =
      titrated === undefined ? "" : `; the titration ${titrated >= EXCLUDED ? "agrees" : "contradicts it"}`;
    const byLoss = `${share === undefined ? "" : `; by ignition ${(100 * share).toFixed(0)} % likely`}${byAssay}`;
    const code: FindingCode = hydrate ? "other-hydrate-fits" : "other-formula-fits";
    const { expects, byTests } = expectationOf(evidence, candidate.formula, code, share, titrated);
    const isMade = candidate.formula === standsInPlace(evidence.batch)?.formula;
    const asPlanned = isMade ? ", which is what forms in its place by the equilibrium" : "";
    return [
      {
        code,
        text: `${grams(dry)} is ${percent(ratio)} of ${isCrop ? "what the crop by the steps weighs as" : "the theory for"} ${candidate.formula}${withRest(evidence, theory)}${asPlanned}${byLoss}`,
        mass: candidate.theoreticalYield,
        figure: ratio,
        likelihood: byMass * likelihoodOfTests(byFire) * (titrated ?? 1),
        weight: byMass * byTests * (isMade ? Math.max(expects, belief("fits")) : expects),
        next:
          identity === undefined
            ? nextByFire(
                evidence,
                `${evidence.dryness.constant === true ? "" : "dry to constant mass, then "}ignite a weighed sample: the loss distinguishes the formulas`,
              )
            : "titrate a weighed sample with acid to confirm it",
      },
    ];
  });
}

/** What stays in the crucible beside it, in words; in a mass too small for what the pack has besides, that was water. */
export function withRest(evidence: Evidence, theory: Quantity): string {
  const { grams } = evidence;
  const beside = standsBesideInFire(evidence);
  const rest = staysInFire(evidence).minus(beside);
  const isShort = clearlyAbove(theory.times(lessThanAll(evidence.handlingLoss)), evidence.dry);
  const parts = [
    ...(beside.isPositive() ? [`${grams(beside)} of what was over the need`] : []),
    ...(rest.isPositive()
      ? [`${grams(rest)} of what the pack has besides${isShort ? ", if that is no water" : ""}`]
      : []),
  ];
  return parts.length === 0 ? "" : ` with ${list(parts)}`;
}

/** Likelihood of what ignition and acid found of a sample, if it were this solid. */
const likelihoodOfTests = (byFire: IdentityCandidate | undefined): number =>
  likelihoodAt(byFire?.off.loss ?? 0) * likelihoodAt(byFire?.off.acid ?? 0);

/** What ignition gives of a solid: where it leaves only others, that it is one of them is sure, and the likeliest stands for all. */
function shareByFire(evidence: Evidence, share: number): number {
  if (othersByFire(evidence).length === 0) return share;
  return share / Math.max(...evidence.identity!.candidates.map((one) => one.share));
}

/** What is expected of another solid, and what the tests of a sample leave of it. */
function expectationOf(
  evidence: Evidence,
  formula: string,
  code: FindingCode,
  share: number | undefined,
  titrated: number | undefined,
): { readonly expects: number; readonly byTests: number } {
  if (share !== undefined)
    return evidence.identity?.verdict === "none fits"
      ? { expects: belief("otherwiseByFire"), byTests: 1 }
      : { expects: belief("otherFormByFire"), byTests: Math.max(shareByFire(evidence, share), belief("leastByFire")) };
  if (titrated !== undefined)
    return { expects: belief("otherFormTitrated"), byTests: Math.max(titrated, belief("leastByTitration")) };
  if (isOnBooksOnly(formula)) return { expects: belief("otherFormOnBooks"), byTests: 1 };
  if (evidence.inAir.has(formula)) return { expects: belief("changedInAir"), byTests: 1 };
  const isDriedOut = code === "other-hydrate-fits" && lostInDrying(evidence);
  const usual = isWideAndLight(evidence) ? "otherFormOfLight" : "otherForm";
  return { expects: belief(isDriedOut ? "otherFormDriedOut" : usual), byTests: 1 };
}

/** A mass below what losses explain, where these may be so large that another form is hit by accident. */
export function isWideAndLight(evidence: Evidence): boolean {
  const { handlingLoss } = evidence;
  return handlingLoss.compare(planned("crucibleLoss")) > 0 && leastExplained(evidence).isLight;
}

/** Forms whose theory the mass hits exactly, although handling would explain it too. */
export function exactHits(evidence: Evidence): Finding[] {
  const { batch, dry, grams } = evidence;
  const u = dry.standardUncertainty?.times(COVERAGE) ?? 0;
  return evidence.candidates.flatMap(({ formula, wanted, theoreticalYield }): Finding[] => {
    if (wanted || evidence.onlyByTest.has(formula)) return [];
    const crop = asCrop(evidence, { formula, theoreticalYield });
    const theory = afterLosses(evidence, crop);
    const off = dry.minus(theory).in("g").abs();
    if (off.greaterThan(theory.times(planned("exactHit")).in("g")) && off.greaterThan(u)) return [];
    const titrated = assayLikelihood(evidence, theoreticalYield) ?? 1;
    if (titrated < EXCLUDED) return [];
    const hit = theory.times(planned("exactHit"));
    const likelihood = likelihoodWithin(dry, theory.minus(hit), theory.plus(hit)) * titrated;
    const ratio = dry.dividedBy(theory).to("%");
    const isHydrate = isSameSalt(formula, batch.product.formula);
    return [
      {
        code: isHydrate ? "other-hydrate-fits" : "other-formula-fits",
        text: `${grams(dry)} is also just what ${formula} gives${crop === theoreticalYield ? `: ${percent(ratio)} of its theory` : ` in the crop of the steps: ${percent(ratio)} of that`}`,
        mass: theoreticalYield,
        figure: ratio,
        likelihood,
        weight: likelihood * belief("exactHit") * belief(isTooCoarse(dry) ? "coarseFits" : "fits"),
        next: nextByFire(evidence, "ignite or titrate a weighed sample: the mass alone does not distinguish them"),
      },
    ];
  });
}

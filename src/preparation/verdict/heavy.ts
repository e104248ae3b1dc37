// Explanations of a mass above the theory: another formula, water, salts that were not washed out, starting material that did
// not react.

import { type Formula, molarMass } from "../../formula";
import { type Quantity, quantity } from "../../quantity";
import type { BeliefName } from "../data/beliefs";
import type { PlanningName } from "../data/planning";
import type { IdentityCandidate } from "../identity/types";
import { exact, lessThanAll, planned } from "../planning/exact";
import { kindOfCake } from "../procedure/isolation";
import { isOnBooksOnly } from "../reaction/candidates";
import { isGas } from "../reaction/fluids";
import type { Setting } from "../request/setting";
import { saltsInCrop, secondSolid, variableWater } from "./along";
import { agreement, likelihoodByFire } from "./by-fire";
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
import { afterLosses, atMost, besidesOf, type Evidence, leastExplained, madeInPlace, othersByFire } from "./evidence";
import type { Finding, FindingCode } from "./finding";
import { assayLikelihood, saltsShown, wetCakeSalt } from "./seen";
import { shows } from "./test-outcome";

const isMaterial = ({ materials }: Setting, formula: string): boolean =>
  materials.some((material) => material.formName === formula);

/** Liquor that the drained cake or the drained crystals keep before they are dried. */
function liquorOfCake({ batch: { steps } }: Evidence): Quantity {
  const cake = steps.filter(({ operation }) => ["filter", "wash", "rinse"].includes(operation)).at(-1)?.after;
  return cake === undefined
    ? exact("0 g")
    : cake.solids.reduce<Quantity>((rest, one) => rest.minus(one.mass), cake.mass);
}

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

/** Other formulas for the same metal whose theory covers the mass, handling allowed for. */
export function otherFormulas(evidence: Evidence): Finding[] {
  const { batch, grams, handlingLoss, identity, observed } = evidence;
  const wantedSolid = observed.setting.product.formula;
  const isTested = identity !== undefined || observed.assay !== undefined || lostInDrying(evidence);
  const usual = lessThanAll(handlingLoss).minus(leftInLiquor(evidence));
  return evidence.candidates.flatMap((candidate): Finding[] => {
    if (candidate.wanted || (evidence.onlyByTest.has(candidate.formula) && !isTested)) return [];
    const theory = afterLosses(evidence, candidate.theoreticalYield);
    const byFire = identity?.candidates.find((c) => c.formula === candidate.formula);
    // Water that ignition finds beside the formula is no part of it.
    const dry = byFire?.fits === true ? evidence.dry.times(lessThanAll(byFire.water)).to("g") : evidence.dry;
    const ratio = dry.dividedBy(theory).to("%");
    // Far above in round figures is clearly above: uncertainties are worked out only near the line.
    if (ratio.compare(planned("farAbove")) > 0 && !isTooCoarse(dry)) return [];
    // What ignition identifies is that solid, however much of it was lost.
    const isIdentified = othersByFire(evidence).includes(candidate.formula);
    const byMass = likelihoodWithin(dry, theory.times(isIdentified ? exact("0") : usual), theory);
    if (byMass < EXCLUDED) return [];
    const titrated = assayLikelihood(evidence, candidate.theoreticalYield);
    const share = byFire?.share;
    // What was put in dry and is not done yet is reported with the materials.
    if (batch.isolation.how === "residue" && isMaterial(observed.setting, candidate.formula)) return [];
    const hydrate = candidate.formula.split("·")[0] === wantedSolid.toUnicode().split("·")[0];
    const byAssay =
      titrated === undefined ? "" : `; the titration ${titrated >= EXCLUDED ? "agrees" : "contradicts it"}`;
    const byLoss = `${share === undefined ? "" : `; by ignition ${(100 * share).toFixed(0)} % likely`}${byAssay}`;
    const code: FindingCode = hydrate ? "other-hydrate-fits" : "other-formula-fits";
    const { expects, byTests } = expectationOf(evidence, candidate.formula, code, share, titrated);
    const isMade = candidate.formula === madeInPlace(evidence);
    const asPlanned = isMade ? ", which is what forms in its place by the equilibrium" : "";
    return [
      {
        code,
        text: `${grams(dry)} is ${percent(ratio)} of the theory for ${candidate.formula}${asPlanned}${byLoss}`,
        mass: candidate.theoreticalYield,
        figure: ratio,
        likelihood: byMass * likelihoodOfTests(byFire) * (titrated ?? 1),
        weight: byMass * byTests * (isMade ? Math.max(expects, belief("fits")) : expects),
        next:
          identity === undefined
            ? `${evidence.dryness.constant === true ? "" : "dry to constant mass, then "}ignite a weighed sample: the loss distinguishes the formulas`
            : "titrate a weighed sample with acid to confirm it",
      },
    ];
  });
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
    const theory = afterLosses(evidence, theoreticalYield);
    const off = dry.minus(theory).in("g").abs();
    if (off.greaterThan(theory.times(planned("exactHit")).in("g")) && off.greaterThan(u)) return [];
    const titrated = assayLikelihood(evidence, theoreticalYield) ?? 1;
    if (titrated < EXCLUDED) return [];
    const hit = theory.times(planned("exactHit"));
    const likelihood = likelihoodWithin(dry, theory.minus(hit), theory.plus(hit)) * titrated;
    const ratio = dry.dividedBy(theory).to("%");
    const isHydrate = formula.split("·")[0] === batch.product.formula.split("·")[0];
    return [
      {
        code: isHydrate ? "other-hydrate-fits" : "other-formula-fits",
        text: `${grams(dry)} is also just what ${formula} gives: ${percent(ratio)} of its theory`,
        mass: theoreticalYield,
        figure: ratio,
        likelihood,
        weight: likelihood * belief("exactHit") * belief(isTooCoarse(dry) ? "coarseFits" : "fits"),
        next: "ignite or titrate a weighed sample: the mass alone does not distinguish them",
      },
    ];
  });
}

/** Water or salt that would make up what is too much. */
export function tooMuch(evidence: Evidence): Finding[] {
  const { batch, dry, dryness, expected, grams, observed, identity } = evidence;
  const { formula } = batch.product;
  const over = dry
    .minus(expected.plus(besidesOf(evidence)))
    .to("g")
    .named({ symbol: "m(excess)", label: `mass above what ${formula} can give` });
  const share = over.dividedBy(expected);
  const inBand = share.compare(exact("2 %")) >= 0 && share.compare(exact("25 %")) <= 0;
  const findings: Finding[] = [];
  const heaviest = evidence.candidates.reduce((a, b) => (b.theoreticalYield.compare(a.theoreticalYield) > 0 ? b : a));
  // A loss that was recorded too large makes no mass impossible.
  if (clearlyAbove(dry, heaviest.theoreticalYield)) {
    const beyond = dry.minus(heaviest.theoreticalYield).to("g");
    findings.push({
      code: "too-heavy",
      text: `${grams(dry)} is too heavy for any formula considered: ${grams(over)} more than ${formula} can give${heaviest.wanted ? "" : ` and ${grams(beyond)} more than ${heaviest.formula}`}`,
      mass: over,
      figure: dry.dividedBy(expected).to("%"),
      likelihood: undefined,
      weight: belief("tooHeavy"),
      next: "dry again to constant mass; if it stays, wash one half again and dry that",
    });
  }
  // Ignition that allows the formula tells the water beside it: the two must agree.
  const own = identity?.candidates.find((c) => c.formula === formula && c.fits);
  const isFired = batch.isolation.how === "residue";
  const likelihood = own === undefined || isFired ? undefined : agreement(own.water, over.dividedBy(dry));
  const found =
    own !== undefined && likelihood !== undefined && likelihood >= EXCLUDED
      ? `; ignition finds ${percent(own.water, 2)} of water, as this asks for`
      : "";
  // A gel is at constant mass with water in it.
  const isGel =
    batch.isolation.how === "precipitate" && kindOfCake(observed.setting.product.formula) === "hydroxide gel";
  const keepsWater = isGel && dryness.constant === true && share.compare(planned("dampHolds")) <= 0;
  // Of a cake that was washed until nothing showed, or as often as planned, it is water that nobody dried out, as long as the drained cake keeps so much.
  const isUndried = dryness.constant === undefined && isClean(evidence) && over.compare(liquorOfCake(evidence)) <= 0;
  const usual = keepsWater
    ? "gelWater"
    : dryness.constant === true || isFired
      ? "wetAtConstantMass"
      : inBand || isUndried
        ? "wet"
        : "wetOutside";
  findings.push({
    code: "wet",
    text: `${grams(over)} of water left in it would explain the mass${keepsWater ? ": a gel keeps so much at constant mass" : dryness.constant === true ? ", but it is at constant mass" : ""}${found}`,
    mass: over,
    figure: over.dividedBy(dry).to("%"),
    likelihood,
    weight: found === "" ? belief(usual) : Math.max(belief(usual), likelihood! * belief("wetByFire")),
    next: keepsWater ? "ignite a weighed sample: water goes with the rest" : "dry again to constant mass",
  });
  findings.push(
    ...secondSolid(evidence, over),
    ...unreacted(evidence, over),
    ...inertMatter(evidence, over),
    ...variableWater(evidence),
    ...saltsInCrop(evidence, over),
  );
  const { washing } = batch;
  const isShown = shows(observed.tests.lastWash) === true;
  if (washing !== undefined && "plan" in washing) {
    const { plan, salts } = washing;
    // A wash that still shows salts did not do what is calculated for it: the cake may keep as much as before any.
    const done = isShown ? 0 : (observed.washes ?? 0);
    // Unwashed unless the washes are recorded; the cake's own liquor where it was weighed wet.
    const measured = done === 0 ? wetCakeSalt(evidence) : undefined;
    const most = (measured ??
      (done === 0 ? undefined : plan.residueAfter[Math.min(done, plan.residueAfter.length) - 1]) ??
      plan.residueUnwashed) as Quantity;
    const part = over.dividedBy(most);
    const enough = part.compare(exact("1")) <= 0;
    // What a cake keeps carries the doubt of its class; where it was weighed, that of the water its liquor was made with is left.
    const drained = likelihoodWithin(over, exact("0 g"), measured === undefined ? most : doubted(most, "waterDoubt"));
    // Salts that the last wash shows may be those of a cake that nobody sucked dry.
    const dripping =
      isShown && measured === undefined ? likelihoodWithin(over, exact("0 g"), most.times(planned("dripping"))) : 0;
    const likelihood = Math.max(drained, dripping);
    const state = done === 0 ? "an unwashed cake" : `a cake washed ${done} ${done === 1 ? "time" : "times"}`;
    const names = salts.join(" and ");
    findings.push({
      code: "unwashed",
      text: enough
        ? `${grams(over)} of ${names} would explain it: ${percent(part, 2)} of what ${state} contains`
        : likelihood < EXCLUDED
          ? `salts explain ${atMost(most, grams)} of the ${grams(over)} that are too much, even in ${state}`
          : drained < EXCLUDED
            ? `${grams(over)} of ${names} would explain it, and the last wash still shows them: more than the ${grams(most)} of ${state} by the plan, as one that only dripped may contain`
            : `${grams(over)} of ${names} would explain it, about what ${state} contains: ${grams(most)} by the plan`,
      mass: enough || likelihood >= EXCLUDED ? over : most,
      figure: part.to("%"),
      likelihood,
      weight: Math.max(
        weightOfSalts(shows(observed.tests.lastWash), observed.washes, drained, inBand),
        dripping * belief("saltsSeenDripping"),
      ),
      next: "wash one half again, dry it, and compare",
    });
  }
  // What was seen is never left out, known or not how much it is.
  if (isShown && !findings.some(({ code }) => code === "unwashed")) findings.push(saltsShown("heavy", grams(dry)));
  return findings;
}

/** Was it washed until nothing showed, or untested as often as planned? Crystals drip off what they keep. */
function isClean({ batch: { isolation, washing }, observed: { tests, washes } }: Evidence): boolean {
  const isShown = shows(tests.lastWash);
  if (isShown !== undefined) return !isShown;
  if (isolation.how === "crystallise") return true;
  return washes !== undefined && washing !== undefined && "plan" in washing && washes >= washing.plan.washes;
}

/** A figure with what it may be off, each value within that as likely as the next. */
const doubted = (q: Quantity, doubt: PlanningName): Quantity =>
  q.times(
    quantity({ value: "100", unit: "%", halfWidth: planned(doubt).in("%").toString(), distribution: "rectangular" }),
  );

/** How well salts explain a mass: what the last wash showed and that nothing was washed go before the figures. */
function weightOfSalts(
  seen: boolean | undefined,
  washes: number | undefined,
  likelihood: number,
  inBand: boolean,
): number {
  if (seen === false) return belief("saltsNotSeen");
  const inPart = seen === true ? belief("saltsSeenPart") : belief("unwashed") * belief("inPart");
  const whole = belief(
    seen === true ? "saltsSeen" : washes === 0 ? "neverWashed" : inBand ? "unwashed" : "unwashedOutside",
  );
  return Math.max(inPart, whole * likelihood);
}

/** Starting material that is solid and stays with the product: what is left by the calculation, and what did not react. */
function unreacted(evidence: Evidence, over: Quantity): Finding[] {
  const { batch, dry, grams, observed } = evidence;
  const { materials, wet } = observed.setting;
  if (batch.isolation.how === "crystallise") return [];
  return materials.flatMap(({ form, formName, shelf }, i): Finding[] => {
    const supplied = batch.materialBalance.supplied[i]!;
    const feed = batch.feeds[i]!;
    if (feed.how !== "solid" || feed.dissolves || isGas(form, false)) return [];
    const M = molarMass(form);
    const next = wet
      ? `treat a weighed part with what dissolves ${formName} and not the product, and weigh again`
      : "heat again to constant mass: what has not reacted yet goes on losing mass";
    if (supplied.left.isPositive()) {
      const left = supplied.left.times(M).to("g");
      const part = over.dividedBy(left);
      const enough = part.compare(exact("1")) <= 0;
      const byFire = burntAs(evidence, form, (enough ? over : left).dividedBy(dry));
      return [
        {
          code: "unreacted",
          text: `${grams(left)} of ${shelf.name} is left by the calculation and stays with the product${enough ? `: ${percent(part, 2)} of it would explain the mass` : ", which is not enough to explain the mass"}`,
          mass: left,
          figure: part.to("%"),
          likelihood: likelihoodWithin(over, exact("0 g"), left) * (byFire ?? 1),
          weight: weightByFire("leftOver", byFire) * (enough ? 1 : belief("inPart")),
          next,
        },
      ];
    }
    // Each gram that did not react weighs more than the product it would have given: the rest left, or went into the liquor.
    const whole = supplied.amount.times(M).to("g").minus(batch.product.theoreticalYield);
    if (!supplied.limiting || !whole.isPositive()) return [];
    const part = over.dividedBy(whole);
    if (part.compare(exact("1")) > 0) return [];
    const mass = supplied.amount.times(M).times(part).to("g");
    const byFire = burntAs(evidence, form, mass.dividedBy(dry));
    return [
      {
        code: "unreacted",
        text: `${grams(mass)} of ${shelf.name} that did not react would explain the mass: ${percent(part, 2)} of it`,
        mass,
        figure: part.to("%"),
        likelihood: byFire ?? 1,
        weight: weightByFire(wet ? "notDoneInWater" : "notDone", byFire),
        next,
      },
    ];
  });
}

/** What fire leaves as it is: each gram of it in the pack weighs more than the product of a gram of feed. */
function inertMatter(evidence: Evidence, over: Quantity): Finding[] {
  const { batch, dry, dryness, grams, observed } = evidence;
  const { materials, product } = observed.setting;
  const [material, another] = materials;
  const [supplied] = batch.materialBalance.supplied;
  if (batch.isolation.how !== "residue" || material === undefined || supplied === undefined) return [];
  // A titration of the product says it better.
  if (another !== undefined || observed.assay !== undefined) return [];
  const feed = supplied.amount.times(molarMass(material.form)).to("g");
  const gone = feed.minus(batch.product.theoreticalYield);
  if (!gone.isPositive()) return [];
  const inert = over.times(feed).dividedBy(gone).to("g");
  const share = inert.plus(besidesOf(evidence)).dividedBy(observed.portions[0]!).to("%");
  if (observed.portions[0]!.dimension !== "mass" || share.compare(planned("mostInert")) > 0) return [];
  const byFire = likelihoodByFire(evidence, [{ formula: product.formula, share: lessThanAll(inert.dividedBy(dry)) }]);
  return [
    {
      code: "impure",
      text: `${grams(inert)} of what fire leaves as it is would explain the mass: ${percent(share, 2)} of the ${material.shelf.name}`,
      mass: inert as Quantity<"mass">,
      figure: share,
      likelihood: byFire ?? 1,
      weight:
        byFire === undefined
          ? belief(dryness.constant === true ? "inertAtConstantMass" : "inertInFire")
          : Math.max(byFire * belief("inertByFire"), belief("inertInFire") * belief("leastByFire")),
      next: `titrate a weighed sample, or dissolve one in acid and weigh what stays: it gives the assay of the ${material.shelf.name}`,
    },
  ];
}

/** Likelihood of what ignition found, if this share of the mass were starting material and the rest product. */
const burntAs = (evidence: Evidence, form: Formula, share: Quantity): number | undefined =>
  likelihoodByFire(evidence, [
    { formula: form, share },
    { formula: evidence.observed.setting.product.formula, share: lessThanAll(share) },
  ]);

/** A belief where nothing was ignited; where ignition was to tell, what it says. */
const weightByFire = (usual: BeliefName, byFire: number | undefined): number =>
  byFire === undefined
    ? belief(usual)
    : Math.max(byFire * belief("notDoneByFire"), belief(usual) * belief("leastByFire"));

// Explanations of a mass above the theory: another formula, water, salts that were not washed out, starting material that did
// not react.

import { molarMass } from "../../formula";
import type { Quantity } from "../../quantity";
import { exact, lessThanAll, planned } from "../planning/exact";
import { isGas } from "../reaction/fluids";
import type { Setting } from "../request/setting";
import { COVERAGE, clearlyAbove, grams, percent } from "./difference";
import { afterLosses, type Evidence, leastExplained } from "./evidence";
import type { Finding } from "./finding";
import { assayAgrees, wetCakeSalt } from "./seen";
import { shows } from "./test-outcome";

/** A mass this much over a theory is over it, where the balance is good to a few percent. */
const FAR_ABOVE = "130 %";
const isCoarse = (dry: Quantity): boolean => dry.standardUncertainty?.greaterThan(dry.value.times("0.05")) ?? false;

const isMaterial = ({ materials }: Setting, formula: string): boolean =>
  materials.some((material) => material.formName === formula);

/** Did the drying take more than damp or badly drained crystals keep, and come to an end? Then it took crystal water too. */
export function lostInDrying({ batch, observed: { dried }, dry, dryness }: Evidence): boolean {
  const [first] = dried;
  if (dryness.constant !== true || first === undefined) return false;
  const damp = planned("dampHolds");
  const cake = batch.steps.find(({ operation }) => operation === "filter")?.after;
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
  const kept = lostInDrying(evidence) ? leastExplained(evidence).kept : undefined;
  return kept?.dividedBy(evidence.batch.product.theoreticalYield) ?? exact("0");
}

/** Other formulas for the same metal whose theory covers the mass, handling allowed for. */
export function otherFormulas(evidence: Evidence): Finding[] {
  const { batch, dry, handlingLoss, identity, observed } = evidence;
  const wantedSolid = observed.setting.product.formula;
  const least = lessThanAll(handlingLoss).minus(leftInLiquor(evidence));
  return batch.candidates.flatMap((candidate): Finding[] => {
    if (candidate.wanted) return [];
    const theory = afterLosses(evidence, candidate.theoreticalYield);
    const ratio = dry.dividedBy(theory).to("%");
    // Far above in round figures is clearly above: uncertainties are worked out only near the line.
    if (ratio.compare(exact(FAR_ABOVE)) > 0 && !isCoarse(dry)) return [];
    if (clearlyAbove(dry, theory)) return [];
    if (ratio.compare(least) < 0) return [];
    const titrated = assayAgrees(evidence, candidate.theoreticalYield);
    const share = identity?.candidates.find((c) => c.formula === candidate.formula)?.share;
    // What was put in dry and is not done yet is reported with the materials.
    if (batch.isolation.how === "residue" && isMaterial(observed.setting, candidate.formula)) return [];
    const hydrate = candidate.formula.split("·")[0] === wantedSolid.toUnicode().split("·")[0];
    const byAssay = titrated === undefined ? "" : `; the titration ${titrated ? "agrees" : "contradicts it"}`;
    const byLoss = `${share === undefined ? "" : `; by ignition ${(100 * share).toFixed(0)} % likely`}${byAssay}`;
    return [
      {
        code: hydrate ? "other-hydrate-fits" : "other-formula-fits",
        text: `${grams(dry)} is ${percent(ratio)} of the theory for ${candidate.formula}${byLoss}`,
        mass: candidate.theoreticalYield,
        figure: ratio,
        weight:
          share === undefined
            ? titrated !== undefined
              ? titrated
                ? 0.96
                : 0.2
              : hydrate && lostInDrying(evidence)
                ? 0.9
                : 0.8
            : identity?.verdict === "none fits"
              ? 0.3
              : 0.1 + 0.9 * share,
        next:
          identity === undefined
            ? `${evidence.dryness.constant === true ? "" : "dry to constant mass, then "}ignite a weighed sample: the loss tells the formulas apart`
            : "titrate a weighed sample with acid to confirm it",
      },
    ];
  });
}

/** Forms whose theory the mass hits exactly, although handling would explain it too. */
export function exactHits(evidence: Evidence): Finding[] {
  const { batch, dry } = evidence;
  const u = dry.standardUncertainty?.times(COVERAGE) ?? 0;
  return batch.candidates.flatMap(({ formula, wanted, theoreticalYield }): Finding[] => {
    if (wanted) return [];
    const theory = afterLosses(evidence, theoreticalYield);
    const off = dry.minus(theory).in("g").abs();
    if (off.greaterThan(theory.times(planned("exactHit")).in("g")) && off.greaterThan(u)) return [];
    if (assayAgrees(evidence, theoreticalYield) === false) return [];
    const ratio = dry.dividedBy(theory).to("%");
    const isHydrate = formula.split("·")[0] === batch.product.formula.split("·")[0];
    return [
      {
        code: isHydrate ? "other-hydrate-fits" : "other-formula-fits",
        text: `${grams(dry)} is also just what ${formula} gives: ${percent(ratio)} of its theory`,
        mass: theoreticalYield,
        figure: ratio,
        weight: 0.65,
        next: "ignite or titrate a weighed sample: the mass alone does not tell them apart",
      },
    ];
  });
}

/** Water or salt that would make up what is too much. */
export function tooMuch(evidence: Evidence): Finding[] {
  const { batch, dry, dryness, expected, observed, identity } = evidence;
  const { formula } = batch.product;
  const over = dry
    .minus(expected)
    .to("g")
    .named({ symbol: "m(excess)", label: `mass above what ${formula} can give` });
  const share = over.dividedBy(expected);
  const inBand = share.compare(exact("2 %")) >= 0 && share.compare(exact("25 %")) <= 0;
  const findings: Finding[] = [];
  const heaviest = batch.candidates.reduce((a, b) => (b.theoreticalYield.compare(a.theoreticalYield) > 0 ? b : a));
  // A loss that was recorded too large makes no mass impossible.
  if (clearlyAbove(dry, heaviest.theoreticalYield)) {
    const beyond = dry.minus(heaviest.theoreticalYield).to("g");
    findings.push({
      code: "too-heavy",
      text: `${grams(dry)} is too heavy for any formula considered: ${grams(over)} more than ${formula} can give${heaviest.wanted ? "" : ` and ${grams(beyond)} more than ${heaviest.formula}`}`,
      mass: over,
      figure: dry.dividedBy(expected).to("%"),
      weight: 0.95,
      next: "dry again to constant mass; if it stays, wash one half again and dry that",
    });
  }
  // Ignition that allows the formula tells the water beside it: the two must agree.
  const own = identity?.candidates.find((c) => c.formula === formula && c.fits);
  const water = own?.water.minus(over.dividedBy(dry)).in("%").abs();
  const found = water?.lessThan(planned("sameWater").in("%"))
    ? `; ignition finds ${percent(own!.water, 2)} of water, as this asks for`
    : "";
  findings.push({
    code: "wet",
    text: `${grams(over)} of water left in it would explain the mass${dryness.constant === true ? ", but it is at constant mass" : ""}${found}`,
    mass: over,
    figure: over.dividedBy(dry).to("%"),
    // What comes out of the fire was never wet.
    weight:
      found !== "" ? 0.9 : dryness.constant === true || batch.isolation.how === "residue" ? 0.2 : inBand ? 0.6 : 0.4,
    next: "dry again to constant mass",
  });
  findings.push(...secondSolid(evidence, over), ...unreacted(evidence, over));
  const { washing } = batch;
  if (washing !== undefined && "plan" in washing) {
    const { plan, salts } = washing;
    const done = observed.washes ?? 0;
    // Unwashed unless the washes are recorded; the cake's own liquor where it was weighed wet.
    const measured = wetCakeSalt(evidence);
    const most = (
      done === 0
        ? (measured ?? plan.residueUnwashed)
        : (plan.residueAfter[Math.min(done, plan.residueAfter.length) - 1] ?? plan.residueUnwashed)
    ) as Quantity;
    const part = over.dividedBy(most);
    const enough = part.compare(exact("1")) <= 0;
    const state = done === 0 ? "an unwashed cake" : `a cake washed ${done} times`;
    findings.push({
      code: "unwashed",
      text: enough
        ? `${grams(over)} of ${salts.join(" and ")} would explain it: ${percent(part, 2)} of what ${state} contains`
        : `salts explain at most ${grams(most)} of the ${grams(over)} too much, even in ${state}`,
      mass: enough ? over : most,
      figure: part.to("%"),
      weight: weightOfSalts(shows(observed.tests.lastWash), observed.washes, enough, inBand),
      next: "wash one half again, dry it, and compare",
    });
  }
  return findings;
}

/** How well salts explain a mass: what the last wash showed and that nothing was washed go before the figures. */
function weightOfSalts(
  seen: boolean | undefined,
  washes: number | undefined,
  enough: boolean,
  inBand: boolean,
): number {
  if (seen === false) return 0.05;
  if (!enough) return seen === true ? 0.5 : 0.15;
  if (seen === true) return 0.9;
  return washes === 0 ? 0.85 : inBand ? 0.6 : 0.45;
}

/** A by-product that precipitates with the product is in every cake, and no washing takes it out. */
function secondSolid({ batch }: Evidence, over: Quantity): Finding[] {
  return batch.byProducts
    .filter(({ where }) => where === "with the product")
    .map(({ formula, mass }): Finding => {
      const part = over.dividedBy(mass);
      const fits = part.compare(exact("1.1")) <= 0;
      return {
        code: "second-solid",
        text: `${grams(mass)} of ${formula} precipitates with the product${fits ? `: ${percent(part, 2)} of it is the ${grams(over)} above the theory` : ", which is not enough to explain the mass"}`,
        mass,
        figure: part.to("%"),
        weight: fits ? 0.85 : 0.3,
        next: `titrate or ignite a weighed sample: the share of ${formula} in it tells the yield`,
      };
    });
}

/** Starting material that is solid and stays with the product: what is left by the calculation, and what did not react. */
function unreacted({ batch, observed }: Evidence, over: Quantity): Finding[] {
  const { materials, wet } = observed.setting;
  if (batch.isolation.how === "crystallise") return [];
  return materials.flatMap(({ form, formName, shelf }, i): Finding[] => {
    const supplied = batch.materialBalance.supplied[i]!;
    const feed = batch.feeds[i]!;
    if (feed.how !== "solid" || feed.dissolves || isGas(form, false)) return [];
    const M = molarMass(form);
    const next = wet
      ? `treat a weighed part with what dissolves ${formName} and not the product, and weigh again`
      : "heat again to constant mass: what is not done yet goes on losing";
    if (supplied.left.isPositive()) {
      const left = supplied.left.times(M).to("g");
      const part = over.dividedBy(left);
      const enough = part.compare(exact("1")) <= 0;
      return [
        {
          code: "unreacted",
          text: `${grams(left)} of ${shelf.name} is left by the calculation and stays with the product${enough ? `: ${percent(part, 2)} of it would explain the mass` : ", which is not enough to explain the mass"}`,
          mass: left,
          figure: part.to("%"),
          weight: enough ? 0.7 : 0.2,
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
    return [
      {
        code: "unreacted",
        text: `${grams(mass)} of ${shelf.name} that did not react would explain the mass: ${percent(part, 2)} of it`,
        mass,
        figure: part.to("%"),
        weight: wet ? 0.35 : 0.8,
        next,
      },
    ];
  });
}

// Explanations of a mass above the theory: water, and salts that were not washed out; with what else makes it heavy.

import { parseFormula } from "../../formula";
import { list } from "../../foundation/wording";
import { type Quantity, quantity } from "../../quantity";
import type { PlanningName } from "../data/planning";
import { exact, planned } from "../planning/exact";
import { isGel } from "../procedure/isolation";
import { atMost } from "../procedure/words";
import { withGelWater } from "../reaction/held-water";
import { saltsInCrop, secondSolid, variableWater } from "./along";
import { agreement, nextByFire } from "./by-fire";
import { belief, clearlyAbove, EXCLUDED, likelihoodWithin, percent } from "./difference";
import { besidesOf, type Evidence, mostOfProduct } from "./evidence";
import type { Finding } from "./finding";
import { inertMatter, undissolved, unreacted } from "./not-reacted";
import { saltsShown, wetCakeSalt } from "./seen";
import { shows } from "./test-outcome";

/** Shares of the expected mass between which water or salts are the usual excess (common practice). */
const USUAL_EXCESS = { least: "2 %", most: "25 %" } as const;

/** Liquor that the drained cake or the drained crystals keep before they are dried. */
function liquorOfCake({ batch: { steps } }: Evidence): Quantity {
  const cake = steps.filter(({ operation }) => ["filter", "wash", "rinse"].includes(operation)).at(-1)?.after;
  return cake === undefined
    ? exact("0 g")
    : cake.solids.reduce<Quantity>((rest, one) => rest.minus(one.mass), cake.mass);
}

/** Water or salt that would make up what is too much. */
export function tooMuch(evidence: Evidence): Finding[] {
  const { batch, dry, expected } = evidence;
  const over = dry
    .minus(mostOfProduct(evidence).plus(besidesOf(evidence)))
    .to("g")
    .named({ symbol: "m(excess)", label: `mass above what ${batch.product.formula} can give` });
  const share = over.dividedBy(expected);
  const inBand = share.compare(exact(USUAL_EXCESS.least)) >= 0 && share.compare(exact(USUAL_EXCESS.most)) <= 0;
  return [
    ...tooHeavy(evidence, over),
    wet(evidence, over, inBand),
    ...secondSolid(evidence, over),
    ...unreacted(evidence, over),
    ...inertMatter(evidence, over),
    ...undissolved(evidence, over),
    ...variableWater(evidence),
    ...unwashed(evidence, over, inBand),
  ];
}

/** Too heavy for every formula considered. */
function tooHeavy(evidence: Evidence, over: Quantity): Finding[] {
  const { batch, candidates, dry, expected, grams } = evidence;
  const { formula } = batch.product;
  const heaviest = candidates.reduce((a, b) => (b.theoreticalYield.compare(a.theoreticalYield) > 0 ? b : a));
  // A loss that was recorded too large makes no mass impossible, and water that no formula fixes is expected.
  if (!clearlyAbove(dry, heaviest.theoreticalYield) || isWithWater(evidence)) return [];
  const beyond = dry.minus(heaviest.theoreticalYield).to("g");
  return [
    {
      code: "too-heavy",
      text: `${grams(dry)} is too heavy for any formula considered: ${grams(over)} more than ${formula} can give${heaviest.wanted ? "" : ` and ${grams(beyond)} more than ${heaviest.formula}`}`,
      mass: over,
      figure: dry.dividedBy(expected).to("%"),
      likelihood: undefined,
      weight: belief("tooHeavy"),
      next:
        batch.isolation.how === "residue"
          ? "heat again to constant mass; if it stays, titrate a weighed sample of it and of what was fired"
          : "dry again to constant mass; if it stays, wash one half again and dry that",
    },
  ];
}

/** Is it no heavier than a gel is at constant mass? */
const isAsGel = ({ batch, dry, expected }: Evidence): boolean =>
  batch.isolation.how === "precipitate" &&
  isGel(parseFormula(batch.product.formula)) &&
  dry.compare(withGelWater(expected)) <= 0;

/** Does it weigh no more than the product with the water that it keeps and no formula fixes? */
const isWithWater = (evidence: Evidence): boolean => isAsGel(evidence) || variableWater(evidence).length > 0;

/** Water that is left in it. */
function wet(evidence: Evidence, over: Quantity, inBand: boolean): Finding {
  const { batch, dry, dryness, expected, grams, identity } = evidence;
  const { formula } = batch.product;
  // Ignition that allows the formula tells the water beside it: the two must agree.
  const own = identity?.candidates.find((c) => c.formula === formula && c.fits);
  const isFired = batch.isolation.how === "residue";
  const likelihood = own === undefined || isFired ? undefined : agreement(own.water, over.dividedBy(dry));
  const found =
    own !== undefined && likelihood !== undefined && likelihood >= EXCLUDED
      ? `; ignition finds ${percent(own.water, 2)} of water, as this asks for`
      : "";
  // A gel is at constant mass with water in it.
  const isGelWater = isAsGel(evidence);
  const keepsWater =
    isGelWater && dryness.constant === true && over.dividedBy(expected).compare(planned("dampHolds")) <= 0;
  // Of a cake that was washed until nothing showed, or as often as planned, it is water that nobody dried out, as long as the drained cake keeps so much.
  const isUndried = dryness.constant === undefined && isClean(evidence) && over.compare(liquorOfCake(evidence)) <= 0;
  const usual = keepsWater
    ? "gelWater"
    : dryness.constant === true || isFired
      ? "wetAtConstantMass"
      : inBand || isUndried
        ? "wet"
        : "wetOutside";
  return {
    code: "wet",
    text: `${grams(over)} of water left in it would explain the mass${keepsWater || (isGelWater && dryness.constant === undefined) ? ": a gel keeps so much at constant mass" : dryness.constant === true ? ", but it is at constant mass" : ""}${found}`,
    mass: over,
    figure: over.dividedBy(dry).to("%"),
    likelihood,
    weight: found === "" ? belief(usual) : Math.max(belief(usual), likelihood! * belief("wetByFire")),
    next: keepsWater
      ? nextByFire(evidence, "ignite a weighed sample: water goes with the rest")
      : "dry again to constant mass",
  };
}

/** Salts that were not washed out. What was seen is never left out, known or not how much it is. */
function unwashed(evidence: Evidence, over: Quantity, inBand: boolean): Finding[] {
  const inCrop = saltsInCrop(evidence, over);
  const inCake = saltsInCake(evidence, over, inBand);
  const isShown = shows(evidence.observed.tests.lastWash) === true;
  return inCrop.length + inCake.length === 0 && isShown
    ? [saltsShown("heavy", evidence.grams(evidence.dry))]
    : [...inCrop, ...inCake];
}

/** Salts that the washes left in a cake, by the plan of its washes or its mass before drying. */
function saltsInCake(evidence: Evidence, over: Quantity, inBand: boolean): Finding[] {
  const { batch, grams, observed } = evidence;
  const { washing } = batch;
  if (washing === undefined || !("plan" in washing)) return [];
  const isShown = shows(observed.tests.lastWash) === true;
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
  const names = list(salts);
  return [
    {
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
    },
  ];
}

/** Was it washed until nothing showed, or untested as often as planned? Crystals drip off what they keep. */
function isClean({ batch: { isolation, washing }, observed: { tests, washes } }: Evidence): boolean {
  const isShown = shows(tests.lastWash);
  if (isShown !== undefined) return !isShown;
  if (isolation.how === "crystallise") return true;
  return washes !== undefined && washing !== undefined && "plan" in washing && washes >= washing.plan.washes;
}

/** A figure with what it may be off, each value within that as likely as the next. */
export const doubted = (q: Quantity, doubt: PlanningName): Quantity =>
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

// What was seen and not only weighed: spills, drops of reagent in filtrate and last wash. What is seen goes before what a mass
// may mean.

import { list } from "../../foundation/wording";
import type { Quantity } from "../../quantity";
import { asVolumeOfWater, exact, planned } from "../planning/exact";
import { kindOf } from "../procedure/kind";
import { rolesOf } from "../procedure/roles";
import { keyElement } from "../reaction/candidates";
import { belief, clearlyAbove, percent } from "./difference";
import { type Evidence, leastExplained } from "./evidence";
import type { Finding } from "./finding";
import { shows } from "./test-outcome";

/** Where a dry mass stands: above what can be, below what losses explain, or between. */
export type Standing = "heavy" | "fits" | "light";

/** Product that was lost on the way, where it is worth a word. */
export function spilled(evidence: Evidence, standing: Standing, wouldBeLight: boolean): Finding[] {
  const { batch, dry, grams, handlingLoss, losses, expected } = evidence;
  const theory = batch.product.theoreticalYield;
  const gone = theory.minus(expected).to("g");
  const share = gone.dividedBy(theory);
  if (losses.length === 0 || share.compare(planned("worthAWord")) < 0) return [];
  // In the order of the words, so that the order of the record changes nothing.
  const what = losses.map(({ text }) => text).sort();
  // More than any handling takes of what there was to collect is the news of the run: a liquor keeps its part before anything is spilled.
  const { kept } = leastExplained(evidence);
  const there = kept === undefined ? theory : theory.minus(kept);
  const surely = losses.reduce<Quantity>((all, { atLeast }) => all.plus(atLeast), exact("0 g"));
  const isNews = wouldBeLight || surely.compare(there.times(handlingLoss)) > 0;
  // What would be no surprise without the loss says of the loss that it was smaller.
  const isOverstated = standing === "heavy" && !clearlyAbove(dry, theory);
  const then = {
    heavy: `but more than the ${grams(expected)} left was weighed: less was lost, or it is not dry and clean`,
    fits: `${grams(expected)} was left to collect`,
    light: `${grams(expected)} was left to collect, which does not explain the mass`,
  }[standing];
  return [
    {
      code: "spilled",
      text: `${what.join("; ")}; ${then}`,
      mass: gone,
      figure: share.to("%"),
      likelihood: undefined,
      weight: belief(isOverstated ? "spilledLess" : standing !== "fits" ? "spilledElse" : isNews ? "seen" : "spilled"),
      next: {
        heavy: "dry to constant mass and test the last wash; if both are in order, less was lost",
        fits: "nothing more is needed: the rest is handling",
        light: "look for a cause beside what was lost",
      }[standing],
    },
  ];
}

/** Was it seen, and so as sure as a mass that fits? */
export const isSeen = ({ weight }: Finding): boolean => weight === belief("seen");

/** Salt in the liquor that the wet cake really kept. */
export function wetCakeSalt({ batch: { washing }, observed: { wetCake }, dry }: Evidence): Quantity | undefined {
  if (wetCake === undefined || wetCake.compare(dry) <= 0 || washing === undefined || !("plan" in washing))
    return undefined;
  const { residueUnwashed, retainedVolume } = washing.plan;
  return residueUnwashed
    .times(asVolumeOfWater(wetCake.minus(dry)))
    .dividedBy(retainedVolume)
    .to("g");
}

/** Salts of a cake that nobody washed, by the record: what its liquor contained. */
export function neverWashedOut(evidence: Evidence): Quantity | undefined {
  const { batch, observed } = evidence;
  const { washing } = batch;
  if (observed.washes !== 0 || washing === undefined || !("plan" in washing)) return undefined;
  return wetCakeSalt(evidence) ?? washing.plan.residueUnwashed;
}

/** Salts that the last wash shows, where no plan says how much there may be. */
export const saltsShown = (standing: Standing, mass: string): Finding => ({
  code: "unwashed",
  text: `the last wash still shows salts: nobody knows how much of the ${mass} they are`,
  mass: undefined,
  figure: undefined,
  likelihood: undefined,
  weight: belief(({ fits: "seen", heavy: "saltsSeen", light: "unwashedKnown" } as const)[standing]),
  next: "wash until the last wash stays clear, dry again, and weigh",
});

/** Salts that the run itself knows to be in the product: fewer washes than planned, or a last wash that still shows them. */
export function knownUnwashed(evidence: Evidence, standing: Standing): Finding[] {
  const { batch, dry, grams, observed, expected } = evidence;
  const { washing } = batch;
  const { washes, tests } = observed;
  const seen = shows(tests.lastWash);
  // A mass that is too large asks for salts anyway.
  if (standing === "heavy") return [];
  if (washing === undefined || !("plan" in washing)) return seen === true ? [saltsShown(standing, grams(dry))] : [];
  const { plan, salts } = washing;
  const isTooFew = washes !== undefined && washes < plan.washes;
  if (seen === false || (seen === undefined && !isTooFew)) return [];
  const after = isTooFew && washes > 0 ? plan.residueAfter[washes - 1]?.times(washing.drains) : undefined;
  const inCake = after ?? wetCakeSalt(evidence) ?? plan.residueUnwashed;
  const salt = (inCake.compare(dry) > 0 ? dry : inCake).to("g");
  if (seen !== true && salt.dividedBy(dry).compare(planned("saltsShow")) < 0) return [];
  const pure = dry.minus(salt).to("g");
  const names = list(salts);
  const counted = `${grams(salt)} of ${names} is in a cake washed ${washes} ${washes === 1 ? "time" : "times"}: without it ${grams(pure)} is left, ${percent(pure.dividedBy(expected))} of what is expected`;
  const tested = `the last wash still shows ${names}`;
  return [
    {
      code: "unwashed",
      text: !isTooFew
        ? `${tested}: up to ${grams(salt)} of the ${grams(dry)} may be salts`
        : seen === true
          ? `${counted}; ${tested}`
          : counted,
      mass: salt,
      figure: salt.dividedBy(dry).to("%"),
      likelihood: undefined,
      weight: belief(standing === "fits" ? "seen" : "unwashedKnown"),
      next: "wash until the last wash stays clear, dry again, and weigh",
    },
  ];
}

/** Is this material a precipitant: does it bring nothing of what the product is counted by, or the anion that holds it? */
export function isPrecipitant({ batch, observed: { setting } }: Evidence, index: number): boolean {
  const key = keyElement(setting.product.formula);
  if (key === undefined) return !batch.materialBalance.supplied[index]!.limiting;
  if (setting.materials[index]!.form.count(key).n === 0n) return true;
  // iron is in both salts that make Prussian blue: the cyanide comes with the precipitant
  return rolesOf(setting, kindOf(setting), batch.isolation.how === "precipitate")[index] === "precipitant";
}

/** Did the liquor still contain product for a drop of precipitant? Undefined where nobody tested it. */
export const isIncomplete = ({ batch, observed }: Evidence): boolean | undefined =>
  batch.isolation.how === "precipitate" ? shows(observed.tests.filtrate) : undefined;

/** A precipitant that ran short by what was seen, where the mass alone would not tell. */
export function shortBySight(evidence: Evidence, standing: Standing): Finding[] {
  const { dry, expected, grams, observed } = evidence;
  // A light mass has its own words for every material.
  if (isIncomplete(evidence) !== true || standing === "light") return [];
  const ratio = dry.dividedBy(expected);
  return observed.setting.materials.flatMap(({ shelf }, i): Finding[] =>
    isPrecipitant(evidence, i)
      ? [
          {
            code: "reagent-short",
            text: `a drop of ${shelf.name} still clouds the filtrate: product is left in it, although ${grams(dry)} is ${percent(ratio)} of what is expected`,
            mass: undefined,
            figure: ratio.to("%"),
            likelihood: undefined,
            weight: belief(standing === "fits" ? "seen" : "cloudsFiltrateHeavy"),
            next: `add ${shelf.name} to the filtrate until a drop more stays clear, and titrate the ${shelf.name}`,
          },
        ]
      : [],
  );
}

// What the liquor that crystals came from still gives: boiled down further and cooled again, where what is beside it stays
// dissolved or goes on the hot filter.

import { list } from "../../foundation/wording";
import { type Quantity, sum } from "../../quantity";
import { massOf } from "../contents/entry";
import { matterOf } from "../contents/matter";
import { poisonsIn } from "../contents/poisons";
import { isHeatSensitive } from "../identity/by-ignition";
import { concentrate } from "../operation/concentrate";
import { cool } from "../operation/cool";
import { filterSalt } from "../operation/filter";
import { hold } from "../operation/hold";
import { asMassOfWater, exact, planned } from "../planning/exact";
import { isWetWithAlcohol } from "./alcohol";
import { type Bench, MOTHER } from "./bench";
import { MADE_UP, waterAtTheBoil } from "./boiling-down";
import { pressed, wetWithPoison } from "./clearing";
import { comingHot, crystalsFrom, saidAlong, saidHot, solutesOf } from "./coming";
import type { Crystallising } from "./crystallising";
import { filterWarmth } from "./hot-filter";
import { isEvaporated } from "./not-warm";
import { isAirless } from "./protection";
import { saturatedAt } from "./settling";
import { celsius } from "./words";

/** Shares of the liquor's water that may be left for a second crop, the least first. */
const SHARES = [0.5, 0.6, 0.7, 0.8, 0.9] as const;

/** A mother liquor of which a figure is missing is not poured away; what brings more of it where its crystals are few, in words. */
export function keepLiquor(bench: Bench, missing: string, again?: string, usual?: Quantity): void {
  const liquor = bench.in(MOTHER);
  if (liquor.isEmpty) return;
  const after = liquor.with({ unknown: [...new Set([...liquor.books.unknown, missing])] });
  const share = usual ?? planned("worthOnceMore");
  const below = bench.frame.theory.times(share).to("g") as Quantity<"mass">;
  const why = usual === undefined ? "" : ", which as much alcohol as liquor usually brings out in the cold";
  bench.did(
    MOTHER,
    { ...hold(liquor), after },
    {
      ...(again === undefined ? {} : { onceMoreBelow: below }),
      say: () =>
        `Keep the mother liquor until the crystals are weighed: ${missing} is not known.${again === undefined ? "" : ` If they are less than ${bench.hand.grams(below)} (${share} of the theory${why}), ${again}, cool it as before and filter: a second crop; keep it apart.`}`,
    },
  );
}

/**
 * Shares of the water from that at which the product is as strong as hot water holds it: with less it would come hot. Where nobody knows
 * that the first crop came as the water went, and so does this.
 */
function sharesFor(bench: Bench, { hot, intoCrystals }: Crystallising): string[] {
  const { books } = bench.in(MOTHER);
  const { own } = solutesOf(bench.in(MOTHER), matterOf(bench.frame.setting.product.formula));
  const figure = own === undefined ? undefined : saturatedAt(own.matter, hot);
  if (own !== undefined && figure === undefined && intoCrystals) return SHARES.map(String);
  if (own === undefined || figure === undefined) return [];
  const dry = massOf({ matter: own.matter.core, amount: own.amount }).toNumber("g");
  const least = Math.ceil((1000 * dry) / (figure.perGram * books.water.toNumber("g"))) / 1000;
  const more = SHARES.filter((share) => share > least);
  return [...(least > SHARES[0] && least < 0.95 ? [least] : []), ...more].map(String);
}

/** What boiling off so much, and cooling, brings of a liquor. */
function broughtBy(bench: Bench, share: string, { hot, cold }: Crystallising) {
  const liquor = bench.in(MOTHER);
  const water = liquor.books.water.times(exact(share)).to("g");
  const beside = comingHot(bench, liquor, water, hot);
  const boiled = concentrate(liquor, liquor.books.water.minus(water), hot, beside);
  const filtered = beside.length === 0 ? undefined : filterSalt(boiled.after, planned("saltOnFilter"));
  const crystals = crystalsFrom(bench, filtered?.after ?? boiled.after, cold);
  return crystals === undefined ? undefined : { boiled, beside, filtered, crystals };
}

type Brought = NonNullable<ReturnType<typeof broughtBy>>;

/** Is it worth the boiling: pure enough, enough of it, and water that a cylinder shows, or of a good crop the balance? */
function isWorthIt({ frame: { setting, theory, crystallising } }: Bench, { boiled, crystals }: Brought): boolean {
  const mass = massOf(crystals.own);
  const off = boiled.before.books.water.minus(boiled.after.books.water);
  if (crystals.purity.compare(planned("crystalPurity")) < 0) return false;
  // boiled down so far they would hold all of the liquor
  if (sum(crystals.all.map(massOf)).dividedBy(boiled.after.mass).compare(planned("stirred")) > 0) return false;
  if (mass.compare(off.times(planned("cropPerWater"))) < 0) return false;
  const isSeen = off.compare(asMassOfWater(setting.steps.volume).times(planned("leastMarks"))) >= 0;
  // a poison is not boiled for little, nor what ice left
  const isForLittle = isSeen && crystallising?.inIce !== true && poisonsIn(boiled.before).length === 0;
  return (
    off.compare(setting.steps.mass.times(planned("leastSteps"))) >= 0 &&
    mass.compare(theory.times(planned(isForLittle ? "boiledOn" : "goodSecond"))) >= 0
  );
}

/** The liquor boiled down and cooled again; as far as it gives the product and not the other salts. */
export function secondCrop(bench: Bench, crystallising: Crystallising, first: Quantity): void {
  const { formula } = bench.frame.setting.product;
  // nothing is boiled down with alcohol in it, nor what heat may set off, or air changes, for what is left of it
  if (bench.in(MOTHER).isEmpty || isWetWithAlcohol(bench.in(MOTHER))) return;
  if (isHeatSensitive(formula) || isAirless(formula)) return;
  const shares = sharesFor(bench, crystallising);
  let isKnown = shares.length === 0;
  for (const share of shares) {
    const brought = broughtBy(bench, share, crystallising);
    if (brought !== undefined && isWorthIt(bench, brought)) {
      boilAgain(bench, crystallising, brought, first);
      return;
    }
    isKnown ||= brought !== undefined;
  }
  if (!isKnown) keepLiquor(bench, "what a second crop brings");
}

/** What is worth it, done. */
function boilAgain(bench: Bench, { hot, cold }: Crystallising, brought: Brought, first: Quantity): void {
  const { boiled, beside, filtered, crystals } = brought;
  const off = boiled.before.books.water.minus(boiled.after.books.water).minus(waterOf(brought));
  const { formula } = bench.frame.setting.product;
  const isBelow = waterAtTheBoil(boiled.after, formula, hot) !== undefined;
  const isGentle = isBelow || isEvaporated(formula);
  const bath = isBelow ? ` on a water bath at ${celsius(hot)}` : "";
  bench.did(MOTHER, boiled, {
    target: boiled.after.mass,
    say: () =>
      `For a second crop ${isGentle ? `evaporate the mother liquor${bath}, not boiling,` : "boil the mother liquor down"} to ${bench.hand.grams(boiled.after.mass)} (${bench.hand.water(off)} ${isGentle ? "" : "boiled "}off${MADE_UP})${saidHot(bench, beside)}.`,
  });
  if (filtered !== undefined) {
    const liquor = bench.in(MOTHER);
    bench.did(MOTHER, filtered, {
      say: () =>
        `Filter the mother liquor at once, hot (${filterWarmth(formula, hot)}), through a warmed funnel, from the ${list(beside.map(({ matter }) => matter.name))}${pressed(bench, filtered)}${wetWithPoison(liquor)}.`,
    });
  }
  const seeded = bench.drafts.some(({ operation }) => operation === "seed") ? ", seeded as before" : "";
  bench.did(MOTHER, cool(bench.in(MOTHER), cold, crystals.all), {
    target: cold,
    say: () =>
      `Cool the mother liquor to ${celsius(cold)} again${seeded}${rinsedAfter(bench, massOf(crystals.own).dividedBy(first))}: about ${bench.hand.grams(massOf(crystals.own))} more${saidAlong(bench, crystals) || ", less pure"}; keep and dry it apart.`,
  });
}

/** How a later crop is rinsed, as much smaller as it is, in words. */
function rinsedAfter({ drafts, hand }: Bench, share: Quantity): string {
  const last = drafts.filter(({ operation }) => operation === "rinse").at(-1);
  if (last === undefined) return " and filter as before";
  const { amounts = [], ofAnotherBatch } = last;
  const liquids = list(amounts.map((one) => hand.litres(one.times(share))));
  return `, filter and rinse as before, ${ofAnotherBatch === undefined ? `but with ${liquids}` : "in proportion"}`;
}

/** Water that crystals on the hot filter bind. */
const waterOf = ({ beside }: Brought): Quantity =>
  beside.reduce(
    (all, { matter, amount }) =>
      all.plus(amount.times(matter.molarMass).minus(amount.times(matter.core.molarMass)).to("g")),
    exact("0 g") as Quantity,
  );

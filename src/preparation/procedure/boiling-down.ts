// A liquor boiled down or diluted to the water it is cooled with: clear and hot, or on into its own crystals.

import type { Formula } from "../../formula";
import type { Quantity } from "../../quantity";
import { massOf } from "../contents/entry";
import { matterOf } from "../contents/matter";
import type { Pot } from "../contents/pot";
import { type Coming, concentrate } from "../operation/concentrate";
import { dilute } from "../operation/dilute";
import { exact, planned } from "../planning/exact";
import { dissolvesLess } from "../reaction/fate";
import type { Species } from "../reaction/species";
import { type Bench, POT } from "./bench";
import { filterHot } from "./clearing";
import { type Crystals, comingHot, crystalsFrom, saidHot, solutesOf } from "./coming";
import { isFlat } from "./cooling";
import type { Crystallising } from "./crystallising";
import { withLessWater } from "./first-hydrate";
import { acidAgain, keptFrom, withAcidFirst } from "./keeping";
import { isEvaporated, notWarmOf } from "./not-warm";
import { isKeptCovered } from "./protection";
import { filterAndRinseSalt, saltRinseFor } from "./salt-rinse";
import { saturatedAt } from "./settling";
import { celsius, percent } from "./words";

/** What is done where too much has steamed off, in words. */
export const MADE_UP = "; less is made up with hot water";

/** The liquor with the water it is to cool with; what comes hot beside the product is filtered off. */
export function bringToWater(
  bench: Bench,
  crystallising: Crystallising,
  water: Quantity,
  beside: readonly Coming[],
): void {
  const { hot } = crystallising;
  const off = bench.pot.books.water.minus(water);
  const tolerance = water.times(planned("littleMore"));
  const rinse = saltRinseFor(bench, water, beside, hot);
  if (rinse !== undefined) {
    const least = water.minus(rinse);
    boilOff(bench, off.plus(rinse), crystallising, comingHot(bench, bench.pot, least, hot));
    filterAndRinseSalt(bench, rinse, hot);
    return;
  }
  if (off.compare(tolerance) > 0 || beside.length > 0)
    boilOff(bench, off.isPositive() ? off : exact("0 g"), crystallising, beside);
  else if (off.negated().compare(tolerance) > 0) thin(bench, off.negated(), crystallising);
  if (beside.length > 0) filterHot(bench, hot);
}

function boilOff(bench: Bench, off: Quantity, crystallising: Crystallising, beside: readonly Coming[]): void {
  const { product } = bench.frame.setting;
  const { hot, cold, intoCrystals } = crystallising;
  const warmest = notWarmOf(product.formula)?.upTo;
  const again = acidAgain(bench);
  const kept = keptFrom(bench);
  const done = withAcidFirst(kept, bench.pot, (pot) => concentrate(pot, off, hot, beside));
  const { mass, books } = done.after;
  // where most comes before it is cool, or nobody knows how much
  const { cooling } = crystallising;
  const isGentle = (intoCrystals && ("missing" in cooling || isFlat(cooling))) || isEvaporated(product.formula);
  // what is to be dissolved at the end must not come at the boil
  const atTheBoil =
    warmest === undefined && !intoCrystals ? waterAtTheBoil(done.after, product.formula, hot) : undefined;
  const isBelow = atTheBoil !== undefined;
  const isCovered = isKeptCovered(product.formula);
  const taken = isBelow && !isGentle ? takenFromBoil(done, atTheBoil) : undefined;
  const how =
    warmest !== undefined
      ? `Evaporate the liquor in a wide dish on a water bath, at no more than ${warmest} (it does not boil there), stirring,`
      : isBelow
        ? belowTheBoil(hot, isCovered, taken === undefined ? undefined : bench.hand.grams(taken))
        : isGentle
          ? "Evaporate the liquor slowly in a wide dish on a water bath, not boiling, stirring often,"
          : "Boil the liquor down, stirring,";
  const isUnboiled = warmest !== undefined || isGentle || isBelow;
  const isInDish = isUnboiled && !(isBelow && isCovered);
  const less = withLessWater(done.after, matterOf(product.formula), crystallising);
  bench.did(POT, done, {
    ...kept.takes,
    care: "isolating",
    ...(isInDish ? { apparatus: "wide dish" as const } : {}),
    target: mass,
    limit: () => off,
    say: () =>
      `${how} until the contents weigh ${bench.hand.grams(mass)} (${bench.hand.water(off)} ${isUnboiled ? "" : "boiled "}off, ${bench.hand.grams(books.water)} of water left${MADE_UP})${
        intoCrystals
          ? whyInto(crystallising, crystalsFrom(bench, done.after, cold), product)
          : isBelow
            ? `; ${celsius(hot)} dissolves more of it than the boil, which would bring part of it out`
            : less !== undefined
              ? `: ${less}`
              : isThick(bench, done.after, cold)
                ? ": with less water the crystals would hold all the liquor"
                : ""
      }${saidHot(bench, beside)}${kept.text || again}.`,
  });
}

/** Are the crystals of a cold liquor about as many as can be stirred in it? */
function isThick(bench: Bench, pot: Pot, cold: Quantity<"temperature">): boolean {
  const crystals = crystalsFrom(bench, pot, cold);
  return crystals !== undefined && massOf(crystals.own).compare(pot.mass.times(planned("setsToBlock"))) > 0;
}

/** How a liquor is evaporated that would bring its product out at the boil, from where it is boiled before to what it weighs then. */
function belowTheBoil(hot: Quantity<"temperature">, isCovered: boolean, boiledTo: string | undefined): string {
  const first =
    boiledTo === undefined
      ? "Evaporate the liquor"
      : `Boil the liquor down to ${boiledTo}, stirring, then evaporate it`;
  const inWhat = isCovered ? "in its vessel, where less air comes to it than in a dish," : "in a wide dish";
  return `${first} ${inWhat} on a water bath at ${celsius(hot)}, not boiling, stirring,`;
}

/** Why a liquor is boiled down into its crystals, and what it keeps then. */
function whyInto({ cooling, hot, cold }: Crystallising, crystals: Crystals | undefined, product: Species): string {
  const { name, formula } = product;
  const stays = crystals === undefined ? planned("staysInLiquor") : exact("100 %").minus(crystals.share);
  const why =
    "missing" in cooling
      ? dissolvesLess(formula, hot, cold)
        ? "it dissolves less hot than cold, and crystallises as the water goes"
        : "or until a skin forms over it, for how much of it hot water dissolves is not known"
      : `from a solution saturated hot cooling brings only ${percent(cooling.crop.share)}, so ${isFlat(cooling) ? "most" : "some"} crystallises as the water goes`;
  return `: ${why}; cold the liquor keeps ${percent(stays)} of the ${name} then`;
}

/**
 * Water that would keep the product of a liquor dissolved at the boil, where the liquor has less and holds it where it is hot, but does
 * not boil; undefined otherwise, and where no figure is known.
 */
export function waterAtTheBoil(pot: Pot, product: Formula, hot: Quantity<"temperature">): Quantity | undefined {
  const { own } = solutesOf(pot, matterOf(product));
  if (own === undefined) return undefined;
  const [boil, usual] = [planned("waterBoils"), planned("hot")] as Quantity<"temperature">[];
  const boiling = saturatedAt(own.matter, boil!) ?? saturatedAt(own.matter, usual!);
  const hotter = saturatedAt(own.matter, hot);
  if (boiling === undefined || hotter === undefined || hotter.perGram <= boiling.perGram) return undefined;
  const dry = massOf({ matter: own.matter.core, amount: own.amount });
  const water = dry.times(exact("100 g")).dividedBy(boiling.perHundredGramsWater).to("g");
  const { books } = pot;
  return water.compare(books.water.plus(books.water.times(planned("littleMore")))) > 0 ? water : undefined;
}

/** What the contents weigh when they are taken from the boil, where most of the water leaves before the product could come there. */
function takenFromBoil({ before, after }: ReturnType<typeof concentrate>, atTheBoil: Quantity): Quantity | undefined {
  const [first, last] = [before.books.water, after.books.water];
  const clear = atTheBoil.times(planned("hotFilter"));
  const isMost = first.minus(clear).compare(clear.minus(last)) > 0;
  return isMost ? after.mass.plus(clear.minus(last)).to("g") : undefined;
}

function thin(bench: Bench, more: Quantity, crystallising: Crystallising): void {
  const nothing = bench.pot.with({
    water: exact("0 g"),
    solids: [],
    dissolved: [],
    other: exact("0 g"),
    gas: [],
    waterMissing: [],
    unknown: [],
  });
  const done = dilute(bench.pot, nothing, more);
  const product = matterOf(bench.frame.setting.product.formula);
  const why =
    withLessWater(done.after, product, crystallising) ??
    `with less water ${crystallising.thinner > 1 ? "something else would crystallise with it" : "the crystals would retain all the liquor"}`;
  bench.did(POT, done, {
    target: done.after.mass,
    amounts: [more],
    say: () =>
      `Add ${bench.hand.water(more)}, hot, until the contents weigh ${bench.hand.grams(done.after.mass)}: ${why}.`,
  });
}

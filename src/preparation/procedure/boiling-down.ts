// A liquor boiled down or diluted to the water it is cooled with: clear and hot, or on into its own crystals.

import type { Formula } from "../../formula";
import type { Quantity } from "../../quantity";
import { type Coming, concentrate } from "../operation/concentrate";
import { dilute } from "../operation/dilute";
import { exact, planned } from "../planning/exact";
import { dissolvesLess } from "../reaction/fate";
import type { Species } from "../reaction/species";
import { type Bench, POT } from "./bench";
import { filterHot } from "./clearing";
import { type Crystals, crystalsFrom, saidHot } from "./coming";
import { isFlat } from "./cooling";
import type { Crystallising } from "./crystallising";
import { keptFrom } from "./keeping";
import { isEvaporated, notWarmOf } from "./not-warm";
import { celsius, percent } from "./words";

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
  if (off.compare(tolerance) > 0 || beside.length > 0)
    boilOff(bench, off.isPositive() ? off : exact("0 g"), crystallising, beside);
  else if (off.negated().compare(tolerance) > 0) thin(bench, off.negated(), crystallising);
  if (beside.length > 0) filterHot(bench, hot);
}

function boilOff(bench: Bench, off: Quantity, crystallising: Crystallising, beside: readonly Coming[]): void {
  const { product } = bench.frame.setting;
  const { hot, cold, intoCrystals } = crystallising;
  const warmest = notWarmOf(product.formula)?.upTo;
  const done = concentrate(bench.pot, off, hot, beside);
  const { mass, books } = done.after;
  const kept = keptFrom(bench);
  // where most comes before it is cool, or nobody knows how much
  const { cooling } = crystallising;
  const isGentle = (intoCrystals && ("missing" in cooling || isFlat(cooling))) || isEvaporated(product.formula);
  const how =
    warmest === undefined && isGentle
      ? "Evaporate the liquor slowly in a wide dish on a water bath, not boiling, stirring often,"
      : warmest === undefined
        ? "Boil the liquor down, stirring,"
        : `Evaporate the liquor in a wide dish on a water bath, at no more than ${warmest} (it does not boil there), stirring,`;
  const isInDish = warmest !== undefined || isGentle;
  bench.did(POT, done, {
    care: "isolating",
    ...(isInDish ? { apparatus: "wide dish" as const } : {}),
    target: mass,
    limit: () => off,
    say: () =>
      `${how} until the contents weigh ${bench.hand.grams(mass)} (${bench.hand.water(off)} ${isInDish ? "" : "boiled "}off, ${bench.hand.grams(books.water)} of water left)${
        intoCrystals
          ? whyInto(crystallising, crystalsFrom(bench, done.after, cold), product)
          : whyNoHotter(crystallising, product.formula)
      }${saidHot(bench, beside)}${kept}.`,
  });
}

/** Why a liquor is boiled down into its crystals, and what it keeps then. */
function whyInto({ cooling, hot, cold }: Crystallising, crystals: Crystals | undefined, product: Species): string {
  const { name, formula } = product;
  const stays = crystals === undefined ? planned("staysInLiquor") : exact("100 %").minus(crystals.share);
  const why =
    "missing" in cooling
      ? dissolvesLess(formula, hot, cold)
        ? "it dissolves less hot than cold, and crystallises as the water goes"
        : "how much of it hot water dissolves is not known"
      : `from a solution saturated hot cooling brings only ${percent(cooling.crop.share)}, so ${isFlat(cooling) ? "most" : "some"} crystallises as the water goes`;
  return `: ${why}; cold the liquor keeps ${percent(stays)} of the ${name} then`;
}

/** Of a salt that dissolves less as it gets hotter what came at the boil goes back into solution. */
function whyNoHotter({ hot }: Crystallising, product: Formula): string {
  return dissolvesLess(product, planned("hot") as Quantity<"temperature">, hot)
    ? `; it dissolves best at ${celsius(hot)}: what crystallises at the boil dissolves again as it cools to that, stirred`
    : "";
}

function thin(bench: Bench, more: Quantity, { thinner }: Crystallising): void {
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
  const why = thinner > 1 ? "something else would crystallise with it" : "the crystals would retain all the liquor";
  bench.did(POT, done, {
    target: done.after.mass,
    amounts: [more],
    say: () =>
      `Add ${bench.hand.water(more)}, hot, until the contents weigh ${bench.hand.grams(done.after.mass)}: with less water ${why}.`,
  });
}

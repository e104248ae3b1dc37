// A liquor boiled down with no figure of its hot solution: until the cold liquor keeps little, by what water dissolves cold.

import { type Quantity, sum } from "../../quantity";
import { massOf } from "../contents/entry";
import { massOfWater, matterOf } from "../contents/matter";
import { concentrate } from "../operation/concentrate";
import { cool } from "../operation/cool";
import { exact, planned } from "../planning/exact";
import { putAsides } from "./asides";
import { type Bench, POT } from "./bench";
import { filterHot } from "./clearing";
import { comesHot, hardlySoluble, limited } from "./coming";
import { evaporate } from "./evaporating";
import { notWarmOf } from "./kind";
import { filterAndRinse } from "./rinsing";
import { celsius, percent } from "./words";

/** Boiled down until the cold liquor keeps a small share, then cooled; `why` there is no crop by cooling alone. */
export function boilDown(bench: Bench, why: string, cold: Quantity<"temperature">): void {
  const { setting, isolation } = bench.frame;
  const matter = matterOf(setting.product.formula);
  const { books } = bench.pot;
  const there = books.dissolved.find((one) => one.matter.key === matter.core.key)?.amount;
  if (isolation.how !== "crystallise" || there === undefined) {
    evaporate(bench, why);
    return;
  }
  const stays = there.times(planned("staysInLiquor"));
  const coming = limited(bench.pot, [{ matter, amount: there.minus(stays) }]);
  const water = stays.times(matter.molarMass).dividedBy(isolation.retainedPer100g).times(exact("100 g")).to("g");
  const bound = sum(coming.map((one) => massOfWater(one.amount.times(one.matter.waters))));
  const off = books.water.minus(water).minus(bound).to("g");
  if (off.isPositive()) boilOff(bench, off, why);
  putAsides(bench, "seed");
  const crop = sum(coming.map(massOf));
  bench.did(POT, cool(bench.pot, cold, coming), {
    target: cold,
    blank: "temperature",
    say: () =>
      `Let it cool undisturbed to ${celsius(cold)}, overnight if there is time: about ${bench.hand.grams(crop)} of ${matter.name} crystallises.`,
  });
  filterAndRinse(bench, setting.product.formula, crop, cold);
}

/** So much water boiled off, and what comes hot filtered off. */
function boilOff(bench: Bench, off: Quantity, why: string): void {
  const { product } = bench.frame.setting;
  const { name } = matterOf(product.formula);
  const warmest = notWarmOf(product.formula)?.upTo;
  const { water, temperature: hot } = bench.pot.books;
  const beside = hardlySoluble(bench, water.minus(off), hot);
  const done = concentrate(bench.pot, off, hot, beside);
  bench.did(POT, done, {
    care: "isolating",
    target: done.after.mass,
    limit: () => off,
    say: () =>
      `Boil the liquor down${warmest === undefined ? "" : `, at no more than ${warmest}`}, stirring, until the contents weigh ${bench.hand.grams(done.after.mass)} (${bench.hand.water(off)} off): ${why}, cold it keeps ${percent(planned("staysInLiquor"))} of the ${name} then${comesHot(bench, beside)}.`,
  });
  filterHot(bench, hot);
}

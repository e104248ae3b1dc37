// The product out of its vessel, by how it stands there.

import { list } from "../../foundation/wording";
import { sum } from "../../quantity";
import { type Entry, massOf } from "../contents/entry";
import { matterOf } from "../contents/matter";
import type { Pot } from "../contents/pot";
import { collect } from "../operation/collect";
import { done, justWater } from "../operation/operation";
import { planned } from "../planning/exact";
import { keptInSolution } from "../reaction/only-in-solution";
import { type Bench, POT } from "./bench";
import { waterFor } from "./by-eye";
import { filterAndWash, filterHot } from "./clearing";
import { isolateCrystals } from "./crystals";
import { isolatePrecipitate } from "./precipitate";
import { takeOut } from "./taken-out";
import { isolateUnknown } from "./unknown-crystals";
import { celsius, percent } from "./words";

const inLiquor = ({ books }: Pot, key: string): Entry | undefined =>
  books.dissolved.find(({ matter }) => matter.key === key);

/** Water that keeps a liquor from crystallising in the room, where a figure tells. */
function keepDissolved(bench: Bench, own: Entry | undefined): void {
  const { temperature } = bench.frame.setting;
  const { books } = bench.pot;
  if (own === undefined || books.waterMissing.length > 0) return;
  const enough = waterFor(own, temperature, planned("coldWaterFactor").value.toString());
  if (enough === undefined) return;
  const more = enough.minus(books.water).to("g");
  if (!more.isPositive()) return;
  const water = justWater(bench.pot, more);
  bench.did(POT, done("dilute", bench.pot, bench.pot.plusAll(water), [water]), {
    amounts: [more],
    say: () => `Add ${bench.hand.water(more)}: with less it would crystallise at ${celsius(temperature)}.`,
  });
}

/** What is not dissolved leaves; the product stays in the liquor. */
function keepProduct(bench: Bench): void {
  const { core } = matterOf(bench.frame.setting.product.formula);
  keepDissolved(bench, inLiquor(bench.pot, core.key));
  // rinsing thins a liquor: only what stays in a filter is worth it
  const { solids } = bench.pot.books;
  const isFiltered = solids.length > 0;
  const isThick = isFiltered && sum(solids.map(massOf)).compare(bench.pot.mass.times(planned("thickCake"))) > 0;
  const at = bench.drafts.length;
  const { temperature: now } = bench.pot.books;
  if (isThick) filterAndWash(bench, now, planned("rinsedInto"));
  else filterHot(bench, now);
  // what its cake kept has been washed into it, and is counted
  const isWashed = bench.drafts.slice(at).some(({ amounts = [] }) => amounts.length > 0);
  const { books, mass } = bench.pot;
  const own = inLiquor(bench.pot, core.key);
  const inside = own === undefined || books.waterMissing.length > 0 ? undefined : massOf(own);
  const { steps } = bench.frame.setting;
  const others = books.dissolved.filter((one) => one !== own && massOf(one).compare(steps.mass) >= 0);
  const beside =
    others.length === 0
      ? ""
      : ` beside ${list(others.map((one) => `${bench.hand.grams(massOf(one))} of ${one.matter.name}`))}`;
  const only = keptInSolution(core.formula);
  const why = only === undefined ? "" : ` (${only.why})`;
  const upTo = only?.comesApart === true ? "up to " : "";
  bench.did(POT, collect(bench.pot), {
    care: "isolating",
    target: mass,
    say: () =>
      inside === undefined
        ? `Keep the clear liquor with the ${core.name}: it is used as it is${why}.`
        : `${isFiltered && !isWashed ? "Rinse vessel and filter into it with as little water as does it. " : ""}The ${isFiltered ? "clear liquor" : "liquor"}, ${bench.hand.grams(mass)} with ${upTo}${bench.hand.grams(inside)} of ${core.name} (${percent(inside.dividedBy(mass).to("%"))})${beside}, is used as it is: nothing is boiled down${isFiltered ? `; its strength is ${upTo}${bench.hand.grams(inside)} over what it weighs` : ""}${why}.`,
  });
}

export function isolate(bench: Bench): void {
  takeOut(bench);
  const { how } = bench.frame.isolation;
  if (how === "precipitate") isolatePrecipitate(bench);
  else if (how === "crystallise") isolateCrystals(bench);
  else if (how === "liquor") keepProduct(bench);
  else if (how === "unknown") isolateUnknown(bench);
}

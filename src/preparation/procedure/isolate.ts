// The product out of its vessel, by how it stands there.

import { attempt } from "../../foundation/error";
import { isOneOf } from "../../ion/internal";
import type { Quantity } from "../../quantity";
import { waterToDissolve } from "../../solubility";
import { madeOf } from "../../substance/internal";
import { type Entry, massOf } from "../contents/entry";
import { matterOf } from "../contents/matter";
import type { Pot } from "../contents/pot";
import { AGENTS } from "../data/agents";
import { collect } from "../operation/collect";
import { cool } from "../operation/cool";
import { done, justWater } from "../operation/operation";
import { planned } from "../planning/exact";
import { isAcid } from "../reaction/acids";
import { keptInSolution } from "../reaction/only-in-solution";
import { type Bench, POT } from "./bench";
import { filterHot } from "./clearing";
import { isolateCrystals } from "./crystals";
import { isolatePrecipitate } from "./precipitate";
import { filterAndRinse } from "./rinsing";
import { keepLiquor } from "./second-crop";
import { useOf } from "./use";
import { celsius, list, percent } from "./words";

const inLiquor = ({ books }: Pot, key: string): Entry | undefined =>
  books.dissolved.find(({ matter }) => matter.key === key);

/** Water that keeps a liquor from crystallising in the room, where a figure tells. */
function keepDissolved(bench: Bench, own: Entry | undefined): void {
  const { temperature } = bench.frame.setting;
  const { books } = bench.pot;
  if (own === undefined || books.waterMissing.length > 0) return;
  const enough = attempt(() =>
    waterToDissolve({
      formula: own.matter.formula,
      mass: massOf(own) as Quantity<"mass">,
      temperature,
      waterFactor: planned("coldWaterFactor").value.toString(),
    }),
  );
  if (!enough.ok) return;
  const more = enough.value.water.minus(books.water).to("g");
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
  // Rinsing thins a liquor: only what stays in a filter is worth it.
  const isFiltered = bench.pot.books.solids.length > 0;
  filterHot(bench, bench.pot.books.temperature);
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
  bench.did(POT, collect(bench.pot), {
    care: "isolating",
    target: mass,
    say: () =>
      inside === undefined
        ? `Keep the clear liquor with the ${core.name}: it is used as it is${why}.`
        : `${isFiltered ? "Rinse vessel and filter into it with as little water as does it. The clear liquor" : "The liquor"}, ${bench.hand.grams(mass)} with ${bench.hand.grams(inside)} of ${core.name} (${percent(inside.dividedBy(mass).to("%"))})${beside}, is used as it is: nothing is boiled down${isFiltered ? `; its strength is ${bench.hand.grams(inside)} over what it weighs` : ""}${why}.`,
  });
}

/** Groups that alcohol may be put to all the same, where no free acid of theirs is there. */
const MILD: readonly string[] = ["nitrate", "nitrite", "iodate"];

/** Is something dissolved that alcohol must not meet: an oxidiser, or nitric or perchloric acid? */
const refusesAlcohol = ({ books }: Pot): boolean =>
  books.dissolved.some(({ matter: { formula } }) =>
    AGENTS.some(
      ({ as, groups, molecules }) =>
        as === "oxidiser" &&
        (isOneOf(formula, ...molecules) ||
          groups.some((name) => (isAcid(formula) || !MILD.includes(name)) && madeOf(formula).groups.has(name))),
    ),
  );

export function isolate(bench: Bench): void {
  const { isolation, setting, theory } = bench.frame;
  if (isolation.how === "precipitate") isolatePrecipitate(bench);
  else if (isolation.how === "crystallise") isolateCrystals(bench);
  else if (isolation.how === "liquor") keepProduct(bench);
  else if (isolation.how === "unknown") {
    const { product, temperature } = setting;
    // What is not wanted, charcoal or a base that is left, goes before anything comes out.
    if (bench.pot.books.solids.length > 0) filterHot(bench, bench.pot.books.temperature);
    const crop = matterOf(product.formula);
    const there = bench.pot.books.dissolved.find((one) => one.matter.key === crop.core.key)?.amount;
    const coming = there === undefined ? [] : [{ matter: crop, amount: there }];
    const cooled = cool(bench.pot, temperature, coming);
    const unknown = [...new Set([...cooled.after.books.unknown, isolation.missing])];
    const hasAlcohol = setting.asides.some((one) => useOf(one, product.formula) === "alcohol");
    bench.did(
      POT,
      { ...cooled, after: cooled.after.with({ unknown }) },
      {
        target: temperature,
        care: "isolating",
        say: () =>
          hasAlcohol
            ? `Let it cool to ${celsius(temperature)}; what of the ${product.name} the alcohol leaves dissolved is not known (${isolation.missing} missing).`
            : `Let it cool to ${celsius(temperature)} and stand; how the ${product.name} crystallises is not known (${isolation.missing} missing): if nothing crystallises, ${
                madeOf(product.formula).ammonia
                  ? "add as much alcohol as liquor, slowly; do not boil it down, the ammonia would leave"
                  : refusesAlcohol(cooled.before)
                    ? "evaporate it slowly in an open dish, never with alcohol: it is an oxidiser"
                    : "boil down or add as much alcohol as liquor"
              }.`,
      },
    );
    filterAndRinse(bench, product.formula, theory, temperature);
    keepLiquor(bench, `what it still contains of ${product.name}`);
  }
}

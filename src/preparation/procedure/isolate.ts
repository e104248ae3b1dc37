// The product out of its vessel, by how it stands there.

import { attempt } from "../../foundation/error";
import { type Quantity, quantity } from "../../quantity";
import { waterToDissolve } from "../../solubility";
import { type Entry, massOf } from "../contents/entry";
import { matterOf } from "../contents/matter";
import type { Pot } from "../contents/pot";
import { collect } from "../operation/collect";
import { concentrate } from "../operation/concentrate";
import { cool } from "../operation/cool";
import { done, justWater } from "../operation/operation";
import { planned } from "../planning/exact";
import { isVolatile } from "../reaction/fluids";
import { keptInSolution } from "../reaction/only-in-solution";
import { type Antisolvent, antisolventFor } from "./alcohol";
import { type Bench, POT } from "./bench";
import { filterHot, lookThrough } from "./clearing";
import { timesTheWater } from "./common-ion";
import { isolateCrystals } from "./crystals";
import { keptFrom } from "./keeping";
import { inTheWay } from "./mixed-hot";
import { spoiltByBoiling } from "./not-warm";
import { isolatePrecipitate } from "./precipitate";
import { filterAndRinse } from "./rinsing";
import { keepLiquor } from "./second-crop";
import { useOf } from "./use";
import { celsius, list, percent } from "./words";

const inLiquor = ({ books }: Pot, key: string): Entry | undefined =>
  books.dissolved.find(({ matter }) => matter.key === key);

/** So many times the water that just dissolves an entry; undefined where no figure tells. */
function waterFor(one: Entry, temperature: Quantity<"temperature">, waterFactor: string): Quantity | undefined {
  const { formula } = one.matter;
  const enough = attempt(() =>
    waterToDissolve({ formula, mass: massOf(one) as Quantity<"mass">, temperature, waterFactor }),
  );
  return enough.ok ? enough.value.water : undefined;
}

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

/** How much water may go before what is beside the product crystallises with it, as long as all is dissolved. */
interface Keeping {
  /** Some may be boiled off, or no figure tells. */
  readonly isBoiled: boolean;
  /** In words; empty where nothing is to be said. */
  readonly text: string;
}

function keepingOthers({ pot, hand, frame: { setting } }: Bench): Keeping {
  const { core } = matterOf(setting.product.formula);
  const { dissolved, water, waterMissing } = pot.books;
  if (waterMissing.length > 0) return { isBoiled: true, text: "" };
  const salts = dissolved.map((one) => ({ matter: one.matter, dry: massOf(one).toNumber("g") }));
  const needs = dissolved.flatMap((one, i) => {
    if (one.matter.key === core.key || massOf(one).compare(setting.steps.mass) < 0 || isVolatile(one.matter.formula))
      return [];
    const alone = waterFor(one, setting.temperature, "1");
    if (alone === undefined) return [];
    const times = timesTheWater(salts, i);
    const least = times === 1 ? alone : alone.times(quantity(times.toPrecision(6))).to("g");
    return [{ name: one.matter.name, least, off: water.minus(least), alone: water.minus(alone) }];
  });
  const first = needs.sort((one, other) => one.off.compare(other.off))[0];
  if (first === undefined) return { isBoiled: true, text: "" };
  const isMuch = (off: Quantity): boolean => off.compare(setting.steps.mass) > 0;
  if (isMuch(first.off))
    return {
      isBoiled: true,
      text: `; no more than ${hand.water(first.off)} boiled off, or ${first.name} crystallises with it`,
    };
  return {
    isBoiled: false,
    text: isMuch(first.alone)
      ? `; ${first.name} may crystallise with it: beside the other salts, which share its ions, it takes ${hand.water(first.least)} to stay dissolved for certain, and there is ${hand.water(water)}`
      : `; ${first.name} crystallises with it`,
  };
}

/** Of a complex alcohol brings out most, of plain salts whatever it meets. */
const isComplex = ({ frame }: Bench): boolean => frame.kind === "complex formation";

/** Much liquor is boiled down before alcohol brings the rest out: it would take as much of that. */
function boilFirst(bench: Bench): void {
  const { pot, hand, frame } = bench;
  const to = frame.theory.times(planned("boiledTo")).to("g");
  const isMuch = pot.mass.compare(to.times(planned("muchMore"))) > 0;
  if (!isMuch || !isComplex(bench) || spoiltByBoiling(frame.setting.product.formula) !== undefined) return;
  if (antisolventFor(bench).volume === undefined || pot.books.waterMissing.length > 0) return;
  const off = pot.mass.minus(to).to("g");
  // beside much of other salts there is not so much water to boil off
  if (pot.books.water.minus(off).compare(frame.theory) < 0) return;
  bench.did(POT, concentrate(pot, off, planned("hot") as Quantity<"temperature">), {
    care: "isolating",
    target: to,
    say: () => `Boil the liquor down, stirring, until the contents weigh about ${hand.grams(to)}${keptFrom(bench)}.`,
  });
}

/** What brings crystals out of a liquor of which no figure is known, in words; heat only where the product bears it. */
function otherwise(bench: Bench, antisolvent: Antisolvent): string {
  const spoilt = spoiltByBoiling(bench.frame.setting.product.formula);
  const never = spoilt === undefined ? "" : `; never boil it down: ${spoilt}`;
  if (antisolvent.volume !== undefined) {
    const alcohol = bench.hand.litres(antisolvent.volume);
    return isComplex(bench)
      ? `once it is cold and no more crystallises, add alcohol slowly and stirring, up to as much as there is liquor (${alcohol}): it brings out most of the rest (common practice)${never}`
      : `if nothing crystallises, ${spoilt === undefined ? "boil it down, or " : ""}add up to ${alcohol} of alcohol, as much as there is liquor, slowly and stirring, once it is cold${never}`;
  }
  if (spoilt === undefined && antisolvent.oxidiser)
    return "if nothing crystallises, evaporate it slowly in an open dish on a water bath until a skin forms or a drop of it crystallises on cold glass, and cool it again, never with alcohol: it is an oxidiser";
  const not = antisolvent.why === undefined ? "" : `; no alcohol: ${antisolvent.why}`;
  const others = spoilt === undefined ? keepingOthers(bench) : undefined;
  return others?.isBoiled === true
    ? `if nothing crystallises, boil it down a little at a time, until a drop of it crystallises on cold glass, and cool it again${others.text}${not}`
    : `if nothing crystallises, cool it in ice to 0 to 5 °C, covered, scratch the glass or put a crystal of the salt in, and leave it overnight${others?.text ?? never}${not}`;
}

export function isolate(bench: Bench): void {
  const { isolation, setting, theory } = bench.frame;
  if (isolation.how === "precipitate") isolatePrecipitate(bench);
  else if (isolation.how === "crystallise") isolateCrystals(bench);
  else if (isolation.how === "liquor") keepProduct(bench);
  else if (isolation.how === "unknown") {
    const { product, temperature } = setting;
    // What is not wanted, charcoal or a base that is left, goes before anything comes out.
    const { temperature: at } = bench.pot.books;
    if (bench.pot.books.solids.length > 0) filterHot(bench, at);
    else if (!isComplex(bench) && at.compare(planned("feelsHot")) > 0) lookThrough(bench, at);
    boilFirst(bench);
    const crop = matterOf(product.formula);
    const there = bench.pot.books.dissolved.find((one) => one.matter.key === crop.core.key)?.amount;
    const coming = there === undefined ? [] : [{ matter: crop, amount: there }];
    const cooled = cool(bench.pot, temperature, coming);
    const unknown = [...new Set([...cooled.after.books.unknown, isolation.missing])];
    const isHot = inTheWay(setting, bench.frame.roles) !== undefined;
    const antisolvent = antisolventFor(bench);
    const way = `${otherwise(bench, antisolvent)}${keptFrom(bench)}`;
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
            : `Let it cool ${isHot ? "slowly, undisturbed, " : ""}to ${celsius(temperature)} and stand; how the ${product.name} crystallises is not known (${isolation.missing} missing): ${way}.`,
        ...(hasAlcohol || antisolvent.volume === undefined ? {} : { alcohol: antisolvent.volume }),
      },
    );
    filterAndRinse(bench, product.formula, theory, temperature);
    keepLiquor(bench, `what it still contains of ${product.name}`);
  }
}

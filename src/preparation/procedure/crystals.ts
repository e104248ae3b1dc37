// Getting a product out of its liquor: hot filter, boil off or add to the mass at which it stops, cool to where, filter, rinse,
// and a second crop.

import { type Formula, parseFormula } from "../../formula";
import { isOneOf } from "../../ion/internal";
import { type Quantity, sum } from "../../quantity";
import type { Crystallisation } from "../../solubility";
import { massOf } from "../contents/entry";
import { type Matter, massOfWater, matterOf } from "../contents/matter";
import type { Pot } from "../contents/pot";
import { type Coming, concentrate } from "../operation/concentrate";
import { cool } from "../operation/cool";
import { dilute } from "../operation/dilute";
import { filterLiquor } from "../operation/filter";
import { heat } from "../operation/heat";
import { hold } from "../operation/hold";
import { seed } from "../operation/seed";
import { exact, planned } from "../planning/exact";
import { keptByWater } from "../reaction/fate";
import { putAsides } from "./asides";
import { type Bench, POT } from "./bench";
import { hardlySoluble, limited, otherSalt } from "./coming";
import { type Crystallising, coolingOf } from "./crystallising";
import { notWarmOf } from "./kind";
import { protectionOf } from "./protection";
import { filterAndRinse } from "./rinsing";
import { secondCrop } from "./second-crop";
import { useOf } from "./use";
import { celsius, list, percent } from "./words";

/** Solids that are not wanted go before anything crystallises. */
export function filterHot(bench: Bench, hot: Quantity<"temperature">): void {
  if (bench.pot.books.solids.length === 0) return;
  const { solids } = bench.pot.books;
  const names = list([...new Set(solids.map(({ matter }) => bench.called(matter)))]);
  bench.did(POT, filterLiquor(bench.pot), {
    say: () =>
      `${hot.compare(exact("40 °C")) > 0 ? `Filter hot (${celsius(hot)})` : "Filter"} from the ${names} that is not dissolved; the clear liquor is kept.`,
  });
}

/** Dust and rust go now: once it cools nothing can be filtered from the crystals. */
function lookThrough(bench: Bench, hot: Quantity<"temperature">): void {
  bench.did(POT, hold(bench.pot), {
    care: "isolating",
    say: () =>
      `Look through the hot liquor: if it is not clear, filter it at ${celsius(hot)} through a warmed funnel, and rinse the filter with a little hot water.`,
  });
}

/** What must not be warmed comes out as it forms; the liquor keeps what it dissolves. */
function standCold(bench: Bench, cold: Quantity<"temperature">): void {
  const { product } = bench.frame.setting;
  filterHot(bench, cold);
  const matter = matterOf(product.formula);
  const { books } = bench.pot;
  const there = books.dissolved.find((one) => one.matter.key === matter.core.key)?.amount ?? exact("0 mol");
  const stays = keptByWater(product.formula, books.water, cold);
  const amount = stays === undefined ? there : there.minus(stays.dividedBy(matter.molarMass).to("mol"));
  const coming = amount.isPositive() ? limited(bench.pot, [{ matter, amount }]) : [];
  if (coming.length === 0) {
    evaporate(
      bench,
      `${product.name} stays dissolved`,
      "Let the liquor evaporate in a wide dish in moving air, not warmed,",
    );
    return;
  }
  const mass = sum(coming.map(massOf));
  const why = notWarmOf(product.formula)?.why;
  putAsides(bench, "seed");
  bench.did(POT, cool(bench.pot, cold, coming), {
    care: "isolating",
    target: cold,
    blank: "temperature",
    say: () =>
      `Do not warm it${why === undefined ? "" : `: ${why}`}. Let it stand at ${celsius(cold)} or colder until no more crystallises: ${bench.hand.grams(mass)} of ${matter.name} in all${stays === undefined ? "" : `, and ${bench.hand.grams(stays)} stays dissolved`}.`,
  });
  filterAndRinse(bench, product.formula, mass, cold);
}

export function isolateCrystals(bench: Bench): void {
  const { crystallising, setting } = bench.frame;
  if (crystallising === undefined) return;
  const { hot, cold, saltPair, asItForms } = crystallising;
  if (asItForms) {
    standCold(bench, cold);
    return;
  }
  if (bench.pot.books.temperature.compare(hot) < 0)
    bench.did(POT, heat(bench.pot, hot), {
      care: "isolating",
      target: hot,
      say: () => {
        const kept = protectionOf(setting.product.formula, "crystallising");
        return `Warm the liquor to ${celsius(hot)}, stirring${kept === undefined ? "" : `; ${kept}`}.`;
      },
    });
  const cooling = coolingOfWhatIsThere(bench, crystallising);
  const dirty = bench.pot.books.solids.length > 0;
  filterHot(bench, hot);
  // What leaves on the hot filter takes the dust along.
  if (!dirty && !saltPair?.filteredHot.isPositive()) lookThrough(bench, hot);
  if ("missing" in cooling) {
    if (!crystallising.otherComes && isMixed(bench))
      boilDown(bench, `how much hot water dissolves is not known (${cooling.missing})`, cold);
    else evaporate(bench, cooling.missing);
    return;
  }
  if (isFlat(bench, cooling)) {
    evaporate(bench);
    return;
  }
  if (saltPair === undefined && cooling.crop.share.compare(exact(FLAT)) < 0) {
    boilDown(bench, `from a liquor saturated hot cooling brings only ${percent(cooling.crop.share)}`, cold);
    return;
  }
  const before = bench.pot;
  const off = before.books.water.minus(cooling.totalWater);
  const tolerance = cooling.totalWater.times(planned("littleMore"));
  const beside: Coming[] =
    saltPair === undefined
      ? hardlySoluble(bench, cooling.totalWater, hot)
      : saltPair.filteredHot.isPositive()
        ? otherSalt(bench, saltPair.filteredHot)
        : [];
  if (off.compare(tolerance) > 0 || beside.length > 0) {
    const done = concentrate(before, off.isPositive() ? off : exact("0 g"), hot, beside);
    const { mass } = done.after;
    bench.did(POT, done, {
      care: "isolating",
      target: mass,
      limit: () => off,
      say: () =>
        `Boil the liquor down, stirring, until the contents weigh ${bench.hand.grams(mass)} (${bench.hand.water(off)} boiled off, ${bench.hand.grams(done.after.books.water)} of water left)${comesHot(bench, beside)}.`,
    });
  } else if (off.negated().compare(tolerance) > 0) {
    const more = off.negated();
    const done = dilute(
      before,
      before.with({
        water: exact("0 g"),
        solids: [],
        dissolved: [],
        other: exact("0 g"),
        gas: [],
        waterMissing: [],
        unknown: [],
      }),
      more,
    );
    bench.did(POT, done, {
      target: done.after.mass,
      amounts: [more],
      say: () =>
        `Add ${bench.hand.water(more)}, hot, until the contents weigh ${bench.hand.grams(done.after.mass)}: with less water the crystals would retain all the liquor.`,
    });
  }
  if (beside.length > 0) filterHot(bench, hot);
  const crop = matterOf(parseFormula(cooling.crop.formula));
  const hasSeed = bench.frame.setting.asides.some((one) => useOf(one, setting.product.formula) === "seed");
  putAsides(bench, "seed");
  const liquor = bench.pot;
  if (!hasSeed && cooling.warnings.some((text) => text.includes("seed it")))
    bench.did(POT, seed(liquor), {
      say: () =>
        `When it has cooled to about ${celsius(seedingAt(liquor, crop, hot, cold))} put in a few crystals of ${crop.name}: it stays supersaturated easily.`,
    });
  const other = saltPair === undefined ? undefined : saltPair.contamination;
  const mass = saltPair === undefined ? cooling.crop.mass : saltPair.crop;
  const asWanted = crop.formula.hasSameComposition(setting.product.formula) || saltPair !== undefined;
  const coming: Coming[] = [{ matter: crop, amount: mass.dividedBy(crop.molarMass).to("mol") }];
  if (other?.isPositive()) coming.push(...otherSalt(bench, other));
  const done = cool(bench.pot, cold, limited(bench.pot, coming));
  bench.did(POT, done, {
    target: cold,
    blank: "temperature",
    say: () =>
      `Let it cool undisturbed to ${celsius(cold)}, overnight if there is time: ${bench.hand.grams(mass)} of ${crop.name} crystallises${saltPair === undefined ? `, ${percent(cooling.crop.share)} of it` : `, ${percent(saltPair.purity)} pure`}${asWanted ? "" : ` (not ${setting.product.name}: at ${celsius(cold)} this is the hydrate that crystallises)`}.`,
  });
  filterAndRinse(bench, crop.formula, mass, cold);
  secondCrop(bench, crop, cold);
}

/** What crystallises while the liquor is boiled down, in words. */
const comesHot = (bench: Bench, beside: readonly Coming[]): string =>
  beside.map((one) => `; ${bench.hand.grams(massOf(one))} of ${one.matter.name} crystallises hot`).join("");

/** Cooling of all the theory, or of less, where a solid stayed what it was. */
function coolingOfWhatIsThere({ pot, frame }: Bench, { hot, cold, cooling, saltPair }: Crystallising) {
  const { formula, molarMass } = frame.setting.product;
  const { key } = matterOf(formula).core;
  const there = pot.books.dissolved
    .find(({ matter }) => matter.key === key)
    ?.amount.times(molarMass)
    .to("g");
  const isShort = there !== undefined && there.compare(frame.theory.times(exact("98 %"))) < 0;
  return saltPair !== undefined || !isShort ? cooling : coolingOf(formula, there as Quantity<"mass">, hot, cold);
}

/** Degrees between the temperatures that are tried for a seed. */
const SEED_STEP = 5;

/** Half way down at the most, and not before the liquor holds more than it can keep of the crystals: a seed would dissolve. */
function seedingAt(
  { books }: Pot,
  { core }: Matter,
  hot: Quantity<"temperature">,
  cold: Quantity<"temperature">,
): Quantity {
  const there = books.dissolved
    .find(({ matter }) => matter.key === core.key)
    ?.amount.times(core.molarMass)
    .to("g");
  const [top, bottom] = [hot, cold].map((one) => one.toNumber("°C")) as [number, number];
  for (let at = Math.round((top + bottom) / 2); at > bottom; at -= SEED_STEP) {
    const T = exact(`${at} °C`) as Quantity<"temperature">;
    const kept = keptByWater(core.formula, books.water, T);
    if (there === undefined || kept === undefined || kept.compare(there) < 0) return T;
  }
  return cold;
}

/** Less than this share of it is no crop. */
const FLAT = "25 %";

/** A salt of which cooling brings less than a quarter is evaporated, where it binds no water and hardly anything else is in the liquor. */
function isFlat(bench: Bench, cooling: Crystallisation): boolean {
  const crop = matterOf(bench.frame.setting.product.formula);
  return (
    bench.frame.crystallising?.saltPair === undefined &&
    cooling.crop.share.compare(exact(FLAT)) < 0 &&
    crop.waters.isZero() &&
    parseFormula(cooling.crop.formula).hasSameComposition(crop.formula) &&
    !isMixed(bench)
  );
}

/** Something else is in the liquor that must not dry into the crystals. */
const isMixed = ({ pot, frame }: Bench): boolean => {
  const { key } = matterOf(frame.setting.product.formula).core;
  const others = pot.books.dissolved.filter(({ matter }) => matter.key !== key && !isFleeting(matter.formula));
  const mass = sum([exact("0 g"), ...others.map(massOf)]);
  return mass.compare(frame.theory.times(planned("littleMore"))) > 0;
};

/** No figure of a hot solution: boiled down until the cold liquor keeps little of it, by what water dissolves cold. */
function boilDown(bench: Bench, why: string, cold: Quantity<"temperature">): void {
  const { setting, isolation } = bench.frame;
  const { product } = setting;
  const matter = matterOf(product.formula);
  const { books } = bench.pot;
  const there = books.dissolved.find((one) => one.matter.key === matter.core.key)?.amount;
  if (isolation.how !== "crystallise" || there === undefined) {
    evaporate(bench, why);
    return;
  }
  const stays = there.times(planned("staysInLiquor"));
  const coming = limited(bench.pot, [{ matter, amount: there.minus(stays) }]);
  const crop = sum(coming.map(massOf));
  const water = stays.times(matter.molarMass).dividedBy(isolation.retainedPer100g).times(exact("100 g")).to("g");
  const bound = sum(coming.map((one) => massOfWater(one.amount.times(one.matter.waters))));
  const off = books.water.minus(water).minus(bound).to("g");
  const warmest = notWarmOf(product.formula)?.upTo;
  if (off.isPositive()) {
    const hot = bench.pot.books.temperature;
    const beside = hardlySoluble(bench, books.water.minus(off), hot);
    const done = concentrate(bench.pot, off, hot, beside);
    bench.did(POT, done, {
      care: "isolating",
      target: done.after.mass,
      limit: () => off,
      say: () =>
        `Boil the liquor down${warmest === undefined ? "" : `, at no more than ${warmest}`}, stirring, until the contents weigh ${bench.hand.grams(done.after.mass)} (${bench.hand.water(off)} off): ${why}, cold it keeps ${percent(planned("staysInLiquor"))} of the ${matter.name} then${comesHot(bench, beside)}.`,
    });
    filterHot(bench, hot);
  }
  putAsides(bench, "seed");
  bench.did(POT, cool(bench.pot, cold, coming), {
    target: cold,
    blank: "temperature",
    say: () =>
      `Let it cool undisturbed to ${celsius(cold)}, overnight if there is time: about ${bench.hand.grams(crop)} of ${matter.name} crystallises.`,
  });
  filterAndRinse(bench, product.formula, crop, cold);
}

/** What leaves with the steam. */
const isFleeting = (formula: Formula): boolean => isOneOf(formula, "NH3", "HCl", "CH3COOH", "HCOOH", "CO2");

/** The liquor is evaporated, and what is in it is the product: cooling brings little, or there is no figure for it. */
function evaporate(
  bench: Bench,
  missing?: string,
  how = "Evaporate the liquor in a wide dish, stirring towards the end,",
): void {
  const { setting } = bench.frame;
  const { product, temperature } = setting;
  const warmest = bench.frame.crystallising?.asItForms === true ? undefined : notWarmOf(product.formula)?.upTo;
  const crop = matterOf(product.formula);
  const { books } = bench.pot;
  const there = books.dissolved.find((one) => one.matter.key === crop.core.key)?.amount;
  const coming = there === undefined ? [] : limited(bench.pot, [{ matter: crop, amount: there }]);
  const bound = coming.map((one) => massOfWater(one.amount.times(one.matter.waters)));
  const off = bound.reduce((all, one) => all.minus(one), books.water);
  const gap = missing === undefined ? [] : [`crop of ${product.name} by cooling: ${missing}`];
  const unknown = [...new Set([...books.unknown, ...gap])];
  const done = concentrate(bench.pot, off.isPositive() ? off : exact("0 g"), temperature, coming);
  bench.did(
    POT,
    { ...done, after: done.after.with({ unknown }) },
    {
      care: "isolating",
      target: done.after.mass,
      say: () =>
        `${how}${warmest === undefined ? "" : ` at no more than ${warmest},`} until it sets to crystals (${bench.hand.water(off)} in all); ${missing === undefined ? "cooling brings little of it" : `no crop by cooling is known (${missing})`}.`,
    },
  );
}

// Getting a product out of its liquor: hot filter, boil off or add to the mass at which it stops, cool to where, filter, rinse,
// and a second crop.

import { type Formula, parseFormula } from "../../formula";
import { type Quantity, sum } from "../../quantity";
import { type Crystallisation, retainedLiquor } from "../../solubility";
import { massOf } from "../contents/entry";
import { massOfWater, matterOf } from "../contents/matter";
import { Pot } from "../contents/pot";
import { type Coming, concentrate } from "../operation/concentrate";
import { cool } from "../operation/cool";
import { dilute } from "../operation/dilute";
import { filterCake, filterLiquor } from "../operation/filter";
import { heat } from "../operation/heat";
import { hold } from "../operation/hold";
import { rinse } from "../operation/rinse";
import { seed } from "../operation/seed";
import { exact, planned } from "../planning/exact";
import { keptByWater } from "../reaction/fate";
import { madeOf } from "../reaction/made-of";
import { putAsides } from "./asides";
import { type Bench, MOTHER, POT } from "./bench";
import { protectionOf } from "./protection";
import { useOf } from "./use";
import { about, celsius, list, percent } from "./words";

/** A share of the water that makes no difference. */
const SAME = "2 %";

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

export function isolateCrystals(bench: Bench): void {
  const { crystallising, setting } = bench.frame;
  if (crystallising === undefined) return;
  const { hot, cold, cooling, saltPair } = crystallising;
  if (bench.pot.books.temperature.compare(hot) < 0 || bench.pot.books.solids.length > 0)
    bench.did(POT, heat(bench.pot, hot), {
      care: "isolating",
      target: hot,
      say: () => {
        const kept = protectionOf(setting.product.formula, "crystallising");
        return `Warm the liquor to ${celsius(hot)}, stirring${kept === undefined ? "" : `; ${kept}`}.`;
      },
    });
  filterHot(bench, hot);
  if ("missing" in cooling) {
    evaporate(bench, cooling.missing);
    return;
  }
  if (isFlat(bench, cooling)) {
    evaporate(bench);
    return;
  }
  const before = bench.pot;
  const off = before.books.water.minus(cooling.totalWater);
  const tolerance = cooling.totalWater.times(exact(SAME));
  const beside: Coming[] =
    saltPair === undefined || !saltPair.filteredHot.isPositive() ? [] : otherSalt(bench, saltPair.filteredHot);
  if (off.compare(tolerance) > 0 || beside.length > 0) {
    const done = concentrate(before, off.isPositive() ? off : exact("0 g"), hot, beside);
    const { mass } = done.after;
    bench.did(POT, done, {
      care: "isolating",
      target: mass,
      limit: () => off,
      say: () =>
        `Boil the liquor down, stirring, until the contents weigh ${bench.hand.grams(mass)} (${bench.hand.water(off)} boiled off, ${bench.hand.grams(done.after.books.water)} of water left)${beside.length === 0 ? "" : `; ${bench.hand.grams(saltPair!.filteredHot)} of ${beside[0]!.matter.name} comes out hot`}.`,
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
        `Add ${bench.hand.water(more)}, hot, until the contents weigh ${bench.hand.grams(done.after.mass)}: with less the crystals would hold all the liquor.`,
    });
  }
  if (beside.length > 0) filterHot(bench, hot);
  const crop = matterOf(parseFormula(cooling.crop.formula));
  const hasSeed = bench.frame.setting.asides.some((one) => useOf(one, setting.product.formula) === "seed");
  putAsides(bench, "seed");
  if (!hasSeed && cooling.warnings.some((text) => text.includes("seed it")))
    bench.did(POT, seed(bench.pot), {
      say: () =>
        `When it has cooled to about ${celsius(middle(hot, cold))} put in a few crystals of ${crop.name}: it stays supersaturated easily.`,
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

const middle = (hot: Quantity<"temperature">, cold: Quantity<"temperature">): Quantity => {
  const mean = (hot.in("°C").toNumber() + cold.in("°C").toNumber()) / 2;
  return exact(`${Math.round(mean)} °C`);
};

/** No more crystals than there is of the salt, and of water for them. */
function limited({ books }: Pot, coming: readonly Coming[]): Coming[] {
  return coming.map(({ matter, amount }) => {
    const there = books.dissolved.find((one) => one.matter.key === matter.core.key)?.amount;
    let most = there === undefined || amount.compare(there) <= 0 ? amount : there;
    if (!matter.waters.isZero()) {
      const byWater = books.water
        .dividedBy(massOfWater(exact("1 mol")).dividedBy(exact("1 mol")))
        .dividedBy(matter.waters);
      if (byWater.compare(most) < 0) most = byWater.to("mol");
    }
    return { matter, amount: most };
  });
}

/** The other salt of a pair, as it comes out. */
function otherSalt(bench: Bench, mass: Quantity): Coming[] {
  const { products, product } = bench.frame.setting;
  const species = products.find((one) => one !== product && !one.isWater);
  if (species === undefined) return [];
  const matter = matterOf(species.formula);
  return [{ matter, amount: mass.dividedBy(matter.molarMass).to("mol") }];
}

/** A salt of which cooling brings less than a quarter is evaporated, where nothing else is in the liquor and it binds no water. */
function isFlat(bench: Bench, cooling: Crystallisation): boolean {
  const crop = matterOf(bench.frame.setting.product.formula);
  return (
    bench.frame.crystallising?.saltPair === undefined &&
    cooling.crop.share.compare(exact("25 %")) < 0 &&
    crop.waters.isZero() &&
    parseFormula(cooling.crop.formula).hasSameComposition(crop.formula) &&
    bench.pot.books.dissolved.every(({ matter }) => matter.key === crop.core.key || isFleeting(matter.formula))
  );
}

/** What leaves with the steam. */
const isFleeting = (formula: Formula): boolean => ["H3N", "ClH", "C2H4O2", "CO2"].includes(formula.compositionText);

/** The liquor is evaporated, and what is in it is the product: cooling brings little, or there is no figure for it. */
function evaporate(bench: Bench, missing?: string): void {
  const { setting } = bench.frame;
  const { product, temperature } = setting;
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
        `Evaporate the liquor in a wide dish, stirring towards the end, until it sets to crystals (${bench.hand.water(off)} in all); ${missing === undefined ? "cooling brings little of it" : `no crop by cooling is known (${missing})`}.`,
    },
  );
}

/** Filter, and rinse with little of what takes little of the product. */
export function filterAndRinse(
  bench: Bench,
  product: Parameters<typeof matterOf>[0],
  crop: Quantity,
  cold: Quantity<"temperature">,
): void {
  putAsides(bench, "alcohol");
  const held = crop.times(retainedLiquor("coarse crystals")).to("mL");
  const parted = filterCake(bench.pot, held);
  bench.did(POT, parted, {
    care: "isolating",
    blank: "wetCake",
    say: () =>
      `Filter the crystals off at ${celsius(cold)} and press them; they keep about ${bench.hand.litres(held)} of liquor${purityOf(parted.after)}.`,
  });
  const liquor = parted.left[0]?.pot;
  if (liquor !== undefined) {
    bench.filtrate ??= liquor;
    bench.caught(MOTHER, liquor);
  }
  const matter = matterOf(product);
  const ice = held.times(exact("1 g/mL")).to("g");
  const kept = keptByWater(product, ice, planned("ice") as Quantity<"temperature">);
  const most = kept === undefined ? undefined : kept.compare(crop) > 0 ? crop : kept;
  const takesMuch = most !== undefined && most.compare(crop.times(exact("20 %"))) > 0;
  // Alcohol never meets an oxidiser (with silver nitrate and its acid it makes a fulminate).
  if (takesMuch && isOxidiser(product)) {
    bench.did(POT, hold(bench.pot), {
      say: () =>
        "Do not rinse: press the crystals between filter paper. Water would dissolve too much of them, and alcohol must not meet an oxidiser.",
    });
    return;
  }
  const much = takesMuch || (most === undefined && madeOf(product).ammonia);
  const liquid = much ? "50 % alcohol" : "ice-cold water";
  const lost = most === undefined || much ? undefined : { matter, amount: most.dividedBy(matter.molarMass).to("mol") };
  bench.did(POT, rinse(bench.pot, rinsing(bench, ice, much), lost), {
    amounts: [ice],
    say: () =>
      `Rinse the crystals with ${bench.hand.litres(ice)} of ${liquid}, in two portions, sucking off between${
        much
          ? takesMuch
            ? "; plain water would dissolve too much of them, and what this dissolves is not known"
            : "; plain water takes ammonia out of them, and what this dissolves is not known"
          : most === undefined
            ? " (how much of them it dissolves is not known: use no more)"
            : ` (it dissolves at most ${bench.hand.grams(most)} of them)`
      }.`,
  });
}

/** Salts that give oxygen to what burns. */
const OXIDISERS = ["nitrate", "chlorate", "perchlorate", "bromate", "permanganate", "dichromate", "chromate"];
const isOxidiser = (formula: Parameters<typeof madeOf>[0]): boolean =>
  OXIDISERS.some((name) => madeOf(formula).groups.has(name));

/** How pure crystals are with the liquor that they keep, where a pack has something beside its form. */
function purityOf({ books }: Pot): string {
  if (!books.other.isPositive()) return "";
  const own = sum(books.solids.map(massOf));
  const share = own.dividedBy(own.plus(books.other)).to("%");
  return `, and with it some of what the packs have besides: about ${about(share, "%")} pure before rinsing, if that stays dissolved`;
}

/** Ice water, or as much alcohol as water. */
function rinsing(bench: Bench, mass: Quantity, alcohol: boolean): Pot {
  const { temperature, pressure } = bench.frame.setting;
  const empty = Pot.empty(temperature, pressure);
  if (!alcohol) return empty.plusWater(mass);
  const matter = matterOf(parseFormula("C2H5OH"));
  const half = mass.dividedBy(2);
  return empty.plusWater(half).plusDissolved(matter, half.dividedBy(matter.molarMass).to("mol"));
}

/** A mother liquor of which a figure is missing is not poured away. */
export function keepLiquor(bench: Bench, missing: string): void {
  const liquor = bench.in(MOTHER);
  if (liquor.isEmpty) return;
  const after = liquor.with({ unknown: [...liquor.books.unknown, missing] });
  bench.did(
    MOTHER,
    { ...hold(liquor), after },
    {
      say: () => `Keep the mother liquor until the crystals are weighed: ${missing} is not known.`,
    },
  );
}

/** The liquor boiled down to half and cooled again. */
function secondCrop(bench: Bench, crop: Coming["matter"], cold: Quantity<"temperature">): void {
  const { crystallising } = bench.frame;
  const cooling = crystallising?.cooling;
  if (cooling === undefined || "missing" in cooling || crystallising?.saltPair !== undefined) return;
  const second = cooling.secondCrop;
  if (second === undefined) {
    keepLiquor(bench, "what a second crop brings");
    return;
  }
  if (second.share.compare(exact(SAME)) < 0) return;
  // The crystals kept some of the liquor: what left is as much less.
  const share = bench.in(MOTHER).books.water.dividedBy(cooling.liquorWater);
  const off = second.waterToEvaporate.times(share).to("g");
  const boiled = concentrate(bench.in(MOTHER), off, crystallising!.hot);
  if (!boiled.after.books.water.isPositive()) return;
  bench.did(MOTHER, boiled, {
    target: boiled.after.mass,
    say: () =>
      `For a second crop boil the mother liquor down to ${bench.hand.grams(boiled.after.mass)} (${bench.hand.water(off)} boiled off).`,
  });
  const mass = second.mass.times(share);
  const coming = limited(bench.in(MOTHER), [{ matter: crop, amount: mass.dividedBy(crop.molarMass).to("mol") }]);
  bench.did(MOTHER, cool(bench.in(MOTHER), cold, coming), {
    target: cold,
    say: () =>
      `Cool the mother liquor to ${celsius(cold)} again, filter and rinse as before: about ${bench.hand.grams(mass)} more, less pure; keep it apart.`,
  });
}

// What the liquor that crystals came from still gives: boiled down to half and cooled again; of a pair of salts the other one
// is filtered off hot in between.

import { attempt } from "../../foundation/error";
import type { Quantity } from "../../quantity";
import { fractionalCrystallization } from "../../solubility";
import { type Entry, massOf } from "../contents/entry";
import { type Matter, matterOf } from "../contents/matter";
import { type Coming, concentrate } from "../operation/concentrate";
import { cool } from "../operation/cool";
import { filterLiquor } from "../operation/filter";
import { hold } from "../operation/hold";
import { asMassOfWater, exact, planned } from "../planning/exact";
import { type Bench, MOTHER } from "./bench";
import { limited, otherSalt } from "./coming";
import { celsius, percent } from "./words";

/** Shares of the liquor's water that may be left for a second crop of a pair, the least first. */
const SHARES = ["0.5", "0.6", "0.7", "0.8"] as const;

/** A mother liquor of which a figure is missing is not poured away. */
export function keepLiquor(bench: Bench, missing: string): void {
  const liquor = bench.in(MOTHER);
  if (liquor.isEmpty) return;
  const after = liquor.with({ unknown: [...liquor.books.unknown, missing] });
  bench.did(
    MOTHER,
    { ...hold(liquor), after },
    { say: () => `Keep the mother liquor until the crystals are weighed: ${missing} is not known.` },
  );
}

/** What the measuring cylinder hardly shows is nothing to boil off. */
const isHardlyShown = ({ frame: { setting } }: Bench, off: Quantity): boolean =>
  off.compare(asMassOfWater(setting.steps.volume).times(planned("leastMarks"))) < 0;

/** The liquor boiled down to half and cooled again. */
export function secondCrop(bench: Bench, crop: Matter, cold: Quantity<"temperature">): void {
  const { crystallising } = bench.frame;
  const cooling = crystallising?.cooling;
  if (crystallising === undefined || cooling === undefined || "missing" in cooling) return;
  if (crystallising.saltPair !== undefined) {
    secondOfPair(bench, crop, crystallising.hot, cold);
    return;
  }
  const second = cooling.secondCrop;
  if (second === undefined) {
    keepLiquor(bench, "what a second crop brings");
    return;
  }
  if (second.share.compare(planned("littleMore")) < 0) return;
  // The crystals kept some of the liquor: what left is as much less.
  const share = bench.in(MOTHER).books.water.dividedBy(cooling.liquorWater);
  const off = second.waterToEvaporate.times(share).to("g");
  if (isHardlyShown(bench, off)) return;
  const boiled = concentrate(bench.in(MOTHER), off, crystallising.hot);
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

/** Both salts of a pair are in the liquor: the other one leaves hot, the wanted one comes cold. */
function secondOfPair(bench: Bench, crop: Matter, hot: Quantity<"temperature">, cold: Quantity<"temperature">): void {
  const { products, product } = bench.frame.setting;
  const liquor = bench.in(MOTHER);
  const species = products.find((one) => one !== product && !one.isWater);
  const other = species === undefined ? undefined : matterOf(species.formula);
  const there = (matter: Matter): Entry | undefined =>
    liquor.books.dissolved.find((one) => one.matter.key === matter.core.key);
  const [own, beside] = [there(crop), other === undefined ? undefined : there(other)];
  if (own === undefined || beside === undefined || other === undefined) return;
  const parted = (share: string) => {
    const water = liquor.books.water.times(exact(share)).to("g") as Quantity<"mass">;
    const from = [own, beside].map((one) => ({
      formula: one.matter.formula,
      mass: massOf(one) as Quantity<"mass">,
    }));
    const pair = attempt(() =>
      fractionalCrystallization({ wanted: product.formula, other: other.formula, from, water, hot, cold }),
    );
    return { water, pair };
  };
  // Boiled down so far that the wanted salt comes hot as well, both would be on the hot filter.
  let { water, pair } = parted(SHARES[0]);
  for (const share of SHARES.slice(1))
    if (pair.ok && pair.value.wantedFilteredHot.isPositive()) ({ water, pair } = parted(share));
  if (!pair.ok) {
    if (pair.error.code !== "solubility.no-crop") keepLiquor(bench, "what a second crop brings");
    return;
  }
  const { filteredHot, wantedFilteredHot, crop: mass, contamination, purity } = pair.value;
  if (wantedFilteredHot.isPositive()) return;
  if (mass.compare(bench.frame.theory.times(planned("littleMore"))) < 0 || purity.compare(planned("crystalPurity")) < 0)
    return;
  const hotOnes: Coming[] = filteredHot.isPositive() ? otherSalt(bench, filteredHot) : [];
  const off = liquor.books.water.minus(water);
  if (isHardlyShown(bench, off)) return;
  const boiled = concentrate(liquor, off, hot, hotOnes);
  bench.did(MOTHER, boiled, {
    target: boiled.after.mass,
    say: () =>
      `For a second crop boil the mother liquor down to ${bench.hand.grams(boiled.after.mass)} (${bench.hand.water(off)} boiled off)${hotOnes.length === 0 ? "" : `; ${bench.hand.grams(filteredHot)} of ${other.name} crystallises hot`}.`,
  });
  if (hotOnes.length > 0)
    bench.did(MOTHER, filterLiquor(bench.in(MOTHER)), {
      say: () => `Filter the mother liquor hot (${celsius(hot)}) from the ${other.name}.`,
    });
  const cold2: Coming[] = [{ matter: crop, amount: mass.dividedBy(crop.molarMass).to("mol") }];
  if (contamination.isPositive()) cold2.push(...otherSalt(bench, contamination));
  bench.did(MOTHER, cool(bench.in(MOTHER), cold, limited(bench.in(MOTHER), cold2)), {
    target: cold,
    say: () =>
      `Cool the mother liquor to ${celsius(cold)} again, filter and rinse as before: about ${bench.hand.grams(mass)} more, ${percent(purity)} pure; keep it apart.`,
  });
}

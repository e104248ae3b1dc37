// Rinsed crystals tested for a salt that forms beside them: so far diluted that what the rinse leaves does not show, and twice that
// does.

import { type Formula, parseFormula } from "../../formula";
import { attempt } from "../../foundation/error";
import { constitutionOf } from "../../ion";
import { type Quantity, quantity, sum } from "../../quantity";
import { type WashAdvice, washAdvice } from "../../solubility";
import { type Entry, massOf } from "../contents/entry";
import { type Matter, matterOf } from "../contents/matter";
import { CRYSTAL_TEST } from "../data/crystal-test";
import { testWash } from "../operation/wash";
import { exact, planned } from "../planning/exact";
import { formulaFrom } from "../reaction/species";
import { type Bench, POT } from "./bench";
import { coolingOf, isFlat } from "./cooling";
import { celsius, type Hand, percent } from "./words";

type EndTest = WashAdvice["endTests"][number];

/** Ions of one kind in a formula unit of a salt. */
function ionsIn({ core }: Matter, ion: string): Quantity {
  const { cations, anions } = constitutionOf(core.formula);
  const own = [...cations, ...anions].find(({ formula }) => formula === ion);
  return exact(String(own?.count ?? 0));
}

/** The test of an ion that nothing in the product disturbs; undefined where there is none. */
function testOf(product: Formula, salts: readonly Entry[]): EndTest | undefined {
  const advice = attempt(() => washAdvice({ product, washedOut: salts.map(({ matter }) => matter.core.formula) }));
  if (!advice.ok) return undefined;
  const own = constitutionOf(product).anions.map(({ formula }) => formula);
  return advice.value.endTests.find(({ ion, showsFrom }) => {
    const row = CRYSTAL_TEST.of.find((one) => one.ion === ion);
    return (
      showsFrom !== undefined && row !== undefined && own.every((anion) => row.beside.some((one) => one === anion))
    );
  });
}

/** How they are purified where a rinse does not do it, after a semicolon; nothing where no figure tells, or cooling brings little. */
function dissolvedAgain({ hand, frame: { setting, crystallising } }: Bench, product: Formula, crop: Quantity): string {
  if (crystallising === undefined) return "";
  const { hot, notBelow } = crystallising;
  const cold = notBelow === undefined ? setting.temperature : crystallising.cold;
  const again = coolingOf(product, crop as Quantity<"mass">, hot, cold, planned("pairFilter").toNumber(""));
  if ("missing" in again || isFlat(again) || !parseFormula(again.crop.formula).hasSameComposition(product)) return "";
  return `; if it shows after that, dissolve them again in ${hand.water(again.water)} at ${celsius(hot)} and let that crystallise at ${celsius(cold)}: ${hand.grams(again.crop.mass)} comes back`;
}

/** A solution made so many times thinner in steps that a cylinder shows, in words. */
function thinned(hand: Hand, times: number): string {
  const { taken, step, most } = CRYSTAL_TEST;
  const to = exact(taken).times(quantity(times.toPrecision(2)));
  if (to.compare(exact(most)) <= 0) return ` ${taken} of that diluted with more of it to ${hand.litres(to)},`;
  return ` ${taken} of that diluted with more of it to ${step},${thinned(hand, times / exact(step).dividedBy(exact(taken)).toNumber(""))}`;
}

/** A sample of the rinsed crystals tested for the salt that the equation has beside them; nothing where no drop tells. */
export function testCrystals(bench: Bench, product: Formula): void {
  const { setting } = bench.frame;
  const keys = setting.products
    .filter((one) => one !== setting.product && !one.isWater)
    .map(({ formula }) => matterOf(formula).core.key);
  const { solids, dissolved } = bench.pot.books;
  const own = matterOf(product).core.key;
  const all = [...solids, ...dissolved].filter(({ matter }) => matter.core.key !== own);
  const beside = all.filter(({ matter }) => keys.includes(matter.core.key));
  const test = testOf(product, beside);
  const salt = beside.find(({ matter }) => test !== undefined && !ionsIn(matter, test.ion).isZero())?.matter.core;
  const crop = sum([exact("0 g"), ...solids.filter(({ matter }) => matter.core.key === own).map(massOf)]);
  if (test === undefined || salt === undefined || !crop.isPositive()) return;
  const { sample, water } = CRYSTAL_TEST;
  const left = sum(all.map(({ matter, amount }) => amount.times(ionsIn(matter, test.ion))))
    .dividedBy(ionsIn(salt, test.ion))
    .times(salt.molarMass)
    .dividedBy(crop);
  const [twice, least] = [left.times(2), planned("residue")];
  const limit = twice.compare(least) > 0 ? twice : least;
  // of so much in the sample, where it just shows
  const strength = exact(sample)
    .times(limit)
    .times(ionsIn(salt, test.ion))
    .dividedBy(salt.molarMass)
    .dividedBy(exact(water));
  const times = strength.dividedBy(exact(test.showsFrom!)).toNumber("");
  const thin = times <= 1 ? "" : `,${thinned(bench.hand, times)}`;
  const why = twice.compare(least) > 0 ? ", twice what the rinse leaves" : "";
  bench.did(POT, testWash(bench.pot), {
    blank: "tests.lastWash",
    tests: [test],
    ...(test.boxes === undefined ? {} : { choices: test.boxes }),
    say: () =>
      `Test ${sample} of the crystals in ${water} of distilled water${thin} for ${formulaFrom(test.ion).toUnicode()}, against a dark ground (${test.test}): a cloud tells of more than ${percent(limit.to("%"))} of ${salt.name}${why}: rinse them once more${dissolvedAgain(bench, product, crop)}.`,
  });
}

// A salt that stays on the hot filter rinsed with a little boiling water into the liquor, where it would keep much of the product with
// its own; the liquor is boiled down by so much further before.

import { list } from "../../foundation/wording";
import { type Quantity, sum } from "../../quantity";
import { massOf } from "../contents/entry";
import { matterOf } from "../contents/matter";
import { type Coming, concentrate } from "../operation/concentrate";
import { filterSalt, filterSaltRinsed } from "../operation/filter";
import { exact, planned } from "../planning/exact";
import { type Bench, POT } from "./bench";
import { limited, solutesOf } from "./coming";
import { keptFrom, withAcidAfter } from "./keeping";
import { isEvaporated } from "./not-warm";
import { isTurnedByWater } from "./protection";
import { saturatedAt } from "./settling";
import { celsius } from "./words";

type Temperature = Quantity<"temperature">;

/** Water to rinse the salt with that a liquor with so much water leaves on its filter; undefined where it is not worth it, or what is left could not keep the product dissolved near the boil. */
export function saltRinseFor(
  bench: Bench,
  water: Quantity,
  beside: readonly Coming[],
  hot: Temperature,
): Quantity<"mass"> | undefined {
  const { pot, frame } = bench;
  const { formula } = frame.setting.product;
  const off = pot.books.water.minus(water);
  if (beside.length === 0 || !off.isPositive() || isEvaporated(formula) || isTurnedByWater(formula)) return undefined;
  const product = matterOf(formula);
  const rinse = sum(beside.map(massOf)).times(planned("saltOnFilter")).to("g");
  const { after, left } = filterSalt(concentrate(pot, off, hot, beside).after, planned("saltOnFilter"));
  const lost = left[0]?.pot.books.dissolved.find(({ matter }) => matter.key === product.core.key);
  const { own } = solutesOf(after, product);
  if (lost === undefined || own === undefined) return undefined;
  if (massOf(lost).compare(frame.theory.times(planned("littleMore"))) <= 0) return undefined;
  const keeps = saturatedAt(product, planned("nearTheBoil") as Temperature)?.perHundredGramsWater;
  if (keeps === undefined || beside.some(({ matter }) => saturatedAt(matter, hot) === undefined)) return undefined;
  const dry = massOf({ matter: own.matter.core, amount: own.amount }).plus(massOf(lost));
  const least = dry.times(exact("100 g")).dividedBy(keeps).times(planned("pairFilter"));
  return water.minus(rinse).compare(least) < 0 ? undefined : rinse;
}

/** The salt filtered off near the boil, pressed and rinsed into the liquor. */
export function filterAndRinseSalt(bench: Bench, water: Quantity<"mass">, hot: Temperature): void {
  const { pot, hand, frame } = bench;
  const taken = pot.books.solids.map(({ matter }): Coming => {
    const mass = saturatedAt(matter, hot)!.perHundredGramsWater.times(water).dividedBy(exact("100 g"));
    return { matter, amount: mass.dividedBy(matter.core.molarMass).to("mol") };
  });
  const done = filterSaltRinsed(pot, planned("saltOnFilter"), water, limited(pot, taken));
  const residue = done.left[0]!.pot;
  const { core } = matterOf(frame.setting.product.formula);
  const own = residue.books.dissolved.find(({ matter }) => matter.key === core.key);
  const names = list([...new Set(pot.books.solids.map(({ matter }) => matter.name))]);
  const boil = planned("nearTheBoil") as Temperature;
  const from = boil.minus(exact("5 Δ°C"));
  const kept = keptFrom(bench, done.after);
  bench.did(POT, withAcidAfter(kept, done), {
    ...kept.takes,
    amounts: [water, ...(kept.takes.amounts ?? [])],
    say: () =>
      `Filter at once, at ${celsius(from).replace(" °C", "")} to ${celsius(boil)}, through a warmed funnel, from the ${names} that is not dissolved, press it, and rinse it with ${hand.litres(water)} of boiling water into the liquor: it keeps about ${hand.grams(residue.with({ solids: [] }).mass)} of that${own === undefined ? "" : ` with ${hand.grams(massOf(own))} of ${core.name} in it`}; the clear liquor is kept${kept.text}.`,
  });
}

// What comes out of a liquor: by what its water keeps of everything in it, never more than there is, and of water for its crystals.

import { list } from "../../foundation/wording";
import { type Quantity, quantity, sum } from "../../quantity";
import { type Entry, massOf } from "../contents/entry";
import { type Matter, massOfWater, matterOf } from "../contents/matter";
import type { Pot } from "../contents/pot";
import type { Coming } from "../operation/concentrate";
import { exact, planned } from "../planning/exact";
import { fateOf, keptByWater } from "../reaction/fate";
import type { Bench } from "./bench";
import { leastKept } from "./common-ion";
import { saturatedAt, saturatedHot, settledFrom } from "./settling";
import { percent } from "./words";

type Temperature = Quantity<"temperature">;

/** No more crystals than there is of the salt, and of water for them. */
export function limited({ books }: Pot, coming: readonly Coming[]): Coming[] {
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

/** What is dissolved of the product, and beside it. */
export function solutesOf(
  { books }: Pot,
  product: Matter,
): { readonly own: Entry | undefined; readonly others: Entry[] } {
  const isOwn = ({ matter }: Entry): boolean => matter.key === product.core.key;
  const own = books.dissolved.find(isOwn);
  return {
    // a table that names no solid leaves it the form that is asked for
    own: own === undefined ? undefined : { matter: product, amount: own.amount },
    others: books.dissolved.filter((one) => !isOwn(one)),
  };
}

const wantedBy = ({ frame }: Bench): Matter => matterOf(frame.setting.product.formula);

/** An entry, no more of it than so much water keeps where a figure tells. */
function keptOf({ matter, amount }: Entry, water: Quantity, hot: Temperature): Entry {
  const figure = saturatedHot(matter, hot);
  const most =
    figure === undefined
      ? amount
      : figure.perHundredGramsWater.times(water).dividedBy(exact("100 g")).dividedBy(matter.core.molarMass).to("mol");
  return { matter, amount: most.compare(amount) < 0 ? most : amount };
}

/** Salts beside the product that so much hot water no longer keeps; what no balance shows stays. */
export function comingHot(bench: Bench, pot: Pot, water: Quantity, hot: Temperature): Coming[] {
  const { steps, temperature } = bench.frame.setting;
  const product = wantedBy(bench);
  const { own, others } = solutesOf(pot, product);
  const staying = own === undefined ? undefined : keptOf(own, water, hot);
  const settled = settledFrom({ entries: others, product, staying }, water, hot)?.coming ?? [];
  // of what hardly dissolves the figure of the room will do
  const little = others.flatMap(({ matter, amount }): Coming[] => {
    if (saturatedAt(matter, hot) !== undefined || fateOf(matter.formula, temperature).precipitated !== true) return [];
    const figure = saturatedHot(matter, hot);
    if (figure !== undefined) return [{ matter, amount: amount.minus(keptOf({ matter, amount }, water, hot).amount) }];
    const kept = keptByWater(matter.formula, water, temperature)?.dividedBy(matter.molarMass).to("mol");
    return kept === undefined ? [] : [{ matter, amount: amount.minus(kept) }];
  });
  return [...settled, ...little].filter((one) => massOf(one).compare(steps.mass) >= 0);
}

/** Crystals of a cooled liquor. */
export interface Crystals {
  readonly own: Coming;
  /** Share of what is dissolved of it. */
  readonly share: Quantity;
  /** What crystallises with it. */
  readonly along: readonly Coming[];
  /** Everything that comes. */
  readonly all: readonly Coming[];
  /** Share of the product in all of that. */
  readonly purity: Quantity;
}

/** What crystallises from a liquor at a temperature; undefined where none of the product does, or no liquor would be left. */
export function crystalsFrom(bench: Bench, pot: Pot, cold: Temperature): Crystals | undefined {
  const product = wantedBy(bench);
  const { own, others } = solutesOf(pot, product);
  if (own === undefined) return undefined;
  const settled = settledFrom({ entries: [own, ...others], product }, pot.books.water, cold);
  const coming = limited(pot, settled?.coming ?? []);
  const crop = coming.find(({ matter }) => matter.core.key === own.matter.core.key);
  if (crop === undefined) return undefined;
  const along = coming.filter((one) => one !== crop);
  const mass = massOf(crop);
  return {
    own: crop,
    share: crop.amount.dividedBy(own.amount).to("%"),
    along,
    all: coming,
    purity: mass.dividedBy(sum([mass, ...along.map(massOf)])).to("%"),
  };
}

/**
 * How much more of the product comes at most for the ions that other salts bring, over what pure water lets come, and which salts these
 * are; undefined where it is not worth a word.
 */
export function moreByCommonIon(
  { frame: { theory } }: Bench,
  { books }: Pot,
  { own: { matter, amount } }: Crystals,
  cold: Temperature,
): { readonly mass: Quantity<"mass">; readonly salts: readonly Matter[] } | undefined {
  const left = books.dissolved.find((one) => one.matter.key === matter.core.key);
  const figure = saturatedAt(matter, cold);
  const stays = left?.amount.minus(amount);
  if (stays === undefined || figure === undefined || !stays.isPositive() || books.waterMissing.length > 0)
    return undefined;
  const asSalt = (one: Entry) => ({
    matter: one.matter,
    dry: massOf({ ...one, matter: one.matter.core }).toNumber("g"),
  });
  const others = books.dissolved.filter((one) => one !== left);
  const water = books.water.minus(massOfWater(amount.times(matter.waters))).toNumber("g");
  const kept = (salts: readonly Entry[]): number =>
    leastKept([asSalt({ matter, amount: stays }), ...salts.map(asSalt)], figure.perGram, water);
  const mass = massOf({ matter, amount: stays })
    .times(quantity((1 - kept(others)).toPrecision(4)))
    .to("g");
  return mass.compare(theory.times(planned("littleMore"))) < 0
    ? undefined
    : {
        mass: mass.named({
          symbol: "m(common ion)",
          label: "more crystals by a common ion, at most",
        }) as Quantity<"mass">,
        salts: others.filter((one) => kept([one]) < 1).map((one) => one.matter),
      };
}

const masses = ({ hand }: Bench, coming: readonly Coming[]): string[] =>
  coming.map((one) => `${hand.grams(massOf(one))} of ${one.matter.name}`);

/** What crystallises while the liquor is boiled down, in words. */
export const saidHot = (bench: Bench, beside: readonly Coming[]): string =>
  masses(bench, beside)
    .map((one) => `; ${one} crystallises hot`)
    .join("");

/** What crystallises with the product, in words, as far as a balance shows it. */
export function saidAlong(bench: Bench, { along, purity }: Pick<Crystals, "along" | "purity">): string {
  const shown = along.filter((one) => massOf(one).compare(bench.frame.setting.steps.mass) >= 0);
  return shown.length === 0 ? "" : `, and with it ${list(masses(bench, shown))}: ${percent(purity)} pure`;
}

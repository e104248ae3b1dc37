// What comes out of a liquor: never more than there is of it, and of water for its crystals.

import type { Quantity } from "../../quantity";
import { massOf } from "../contents/entry";
import { massOfWater, matterOf } from "../contents/matter";
import type { Pot } from "../contents/pot";
import type { Coming } from "../operation/concentrate";
import { exact } from "../planning/exact";
import { fateOf, keptByWater } from "../reaction/fate";
import { isGas } from "../reaction/fluids";
import type { Bench } from "./bench";

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

/** By-products that water hardly dissolves, and that less of it no longer keeps: gypsum of a liquor that is boiled down. */
export function hardlySoluble(bench: Bench, left: Quantity, hot: Quantity<"temperature">): Coming[] {
  const { products, product, temperature, steps } = bench.frame.setting;
  return products.flatMap((species): Coming[] => {
    if (species === product || species.isWater || isGas(species.formula, true)) return [];
    if (fateOf(species.formula, temperature).precipitated !== true) return [];
    const matter = matterOf(species.formula);
    const there = bench.pot.books.dissolved.find((one) => one.matter.key === matter.core.key)?.amount;
    const kept = (keptByWater(matter.formula, left, hot) ?? keptByWater(matter.formula, left, temperature))
      ?.dividedBy(matter.molarMass)
      .to("mol");
    if (there === undefined || kept === undefined) return [];
    const amount = there.minus(kept);
    return amount.times(matter.molarMass).compare(steps.mass) < 0 ? [] : [{ matter, amount }];
  });
}

/** The other salt of a pair, as it comes out. */
export function otherSalt(bench: Bench, mass: Quantity): Coming[] {
  const { products, product } = bench.frame.setting;
  const species = products.find((one) => one !== product && !one.isWater);
  if (species === undefined) return [];
  const matter = matterOf(species.formula);
  return [{ matter, amount: mass.dividedBy(matter.molarMass).to("mol") }];
}

/** What crystallises while the liquor is boiled down, in words. */
export const comesHot = ({ hand }: Bench, beside: readonly Coming[]): string =>
  beside.map((one) => `; ${hand.grams(massOf(one))} of ${one.matter.name} crystallises hot`).join("");

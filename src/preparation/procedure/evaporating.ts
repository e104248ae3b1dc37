// A liquor evaporated until it sets: what is in it is the product.

import { massOfWater, matterOf } from "../contents/matter";
import { concentrate } from "../operation/concentrate";
import { exact } from "../planning/exact";
import { type Bench, POT } from "./bench";
import { limited } from "./coming";
import { keptFrom, withAcidFirst } from "./keeping";
import { notWarmOf } from "./not-warm";
import { celsius } from "./words";

/** The liquor is evaporated, and what is in it is the product: cooling brings little, or there is no figure for it. */
export function evaporate(
  bench: Bench,
  missing?: string,
  how = "Evaporate the liquor in a wide dish, stirring towards the end,",
): void {
  const { setting } = bench.frame;
  const { product, temperature } = setting;
  const { asItForms = false, notBelow } = bench.frame.crystallising ?? {};
  const warmest = asItForms ? undefined : notWarmOf(product.formula)?.upTo;
  const crop = matterOf(product.formula);
  const kept = keptFrom(bench);
  const { books } = bench.pot;
  const there = books.dissolved.find((one) => one.matter.key === crop.core.key)?.amount;
  const coming = there === undefined ? [] : limited(bench.pot, [{ matter: crop, amount: there }]);
  const bound = coming.map((one) => massOfWater(one.amount.times(one.matter.waters)));
  const off = bound.reduce((all, one) => all.minus(one), books.water);
  const gap = missing === undefined ? [] : [`crop of ${product.name} by cooling: ${missing}`];
  const unknown = [...new Set([...books.unknown, ...gap])];
  const done = withAcidFirst(kept, bench.pot, (pot) =>
    concentrate(pot, off.isPositive() ? off : exact("0 g"), temperature, coming),
  );
  bench.did(
    POT,
    { ...done, after: done.after.with({ unknown }) },
    {
      ...kept.takes,
      care: "isolating",
      apparatus: "wide dish",
      target: done.after.mass,
      say: () =>
        `${how}${warmest === undefined ? "" : ` at no more than ${warmest},`}${notBelow === undefined ? "" : ` above ${celsius(notBelow)} all the time,`} until it sets to crystals (${bench.hand.water(off)} in all); ${notBelow !== undefined ? "colder another hydrate would crystallise" : missing === undefined ? "cooling brings little of it" : "how much of it crystallises on cooling is not known"}${kept.text}.`,
    },
  );
}

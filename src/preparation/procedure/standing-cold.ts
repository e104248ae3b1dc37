// Crystals that form in the cold, of what must not be warmed in its liquor.

import type { Quantity } from "../../quantity";
import { massOf } from "../contents/entry";
import { matterOf } from "../contents/matter";
import { GOES_IN_AIR } from "../data/products";
import { cool } from "../operation/cool";
import { exact } from "../planning/exact";
import { keptByWater } from "../reaction/fate";
import { putAsides } from "./asides";
import { type Bench, POT } from "./bench";
import { filterHot } from "./clearing";
import { crystalsFrom, limited, saidAlong } from "./coming";
import { evaporate } from "./evaporating";
import { goesInAir, notWarmOf } from "./not-warm";
import { filterAndRinse } from "./rinsing";
import { celsius } from "./words";

/** Does a salt come in as a solid that dissolves as the product comes? */
const isStirredIn = ({ frame: { feeds } }: Bench): boolean =>
  feeds.some((feed) => feed.how === "solid" && feed.dissolves);

/** At what warmth it is stirred, in words: it cools as the salt dissolves, and that salt stands no more. */
function stirredAt({ frame: { feeds, setting } }: Bench): string {
  const i = feeds.findIndex((feed) => feed.how === "solid" && feed.dissolves);
  return i >= 0 && goesInAir(setting.materials[i]!.form)
    ? ` at ${GOES_IN_AIR.kept}, in tepid water where it has cooled by itself (never above ${GOES_IN_AIR.never}: the ${setting.materials[i]!.shelf.name} gives off ${GOES_IN_AIR.gives}),`
    : ",";
}

/** What must not be warmed comes out as it forms; the liquor keeps what it dissolves. */
export function standCold(bench: Bench, cold: Quantity<"temperature">): void {
  const { product } = bench.frame.setting;
  filterHot(bench, cold);
  const matter = matterOf(product.formula);
  const { books } = bench.pot;
  const there = books.dissolved.find((one) => one.matter.key === matter.core.key)?.amount ?? exact("0 mol");
  const stays = keptByWater(product.formula, books.water, cold);
  const amount = stays === undefined ? there : there.minus(stays.dividedBy(matter.molarMass).to("mol"));
  // with a figure of its own everything in the liquor is balanced; else what the water keeps of it is all that is known
  const crystals = crystalsFrom(bench, bench.pot, cold);
  const coming = crystals?.all ?? (amount.isPositive() ? limited(bench.pot, [{ matter, amount }]) : []);
  if (coming.length === 0) {
    evaporate(
      bench,
      `${product.name} stays dissolved`,
      "Let the liquor evaporate in a wide dish in moving air, not warmed,",
    );
    return;
  }
  const mass = massOf(crystals?.own ?? coming[0]!);
  const why = notWarmOf(product.formula)?.why;
  // with a figure: what is not in the crystals, which take water of the liquor along
  const left = stays === undefined ? undefined : there.times(matter.molarMass).minus(mass).to("g");
  putAsides(bench, "seed");
  bench.did(POT, cool(bench.pot, cold, coming), {
    care: "isolating",
    target: cold,
    blank: "temperature",
    say: () =>
      `Do not warm it${why === undefined ? "" : `: ${why}`}. ${isStirredIn(bench) ? `Stir it for an hour${stirredAt(bench)} in which the solid goes over into the product, no lump left under the rod, then let` : "Let"} it stand at ${celsius(cold)} or colder until no more crystallises, and scratch the glass or put a crystal of it in if none come: ${bench.hand.grams(mass)} of ${matter.name} in all${left === undefined ? "" : `, and ${bench.hand.grams(left)} stays dissolved`}${crystals === undefined ? "" : saidAlong(bench, crystals)}; in ice more comes.`,
  });
  filterAndRinse(bench, product.formula, mass, cold);
}

// A precipitate of which cold water keeps much less than the room does: its liquor is put into ice before it is filtered, where that
// brings enough of it.

import type { Quantity } from "../../quantity";
import { matterOf } from "../contents/matter";
import { Pot } from "../contents/pot";
import { done } from "../operation/operation";
import { planned } from "../planning/exact";
import { massFor } from "../reaction/account";
import { keptByWater } from "../reaction/fate";
import { type Bench, POT } from "./bench";
import { mayStandInIce } from "./by-eye";
import { limited } from "./coming";
import { celsius } from "./words";

type Temperature = Quantity<"temperature">;

/** Part of what the room keeps of the product that ice keeps, by its solubility; undefined where no figure tells. */
function shareIn(bench: Bench, ice: Temperature): Quantity | undefined {
  const { product, temperature: room } = bench.frame.setting;
  const { water } = bench.pot.books;
  if (bench.pot.books.waterMissing.length > 0 || !water.isPositive()) return undefined;
  const [less, more] = [ice, room].map((at) => keptByWater(product.formula, water, at));
  return less === undefined || more === undefined || !more.isPositive() ? undefined : less.dividedBy(more).to("");
}

/** The liquor put into ice, and what it keeps then; is it worth it? */
export function coolInIce(bench: Bench): boolean {
  const { kept, frame } = bench;
  const { product } = frame.setting;
  const ice = planned("iced") as Temperature;
  const share = kept === undefined ? undefined : shareIn(bench, ice);
  if (kept === undefined || share === undefined || !mayStandInIce(bench, true)) return false;
  const more = kept.amount.minus(kept.amount.times(share)).to("mol");
  const mass = massFor(more, product.formula);
  if (mass.compare(frame.theory.times(planned("worthIce"))) < 0) return false;
  const matter = matterOf(product.formula);
  const [coming] = limited(bench.pot, [{ matter, amount: more }]);
  const { amount } = coming!;
  const after = new Pot(bench.pot.books).minus(matter, amount).plusSolid(matter, amount, "precipitated").at(ice);
  bench.did(POT, done("cool", bench.pot, after), {
    target: ice,
    atHand: ["ice"],
    say: () =>
      `Put the vessel into ice and water until it is at ${celsius(ice)}, and leave it there for half an hour, stirring now and then: cold water keeps only ${share.to("%").format({ significant: 2, uncertainty: "none" })} of what the room does, and about ${bench.hand.grams(mass)} more comes; scratch the glass if none does.`,
  });
  bench.kept = {
    ...kept,
    amount: kept.amount.times(share).to("mol"),
    range: () => kept.range()?.map((one) => one.times(share).to("mol")) as ReturnType<typeof kept.range>,
  };
  return true;
}

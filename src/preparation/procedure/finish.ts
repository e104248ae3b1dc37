// The end of every procedure: dry to constant mass, weigh, bottle.
import { sum } from "../../quantity";
import { massOf } from "../contents/entry";
import { matterOf } from "../contents/matter";
import { collect } from "../operation/collect";
import { dry } from "../operation/dry";
import { exact } from "../planning/exact";
import { putTheRest, rinseWithAlcohol } from "./asides";
import { type Bench, POT } from "./bench";
import { dryingOf } from "./drying";
import { protectionOf } from "./protection";
import { celsius, list } from "./words";

export function finish(bench: Bench): void {
  const { setting } = bench.frame;
  const { product } = setting;
  const { upTo, why, deliquescent } = dryingOf(product.formula);
  const runs = deliquescent ? " over a drying agent; it is deliquescent" : "";
  const kept = protectionOf(product.formula, "drying");
  const care = kept === undefined ? "" : `; ${kept}`;
  rinseWithAlcohol(bench);
  putTheRest(bench);
  bench.did(POT, dry(bench.pot), {
    care: "drying",
    blank: "dried",
    limit: () => upTo,
    say: () =>
      `${upTo === undefined ? "Dry at room temperature" : `Dry at no more than ${celsius(upTo)} (${why})`}${runs} until two weighings half an hour apart differ by less than 0.2 %${care}.`,
  });
  weighProduct(bench, deliquescent ? "Bottle it warm and tightly closed" : "Bottle and label it");
}

/** Less than this beside the product is not worth a word. */
const WORTH = "0.5 %";

/** What to expect on the balance: the product, and what comes with it. */
export function weighProduct(bench: Bench, bottle: string): void {
  const { setting, theory } = bench.frame;
  const { name, formula } = setting.product;
  const core = matterOf(formula).core.key;
  const { solids } = bench.pot.books;
  const own = solids.filter(({ matter }) => matter.core.key === core).map(massOf);
  const mass = own.length === 0 ? theory : sum(own);
  const others = solids.filter(
    (one) => one.matter.core.key !== core && massOf(one).compare(mass.times(exact(WORTH))) > 0,
  );
  const beside = others.map((one) => `${bench.hand.grams(massOf(one))} of ${one.matter.name}`);
  const all = sum([mass, ...others.map(massOf)]);
  const isLess = mass.compare(theory.times(exact("99 %"))) < 0;
  const about = isLess
    ? `about ${bench.hand.grams(mass)} expected, ${bench.hand.grams(theory)} at 100 % yield`
    : `${bench.hand.grams(theory)} at 100 % yield`;
  const together = beside.length === 0 ? "" : `, and with it ${list(beside)}, ${bench.hand.grams(all)} in all`;
  bench.did(POT, collect(bench.pot), {
    target: all,
    blank: "dried",
    say: () => `Weigh the dry ${name}: ${about}${together}. ${bottle}.`,
  });
}

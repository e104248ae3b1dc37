// A precipitate that comes slowly: it is given time before anything is filtered, or it comes in the filtrate.

import { capital } from "../../foundation/wording";
import { matterOf } from "../contents/matter";
import { hold } from "../operation/hold";
import { planned } from "../planning/exact";
import { slowlyRow } from "../reaction/comes-slowly";
import { type Bench, POT } from "./bench";

/** Time for what comes slowly beside the product. */
export function giveItTime(bench: Bench): void {
  const { books } = bench.pot;
  const { product } = bench.frame.setting;
  const slow = books.solids.find(
    ({ matter, origin }) =>
      origin === "precipitated" &&
      slowlyRow(matter.formula) !== undefined &&
      matter.key !== matterOf(product.formula).key,
  );
  if (slow === undefined) return;
  const row = slowlyRow(slow.matter.formula)!;
  const isHot = books.temperature.compare(planned("feelsHot")) > 0;
  bench.did(POT, hold(bench.pot), {
    say: () =>
      `${capital(isHot ? row.hot : row.cold)}: ${bench.called(slow.matter)} comes slowly, and what has not come yet would be in the filtrate. It is done when ${row.test}.`,
  });
}

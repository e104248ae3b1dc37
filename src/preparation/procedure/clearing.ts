// A clear liquor before anything crystallises from it: what is not dissolved goes on the filter hot, then dust and rust.

import type { Quantity } from "../../quantity";
import { filterLiquor } from "../operation/filter";
import { hold } from "../operation/hold";
import { exact } from "../planning/exact";
import { type Bench, POT } from "./bench";
import { celsius, list } from "./words";

/** Solids that are not wanted go before anything crystallises. */
export function filterHot(bench: Bench, hot: Quantity<"temperature">): void {
  if (bench.pot.books.solids.length === 0) return;
  const { solids } = bench.pot.books;
  const names = list([...new Set(solids.map(({ matter }) => bench.called(matter)))]);
  bench.did(POT, filterLiquor(bench.pot), {
    say: () =>
      `${hot.compare(exact("40 °C")) > 0 ? `Filter hot (${celsius(hot)})` : "Filter"} from the ${names} that is not dissolved; the clear liquor is kept.`,
  });
}

/** Dust and rust go now: once it cools nothing can be filtered from the crystals. */
function lookThrough(bench: Bench, hot: Quantity<"temperature">): void {
  bench.did(POT, hold(bench.pot), {
    care: "isolating",
    say: () =>
      `Look through the hot liquor: if it is not clear, filter it at ${celsius(hot)} through a warmed funnel, and rinse the filter with a little hot water.`,
  });
}

/** The hot liquor filtered; or looked through where no solid is in it, unless something is filtered off later or may be product. */
export function clearHot(bench: Bench, hot: Quantity<"temperature">, isLeft: boolean): void {
  const dirty = bench.pot.books.solids.length > 0;
  filterHot(bench, hot);
  // What leaves on the hot filter takes the dust along.
  if (!dirty && !isLeft) lookThrough(bench, hot);
}

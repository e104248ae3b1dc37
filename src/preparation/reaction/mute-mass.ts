// A charge of several solids of which the mass does not tell whether they have reacted: nothing leaves it, or only what its feeds give
// off each by itself, chalk its carbon dioxide.
import { type Formula, parseFormula } from "../../formula";
import type { Quantity } from "../../quantity";
import { heatingOf } from "./heating";

const OXYGEN = "O";

/** Does heat alone drive a gas out of a solid, by the steps of the table, at this temperature or below? */
const givesByItself = (feed: Formula, gas: Formula, at: Quantity | undefined): boolean =>
  heatingOf(feed).some(
    ({ from, leaves }) =>
      (at === undefined || from.compare(at) <= 0) &&
      leaves.some(({ formula }) => parseFormula(formula).hasSameComposition(gas)),
  );

/** All that leaves a charge, where that tells nothing of a reaction between its feeds; undefined where the mass does tell. */
export function goneByItself(
  feeds: readonly Formula[],
  gases: readonly Formula[],
  at: Quantity | undefined,
): readonly Formula[] | undefined {
  if (feeds.length < 2) return undefined;
  const isMute = gases.every((gas) => {
    const others = gas.symbols.filter((symbol) => symbol !== OXYGEN);
    const marks = others.length > 0 ? others : [OXYGEN];
    return feeds.every((feed) => marks.every((symbol) => feed.count(symbol).n === 0n) || givesByItself(feed, gas, at));
  });
  return isMute ? gases : undefined;
}

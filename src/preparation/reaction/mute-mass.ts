// A charge of several solids of which the mass does not tell whether they have reacted: nothing leaves it, or only what its feeds give
// off each by itself, chalk its carbon dioxide.
import { type Formula, parseFormula } from "../../formula";
import { isWater } from "../../formula/internal";
import type { Quantity } from "../../quantity";
import { madeOf } from "../../substance/internal";
import { isLye } from "./acids";
import { heatingOf } from "./heating";
import { watersOf } from "./species";

const OXYGEN = "O";

/** A hydroxide that is no lye, and what has crystal water: a fire that makes mixed oxides leaves no water in them. */
const givesWater = (feed: Formula): boolean =>
  watersOf(feed).isPositive() || (madeOf(feed).groups.has("hydroxide") && !isLye(feed));

/** Does heat alone drive a gas or steam out of a solid, by the steps of the table, at this temperature or below? */
const givesByItself = (feed: Formula, gas: Formula, at: Quantity | undefined): boolean =>
  (isWater(gas) && givesWater(feed)) ||
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

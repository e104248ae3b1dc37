// One question for everything that has a working: how did this follow?
import {
  BalancedEquation,
  type BalanceWorking,
  type HalfReactions,
  type HalfReactionsWorking,
  workingOfEquation,
  workingOfHalfReactions,
} from "./equation";
import { isHalfReactions } from "./equation/internal";
import { explain as explainQuantity, type QuantityLike, type Working } from "./quantity";

/**
 * How a result was obtained. For a quantity: every named step once, in order, with the numbers put in, back to what was
 * measured, tabulated or chosen. For a balanced equation: how the coefficients follow, and every element and the charge on
 * both sides. For half-reactions: both halves, and how they add up.
 *
 * `preparative/quantity` has the function for quantities alone, which carries nothing else into a bundle.
 *
 * @param result - a quantity, an equation of `balance` or what `halfReactions` gave
 * @returns the working as data; `.toString()` prints it for a board
 * @throws {QuantityError} those of `quantity`, for anything else
 * @category Quantities
 * @example
 * const m = quantity("36.03 g", { symbol: "m" });
 * const M = quantity("18.015 g/mol", { symbol: "M" });
 * explain(m.dividedBy(M).named({ symbol: "n", rule: "amount = mass / molar mass" })).steps[0]!.formula // => "m / M"
 * explain(balance("Al + O2 -> Al2O3")).steps.at(-1) // => "a = 4, b = 3, c = 2."
 */
export function explain(result: BalancedEquation): BalanceWorking;
export function explain(result: HalfReactions): HalfReactionsWorking;
export function explain(result: QuantityLike): Working;
export function explain(
  result: BalancedEquation | HalfReactions | QuantityLike,
): Working | BalanceWorking | HalfReactionsWorking {
  if (result instanceof BalancedEquation) return workingOfEquation(result);
  if (isHalfReactions(result)) return workingOfHalfReactions(result);
  return explainQuantity(result);
}

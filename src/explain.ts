// One question for everything that has a working: how did this follow?
import { type AqueousComposition, type CompositionWorking, workingOfComposition } from "./aqueous";
import { isComposition } from "./aqueous/internal";
import {
  BalancedEquation,
  type BalanceWorking,
  type HalfReactions,
  type HalfReactionsWorking,
  workingOfEquation,
  workingOfHalfReactions,
} from "./equation";
import { isHalfReactions } from "./equation/internal";
import { type Run, type VerdictWorking, workingOfVerdict } from "./preparation";
import { isRun } from "./preparation/internal";
import { explain as explainQuantity, type QuantityLike, type Working } from "./quantity";

/**
 * How a result was obtained. For a quantity: every named step once, in order, with the numbers put in, back to what was
 * measured, tabulated or chosen. For a balanced equation: how the coefficients follow, and every element and the charge on
 * both sides. For half-reactions: both halves, and how they add up. For what is in a beaker: what was put in, the constants, the
 * balances and the species. For a run: its figures and each finding of the verdict with its likelihood and the next step.
 *
 * `preparative/quantity` has the function for quantities alone, which carries nothing else into a bundle.
 *
 * @param result - a quantity, an equation of `balance`, what `halfReactions` or `aqueousComposition` gave, or a run
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
export function explain(result: AqueousComposition): CompositionWorking;
export function explain(result: Run): VerdictWorking;
export function explain(result: QuantityLike): Working;
export function explain(
  result: BalancedEquation | HalfReactions | AqueousComposition | Run | QuantityLike,
): Working | BalanceWorking | HalfReactionsWorking | CompositionWorking | VerdictWorking {
  if (result instanceof BalancedEquation) return workingOfEquation(result);
  if (isHalfReactions(result)) return workingOfHalfReactions(result);
  if (isRun(result)) return workingOfVerdict(result);
  if (isComposition(result)) return workingOfComposition(result);
  return explainQuantity(result);
}

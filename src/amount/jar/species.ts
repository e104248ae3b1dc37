// A reaction as callers give it, and the species they name in it.

import { BalancedEquation, balance, type EquationInput, isBalanced, parseEquation, tryBalance } from "../../equation";
import { asWritten, type Written } from "../../equation/internal";
import type { Formula } from "../../formula";
import { splitWater } from "../../formula/internal";
import type { Fraction } from "../../foundation/fraction";
import { type FormulaLike, formulaOfArgument } from "../argument";
import { AmountError } from "../error";

/** An equation as text, lists, or balanced already. */
export type ReactionLike = EquationInput | BalancedEquation;

/**
 * @internal The reaction meant: balanced, or as it stands where it balances as it stands and several reactions together
 * could follow it (C7H6O3 + C4H6O3 -> C9H8O4 + C2H4O2 means one of each).
 */
export function reactionOf(like: ReactionLike): BalancedEquation {
  if (like instanceof BalancedEquation) return like;
  const outcome = tryBalance(like);
  if (outcome.ok) return outcome.value;
  if (outcome.error.code !== "equation.underdetermined" || !isBalanced(like)) throw outcome.error;
  const { formulas, reactantCount } = parseEquation(like);
  const one = formulas.map((formula) => `1 ${formula}`);
  return balance({ reactants: one.slice(0, reactantCount), products: one.slice(reactantCount) });
}

/** @internal A species where it stands. */
export interface Place {
  readonly formula: Formula;
  readonly side: "reactant" | "product";
  /** How many of it one mole of reaction counts. */
  readonly coefficient: Fraction;
}

/** @internal The species of a balanced equation with the coefficients of a mole of reaction. */
export const placesOf = (
  equation: BalancedEquation,
  { coefficients }: Pick<Written, "coefficients"> = asWritten(equation, equation),
): Place[] =>
  equation.formulas.map((formula, at) => ({
    formula,
    side: at < equation.reactantCount ? "reactant" : "product",
    coefficient: coefficients[at]!,
  }));

/** @internal The species meant by a formula: by composition, and by notation where two species are made of the same atoms. */
export function find<T extends Place>(places: readonly T[], like: FormulaLike): T {
  const formula = formulaOfArgument(like);
  const alike = places.filter((place) => place.formula.hasSameComposition(formula));
  if (alike.length === 1) return alike[0]!;
  const written = alike.filter((place) => place.formula.equals(formula));
  return only(written.length > 0 ? written : alike, places, formula);
}

/**
 * @internal The species meant by a formula that may be another hydrate of it. `form` is that hydrate, undefined where the
 * species itself was named.
 */
export function findForm<T extends Place>(
  places: readonly T[],
  like: FormulaLike,
): { readonly place: T; readonly form: Formula | undefined } {
  const formula = formulaOfArgument(like);
  const { dry } = splitWater(formula);
  if (dry === undefined || places.some((place) => place.formula.hasSameComposition(formula))) {
    return { place: find(places, formula), form: undefined };
  }
  const kin = places.filter((place) => splitWater(place.formula).dry?.hasSameComposition(dry) === true);
  return { place: only(kin, places, formula), form: formula };
}

/** The one place that was found, or the refusal. */
function only<T extends Place>(found: readonly T[], places: readonly T[], formula: Formula): T {
  if (found.length === 1) return found[0]!;
  if (found.length > 1) {
    throw new AmountError("amount.several-readings", `${formula} stands in the equation ${found.length} times`, {
      hint: `name one of ${found.map((place) => place.formula.toString()).join(", ")}`,
      details: { formula: formula.toString(), readings: found.map((place) => `${place.side} ${place.formula}`) },
    });
  }
  const products = places.every((place) => place.side === "product");
  const species = places.map((place) => place.formula.toString());
  throw new AmountError(
    "amount.not-in-equation",
    `${formula} is ${products ? "not a product of" : "not in"} the equation`,
    {
      hint: `${products ? "products" : "species"}: ${species.join(", ")}`,
      details: { formula: formula.toString(), species },
    },
  );
}

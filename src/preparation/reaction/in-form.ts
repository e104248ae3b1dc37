// An equation written for one hydrate, rewritten for another: what is wanted, or what stands on the shelf, decides the form,
// and the water follows from it.

import { type BalancedEquation, balance } from "../../equation";
import type { Formula } from "../../formula";
import { isWater } from "../../formula/internal";
import { Fraction } from "../../foundation/fraction";
import { crystalWater } from "../../hydrate";
import { sameCore } from "./species";

type Terms = BalancedEquation["reactants"];

const watersIn = (formula: Formula): Fraction => crystalWater(formula).waters;

/** The equation with one species in another form; water is added or taken where it belongs. */
export function withForm(equation: BalancedEquation, from: Formula, to: Formula): BalancedEquation {
  const { reactants, products } = equation;
  const more = watersIn(to).sub(watersIn(from));
  const isFrom = ({ formula }: Terms[number]): boolean => formula.equals(from);
  const count = (side: Terms, of: (term: Terms[number]) => boolean): bigint =>
    side.filter(of).reduce((n, { coefficient }) => n + coefficient, 0n);
  const water = ({ formula }: Terms[number]): boolean => isWater(formula);
  // Water that is set free, all in all.
  const free = new Fraction(count(products, water) - count(reactants, water)).sub(
    more.mul(new Fraction(count(products, isFrom) - count(reactants, isFrom))),
  );
  const write = (side: Terms, waters: bigint): string =>
    [
      ...side
        .filter((term) => !water(term))
        .map((term) => `${term.coefficient * free.d} ${isFrom(term) ? to : term.formula}`),
      ...(waters > 0n ? [`${waters} H2O`] : []),
    ].join(" + ");
  const set = free.n * free.s;
  return balance(`${write(reactants, -set)} -> ${write(products, set)}`);
}

/**
 * The equation with its product in the form that is wanted: without its crystal water the theory would be too small. As it is
 * where it has that form, or nothing like it.
 */
export function inWantedForm(equation: BalancedEquation, wanted: Formula): BalancedEquation {
  const products = equation.products.map((term) => term.formula);
  if (products.some((formula) => formula.hasSameComposition(wanted))) return equation;
  const kin = products.find((formula) => sameCore(formula, wanted));
  return kin === undefined ? equation : withForm(equation, kin, wanted);
}

import type { Fraction } from "../../foundation/fraction";
import { inLowestTerms } from "../../foundation/rational";
import { type Equation, givenOrOne } from "../equation";
import { EQUATION, type EquationOptions, needOptions } from "../options";
import { type EquationInput, readEquation } from "../read/parse";
import { BalancedEquation, balanceName } from "./balanced";
import { toFraction } from "./rational";
import { CHARGE, exactSystem } from "./system";

/** What is too much on the right (positive) or the left (negative), by symbol and under `charge`. */
export function imbalanceOf(equation: Equation): Record<string, Fraction> {
  const { elements, matrix, scales } = exactSystem(equation.formulas, equation.reactantCount);
  const given = givenOrOne(equation);
  const found: [string, Fraction][] = [];
  elements.forEach((element, row) => {
    let sum = inLowestTerms(0n, 1n);
    matrix[row]!.forEach((count, at) => {
      // the matrix counts products negative
      const term = inLowestTerms(-count * given[at]!.n, given[at]!.d * scales[at]!);
      sum = inLowestTerms(sum.n * term.d + term.n * sum.d, sum.d * term.d);
    });
    if (sum.n !== 0n) found.push([balanceName(element), toFraction(sum)]);
  });
  const last = (name: string) => (name === balanceName(CHARGE) ? 1 : 0);
  found.sort(([a], [b]) => last(a) - last(b) || (a < b ? -1 : 1));
  return Object.fromEntries(found);
}

/**
 * How far an equation is from balanced with the coefficients as written: atoms and charge on the right less those on the
 * left. Coefficients that are not written count as one.
 *
 * @returns one exact number for each element that is off, by symbol, and for the charge under `charge`; empty if balanced
 * @throws {EquationError} all codes of {@link parseEquation}
 * @category Balancing
 * @example
 * imbalance("2 H2 + O2 -> H2O") // => { H: -2, O: -1 }
 * imbalance("MnO4- + 8 H+ -> Mn^2+ + 4 H2O") // => { charge: -5 }
 */
export function imbalance(
  input: EquationInput | BalancedEquation,
  options: EquationOptions = {},
): Record<string, Fraction> {
  needOptions(options, EQUATION);
  return input instanceof BalancedEquation ? {} : imbalanceOf(readEquation(input, options));
}

/**
 * Does an equation balance with the coefficients as written, those left out counting as one?
 *
 * @throws {EquationError} all codes of {@link parseEquation}
 * @category Balancing
 * @example
 * isBalanced("2 H2 + O2 -> 2 H2O") // => true
 * isBalanced("H2 + O2 -> H2O") // => false
 */
export function isBalanced(input: EquationInput | BalancedEquation, options: EquationOptions = {}): boolean {
  return Object.keys(imbalance(input, options)).length === 0;
}

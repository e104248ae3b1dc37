// A mole of reaction is a mole of the equation as it is written (Green Book, section 2.11.1): with written coefficients that
// balance, 1/2 O2 stays 1/2 O2, though the balanced equation itself is kept in smallest whole numbers.
import { Fraction } from "../foundation/fraction";
import { BalancedEquation } from "./balance/balanced";
import { rationalText } from "./balance/rational";
import { printEquation } from "./print";
import type { EquationInput } from "./read/parse";
import { parseEquation } from "./read/parse";

/** @internal The coefficients that one mole of reaction counts. */
export interface Written {
  /** Of every species in its place in the equation, all positive. */
  readonly coefficients: readonly Fraction[];
  /** The equation with those coefficients. */
  readonly text: string;
}

/** @internal As written where coefficients were written, otherwise those of the balanced equation. */
export function asWritten(input: EquationInput | BalancedEquation, balanced: BalancedEquation): Written {
  const own = balanced.coefficients;
  const given = input instanceof BalancedEquation ? undefined : parseEquation(input).given;
  if (given === undefined) {
    return { coefficients: own.map((n) => new Fraction(n)), text: balanced.toString() };
  }
  const first = given[0] ?? { n: 1n, d: 1n };
  const scale = new Fraction(first.n, first.d * own[0]!);
  const coefficients = own.map((n) => scale.mul(new Fraction(n)));
  const words = coefficients.map(({ n, d }) => (n === d ? "" : rationalText({ n, d })));
  return { coefficients, text: printEquation(balanced, words, "ascii") };
}

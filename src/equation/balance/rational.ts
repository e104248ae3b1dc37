// Coefficients as written: exact ratios of whole numbers, never a float.
import { Fraction } from "../../foundation/fraction";
import { bigGcd } from "../../foundation/gcd";
import { ONE, type Rational } from "../../quantity/value/rational";

export { ONE, type Rational };

/** In lowest terms. */
export function rational(n: bigint, d: bigint): Rational {
  const common = bigGcd(n, d);
  const sign = d < 0n ? -1n : 1n;
  return common === 0n ? { n, d } : { n: (sign * n) / common, d: (sign * d) / common };
}

export function toFraction({ n, d }: Rational): Fraction {
  return new Fraction(n, d);
}

export function rationalText({ n, d }: Rational): string {
  return d === 1n ? `${n}` : `${n}/${d}`;
}

/** Whole numbers in the proportions of the ratios: all multiplied by their common denominator. */
export function wholeNumbers(ratios: readonly Rational[]): bigint[] {
  let denominator = 1n;
  for (const { d } of ratios) denominator = (denominator / bigGcd(denominator, d)) * d;
  return ratios.map(({ n, d }) => n * (denominator / d));
}

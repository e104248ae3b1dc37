// Exact ratios of two bigints. Quantities calculate with them (`quantity/value/rational`), coefficients are written in them.
import { bigGcd } from "./gcd";

/** A fraction n/d with d > 0, not necessarily in lowest terms. */
export interface Rational {
  readonly n: bigint;
  readonly d: bigint;
}

export const ZERO: Rational = { n: 0n, d: 1n };
export const ONE: Rational = { n: 1n, d: 1n };

/** In lowest terms, with the sign above; `d` must not be zero. */
export function inLowestTerms(n: bigint, d: bigint): Rational {
  const common = bigGcd(n, d);
  const divisor = d < 0n ? -common : common;
  return divisor === 1n ? { n, d } : { n: n / divisor, d: d / divisor };
}

/** Whole numbers in the proportions of the ratios: all multiplied by their common denominator. */
export function wholeNumbers(ratios: readonly Rational[]): bigint[] {
  let denominator = 1n;
  for (const { d } of ratios) denominator = (denominator / bigGcd(denominator, d)) * d;
  return ratios.map(({ n, d }) => n * (denominator / d));
}

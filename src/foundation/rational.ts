// Exact ratios of two bigints. Quantities calculate with them (`quantity/value/rational`), coefficients are written in them.
import { bigGcd } from "./gcd";

/** A fraction n/d with d > 0, not necessarily in lowest terms. */
export interface Rational {
  readonly n: bigint;
  readonly d: bigint;
}

export const ZERO: Rational = { n: 0n, d: 1n };
export const ONE: Rational = { n: 1n, d: 1n };

export const abs = (x: bigint): bigint => (x < 0n ? -x : x);

/** Number of bits of |x|, from its hexadecimal length: up to 3 too many, which no rounding here minds. */
export const bits = (x: bigint): bigint => BigInt(abs(x).toString(16).length * 4);

/** The same of a number that is not zero, from its nearest double, or that of its upper part where it has none. */
const bitsOf = (x: bigint, near: number): number =>
  Number.isFinite(near) ? Math.ceil(Math.log2(Math.abs(near))) : 1000 + bitsOf(x >> 1000n, Number(x >> 1000n));

/** Two bits below 2^-1074, the step of the smallest doubles. */
const BELOW_STEP = 1076;

/** The nearest double. */
export function nearestNumber({ n, d }: Rational): number {
  const [above, below] = [Number(n), Number(d)];
  if (above === 0) return 0;
  if (Math.abs(above) <= Number.MAX_SAFE_INTEGER && below <= Number.MAX_SAFE_INTEGER) return above / below;
  // A quotient of 64 bits or more; its last bit, far below those a double has, tells whether anything is left over.
  // Below the smallest normal double only two bits more than the step there, or the last digit would be rounded twice.
  const shift = BigInt(Math.min(72 - bitsOf(n, above) + bitsOf(d, below), BELOW_STEP));
  const [over, under] = shift >= 0n ? [abs(n) << shift, d] : [abs(n), d << -shift];
  const quotient = over / under;
  const exact = quotient * under === over ? quotient : quotient | 1n;
  // in two steps, since the power may leave the range of doubles where the value does not
  const half = Number(shift / 2n);
  return Number(n < 0n ? -exact : exact) * 2 ** -half * 2 ** (half - Number(shift));
}

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

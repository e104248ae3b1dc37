// Exact arithmetic on fractions of two bigints: the inside of every quantity. Fractions stay unreduced until they grow,
// because reducing costs more than it saves on the short chains of a bench calculation.

import { abs, bits, inLowestTerms, ONE, type Rational, ZERO } from "../../foundation/rational";
import { QuantityError } from "../error";

export { ONE, type Rational, ZERO };

/** Above this size a result is reduced to lowest terms, and rounded to `KEPT_BITS` if it is as long still: only long chains get there. */
const LONG: bigint = 1n << 2048n;
const KEPT_BITS = 512n;
/** Above this size what only adds to a sum is rounded to so many bits. */
const SHORT_BITS = 256n;
const SHORT: bigint = 1n << SHORT_BITS;
/** Bits between the largest and smallest magnitude and 1. */
const MAX_MAGNITUDE = 16_000n;

/** A fraction in lowest terms; past 2048 bits also rounded to 512 (about 154 digits), so that no chain grows without end. */
export function reduce(a: Rational): Rational {
  const { n, d } = inLowestTerms(a.n, a.d);
  return d < LONG && abs(n) < LONG ? { n, d } : roundedTo(KEPT_BITS, { n, d });
}

/**
 * A long fraction rounded to 256 bits (77 digits), which are squared without growing long again: for sums of what has one sign,
 * where nothing cancels out.
 */
export const shortened = (a: Rational): Rational =>
  a.d < SHORT && a.n < SHORT && a.n > -SHORT ? a : roundedTo(SHORT_BITS, a);

function roundedTo(kept: bigint, { n, d }: Rational): Rational {
  if (n === 0n) return ZERO;
  const magnitude = bits(n) - bits(d);
  if (magnitude > MAX_MAGNITUDE || magnitude < -MAX_MAGNITUDE) {
    throw new QuantityError("quantity.out-of-range", "a result beyond 1e±4800; no quantity is that large or small");
  }
  const shift = kept - magnitude;
  const scaled = shift >= 0n ? (n << shift) / d : n / (d << -shift);
  return shift >= 0n ? { n: scaled, d: 1n << shift } : { n: scaled << -shift, d: 1n };
}

/** n/d with the sign moved up and the size kept in bounds. `d` must not be zero: callers refuse that with their own code. */
export function rational(n: bigint, d: bigint = 1n): Rational {
  const r = d < 0n ? { n: -n, d: -d } : { n, d };
  return r.d > LONG || r.n > LONG || r.n < -LONG ? reduce(r) : r;
}

export function add(a: Rational, b: Rational): Rational {
  if (a.n === 0n) return b; // two sums in three: an offset of a unit, an empty vessel
  if (b.n === 0n) return a;
  if (a.d === b.d) return { n: a.n + b.n, d: a.d }; // grows by one bit at most: no need to look
  if (a.d > b.d && a.d % b.d === 0n) return rational(a.n + b.n * (a.d / b.d), a.d);
  if (b.d > a.d && b.d % a.d === 0n) return rational(a.n * (b.d / a.d) + b.n, b.d);
  return rational(a.n * b.d + b.n * a.d, a.d * b.d);
}

export const negate = (a: Rational): Rational => ({ n: -a.n, d: a.d });
export const subtract = (a: Rational, b: Rational): Rational =>
  a.d === b.d ? { n: a.n - b.n, d: a.d } : add(a, negate(b));
export const multiply = (a: Rational, b: Rational): Rational => rational(a.n * b.n, a.d * b.d);
export const divide = (a: Rational, b: Rational): Rational => rational(a.n * b.d, a.d * b.n);
export const square = (a: Rational): Rational => multiply(a, a);

export function compare(a: Rational, b: Rational): -1 | 0 | 1 {
  const [left, right] = a.d === b.d ? [a.n, b.n] : [a.n * b.d, b.n * a.d];
  return left < right ? -1 : left > right ? 1 : 0;
}

/** a^k for an integer k; the base must not be zero when k < 0. */
export function power(a: Rational, k: number): Rational {
  const e = BigInt(Math.abs(k));
  return k < 0 ? rational(a.d ** e, a.n ** e) : rational(a.n ** e, a.d ** e);
}

const POWERS_OF_TEN: bigint[] = [1n];

/** 10^k for k >= 0, kept once computed: the constants of every decimal text and every rounding. */
export function powerOfTen(k: number): bigint {
  for (let i = POWERS_OF_TEN.length; i <= k && i <= 400; i++) POWERS_OF_TEN.push(POWERS_OF_TEN[i - 1]! * 10n);
  return POWERS_OF_TEN[k] ?? 10n ** BigInt(k);
}

/** How a tie is broken when a value lies exactly half-way between two printed ones. */
export type Rounding = "half-even" | "half-up";

/** round(n/d) for d > 0; half-up rounds ties away from zero. */
function roundedQuotient(n: bigint, d: bigint, rounding: Rounding): bigint {
  const a = abs(n);
  let q = a / d;
  const twice = 2n * (a - q * d);
  if (twice > d || (twice === d && (rounding === "half-up" || (q & 1n) === 1n))) q += 1n;
  return n < 0n ? -q : q;
}

const SURE = 1e-9;

/** The decimal exponent of the leading digit of a non-zero fraction: 0 for 1..9.99, -2 for 0.0123. */
export function leadingExponent(a: Rational): number {
  const n = abs(a.n);
  // logarithms of doubles are good to 12 decimals: only next to a power of ten, and beyond doubles, the digits decide
  const near = Math.log10(Number(n)) - Math.log10(Number(a.d));
  const whole = Math.floor(near);
  if (near - whole > SURE && near - whole < 1 - SURE) return whole;
  let e = n.toString().length - a.d.toString().length;
  if (e >= 0 ? n < a.d * powerOfTen(e) : n * powerOfTen(-e) < a.d) e -= 1;
  return e;
}

/** The value times 10^decimals, rounded to an integer. */
export function scaled(a: Rational, decimals: number, rounding: Rounding = "half-even"): bigint {
  return decimals >= 0
    ? roundedQuotient(a.n * powerOfTen(decimals), a.d, rounding)
    : roundedQuotient(a.n, a.d * powerOfTen(-decimals), rounding);
}

/** Plain or scientific decimal text of `units` x 10^-decimals. */
export function decimalText(units: bigint, decimals: number): string {
  const sign = units < 0n ? "-" : "";
  const digits = abs(units).toString();
  const exponent = digits.length - 1 - decimals;
  if (exponent > 20 || exponent < -7) {
    const rest = digits.slice(1);
    return `${sign}${digits[0]}${rest === "" ? "" : `.${rest}`}e${exponent}`;
  }
  if (decimals <= 0) return `${sign}${digits}${units === 0n ? "" : "0".repeat(-decimals)}`;
  const padded = digits.padStart(decimals + 1, "0");
  return `${sign}${padded.slice(0, -decimals)}.${padded.slice(-decimals)}`;
}

/** Text to `figures` significant digits (trailing zeros kept). */
export function significantText(a: Rational, figures: number, rounding: Rounding = "half-even"): string {
  if (a.n === 0n) return decimalText(0n, Math.max(0, figures - 1));
  let decimals = figures - 1 - leadingExponent(a);
  let units = scaled(a, decimals, rounding);
  if (abs(units) >= powerOfTen(figures)) {
    decimals -= 1; // 9.996 to three figures is 10.0, not 10.00
    units = scaled(a, decimals, rounding);
  }
  return decimalText(units, decimals);
}

/** The exact decimal text if it ends within `limit` significant digits; otherwise undefined. */
export function exactText(a: Rational, limit: number): string | undefined {
  if (a.n === 0n) return "0";
  let decimals = limit - 1 - leadingExponent(a);
  const n = decimals >= 0 ? a.n * powerOfTen(decimals) : a.n;
  const d = decimals >= 0 ? a.d : a.d * powerOfTen(-decimals);
  if (n % d !== 0n) return undefined;
  const digits = (n / d).toString();
  let zeros = 0;
  while (zeros < decimals && digits.charCodeAt(digits.length - 1 - zeros) === 48) zeros += 1;
  decimals -= zeros;
  return decimalText(BigInt(zeros === 0 ? digits : digits.slice(0, -zeros)), decimals);
}

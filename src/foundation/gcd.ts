// Greatest common divisors, for safe integers and for bigints: fractions, coefficients and subscripts all need them.

/** Of two safe integers; 0 only for two zeros. */
export function gcd(a: number, b: number): number {
  let x = Math.abs(a);
  let y = Math.abs(b);
  while (y !== 0) {
    const rest = x % y;
    x = y;
    y = rest;
  }
  return x;
}

/** The largest safe integer, 2^53 - 1. */
const SAFE = 9007199254740991n;

/** Leading bits that a round of Lehmer's works with: their quotients are exact in doubles. */
const LEADING = 50;

/**
 * Of two bigints; 0n only for two zeros. Lehmer's: the leading bits of both numbers tell a dozen quotients of Euclid's at once,
 * so that the long numbers are multiplied once for them and not divided for each (Knuth, The Art of Computer Programming,
 * vol. 2, 4.5.2, algorithm L; from memory).
 */
export function bigGcd(a: bigint, b: bigint): bigint {
  let x = a < 0n ? -a : a;
  let y = b < 0n ? -b : b;
  if (x < y) [x, y] = [y, x];
  while (y > SAFE) {
    const shift = BigInt(x.toString(16).length * 4 - LEADING);
    let u = Number(x >> shift);
    let v = Number(y >> shift);
    // what x and y are after these quotients, in multiples of themselves, signs apart: x is p x - q y, y is s y - r x
    let [p, q, r, s] = [1, 0, 0, 1];
    let swapped = false;
    while (v !== r) {
      const quotient = Math.floor((u + (p - 1)) / (v - r));
      const [next, rest] = [q + quotient * s, u - quotient * v];
      // from here on the bits left out decide
      if (next > rest) break;
      [u, v] = [v, rest];
      [p, q, r, s] = [s, r, next, p + quotient * r];
      swapped = !swapped;
    }
    if (q === 0) [x, y] = [y, x % y];
    else if (swapped) [x, y] = [BigInt(p) * y - BigInt(q) * x, BigInt(s) * x - BigInt(r) * y];
    else [x, y] = [BigInt(p) * x - BigInt(q) * y, BigInt(s) * y - BigInt(r) * x];
  }
  return y === 0n ? x : BigInt(gcd(Number(y), Number(x % y)));
}

// Exact ratios of two safe integers, for subscripts and multipliers. Plain numbers: faster than fraction.js by far, and
// every step is checked against 2^53, so nothing is ever rounded.
import { gcd } from "../../foundation/gcd";
import { MAX_COUNT } from "./limits";

/** `numerator / denominator`, in lowest terms, denominator > 0. */
export interface Ratio {
  readonly n: number;
  readonly d: number;
}

export const ONE: Ratio = { n: 1, d: 1 };

const fits = (n: number, d: number): Ratio | undefined =>
  Math.abs(n) <= MAX_COUNT && d <= MAX_COUNT ? { n, d } : undefined;

/** In lowest terms. */
export function ratio(n: number, d: number): Ratio {
  if (d === 1) return { n, d };
  const g = gcd(n, d);
  return { n: n / g, d: d / g };
}

/** Product; undefined when it leaves the safe integers. What the two share is taken out before anything is multiplied. */
export function multiply(a: Ratio, b: Ratio): Ratio | undefined {
  const above = gcd(a.n, b.d);
  const below = gcd(b.n, a.d);
  return fits((a.n / above) * (b.n / below), (a.d / below) * (b.d / above));
}

/** Sum; undefined when it leaves the safe integers. (Knuth, The Art of Computer Programming, vol. 2, 4.5.1; from memory) */
export function add(a: Ratio, b: Ratio): Ratio | undefined {
  const shared = gcd(a.d, b.d);
  const sum = BigInt(a.n) * BigInt(b.d / shared) + BigInt(b.n) * BigInt(a.d / shared);
  // what sum and denominator share is in what the denominators share
  const common = gcd(Number(sum % BigInt(shared)), shared);
  return fits(Number(sum / BigInt(common)), (a.d / shared) * (b.d / common));
}

/** Shortest exact text: `5`, `0.5`, `2.3333`, and `8/3` where no finite decimal exists. */
export function ratioText({ n, d }: Ratio): string {
  if (d === 1) return String(n);
  let power = 1;
  let places = 0;
  while (power % d !== 0) {
    power *= 10;
    places += 1;
    if (places > 15) return `${n}/${d}`;
  }
  const scaled = BigInt(n) * BigInt(power / d);
  const digits = String(scaled < 0n ? -scaled : scaled).padStart(places + 1, "0");
  return `${scaled < 0n ? "-" : ""}${digits.slice(0, -places)}.${digits.slice(-places)}`;
}

// Exact ratios of two safe integers, for subscripts and multipliers. Plain numbers: faster than fraction.js by far, and
// every step is checked against 2^53, so nothing is ever rounded.
import { bigGcd, gcd } from "../../foundation/gcd";
import { MAX_COUNT } from "./limits";

/** `numerator / denominator`, in lowest terms, denominator > 0. */
export interface Ratio {
  readonly n: number;
  readonly d: number;
}

export const ONE: Ratio = { n: 1, d: 1 };

/** In lowest terms, from integers that may lie beyond 2^53; undefined when even the reduced form does. */
function reduceBig(n: bigint, d: bigint): Ratio | undefined {
  const common = bigGcd(n, d);
  const limit = BigInt(MAX_COUNT);
  n /= common;
  d /= common;
  return n > limit || n < -limit || d > limit ? undefined : { n: Number(n), d: Number(d) };
}

/** In lowest terms. */
export function ratio(n: number, d: number): Ratio {
  if (d === 1) return { n, d };
  const g = gcd(n, d);
  return { n: n / g, d: d / g };
}

/** Product; undefined when it leaves the safe integers. */
export function multiply(a: Ratio, b: Ratio): Ratio | undefined {
  if (a.d === 1 && a.n === 1) return b;
  if (b.d === 1 && b.n === 1) return a;
  const n = a.n * b.n;
  const d = a.d * b.d;
  if (Math.abs(n) <= MAX_COUNT && d <= MAX_COUNT) return ratio(n, d);
  return reduceBig(BigInt(a.n) * BigInt(b.n), BigInt(a.d) * BigInt(b.d));
}

/** Sum; undefined when it leaves the safe integers. */
export function add(a: Ratio, b: Ratio): Ratio | undefined {
  if (a.d === 1 && b.d === 1) {
    const n = a.n + b.n;
    return Math.abs(n) <= MAX_COUNT ? { n, d: 1 } : undefined;
  }
  return reduceBig(BigInt(a.n) * BigInt(b.d) + BigInt(b.n) * BigInt(a.d), BigInt(a.d) * BigInt(b.d));
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

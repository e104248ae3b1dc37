// Coefficients as written: exact ratios of whole numbers, never a float.
import { Fraction } from "../../foundation/fraction";
import type { Rational } from "../../foundation/rational";

export function toFraction({ n, d }: Rational): Fraction {
  return new Fraction(n, d);
}

export function rationalText({ n, d }: Rational): string {
  return d === 1n ? `${n}` : `${n}/${d}`;
}

// The border to decimal.js: one private clone (no global settings touched), used for values handed out and for the
// functions that leave the rationals - roots, logarithms, exponentials.
import { Decimal as Base } from "./decimal";
import { exactText, type Rational, rational, significantText } from "./rational";

/** Significant digits of everything that cannot be exact: 40, of which printed results use a third. */
export const DIGITS = 40;

/** The number type handed out at the border; from decimal.js. */
export type Decimal = Base;

const PrivateDecimal = /* @__PURE__ */ Base.clone({ precision: DIGITS, defaults: true, toExpNeg: -8, toExpPos: 21 });

/** A decimal from text or another decimal, in the library's own clone. */
export const decimal = (value: string | Base): Decimal => new PrivateDecimal(value);

/** The value of a fraction: exact when its decimal expansion ends within 60 digits, else to 40 significant digits. */
export function toDecimal(a: Rational): Decimal {
  return new PrivateDecimal(exactText(a, 60) ?? significantText(a, DIGITS));
}

/** A fraction from a finite decimal, exactly. */
export function fromDecimal(x: Decimal): Rational {
  const [mantissa = "0", exponent = "0"] = x.toExponential().split("e");
  const point = mantissa.indexOf(".");
  const decimals = (point < 0 ? 0 : mantissa.length - point - 1) - Number(exponent);
  const units = BigInt(mantissa.replace(".", ""));
  return decimals >= 0 ? rational(units, 10n ** BigInt(decimals)) : rational(units * 10n ** BigInt(-decimals));
}

/** The square root to 40 digits (exact for short perfect squares). `a` must not be negative. */
export const squareRootOf = (a: Rational): Decimal => toDecimal(a).sqrt();

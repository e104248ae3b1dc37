// Reading a plain decimal number as an exact fraction: digits, one point, an exponent. Nothing else is a number here.
import { shownValue } from "../../foundation/error";
import { QuantityError } from "../error";
import { powerOfTen, type Rational } from "./rational";

/** Longest number text, and largest exponent: wide enough for any measurement, small enough that no input hangs. */
const MAX_DIGITS = 300;
const MAX_EXPONENT = 300;

/** A decimal number at the start of a text, sticky. */
const NUMBER: RegExp = /[+-]?(?:\d+(?:\.\d*)?|\.\d+)(?:[eE][+-]?\d+)?/y;

/** The decimal number at `from`, or undefined when none starts there. */
export function scanNumber(text: string, from: number): string | undefined {
  NUMBER.lastIndex = from;
  return NUMBER.exec(text)?.[0];
}

/** Number of digits written after the decimal point, less the exponent: 2 for "48.20", -1 for "1.5e2". */
export function writtenDecimals(text: string): number {
  const [mantissa = "", exponent = "0"] = text.split(/[eE]/);
  const point = mantissa.indexOf(".");
  return (point < 0 ? 0 : mantissa.length - point - 1) - Number(exponent);
}

/**
 * An exact fraction from decimal text.
 * @throws {QuantityError} `quantity.not-a-number`, `quantity.too-long`, `quantity.out-of-range`
 */
export function readNumber(text: string): Rational {
  if (text.length > MAX_DIGITS) {
    throw new QuantityError("quantity.too-long", `a number of ${text.length} characters; the limit is ${MAX_DIGITS}`);
  }
  if (scanNumber(text, 0) !== text) {
    throw new QuantityError("quantity.not-a-number", `'${text}' is not a decimal number`, {
      input: text,
      position: scanNumber(text, 0)?.length ?? 0,
      hint: "write digits with a decimal point, such as 12.5 or 1.5e-3",
    });
  }
  const at = text.search(/[eE]/);
  const mantissa = at < 0 ? text : text.slice(0, at);
  const exponent = at < 0 ? 0 : Number(text.slice(at + 1));
  if (Math.abs(exponent) > MAX_EXPONENT) {
    throw new QuantityError("quantity.out-of-range", `an exponent of ${exponent}; the limit is ±${MAX_EXPONENT}`, {
      input: text,
      position: at,
    });
  }
  const point = mantissa.indexOf(".");
  const digits = point < 0 ? mantissa : mantissa.slice(0, point) + mantissa.slice(point + 1);
  const decimals = (point < 0 ? 0 : mantissa.length - point - 1) - exponent;
  const units = BigInt(digits.startsWith("+") ? digits.slice(1) : digits);
  return decimals >= 0 ? { n: units, d: powerOfTen(decimals) } : { n: units * powerOfTen(-decimals), d: 1n };
}

/** Anything that stands for one number: read at its shortest decimal text, never through binary. */
export type NumberLike = number | bigint | string | { toString(): string };

/**
 * An exact fraction from a number of any kind: a JS number at its shortest text, a bigint, decimal text, text of two
 * numbers with a solidus, a `Fraction` (n, d and s), or a decimal-like object through its text.
 * @throws {QuantityError} `quantity.not-a-number` and those of `readNumber`
 */
export function toRational(value: NumberLike): Rational {
  if (typeof value === "bigint") return { n: value, d: 1n };
  if (typeof value === "number" && Number.isSafeInteger(value)) return { n: BigInt(value), d: 1n };
  if (typeof value === "object" && value !== null) {
    const { n, d, s = 1n } = value as { n?: unknown; d?: unknown; s?: unknown };
    if (typeof n === "bigint" && typeof d === "bigint" && typeof s === "bigint" && d > 0n) return { n: s * n, d };
  }
  if (value === null || value === undefined || typeof value === "boolean" || typeof value === "function") {
    throw new QuantityError("quantity.not-a-number", `${String(value)} is not a number`);
  }
  if (typeof value === "number" && !Number.isFinite(value)) {
    throw new QuantityError("quantity.not-a-number", `${value} is not a finite number`);
  }
  const text = shownValue(value).trim();
  const solidus = text.indexOf("/");
  if (solidus < 0) return readNumber(text);
  const top = readNumber(text.slice(0, solidus).trim());
  const bottom = readNumber(text.slice(solidus + 1).trim());
  if (bottom.n === 0n) throw new QuantityError("quantity.division-by-zero", `'${text}' divides by zero`);
  const sign = bottom.n < 0n ? -1n : 1n;
  return { n: sign * top.n * bottom.d, d: sign * bottom.n * top.d };
}

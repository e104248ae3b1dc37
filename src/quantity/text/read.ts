// Reading a quantity from text. The whole grammar, by example (spaces around ± and before the unit are optional):
//
//   48.20 g            1.5e-3 mol         1.5×10^-3 mol       25 °C          5 % w/w         4.20 EUR/kg
//   1 000 g            digits in groups of three; 1.5·10^-3 mol and 1.5*10^-3 mol for the power of ten
//   12.5(2) g          standard uncertainty in units of the last digit; 12.5(0.2) g says the same
//   12.5 ± 0.2 g       standard uncertainty; +/- is read as ±;  12.5 g ± 0.2 g and 12.5 g ± 200 mg say the same
//   (12.5 ± 0.2) g     the same again, also (1.25 ± 0.02)×10^-3 mol
//   12.5 g ± 2 %       relative standard uncertainty (after a value in % the second figure is absolute)
//   12.5 ± 0.2 g (rectangular)    the half-width of a stated distribution: rectangular, triangular, normal, k=2
//   [1.0, 1.2] g       anything in the interval is equally likely; the value is its middle
//   12                 a pure number
import { lowered } from "../../foundation/characters";
import { type ErrorPlace, isPreparativeError, relocated } from "../../foundation/error";
import { QuantityError, type QuantityErrorCode } from "../error";
import { isNumber } from "../value/dimension";
import { add, divide, multiply, type Rational, rational, square, subtract } from "../value/rational";
import { readNumber, scanNumber, writtenDecimals } from "../value/read-number";
import { knownUnit, readUnit, type Unit } from "../value/unit";
import { fold } from "./fold";

/** How the possible values spread: what a stated half-width means. */
export type Distribution = "normal" | "rectangular" | "triangular";

/** What a text said: value and variance in the unit it was written in. */
interface Reading {
  readonly value: Rational;
  readonly unit: Unit;
  /** Square of the standard uncertainty, in unit². */
  readonly variance: Rational | undefined;
  readonly distribution: Distribution | undefined;
  /** Decimals of the value as written. */
  readonly decimals: number;
}

const MAX_LENGTH = 400;

/** Digits in groups of three, before the point (ISO 80000-1:2009, 7.3.1). */
const GROUPED = /[+-]?\d{1,3}(?: \d{3})+(?![\d,])(?:\.\d+)?(?:[eE][+-]?\d+)?/y;

/** Variance of a distribution with half-width a: a²/3 rectangular, a²/6 triangular (JCGM 100:2008, 4.3.7 and 4.3.9). */
export function varianceOf(halfWidth: Rational, distribution: Distribution): Rational {
  const a2 = square(halfWidth);
  if (distribution === "rectangular") return rational(a2.n, a2.d * 3n);
  if (distribution === "triangular") return rational(a2.n, a2.d * 6n);
  return a2;
}

class Reader {
  readonly text: string;
  at = 0;

  constructor(readonly input: string) {
    this.text = fold(input).replace(/\+\/-|\+-/g, (m) => (m.length === 3 ? " ± " : "± "));
  }

  fail(code: QuantityErrorCode, problem: string, hint?: string, position = this.at): never {
    const place: ErrorPlace = { input: this.input, position: Math.min(position, this.input.length), hint };
    throw new QuantityError(code, problem, place);
  }

  skip(): void {
    while (this.text[this.at] === " ") this.at += 1;
  }

  /** `text` if it stands here, after spaces. */
  take(text: string): boolean {
    this.skip();
    if (!this.text.startsWith(text, this.at)) return false;
    this.at += text.length;
    return true;
  }

  /** A number, with `×10^n` after it allowed; as plain decimal text. */
  number(): string {
    this.skip();
    const { at } = this;
    GROUPED.lastIndex = at;
    const grouped = GROUPED.exec(this.text)?.[0];
    const found = grouped?.replaceAll(" ", "") ?? scanNumber(this.text, at);
    if (found === undefined) {
      this.fail("quantity.not-a-number", "expected a number", "a quantity starts with its value, such as 12.5 g");
    }
    this.at += grouped?.length ?? found.length;
    const range = /^ ?(?:-|to |\.{2,3}|…) ?(?=\d)/.exec(this.text.slice(this.at));
    if (range !== null) {
      this.fail("quantity.not-a-quantity", "two numbers", `write an interval: [${found}, ...] with the unit after it`);
    }
    const share = /^\/(\d{1,6})(?!\d)/.exec(this.text.slice(this.at));
    if (share !== null) {
      this.fail("quantity.not-a-number", "a fraction is not a measured value", "write it with a decimal point");
    }
    const comma = /^,(\d+(?:,\d+)*)(\.\d+)?/.exec(this.text.slice(this.at));
    if (comma !== null && !this.text.trimStart().startsWith("[")) {
      const [, after, decimals] = comma;
      const joined = found + after!.replaceAll(",", "");
      // a point as well, or a second comma, tells which of them groups thousands
      const meant = found.includes(".")
        ? `${found.replace(".", "")}.${after}`
        : decimals === undefined && !after!.includes(",")
          ? undefined
          : joined + (decimals ?? "");
      this.fail(
        "quantity.decimal-comma",
        `a comma inside a number has two readings`,
        meant === undefined
          ? `write ${found}.${after} if the comma marks decimals, ${joined} if it groups thousands`
          : `write ${meant}, with ${meant.includes(".") ? "a point before the decimals and no other mark" : "no mark in it"}`,
      );
    }
    return found + this.powerOfTen();
  }

  /** `×10^-3` or `× 10⁻³`, as exponent text. */
  powerOfTen(): string {
    const power = /^ ?[×x*·⋅] ?10(?:\^?([+-]?\d{1,4})|([⁻⁰¹²³⁴⁵⁶⁷⁸⁹]{1,4}))/.exec(this.text.slice(this.at));
    if (power === null) return "";
    this.at += power[0].length;
    return `e${power[1] ?? lowered(power[2]!)}`;
  }

  /** `(2)` or `(0.2)` directly after a value: a standard uncertainty in units of its last digit. */
  concise(value: string): { text: string; uncertainty: Rational } | undefined {
    const digits = /^\((\d+(?:\.\d+)?)\)/.exec(this.text.slice(this.at));
    if (digits === null) return undefined;
    this.at += digits[0].length;
    const exponent = /^[eE][+-]?\d+/.exec(this.text.slice(this.at))?.[0];
    this.at += exponent?.length ?? 0;
    const tail = exponent ?? this.powerOfTen();
    const text = value + tail;
    const inner = digits[1]!;
    const step = readNumber(`1e${-writtenDecimals(inner.includes(".") ? `0${tail}` : text)}`);
    return { text, uncertainty: multiply(readNumber(inner), step) };
  }

  /** Everything up to the next ± or bracketed distribution, as a unit. */
  unit(): Unit {
    this.skip();
    const rest = this.text.slice(this.at);
    const end = rest.search(/±|\((?:rectangular|uniform|triangular|normal|k ?=)/);
    const symbol = (end < 0 ? rest : rest.slice(0, end)).trimEnd();
    const unit = this.located(symbol);
    this.at += symbol.length;
    return unit;
  }

  /** The unit, with the caret of an error moved to where it stands in the whole text. */
  located(symbol: string): Unit {
    try {
      return readUnit(symbol);
    } catch (error) {
      throw isPreparativeError(error) ? relocated(error, this.input, this.at) : error;
    }
  }

  /** `(rectangular)`, `(triangular)`, `(normal)` or `(k=2)` at the end: how the half-width before it is meant. */
  distribution(halfWidth: Rational): { variance: Rational; distribution: Distribution } {
    const coverage = /^ *\(k ?= ?(\d+(?:\.\d+)?)\)/.exec(this.text.slice(this.at));
    if (coverage !== null) {
      const k = readNumber(coverage[1]!);
      if (k.n === 0n) this.fail("quantity.uncertainty", "a coverage factor of zero");
      this.at += coverage[0].length;
      return { variance: square(divide(halfWidth, k)), distribution: "normal" };
    }
    const named = /^ *\((rectangular|uniform|triangular|normal)\)/.exec(this.text.slice(this.at));
    if (named === null) return { variance: square(halfWidth), distribution: "normal" };
    this.at += named[0].length;
    const distribution = named[1] === "uniform" ? "rectangular" : (named[1] as Distribution);
    return { variance: varianceOf(halfWidth, distribution), distribution };
  }

  end(): void {
    this.skip();
    if (this.at < this.text.length) {
      this.fail("quantity.not-a-quantity", "the text goes on after the quantity", "give one value and one unit");
    }
  }
}

function readInterval(reader: Reader): Reading {
  const low = reader.number();
  if (!reader.take(",") && !reader.take(";"))
    reader.fail(
      "quantity.not-a-quantity",
      "expected a comma between the ends",
      "the unit is written once, after the number: [1.0, 1.2] g",
    );
  const high = reader.number();
  if (!reader.take("]")) reader.fail("quantity.not-a-quantity", "expected ']'");
  const [a, b] = [readNumber(low), readNumber(high)];
  const width = subtract(b, a);
  if (width.n < 0n)
    reader.fail("quantity.empty-interval", "the interval ends before it begins", "put the lower end first");
  const sum = add(a, b);
  const unit = reader.unit();
  reader.end();
  return {
    value: rational(sum.n, sum.d * 2n),
    unit,
    variance: varianceOf(rational(width.n, width.d * 2n), "rectangular"),
    distribution: "rectangular",
    decimals: Math.max(writtenDecimals(low), writtenDecimals(high)) + 1,
  };
}

/** `(12.5 ± 0.2) g`, `(1.25 ± 0.02)×10^-3 mol`. */
function readBracketed(reader: Reader): Reading {
  const first = reader.number();
  if (!reader.take("±")) reader.fail("quantity.not-a-quantity", "expected ± inside the brackets");
  const second = reader.number();
  if (!reader.take(")"))
    reader.fail("quantity.not-a-quantity", "expected ')'", "the unit is written after the number: (12.5 ± 0.2) g");
  const tail = reader.powerOfTen();
  const scale = readNumber(`1${tail}`);
  const halfWidth = multiply(readNumber(second), scale);
  if (halfWidth.n < 0n) reader.fail("quantity.uncertainty", "an uncertainty cannot be negative");
  const unit = reader.unit();
  const spread = reader.distribution(halfWidth);
  reader.end();
  return {
    value: multiply(readNumber(first), scale),
    unit,
    decimals: writtenDecimals(first) + writtenDecimals(`1${tail}`),
    ...spread,
  };
}

/** Half-width behind a ±, in the unit of the value: plain, in a unit of its own, or relative in %. */
function halfWidthIn(reader: Reader, value: Rational, unit: Unit): Rational {
  const figure = readNumber(reader.number());
  if (figure.n < 0n) reader.fail("quantity.uncertainty", "an uncertainty cannot be negative");
  const own = reader.unit();
  if (own.symbol === "" || own.symbol === unit.symbol) return figure;
  if (own.dimension === unit.dimension && own.offset.n === 0n) return divide(multiply(figure, own.factor), unit.factor);
  if (own.symbol === "%" && !isNumber(unit.dimension) && unit.offset.n === 0n) {
    const part = multiply(figure, multiply(value, own.factor));
    return part.n < 0n ? { n: -part.n, d: part.d } : part;
  }
  return reader.fail(
    "quantity.wrong-dimension",
    `an uncertainty in '${own.symbol}' does not fit a value in '${unit.symbol}'`,
  );
}

/** Plain decimal, one space, unit: by far the commonest text. */
const PLAIN = /^([+-]?\d+(?:\.\d+)?) ([^\s±(]+(?: [^\s±()]+)?)$/;

/** Read a quantity; the whole text must be one. */
export function readQuantity(input: string): Reading {
  const plain = input.length <= 60 ? PLAIN.exec(input) : null;
  const known = plain === null ? undefined : knownUnit(plain[2]!);
  if (known !== undefined) {
    const number = plain![1]!;
    const point = number.indexOf(".");
    return {
      value: readNumber(number),
      unit: known,
      variance: undefined,
      distribution: undefined,
      decimals: point < 0 ? 0 : number.length - point - 1,
    };
  }
  if (input.length > MAX_LENGTH) {
    throw new QuantityError("quantity.too-long", `a text of ${input.length} characters; the limit is ${MAX_LENGTH}`);
  }
  const reader = new Reader(input);
  if (reader.take("[")) return readInterval(reader);
  if (reader.take("(")) return readBracketed(reader);
  const first = reader.number();
  const concise = reader.concise(first);
  if (concise !== undefined) {
    const unit = reader.unit();
    reader.end();
    return {
      value: readNumber(concise.text),
      unit,
      variance: square(concise.uncertainty),
      distribution: "normal",
      decimals: writtenDecimals(concise.text),
    };
  }
  const value = readNumber(first);
  const decimals = writtenDecimals(first);
  if (reader.take("±")) {
    const halfWidth = readNumber(reader.number());
    if (halfWidth.n < 0n) reader.fail("quantity.uncertainty", "an uncertainty cannot be negative");
    const unit = reader.unit();
    const spread = reader.distribution(halfWidth);
    reader.end();
    return { value, unit, decimals, ...spread };
  }
  const unit = reader.unit();
  if (reader.take("±")) {
    const halfWidth = halfWidthIn(reader, value, unit);
    const spread = reader.distribution(halfWidth);
    reader.end();
    return { value, unit, decimals, ...spread };
  }
  reader.end();
  return { value, unit, variance: undefined, distribution: undefined, decimals };
}

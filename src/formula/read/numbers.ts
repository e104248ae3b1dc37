// Numbers in a formula: subscripts of every spelling, multipliers of parts, counts with the caller's n and x.
import { kindOf } from "../../foundation/argument";
import { SUBSCRIPTS } from "../../foundation/characters";
import { FRACTIONS, isDigit, isLower, isUpper, MINUS, PLUS } from "./characters";
import { Cursor, isSpace } from "./cursor";
import { isDecimalPoint } from "./dots";
import { MAX_CHARGE, MAX_COUNT, MAX_DIGITS } from "./limits";
import { add, type Ratio, ratio } from "./ratio";

/** What a comma in a formula stands for. */
export function commaAdvice(text: string, at: number): string {
  const water = /^,\s?(\d{0,3}\s?(?:H2O|H₂O))/.exec(text.slice(at, at + 12))?.[1];
  if (water !== undefined) return `write an adduct dot: ${text.slice(Math.max(0, at - 40), at)}·${water}`;
  return at + 1 === text.length
    ? "one formula at a time, and nothing after it"
    : "a shared site needs its shares: (Mg0.9Fe0.1)2SiO4";
}

/** Reads the numbers. */
export class NumberReader extends Cursor {
  /** Digits found between `]` and a bare sign. */
  protected pendingCharge = 0;

  /**
   * A count at the reading point: `2`, `0.95`, `₂`, `₀.₉₅`, `_2`, `_{8/3}`, `½`, `1½`, `n`. As a multiplier also `1/2`.
   * `before` is what a subscript follows: a symbol, `)` or `]`.
   */
  protected readNumber(role: "subscript" | "multiplier", before = ""): Ratio | undefined {
    const { text, at } = this;
    if (at >= this.end) return undefined;
    const character = text[at]!;
    if (isDigit(text.charCodeAt(at))) return this.readDigits(role, before);
    if (role === "multiplier" && (character === "(" || character === ".")) return this.readSetOffMultiplier();
    if (role === "subscript" && SUBSCRIPTS.includes(character)) return this.readSubscriptDigits();
    if (character === "_") return this.readUnderscore(before);
    if (FRACTIONS[character] !== undefined) {
      this.at += 1;
      this.decimals = true;
      const [n, d] = FRACTIONS[character]!;
      return { n, d };
    }
    if ((character === "n" || character === "x") && this.isVariable(role, before)) return this.readVariable(character);
    return undefined;
  }

  /** `·(1/2)H2O`, `·(½)H2O`, `·.5H2O`: a multiplier in brackets, or without its zero. */
  protected readSetOffMultiplier(): Ratio | undefined {
    const { text, at } = this;
    const match = /^(?:\((\d{1,12}(?:\.\d{1,12})?(?:\/\d{1,12})?|[½⅓⅔¼¾])\)|(\.\d{1,12}))(?=\s?[A-Z([{])/.exec(
      text.slice(at, at + 42),
    );
    if (match === null) return undefined;
    const vulgar = FRACTIONS[match[1] ?? ""];
    const value = vulgar === undefined ? ratioFromText(match[1] ?? `0${match[2]}`) : ratio(...vulgar);
    if (value === undefined) this.tooLarge(at);
    if (value.n === 0) this.fail("formula.zero-count", "a count of zero", at);
    this.at += match[0].length;
    return value;
  }

  protected isVariable(role: string, before: string): boolean {
    const { text, at } = this;
    const next = text.charCodeAt(at + 1);
    if (isLower(next)) return false;
    if (role === "subscript") return before !== "" && !isDigit(next);
    return isUpper(next) || text[at + 1] === "(" || text[at + 1] === "[" || isSpace(text[at + 1] ?? "");
  }

  /** `1-x`, `2+x` after a symbol or bracket, or all of `_{1-x}`: undefined if it is none. */
  protected readOffset(whole: Ratio, to: number, closed: boolean): Ratio | undefined {
    const { text } = this;
    const match = /^([-+−–])([nxyzδ])(?![a-z])/.exec(text.slice(to, to + 3));
    if (match === null) return undefined;
    const after = text[to + 2] ?? "";
    if (closed ? after !== "}" : !this.isPartEnd(to + 2) && !isUpper(after.charCodeAt(0)) && !"[{".includes(after)) {
      return undefined;
    }
    const name = match[2]!;
    if (name !== "n" && name !== "x") {
      this.fail("formula.unknown-number", `the number ${name} is not known`, to + 1, {
        hint: "call it x and give its value: parseFormula(text, { x: 0.05 })",
        details: { variable: name },
      });
    }
    this.at = to + 1;
    const value = this.readVariable(name);
    const sum = add(whole, match[1] === "+" ? value : { n: -value.n, d: value.d });
    if (sum === undefined) this.tooLarge(to);
    if (sum.n <= 0) {
      this.fail("formula.unknown-number", `${name} is too large for this count`, to + 1, {
        details: { variable: name },
      });
    }
    return sum;
  }

  protected readVariable(name: "n" | "x"): Ratio {
    const { at } = this;
    const given = this.options[name];
    if (given === undefined) {
      this.fail("formula.unknown-number", `the number ${name} is not known`, at, {
        hint: `give it: parseFormula(text, { ${name}: 3 })`,
        details: { variable: name },
      });
    }
    const written = typeof given === "object" ? kindOf(given) : String(given);
    const value = ratioFromText(written.trim());
    if (value === undefined || value.n <= 0) {
      this.fail("formula.unknown-number", `${name} = ${written.slice(0, 40)} is not a positive number`, at, {
        details: { variable: name },
      });
    }
    this.at += 1;
    return value;
  }

  protected readDigits(role: "subscript" | "multiplier", before: string): Ratio | undefined {
    const { text, at } = this;
    let to = at;
    while (isDigit(text.charCodeAt(to))) to += 1;
    let digits = text.slice(at, to);
    let places = 0;
    const next = text[to] ?? "";
    if (before === "]" && next !== "" && (PLUS.includes(next) || MINUS.includes(next))) {
      // `[Fe(CN)6]4-`: the digits are the charge
      if (digits.length > 4) this.fail("formula.count-too-large", `a charge above ${MAX_CHARGE}`, at);
      if (digits[0] === "0") this.fail("formula.leading-zero", "a charge number does not begin with zero", at);
      const after = text.charCodeAt(to + 1);
      if (!isDigit(after)) {
        this.pendingCharge = Number(digits);
        this.at = to;
        return undefined;
      }
    }
    if (next === "," && isDigit(text.charCodeAt(to + 1))) {
      const adduct = role === "subscript" && /^,\d{1,3}H/.test(text.slice(to, to + 5));
      const hint = adduct ? commaAdvice(text, to) : "write a decimal point";
      this.fail("formula.decimal-comma", "a comma inside a number", to, { hint });
    }
    if (next === "." && isDigit(text.charCodeAt(to + 1))) {
      const context = { start: at, before, members: this.members, decimals: this.decimals };
      if (role === "multiplier" || isDecimalPoint(text, to, context)) {
        const from = to + 1;
        to = from;
        while (isDigit(text.charCodeAt(to))) to += 1;
        places = to - from;
        digits += text.slice(from, to);
        this.decimals = true;
      }
    }
    if (digits.length > MAX_DIGITS) this.tooLarge(at);
    if (digits[0] === "0" && places === 0 && digits !== "0") {
      this.fail("formula.leading-zero", "a count does not begin with zero", at, { hint: this.zeroHint(at) });
    }
    if (digits[0] === "0" && digits[1] === "0" && places < digits.length - 1) {
      this.fail("formula.leading-zero", "a count does not begin with two zeros", at);
    }
    this.at = to;
    const n = Number(digits);
    if (n === 0) this.fail("formula.zero-count", "a count of zero", at, { hint: this.zeroHint(at) });
    let value = places === 0 ? { n, d: 1 } : ratio(n, 10 ** places);
    if (role === "subscript") {
      const offset = this.readOffset(value, to, false);
      if (offset !== undefined) return offset;
    }
    if (places === 0) {
      const vulgar = FRACTIONS[text[to] ?? ""];
      if (vulgar !== undefined) {
        this.at += 1;
        value = ratio(n * vulgar[1] + vulgar[0], vulgar[1]);
      } else if (text[to] === "/" && isDigit(text.charCodeAt(to + 1))) {
        value = this.readDenominator(n, to + 1);
      }
    }
    return value;
  }

  protected readDenominator(n: number, from: number): Ratio {
    const { text } = this;
    let to = from;
    while (isDigit(text.charCodeAt(to))) to += 1;
    if (to - from > MAX_DIGITS) this.tooLarge(from);
    const d = Number(text.slice(from, to));
    if (d === 0) this.fail("formula.zero-count", "a fraction with the denominator zero", from);
    this.at = to;
    return ratio(n, d);
  }

  protected readSubscriptDigits(): Ratio {
    const { text, at } = this;
    let to = at;
    let digits = "";
    let places = 0;
    while (to < this.end && SUBSCRIPTS.includes(text[to]!)) digits += SUBSCRIPTS.indexOf(text[to++]!);
    if (text[to] === "." && to + 1 < this.end && SUBSCRIPTS.includes(text[to + 1]!)) {
      to += 1;
      const whole = digits.length;
      while (to < this.end && SUBSCRIPTS.includes(text[to]!)) digits += SUBSCRIPTS.indexOf(text[to++]!);
      places = digits.length - whole;
      this.decimals = true;
    }
    if (digits.length > MAX_DIGITS) this.tooLarge(at);
    if (digits[0] === "0" && places === 0 && digits.length > 1) {
      this.fail("formula.leading-zero", "a count does not begin with zero", at);
    }
    const n = Number(digits);
    if (n === 0) this.fail("formula.zero-count", "a count of zero", at);
    this.at = to;
    return places === 0 ? { n, d: 1 } : ratio(n, 10 ** places);
  }

  /** `_2`, `_{12}`, `_{0.95}`, `_{8/3}`. */
  protected readUnderscore(before: string): Ratio {
    const { text, at } = this;
    const offset = /^_\{(\d{1,12}(?:\.\d{1,12})?)(?=[-+−–][a-zδ])/.exec(text.slice(at, at + 32));
    if (offset !== null && before !== "") {
      const value = this.readOffset(ratioFromText(offset[1]!)!, at + offset[0].length, true);
      if (value !== undefined) {
        this.at += 1;
        return value;
      }
    }
    const match = /^_(?:(\d)|\{(\d{1,13}(?:\.\d{1,13})?(?:\/\d{1,13})?|[nx])\})/.exec(text.slice(at, at + 44));
    if (match === null || before === "") {
      this.fail("formula.misplaced-number", "an underscore without a subscript", at, { hint: "write H_2O or H_{12}" });
    }
    const inside = match[1] ?? match[2]!;
    if (inside === "n" || inside === "x") {
      this.at += 2;
      const value = this.readVariable(inside);
      this.at += 1;
      return value;
    }
    const value = ratioFromText(inside);
    if (value === undefined) this.tooLarge(at);
    if (value.n === 0) this.fail("formula.zero-count", "a count of zero", at);
    this.at += match[0].length;
    if (value.d !== 1) this.decimals = true;
    return value;
  }

  /** `CuS04`, `Na0H`: zero for the letter O. */
  protected zeroHint(position: number): string | undefined {
    const fixed = `${this.text.slice(0, position)}O${this.text.slice(position + 1)}`;
    return this.text.length <= 80 ? `a zero for the letter O? ${fixed}` : "a zero for the letter O?";
  }
}

/** `5`, `0.5`, `8/3` exactly; undefined if it is no such number or too long. */
export function ratioFromText(text: string): Ratio | undefined {
  const match = /^(\d{1,12})(?:\.(\d{1,12}))?(?:\/(\d{1,12}))?$/.exec(text);
  if (match === null) return undefined;
  const [, whole = "", places = "", below = "1"] = match;
  const digits = whole + places;
  if (digits.length > MAX_DIGITS || Number(below) === 0) return undefined;
  const d = 10 ** places.length * Number(below);
  return d > MAX_COUNT ? undefined : ratio(Number(digits), d);
}

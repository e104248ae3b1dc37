// The number in front of a formula. By example:
//
//   2 H2O  2H2O  2e-        whole numbers, with or without white space
//   1/2 O2  ½ O2  1½ O2     fractions        0.5 O2  1.5O2  .5 O2   decimals, exact
//   (1/2) O2  (2)H2O        in brackets       2·H2O  2 * H2O  2 × H2O   with a sign of multiplication
//   _ H2O  ___H2O  ? H2O    a blank to be filled in: no coefficient
//   3 CdSO4.8H2O            white space: a coefficient
//   3CdSO4.8H2O             stuck to an adduct: part of the formula, unless the other coefficients say otherwise

import { FRACTIONS } from "../../formula/internal";
import { inLowestTerms, type Rational } from "../../foundation/rational";
import { EquationError } from "../error";
import { MAX_COEFFICIENT_DIGITS } from "./limits";

/** A vulgar fraction by its character. */
function vulgar(character: string): Rational {
  const [n, d] = FRACTIONS[character]!;
  return { n: BigInt(n), d: BigInt(d) };
}

const BRACKETED = /\((\.\d+|\d+(?:\.\d+|\/\d+)?[½⅓⅔¼¾]?|[½⅓⅔¼¾])\)(?=\s*[A-Z([{])/y;
const BLANK = /(?:_+|\?)\s*(?=[A-Z([{])/y;
const TIMES = /\s?[·*×⋅]\s?(?=[A-Z([{])/y;
const NUMBER = /(\d+)(?:\.(\d+)|\/(\d+))?([½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞])?|([½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞])|\.(\d+)/y;

/** A coefficient that was read, where the formula begins, and whether white space stands between them. */
interface Coefficient {
  readonly value: Rational;
  readonly end: number;
  readonly spaced: boolean;
}

/** Does a term begin with something that could be a coefficient? */
export function startsWithNumber(text: string, start: number): boolean {
  const code = text.charCodeAt(start);
  if ((code > 47 && code < 58) || (code > 127 && FRACTIONS[text[start]!] !== undefined)) return true;
  if (code === 46) return isDigit(text.charCodeAt(start + 1));
  return code === 40 && isAt(BRACKETED, text, start);
}

function isDigit(code: number): boolean {
  return code > 47 && code < 58;
}

function isAt(pattern: RegExp, text: string, at: number): boolean {
  pattern.lastIndex = at;
  return pattern.test(text);
}

/** Where the formula begins if a blank to be filled in stands before it. */
export function skipBlank(text: string, start: number): number {
  const code = text.charCodeAt(start);
  return (code === 95 || code === 63) && isAt(BLANK, text, start) ? BLANK.lastIndex : start;
}

/** The coefficient at `start`; undefined where the number is the whole term or belongs to what follows. */
export function readCoefficient(text: string, start: number, end: number): Coefficient | undefined {
  const bracketed = text.charCodeAt(start) === 40;
  NUMBER.lastIndex = bracketed ? start + 1 : start;
  const match = NUMBER.exec(text);
  if (match === null) return undefined;
  const [all, whole, decimals, under, mixed, alone, bare] = match;
  let after = start + all.length + (bracketed ? 2 : 0);
  if (after >= end) return undefined;
  const fail = (problem: string, hint: string): never => {
    throw new EquationError("equation.bad-coefficient", problem, { input: text, position: start, hint });
  };
  if (all.length > MAX_COEFFICIENT_DIGITS) {
    fail("a coefficient with too many digits", `up to ${MAX_COEFFICIENT_DIGITS} digits are read`);
  }
  let value: Rational;
  if (alone !== undefined) value = vulgar(alone);
  else if (bare !== undefined) value = inLowestTerms(BigInt(bare), 10n ** BigInt(bare.length));
  else if (decimals !== undefined) value = inLowestTerms(BigInt(whole! + decimals), 10n ** BigInt(decimals.length));
  else if (under !== undefined) {
    if (/^0+$/.test(under)) fail("a coefficient divided by zero", "write a fraction such as 1/2");
    value = inLowestTerms(BigInt(whole!), BigInt(under));
  } else value = { n: BigInt(whole!), d: 1n };
  if (mixed !== undefined) {
    if (decimals !== undefined || under !== undefined) fail("two fractions in one coefficient", "write 3/2 or 1½");
    const { n, d } = vulgar(mixed);
    value = inLowestTerms(value.n * d + n, d);
  }
  if (value.n === 0n) fail("a coefficient of zero", "leave out a species that takes no part");
  const glued = after;
  while (after < end && isBlank(text.charCodeAt(after))) after++;
  if (isAt(TIMES, text, glued)) after = TIMES.lastIndex;
  return { value, end: after, spaced: bracketed || after > glued };
}

function isBlank(code: number): boolean {
  return code === 32 || code === 9 || code === 0xa0 || (code >= 0x2000 && code <= 0x200b) || code === 0x202f;
}

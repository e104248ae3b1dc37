// Reading equations: from text (split.ts, coefficient.ts) or from lists of reactants and products.

import { type Formula, parseFormula, type ReadOptions } from "../../formula";
import { DOTS, hasDigitsBeforeSign, hasMarkup, parseFormulaAt, plainText } from "../../formula/internal";
import { type Fields, isRecord } from "../../foundation/argument";
import { attempt, isPreparativeError, type Result, relocated } from "../../foundation/error";
import { ONE, type Rational, wholeNumbers } from "../../foundation/rational";
import { exactSystem } from "../balance/system";
import { Equation } from "../equation";
import { EquationError, type EquationRefusal } from "../error";
import { isInNullspace } from "../kernel/bareiss";
import { EQUATION, type EquationOptions, guard, NO_OPTIONS, needOptions } from "../options";
import { readCoefficient, skipBlank, startsWithNumber } from "./coefficient";
import { MAX_LENGTH, MAX_SPECIES } from "./limits";
import { withoutSpectators } from "./spectators";
import { splitEquation } from "./split";

/** An equation given as lists. */
const LISTS = { reactants: true, products: true } as const satisfies Fields<EquationLists>;

/** Numbers stuck to adducts that are tried in both readings. */
const MAX_GLUED = 6;

/** Reactants and products apart: each a formula, or a text with or without a coefficient. */
export interface EquationLists {
  /** What is used up. */
  readonly reactants: readonly (string | Formula)[];
  /** What is formed. */
  readonly products: readonly (string | Formula)[];
}

/** What an equation can be given as. */
export type EquationInput = string | EquationLists | Equation;

/**
 * Read a chemical equation.
 *
 * Arrows: `->` `=>` `→` for a reaction, `<=>` `<->` `⇌` for an equilibrium, `=` for bare stoichiometry. Coefficients may
 * be given, whole, as fraction (`1/2`, `½`) or decimal. A plus with white space on both sides separates species; a sign
 * stuck to a formula is a charge (`Na+ + Cl-`). Phases (`(aq)`, `↓`, `↑`), charges, electrons (`e-`) and hydrates are
 * read as in `parseFormula`. A number stuck to an adduct (`3CdSO4.8H2O`) belongs to the formula unless the coefficients
 * of the other species only fit the other reading.
 *
 * @param input - text, or `{ reactants, products }` with formulas or texts
 * @param options - whether given coefficients are kept and species on both sides cancelled; options of `parseFormula`
 * @throws {EquationError} `equation.no-arrow`, `equation.several-arrows`, `equation.backward-arrow`,
 * `equation.empty-term`, `equation.doubtful-plus`, `equation.bad-coefficient`, `equation.too-long`,
 * `equation.too-many-species`, `equation.not-an-equation`, `equation.not-a-formula`, `equation.bad-option`; {@link FormulaError} with the place in the whole text
 * @category Balancing
 * @example
 * parseEquation("MnO4-+8H++5e-->Mn^2++4H2O").toString() // => "MnO4- + 8 H+ + 5 e- -> Mn^2+ + 4 H2O"
 * parseEquation({ reactants: ["H2", "O2"], products: ["H2O"] }).toString() // => "H2 + O2 -> H2O"
 */
export function parseEquation(input: EquationInput, options: EquationOptions = NO_OPTIONS): Equation {
  if (options !== NO_OPTIONS) needOptions(options, EQUATION);
  return readEquation(input, options);
}

/** @internal As `parseEquation`, with options that were looked through already. */
export function readEquation(input: EquationInput, options: EquationOptions): Equation {
  let equation: Equation;
  if (typeof input === "string") equation = readText(input, options);
  else if (input instanceof Equation) equation = input;
  else equation = readLists(input, options);
  if (options.coefficients === "ignore" && equation.given !== undefined) equation = equation.withoutCoefficients();
  return options.spectators === "cancel" ? withoutSpectators(equation) : equation;
}

/**
 * {@link parseEquation}, with the outcome as data.
 *
 * @category Balancing
 * @example
 * tryParseEquation("H2 + O2").ok // => false
 */
export function tryParseEquation(input: EquationInput, options?: EquationOptions): Result<Equation, EquationRefusal> {
  return attempt(() => parseEquation(input, options));
}

/** Ends of the terms that the fast reader finds. */
const ends: number[] = [];
const starts: number[] = [];

/**
 * The usual text in one pass: terms without coefficients, `" + "` between them, `" -> "` once. Undefined for anything
 * else, also for anything wrong or doubtful, which `splitEquation` then judges; both read such texts alike.
 */
function readPlain(text: string): Equation | undefined {
  const length = text.length;
  let count = 0;
  let reactants = -1;
  let start = 0;
  for (let at = 0; at < length; at++) {
    const code = text.charCodeAt(at);
    // letters, square and curly brackets, ^ _; digits; ( ) * and the dots
    if ((code > 62 && code < 126) || (code > 47 && code < 58) || code === 46 || (code > 39 && code < 43)) continue;
    if (code === 32) {
      const next = text.charCodeAt(at + 1);
      let skip = 0;
      if (next === 43 && text.charCodeAt(at + 2) === 32) skip = 2;
      else if (next === 45 && text.charCodeAt(at + 2) === 62 && text.charCodeAt(at + 3) === 32) skip = 3;
      else return undefined;
      if (at === start || count >= MAX_SPECIES) return undefined;
      starts[count] = start;
      ends[count++] = at;
      if (skip === 3) {
        if (reactants >= 0) return undefined;
        reactants = count;
      }
      at += skip;
      start = at + 1;
      if (!isPlainStart(text, start)) return undefined;
      continue;
    }
    if (code === 43 || code === 45) {
      // a charge: what follows it is a blank, a bracket that closes, or the end
      const next = text.charCodeAt(at + 1);
      if (at > start && (next === 32 || next === 41 || next === 93 || at + 1 === length)) continue;
      return undefined;
    }
    if (code !== 183) return undefined;
  }
  if (reactants < 0 || !isPlainStart(text, 0)) return undefined;
  starts[count] = start;
  ends[count++] = length;
  const formulas: Formula[] = [];
  for (let at = 0; at < count; at++) formulas.push(formulaAt(text, starts[at]!, ends[at]!, undefined));
  return new Equation(formulas, reactants, "forward", undefined, NO_REMARKS);
}

/** No coefficient, no blank to be filled in, no second blank: a letter or a bracket that holds no number. */
function isPlainStart(text: string, at: number): boolean {
  const code = text.charCodeAt(at);
  return code === 40 ? text.charCodeAt(at + 1) > 57 : code > 63 && code !== 95;
}

const NO_REMARKS: readonly string[] = /* @__PURE__ */ Object.freeze([]);

function readText(text: string, options: EquationOptions): Equation {
  const plain = text.length <= MAX_LENGTH && readOptions(options) === undefined ? readPlain(text) : undefined;
  if (plain !== undefined) return plain;
  if (text.length > MAX_LENGTH || !hasMarkup(text)) return readFully(text, options);
  const { text: turned, positions } = plainText(text);
  try {
    return readFully(turned, options);
  } catch (error) {
    if (!isPreparativeError(error) || error.position === undefined) throw error;
    // point into the text that was given
    const position = positions[Math.min(error.position, positions.length - 1)]!;
    throw relocated(error, text, position - error.position);
  }
}

function readFully(text: string, options: EquationOptions): Equation {
  const reading = readOptions(options);
  const { arrow, terms, reactants, remarks } = splitEquation(text, (from, to) => readTerm(text, from, to, reading));
  const formulas = new Array<Formula>(terms.length / 2);
  let given: (Rational | undefined)[] | undefined;
  /** Numbers stuck to an adduct, for the other reading. */
  let glued: { at: number; value: Rational; from: number }[] | undefined;
  for (let at = 0; at < formulas.length; at++) {
    let from = skipBlank(text, terms[2 * at]!);
    const to = terms[2 * at + 1]!;
    if (startsWithNumber(text, from)) {
      const coefficient = readCoefficient(text, from, to);
      if (coefficient !== undefined) {
        if (!coefficient.spaced && hasAdductDot(text, coefficient.end, to)) {
          glued ??= [];
          glued.push({ at, value: coefficient.value, from: coefficient.end });
        } else {
          given ??= new Array<Rational | undefined>(formulas.length).fill(undefined);
          given[at] = coefficient.value;
          from = coefficient.end;
        }
      }
    }
    formulas[at] = formulaAt(text, from, to, reading);
  }
  if (glued !== undefined && given !== undefined && !fits(formulas, reactants, given)) {
    const tried = glued.slice(0, MAX_GLUED).map(({ at, value, from }) => {
      return { at, value, formula: formulaAt(text, from, terms[2 * at + 1]!, reading) };
    });
    let fitting: Equation | undefined;
    // every choice of those that are coefficients after all; of several that balance the last, with the most of them
    for (let choice = 1; choice < 1 << tried.length; choice++) {
      const otherFormulas = [...formulas];
      const otherGiven = [...given];
      tried.forEach(({ at, value, formula }, bit) => {
        if (((choice >> bit) & 1) === 0) return;
        otherFormulas[at] = formula;
        otherGiven[at] = value;
      });
      if (fits(otherFormulas, reactants, otherGiven)) {
        fitting = new Equation(otherFormulas, reactants, arrow, otherGiven, [...remarks, GLUED_REMARK]);
      }
    }
    if (fitting !== undefined) return fitting;
  }
  if (given !== undefined && formulas.some(({ text: own }) => hasDigitsBeforeSign(own))) {
    const asCharges = formulas.map(withDigitsAsCharge);
    if (!fits(formulas, reactants, given) && fits(asCharges, reactants, given)) {
      return new Equation(asCharges, reactants, arrow, given, [...remarks, CHARGE_REMARK]);
    }
  }
  return new Equation(formulas, reactants, arrow, given, remarks);
}

/** Read what stands between two signs for its faults alone. */
function readTerm(text: string, from: number, to: number, reading: ReadOptions | undefined): void {
  const start = skipBlank(text, from);
  const coefficient = startsWithNumber(text, start) ? readCoefficient(text, start, to) : undefined;
  formulaAt(text, coefficient?.end ?? start, to, reading);
}

const CHARGE_REMARK = "digits before a bare sign were read as charges, because the given coefficients then balance";

const GLUED_REMARK =
  "a number stuck to an adduct was read as a coefficient, because the other coefficients then balance";

/** `Fe3+` as one atom with three charges; every other formula as it is. */
export function withDigitsAsCharge(formula: Formula): Formula {
  return hasDigitsBeforeSign(formula.text) ? parseFormula(formula.text, { digitsBeforeSign: "charge" }) : formula;
}

/** Is there an adduct dot, or a full stop that could be one, in this part of the text? */
function hasAdductDot(text: string, from: number, to: number): boolean {
  for (let at = from; at < to; at++) if (text[at] === "." || DOTS.includes(text[at]!)) return true;
  return false;
}

/** Do the coefficients balance, those left out counting as one? */
function fits(formulas: readonly Formula[], reactants: number, given: readonly (Rational | undefined)[]): boolean {
  const { matrix, scales } = exactSystem(formulas, reactants);
  const ratios = given.map((value, at) => ({ n: (value ?? ONE).n, d: (value ?? ONE).d * scales[at]! }));
  return isInNullspace(matrix, wholeNumbers(ratios));
}

/** The options of the formula reader among ours; undefined, which is faster, when none is used. */
function readOptions({ n, x, digitsBeforeSign }: EquationOptions): ReadOptions | undefined {
  return n === undefined && x === undefined && digitsBeforeSign === undefined ? undefined : { n, x, digitsBeforeSign };
}

/** The formula in one stretch of the text; its errors point into the whole text. */
function formulaAt(text: string, from: number, to: number, options: ReadOptions | undefined): Formula {
  try {
    return options === undefined ? parseFormulaAt(text, from, to) : parseFormula(text.slice(from, to), options);
  } catch (error) {
    if (!isPreparativeError(error)) throw error;
    throw relocated(error, text, from);
  }
}

/** A formula handed over as object; anything else is refused here, before it does harm further on. */
export function formulaGiven(value: unknown): Formula {
  if (isRecord(value) && typeof value["text"] === "string" && typeof value["elementIndexAt"] === "function") {
    return value as unknown as Formula;
  }
  throw new EquationError("equation.not-a-formula", "a species is a formula, or its text", {
    hint: 'write it as text, or read it with parseFormula("...")',
  });
}

function readLists(lists: EquationLists, options: EquationOptions): Equation {
  if (isRecord(lists)) guard.fields(lists, LISTS, "the equation");
  const { reactants, products } = isRecord(lists) ? lists : { reactants: undefined, products: undefined };
  if (!Array.isArray(reactants) || !Array.isArray(products)) {
    throw new EquationError("equation.not-an-equation", "an equation is a text, or { reactants, products }");
  }
  if (reactants.length === 0 || products.length === 0) {
    throw new EquationError("equation.empty-term", "reactants and products each have one formula at least");
  }
  if (reactants.length + products.length > MAX_SPECIES) {
    throw new EquationError("equation.too-many-species", `more than ${MAX_SPECIES} species`);
  }
  let given: (Rational | undefined)[] | undefined;
  const reading = readOptions(options);
  const all = [...reactants, ...products];
  const formulas = all.map((item, at) => {
    if (typeof item !== "string") return formulaGiven(item);
    const text = item.trim();
    const coefficient = startsWithNumber(text, 0) ? readCoefficient(text, 0, text.length) : undefined;
    if (coefficient === undefined) return formulaAt(text, 0, text.length, reading);
    if (!coefficient.spaced && hasAdductDot(text, coefficient.end, text.length)) {
      return formulaAt(text, 0, text.length, reading);
    }
    given ??= new Array<Rational | undefined>(all.length).fill(undefined);
    given[at] = coefficient.value;
    return formulaAt(text, coefficient.end, text.length, reading);
  });
  return new Equation(formulas, reactants.length, "forward", given, []);
}

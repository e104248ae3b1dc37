// The immutable Formula: counts, charge and mass as plain numbers from one scan; texts, fractions and structure only when
// somebody asks. Nothing is frozen and nothing is cached across formulas: twenty thousand of them cost a few milliseconds.

import { symbolAt } from "../element/symbols";
import { attempt, type Result } from "../foundation/error";
import { Fraction } from "../foundation/fraction";
import { FormulaError } from "./error";
import { type Composition, evaluate, nanoMass } from "./evaluate";
import { MAX_LENGTH } from "./limits";
import type { Reading } from "./nodes";
import { hillOrder } from "./order";
import { partTexts } from "./parts";
import { asciiText, hillText, htmlText, latexText, unicodeText } from "./print";
import { type ReadOptions, readFormula } from "./read";
import { found, scanFormula } from "./scan";

/** A formula as plain data, as `toJSON` gives it. */
export interface FormulaRecord {
  readonly formula: string;
}

/** One part of an adduct: `5 H2O` in `CuSO4·5H2O`. */
export interface FormulaPart {
  readonly formula: Formula;
  /** The number in front of the part, 1 if none is written. */
  readonly multiplier: Fraction;
}

/**
 * A chemical formula as read: what it holds, its charge and phase, and how it was written. Immutable. Made by
 * {@link parseFormula}.
 *
 * @category Formulas
 * @example
 * const alum = parseFormula("KAl(SO4)2·12H2O");
 * alum.count("O") // => 20
 * alum.symbols // => ["Al", "H", "K", "O", "S"]
 * alum.toUnicode() // => "KAl(SO₄)₂·12H₂O"
 */
export class Formula {
  /** @internal The text as read (variables filled in). */
  readonly text: string;
  /** @internal Element index (0 is hydrogen), or 1000 Z + A for a labelled nuclide; the electron has none. */
  readonly elementIndices: readonly number[];
  /** @internal Exact counts are `numerators[i] / denominator`, both below 2^53. */
  readonly numerators: readonly number[];
  /** @internal */
  readonly denominator: number;
  /** Charge number, signed; 0 for a neutral formula. */
  readonly charge: number;
  /** Phase if one was written: `s`, `l`, `g`, `aq` or `cr`. */
  readonly phase: string | undefined;
  /**
   * @internal Mass on the default weights in nano-dalton times `denominator`, exact; NaN if it is beyond 2^53, holds a
   * labelled nuclide, or an element without a standard weight.
   */
  readonly nano: number;

  /** @internal Use {@link parseFormula}. */
  constructor(
    text: string,
    elementIndices: readonly number[],
    numerators: readonly number[],
    denominator: number,
    charge: number,
    phase: string | undefined,
    nano: number,
  ) {
    this.text = text;
    this.elementIndices = elementIndices;
    this.numerators = numerators;
    this.denominator = denominator;
    this.charge = charge;
    this.phase = phase;
    this.nano = nano;
  }

  /** @internal The written structure, read again from the text. */
  reading(): Reading {
    return readFormula(this.text);
  }

  /** Symbols in Hill order: carbon, hydrogen, then alphabetical; all alphabetical without carbon. */
  get symbols(): string[] {
    return hillOrder(this.elementIndices).map((position) => symbolAt(this.elementIndices[position]!));
  }

  /**
   * How many atoms of an element, exactly; 0 if it is not in the formula. Labelled nuclides are counted under their own
   * symbol (`"D"`, `"13C"`), not with the element.
   *
   * @example
   * parseFormula("Fe0.95O").count("Fe") // => 0.95
   */
  count(symbol: string): Fraction {
    for (let i = 0; i < this.elementIndices.length; i += 1) {
      if (symbolAt(this.elementIndices[i]!) === symbol) return fraction(this.numerators[i]!, this.denominator);
    }
    return new Fraction(0);
  }

  /** Symbol and exact count of every element, in Hill order. */
  get composition(): { readonly symbol: string; readonly count: Fraction }[] {
    return hillOrder(this.elementIndices).map((position) => ({
      symbol: symbolAt(this.elementIndices[position]!),
      count: fraction(this.numerators[position]!, this.denominator),
    }));
  }

  /**
   * The parts of an adduct, in written order, each with the number in front of it; one part if there is no adduct dot.
   *
   * @example
   * parseFormula("CuSO4·5H2O").parts.map((part) => `${part.multiplier} ${part.formula}`) // => ["1 CuSO4", "5 H2O"]
   */
  get parts(): FormulaPart[] {
    return partTexts(this.reading()).map(({ text, multiplier }) => ({
      formula: parseFormula(text),
      multiplier: fraction(multiplier.n, multiplier.d),
    }));
  }

  /**
   * The same notation: the same groups, order, dots, charge and phase. `CH3COOH` and `C2H4O2` are not.
   *
   * @example
   * parseFormula("CuSO4.5H2O").equals(parseFormula("CuSO₄·5H₂O")) // => true
   */
  equals(other: Formula): boolean {
    return this.toString() === other.toString();
  }

  /**
   * The same atoms and charge, however written; the phase does not count.
   *
   * @example
   * parseFormula("CH3COOH").hasSameComposition(parseFormula("C2H4O2")) // => true
   */
  hasSameComposition(other: Formula): boolean {
    if (this.charge !== other.charge || this.elementIndices.length !== other.elementIndices.length) return false;
    return this.elementIndices.every((index, i) => {
      const j = other.elementIndices.indexOf(index);
      return (
        j >= 0 &&
        BigInt(this.numerators[i]!) * BigInt(other.denominator) ===
          BigInt(other.numerators[j]!) * BigInt(this.denominator)
      );
    });
  }

  /**
   * The same adduct parts in the same numbers, in whatever order and however each part is written.
   *
   * @example
   * parseFormula("ZnCO3·2Zn(OH)2").hasSameParts(parseFormula("2Zn(OH)2·ZnCO3")) // => true
   */
  hasSameParts(other: Formula): boolean {
    const rest = other.parts;
    for (const part of this.parts) {
      const found = rest.findIndex(
        (candidate) =>
          candidate.multiplier.equals(part.multiplier) && candidate.formula.hasSameComposition(part.formula),
      );
      if (found < 0) return false;
      rest.splice(found, 1);
    }
    return rest.length === 0;
  }

  /** Canonical ASCII: reads back to an equal formula. */
  toString(): string {
    return asciiText(this.reading());
  }

  /** With Unicode sub- and superscripts and a middle dot. */
  toUnicode(): string {
    return unicodeText(this.reading());
  }

  /** With `<sub>` and `<sup>`. */
  toHTML(): string {
    return htmlText(this.reading());
  }

  /** For LaTeX mathematics, upright. */
  toLaTeX(): string {
    return latexText(this.reading());
  }

  /** One run of symbols in Hill order, without groups and dots; charge and phase are kept. */
  toHill(): string {
    return hillText(this);
  }

  /** Plain data that survives `JSON.stringify`; {@link formulaFromJSON} brings it back. */
  toJSON(): FormulaRecord {
    return { formula: this.toString() };
  }
}

function fraction(n: number, d: number): Fraction {
  return new Fraction(BigInt(n), BigInt(d));
}

/**
 * Read a chemical formula. Reads what chemists write: hydrates (`CuSO4·5H2O`, `CuSO4.5H2O`, `CaSO4·½H2O`), brackets,
 * fractional counts (`Fe0.95O`), charges (`SO4^2-`, `[Fe(CN)6]4-`, `NH4+`), nuclides (`[13C]O2`, `D2O`), the electron,
 * phases, Unicode sub- and superscripts, and the library's own HTML and LaTeX. Case matters: `Co` is cobalt.
 *
 * A bare sign is one unit of charge: `Hg2+` is a pair of mercury atoms with one charge, as `I3-` is three iodine atoms;
 * write `Hg^2+`, or pass `digitsBeforeSign: "charge"`. In `CuSO4·nH2O` and `CuxS` the caller gives `n` and `x`.
 * At most 200 000 characters, brackets 1000 deep, numbers of 12 digits.
 *
 * @param text - formula text
 * @param options - values for `n` and `x`, and how digits before a bare sign are taken
 * @throws {FormulaError} `formula.unknown-symbol` and the other `formula.*` codes, with position and hint
 * @source IUPAC Red Book 2005, chapter IR-4
 * @category Formulas
 * @example
 * parseFormula("CuSO4.5H2O").count("H") // => 10
 * parseFormula("CuSO4·nH2O", { n: 3 }).toString() // => "CuSO4.3H2O"
 * parseFormula("[Fe(CN)6]4-").charge // => -4
 */
export function parseFormula(text: string, options?: ReadOptions): Formula {
  if (typeof text !== "string") {
    throw new FormulaError("formula.not-text", `a formula is text, not ${text === null ? "null" : typeof text}`);
  }
  if (options === undefined && text.length <= MAX_LENGTH && scanFormula(text, 0, text.length)) {
    return new Formula(text, found.elementIndices, found.numerators, 1, found.charge, found.phase, found.nano);
  }
  return readSlowly(text, options);
}

/** @internal A formula that is a slice of a longer text (an equation). Positions in errors count from the slice. */
export function parseFormulaAt(text: string, start: number, end: number): Formula {
  if (end - start <= MAX_LENGTH && scanFormula(text, start, end)) {
    return new Formula(
      text.slice(start, end),
      found.elementIndices,
      found.numerators,
      1,
      found.charge,
      found.phase,
      found.nano,
    );
  }
  return readSlowly(text.slice(start, end), undefined);
}

function readSlowly(text: string, options: ReadOptions | undefined): Formula {
  const reading = readFormula(text, options);
  const composition: Composition = evaluate(reading.nodes, text);
  const { elementIndices, numerators, denominator, charge } = composition;
  const kept = options === undefined ? text : asciiText(reading);
  return new Formula(
    kept,
    elementIndices,
    numerators,
    denominator,
    charge,
    reading.phase,
    nanoMass(elementIndices, numerators),
  );
}

/**
 * The formula behind plain data from `toJSON`.
 *
 * @throws {FormulaError} `formula.not-text` if the data is no formula record, and all codes of {@link parseFormula}
 * @category Formulas
 * @example
 * formulaFromJSON(JSON.parse(JSON.stringify(parseFormula("SO4^2-")))).charge // => -2
 */
export function formulaFromJSON(record: FormulaRecord): Formula {
  if (typeof record !== "object" || record === null || typeof record.formula !== "string") {
    throw new FormulaError("formula.not-text", "not a formula record; expected { formula: text }");
  }
  return parseFormula(record.formula);
}

/**
 * {@link parseFormula}, with the outcome as data.
 *
 * @category Formulas
 * @example
 * tryParseFormula("H2O").ok // => true
 */
export function tryParseFormula(text: string, options?: ReadOptions): Result<Formula> {
  return attempt(() => parseFormula(text, options));
}

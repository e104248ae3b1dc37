// The immutable Formula: counts, charge and mass as plain numbers from one scan; texts, fractions and structure only when
// somebody asks. Nothing is cached across formulas and nothing is frozen: twenty thousand of them cost a few milliseconds.

import { nanoWeightTable, symbolAt } from "../element/internal";
import { hasBrand } from "../foundation/brand";
import { attempt, type Result } from "../foundation/error";
import { Fraction } from "../foundation/fraction";
import { frozen } from "../foundation/frozen";
import { withPlainJSON } from "../foundation/plain-json";
import { nearestNumber } from "../foundation/rational";
import { headProblem, type RecordHead, recordHead } from "../foundation/record";
import { INSPECT, shownAs } from "../foundation/shown";
import { combine, factorRatio, multiplyParts } from "./algebra";
import { needReadOptions, notText } from "./argument";
import { FormulaError, type FormulaRefusal } from "./error";
import { type Composition, evaluate } from "./evaluate";
import { hillOrder } from "./print/order";
import { partTexts } from "./print/parts";
import { asciiText, hillText, htmlText, latexText, unicodeText } from "./print/print";
import { MAX_COUNT, MAX_LENGTH } from "./read/limits";
import type { Reading } from "./read/nodes";
import { ratioText } from "./read/ratio";
import { type ReadOptions, readFormula } from "./read/read";
import { remarksOn } from "./read/remarks";
import { CELL_BITS, CELL_MASK, CELLS, found, foundCells, type Lists, scanFormula } from "./read/scan";

const BRAND: unique symbol = /* @__PURE__ */ Symbol.for("preparative.formula/1");

const SCHEMA = 1;

const NO_CELLS = /* @__PURE__ */ new Int32Array(CELLS);

/** Structure and texts of a formula somebody asked for: beside the formula, so that one nobody asks costs nothing. */
interface Kept {
  reading?: Reading;
  ascii?: string;
  unicode?: string;
  hill?: string;
  composition?: string;
  symbols?: readonly string[];
  remarks?: readonly string[];
}

/** What a Hill text is made from. */
const countedOf = ({ elementIndices, numerators, denominator, charge }: Formula) => ({
  elementIndices,
  numerators,
  denominator,
  charge,
});

const keptOf = /* @__PURE__ */ new WeakMap<object, Kept>();

function keptFor(formula: object): Kept {
  const before = keptOf.get(formula);
  if (before !== undefined) return before;
  const made: Kept = {};
  keptOf.set(formula, made);
  return made;
}

/** @internal The formula with what the reader of a name has to say of it, beside the remarks on its text. */
export function withRemarks(formula: Formula, remarks: readonly string[]): Formula {
  keptFor(formula).remarks = remarks;
  return formula;
}

/** A formula as plain data, as `toJSON` gives it. */
export interface FormulaRecord extends RecordHead<"formula"> {
  /** Canonical ASCII, which reads back to the same formula. */
  readonly formula: string;
}

/** One part of an adduct: `5 H2O` in `CuSO4·5H2O`. */
export interface FormulaPart {
  /** The part without its multiplier. */
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
  /** @internal `instanceof` asks for the brand, so that values of another loaded copy pass. */
  static [Symbol.hasInstance](value: unknown): boolean {
    return this === Formula ? hasBrand(value, BRAND) : Function.prototype[Symbol.hasInstance].call(this, value);
  }

  /** @internal */
  get [BRAND](): true {
    return true;
  }

  /** @internal Its name in consoles, whatever a minifier makes of it. */
  static get name(): string {
    return "Formula";
  }

  /** @internal */
  get [Symbol.toStringTag](): string {
    return "Formula";
  }

  /** @internal */
  [INSPECT](): string {
    return shownAs("Formula", this);
  }

  // `declare`: without it every field is first defined as undefined, which doubles the cost of a formula.
  // Behind getters and not frozen: freezing would cost a third of reading a formula. Where a formula is shared between
  // callers it is frozen as well (foundation/frozen.ts).
  declare private readonly ownText: string;
  declare private readonly ownCharge: number;
  declare private readonly ownPhase: string | undefined;
  // Up to six elements with whole counts below 16384 stand in the object itself (see scan.ts); all else in lists.
  declare private readonly lists: Lists | undefined;
  declare private readonly cell0: number;
  declare private readonly cell1: number;
  declare private readonly cell2: number;
  declare private readonly cell3: number;
  declare private readonly cell4: number;
  declare private readonly cell5: number;

  /** @internal Use {@link parseFormula}. `cells` is read, not kept. */
  constructor(text: string, charge: number, phase: string | undefined, lists: Lists | undefined, cells: Int32Array) {
    this.ownText = text;
    this.ownCharge = charge;
    this.ownPhase = phase;
    this.lists = lists && frozen(lists);
    this.cell0 = cells[0]!;
    this.cell1 = cells[1]!;
    this.cell2 = cells[2]!;
    this.cell3 = cells[3]!;
    this.cell4 = cells[4]!;
    this.cell5 = cells[5]!;
  }

  /** @internal The text as read (variables filled in). */
  get text(): string {
    return this.ownText;
  }

  /** Charge number, signed; 0 for a neutral formula. */
  get charge(): number {
    return this.ownCharge;
  }

  /** Phase if one was written: `s`, `l`, `g`, `aq` or `cr`. */
  get phase(): string | undefined {
    return this.ownPhase;
  }

  private cellAt(i: number): number {
    switch (i) {
      case 0:
        return this.cell0;
      case 1:
        return this.cell1;
      case 2:
        return this.cell2;
      case 3:
        return this.cell3;
      case 4:
        return this.cell4;
      case 5:
        return this.cell5;
      default:
        return 0;
    }
  }

  /** @internal Number of different elements and nuclides. */
  get size(): number {
    if (this.lists !== undefined) return this.lists.elementIndices.length;
    let size = 0;
    while (this.cellAt(size) !== 0) size += 1;
    return size;
  }

  /** @internal Element index (0 is hydrogen) or 1000 Z + A of a labelled nuclide; the electron has none. Not in order. */
  elementIndexAt(i: number): number {
    return this.lists === undefined ? this.cellAt(i) & CELL_MASK : this.lists.elementIndices[i]!;
  }

  /** @internal The count of `elementIndexAt(i)`, times `denominator`; below 2^53. */
  numeratorAt(i: number): number {
    return this.lists === undefined ? this.cellAt(i) >> CELL_BITS : this.lists.numerators[i]!;
  }

  /** @internal */
  get denominator(): number {
    return this.lists === undefined ? 1 : this.lists.denominator;
  }

  /** @internal All element indices; a new list on each call for most formulas. */
  get elementIndices(): readonly number[] {
    if (this.lists !== undefined) return this.lists.elementIndices;
    return Array.from({ length: this.size }, (_, i) => this.cellAt(i) & CELL_MASK);
  }

  /** @internal All numerators, in the order of `elementIndices`. */
  get numerators(): readonly number[] {
    if (this.lists !== undefined) return this.lists.numerators;
    return Array.from({ length: this.size }, (_, i) => this.cellAt(i) >> CELL_BITS);
  }

  /**
   * @internal Mass on the default weights in nano-dalton times `denominator`. An integer below 2^53 is exact: all terms
   * are positive, so one comparison at the end vouches for every partial sum. NaN beyond that, and where a labelled nuclide
   * or an element without a standard weight is present.
   */
  get nano(): number {
    const weights = nanoWeightTable();
    const { size } = this;
    let mass = 0;
    for (let i = 0; i < size; i += 1) {
      mass += (weights[this.elementIndexAt(i)] ?? Number.NaN) * this.numeratorAt(i);
    }
    return mass <= MAX_COUNT ? mass : Number.NaN;
  }

  /** @internal As `nano`, at any size; undefined only where an atomic weight is missing or a nuclide is labelled. */
  get exactNano(): bigint | undefined {
    const fast = this.nano;
    if (!Number.isNaN(fast)) return BigInt(fast);
    const weights = nanoWeightTable();
    let mass = 0n;
    for (let i = 0; i < this.size; i += 1) {
      const weight = weights[this.elementIndexAt(i)] ?? Number.NaN;
      if (Number.isNaN(weight)) return undefined;
      mass += BigInt(weight) * BigInt(this.numeratorAt(i));
    }
    return mass;
  }

  /** @internal Has every element a standard weight, and is no nuclide labelled? */
  get hasStandardMass(): boolean {
    const weights = nanoWeightTable();
    const { size } = this;
    for (let i = 0; i < size; i += 1) {
      if (Number.isNaN(weights[this.elementIndexAt(i)] ?? Number.NaN)) return false;
    }
    return true;
  }

  /**
   * Molar mass in g/mol as a plain number: the exact sum of the conventional atomic weights, rounded once. For programs
   * that need neither uncertainty nor working; `molarMass` gives those, and knows nuclides and the caller's own weights.
   *
   * @throws {FormulaError} `formula.no-standard-mass` for an element without a standard atomic weight, a labelled nuclide,
   *   or the electron
   * @example
   * parseFormula("CuSO4.5H2O").gramsPerMole // => 249.677
   */
  get gramsPerMole(): number {
    // Both numbers are integers below 2^53, so the division rounds once.
    const fast = this.nano;
    if (fast > 0 && this.denominator <= 1_000_000) return fast / (1e9 * this.denominator);
    const exact = this.exactNano;
    if (exact === undefined || exact === 0n) throw noStandardMass(this);
    return nearestNumber({ n: exact, d: 1_000_000_000n * BigInt(this.denominator) });
  }

  /** @internal The written structure, read again from the text. */
  reading(): Reading {
    const kept = keptFor(this);
    kept.reading ??= readFormula(this.text);
    return kept.reading;
  }

  /** Symbols in Hill order: carbon, hydrogen, then alphabetical; all alphabetical without carbon. */
  get symbols(): string[] {
    const kept = keptFor(this);
    kept.symbols ??= hillOrder(this.elementIndices).map((position) => symbolAt(this.elementIndexAt(position)));
    return [...kept.symbols];
  }

  /**
   * How many atoms of an element, exactly; 0 if it is not in the formula. Labelled nuclides are counted under their own
   * symbol (`"D"`, `"13C"`), not with the element.
   *
   * @example
   * parseFormula("Fe0.95O").count("Fe") // => 0.95
   */
  count(symbol: string): Fraction {
    const { size } = this;
    for (let i = 0; i < size; i += 1) {
      if (symbolAt(this.elementIndexAt(i)) === symbol) return fraction(this.numeratorAt(i), this.denominator);
    }
    return new Fraction(0);
  }

  /** Symbol and exact count of every element, in Hill order. */
  get composition(): { readonly symbol: string; readonly count: Fraction }[] {
    return hillOrder(this.elementIndices).map((position) =>
      withPlainJSON({
        symbol: symbolAt(this.elementIndexAt(position)),
        count: fraction(this.numeratorAt(position), this.denominator),
      }),
    );
  }

  /**
   * The parts of an adduct, in written order, each with the number in front of it; one part if there is no adduct dot.
   *
   * @example
   * parseFormula("CuSO4·5H2O").parts.map((part) => `${part.multiplier} ${part.formula}`) // => ["1 CuSO4", "5 H2O"]
   */
  get parts(): FormulaPart[] {
    return partTexts(this.reading()).map(({ text, multiplier }) =>
      withPlainJSON({ formula: parseFormula(text), multiplier: fraction(multiplier.n, multiplier.d) }),
    );
  }

  /**
   * The same notation: the same groups, order, dots, charge and phase. `CH3COOH` and `C2H4O2` are not.
   *
   * @example
   * parseFormula("CuSO4.5H2O").equals(parseFormula("CuSO₄·5H₂O")) // => true
   */
  equals(other: Formula): boolean {
    return this.hasSameComposition(other) && this.toString() === other.toString();
  }

  /**
   * The same atoms and charge, however written; the phase does not count.
   *
   * @example
   * parseFormula("CH3COOH").hasSameComposition(parseFormula("C2H4O2")) // => true
   */
  hasSameComposition(other: Formula): boolean {
    if (!(other instanceof Formula)) throw notText(other, "the other formula");
    if (this.charge !== other.charge || this.size !== other.size) return false;
    const indices = other.elementIndices;
    for (let i = 0; i < indices.length; i += 1) {
      const j = indices.indexOf(this.elementIndexAt(i));
      if (j < 0) return false;
      const [mine, theirs] = [this.numeratorAt(i), other.numeratorAt(j)];
      if (mine === theirs && this.denominator === other.denominator) continue;
      if (BigInt(mine) * BigInt(other.denominator) !== BigInt(theirs) * BigInt(this.denominator)) return false;
    }
    return true;
  }

  /**
   * The same adduct parts in the same numbers, in whatever order and however each part is written.
   *
   * @example
   * parseFormula("ZnCO3·2Zn(OH)2").hasSameParts(parseFormula("2Zn(OH)2·ZnCO3")) // => true
   */
  hasSameParts(other: Formula): boolean {
    if (!(other instanceof Formula)) throw notText(other, "the other formula");
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

  /**
   * The atoms and charges of both, in Hill order; groups and phase are not kept.
   *
   * @throws {FormulaError} `formula.count-too-large`
   * @example
   * parseFormula("ZnO").plus(parseFormula("CO2")).toString() // => "CO3Zn"
   */
  plus(other: Formula | string): Formula {
    return fromComposition(combine(this, asFormula(other, "the other formula"), 1));
  }

  /**
   * What is left when another formula is taken away, in Hill order; groups and phase are not kept.
   *
   * @throws {FormulaError} `formula.negative-count`, `formula.nothing-left`
   * @example
   * parseFormula("ZnCO3").minus(parseFormula("CO2")).toString() // => "OZn"
   */
  minus(other: Formula | string): Formula {
    return fromComposition(combine(this, asFormula(other, "the other formula"), -1));
  }

  /**
   * So many of this formula: the number in front of every adduct part is multiplied, charges with it.
   *
   * @param factor - positive whole number, decimal or fraction text, or Fraction
   * @throws {FormulaError} `formula.bad-factor`, `formula.count-too-large`, `formula.fractional-charge`
   * @example
   * parseFormula("CaSO4·½H2O").times(2).toString() // => "2CaSO4.H2O"
   */
  times(factor: number | bigint | string | Fraction): Formula {
    const { nodes, phase } = this.reading();
    return parseFormula(asciiText({ nodes: multiplyParts(nodes, factorRatio(factor)), phase }));
  }

  /**
   * The formula without the adduct parts of a given composition: strips the water off a hydrate. A formula that has no
   * such part is returned as it is; water inside brackets stays.
   *
   * @throws {FormulaError} `formula.nothing-left` if every part is of that composition
   * @example
   * parseFormula("CuSO4·5H2O").without("H2O").toString() // => "CuSO4"
   */
  without(adduct: string | Formula): Formula {
    const gone = asFormula(adduct, "adduct");
    const parts = this.parts;
    const kept = parts.filter((part) => !part.formula.hasSameComposition(gone));
    if (kept.length === parts.length) return this;
    if (kept.length === 0) throw new FormulaError("formula.nothing-left", "nothing is left of the formula");
    const phase = this.phase === undefined ? "" : `(${this.phase})`;
    const texts = kept.map(({ formula, multiplier }) => {
      const number = multiplier.equals(1) ? "" : ratioText({ n: Number(multiplier.n), d: Number(multiplier.d) });
      return number + formula.toString();
    });
    return parseFormula(parseFormula(texts.join("*")).toString() + phase);
  }

  /**
   * Readings of the text that another writer might have meant otherwise, in words; mostly none. The formula is read as it
   * stands. A formula found by a name also says what the name leaves open.
   *
   * @example
   * parseFormula("NaCI").remarks // => ["CI was read as carbon and iodine; chlorine is written Cl, with a small L"]
   * parseFormula("H2O").remarks // => []
   */
  get remarks(): string[] {
    return [...remarksOn(this.text), ...(keptOf.get(this)?.remarks ?? [])];
  }

  /**
   * The notation that was read, in ASCII: reads back to an equal formula. Two notations of one substance stay two: as a key take
   * `canonicalFormula`.
   */
  toString(): string {
    const kept = keptFor(this);
    kept.ascii ??= asciiText(this.reading());
    return kept.ascii;
  }

  /** With Unicode sub- and superscripts and a middle dot. */
  toUnicode(): string {
    const kept = keptFor(this);
    kept.unicode ??= unicodeText(this.reading());
    return kept.unicode;
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
    const kept = keptFor(this);
    kept.hill ??= hillText(this);
    return kept.hill;
  }

  /** @internal Atoms and charge as one text in Hill order, whatever phase is written: the key of tables. */
  get compositionText(): string {
    const kept = keptFor(this);
    kept.composition ??= hillText({ ...countedOf(this), phase: undefined });
    return kept.composition;
  }

  /** Plain data that survives `JSON.stringify`; {@link formulaFromJSON} brings it back. */
  toJSON(): FormulaRecord {
    return { ...recordHead("formula", SCHEMA), formula: this.toString() };
  }
}

function noStandardMass(formula: Formula): FormulaError {
  return new FormulaError("formula.no-standard-mass", `${formula} has no mass on standard atomic weights alone`, {
    hint: "molarMass knows labelled nuclides, the electron, and weights of your own material",
    details: { formula: formula.toString() },
  });
}

/** A formula that was computed, written in Hill order. */
function fromComposition({ elementIndices, numerators, denominator, charge }: Composition): Formula {
  const lists = { elementIndices, numerators, denominator };
  return new Formula(hillText({ ...lists, charge, phase: undefined }), charge, undefined, lists, NO_CELLS);
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
    return new Formula(text, found.charge, found.phase, found.lists, foundCells);
  }
  return readSlowly(text, options);
}

/** @internal A formula that is a slice of a longer text (an equation). Positions in errors count from the slice. */
export function parseFormulaAt(text: string, start: number, end: number): Formula {
  if (end - start <= MAX_LENGTH && scanFormula(text, start, end)) {
    return new Formula(text.slice(start, end), found.charge, found.phase, found.lists, foundCells);
  }
  return readSlowly(text.slice(start, end), undefined);
}

/** @internal Text read, a formula as it is, anything else refused by the name of the argument. */
export function asFormula(given: string | Formula, argument: string): Formula {
  if (typeof given === "string") return parseFormula(given);
  if (given instanceof Formula) return given;
  throw notText(given, argument);
}

function readSlowly(text: string, options: ReadOptions | undefined): Formula {
  if (options !== undefined) needReadOptions(options);
  const reading = readFormula(text, options);
  const { charge, ...lists } = evaluate(reading.nodes, text);
  return new Formula(options === undefined ? text : asciiText(reading), charge, reading.phase, lists, NO_CELLS);
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
  const problem =
    headProblem(record, "formula", SCHEMA) ?? (typeof record.formula === "string" ? undefined : "no formula");
  if (problem !== undefined) {
    throw new FormulaError("formula.not-text", `not a formula record: ${problem}`, {
      hint: "pass what toJSON gave, parsed",
    });
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
export function tryParseFormula(text: string, options?: ReadOptions): Result<Formula, FormulaRefusal> {
  return attempt(() => parseFormula(text, options));
}

// The immutable Equation, as read: formulas on two sides, the coefficients that were given, the arrow. Nothing is solved
// here. Numbers that were not written stay absent; they count as one only where the given ones are checked.

import { type Formula, parseFormula } from "../formula";
import { shown } from "../foundation/argument";
import { hasBrand } from "../foundation/brand";
import type { Fraction } from "../foundation/fraction";
import { frozen } from "../foundation/frozen";
import { withPlainJSON } from "../foundation/plain-json";
import { inLowestTerms, ONE, type Rational } from "../foundation/rational";
import { headProblem, type RecordHead, recordHead } from "../foundation/record";
import { INSPECT, shownAs } from "../foundation/shown";
import { rationalText, toFraction } from "./balance/rational";
import { EquationError } from "./error";
import { printEquation } from "./print";
import type { Arrow } from "./read/split";

/** @internal Layout of the records of all kinds of equations. */
export const SCHEMA = 1;

const BRAND: unique symbol = /* @__PURE__ */ Symbol.for("preparative.equation/1");

/** A formula with the coefficient written before it, if one was. */
export interface Term {
  /** The species, as read. */
  readonly formula: Formula;
  /** As written, a fraction too; undefined where none was written. */
  readonly coefficient: Fraction | undefined;
}

/** A term as plain data. */
export interface TermRecord {
  /** Canonical ASCII, which reads back to the same formula. */
  readonly formula: string;
  /** Whole number or fraction as text; absent when none was written. */
  readonly coefficient?: string;
}

/** The fields that records of all kinds of equations share. */
export interface EquationFields {
  /** Terms on the left, in the order written. */
  readonly reactants: readonly TermRecord[];
  /** Terms on the right, in the order written. */
  readonly products: readonly TermRecord[];
  /** As it was written between the two sides. */
  readonly arrow: Arrow;
  /** Readings that another writer might have meant otherwise, in words; absent where there are none. */
  readonly remarks?: readonly string[];
}

/** An equation as plain data, as `toJSON` gives it. */
export interface EquationRecord extends RecordHead<"equation">, EquationFields {}

/**
 * A chemical equation as written, balanced or not. Immutable. Made by `parseEquation`.
 *
 * @category Balancing
 * @example
 * parseEquation("H2 + O2 = H2O").toUnicode() // => "H₂ + O₂ = H₂O"
 */
export class Equation {
  /** @internal `instanceof` asks for the brand, so that values of another loaded copy pass. */
  static [Symbol.hasInstance](value: unknown): boolean {
    return this === Equation ? hasBrand(value, BRAND) : Function.prototype[Symbol.hasInstance].call(this, value);
  }

  /** @internal */
  get [BRAND](): true {
    return true;
  }

  /** @internal Its name in consoles, whatever a minifier makes of it. */
  static get name(): string {
    return "Equation";
  }

  /** @internal */
  get [Symbol.toStringTag](): string {
    return "Equation";
  }

  /** @internal */
  [INSPECT](): string {
    return shownAs("Equation", this);
  }

  /** Every species, the reactants first. */
  readonly formulas: readonly Formula[];
  /** How many of `formulas` are reactants. */
  readonly reactantCount: number;
  /** As it was written between the two sides. */
  readonly arrow: Arrow;
  /** @internal What the reader remarked. */
  readonly notes: readonly string[];
  /** @internal Coefficients as written; undefined when none was. */
  readonly given: readonly (Rational | undefined)[] | undefined;

  /** @internal Use `parseEquation`. */
  constructor(
    formulas: readonly Formula[],
    reactantCount: number,
    arrow: Arrow,
    given: readonly (Rational | undefined)[] | undefined,
    notes: readonly string[],
  ) {
    this.formulas = formulas;
    this.reactantCount = reactantCount;
    this.arrow = arrow;
    this.given = frozen(given);
    this.notes = notes;
    Object.freeze(this);
  }

  /**
   * Readings that another writer might have meant otherwise, in words; mostly none.
   *
   * @example
   * parseEquation("Zn + Cu2+ -> Zn^2+ + Cu").remarks.length // => 1
   */
  get remarks(): readonly string[] {
    const onFormulas = this.formulas.flatMap(({ text, remarks }) => remarks.map((remark) => `${text}: ${remark}`));
    return onFormulas.length === 0 ? this.notes : [...this.notes, ...new Set(onFormulas)];
  }

  /** The terms left of the arrow. */
  get reactants(): Term[] {
    return this.terms(0, this.reactantCount);
  }

  /** The terms right of the arrow. */
  get products(): Term[] {
    return this.terms(this.reactantCount, this.formulas.length);
  }

  private terms(from: number, to: number): Term[] {
    return this.formulas.slice(from, to).map((formula, at) => {
      const coefficient = this.given?.[from + at];
      return withPlainJSON({ formula, coefficient: coefficient === undefined ? undefined : toFraction(coefficient) });
    });
  }

  /** Does it stand with the coefficients as written, those left out counting as one? */
  get hasCoefficients(): boolean {
    return this.given !== undefined;
  }

  /** The same equation without its coefficients. */
  withoutCoefficients(): Equation {
    return new Equation(this.formulas, this.reactantCount, this.arrow, undefined, this.notes);
  }

  /**
   * Species that stand on both sides in the same notation and phase.
   *
   * @example
   * parseEquation("Zn + Cu^2+ + SO4^2- -> Zn^2+ + Cu + SO4^2-").spectators.join() // => "SO4^2-"
   */
  get spectators(): Formula[] {
    const right = new Set(this.formulas.slice(this.reactantCount).map(String));
    return this.formulas.slice(0, this.reactantCount).filter((formula) => right.has(String(formula)));
  }

  /** The same formulas in the same places with the same coefficients and arrow? */
  equals(other: Equation): boolean {
    needEquation(other, Equation);
    return this.arrow === other.arrow && this.toString() === other.toString();
  }

  /** Canonical ASCII, with the coefficients as written; reads back to an equal equation. */
  toString(): string {
    return printEquation(this, this.given?.map(textOf), "ascii");
  }

  /** With sub- and superscripts and a true arrow. */
  toUnicode(): string {
    return printEquation(this, this.given?.map(textOf), "unicode");
  }

  /** With `<sub>` and `<sup>`. */
  toHTML(): string {
    return printEquation(this, this.given?.map(textOf), "html");
  }

  /** For LaTeX mathematics. */
  toLaTeX(): string {
    return printEquation(this, this.given?.map(textOf), "latex");
  }

  /** Plain data that survives `JSON.stringify`; `equationFromJSON` brings it back. */
  toJSON(): EquationRecord {
    const records = this.formulas.map((formula, at) => {
      const coefficient = this.given?.[at];
      return { formula: String(formula), ...(coefficient && { coefficient: rationalText(coefficient) }) };
    });
    return {
      ...recordHead("equation", SCHEMA),
      reactants: records.slice(0, this.reactantCount),
      products: records.slice(this.reactantCount),
      arrow: this.arrow,
      ...(this.notes.length > 0 && { remarks: this.notes }),
    };
  }
}

/** @internal The other side of a comparison. */
export function needEquation(value: unknown, kind: { [Symbol.hasInstance](value: unknown): boolean }): void {
  if (value instanceof (kind as typeof Equation)) return;
  throw new EquationError("equation.not-an-equation", `a balanced equation is wanted, not ${shown(value)}`, {
    hint: "read it with parseEquation or balance",
  });
}

/**
 * @internal An equation that several callers share, its lists frozen as well: to do so with every equation would cost a
 * tenth of balancing it.
 */
export function sealed(equation: Equation): Equation {
  Object.freeze(equation.formulas);
  Object.freeze(equation.notes);
  return equation;
}

function textOf(coefficient: Rational | undefined): string {
  return coefficient === undefined ? "" : rationalText(coefficient);
}

/** Coefficients as written, those left out counting as one. */
export function givenOrOne(equation: Equation): Rational[] {
  return equation.formulas.map((_, at) => equation.given?.[at] ?? ONE);
}

/**
 * An equation from the plain data that its `toJSON` gave.
 *
 * @throws {EquationError} `equation.not-a-record`, `equation.empty-term`, `equation.bad-coefficient`; errors of
 * `parseFormula`
 * @category Balancing
 * @example
 * equationFromJSON(JSON.parse(JSON.stringify(parseEquation("1/2 O2 + H2 -> H2O")))).toString() // => "1/2 O2 + H2 -> H2O"
 */
export function equationFromJSON(record: EquationRecord): Equation {
  return readEquation(record, "equation");
}

/** @internal Refuses what is not a record of an equation of some kind, saying why. */
function needRecord(data: unknown, type: string): void {
  const problem = headProblem(data, type, SCHEMA);
  if (problem !== undefined) throw notARecord(type, problem);
}

/** @internal */
export const notARecord = (type: string, problem: string): EquationError =>
  new EquationError("equation.not-a-record", `not the record of an ${type}: ${problem}`, {
    hint: "pass what toJSON gave, parsed",
  });

/** @internal The equation in the record of an equation of some kind; the fields that only that kind has are not read. */
export function readEquation(record: EquationFields & RecordHead, type: string): Equation {
  needRecord(record, type);
  const bad = (problem: string): EquationError => notARecord(type, problem);
  if (!Array.isArray(record.reactants) || !Array.isArray(record.products))
    throw bad("reactants and products are lists");
  if (record.reactants.length === 0 || record.products.length === 0) {
    throw new EquationError("equation.empty-term", "reactants and products each have one formula at least");
  }
  const terms: TermRecord[] = [...record.reactants, ...record.products];
  if (!terms.every(isTerm)) throw bad("a term is { formula: text, coefficient: text or nothing }");
  if (!["forward", "equilibrium", "equality"].includes(record.arrow)) throw bad("arrow");
  const { remarks = [] } = record;
  if (!Array.isArray(remarks) || !remarks.every((one) => typeof one === "string")) throw bad("remarks are texts");
  const given = terms.map(({ coefficient }) => (coefficient === undefined ? undefined : rationalOf(coefficient)));
  return new Equation(
    terms.map(({ formula }) => parseFormula(formula)),
    record.reactants.length,
    record.arrow,
    given.some((coefficient) => coefficient !== undefined) ? given : undefined,
    [...remarks],
  );
}

const isTerm = (term: unknown): term is TermRecord => {
  const { formula, coefficient = "1" } = (term ?? {}) as Partial<TermRecord>;
  return typeof formula === "string" && typeof coefficient === "string";
};

function rationalOf(text: string): Rational {
  const match = typeof text === "string" ? /^(\d+)(?:\/(\d*[1-9]\d*))?$/.exec(text) : null;
  if (match === null) {
    throw new EquationError("equation.bad-coefficient", `${shown(text)} is not a coefficient`, {
      hint: 'a record contains whole numbers or fractions as text: "3", "1/2"',
    });
  }
  return inLowestTerms(BigInt(match[1]!), BigInt(match[2] ?? 1));
}

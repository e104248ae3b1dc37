// The immutable BalancedEquation: an equation with the smallest whole numbers that conserve every element and the charge.

import { symbolAt } from "../../element/internal";
import type { Formula } from "../../formula";
import { hasBrand } from "../../foundation/brand";
import type { Fraction } from "../../foundation/fraction";
import { withPlainJSON } from "../../foundation/plain-json";
import { inLowestTerms } from "../../foundation/rational";
import { type RecordHead, recordHead } from "../../foundation/record";
import { INSPECT, shownAs } from "../../foundation/shown";
import { Equation, type EquationFields, needEquation, readEquation, SCHEMA } from "../equation";
import { EquationError } from "../error";
import { isInNullspace, primitive } from "../kernel/bareiss";
import { type IntegerVector, toBigInts } from "../kernel/nullspace";
import { type Notation, printEquation } from "../print";
import type { Arrow } from "../read/split";
import { speciesMeant } from "../species-meant";
import { toFraction } from "./rational";
import { CHARGE, exactSystem, solutionsOf } from "./system";

const BRAND: unique symbol = /* @__PURE__ */ Symbol.for("preparative.balanced-equation/1");

/** A balanced equation as plain data; it is counted again when it comes back. */
export interface BalancedEquationRecord extends EquationFields, RecordHead<BalancedKind> {}

/** A balanced equation, and the kinds of it that know more. */
export type BalancedKind = "balanced equation" | "ionic equation" | "overall equation";

/** A formula with its whole-number coefficient. */
export interface BalancedTerm {
  /** The species, as read. */
  readonly formula: Formula;
  /** Positive whole number. */
  readonly coefficient: bigint;
}

/** One species in the stoichiometric table. */
export interface StoichiometricRow {
  /** The species, as read. */
  readonly formula: Formula;
  /** Side of the equation it stands on. */
  readonly side: "reactant" | "product";
  /** Positive whole number, without the sign of its side. */
  readonly coefficient: bigint;
  /** The coefficient, negative for a reactant. */
  readonly stoichiometricNumber: bigint;
  /** Atoms of each element in all units of this species, and the charge they carry, by symbol and under `charge`. */
  readonly brings: Readonly<Record<string, Fraction>>;
}

/**
 * A balanced equation: coprime whole-number coefficients, every element and the charge conserved. Immutable. Made by
 * `balance` and `reactionSpace`.
 *
 * @category Balancing
 * @example
 * const burning = balance("C3H8 + O2 -> CO2 + H2O");
 * burning.coefficients // => [1n, 5n, 3n, 4n]
 * burning.toString() // => "C3H8 + 5 O2 -> 3 CO2 + 4 H2O"
 * burning.toUnicode() // => "C₃H₈ + 5 O₂ → 3 CO₂ + 4 H₂O"
 */
export class BalancedEquation {
  /** @internal `instanceof` asks for the brand, so that values of another loaded copy pass. */
  static [Symbol.hasInstance](value: unknown): boolean {
    return this === BalancedEquation
      ? hasBrand(value, BRAND)
      : Function.prototype[Symbol.hasInstance].call(this, value);
  }

  /** @internal */
  get [BRAND](): true {
    return true;
  }

  /** @internal Its name in consoles, whatever a minifier makes of it. */
  static get name(): string {
    return "BalancedEquation";
  }

  /** @internal */
  get [Symbol.toStringTag](): string {
    return "BalancedEquation";
  }

  /** @internal */
  [INSPECT](): string {
    return shownAs((this.constructor as typeof BalancedEquation).name, this);
  }

  /** The equation that was balanced. */
  readonly equation: Equation;
  // Truly private: the object is frozen, what it works out and the vector it was made with are its own.
  readonly #numbers: IntegerVector;
  #exact: readonly bigint[] | undefined;
  #text: string | undefined;

  /** @internal Use `balance`; the numbers must be a positive solution without a common factor. */
  constructor(equation: Equation, numbers: IntegerVector) {
    this.equation = equation;
    this.#numbers = numbers;
    // What a kind of its own adds, it freezes itself.
    if (new.target === BalancedEquation) Object.freeze(this);
  }

  /** Every species, the reactants first. */
  get formulas(): readonly Formula[] {
    return this.equation.formulas;
  }

  /** How many of `formulas` are reactants. */
  get reactantCount(): number {
    return this.equation.reactantCount;
  }

  /** Readings of the equation that another writer might have meant otherwise, in words; mostly none. */
  get remarks(): readonly string[] {
    return this.equation.remarks;
  }

  /** As it was written between the two sides. */
  get arrow(): Arrow {
    return this.equation.arrow;
  }

  /** Coefficients of the reactants, then of the products; smallest whole numbers. */
  get coefficients(): bigint[] {
    this.#exact ??= toBigInts(this.#numbers);
    return this.#exact.slice();
  }

  /** What is used up, with coefficients. */
  get reactants(): BalancedTerm[] {
    return this.terms(0, this.reactantCount);
  }

  /** What is formed, with coefficients. */
  get products(): BalancedTerm[] {
    return this.terms(this.reactantCount, this.formulas.length);
  }

  private terms(from: number, to: number): BalancedTerm[] {
    const terms: BalancedTerm[] = [];
    const { formulas, coefficients } = this;
    for (let at = from; at < to; at++) {
      terms.push(withPlainJSON({ formula: formulas[at]!, coefficient: coefficients[at]! }));
    }
    return terms;
  }

  /**
   * Coefficient of one species, by formula in any notation; with a sign, negative for what is used up (its
   * stoichiometric number). Undefined if it takes no part; the sum if it stands on both sides.
   *
   * @example
   * balance("N2 + H2 -> NH3").stoichiometricNumber("H2") // => -3n
   */
  stoichiometricNumber(formula: Formula | string): bigint | undefined {
    const { coefficients } = this;
    let sum: bigint | undefined;
    for (const at of speciesMeant(this.formulas, formula)) {
      const coefficient = coefficients[at]!;
      sum = (sum ?? 0n) + (at < this.reactantCount ? -coefficient : coefficient);
    }
    return sum;
  }

  /**
   * The stoichiometric table: for each species its coefficient, stoichiometric number, and the atoms and charge it
   * brings. Over the whole table the atoms of each element, signed by side, add up to zero.
   *
   * @example
   * balance("H2 + O2 -> H2O").table()[2].brings // => { H: 4, O: 2 }
   */
  table(): StoichiometricRow[] {
    const { coefficients } = this;
    return this.formulas.map((formula, at) => {
      const coefficient = coefficients[at]!;
      const brings: Record<string, Fraction> = {};
      formula.elementIndices.forEach((element, index) => {
        const count = inLowestTerms(coefficient * BigInt(formula.numerators[index]!), BigInt(formula.denominator));
        brings[symbolAt(element)] = toFraction(count);
      });
      if (formula.charge !== 0) brings["charge"] = toFraction({ n: coefficient * BigInt(formula.charge), d: 1n });
      const reactant = at < this.reactantCount;
      return withPlainJSON({
        formula,
        side: reactant ? "reactant" : "product",
        coefficient,
        stoichiometricNumber: reactant ? -coefficient : coefficient,
        brings: withPlainJSON(brings),
      });
    });
  }

  /** The same species in the same places with the same coefficients? */
  equals(other: BalancedEquation): boolean {
    needEquation(other, BalancedEquation);
    return this.toString() === other.toString();
  }

  /** Canonical ASCII; a coefficient of one is left out, unless it decides which reaction is meant. Reads back to an equal equation. */
  toString(): string {
    this.#text ??= printed(this, "ascii");
    return this.#text;
  }

  /** With sub- and superscripts and a true arrow. */
  toUnicode(): string {
    return printed(this, "unicode");
  }

  /** With `<sub>` and `<sup>`. */
  toHTML(): string {
    return printed(this, "html");
  }

  /** For LaTeX mathematics. */
  toLaTeX(): string {
    return printed(this, "latex");
  }

  /** Plain data that survives `JSON.stringify`; `balancedEquationFromJSON` brings it back. */
  toJSON(): BalancedEquationRecord {
    return { ...recordHead("balanced equation", SCHEMA), ...this.fields() };
  }

  /** @internal What the records of all balanced equations hold. */
  fields(): EquationFields {
    const { reactantCount, arrow, coefficients } = this;
    const records = this.formulas.map((formula, at) => ({
      formula: String(formula),
      coefficient: String(coefficients[at]),
    }));
    const [reactants, products] = [records.slice(0, reactantCount), records.slice(reactantCount)];
    return { reactants, products, arrow };
  }
}

/**
 * Ones are left out, but for the first where all are one and the species alone could react otherwise too: then the ones decide
 * which reaction is meant, and must be read back. Spectators, as in a complete ionic equation, are no such choice.
 */
function printed(equation: BalancedEquation, notation: Notation): string {
  const { coefficients, formulas, reactantCount } = equation;
  const decides =
    coefficients.every((n) => n === 1n) &&
    equation.equation.spectators.length === 0 &&
    solutionsOf(formulas, reactantCount).length > 1;
  return printEquation(
    equation,
    coefficients.map((n, at) => (n === 1n && !(decides && at === 0) ? "" : String(n))),
    notation,
  );
}

/**
 * A balanced equation from the plain data that its `toJSON` gave; checked, so that nothing unbalanced comes in this way.
 *
 * @throws {EquationError} `equation.not-a-record`, `equation.wrong-coefficients`; errors of `parseFormula`
 * @category Balancing
 * @example
 * const original = balance("H2 + O2 -> H2O");
 * balancedEquationFromJSON(JSON.parse(JSON.stringify(original))).equals(original) // => true
 */
export function balancedEquationFromJSON(record: BalancedEquationRecord): BalancedEquation {
  const { equation, numbers } = readBalanced(record, "balanced equation");
  return new BalancedEquation(equation, primitive(numbers));
}

/** @internal The bare equation in a record of some kind of balanced equation, and its coefficients, counted again. */
export function readBalanced(
  record: EquationFields & RecordHead,
  type: string,
): { readonly equation: Equation; readonly numbers: bigint[] } {
  const equation = readEquation(record, type);
  const numbers = equation.given?.map((value) => (value?.d === 1n ? value.n : 0n)) ?? [];
  const { matrix, scales } = exactSystem(equation.formulas, equation.reactantCount);
  let common = 1n;
  for (const scale of scales) common *= scale;
  const isBalanced = () =>
    isInNullspace(
      matrix,
      numbers.map((value, at) => (value * common) / scales[at]!),
    );
  if (numbers.length === 0 || numbers.some((value) => value <= 0n) || !isBalanced()) {
    throw new EquationError("equation.wrong-coefficients", "the record does not contain a balanced equation");
  }
  const bare = new Equation(equation.formulas, equation.reactantCount, equation.arrow, undefined, []);
  return { equation: bare, numbers };
}

/** Name of a balance: the element's symbol, or `charge`. */
export function balanceName(element: number): string {
  return element === CHARGE ? "charge" : symbolAt(element);
}

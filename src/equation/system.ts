// The matrix behind an equation: a row for each element or nuclide and one for charge, a column for each species, the
// products negated. Built straight from the formulas into reused space, because balancing is mostly overhead.
import type { Formula } from "../formula/formula";
import { isInNullspace, nullspaceInBigInts, primitive } from "./kernel/bareiss";
import { EXACT, gcd } from "./kernel/doubles";
import { type IntegerVector, nullspaceOf, toBigInts } from "./kernel/nullspace";

/** Row index that stands for the charge balance, where elements have theirs. */
export const CHARGE = -1;

let entries = /* @__PURE__ */ new Float64Array(256);
const elements: number[] = [];

/** Row of an element; a new one is cleared when first met. */
function rowOf(element: number, columns: number): number {
  for (let row = 0; row < elements.length; row++) if (elements[row] === element) return row;
  const row = elements.length;
  elements.push(element);
  const from = row * columns;
  if (entries.length < from + columns) {
    const larger = new Float64Array(2 * (from + columns));
    larger.set(entries);
    entries = larger;
  }
  entries.fill(0, from, from + columns);
  return row;
}

/** Fill the shared matrix; false where a charge on a fractional formula leaves the exact range. */
function fill(formulas: readonly Formula[], reactants: number): boolean {
  const columns = formulas.length;
  elements.length = 0;
  for (let column = 0; column < columns; column++) {
    const formula = formulas[column]!;
    const { elementIndices, numerators } = formula;
    for (let at = 0; at < elementIndices.length; at++) {
      const row = rowOf(elementIndices[at]!, columns);
      const count = numerators[at]!;
      entries[row * columns + column] = column < reactants ? count : -count;
    }
    if (formula.charge !== 0) {
      const charge = formula.charge * formula.denominator;
      if (charge >= EXACT || charge <= -EXACT) return false;
      const row = rowOf(CHARGE, columns);
      entries[row * columns + column] = column < reactants ? charge : -charge;
    }
  }
  return true;
}

/** Spanning vectors of all solutions in numbers of formula units (the columns' denominators are put back in). */
export function solutionsOf(formulas: readonly Formula[], reactants: number): IntegerVector[] {
  const columns = formulas.length;
  const vectors = fill(formulas, reactants)
    ? nullspaceOf(entries, elements.length, columns)
    : exactSolutions(exactSystem(formulas, reactants).matrix, columns);
  if (formulas.some((formula) => formula.denominator !== 1)) {
    return vectors.map((vector) => {
      const whole = toBigInts(vector).map((value, column) => value * BigInt(formulas[column]!.denominator));
      return primitive(whole);
    });
  }
  return vectors;
}

function exactSolutions(matrix: readonly (readonly bigint[])[], columns: number): bigint[][] {
  const vectors = nullspaceInBigInts(matrix, columns);
  if (!vectors.every((vector) => isInNullspace(matrix, vector))) throw new Error("nullspace failed its verification");
  return vectors;
}

/** The same matrix in big integers, columns scaled to whole numbers, with the element of each row. */
export interface ExactSystem {
  readonly elements: readonly number[];
  readonly matrix: readonly (readonly bigint[])[];
  /** By which each column was multiplied. */
  readonly scales: readonly bigint[];
}

export function exactSystem(formulas: readonly Formula[], reactants: number): ExactSystem {
  const rows = new Map<number, bigint[]>();
  const add = (element: number, column: number, value: bigint) => {
    let row = rows.get(element);
    if (row === undefined) {
      row = new Array<bigint>(formulas.length).fill(0n);
      rows.set(element, row);
    }
    row[column] = column < reactants ? value : -value;
  };
  formulas.forEach((formula, column) => {
    formula.elementIndices.forEach((element, at) => {
      add(element, column, BigInt(formula.numerators[at]!));
    });
    if (formula.charge !== 0) add(CHARGE, column, BigInt(formula.charge) * BigInt(formula.denominator));
  });
  return {
    elements: [...rows.keys()],
    matrix: [...rows.values()],
    scales: formulas.map((formula) => BigInt(formula.denominator)),
  };
}

/** Divide exact doubles by their content. */
export function withoutContent(vector: readonly number[]): number[] {
  let content = 0;
  for (const value of vector) content = gcd(content, Math.abs(value));
  return content > 1 ? vector.map((value) => value / content) : [...vector];
}

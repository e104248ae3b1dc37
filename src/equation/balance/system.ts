// The matrix behind an equation: a row for each element or nuclide and one for charge, a column for each species, the
// products negated. Built straight from the formulas into reused space, because balancing is mostly overhead.
import type { Formula } from "../../formula";
import { isInNullspace, nullspaceInBigInts, primitive } from "../kernel/bareiss";
import { EXACT, nullspaceOfScratch, scratchBounds, scratchMatrix } from "../kernel/doubles";
import { type IntegerVector, toBigInts } from "../kernel/nullspace";

/** Row index that stands for the charge balance, where elements have theirs. */
export const CHARGE = -1;

/** Rows of the elements, by index, valid where the stamp is that of the system being filled. */
const rowOfElement = /* @__PURE__ */ new Int32Array(118);
const stampOfElement = /* @__PURE__ */ new Int32Array(118);
let stamp = 0;
/** Labelled nuclides, rare, are looked up one by one. */
const nuclides: number[] = [];
const nuclideRows: number[] = [];
/** What `fill` found, beside the matrix. */
let rowsFilled = 0;
let allWhole = true;

function clearRow(matrix: Float64Array, bounds: Float64Array, row: number, columns: number): void {
  bounds[row] = 0;
  for (let at = row * columns, end = at + columns; at < end; at++) matrix[at] = 0;
}

function nuclideRow(element: number): number {
  const known = nuclides.indexOf(element);
  return known < 0 ? -1 : nuclideRows[known]!;
}

/** Rows that the scratch matrix has room for: every element and the charge, and a few nuclides. */
const MOST_ROWS = 128;

/** Fill the kernel's scratch matrix; false where a charge leaves the exact range, or for too many nuclides. */
function fill(formulas: readonly Formula[], reactants: number): boolean {
  const columns = formulas.length;
  const matrix = scratchMatrix(MOST_ROWS, columns);
  const bounds = scratchBounds();
  if (stamp === 0x7fffffff) stampOfElement.fill(0);
  stamp = stamp === 0x7fffffff ? 1 : stamp + 1;
  nuclides.length = 0;
  nuclideRows.length = 0;
  let rows = 0;
  let chargeRow = -1;
  allWhole = true;
  for (let column = 0; column < columns; column++) {
    const formula = formulas[column]!;
    const { size } = formula;
    for (let at = 0; at < size; at++) {
      const element = formula.elementIndexAt(at);
      let row: number;
      if (element < 118) {
        if (stampOfElement[element] === stamp) row = rowOfElement[element]!;
        else {
          row = rows++;
          stampOfElement[element] = stamp;
          rowOfElement[element] = row;
          clearRow(matrix, bounds, row, columns);
        }
      } else {
        row = nuclideRow(element);
        if (row < 0) {
          if (nuclides.length > MOST_ROWS - 120) return false;
          row = rows++;
          nuclides.push(element);
          nuclideRows.push(row);
          clearRow(matrix, bounds, row, columns);
        }
      }
      const count = formula.numeratorAt(at);
      bounds[row]! += count;
      matrix[row * columns + column] = column < reactants ? count : -count;
    }
    if (formula.denominator !== 1) allWhole = false;
    if (formula.charge !== 0) {
      const charge = formula.charge * formula.denominator;
      const amount = Math.abs(charge);
      if (amount >= EXACT) return false;
      if (chargeRow < 0) {
        chargeRow = rows++;
        clearRow(matrix, bounds, chargeRow, columns);
      }
      bounds[chargeRow]! += amount;
      matrix[chargeRow * columns + column] = column < reactants ? charge : -charge;
    }
  }
  rowsFilled = rows;
  return true;
}

/** Spanning vectors of all solutions in numbers of formula units (the columns' denominators are put back in). */
export function solutionsOf(formulas: readonly Formula[], reactants: number): IntegerVector[] {
  const columns = formulas.length;
  const small = fill(formulas, reactants);
  const whole = allWhole && small;
  const vectors = (small ? nullspaceOfScratch(rowsFilled, columns) : undefined) ?? largeSolutions(formulas, reactants);
  if (whole) return vectors;
  return vectors.map((vector) =>
    primitive(toBigInts(vector).map((value, column) => value * BigInt(formulas[column]!.denominator))),
  );
}

/**
 * The same past the exact range of doubles, in big integers: a balance meets that with two dozen species of unrelated composition
 * or with counts of many digits, too seldom to carry the faster way of `integerNullspace`.
 */
function largeSolutions(formulas: readonly Formula[], reactants: number): IntegerVector[] {
  const { matrix } = exactSystem(formulas, reactants);
  const vectors = nullspaceInBigInts(matrix, formulas.length);
  if (!vectors.every((vector) => isInNullspace(matrix, vector))) throw new Error("nullspace failed its verification");
  return vectors;
}

/** The same matrix in big integers, columns scaled to whole numbers, with the element of each row. */
interface ExactSystem {
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

// Exact nullspace of an integer matrix: doubles first, word-size primes where those overflow, BigInt where the entries
// themselves are large. Deterministic, and nothing approximate leaves. Fractions are not used in any elimination: they
// are forty times slower.

import { shown } from "../../foundation/argument";
import { EquationError } from "../error";
import { isInNullspace, nullspaceInBigInts } from "./bareiss";
import { EXACT, nullspaceInDoubles } from "./doubles";
import { nullspaceModular } from "./modular";

/** Integer vectors, as doubles where all of them are exact, as big integers otherwise. */
export type IntegerVector = number[] | bigint[];

/**
 * Primitive vectors that span the nullspace of a matrix of exact integers, one for each free column.
 *
 * @param entries - row by row from `offset` on; may be longer than needed; left untouched
 */
export function nullspaceOf(entries: Float64Array, rows: number, columns: number, offset = 0): IntegerVector[] {
  return (
    nullspaceInDoubles(entries, rows, columns, offset) ??
    nullspaceModular(offset === 0 ? entries : entries.slice(offset, offset + rows * columns), rows, columns)
  );
}

function needRows(matrix: unknown): void {
  if (!Array.isArray(matrix)) throw new EquationError("equation.bad-matrix", "a matrix is a list of rows");
  for (let row = 0; row < matrix.length; row++) {
    if (!Array.isArray(matrix[row])) throw new EquationError("equation.bad-matrix", `row ${row} is not a list`);
  }
}

/**
 * Exact nullspace of a matrix of whole numbers: primitive vectors, one for each free column, whose own entry is
 * positive. This is the machinery behind `balance`, for whoever has a matrix of their own.
 *
 * @param matrix - rows of equal length; bigint, or number that is a safe integer
 * @returns as many vectors as the nullspace has dimensions; none when only zero solves it
 * @throws {EquationError} `equation.bad-matrix` when rows differ in length or an entry is no exact whole number
 * @category Balancing
 * @example
 * integerNullspace([[2, 0, -2], [0, 2, -1]]) // => [[2n, 1n, 2n]]
 */
export function integerNullspace(matrix: readonly (readonly (number | bigint)[])[]): bigint[][] {
  needRows(matrix);
  const rows = matrix.length;
  const columns = matrix[0]?.length ?? 0;
  const entries = new Float64Array(rows * columns);
  let small = true;
  for (let row = 0, at = 0; row < rows; row++) {
    if (matrix[row]!.length !== columns)
      throw new EquationError("equation.bad-matrix", "the rows of a matrix have one length");
    for (const entry of matrix[row]!) {
      if (typeof entry !== "bigint" && !Number.isSafeInteger(entry)) {
        const is = typeof entry === "number" ? String(entry) : shown(entry);
        throw new EquationError("equation.bad-matrix", `entries are whole numbers below 2^53 or bigint, not ${is}`);
      }
      const value = Number(entry);
      if (Math.abs(value) >= EXACT) small = false;
      entries[at++] = value;
    }
  }
  if (small) return nullspaceOf(entries, rows, columns).map((vector) => toBigInts(vector));
  const exact = matrix.map((row) => row.map((entry) => BigInt(entry)));
  const vectors = nullspaceInBigInts(exact, columns);
  if (!vectors.every((vector) => isInNullspace(exact, vector)))
    throw new Error("nullspace failed its own verification");
  return vectors;
}

/** Big integers below this are kept: making a new one costs as much as the rest of a coefficient. */
const KEPT = 256;
const kept: bigint[] = [];

/** The same vector in big integers. */
export function toBigInts(vector: IntegerVector): bigint[] {
  if (typeof vector[0] === "bigint") return vector as bigint[];
  if (kept.length === 0) for (let value = 0; value < KEPT; value++) kept.push(BigInt(value));
  const exact = new Array<bigint>(vector.length);
  for (let at = 0; at < vector.length; at++) {
    const value = vector[at] as number;
    exact[at] = value >= 0 && value < KEPT ? kept[value]! : BigInt(value);
  }
  return exact;
}

// Nullspace of an integer matrix in BigInt by Bareiss' fraction-free elimination (Math. Comp. 22, 1968, 565-578): every
// division is exact and every entry is a minor of the matrix. The path for entries beyond the exact range of doubles.
import { bigGcd } from "../../foundation/gcd";

/** Divide a vector by the greatest common divisor of its entries. */
export function primitive(vector: readonly bigint[]): bigint[] {
  let content = 0n;
  for (const value of vector) {
    if (value !== 0n) content = bigGcd(content, value);
    if (content === 1n) break;
  }
  return content > 1n ? vector.map((value) => value / content) : [...vector];
}

/** Does every row of the matrix give zero with this vector? Exact. */
export function isInNullspace(matrix: readonly (readonly bigint[])[], vector: readonly bigint[]): boolean {
  return matrix.every((row) => {
    let sum = 0n;
    for (let column = 0; column < row.length; column++) {
      if (row[column] !== 0n) sum += row[column]! * vector[column]!;
    }
    return sum === 0n;
  });
}

/** Primitive integer vectors spanning the nullspace, one for each free column, whose own entry is positive. */
export function nullspaceInBigInts(matrix: readonly (readonly bigint[])[], columns: number): bigint[][] {
  const a = matrix.map((row) => primitive(row)).filter((row) => row.some((value) => value !== 0n));
  const pivots: number[] = [];
  const free: number[] = [];
  let previous = 1n;
  for (let column = 0; column < columns; column++) {
    const rank = pivots.length;
    let best = -1;
    for (let row = rank; row < a.length; row++) {
      const value = a[row]![column]!;
      if (value !== 0n && (best < 0 || magnitude(value) < magnitude(a[best]![column]!))) best = row;
    }
    if (best < 0) {
      free.push(column);
      continue;
    }
    const top = a[best]!;
    a[best] = a[rank]!;
    a[rank] = top;
    const pivot = top[column]!;
    for (let row = rank + 1; row < a.length; row++) {
      const own = a[row]!;
      const value = own[column]!;
      for (let step = column + 1; step < columns; step++) {
        own[step] = (pivot * own[step]! - value * top[step]!) / previous;
      }
      own[column] = 0n;
    }
    previous = pivot;
    pivots.push(column);
  }

  return free.map((column) => {
    const x = new Array<bigint>(columns).fill(0n);
    // with the last pivot as denominator every entry is a minor, so the divisions below leave no rest
    x[column] = previous;
    for (let row = pivots.length - 1; row >= 0; row--) {
      const own = pivots[row]!;
      const entries = a[row]!;
      let sum = 0n;
      for (let at = own + 1; at < columns; at++) {
        if (entries[at] !== 0n && x[at] !== 0n) sum += entries[at]! * x[at]!;
      }
      x[own] = -sum / entries[own]!;
    }
    const vector = primitive(x);
    return vector[column]! < 0n ? vector.map((value) => -value) : vector;
  });
}

function magnitude(value: bigint): bigint {
  return value < 0n ? -value : value;
}

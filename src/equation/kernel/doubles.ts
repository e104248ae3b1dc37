// Nullspace of an integer matrix in exact doubles: the path nearly every chemical equation takes.
// Fraction-free elimination, smallest pivot first; every product is bounded before it is made, so that a result that
// could have been rounded is reported as overflow (undefined) and never leaves. Full Gauss-Jordan with content removed
// on each row was 2.5 times slower; content is looked for only when a row gets large. The matrix lives in one reused
// scratch array that the caller fills: allocating and copying it took a fifth of the time.

/** Every integer below this is exact in a double. */
export const EXACT = 9007199254740992;

let work = /* @__PURE__ */ new Float64Array(512);
let rowBound = /* @__PURE__ */ new Float64Array(64);
let rowStart = /* @__PURE__ */ new Int32Array(64);
let pivotColumn = /* @__PURE__ */ new Int32Array(64);
let solution = /* @__PURE__ */ new Float64Array(64);

/** The scratch matrix, row by row, with room for so many entries; what it holds is left from before. */
export function scratchMatrix(rows: number, columns: number): Float64Array {
  if (work.length < rows * columns) work = new Float64Array(rows * columns * 2);
  if (rowStart.length < rows) {
    rowStart = new Int32Array(rows * 2);
    rowBound = new Float64Array(rows * 2);
    pivotColumn = new Int32Array(rows * 2);
  }
  if (solution.length < columns) solution = new Float64Array(columns * 2);
  return work;
}

/** For each row of the scratch matrix a bound on its magnitudes, to be filled with the rows. */
export function scratchBounds(): Float64Array {
  return rowBound;
}

/** Divisors of small numbers are looked up: they are half of all, and a division costs more than the rest of the step. */
const SMALL = 64;
const smallGcd = /* @__PURE__ */ new Uint8Array(SMALL * SMALL);

function fillSmall(a: number, b: number): number {
  let [x, y] = [a, b];
  while (y !== 0) [x, y] = [y, x % y];
  smallGcd[a * SMALL + b] = x;
  return x;
}

/** Greatest common divisor of two non-negative exact integers; stays in 32-bit integers where both fit. */
export function gcd(a: number, b: number): number {
  if (a < SMALL && b < SMALL) return smallGcd[a * SMALL + b] || fillSmall(a, b);
  while (b > 2147483647 || a > 2147483647) {
    if (b === 0) return a;
    const rest = a % b;
    a = b;
    b = rest;
  }
  let x = a | 0;
  let y = b | 0;
  while (y !== 0) {
    const rest = (x % y) | 0;
    x = y;
    y = rest;
  }
  return x;
}

/**
 * Primitive integer vectors spanning the nullspace, one for each free column (whose own entry is positive), or undefined
 * where a step might leave the exact range.
 *
 * @param entries - row by row from `offset` on, exact integers; may be longer than needed and is left untouched
 */
export function nullspaceInDoubles(
  entries: Float64Array,
  rows: number,
  columns: number,
  offset = 0,
): number[][] | undefined {
  const a = scratchMatrix(rows, columns);
  const bound = rowBound;
  for (let row = 0, at = 0; row < rows; row++) {
    // the sum of the magnitudes bounds each of them, and needs no comparison: a mispredicted branch costs ten additions
    let total = 0;
    for (const end = at + columns; at < end; at++) {
      const value = entries[offset + at]!;
      a[at] = value;
      total += Math.abs(value);
    }
    bound[row] = total;
  }
  return nullspaceOfScratch(rows, columns);
}

/** The same for the matrix that stands in the scratch array, with its bounds; the matrix is used up. */
export function nullspaceOfScratch(rows: number, columns: number): number[][] | undefined {
  const a = work;
  const start = rowStart;
  const bound = rowBound;
  const pivots = pivotColumn;
  for (let row = 0, at = 0; row < rows; row++, at += columns) {
    start[row] = at;
    if (bound[row]! >= EXACT) return undefined;
  }
  let rank = 0;
  let freeCount = 0;
  let lastFree = -1;
  let free: number[] | undefined;
  for (let column = 0; column < columns; column++) {
    let best = -1;
    let smallest = EXACT;
    for (let row = rank; row < rows; row++) {
      const value = a[start[row]! + column]!;
      if (value === 0) continue;
      const size = Math.abs(value);
      if (size < smallest) {
        smallest = size;
        best = row;
        if (size === 1) break;
      }
    }
    if (best < 0) {
      // a list only where there is more than one: the usual case is one
      if (freeCount++ > 0) {
        if (free === undefined) free = [lastFree];
        free.push(column);
      }
      lastFree = column;
      continue;
    }
    const top = start[best]!;
    let topBound = bound[best]!;
    if (best !== rank) {
      start[best] = start[rank]!;
      bound[best] = bound[rank]!;
      start[rank] = top;
      bound[rank] = topBound;
    }
    pivots[rank] = column;
    const sign = a[top + column]! < 0 ? -1 : 1;
    for (let row = rank + 1; row < rows; row++) {
      const own = start[row]!;
      const value = a[own + column]!;
      if (value === 0) continue;
      let scale = smallest;
      let factor = value * sign;
      if (smallest !== 1) {
        const common = gcd(smallest, Math.abs(value));
        if (common !== 1) {
          scale /= common;
          factor /= common;
        }
      }
      const reach = scale * bound[row]! + Math.abs(factor) * topBound;
      if (reach >= EXACT) {
        // measures the pivot row as well, so the values kept here would be stale
        if (!eliminateLarge(own, top, column, columns, row, rank)) return undefined;
        smallest = Math.abs(a[top + column]!);
        topBound = bound[rank]!;
        continue;
      }
      bound[row] = reach;
      if (scale === 1) {
        for (let step = column + 1; step < columns; step++) a[own + step]! -= factor * a[top + step]!;
      } else {
        for (let step = column + 1; step < columns; step++) {
          a[own + step] = scale * a[own + step]! - factor * a[top + step]!;
        }
      }
    }
    rank++;
  }
  if (freeCount === 0) return [];
  if (free === undefined) {
    const only = solve(rank, lastFree, columns);
    return only === undefined ? undefined : [only];
  }
  const vectors: number[][] = [];
  for (const column of free) {
    const vector = solve(rank, column, columns);
    if (vector === undefined) return undefined;
    vectors.push(vector);
  }
  return vectors;
}

/** Divide a stretch of exact integers by their greatest common divisor; returns the largest magnitude left. */
function removeContent(values: Float64Array, from: number, to: number): number {
  let content = 0;
  for (let at = from; at < to && content !== 1; at++) content = gcd(content, Math.abs(values[at]!));
  let largest = 0;
  for (let at = from; at < to; at++) {
    if (content > 1) values[at] = values[at]! / content;
    const size = Math.abs(values[at]!);
    if (size > largest) largest = size;
  }
  return largest;
}

/** The bounds are only estimates: measure both rows without their content, then judge again. */
function eliminateLarge(
  own: number,
  top: number,
  column: number,
  columns: number,
  row: number,
  pivotRow: number,
): boolean {
  const a = work;
  const bound = rowBound;
  bound[row] = removeContent(a, own + column, own + columns);
  bound[pivotRow] = removeContent(a, top + column, top + columns);
  const pivot = a[top + column]!;
  const value = a[own + column]!;
  const common = gcd(Math.abs(pivot), Math.abs(value));
  const scale = Math.abs(pivot) / common;
  const factor = pivot < 0 ? -value / common : value / common;
  const reach = scale * bound[row]! + Math.abs(factor) * bound[pivotRow]!;
  if (reach >= EXACT) return false;
  bound[row] = reach;
  for (let step = column + 1; step < columns; step++) a[own + step] = scale * a[own + step]! - factor * a[top + step]!;
  return true;
}

/** Back-substitution for one free column. */
function solve(rank: number, column: number, columns: number): number[] | undefined {
  const a = work;
  const x = solution;
  for (let at = 0; at <= column; at++) x[at] = 0;
  x[column] = 1;
  let largest = 1;
  for (let row = rank - 1; row >= 0; row--) {
    const own = pivotColumn[row]!;
    if (own > column) continue;
    const from = rowStart[row]!;
    let sum = 0;
    let total = 0;
    for (let at = own + 1; at <= column; at++) {
      const product = a[from + at]! * x[at]!;
      sum += product;
      total += Math.abs(product);
    }
    // total bounds every product and every partial sum, and a rounded total cannot come out below 2^53
    if (total >= EXACT) return undefined;
    if (sum === 0) continue;
    const pivot = a[from + own]!;
    const quotient = sum / pivot;
    if (Math.floor(quotient) === quotient && quotient * pivot === sum) {
      x[own] = -quotient;
      const size = Math.abs(quotient);
      if (size > largest) largest = size;
      continue;
    }
    const size = Math.abs(pivot);
    const common = gcd(Math.abs(sum), size);
    const scale = size / common;
    const value = pivot < 0 ? sum / common : -sum / common;
    largest = Math.max(largest * scale, Math.abs(value));
    if (largest >= EXACT) return undefined;
    for (let at = own + 1; at <= column; at++) x[at] = x[at]! * scale;
    x[own] = value;
  }
  // where the free column's own entry is still one, there is nothing to divide out
  let content = x[column]!;
  for (let at = column - 1; at >= 0 && content !== 1; at--) {
    const value = x[at]!;
    if (value !== 0) content = gcd(content, Math.abs(value));
  }
  // of exact size: a list grown by push keeps room for seventeen
  const vector = new Array<number>(columns);
  if (content === 1) for (let at = 0; at <= column; at++) vector[at] = x[at]!;
  else for (let at = 0; at <= column; at++) vector[at] = x[at]! / content;
  for (let at = column + 1; at < columns; at++) vector[at] = 0;
  return vector;
}

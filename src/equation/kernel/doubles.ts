// Nullspace of an integer matrix in exact doubles: the path nearly every chemical equation takes.
// Fraction-free elimination, smallest pivot first; every product is bounded before it is made, so that a result that
// could have been rounded is reported as overflow (undefined) and never leaves. Full Gauss-Jordan with content removed
// on each row was 2.5 times slower; content is looked for only when a row gets large.

/** Every integer below this is exact in a double. */
export const EXACT = 9007199254740992;

let work = /* @__PURE__ */ new Float64Array(0);
let rowStart = /* @__PURE__ */ new Int32Array(0);
let rowBound = /* @__PURE__ */ new Float64Array(0);
let pivotColumn = /* @__PURE__ */ new Int32Array(0);
let solution = /* @__PURE__ */ new Float64Array(0);

/** Greatest common divisor of two non-negative exact integers; stays in 32-bit integers where both fit. */
export function gcd(a: number, b: number): number {
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

/** The scratch space only ever grows; its contents are written before they are read. */
function reserve(rows: number, columns: number): void {
  if (work.length < rows * columns) work = new Float64Array(rows * columns * 2);
  if (rowStart.length < rows) {
    rowStart = new Int32Array(rows * 2);
    rowBound = new Float64Array(rows * 2);
    pivotColumn = new Int32Array(rows * 2);
  }
  if (solution.length < columns) solution = new Float64Array(columns * 2);
}

/**
 * Primitive integer vectors spanning the nullspace, one for each free column (whose own entry is positive), or undefined
 * where a step might leave the exact range.
 *
 * @param entries - row by row, exact integers; may be longer than needed and is left untouched
 */
export function nullspaceInDoubles(entries: Float64Array, rows: number, columns: number): number[][] | undefined {
  reserve(rows, columns);
  const a = work;
  const start = rowStart;
  const bound = rowBound;
  for (let row = 0, at = 0; row < rows; row++) {
    start[row] = at;
    let largest = 0;
    for (const end = at + columns; at < end; at++) {
      const value = entries[at]!;
      a[at] = value;
      const size = value < 0 ? -value : value;
      if (size > largest) largest = size;
    }
    bound[row] = largest;
    if (largest >= EXACT) return undefined;
  }

  let rank = 0;
  const free: number[] = [];
  for (let column = 0; column < columns; column++) {
    let best = -1;
    let smallest = Number.POSITIVE_INFINITY;
    for (let row = rank; row < rows; row++) {
      const value = a[start[row]! + column]!;
      if (value === 0) continue;
      const size = value < 0 ? -value : value;
      if (size < smallest) {
        smallest = size;
        best = row;
        if (size === 1) break;
      }
    }
    if (best < 0) {
      free.push(column);
      continue;
    }
    const top = start[best]!;
    const topBound = bound[best]!;
    if (best !== rank) {
      start[best] = start[rank]!;
      bound[best] = bound[rank]!;
      start[rank] = top;
      bound[rank] = topBound;
    }
    pivotColumn[rank] = column;
    const pivot = a[top + column]!;
    for (let row = rank + 1; row < rows; row++) {
      const own = start[row]!;
      const value = a[own + column]!;
      if (value === 0) continue;
      if (!eliminate(a, own, top, column, columns, pivot, value, row, rank)) return undefined;
    }
    rank++;
  }
  return solve(rank, free, columns);
}

/** Clear one entry below the pivot; false where the exact range might be left. */
function eliminate(
  a: Float64Array,
  own: number,
  top: number,
  column: number,
  columns: number,
  pivot: number,
  value: number,
  row: number,
  pivotRow: number,
): boolean {
  const bound = rowBound;
  const common = pivot === 1 || pivot === -1 ? 1 : gcd(Math.abs(pivot), Math.abs(value));
  let scale = pivot / common;
  let factor = value / common;
  if (scale < 0) {
    scale = -scale;
    factor = -factor;
  }
  const size = factor < 0 ? -factor : factor;
  let reach = scale * bound[row]! + size * bound[pivotRow]!;
  if (reach >= EXACT) {
    // the bounds are only estimates: measure both rows without their content, then judge again
    bound[row] = removeContent(a, own + column, own + columns);
    bound[pivotRow] = removeContent(a, top + column, top + columns);
    const newPivot = a[top + column]!;
    const newValue = a[own + column]!;
    const newCommon = gcd(Math.abs(newPivot), Math.abs(newValue));
    scale = Math.abs(newPivot) / newCommon;
    factor = newPivot < 0 ? -newValue / newCommon : newValue / newCommon;
    reach = scale * bound[row]! + Math.abs(factor) * bound[pivotRow]!;
    if (reach >= EXACT) return false;
  }
  bound[row] = reach;
  if (scale === 1) {
    for (let step = column + 1; step < columns; step++) a[own + step] = a[own + step]! - factor * a[top + step]!;
  } else {
    for (let step = column + 1; step < columns; step++) {
      a[own + step] = scale * a[own + step]! - factor * a[top + step]!;
    }
  }
  return true;
}

/** Back-substitution, once for each free column. */
function solve(rank: number, free: readonly number[], columns: number): number[][] | undefined {
  const a = work;
  const x = solution;
  const vectors: number[][] = [];
  for (let index = 0; index < free.length; index++) {
    const column = free[index]!;
    for (let at = 0; at < columns; at++) x[at] = 0;
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
        total += product < 0 ? -product : product;
      }
      // total bounds every product and every partial sum, and a rounded total cannot come out below 2^53
      if (total >= EXACT) return undefined;
      if (sum === 0) continue;
      const pivot = a[from + own]!;
      const quotient = sum / pivot;
      if (Math.floor(quotient) === quotient && quotient * pivot === sum) {
        x[own] = -quotient;
        const size = quotient < 0 ? -quotient : quotient;
        if (size > largest) largest = size;
        continue;
      }
      const size = pivot < 0 ? -pivot : pivot;
      const common = gcd(sum < 0 ? -sum : sum, size);
      const scale = size / common;
      const value = pivot < 0 ? sum / common : -sum / common;
      largest = Math.max(largest * scale, Math.abs(value));
      if (largest >= EXACT) return undefined;
      for (let at = own + 1; at <= column; at++) x[at] = x[at]! * scale;
      x[own] = value;
    }
    let content = 0;
    for (let at = column; at >= 0 && content !== 1; at--) {
      const value = x[at]!;
      if (value !== 0) content = gcd(content, value < 0 ? -value : value);
    }
    const vector = new Array<number>(columns);
    if (content === 1) for (let at = 0; at < columns; at++) vector[at] = x[at]!;
    else for (let at = 0; at < columns; at++) vector[at] = x[at]! / content;
    vectors.push(vector);
  }
  return vectors;
}

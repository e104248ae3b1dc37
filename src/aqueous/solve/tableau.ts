// The system written in its working components. Any independent set of species and conditions can play the part of the
// components; the tableau expresses all others in them, as in the simplex method. Two choices make the equations easy:
// - a condition that binds (a standing solid) is a working component, so its activity is known and drops out;
// - the other places go to the most abundant species. Then every mass balance is dominated by its own component, no small
//   amount is the difference of two large ones, and the second derivatives are close to diagonal.
import type { System } from "./system";

/** Entries below this are rounding left over by pivoting; true ones are ratios of small whole numbers. */
const ROUNDING = 1e-11;

/** A species must be this many times more abundant before it replaces a working component. */
const MORE_ABUNDANT = 3;

/** Everything one solution works on: made once per system, so that the Newton loop allocates nothing. */
export interface Tableau {
  readonly system: System;
  /** (m + s) × n: each species and condition in working components. */
  readonly a: Float64Array;
  /** m + s: the constant of each row in working components. */
  readonly shift: Float64Array;
  /** n: which species (< m) or condition (≥ m) each working component is. */
  readonly basis: Int32Array;
  /** m + s: the column of a row that is a working component, else -1. */
  readonly column: Int32Array;
  /** n: ln activity of the working components. */
  readonly x: Float64Array;
  /** n: totals in original and in working components, mol/kg. */
  readonly given: Float64Array;
  readonly totals: Float64Array;

  // The Newton step: free working components only, rows as sparse lists.
  free: number;
  readonly freeColumn: Int32Array;
  /** n: place of a working component among the free ones, -1 for a fixed one. */
  readonly place: Int32Array;
  readonly start: Int32Array;
  readonly index: Int32Array;
  readonly coefficient: Float64Array;
  /** Constant plus the share of the fixed working components. */
  readonly offset: Float64Array;
  /** Steepness of each row: 1 for species, large for conditions of the smooth problem. */
  readonly steep: Float64Array;
  readonly squareCharge: Float64Array;
  /** How many rows take part: m, or m + s in the smooth problem. */
  rows: number;

  /** m + s: molality of each species (and amount of each condition in the smooth problem). */
  readonly c: Float64Array;
  readonly residual: Float64Array;
  readonly scale: Float64Array;
  readonly hessian: Float64Array;
  /** d(mass balance)/d(activity term). */
  readonly border: Float64Array;
  readonly step: Float64Array;
  readonly stepBorder: Float64Array;
  readonly diagonal: Float64Array;
  /** m + s: change of each exponent along the step. */
  readonly along: Float64Array;
  /** Slope of the activity model, 0 for ideal solutions. */
  slope: number;
  ionicStrength: number;
  iterations: number;
  rounds: number;
}

export function tableauOf(system: System): Tableau {
  const { n, m, s, charge } = system;
  const rows = m + s;
  const squareCharge = new Float64Array(rows);
  for (let i = 0; i < m; i += 1) squareCharge[i] = charge[i]! * charge[i]!;
  const t: Tableau = {
    system,
    a: new Float64Array(rows * n),
    shift: new Float64Array(rows),
    basis: new Int32Array(n),
    column: new Int32Array(rows),
    x: new Float64Array(n),
    given: new Float64Array(n),
    totals: new Float64Array(n),
    free: 0,
    freeColumn: new Int32Array(n),
    place: new Int32Array(n),
    start: new Int32Array(rows + 1),
    index: new Int32Array(rows * n),
    coefficient: new Float64Array(rows * n),
    offset: new Float64Array(rows),
    steep: new Float64Array(rows).fill(1),
    squareCharge,
    rows: m,
    c: new Float64Array(rows),
    residual: new Float64Array(n),
    scale: new Float64Array(n),
    hessian: new Float64Array(n * n),
    border: new Float64Array(n),
    step: new Float64Array(n),
    stepBorder: new Float64Array(n),
    diagonal: new Float64Array(n),
    along: new Float64Array(rows),
    slope: 0,
    ionicStrength: 0,
    iterations: 0,
    rounds: 0,
  };
  reset(t);
  return t;
}

/** Back to the original components. */
function reset(t: Tableau): void {
  const { n, m, nu, lnK } = t.system;
  t.a.set(nu);
  t.column.fill(-1);
  for (let i = 0; i < t.shift.length; i += 1) t.shift[i] = i < m ? lnK[i]! : 0;
  for (let j = 0; j < n; j += 1) {
    t.basis[j] = j;
    t.column[j] = j;
  }
  t.rows = m;
  t.steep.fill(1);
}

/** Totals in working components. Row j of a component is how it is made of the working ones. */
function spreadTotals(t: Tableau): void {
  const { n } = t.system;
  t.totals.fill(0);
  for (let j = 0; j < n; j += 1) {
    const total = t.given[j]!;
    if (total !== 0) for (let k = 0; k < n; k += 1) t.totals[k]! += total * t.a[j * n + k]!;
  }
}

/** Sum of count × ln activity of a row, its constant included. */
export function logActivity(t: Tableau, row: number): number {
  const { n } = t.system;
  let sum = t.shift[row]!;
  for (let k = 0, at = row * n; k < n; k += 1) sum += t.a[at + k]! * t.x[k]!;
  return sum;
}

/** ln(Q/K) of a condition. */
export const saturation = (t: Tableau, condition: number): number =>
  logActivity(t, t.system.m + condition) - t.system.lnK[t.system.m + condition]!;

/** Back to the original components, activities unchanged. */
export function toComponents(t: Tableau): void {
  const { n } = t.system;
  for (let j = 0; j < n; j += 1) t.step[j] = logActivity(t, j);
  reset(t);
  t.x.set(t.step);
}

/** Let a row take the place of a working component; its ln activity stays what it is. */
export function pivot(t: Tableau, row: number, column: number): void {
  const { a, shift, x } = t;
  const { n, m, s } = t.system;
  const value = logActivity(t, row);
  const p = a[row * n + column]!;
  for (let i = 0; i < m + s; i += 1) {
    const at = i * n;
    const factor = a[at + column]! / p;
    if (factor === 0 || i === row) continue;
    for (let k = 0; k < n; k += 1) {
      if (k === column) continue;
      const entry = a[at + k]! - factor * a[row * n + k]!;
      a[at + k] = Math.abs(entry) < ROUNDING ? 0 : entry;
    }
    a[at + column] = factor;
    shift[i]! -= factor * shift[row]!;
  }
  for (let k = 0; k < n; k += 1) a[row * n + k] = k === column ? 1 : 0;
  shift[row] = 0;
  t.column[t.basis[column]!] = -1;
  t.basis[column] = row;
  t.column[row] = column;
  x[column] = value;
}

/** Does a standing solid, a gas that leaves or something held occupy the column? */
export const isFixed = (t: Tableau, column: number): boolean => t.basis[column]! >= t.system.m;

/** The most abundant species above a molality that can take the place of a working component; -1 for none. */
function rivalOf(t: Tableau, column: number, molality: number): number {
  const { a, c } = t;
  const { n, m } = t.system;
  let most = molality;
  let row = -1;
  for (let i = 0; i < m; i += 1) {
    if (!(c[i]! > most) || t.column[i]! >= 0 || Math.abs(a[i * n + column]!) < 0.1) continue;
    most = c[i]!;
    row = i;
  }
  return row;
}

/** Give the places of scarce species to abundant ones, going by the molalities last computed; true if any changed. */
export function preferAbundant(t: Tableau): boolean {
  const { n } = t.system;
  let changed = false;
  for (let turn = 0; turn < 2 * n; turn += 1) {
    let best = MORE_ABUNDANT;
    let row = -1;
    let column = -1;
    for (let k = 0; k < n; k += 1) {
      if (isFixed(t, k)) continue;
      const own = t.c[t.basis[k]!]!;
      const rival = rivalOf(t, k, best * own);
      if (rival < 0) continue;
      best = t.c[rival]! / own;
      row = rival;
      column = k;
    }
    if (row < 0) break;
    pivot(t, row, column);
    changed = true;
  }
  return changed;
}

/** What a condition of the smooth problem binds when just saturated, mol/kg. */
const AT_SATURATION = Math.log(1e-6);

/** Sparse rows over the free working components; the fixed ones go into the offsets. Call after every change of basis. */
export function compile(t: Tableau): void {
  const { a, x, place, index, coefficient } = t;
  const { n, m, open, lnK } = t.system;
  t.free = 0;
  for (let k = 0; k < n; k += 1) {
    if (isFixed(t, k)) {
      x[k] = lnK[t.basis[k]!]!;
      place[k] = -1;
    } else {
      t.freeColumn[t.free] = k;
      place[k] = t.free;
      t.free += 1;
    }
  }
  spreadTotals(t);
  let at = 0;
  for (let i = 0; i < t.rows; i += 1) {
    t.start[i] = at;
    let offset = t.shift[i]!;
    if (i >= m) {
      const takesPart = t.column[i]! < 0 && open[i - m] === 1;
      offset += takesPart ? AT_SATURATION / t.steep[i]! - lnK[i]! : -1e9;
    }
    for (let k = 0, from = i * n; k < n; k += 1) {
      const entry = a[from + k]!;
      if (entry === 0) continue;
      const f = place[k]!;
      if (f < 0) offset += entry * x[k]!;
      else {
        index[at] = f;
        coefficient[at] = entry;
        at += 1;
      }
    }
    t.offset[i] = offset;
  }
  t.start[t.rows] = at;
}

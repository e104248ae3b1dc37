// How an answer moves with every total and every constant, by the theorem of implicit functions: the balances stay met, so
// one solution with the transposed matrix of their derivatives gives all derivatives of one figure.
import { daviesTermSlope } from "./davies";
import { amountAt } from "./phases";
import { isFixed, logActivity, type Tableau } from "./tableau";

/** A solved system, kept apart from the tableau, which goes on to the next problem. */
export interface Solution {
  readonly n: number;
  readonly m: number;
  readonly s: number;
  /** Rows in working components, (m + s) × n. */
  readonly a: Float64Array;
  readonly basis: Int32Array;
  readonly squareCharge: Float64Array;
  /** Molality of each species. */
  readonly molality: Float64Array;
  /** ln activity of each species. */
  readonly lnActivity: Float64Array;
  /** mol/kg of each condition that binds, 0 of the others. */
  readonly amount: Float64Array;
  /** ln(Q/K) of each condition. */
  readonly saturation: Float64Array;
  readonly ionicStrength: number;
  /** Slope of the activity model times d(term)/d(ionic strength). */
  readonly bend: number;
}

/** Copy the answer a tableau holds. */
export function solutionOf(t: Tableau): Solution {
  const { n, m, s, lnK } = t.system;
  const amount = new Float64Array(s);
  const saturation = new Float64Array(s);
  const lnActivity = new Float64Array(m);
  for (let k = 0; k < n; k += 1) if (isFixed(t, k)) amount[t.basis[k]! - m] = amountAt(t, k);
  for (let j = 0; j < s; j += 1) saturation[j] = logActivity(t, m + j) - lnK[m + j]!;
  for (let i = 0; i < m; i += 1) lnActivity[i] = logActivity(t, i);
  return {
    n,
    m,
    s,
    a: t.a.slice(),
    basis: t.basis.slice(),
    squareCharge: t.squareCharge.slice(0, m),
    molality: t.c.slice(0, m),
    lnActivity,
    amount,
    saturation,
    ionicStrength: t.ionicStrength,
    bend: t.slope * daviesTermSlope(t.ionicStrength),
  };
}

/** A figure: a weighted sum of molalities, amounts of conditions and ln activities. */
export interface Figure {
  readonly molality?: readonly (readonly [species: number, weight: number])[];
  readonly amount?: readonly (readonly [condition: number, weight: number])[];
  readonly lnActivity?: readonly (readonly [species: number, weight: number])[];
  /** Constants that stand in the figure itself, by row of the system. */
  readonly lnK?: readonly (readonly [row: number, weight: number])[];
  /** Totals that stand in the figure itself, by component. */
  readonly totals?: readonly (readonly [component: number, weight: number])[];
}

/** Derivatives of a figure. */
interface Gradient {
  /** With respect to the total of each component. */
  readonly totals: Float64Array;
  /** With respect to ln K of each species and condition. */
  readonly lnK: Float64Array;
  /** With respect to the activity term −ln γ of a singly charged ion, at fixed ionic strength. */
  readonly activity: number;
  /** With respect to ionic strength of ions that do nothing else. */
  readonly bystanders: number;
}

/** Solve a small square system by elimination with row exchanges, in place; rows scaled first. */
function solveDense(matrix: Float64Array, right: Float64Array, n: number): void {
  for (let i = 0; i < n; i += 1) {
    let largest = 0;
    for (let j = 0; j < n; j += 1) largest = Math.max(largest, Math.abs(matrix[i * n + j]!));
    if (largest === 0) continue;
    for (let j = 0; j < n; j += 1) matrix[i * n + j]! /= largest;
    right[i]! /= largest;
  }
  for (let k = 0; k < n; k += 1) {
    let row = k;
    for (let i = k + 1; i < n; i += 1) if (Math.abs(matrix[i * n + k]!) > Math.abs(matrix[row * n + k]!)) row = i;
    if (row !== k) {
      for (let j = 0; j < n; j += 1)
        [matrix[k * n + j], matrix[row * n + j]] = [matrix[row * n + j]!, matrix[k * n + j]!];
      [right[k], right[row]] = [right[row]!, right[k]!];
    }
    for (let i = k + 1; i < n; i += 1) {
      const factor = matrix[i * n + k]! / matrix[k * n + k]!;
      if (factor === 0) continue;
      for (let j = k; j < n; j += 1) matrix[i * n + j]! -= factor * matrix[k * n + j]!;
      right[i]! -= factor * right[k]!;
    }
  }
  for (let i = n - 1; i >= 0; i -= 1) {
    for (let j = i + 1; j < n; j += 1) right[i]! -= matrix[i * n + j]! * right[j]!;
    right[i]! /= matrix[i * n + i]!;
  }
}

/** Derivatives of a figure with respect to everything that went in. */
export function gradientOf(solution: Solution, figure: Figure): Gradient {
  const { n, m, s, a, basis, squareCharge, molality, bend } = solution;
  const free: number[] = [];
  for (let k = 0; k < n; k += 1) if (basis[k]! < m) free.push(k);
  const size = free.length + 1;
  const last = size - 1;

  // what the figure itself says: of the shift of each ln molality, and of the working totals
  const direct = new Float64Array(m);
  const ofTotals = new Float64Array(n);
  for (const [i, weight] of figure.molality ?? []) direct[i]! += weight * molality[i]!;
  for (const [condition, weight] of figure.amount ?? []) {
    const column = basis.indexOf(m + condition);
    if (column < 0) continue;
    ofTotals[column]! += weight;
    for (let i = 0; i < m; i += 1) direct[i]! -= weight * a[i * n + column]! * molality[i]!;
  }
  const right = new Float64Array(size);
  for (let i = 0; i < m; i += 1) {
    const weight = direct[i]!;
    if (weight === 0) continue;
    for (let f = 0; f < last; f += 1) right[f]! += weight * a[i * n + free[f]!]!;
    right[last]! += weight * squareCharge[i]! * bend;
  }
  for (const [i, weight] of figure.lnActivity ?? [])
    for (let f = 0; f < last; f += 1) right[f]! += weight * a[i * n + free[f]!]!;

  // transposed derivatives of the balances with respect to the free ln activities and the ionic strength
  const matrix = new Float64Array(size * size);
  for (let i = 0; i < m; i += 1) {
    const [c, z2] = [molality[i]!, squareCharge[i]!];
    for (let f = 0; f < last; f += 1) {
      const part = a[i * n + free[f]!]! * c;
      if (part === 0) continue;
      for (let g = 0; g < last; g += 1) matrix[f * size + g]! += part * a[i * n + free[g]!]!;
      matrix[f * size + last]! += (z2 * part) / 2;
      matrix[last * size + f]! += z2 * part * bend;
    }
    matrix[last * size + last]! += (z2 * z2 * c * bend) / 2;
  }
  matrix[last * size + last]! -= 1;
  solveDense(matrix, right, size);

  const shift = new Float64Array(m);
  let activity = 0;
  for (let i = 0; i < m; i += 1) {
    let sum = (squareCharge[i]! / 2) * right[last]!;
    for (let f = 0; f < last; f += 1) sum += right[f]! * a[i * n + free[f]!]!;
    shift[i] = direct[i]! - molality[i]! * sum;
    activity += squareCharge[i]! * shift[i]!;
  }
  for (const [i, weight] of figure.lnActivity ?? []) shift[i]! += weight;

  const lnK = new Float64Array(m + s);
  lnK.set(shift);
  for (let k = 0; k < n; k += 1) {
    let sum = 0;
    for (let i = 0; i < m; i += 1) sum += shift[i]! * a[i * n + k]!;
    // the constant of a working species is in every row made of it; a condition fixes the activity of its column
    lnK[basis[k]!]! += basis[k]! < m ? -sum : sum;
  }
  for (const [row, weight] of figure.lnK ?? []) lnK[row]! += weight;
  const totals = new Float64Array(n);
  for (let f = 0; f < last; f += 1) ofTotals[free[f]!]! += right[f]!;
  for (let j = 0; j < n; j += 1) for (let k = 0; k < n; k += 1) totals[j]! += a[j * n + k]! * ofTotals[k]!;
  for (const [j, weight] of figure.totals ?? []) totals[j]! += weight;
  return { totals, lnK, activity, bystanders: -right[last]! };
}

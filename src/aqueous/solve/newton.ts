// One set of binding conditions: the sum of all molalities less total × ln activity is a strictly convex function of the
// free ln activities; where its gradient - the mass balances - is zero stands the only answer. The ionic strength comes in
// as one more unknown with its own equation, so that Newton's steps converge quadratically in both together. Nothing here
// makes an object, not even a pair that is taken apart at once: these loops run hundreds of thousands of times.
import { daviesTerm, daviesTermSlope } from "./davies";
import { compile, preferAbundant, type Tableau } from "./tableau";

/** Exponents are cut here: e^250 squared is still a double. */
const CAP = 250;
/** A full step is taken when it changes no molality by more than this factor (as a logarithm). */
const SMALL = 0.7;
/** Longest step as a change of a logarithm. */
const FAR = 60;
const MOST_STEPS = 120;
/** Below any bench solution; keeps the square root of the ionic strength differentiable. */
const LEAST_IONIC_STRENGTH = 1e-9;
const MOST_IONIC_STRENGTH = 1e3;

/** Molalities, mass balance residuals and, where asked, second derivatives at the present point. */
export function evaluate(t: Tableau, second: boolean): number {
  const { c, x, offset, start, index, coefficient, steep, squareCharge, residual, scale, hessian, border } = t;
  const { free, rows, freeColumn } = t;
  const activity = t.slope === 0 ? 0 : t.slope * daviesTerm(t.ionicStrength);
  for (let f = 0; f < free; f += 1) {
    const total = t.totals[freeColumn[f]!]!;
    residual[f] = -total;
    scale[f] = Math.abs(total);
    border[f] = 0;
  }
  if (second) hessian.fill(0, 0, free * free);
  let charges = 0;
  for (let i = 0; i < rows; i += 1) {
    let exponent = offset[i]!;
    const from = start[i]!;
    const to = start[i + 1]!;
    for (let p = from; p < to; p += 1) exponent += coefficient[p]! * x[freeColumn[index[p]!]!]!;
    const z2 = squareCharge[i]!;
    exponent = exponent * steep[i]! + activity * z2;
    const molality = Math.exp(Math.min(exponent, CAP));
    c[i] = molality;
    charges += z2 * molality;
    const weight = molality * steep[i]!;
    for (let p = from; p < to; p += 1) {
      const f = index[p]!;
      const count = coefficient[p]!;
      const part = count * molality;
      residual[f]! += part;
      scale[f]! += part < 0 ? -part : part;
      border[f]! += z2 * part;
      if (second) for (let q = from; q <= p; q += 1) hessian[f * free + index[q]!]! += count * weight * coefficient[q]!;
    }
  }
  return charges / 2;
}

/** Cholesky factor in the lower triangle, scaled to a unit diagonal; `d` receives the scaling. Never fails: every free
 * working component is itself a species, so the diagonal is positive; a pivot lost in rounding is replaced. */
function factor(h: Float64Array, n: number, d: Float64Array): void {
  for (let i = 0; i < n; i += 1) d[i] = 1 / Math.sqrt(h[i * n + i]!);
  for (let i = 0; i < n; i += 1) {
    for (let j = 0; j <= i; j += 1) {
      let sum = i === j ? 1 : h[i * n + j]! * d[i]! * d[j]!;
      for (let k = 0; k < j; k += 1) sum -= h[i * n + k]! * h[j * n + k]!;
      if (i === j) h[i * n + i] = Math.sqrt(Math.max(sum, 1e-15));
      else h[i * n + j] = sum / h[j * n + j]!;
    }
  }
}

/** Solve with the factor, in place. */
function substitute(h: Float64Array, n: number, d: Float64Array, v: Float64Array): void {
  for (let i = 0; i < n; i += 1) {
    let sum = v[i]! * d[i]!;
    for (let k = 0; k < i; k += 1) sum -= h[i * n + k]! * v[k]!;
    v[i] = sum / h[i * n + i]!;
  }
  for (let i = n - 1; i >= 0; i -= 1) {
    let sum = v[i]!;
    for (let k = i + 1; k < n; k += 1) sum -= h[k * n + i]! * v[k]!;
    v[i] = sum / h[i * n + i]!;
  }
  for (let i = 0; i < n; i += 1) v[i]! *= d[i]!;
}

/** Slope of the convex function along the step, at a multiple of it. */
function slopeAt(t: Tableau, multiple: number, pull: number): number {
  let sum = -pull;
  for (let i = 0; i < t.rows; i += 1) {
    const d = t.along[i]!;
    if (d === 0) continue;
    const exponent = d * multiple;
    sum += (t.c[i]! * d * Math.exp(Math.min(exponent, CAP))) / t.steep[i]!;
  }
  return sum;
}

/** The change of each exponent along the step. */
function project(t: Tableau): void {
  const { along, steep, start, index, coefficient, step } = t;
  for (let i = 0; i < t.rows; i += 1) {
    let d = 0;
    for (let p = start[i]!; p < start[i + 1]!; p += 1) d += coefficient[p]! * step[index[p]!]!;
    along[i] = d * steep[i]!;
  }
}

/** The greatest of the first numbers, or of what they are less than nothing. */
function greatest(numbers: Float64Array, count: number, sign: 1 | -1): number {
  let most = -Infinity;
  for (let i = 0; i < count; i += 1) most = Math.max(most, sign * numbers[i]!);
  return most;
}

/** Sum of the molalities times the fourth powers of their charges. */
function fourthPowers({ rows, squareCharge, c }: Tableau): number {
  let sum = 0;
  for (let i = 0; i < rows; i += 1) sum += squareCharge[i]! ** 2 * c[i]!;
  return sum;
}

/**
 * How far to go along a step at constant activity coefficients. The function is a sum of exponentials, so going
 * ln(1 + d)/d of the way, d the largest growth of an exponent, always lowers it; from there the zero of the slope is
 * closed in, as the way down to a scarce component can be much longer.
 */
function stretch(t: Tableau, growth: number, shrink: number): number {
  let pull = 0;
  for (let f = 0; f < t.free; f += 1) pull += t.step[f]! * t.totals[t.freeColumn[f]!]!;
  const least = growth > 1e-8 ? Math.log1p(growth) / growth : 1;
  const most = FAR / Math.max(growth, shrink);
  let low = Math.min(least, most);
  let high = most;
  const first = slopeAt(t, 0, pull);
  let below = slopeAt(t, low, pull);
  let above = Number.NaN;
  if (!(below < 0.1 * first)) return low;
  let next = Math.min(most, Math.max(1, 2 * low));
  for (let probe = 0; probe < 12; probe += 1) {
    const slope = slopeAt(t, next, pull);
    if (Math.abs(slope) <= 0.1 * -first) return next;
    if (slope < 0) {
      low = next;
      below = slope;
    } else {
      high = next;
      above = slope;
    }
    if (low >= most) return most;
    if (Number.isNaN(above)) next = Math.min(most, 3 * next);
    else {
      // closed in on the logarithm of what is out of balance, as the slope grows exponentially
      const secant = low + ((high - low) * -below) / (above - below);
      next = above > 20 * -below ? (low + high) / 2 : secant;
    }
  }
  return low;
}

/**
 * Newton's method for the free working components and, with `coupled`, the ionic strength. Steps that would change a
 * molality much are taken at constant ionic strength with a search along them.
 *
 * @returns whether every mass balance and the ionic strength are met to `tolerance`, relative to what they sum up
 */
export function newton(t: Tableau, tolerance: number, coupled: boolean): boolean {
  const { residual, scale, hessian, border, step, stepBorder, diagonal, along } = t;
  let polished = false;
  for (let turn = 0; turn < MOST_STEPS; turn += 1) {
    const { free } = t;
    const ionic = Math.max(evaluate(t, true), LEAST_IONIC_STRENGTH);
    t.iterations += 1;
    let worst = 0;
    for (let f = 0; f < free; f += 1) worst = Math.max(worst, Math.abs(residual[f]!) / scale[f]!);
    const drift = ionic - t.ionicStrength;
    if (coupled) worst = Math.max(worst, Math.abs(drift) / ionic);
    // converged, and no step makes it any better
    if (worst <= tolerance && (worst <= 1e-15 || polished || tolerance > 1e-6)) {
      if (coupled) t.ionicStrength = ionic;
      return true;
    }
    polished = worst <= tolerance;
    if (!Number.isFinite(worst)) return false;
    if (worst > 0.5 && turn % 4 === 3) {
      if (preferAbundant(t)) {
        compile(t);
        continue;
      }
    }
    for (let f = 0; f < free; f += 1) {
      step[f] = -residual[f]!;
      stepBorder[f] = border[f]!;
    }
    factor(hessian, free, diagonal);
    substitute(hessian, free, diagonal, step);
    const bend = t.slope * daviesTermSlope(t.ionicStrength);
    let change = 0;
    if (coupled && worst < 0.5) {
      if (bend === 0) change = drift;
      else {
        substitute(hessian, free, diagonal, stepBorder);
        let own = 0;
        let pulled = 0;
        const fourth = fourthPowers(t);
        for (let f = 0; f < free; f += 1) {
          own += border[f]! * step[f]!;
          pulled += border[f]! * stepBorder[f]!;
        }
        // the equation of the ionic strength after the mass balances have been eliminated; its slope is negative
        const slope = (bend * (fourth - pulled)) / 2 - 1;
        change = slope < -0.05 ? -(drift + own / 2) / slope : drift;
        const least = -0.8 * t.ionicStrength;
        const most = 4 * t.ionicStrength;
        change = Math.min(Math.max(change, least), most);
        for (let f = 0; f < free; f += 1) step[f]! -= bend * change * stepBorder[f]!;
      }
    }
    project(t);
    const growth = Math.max(0, greatest(along, t.rows, 1));
    const shrink = Math.max(0, greatest(along, t.rows, -1));
    let multiple = 1;
    if (growth > SMALL || shrink > 2 * SMALL) {
      multiple = change === 0 ? stretch(t, growth, shrink) : Math.min(1, 1 / growth, 3 / shrink);
    }
    for (let f = 0; f < free; f += 1) t.x[t.freeColumn[f]!]! += multiple * step[f]!;
    if (coupled) {
      if (change !== 0) t.ionicStrength += multiple * change;
      else if (worst >= 0.5 && t.slope !== 0) {
        // far away the molalities say little about the final ionic strength: follow them, but slowly
        const target = Math.min(Math.max(ionic, t.ionicStrength / 3), t.ionicStrength * 3);
        t.ionicStrength = Math.min(target, MOST_IONIC_STRENGTH);
      } else t.ionicStrength = Math.max(t.ionicStrength + drift, LEAST_IONIC_STRENGTH);
    }
  }
  return false;
}

// Monotone piecewise cubic interpolation: parabolic slopes, cut back where they would overshoot (Hyman 1983), so that a
// curve never turns between two figures that do not. Plain numbers: the result is rounded to the figures' own worth.

/** Value and slope at one place. */
export interface CurvePoint {
  readonly value: number;
  readonly slope: number;
}

/** Largest multiple of the flatter neighbouring secant a slope may have for the cubic to stay monotone. */
const STEEPEST = 3;

function innerSlope(h0: number, h1: number, d0: number, d1: number): number {
  if (d0 * d1 <= 0) return 0;
  const parabolic = (h1 * d0 + h0 * d1) / (h0 + h1);
  return Math.sign(d1) * Math.min(Math.abs(parabolic), STEEPEST * Math.min(Math.abs(d0), Math.abs(d1)));
}

function endSlope(h0: number, h1: number, d0: number, d1: number): number {
  const parabolic = ((2 * h0 + h1) * d0 - h0 * d1) / (h0 + h1);
  if (parabolic * d0 <= 0) return 0;
  return Math.abs(parabolic) > STEEPEST * Math.abs(d0) ? STEEPEST * d0 : parabolic;
}

/** Slopes at the knots; `x` rises strictly and holds at least two values. */
export function monotoneSlopes(x: readonly number[], y: readonly number[]): number[] {
  const n = x.length;
  const h = Array.from({ length: n - 1 }, (_, i) => x[i + 1]! - x[i]!);
  const d = h.map((width, i) => (y[i + 1]! - y[i]!) / width);
  if (n === 2) return [d[0]!, d[0]!];
  const slopes = new Array<number>(n);
  slopes[0] = endSlope(h[0]!, h[1]!, d[0]!, d[1]!);
  for (let i = 1; i < n - 1; i += 1) slopes[i] = innerSlope(h[i - 1]!, h[i]!, d[i - 1]!, d[i]!);
  slopes[n - 1] = endSlope(h[n - 2]!, h[n - 3]!, d[n - 2]!, d[n - 3]!);
  return slopes;
}

/** The cubic between its knots; `at` must lie between the first and the last. */
export function cubicAt(x: readonly number[], y: readonly number[], slopes: readonly number[], at: number): CurvePoint {
  let i = 0;
  while (i < x.length - 2 && at > x[i + 1]!) i += 1;
  const h = x[i + 1]! - x[i]!;
  const u = (at - x[i]!) / h;
  const [y0, y1, m0, m1] = [y[i]!, y[i + 1]!, slopes[i]! * h, slopes[i + 1]! * h];
  const value = y0 + u * (m0 + u * (3 * (y1 - y0) - 2 * m0 - m1 + u * (2 * (y0 - y1) + m0 + m1)));
  const slope = (m0 + u * (2 * (3 * (y1 - y0) - 2 * m0 - m1) + 3 * u * (2 * (y0 - y1) + m0 + m1))) / h;
  return { value, slope };
}

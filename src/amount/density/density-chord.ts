// How far a density read from the chord between two tabulated points may be from the curve: bounded by the bends that the
// neighbouring points show.

/** @internal A point of a density curve in plain numbers, for its shape. */
export interface CurvePoint {
  readonly percent: number;
  readonly plain: number;
  /** Half of the last printed digit. */
  readonly half: number;
}

/** A divided difference of 1/density over some points, and the most that the rounding of their prints can add to it. */
interface Difference {
  readonly value: number;
  readonly rounding: number;
}

function difference(points: readonly CurvePoint[], from: number, count: number): Difference | undefined {
  if (from < 0 || from + count > points.length) return undefined;
  const over = points.slice(from, from + count);
  let [value, rounding] = [0, 0];
  for (const { percent, plain, half } of over) {
    let product = 1;
    for (const other of over) if (other.percent !== percent) product *= percent - other.percent;
    value += 1 / plain / product;
    rounding += half / plain ** 2 / Math.abs(product);
  }
  return { value, rounding };
}

/**
 * @internal How far a density read from the chord of segment k may be from the curve at its middle.
 *
 * At w between wa and wb a chord of v = 1/density is off by (w - wa)(wb - w) times the second divided difference over wa, w
 * and wb. That difference lies between the ones over (a neighbour, wa, wb) on either side as long as the bend of the curve
 * changes one way; where it does not, it lies between those and their continuations by the third differences beside them,
 * as long as the third difference changes one way. The bound is the largest of the four.
 */
export function chordBound(points: readonly CurvePoint[], k: number): number {
  const [a, b] = [points[k]!, points[k + 1]!];
  let bend = 0;
  for (const [second, third, away] of [
    [difference(points, k - 1, 3), difference(points, k - 2, 4), b.percent - (points[k - 1]?.percent ?? 0)],
    [difference(points, k, 3), difference(points, k, 4), a.percent - (points[k + 2]?.percent ?? 0)],
  ] as const) {
    if (second === undefined) continue;
    bend = Math.max(bend, Math.abs(second.value) + second.rounding);
    if (third === undefined) continue;
    const further = Math.abs(second.value + third.value * away);
    bend = Math.max(bend, further + second.rounding + third.rounding * Math.abs(away));
  }
  return bend * ((b.percent - a.percent) / 2) ** 2 * Math.max(a.plain, b.plain) ** 2;
}

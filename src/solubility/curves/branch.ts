// A solubility curve cut into branches, one for each solid in contact with the solution. Interpolation stays inside one
// branch; two branches meet where the solid changes, and each is run out to that meeting point, so that kinks survive.
// Inside, the scale of the solid (solid-scale.ts) is read against 1/T, where one solid runs nearly straight.
import { under } from "../../foundation/facts";
import { ZERO_CELSIUS } from "../../foundation/standards";
import type { SolubilityRow } from "../data/curves";
import { type CurvePoint, cubicAt, monotoneSlopes } from "./monotone";
import { solidOf } from "./solid-of";
import { gramsAt, ordinateOf, type SolidScale, solidScale, stretchAt } from "./solid-scale";

/** A knot of a branch: a figure of the table, or the meeting point of two branches. */
interface Knot {
  readonly celsius: number;
  readonly grams: number;
  readonly text: string | undefined;
  /** How far off the knot may be, as standard deviation of ln S. */
  readonly spread: number;
}

/** One solid and the curve in contact with it. */
export interface Branch {
  readonly solid: string | undefined;
  readonly from: number;
  readonly to: number;
  readonly knots: readonly Knot[];
  readonly scale: SolidScale;
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly slopes: readonly number[];
  /** ln S of each knot as predicted by its neighbours, minus ln S; 0 where it cannot be determined. */
  readonly scatter: readonly number[];
}

/** A branch is run out to a change of solid over at most this many kelvin from its own figures. */
const RUN_OUT = 12;
/** Share of the change in ln S over the run-out taken as its standard deviation when only one side can be run out. */
export const ONE_SIDED_SPREAD = 0.3;

/** Minus a thousand over the absolute temperature, which rises with it: what curves are straight against. */
export const inverse = (celsius: number): number => -1000 / (celsius + ZERO_CELSIUS);

interface Piece {
  readonly solid: string | undefined;
  readonly from: number;
  readonly to: number;
  readonly scale: SolidScale;
  readonly own: Knot[];
}

function pieces(row: SolubilityRow): Piece[] {
  let from = Number.NEGATIVE_INFINITY;
  return row.solids.map((range) => {
    const { upTo } = range;
    const solid = solidOf(row, range);
    const to = upTo === undefined ? Number.POSITIVE_INFINITY : Number(upTo);
    const start = from;
    from = to;
    const own = row.points
      .filter(([celsius]) => celsius > start && celsius <= to)
      .map(([celsius, text]) => ({ celsius, grams: Number(text), text, spread: 0 }));
    return { solid, from: start, to, scale: solidScale(row.formula, solid), own };
  });
}

/**
 * ln S at a change of solid or just below the coldest figure, run out in a straight line from the two nearest figures of one branch. Straight in ln S:
 * beyond the figures the scale of the solid is too steep, since it leaves out that salt solutions are not ideal (for
 * sodium sulfate at 32.38 °C it gives 52.8 g, ln S gives 49.5 g, and 49.7 g is measured).
 */
export function runOut(near: Knot | undefined, far: Knot | undefined, celsius: number) {
  if (near === undefined || far === undefined) return undefined;
  const distance = Math.abs(celsius - near.celsius);
  if (distance > RUN_OUT) return undefined;
  const logarithm = Math.log(near.grams);
  const slope = (logarithm - Math.log(far.grams)) / (inverse(near.celsius) - inverse(far.celsius));
  const change = slope * (inverse(celsius) - inverse(near.celsius));
  return { logarithm: logarithm + change, distance, change };
}

/** Ends of two branches where the solid changes. */
interface Meeting {
  readonly left?: Knot;
  readonly right?: Knot;
}

/** Both branches run out to the change, the nearer one weighing more; undefined when neither reaches it. */
function runTogether(left: Piece, right: Piece, celsius: number): Knot | undefined {
  const a = runOut(left.own.at(-1), left.own.at(-2), celsius);
  const b = runOut(right.own[0], right.own[1], celsius);
  if (a === undefined && b === undefined) return undefined;
  if (a === undefined || b === undefined) {
    const { logarithm, change } = (a ?? b)!;
    return { celsius, grams: Math.exp(logarithm), text: undefined, spread: ONE_SIDED_SPREAD * Math.abs(change) };
  }
  const [u, v] = [1 / a.distance ** 2, 1 / b.distance ** 2];
  const logarithm = (u * a.logarithm + v * b.logarithm) / (u + v);
  const spread = Math.abs(a.logarithm - b.logarithm) / 2;
  return { celsius, grams: Math.exp(logarithm), text: undefined, spread };
}

/**
 * Where two branches meet. If the table goes on with more salt than the colder hydrate itself holds, that hydrate has
 * melted in between: its branch ends at its own composition, and the next one does not meet it.
 */
function meeting(left: Piece, right: Piece, next: number | undefined): Meeting {
  const celsius = left.to;
  const { ceiling } = left.scale;
  const last = left.own.at(-1);
  const melts = next !== undefined && next > ceiling;
  if (last?.celsius === celsius) return melts ? { left: last } : { left: last, right: last };
  if (melts) {
    if (last === undefined) return {};
    const spread = ONE_SIDED_SPREAD * Math.log(ceiling / last.grams);
    return { left: { celsius, grams: ceiling, text: undefined, spread } };
  }
  const met = runTogether(left, right, celsius);
  return met === undefined || met.grams > Math.min(ceiling, right.scale.ceiling) ? {} : { left: met, right: met };
}

/** ln S of each inner knot as predicted without it, minus ln S. */
function scatterOf(scale: SolidScale, knots: readonly Knot[], x: readonly number[], y: readonly number[]): number[] {
  return knots.map(({ grams }, i) => {
    if (i === 0 || i === x.length - 1) return 0;
    const xs = x.filter((_, k) => k !== i);
    const ys = y.filter((_, k) => k !== i);
    return Math.log(gramsAt(scale, cubicAt(xs, ys, monotoneSlopes(xs, ys), x[i]!).value) / grams);
  });
}

function finish(piece: Piece, start: Knot | undefined, end: Knot | undefined): Branch {
  const knots = [...piece.own];
  if (start !== undefined) knots.unshift(start);
  if (end !== undefined && end !== knots.at(-1)) knots.push(end);
  const { solid, from, to, scale } = piece;
  const x = knots.map(({ celsius }) => inverse(celsius));
  const y = knots.map(({ grams }) => ordinateOf(scale, grams));
  const slopes = x.length > 1 ? monotoneSlopes(x, y) : [];
  return { solid, from, to, knots, scale, x, y, slopes, scatter: scatterOf(scale, knots, x, y) };
}

const made = /* @__PURE__ */ new WeakMap<SolubilityRow, readonly Branch[]>();

/** The branches of a row, coldest first; built once for each row, on the weights of the library whoever asks first. */
export function branchesOf(row: SolubilityRow): readonly Branch[] {
  const before = made.get(row);
  if (before !== undefined) return before;
  const branches = under(undefined, () => joined(row));
  made.set(row, branches);
  return branches;
}

function joined(row: SolubilityRow): Branch[] {
  const parts = pieces(row);
  const meetings = parts.slice(1).map((right, i) => {
    const next = row.points.find(([celsius]) => celsius > parts[i]!.to);
    return meeting(parts[i]!, right, next && Number(next[1]));
  });
  return parts.map((piece, i) => finish(piece, meetings[i - 1]?.right, meetings[i]?.left));
}

/** S and dS/dT (per kelvin) on a branch between its knots. */
export function onBranch({ x, y, slopes, scale }: Branch, celsius: number): CurvePoint {
  const { value, slope } = cubicAt(x, y, slopes, inverse(celsius));
  const grams = gramsAt(scale, value);
  return { value: grams, slope: grams * stretchAt(scale, grams) * slope * (1000 / (celsius + ZERO_CELSIUS) ** 2) };
}

// A solubility curve cut into branches, one for each solid in contact with the solution. Interpolation stays inside one
// branch; two branches meet where the solid changes, and each is run out to that meeting point, so that kinks survive.
// Inside, everything is ln S against 1/T, which is nearly straight for one solid (van 't Hoff).
import type { SolubilityRow } from "./data/curves";
import { type CurvePoint, cubicAt, monotoneSlopes } from "./monotone";

/** A knot of a branch: a figure of the table, or the meeting point of two branches. */
interface Knot {
  readonly celsius: number;
  readonly logarithm: number;
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
  readonly x: readonly number[];
  readonly y: readonly number[];
  readonly slopes: readonly number[];
  /** ln S of each knot as foretold by its neighbours, minus ln S; 0 where it cannot be told. */
  readonly scatter: readonly number[];
}

/** A branch is run out to a change of solid over at most this many kelvin from its own figures. */
const RUN_OUT = 12;
/** Share of the change in ln S over the run-out taken as its standard deviation when only one side can be run out. */
const ONE_SIDED_SPREAD = 0.3;

const ABSOLUTE_ZERO = 273.15;
const inverse = (celsius: number): number => -1000 / (celsius + ABSOLUTE_ZERO);

interface Piece {
  readonly solid: string | undefined;
  readonly from: number;
  readonly to: number;
  readonly own: Knot[];
}

function pieces(row: SolubilityRow): Piece[] {
  let from = Number.NEGATIVE_INFINITY;
  return row.solids.map(({ solid, upTo }) => {
    const to = upTo === undefined ? Number.POSITIVE_INFINITY : Number(upTo);
    const start = from;
    from = to;
    const own = row.points
      .filter(([celsius]) => celsius > start && celsius <= to)
      .map(([celsius, text]) => ({ celsius, logarithm: Math.log(Number(text)), text, spread: 0 }));
    return { solid, from: start, to, own };
  });
}

/** ln S at a change of solid, run out in a straight line from the two nearest figures of one branch. */
function runOut(near: Knot | undefined, far: Knot | undefined, celsius: number) {
  if (near === undefined || far === undefined) return undefined;
  const distance = Math.abs(celsius - near.celsius);
  if (distance > RUN_OUT) return undefined;
  const slope = (near.logarithm - far.logarithm) / (inverse(near.celsius) - inverse(far.celsius));
  const change = slope * (inverse(celsius) - inverse(near.celsius));
  return { logarithm: near.logarithm + change, distance, change };
}

/** Where two branches meet: both run out, the nearer one weighing more. */
function meetingPoint(left: Piece, right: Piece): Knot | undefined {
  const celsius = left.to;
  const last = left.own.at(-1);
  if (last?.celsius === celsius) return last;
  const a = runOut(last, left.own.at(-2), celsius);
  const b = runOut(right.own[0], right.own[1], celsius);
  if (a === undefined && b === undefined) return undefined;
  if (a === undefined || b === undefined) {
    const { logarithm, change } = (a ?? b)!;
    return { celsius, logarithm, text: undefined, spread: ONE_SIDED_SPREAD * Math.abs(change) };
  }
  const [u, v] = [1 / a.distance ** 2, 1 / b.distance ** 2];
  const logarithm = (u * a.logarithm + v * b.logarithm) / (u + v);
  return { celsius, logarithm, text: undefined, spread: Math.abs(a.logarithm - b.logarithm) / 2 };
}

/** ln S of each inner knot as foretold without it, minus ln S. */
function scatterOf(x: readonly number[], y: readonly number[]): number[] {
  return x.map((at, i) => {
    if (i === 0 || i === x.length - 1) return 0;
    const xs = x.filter((_, k) => k !== i);
    const ys = y.filter((_, k) => k !== i);
    return cubicAt(xs, ys, monotoneSlopes(xs, ys), at).value - y[i]!;
  });
}

function finish(piece: Piece, start: Knot | undefined, end: Knot | undefined): Branch {
  const knots = [...piece.own];
  if (start !== undefined) knots.unshift(start);
  if (end !== undefined && end !== knots.at(-1)) knots.push(end);
  const x = knots.map(({ celsius }) => inverse(celsius));
  const y = knots.map(({ logarithm }) => logarithm);
  const { solid, from, to } = piece;
  const slopes = x.length > 1 ? monotoneSlopes(x, y) : [];
  return { solid, from, to, knots, x, y, slopes, scatter: scatterOf(x, y) };
}

const made = /* @__PURE__ */ new WeakMap<SolubilityRow, readonly Branch[]>();

/** The branches of a row, coldest first; built once for each row. */
export function branchesOf(row: SolubilityRow): readonly Branch[] {
  const before = made.get(row);
  if (before !== undefined) return before;
  const parts = pieces(row);
  const meetings = parts.slice(1).map((right, i) => meetingPoint(parts[i]!, right));
  const branches = parts.map((piece, i) => finish(piece, meetings[i - 1], meetings[i]));
  made.set(row, branches);
  return branches;
}

/** S and dS/dT (per kelvin) on a branch between its knots. */
export function onBranch(branch: Branch, celsius: number): CurvePoint {
  const { value, slope } = cubicAt(branch.x, branch.y, branch.slopes, inverse(celsius));
  const grams = Math.exp(value);
  return { value: grams, slope: grams * slope * (1000 / (celsius + ABSOLUTE_ZERO) ** 2) };
}

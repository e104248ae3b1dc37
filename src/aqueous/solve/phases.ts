// Which solids stand and which gases leave. Conditions that bind are an active set: the most over-saturated solid is let
// in, one of negative amount goes out, until none is left of either kind. As the problem is convex, whatever set is
// found this way is the only one. Where the set does not settle, every condition becomes a steep exponential of its own
// (a solid is then a species that grows fast once saturated): that problem has no set to find, and shows which one stands.
import { newton } from "./newton";
import { compile, isFixed, pivot, preferAbundant, saturation, type Tableau, toComponents } from "./tableau";

/** How well a set is solved before it is judged: mass balance, ln(Q/K) that lets a solid in, share that puts one out. */
interface Judgement {
  readonly tolerance: number;
  readonly over: number;
  readonly gone: number;
}

const ROUGH: Judgement = { tolerance: 0.2, over: 0.1, gone: -0.02 };
const FINE: Judgement = { tolerance: 1e-12, over: 1e-10, gone: -1e-14 };

/** How a set of conditions ended. */
export type Outcome = "solved" | "stuck" | "over-determined";

/** Amount of the condition that occupies a column, mol/kg: what the species leave of its total. */
export function amountAt(t: Tableau, column: number): number {
  const { n, m } = t.system;
  let sum = t.totals[column]!;
  for (let i = 0; i < m; i += 1) {
    const entry = t.a[i * n + column]!;
    if (entry !== 0) sum -= entry * t.c[i]!;
  }
  return sum;
}

/** The same as a share of all that was added up for it. */
function shareAt(t: Tableau, column: number): number {
  const { n, m } = t.system;
  let sum = t.totals[column]!;
  let all = Math.abs(sum);
  for (let i = 0; i < m; i += 1) {
    const part = t.a[i * n + column]! * t.c[i]!;
    sum -= part;
    all += Math.abs(part);
  }
  return all === 0 ? 0 : sum / all;
}

/**
 * The column a condition takes: that of the reactant which runs out first, as the solid will leave little of it.
 *
 * @returns -1 when the condition depends on those that bind already
 */
function placeFor(t: Tableau, row: number): number {
  const { n } = t.system;
  let scarce = Infinity;
  let column = -1;
  let largest = 1e-9;
  let other = -1;
  for (let k = 0; k < n; k += 1) {
    if (isFixed(t, k)) continue;
    const entry = t.a[row * n + k]!;
    const supply = t.c[t.basis[k]!]! / entry;
    if (entry > 1e-9 && supply < scarce) {
      scarce = supply;
      column = k;
    }
    if (Math.abs(entry) > largest) {
      largest = Math.abs(entry);
      other = k;
    }
  }
  return column >= 0 ? column : other;
}

/** Of the standing solids a dependent newcomer is made of, the one used up first. */
function leaverFor(t: Tableau, row: number): number {
  const { n, m, held } = t.system;
  let least = Infinity;
  let column = -1;
  for (let k = 0; k < n; k += 1) {
    const entry = t.a[row * n + k]!;
    if (!isFixed(t, k) || held[t.basis[k]! - m] === 1 || entry < 1e-9) continue;
    const lasts = Math.max(0, amountAt(t, k)) / entry;
    if (lasts < least) {
      least = lasts;
      column = k;
    }
  }
  return column;
}

/** Let a condition bind. */
export function enter(t: Tableau, condition: number): boolean {
  const row = t.system.m + condition;
  let column = placeFor(t, row);
  if (column < 0) column = leaverFor(t, row);
  if (column < 0) return false;
  pivot(t, row, column);
  return true;
}

/** Let the condition in a column go: the most abundant species that can takes its place. */
function leave(t: Tableau, column: number): void {
  const { n, m } = t.system;
  let most = -1;
  let row = -1;
  for (let i = 0; i < m; i += 1) {
    const entry = Math.abs(t.a[i * n + column]!);
    if (entry > 1e-9 && t.column[i]! < 0 && t.c[i]! > most) {
      most = t.c[i]!;
      row = i;
    }
  }
  pivot(t, row, column);
}

/** The standing solid of most negative amount, as a column; -1 for none. */
function vanished(t: Tableau, gone: number): number {
  const { n, m, held } = t.system;
  let least = gone;
  let column = -1;
  for (let k = 0; k < n; k += 1) {
    if (!isFixed(t, k) || held[t.basis[k]! - m] === 1) continue;
    const share = shareAt(t, k);
    if (share < least) {
      least = share;
      column = k;
    }
  }
  return column;
}

/** The condition passed by most; -1 for none. */
function overSaturated(t: Tableau, over: number): number {
  const { m, s, open } = t.system;
  let highest = over;
  let condition = -1;
  for (let j = 0; j < s; j += 1) {
    if (open[j] === 0 || t.column[m + j]! >= 0) continue;
    const excess = saturation(t, j);
    if (excess > highest) {
      highest = excess;
      condition = j;
    }
  }
  return condition;
}

/** Let everything that is held bind. */
function hold(t: Tableau): boolean {
  const { m, s, held } = t.system;
  for (let j = 0; j < s; j += 1) if (held[j] === 1 && t.column[m + j]! < 0 && !enter(t, j)) return false;
  return true;
}

/** Rounds of the active set from wherever the tableau stands; `near` an answer the first is judged finely at once. */
export function settle(t: Tableau, coupled: boolean, near = false): Outcome {
  const most = 20 + 3 * t.system.s;
  let judgement = near || t.system.s === 0 ? FINE : ROUGH;
  if (!hold(t)) return "over-determined";
  compile(t);
  for (let round = 0; round < most; round += 1) {
    t.rounds += 1;
    if (!newton(t, judgement.tolerance, coupled)) return "stuck";
    const column = vanished(t, judgement.gone);
    const newcomer = column >= 0 ? -1 : overSaturated(t, judgement.over);
    if (column >= 0) leave(t, column);
    else if (newcomer >= 0) {
      if (!enter(t, newcomer)) return "over-determined";
    } else if (judgement === FINE) return "solved";
    judgement = column >= 0 || newcomer >= 0 ? ROUGH : FINE;
    if (judgement === ROUGH || preferAbundant(t)) compile(t);
  }
  return "stuck";
}

/** Steepness of the exponentials that stand for solids, one run after the other. */
const STEEPNESS = [1, 4, 16, 64, 256, 1024];
/** A condition of the smooth problem stands if it has taken up this much, mol/kg. */
const STANDS = 1e-13;

/**
 * The smooth problem: each condition adds the exponential of its over-saturation, times its steepness, to the function
 * that is minimised. Leaves the tableau with the conditions in that stand.
 */
export function settleSmoothly(t: Tableau, coupled: boolean): Outcome {
  const { m, s } = t.system;
  for (const steepness of STEEPNESS) {
    toComponents(t);
    if (!hold(t)) return "over-determined";
    t.rows = m + s;
    t.steep.fill(steepness, m);
    compile(t);
    if (!newton(t, 1e-6, coupled)) break;
  }
  const standing: number[] = [];
  for (let j = 0; j < s; j += 1) if (t.c[m + j]! > STANDS) standing.push(j);
  standing.sort((a, b) => t.c[m + b]! - t.c[m + a]!);
  toComponents(t);
  for (const j of standing) if (t.column[m + j]! < 0 && placeFor(t, m + j) >= 0) enter(t, j);
  return settle(t, coupled);
}

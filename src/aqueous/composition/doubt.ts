// Which solids the doubt of the constants leaves open, and how the constants are moved to see it.

import { AqueousError } from "../error";
import type { Constant } from "../mixture/constant";
import type { Solved, Start } from "../mixture/mixture";
import type { Model } from "../mixture/model";
import { HYDRON } from "../mixture/notation";
import type { Read } from "../mixture/request";
import { debyeHueckelSlope } from "../solve/davies";
import { gradientOf } from "../solve/sensitivity";
import { activityDoubt } from "./figures";

/** How many constants are moved to see whether the solids stay the same. */
const MOVED = 3;

/** Constants moved within their standard uncertainty: one by all of it, or several that together do as much. */
export type Move = readonly (readonly [constant: Constant, by: number])[];

/** What the doubt of the constants leaves open. */
interface Doubt {
  /** Conditions that may or may not stand. */
  readonly open: ReadonlySet<number>;
  /** A move for each other set of solids. */
  readonly others: readonly Move[];
}

export const SURE: Doubt = { open: new Set(), others: [] };

/** Shifts smaller than this share of the largest are not named. */
const NAMED = 0.3;

/** How constants were taken in an answer that is not the likeliest. */
export function takenAt(move: Move): string {
  const largest = Math.max(...move.map(([, by]) => Math.abs(by)));
  const named = move
    .filter(([, by]) => Math.abs(by) >= NAMED * largest)
    .sort(([, a], [, b]) => Math.abs(b) - Math.abs(a))
    .map(([{ symbol }, by]) => `${symbol} ${Number(Math.abs(by).toPrecision(2))} ${by > 0 ? "higher" : "lower"}`);
  return `within the standard uncertainty: ${named.join(", ")}`;
}

/** Do something with the constants of a model moved. */
export function withMoved<T>({ equilibrium: { system }, uses }: Model, move: Move, act: () => T): T {
  const kept = system.lnK.slice();
  for (const [constant, by] of move)
    for (const [row, count] of uses.get(constant)!) system.lnK[row]! += by * Math.LN10 * count;
  try {
    return act();
  } finally {
    system.lnK.set(kept);
  }
}

/** Put the held pH into the model. */
export function withHeldPH({ model, pH }: Read): Model {
  if (pH !== undefined) {
    const { lnK, m } = model.equilibrium.system;
    lnK[m + model.heldPH] = -pH.toNumber() * Math.LN10;
  }
  return model;
}

/** The move of all constants that most likely takes a solid away or brings it; undefined where one standard uncertainty does not. */
function moveFor({ model, solution }: Solved, j: number): Move | undefined {
  const { expression } = model.conditions[j]!;
  const amount = solution.amount[j]!;
  const margin = amount > 0 ? amount : solution.saturation[j]!;
  const gradient = gradientOf(
    solution,
    amount > 0
      ? { amount: [[j, 1]] }
      : {
          lnActivity: [...expression.of].map(([key, count]) => [model.components.indexOf(key), count] as const),
          lnK: [[model.species.length + j, -1]],
        },
  );
  const slopes: [Constant, number][] = [];
  let variance = 0;
  for (const [constant, uses] of model.uses) {
    let slope = 0;
    for (const [row, count] of uses) slope += gradient.lnK[row]! * count * Math.LN10;
    if (slope === 0 || constant.standardUncertainty === 0) continue;
    variance += (slope * constant.standardUncertainty) ** 2;
    slopes.push([constant, slope]);
  }
  const sigma = Math.sqrt(variance);
  if (!(Math.abs(margin) < sigma)) return undefined;
  // the likeliest way to lose or gain one standard uncertainty of the figure
  const way = amount > 0 ? -1 : 1;
  return slopes.map(
    ([constant, slope]) => [constant, (way * slope * constant.standardUncertainty ** 2) / sigma] as const,
  );
}

/** Standard uncertainty of the sum of some solids, mol/kg: of all constants and of the activity model, each by itself. */
export function doubtOfSolids({ model, solution }: Start, conditions: readonly number[]): number {
  const gradient = gradientOf(solution, { amount: conditions.map((j) => [j, 1] as const) });
  let variance = (Math.LN10 * gradient.activity * activityDoubt(solution.ionicStrength)) ** 2;
  for (const [{ standardUncertainty }, uses] of model.uses) {
    let slope = 0;
    for (const [row, count] of uses) slope += gradient.lnK[row]! * count;
    variance += (Math.LN10 * slope * standardUncertainty) ** 2;
  }
  return Math.sqrt(variance);
}

/** Farther from saturation than this, as ln(Q/K), no solid is asked about. */
const FAR = -7;

/**
 * What the constants leave open: solved again with the constant of each standing solid, and with those that carry most of the
 * doubt of the pH, moved by their standard uncertainties either way; and with all together moved as most likely takes away
 * each solid that stands and brings each one near saturation.
 */
export function openOnes(read: Read, solved: Solved): Doubt {
  const { model, solution, totals } = solved;
  const { equilibrium } = withHeldPH(read);
  const { system, tableau } = equilibrium;
  const stands = (j: number): boolean => tableau.column[system.m + j]! >= 0;
  const isSolid = (j: number): boolean => model.conditions[j]!.kind === "solid";
  const before: number[] = [];
  for (let j = 0; j < system.s; j += 1) if (solution.amount[j]! > 0) before.push(j);
  const gradient = gradientOf(solution, { lnActivity: [[model.components.indexOf(HYDRON), -1]] });
  const weight = (constant: Constant): number => {
    let slope = 0;
    for (const [row, count] of model.uses.get(constant)!) slope += gradient.lnK[row]! * count;
    return Math.abs(slope) * constant.standardUncertainty;
  };
  const single = new Set<Constant>();
  for (const j of before) {
    const own = model.conditions[j]!.phase?.shares[0]?.[0];
    if (own !== undefined) single.add(own);
  }
  const ranked = [...model.uses.keys()].map((constant) => ({ constant, weight: weight(constant) }));
  ranked.sort((a, b) => b.weight - a.weight);
  for (const { constant } of ranked.slice(0, MOVED)) single.add(constant);
  const moves: Move[] = [];
  for (const constant of single) {
    const u = constant.standardUncertainty;
    if (u !== 0) moves.push([[constant, u]], [[constant, -u]]);
  }
  for (let j = 0; j < system.s; j += 1) {
    if (!isSolid(j) || system.open[j] === 0) continue;
    if (!(solution.amount[j]! > 0 || solution.saturation[j]! > FAR)) continue;
    const move = moveFor(solved, j);
    if (move !== undefined) moves.push(move);
  }
  const open = new Set<number>();
  const others = new Map<string, Move>();
  const slope = read.ideal ? 0 : debyeHueckelSlope(model.celsius);
  const same = before.filter(isSolid).join();
  for (const move of moves) {
    try {
      withMoved(model, move, () => equilibrium.solve(totals, slope));
    } catch (error) {
      // constants moved so far that the mixture has no answer tell nothing of the solids
      if (!(error instanceof AqueousError)) throw error;
      continue;
    }
    const now: number[] = [];
    for (let j = 0; j < system.s; j += 1) {
      if (stands(j)) now.push(j);
      if (stands(j) !== before.includes(j)) open.add(j);
    }
    const set = now.filter(isSolid).join();
    if (set !== same && !others.has(set)) others.set(set, move);
  }
  return { open, others: [...others.values()] };
}

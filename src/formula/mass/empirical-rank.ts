// Which whole numbers a set of ratios is: every candidate with its residual, and the order in which the figures speak for
// them. Printed digits decide where they can, a rough analysis by the usual limits of teaching laboratories where not.

import type { Quantity } from "../../quantity";
import type { Formula } from "../formula";
import { molarMass } from "./molar-mass";
import type { MolarMassOptions } from "./options";

/**
 * How far a multiplied ratio may lie from a whole number: 2 % of it, at least 0.04 and at most 0.1 (common practice in
 * teaching laboratories, no source), or two standard uncertainties where the figures carry one.
 */
function allowance(count: number, uncertainty: number): number {
  return Math.max(Math.min(0.1, Math.max(0.04, 0.02 * count)), 2 * uncertainty);
}

/** One constituent of what was found. */
export interface Constituent {
  readonly name: string;
  readonly formula: Formula;
  readonly given: Quantity;
  readonly amount: Quantity;
  /** Share of the whole in per cent. */
  readonly share: number;
  /** How far that share may lie from the true one: half of the last printed digit, or two standard uncertainties. */
  readonly room: number;
}

/** Counts with how well they fit what was found. */
export interface Scored {
  readonly multiplier: number;
  readonly counts: readonly number[];
  readonly deviation: number;
  /** Largest deviation in units of what is allowed a rough analysis: 1 or less is accepted. */
  readonly strain: number;
  /** Largest difference of the shares, in per cent of the whole. */
  readonly residual: number;
  /** The same in units of what the printed digits leave open: 1 or less is allowed by them. */
  readonly misfit: number;
  readonly atoms: number;
  /** Formulas up to this multiplier that would have the printed digits of any figures by chance; few mean that it is none. */
  readonly chance: number;
}

/** Combinations of neighbouring whole numbers that are tried for one multiplier. */
const MOST_NEIGHBOURS = 256;

/** Whole numbers that each ratio may be read as, given the room of its share and of the smallest one. */
export function neighbours(
  ratios: readonly number[],
  parts: readonly Constituent[],
  k: number,
  smallest: number,
): number[][] {
  const loose = (i: number): number => parts[i]!.room / parts[i]!.share;
  const choices = ratios.map((ratio, i) => {
    if (i === smallest) return [k];
    const middle = Math.max(1, Math.round(ratio * k));
    const width = ratio * k * (loose(i) + loose(smallest));
    const around = [middle, middle - 1, middle + 1];
    return around.filter((n) => n === middle || (n > 0 && Math.abs(n - ratio * k) <= width));
  });
  let all: number[][] = [[]];
  for (const choice of choices) {
    const narrow = all.length * choice.length > MOST_NEIGHBOURS;
    all = all.flatMap((counts) => (narrow ? choice.slice(0, 1) : choice).map((n) => [...counts, n]));
  }
  return all;
}

/** What the fit of any counts to the found shares is. */
export function scorer(
  parts: readonly Constituent[],
  atomicWeights: MolarMassOptions | undefined,
  ratios: readonly number[],
  smallest: number,
): (counts: readonly number[]) => Scored {
  const weights = parts.map(({ formula }) => molarMass(formula, atomicWeights).toNumber());
  // Relative uncertainty of what was given; that of the atomic weights is far smaller than any allowance.
  const given = parts.map((part) => {
    const u = part.given.standardUncertainty;
    return u === undefined ? 0 : u.div(part.given.value).toNumber();
  });
  const relative = given.map((u) => Math.hypot(u, given[smallest]!));
  const byChance = chances(ratios, parts, smallest);
  return (counts: readonly number[]): Scored => {
    const multiplier = counts[smallest]!;
    const whole = counts.reduce((sum, n, i) => sum + n * weights[i]!, 0);
    let [deviation, strain, residual, misfit] = [0, 0, 0, 0];
    counts.forEach((n, i) => {
      const exact = ratios[i]! * multiplier;
      deviation = Math.max(deviation, Math.abs(exact - n));
      strain = Math.max(strain, Math.abs(exact - n) / allowance(n, exact * relative[i]!));
      const off = Math.abs(parts[i]!.share - (100 * n * weights[i]!) / whole);
      residual = Math.max(residual, off);
      misfit = Math.max(misfit, off / parts[i]!.room);
    });
    const atoms = counts.reduce((a, b) => a + b);
    return { multiplier, counts, deviation, strain, residual, misfit, atoms, chance: byChance(multiplier) };
  };
}

/**
 * How many formulas up to a multiplier have given digits by chance: a multiplied ratio lies within d of a whole number for a
 * part 2 d of all ratios.
 */
function chances(ratios: readonly number[], parts: readonly Constituent[], smallest: number): (k: number) => number {
  const loose = parts.map(({ room, share }) => room / share);
  const at = (k: number): number =>
    ratios.reduce(
      (p, ratio, i) => (i === smallest ? p : p * Math.min(1, 2 * k * ratio * (loose[i]! + loose[smallest]!))),
      1,
    );
  return (k) => Array.from({ length: k }, (_, i) => at(i + 1)).reduce((a, b) => a + b, 0);
}

/** A found analysis agrees with a formula within this, in per cent of the whole (journals ask for it; from memory). */
const ANALYSIS = 0.4;

/** The simplest first, counted by the best formula of its multiplier, and of one multiplier the better one. */
function bySimplicity(all: readonly Scored[]): (a: Scored, b: Scored) => number {
  const best = new Map<number, Scored>();
  for (const one of all) {
    const before = best.get(one.multiplier);
    if (before === undefined || one.residual < before.residual) best.set(one.multiplier, one);
  }
  const atoms = ({ multiplier }: Scored): number => best.get(multiplier)!.atoms;
  return (a, b) => atoms(a) - atoms(b) || a.residual - b.residual;
}

/** Printed digits that one formula in ten compositions would have by chance prove none. */
const MOST_BY_CHANCE = 0.1;
/** The scarcest constituent counted once or twice: so simple that it needs no proof. */
const SIMPLE = 2;
export const proves = ({ multiplier, chance }: Scored): boolean => multiplier <= SIMPLE || chance <= MOST_BY_CHANCE;

/** A rough reading with so many times fewer atoms is taken before one that has the printed digits, perhaps by chance. */
const MUCH_SIMPLER = 3;

/**
 * Formulas in the order the figures speak for them: those the printed digits allow, the simplest first; then what a rough
 * analysis allows, the simplest within 0.4 % of the whole first; then the rest by their misfit. Of measured figures some
 * large formula has the digits by chance: a rough reading with a third of its atoms goes before it.
 */
export function ranked(all: readonly Scored[]): Scored[] {
  const rank = (one: Scored): number => {
    const { misfit, strain, residual } = one;
    if (misfit <= 1 && (strain <= 1 || proves(one))) return 0;
    if (strain > 1) return misfit <= 1 ? 3 : 4;
    return residual <= ANALYSIS ? 1 : 2;
  };
  const simpler = bySimplicity(all);
  const sorted = [...all].sort((a, b) => rank(a) - rank(b) || (rank(a) === 4 ? a.strain - b.strain : simpler(a, b)));
  const rough = sorted.find((one) => rank(one) === 1);
  const [first] = sorted;
  if (rough === undefined || first === undefined || rough.atoms * MUCH_SIMPLER > first.atoms) return sorted;
  return [rough, ...sorted.filter((one) => one !== rough)];
}

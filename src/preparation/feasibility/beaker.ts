// The equilibrium of a mixture in plain numbers: the same model and solver as `aqueousComposition`, without the graph behind
// its figures, so that a plan can ask it every time.

import type { SolidsAllowed } from "../../aqueous";
import {
  type Brought,
  broughtBy,
  carbonDioxideOf,
  HYDRON,
  type Key,
  keptModel,
  keysOf,
  type ModelCondition,
  molesOf,
  type Network,
  network,
  OF_ANOTHER_TEMPERATURE,
  type Phase,
  type Start,
  solutionOf,
  solveMoles,
  TOO_STRONG,
  termsOf,
  WATER_MOLAR_MASS,
  waterMoles,
} from "../../aqueous/internal";
import { type Formula, parseFormula } from "../../formula";
import { attempt } from "../../foundation/error";
import { remembering } from "../../foundation/memo";
import { quantity } from "../../quantity";
import { sameCore } from "../reaction/species";

/** What goes in, mol. */
export interface Pour {
  readonly formula: Formula;
  readonly moles: number;
}

/** A solid that stands in a beaker. */
export interface Standing {
  readonly phase: Phase;
  readonly moles: number;
}

/** A beaker at equilibrium. */
export interface Beaker {
  readonly pH: number;
  readonly ionicStrength: number;
  readonly solids: readonly Standing[];
  /** Everything of a component that was put in, and what of it stays dissolved, mol. */
  readonly total: (key: Key) => number;
  readonly dissolved: (key: Key) => number;
  /** Mean number of hydrons bound to a dissolved component. */
  readonly hydrons: (key: Key) => number;
  /** What of a component carries so many hydrons or fewer, mol. */
  readonly barely: (key: Key, hydrons: number) => number;
  /** What of a component is bound to another one, mol, and the complex that has most of it; undefined for none. */
  readonly bound: (key: Key, to: Key) => { readonly moles: number; readonly formula: string } | undefined;
  /** Components that are there. */
  readonly components: readonly Key[];
  readonly conditions: readonly ModelCondition[];
  /** Solids that were left out, with the reason. */
  readonly excluded: readonly { readonly phase: Phase; readonly why: string }[];
  /** kg of water it was computed for; more than asked for where that was too strong for the model. */
  readonly water: number;
  /** ln(Q/K) of a solid that may stand. */
  readonly saturation: (phase: Phase) => number;
  /** Where another beaker of the same components may begin. */
  readonly start: Start;
}

/** How a beaker is kept. */
export interface Keeping {
  readonly carbonDioxide: "kept" | "leaves";
  readonly solids: SolidsAllowed;
  /** Added to pKsp of solids whose components fit: what a doubtful constant may be off. */
  readonly lower?: { readonly by: number; readonly which: (phase: Phase) => boolean } | undefined;
  /** A beaker that is much the same: its answer is where this one is looked for first. */
  readonly near?: Beaker | undefined;
}

type Composition = ReadonlyMap<Key, number>;

const read = /* @__PURE__ */ remembering<Brought | undefined>(500);

/** What a formula brings to water; undefined for what cannot be said. */
function bring(formula: Formula): Brought | undefined {
  return read(formula.toString(), () => {
    const outcome = attempt(() => termsOf(formula, network()));
    if (!outcome.ok) return undefined;
    const brought = (terms: Brought["ingredient"]["terms"]): Brought => {
      const ingredient = { formula: formula.toString(), amount: quantity("1 mol"), terms, litres: undefined };
      return broughtBy(ingredient as Brought["ingredient"], network());
    };
    const own = brought(outcome.value);
    const isServed = [...own.of.keys()].every((key) => key === HYDRON || network().serves(key));
    const solid = isServed ? undefined : solidAs(formula, [...own.of.keys()]);
    return solid === undefined ? own : brought([...solid.of].map(([key, count]) => [count, key] as const));
  });
}

/** The solid of the tables that a formula is, whatever ions it is written as: cryolite is of aluminium and fluoride there. */
const solidAs = (formula: Formula, keys: readonly Key[]): Phase | undefined =>
  network()
    .phasesWith(...keys)
    .find((one) => one.kind === "solid" && sameCore(parseFormula(one.formula), formula));

/** A formula in components of the network, water left out; undefined for what cannot be said. */
export const componentsOf = (formula: Formula): Composition | undefined => bring(formula)?.of;

/** Is it of the network, or would it stand in the water as a stranger? */
export function isKnown(formula: Formula): boolean {
  const of = componentsOf(formula);
  if (of === undefined) return false;
  const whole: Network = network();
  return [...of.keys()].every((key) => key === HYDRON || whole.serves(key));
}

/** How often one composition goes into another; undefined where they are not proportional. */
export function ratio(whole: Composition, part: Composition): number | undefined {
  let found: number | undefined;
  if (whole.size !== part.size || whole.size === 0) return undefined;
  for (const [key, count] of whole) {
    const other = part.get(key);
    if (other === undefined) return undefined;
    const here = count / other;
    if (found !== undefined && Math.abs(here - found) > 1e-9 * Math.abs(found)) return undefined;
    found = here;
  }
  return found !== undefined && found > 0 ? found : undefined;
}

/** Formula units of a composition that stand in a beaker. */
export function unitsIn(beaker: Beaker, of: Composition): number {
  return beaker.solids.reduce((n, { phase, moles }) => n + moles * (ratio(phase.of, of) ?? 0), 0);
}

/**
 * Does a beaker know a solid of a composition, so that it can tell whether that stands or what does in its place? Else a feed that
 * should become it stays only because nothing takes it. Of one whose figure is of another temperature it does not know.
 */
export function knowsSolid({ conditions, excluded }: Beaker, of: Composition): boolean {
  const isOf = (phase: Phase | undefined): boolean => phase !== undefined && ratio(phase.of, of) !== undefined;
  return (
    conditions.some(({ phase }) => isOf(phase)) ||
    excluded.some(({ phase, why }) => isOf(phase) && why !== OF_ANOTHER_TEMPERATURE)
  );
}

/** Constants serve from 5 to 60 °C. */
export const served = (celsius: number): number => Math.min(60, Math.max(5, celsius));

/** Strongest liquor a mixture is diluted to, mol/kg: the model ends at 3. */
const THINNED = 2.5;
/** kg of water for a mole of product, where nobody says how much there is. */
const USUAL = 1;

function build(brought: readonly Brought[], moles: readonly number[], kg: number, celsius: number, how: Keeping) {
  const { atm, held } = carbonDioxideOf(how.carbonDioxide);
  const model = keptModel(network(), keysOf(brought), celsius, { pH: false, carbonDioxide: { atm, held } }, how.solids);
  const water = quantity({ value: String(kg), unit: "kg" });
  const { system } = model.equilibrium;
  const moved: number[] = [];
  if (how.lower !== undefined)
    for (const [j, { phase }] of model.conditions.entries())
      if (phase?.kind === "solid" && how.lower.which(phase)) moved.push(system.m + j);
  // put back as they were, to the last digit: the next answer of this model must not depend on this one
  const kept = system.lnK.slice();
  for (const row of moved) system.lnK[row]! -= how.lower!.by * Math.LN10;
  try {
    const poured = waterMoles(water as Parameters<typeof waterMoles>[0], brought, moles);
    const solved = solveMoles(model, molesOf(model, brought, moles), poured, false, how.near?.start ?? false);
    const solution = solutionOf(model.equilibrium.tableau);
    const waterLeft = solved.kilograms / (poured * WATER_MOLAR_MASS);
    return { ...solved, start: { model, solution, waterLeft } };
  } finally {
    system.lnK.set(kept);
  }
}

/** Let a mixture come to equilibrium; undefined where something in it cannot be computed. */
export function settle(
  pours: readonly Pour[],
  water: number | undefined,
  celsius: number,
  how: Keeping,
): Beaker | undefined {
  const brought: Brought[] = [];
  const moles: number[] = [];
  for (const { formula, moles: n } of pours) {
    const one = bring(formula);
    if (one === undefined) return undefined;
    if (!(n > 0)) continue;
    brought.push(one);
    moles.push(n);
  }
  let kg = water ?? USUAL;
  for (let turn = 0; turn < 8; turn += 1) {
    const outcome = attempt(() => build(brought, moles, kg, served(celsius), how));
    if (!outcome.ok) {
      if (outcome.error.code !== "aqueous.too-strong" && outcome.error.code !== "aqueous.not-converged")
        return undefined;
      kg *= 3;
      continue;
    }
    const { solution } = outcome.value.start;
    if (solution.ionicStrength <= TOO_STRONG) return beakerOf(outcome.value, kg);
    kg *= Math.max(1.3, solution.ionicStrength / THINNED);
  }
  return undefined;
}

function beakerOf({ kilograms, totals, start }: ReturnType<typeof build>, water: number): Beaker {
  const { model, solution } = start;
  const { components, species, conditions } = model;
  const hydron = components.indexOf(HYDRON);
  const solids: Standing[] = [];
  for (const [j, { phase, kind }] of conditions.entries()) {
    const amount = solution.amount[j]!;
    if (kind !== "solid" || phase === undefined || !(amount > 0)) continue;
    solids.push({ phase, moles: amount * kilograms });
  }
  solids.sort((a, b) => b.moles - a.moles);
  const sumOver = (key: Key, weight: (of: Composition) => number): number => {
    let sum = 0;
    for (const [i, { expression }] of species.entries()) {
      const count = expression.of.get(key) ?? 0;
      if (count !== 0) sum += weight(expression.of) * solution.molality[i]!;
    }
    return sum * kilograms;
  };
  const dissolved = (key: Key): number => sumOver(key, (of) => of.get(key)!);
  return {
    pH: -solution.lnActivity[hydron]! / Math.LN10,
    ionicStrength: solution.ionicStrength,
    solids,
    total: (key) => (components.includes(key) ? totals[components.indexOf(key)]! * kilograms : 0),
    dissolved,
    hydrons: (key) => sumOver(key, (of) => of.get(HYDRON) ?? 0) / dissolved(key),
    barely: (key, hydrons) =>
      sumOver(key, (of) => ((of.get(HYDRON) ?? 0) / of.get(key)! <= hydrons ? of.get(key)! : 0)),
    bound: (key, to) => {
      let [moles, most, formula] = [0, 0, ""];
      for (const [i, { expression, formula: own }] of species.entries()) {
        const here = expression.of.has(to) ? (expression.of.get(key) ?? 0) * solution.molality[i]! * kilograms : 0;
        moles += here;
        if (here > most) [most, formula] = [here, own];
      }
      return most > 0 ? { moles, formula } : undefined;
    },
    components,
    conditions,
    excluded: model.excluded,
    water,
    saturation: (phase) => solution.saturation[conditions.findIndex((one) => one.phase === phase)]!,
    start,
  };
}

/** The same beaker, so many times. */
export const scaled = (beaker: Beaker, by: number): Beaker => ({
  ...beaker,
  solids: beaker.solids.map(({ phase, moles }) => ({ phase, moles: moles * by })),
  water: beaker.water * by,
  total: (key) => beaker.total(key) * by,
  dissolved: (key) => beaker.dissolved(key) * by,
  barely: (key, hydrons) => beaker.barely(key, hydrons) * by,
  bound: (key, to) => {
    const found = beaker.bound(key, to);
    return found === undefined ? undefined : { ...found, moles: found.moles * by };
  },
});

/** A solid's formula as the formula layer prints it. */
export const printed = (phase: Phase): string => parseFormula(phase.formula).toUnicode();

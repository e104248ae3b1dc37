// A mixture as the solver sees it: water, amounts of components, the model they need. Solved with the water that the
// reaction makes or takes counted: totals are per kilogram of the water that is left.
import type { Quantity } from "../../quantity";
import { AqueousError } from "../error";
import { debyeHueckelSlope } from "../solve/davies";
import type { Neighbour } from "../solve/equilibrium";
import { type Solution, solutionOf } from "../solve/sensitivity";
import type { Ingredient } from "./material";
import { type Model, waterIn } from "./model";
import type { Network } from "./network";
import { chargeOf, HYDRON, type Key } from "./notation";

/** kg in a mole of water. */
export const WATER_MOLAR_MASS = 0.01801528;
/** Beyond this the activity model says nothing, mol/kg. */
export const TOO_STRONG = 3;

/** What one mole of an ingredient brings. */
export interface Brought {
  readonly ingredient: Ingredient;
  readonly of: ReadonlyMap<Key, number>;
  /** Waters set free, crystal water and that of oxides (as negative numbers) included. */
  readonly water: number;
  readonly charge: number;
}

/** What one mole of an ingredient brings in components and water. */
export function broughtBy(ingredient: Ingredient, network: Network): Brought {
  const { of } = network.sum(ingredient.terms);
  const { formula } = ingredient;
  return { ingredient, of, water: waterIn(formula, of, network), charge: chargeOf(formula) };
}

/** A solved mixture. */
export interface Solved {
  readonly model: Model;
  readonly solution: Solution;
  /** kg of water at equilibrium. */
  readonly kilograms: number;
  /** mol/kg of each component of the model. */
  readonly totals: Float64Array;
}

/** Moles of each component of a model in some ingredients. */
export function molesOf(model: Model, brought: readonly Brought[], scale?: readonly number[]): Float64Array {
  const moles = new Float64Array(model.components.length);
  for (const [i, { ingredient, of }] of brought.entries()) {
    const amount = scale === undefined ? ingredient.amount.toNumber("mol") : scale[i]!;
    for (const [key, count] of of) moles[model.components.indexOf(key)]! += amount * count;
  }
  return moles;
}

/** A mixture to begin from. */
export interface Start {
  readonly model: Model;
  readonly solution: Solution;
  /** Share of the water that is left by what the reaction makes and takes. */
  readonly waterLeft: number;
}

/** The start as a model of the same components sees it; nothing to begin from where they differ. */
function neighbourOf({ components, conditions }: Model, { model, solution }: Start): Neighbour | false {
  if (components.length !== model.components.length || components.some((key, j) => key !== model.components[j]))
    return false;
  const binding = new Set(model.conditions.filter((_, j) => solution.amount[j] !== 0).map(({ phase }) => phase));
  return {
    lnActivity: solution.lnActivity,
    ionicStrength: solution.ionicStrength,
    binds: (j) => conditions[j]!.phase !== undefined && binding.has(conditions[j]!.phase),
  };
}

/**
 * Solve for moles of components in some water.
 *
 * @param waterMoles - all water, crystal water of the ingredients included, mol
 * @param start - begin from the last answer of the model, or from another mixture of the same components
 */
export function solveMoles(
  model: Model,
  moles: Float64Array,
  waterMoles: number,
  ideal: boolean,
  start: boolean | Start = false,
): { readonly kilograms: number; readonly totals: Float64Array } {
  const { equilibrium, species, conditions } = model;
  const slope = ideal ? 0 : debyeHueckelSlope(model.celsius);
  const totals = new Float64Array(moles.length);
  const near = typeof start === "object" ? neighbourOf(model, start) : start;
  let kilograms = waterMoles * WATER_MOLAR_MASS * (typeof start === "object" ? start.waterLeft : 1);
  // the water before, and what was left of it: how fast one follows the other
  let [before, left] = [0, 0];
  for (let turn = 0; ; turn += 1) {
    for (let j = 0; j < totals.length; j += 1) totals[j] = moles[j]! / kilograms;
    equilibrium.solve(totals, slope, turn > 0 || near);
    const { tableau } = equilibrium;
    // water bound in species and solids beyond that of their components, mol per kg
    let bound = 0;
    for (let i = 0; i < species.length; i += 1) bound += species[i]!.water * tableau.c[i]!;
    for (let k = 0; k < tableau.basis.length; k += 1) {
      const row = tableau.basis[k]! - species.length;
      if (row >= 0 && conditions[row]!.water !== 0) bound += conditions[row]!.water * equilibrium.amountOf(k);
    }
    const next = (waterMoles - bound * kilograms) * WATER_MOLAR_MASS;
    if (!(next > 0)) {
      throw new AqueousError("aqueous.too-strong", "the reaction consumes all the water", {
        hint: "give more water",
      });
    }
    const change = Math.abs(next / kilograms - 1);
    if (change < 1e-12 || turn > 30) return { kilograms, totals };
    const rate = turn === 0 ? 0 : (next - left) / (kilograms - before);
    [before, left] = [kilograms, next];
    kilograms += (next - kilograms) / (1 - (Math.abs(rate) < 0.5 ? rate : 0));
  }
}

/** Refuse what the activity model cannot serve. */
export function refuseTooStrong(ionicStrength: number): void {
  if (ionicStrength <= TOO_STRONG) return;
  throw new AqueousError(
    "aqueous.too-strong",
    `an ionic strength of ${ionicStrength.toPrecision(2)} mol/kg is beyond the activity model, which ends at ${TOO_STRONG}`,
    {
      hint: "take more water, or ask the solubility curves",
      details: { ionicStrength, limit: TOO_STRONG },
    },
  );
}

/** Water of a mixture in moles: what was poured in, and what the ingredients bring. */
export function waterMoles(water: Quantity<"mass">, brought: readonly Brought[], scale?: readonly number[]): number {
  let moles = water.toNumber("kg") / WATER_MOLAR_MASS;
  for (const [i, one] of brought.entries()) {
    const amount = scale === undefined ? one.ingredient.amount.toNumber("mol") : scale[i]!;
    moles += amount * one.water;
  }
  return moles;
}

/** All components that ingredients bring. */
export function keysOf(brought: readonly Brought[]): Set<Key> {
  const keys = new Set<Key>([HYDRON]);
  for (const { of } of brought) for (const key of of.keys()) keys.add(key);
  return keys;
}

/** Solve and keep the answer. */
export function solveMixture(
  model: Model,
  brought: readonly Brought[],
  water: Quantity<"mass">,
  ideal: boolean,
): Solved {
  const { kilograms, totals } = solveMoles(model, molesOf(model, brought), waterMoles(water, brought), ideal);
  const solution = solutionOf(model.equilibrium.tableau);
  if (!ideal) refuseTooStrong(solution.ionicStrength);
  return { model, solution, kilograms, totals };
}

// Something added bit by bit to a mixture: the common ground of doses, titrations and redissolving.

import type { TemperatureLike } from "../../amount";
import { parseFormula } from "../../formula";
import { type Facts, lookingIn } from "../../foundation/facts";
import { type Quantity, type QuantityLike, quantity } from "../../quantity";
import { guard } from "../argument";
import { type FigureMaker, figureMaker } from "../composition/figures";
import { AqueousError } from "../error";
import { type GivenConstants, networkWith } from "../mixture/given";
import { type Dissolved, ingredientOf, termsOf } from "../mixture/material";
import {
  type Brought,
  broughtBy,
  keysOf,
  molesOf,
  refuseTooStrong,
  type Solved,
  solveMoles,
  TOO_STRONG,
  WATER_MOLAR_MASS,
  waterMoles,
} from "../mixture/mixture";
import type { Model } from "../mixture/model";
import type { Network } from "../mixture/network";
import { HYDRON } from "../mixture/notation";
import {
  type CarbonDioxide,
  carbonDioxideOf,
  celsiusOf,
  keptModel,
  type SolidsAllowed,
  waterOf,
} from "../mixture/request";
import { crossing } from "../solve/root";
import { type Figure, gradientOf, solutionOf } from "../solve/sensitivity";
import { type Reagent, readReagent } from "./reagent";

/** Conditions that every question of an addition may state. */
export interface AdditionOptions {
  /** What carbon dioxide may do: stay, leave, or come in from the air. */
  readonly carbonDioxide?: CarbonDioxide;
  /** Which solids may form. */
  readonly solids?: SolidsAllowed;
  /** Constants of your own, in place of those of the tables. */
  readonly constants?: GivenConstants;
  /** Facts of the caller's own, whose constants come before those of the tables; `constants` come before both. */
  readonly facts?: Facts | undefined;
  /** Model of the activity coefficients; `"ideal"` takes them all as 1. */
  readonly activity?: "Davies" | "ideal";
  /** 5 to 60 °C; 25 °C unless given. */
  readonly temperature?: TemperatureLike;
}

export const ADDITION_FIELDS = {
  carbonDioxide: true,
  solids: true,
  constants: true,
  facts: true,
  activity: true,
  temperature: true,
} as const;

/** A mixture with a reagent that can be added in any amount. */
export interface Addition {
  readonly network: Network;
  readonly model: Model;
  readonly base: readonly Brought[];
  readonly reagent: Brought;
  readonly water: Quantity<"mass">;
  readonly concentration: Quantity | undefined;
  readonly ideal: boolean;
  readonly baseMoles: Float64Array;
  readonly reagentMoles: Float64Array;
  readonly baseWater: number;
  /** Moles of water that come with one mole of the reagent. */
  readonly reagentWater: number;
}

/** Read a base mixture and a reagent. */
export function readAddition(
  base: { readonly water: QuantityLike; readonly dissolved: readonly Dissolved[] },
  reagent: Reagent | string,
  options: AdditionOptions,
  place: string,
): Addition {
  const network = lookingIn(options.facts, guard, () => networkWith(options.constants));
  const { mass, volume } = waterOf(base.water, "water");
  guard.list(base.dissolved, "dissolved");
  const brought = base.dissolved.map((one, i) =>
    broughtBy(ingredientOf(one, network, volume, `dissolved[${i}]`), network),
  );
  let water = mass;
  for (const { ingredient } of brought)
    if (ingredient.litres !== undefined)
      water = water.plus(ingredient.litres.times(quantity("1 kg/L"))).to("kg") as Quantity<"mass">;
  const given = readReagent(reagent, place);
  const { concentration } = given;
  const one = broughtBy(
    {
      formula: given.formula,
      amount: quantity("1 mol") as Quantity<"amount of substance">,
      terms: termsOf(parseFormula(given.formula), network),
      litres: undefined,
    },
    network,
  );
  const celsius = celsiusOf(options.temperature);
  const { atm, held } = carbonDioxideOf(options.carbonDioxide);
  const model = keptModel(
    network,
    keysOf([...brought, one]),
    celsius,
    { pH: false, carbonDioxide: { atm, held } },
    options.solids,
  );
  const perMole = concentration === undefined ? 0 : 1 / concentration.toNumber("mol/L") / WATER_MOLAR_MASS;
  return {
    network,
    model,
    base: brought,
    reagent: one,
    water,
    concentration,
    ideal: options.activity === "ideal",
    baseMoles: molesOf(model, brought),
    reagentMoles: molesOf(model, [one]),
    baseWater: waterMoles(water, brought),
    // water of crystallization comes on top of that of a solution only for what is added as it is
    reagentWater: concentration === undefined ? one.water : perMole,
  };
}

const moles = new WeakMap<Addition, Float64Array>();

/** Solve with some moles of the reagent added; the answer stands in the model's tableau. */
export function solveAdded(
  addition: Addition,
  added: number,
  warm: boolean,
): { kilograms: number; totals: Float64Array } {
  const { model, baseMoles, reagentMoles, baseWater, reagentWater, ideal } = addition;
  let sum = moles.get(addition);
  if (sum === undefined) {
    sum = new Float64Array(baseMoles.length);
    moles.set(addition, sum);
  }
  for (let j = 0; j < sum.length; j += 1) sum[j] = baseMoles[j]! + added * reagentMoles[j]!;
  return solveMoles(model, sum, baseWater + added * reagentWater, ideal, warm);
}

/** pH with some moles of the reagent added. */
export function pHAdded(addition: Addition, added: number, warm = true): number {
  solveAdded(addition, added, warm);
  return pHNow(addition.model);
}

/** pH of the answer a model holds. */
export const pHNow = (model: Model): number =>
  -model.equilibrium.lnActivityOf(model.components.indexOf(HYDRON)) / Math.LN10;

/** The mixture with some of the reagent, solved and ready for figures. */
export function solvedWith(
  addition: Addition,
  added: number,
): {
  readonly solved: Solved;
  /** Of what the mixture is with that much of the reagent: the reagent is one of its inputs. */
  readonly maker: FigureMaker;
  /** Of how much of the reagent it takes: an answer is no input of itself. */
  readonly doseMaker: FigureMaker;
  readonly slopeOf: (figure: Figure) => number;
} {
  const { kilograms, totals } = solveAdded(addition, added, false);
  const { model, reagent, concentration, water } = addition;
  const solution = solutionOf(model.equilibrium.tableau);
  refuseTooStrong(solution.ionicStrength);
  const solved: Solved = { model, solution, kilograms, totals };
  // the strength of the reagent is an input, the number of litres is not
  const amount =
    concentration === undefined
      ? quantity({ value: added.toPrecision(12), unit: "mol" })
      : concentration
          .times(quantity({ value: (added / concentration.toNumber("mol/L")).toPrecision(12), unit: "L" }))
          .to("mol");
  const withAmount: Brought = {
    ...reagent,
    ingredient: { ...reagent.ingredient, amount: amount as Quantity<"amount of substance"> },
  };
  const maker = figureMaker(solved, [...addition.base, withAmount], water, undefined, addition.ideal);
  const doseMaker = figureMaker(solved, addition.base, water, undefined, addition.ideal);
  const slopeOf = (figure: Figure): number => {
    const gradient = gradientOf(solution, figure);
    let sum = 0;
    for (let j = 0; j < totals.length; j += 1) {
      const change = addition.reagentMoles[j]! - totals[j]! * addition.reagentWater * WATER_MOLAR_MASS;
      sum += (gradient.totals[j]! * change) / kilograms;
    }
    return sum;
  };
  return { solved, maker, doseMaker, slopeOf };
}

export const pHFigure = (model: Model): Figure => ({ lnActivity: [[model.components.indexOf(HYDRON), -1]] });

/**
 * Moles of reagent that bring a mixture to a pH.
 *
 * @throws {AqueousError} `aqueous.out-of-reach` if no amount does
 */
export function molesToPH(addition: Addition, target: number): number {
  const start = pHAdded(addition, 0, false) - target;
  if (Math.abs(start) < 1e-12) return 0;
  let low = 0;
  let step = 1e-6 * addition.baseWater * 0.018;
  let before = start;
  for (let turn = 0; turn < 80; turn += 1) {
    const high = low + step;
    let now: number;
    try {
      now = pHAdded(addition, high) - target;
    } catch (error) {
      throw outOfReach(target, addition, error);
    }
    if (now > 0 !== start > 0) return crossing((x) => pHAdded(addition, x) - target, [low, high]);
    const away = Math.abs(now) > Math.abs(before) + 1e-9;
    const { ionicStrength } = addition.model.equilibrium.tableau;
    if ((away && turn > 2) || ionicStrength > 3 * TOO_STRONG) break;
    before = now;
    low = high;
    step *= 1.7;
  }
  throw outOfReach(target, addition);
}

const outOfReach = (target: number, { reagent }: Addition, cause?: unknown): AqueousError =>
  new AqueousError("aqueous.out-of-reach", `${reagent.ingredient.formula} does not bring it to pH ${target}`, {
    hint: "an acid lowers the pH and a base raises it; a buffer's limit is the pH of the reagent itself",
    details: { target, ...(cause instanceof AqueousError ? { because: cause.code } : {}) },
  });

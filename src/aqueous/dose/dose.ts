// How much acid or base: to a pH, or until a solid has gone into solution again.

import { type AmountLike, massOf } from "../../amount";
import { molarMass } from "../../formula";
import { bisected } from "../../foundation/bisect";
import { readable } from "../../foundation/readable";
import type { MassText, NumberLike, Quantity, QuantityLike, VolumeText } from "../../quantity";
import { guard, positive } from "../argument";
import { AqueousError } from "../error";
import type { Dissolved } from "../mixture/material";
import { TOO_STRONG, WATER_MOLAR_MASS } from "../mixture/mixture";
import { pHInput } from "../mixture/request";
import type { Figure } from "../solve/sensitivity";
import {
  ADDITION_FIELDS,
  type Addition,
  type AdditionOptions,
  molesToPH,
  pHFigure,
  pHNow,
  readAddition,
  solveAdded,
  solvedWith,
} from "./addition";
import { namedReagent, type Reagent } from "./reagent";

/** A solution to dose, and with what. */
export interface DoseRequest extends AdditionOptions {
  /** What is in the vessel before the dose. */
  readonly solution: {
    /** Of the solution; give it or the water. */
    readonly volume?: QuantityLike<"volume", VolumeText>;
    readonly water?: QuantityLike<"mass" | "volume", MassText | VolumeText>;
    readonly dissolved: readonly Dissolved[];
  };
  /** The pH to reach. */
  readonly to: NumberLike | QuantityLike;
  /** The reagent: a solution of some strength, a formula for the substance itself, or a good of the shop by its name. */
  readonly with: Reagent | string;
}

/** What a dose comes to. */
export interface Dose {
  /** The reagent, as read. */
  readonly formula: string;
  /** Amount of the reagent to add. */
  readonly amount: Quantity<"amount of substance">;
  /** Of the reagent's solution; undefined for the substance itself. */
  readonly volume: Quantity<"volume"> | undefined;
  /** Of the substance as it is weighed, at the usual assay of a good; undefined for a solution. */
  readonly mass: Quantity<"mass"> | undefined;
  /** Of the mixture after the dose. */
  readonly pH: Quantity<"number">;
  /** What was taken for a name of the shop. */
  readonly assumptions: readonly string[];
}

const DOSE_FIELDS = {
  solution: { volume: true, water: true, dissolved: true },
  to: true,
  with: true,
  ...ADDITION_FIELDS,
} as const;

/** Water of a solution that is given by volume or by its water. */
export function waterOfSolution(
  solution: { readonly volume?: QuantityLike; readonly water?: QuantityLike },
  place: string,
): QuantityLike {
  if ((solution.volume === undefined) === (solution.water === undefined)) {
    throw new AqueousError(
      solution.volume === undefined ? "aqueous.missing-option" : "aqueous.bad-option",
      `${place}: give its volume or its water`,
      { details: { argument: place } },
    );
  }
  return solution.volume === undefined ? solution.water! : positive(solution.volume, "volume", `${place}.volume`);
}

/** A dose as quantities: `figure` is what is brought to a value, so the amount moves against it. */
function doseOf(addition: Addition, added: number, figure: Figure, label: string): Omit<Dose, "mass" | "assumptions"> {
  const { maker, doseMaker, slopeOf } = solvedWith(addition, added);
  const slope = slopeOf(figure);
  const { formula } = addition.reagent.ingredient;
  const amount = doseMaker.make(added, "mol", figure, -1 / slope, {
    symbol: `n(${formula})`,
    label: `${formula} ${label}`,
  }) as Quantity<"amount of substance">;
  const volume =
    addition.concentration === undefined
      ? undefined
      : (amount
          .dividedBy(addition.concentration)
          .to("mL")
          .named({ symbol: "V", rule: "volume = amount / concentration" }) as Quantity<"volume">);
  return {
    formula,
    amount,
    volume,
    pH: maker.make(pHNow(addition.model), "", pHFigure(addition.model), 1 / Math.LN10, { symbol: "pH" }),
  };
}

/**
 * How much acid or base brings a solution to a pH; solids that form and gas that leaves are counted.
 *
 * @param request - the solution with its volume, the pH, and the reagent: its formula with concentration (mol/L) or another
 *   strength, or what the shop calls it, at its usual strength
 * @returns volume or mass, and amount of the reagent; `assumptions` tells what a name of the shop was taken for
 * @throws {AqueousError} `aqueous.out-of-reach` if the reagent does not lead there; else as `aqueousComposition`
 * @throws {SubstanceError} for a name that no shop knows; {@link AmountError} for a strength that cannot be read
 * @category In the beaker
 * @example
 * doseToPH({
 *   solution: { volume: "1 L", dissolved: [{ formula: "Na2CO3", concentration: "0.1 mol/L" }] },
 *   to: 8.3,
 *   with: { formula: "HCl", concentration: "1 mol/L" },
 * }).volume?.format({ decimals: 0, uncertainty: "none" }) // => "99 mL"
 * doseToPH({
 *   solution: { volume: "1 L", dissolved: [{ formula: "Na2CO3", concentration: "0.1 mol/L" }] },
 *   to: 7,
 *   with: "white vinegar",
 * }).volume?.format({ decimals: 0, uncertainty: "none" }) // => "138 mL"
 */
export function doseToPH(request: DoseRequest): Dose {
  guard.fields(request, DOSE_FIELDS, "request");
  guard.record(request.solution, "solution");
  const target = pHInput(request.to, "to").toNumber();
  const { dissolved } = request.solution;
  const water = waterOfSolution(request.solution, "solution");
  const { reagent, assay, assumptions } = namedReagent(request.with);
  const addition = readAddition({ water, dissolved }, reagent, request, "with");
  const dose = doseOf(addition, molesToPH(addition, target), scaled(pHFigure(addition.model)), `to pH ${target}`);
  const pure = dose.volume === undefined ? massOfDose(dose) : undefined;
  const mass = assay === undefined || pure === undefined ? pure : pure.dividedBy(assay).to("g");
  return readable({ ...dose, mass: mass as Quantity<"mass"> | undefined, assumptions });
}

/** Nothing to add has a mass too. */
const massOfDose = ({ amount, formula }: Pick<Dose, "amount" | "formula">): Quantity =>
  amount.isZero() ? amount.times(molarMass(formula)).to("g") : massOf(amount, formula);

/** pH itself rather than −ln a(H+). */
const scaled = (figure: Figure): Figure => ({
  lnActivity: figure.lnActivity!.map(([i, weight]) => [i, weight / Math.LN10] as const),
});

/** A solid and what shall dissolve it. */
export interface RedissolvingRequest extends AdditionOptions {
  /** Formula of the solid that is to dissolve. */
  readonly solid: string;
  /** How much of it there is, in formula units. */
  readonly amountOfSolid: AmountLike;
  /** The reagent: a formula, or a solution of some concentration. */
  readonly with: Reagent | string;
  /** Mass of the water, or volume of the solution. */
  readonly water: QuantityLike<"mass" | "volume", MassText | VolumeText>;
  /** What else is in the water. */
  readonly dissolved?: readonly Dissolved[];
}

/** How much it takes. */
export interface Redissolving {
  /** Least amount of the reagent with which no solid is left. */
  readonly needed: Quantity<"amount of substance">;
  /** Of the reagent's solution. */
  readonly volume: Quantity<"volume"> | undefined;
  /** Of the solution with that amount in it. */
  readonly pH: Quantity<"number">;
  /** The solid that goes last. */
  readonly last: string;
}

const REDISSOLVING_FIELDS = {
  solid: true,
  amountOfSolid: true,
  with: true,
  water: true,
  dissolved: true,
  ...ADDITION_FIELDS,
} as const;

/** The standing solid of the greatest amount in the answer a model holds, -1 for none. */
function standingSolid({ model }: Addition): number {
  const { tableau } = model.equilibrium;
  let [most, which] = [0, -1];
  for (let k = 0; k < tableau.basis.length; k += 1) {
    const j = tableau.basis[k]! - tableau.system.m;
    if (j < 0 || model.conditions[j]!.kind !== "solid") continue;
    const amount = model.equilibrium.amountOf(k);
    if (amount > most) [most, which] = [amount, j];
  }
  return which;
}

/** Amount of all standing solids as a share of the water. */
function solidsLeft({ model }: Addition): number {
  const { tableau } = model.equilibrium;
  let sum = 0;
  for (let k = 0; k < tableau.basis.length; k += 1) {
    const j = tableau.basis[k]! - tableau.system.m;
    if (j >= 0 && model.conditions[j]!.kind === "solid") sum += Math.max(0, model.equilibrium.amountOf(k));
  }
  return sum;
}

/**
 * How much of a reagent dissolves a solid again: excess alkali, ammonia, a complexing agent, an acid. The solid may turn
 * into another on the way; counted is the point where none is left.
 *
 * @param request - solid and its amount, water, and the reagent
 * @returns the least amount of the reagent
 * @throws {AqueousError} `aqueous.out-of-reach` if it does not dissolve below an ionic strength of 3 mol/kg and 30 mol of
 *   reagent per kilogram of water; else as `aqueousComposition`
 * @category In the beaker
 * @example
 * redissolving({ solid: "AgCl", amountOfSolid: "0.01 mol", with: "NH3", water: "1 kg" }).needed.format({ decimals: 2, uncertainty: "none" }) // => "0.19 mol"
 */
export function redissolving(request: RedissolvingRequest): Redissolving {
  guard.fields(request, REDISSOLVING_FIELDS, "request");
  guard.text(request.solid, "solid");
  const amount = positive(request.amountOfSolid, "amount of substance", "amountOfSolid");
  const addition = readAddition(
    { water: request.water, dissolved: [...(request.dissolved ?? []), { formula: request.solid, amount }] },
    namedReagent(request.with).reagent,
    request,
    "with",
  );
  const kilograms = addition.baseWater * WATER_MOLAR_MASS;
  const left = (added: number): number => {
    solveAdded(addition, added, true);
    return solidsLeft(addition);
  };
  solveAdded(addition, 0, false);
  let last = standingSolid(addition);
  if (last < 0) {
    throw new AqueousError("aqueous.out-of-reach", `${request.solid} dissolves in the water as it is`, {
      details: { solid: request.solid },
    });
  }
  let [low, high] = [0, 0];
  for (high = 1e-4 * kilograms; ; high *= 1.3) {
    if (left(high) === 0) break;
    last = standingSolid(addition);
    low = high;
    const { ionicStrength } = addition.model.equilibrium.tableau;
    if (high > 30 * kilograms || ionicStrength > TOO_STRONG) {
      throw new AqueousError("aqueous.out-of-reach", `${request.solid} does not dissolve in ${nameOf(request.with)}`, {
        details: { solid: request.solid, upTo: high, ionicStrength },
      });
    }
  }
  // bisection: the amount left is zero beyond, so that only its vanishing is a sign
  const stands = (amount: number): boolean => {
    if (left(amount) === 0) return false;
    last = standingSolid(addition);
    return true;
  };
  [low, high] = bisected(stands, [low, high], 60, 1e-10);
  const { model } = addition;
  const { expression, formula } = model.conditions[last]!;
  const figure: Figure = {
    lnActivity: [...expression.of].map(([key, count]) => [model.components.indexOf(key), count] as const),
    lnK: [[model.species.length + last, -1]],
  };
  const dose = doseOf(addition, high, figure, `to dissolve ${request.solid}`);
  return readable({ needed: dose.amount, volume: dose.volume, pH: dose.pH, last: formula });
}

const nameOf = (reagent: Reagent | string): string => (typeof reagent === "string" ? reagent : reagent.formula);

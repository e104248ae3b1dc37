// Figures of a solved mixture as quantities: value at once, inputs and derivatives when somebody asks. Inputs are the amounts
// put in, the water, every constant that counts, and the activity model itself.
import { type Naming, type Quantity, quantity } from "../../quantity";
import { solvedFigure } from "../../quantity/internal";
import type { Ingredient } from "../mixture/material";
import type { Brought, Solved } from "../mixture/mixture";
import { type Figure, gradientOf } from "../solve/sensitivity";

/** Standard uncertainty of log10 of the mean activity coefficient of a 1:1 salt, by ionic strength up to which it serves. */
const MODEL_DOUBT: readonly (readonly [upTo: number, u: number])[] = [
  [0.1, 0.02],
  [0.5, 0.05],
  [1, 0.12],
  [3, 0.25],
];

/** Standard uncertainty added to a constant away from 25 °C. */
const AWAY_FROM_25 = 0.1;
/** A constant whose contribution is below this share of the largest is left out of the inputs. */
const NEGLIGIBLE = 1e-4;
/** A contribution below this share of the figure is rounding of the solver: what stays dissolved whatever it binds to rests on no constant. */
const ROUNDING = 1e-12;

export function activityDoubt(ionicStrength: number): number {
  return MODEL_DOUBT.find(([upTo]) => ionicStrength <= upTo)?.[1] ?? 0.25;
}

/** The activity model as an input of a budget. */
export const activityInput = (ionicStrength: number): Quantity =>
  quantity(
    { value: "0", unit: "", standardUncertainty: String(activityDoubt(ionicStrength)) },
    { symbol: "Δlog γ", label: "activity model: error of log10 of the coefficient of a singly charged ion" },
  );

/** How the figures of one answer are made. */
export interface FigureMaker {
  /**
   * @param value - of the figure
   * @param figure - what it is in the solver's terms, in mol/kg or ln activity
   * @param factor - from there to the unit of the figure
   */
  make(value: number, unit: string, figure: Figure, factor: number, naming: Naming): Quantity;
  /** The same for an amount: molality times the water. */
  amount(molality: number, figure: Figure, naming: Naming): Quantity<"amount of substance">;
}

/** Text of a double with twelve digits, as the graph takes it. */
const digits = (x: number): string => (x === 0 ? "0" : x.toPrecision(12));

export function figureMaker(
  { model, solution, kilograms, totals }: Solved,
  brought: readonly Brought[],
  water: Quantity<"mass">,
  pH: Quantity | undefined,
  ideal: boolean,
): FigureMaker {
  let made: { doubt: Quantity | undefined; away: Quantity | undefined } | undefined;
  // one input of each kind for all figures of the answer, made when the first one is asked about
  const common = () =>
    (made ??= {
      doubt: ideal ? undefined : activityInput(solution.ionicStrength),
      away:
        model.celsius === 25
          ? undefined
          : quantity(
              { value: "0", unit: "", standardUncertainty: String(AWAY_FROM_25) },
              { symbol: "Δlog K", label: "constants away from 25 °C, all together" },
            ),
    });
  const inputs = (value: number, figure: Figure, factor: number, extraWater: number) => {
    const gradient = gradientOf(solution, figure);
    const { doubt, away } = common();
    const list: { input: Quantity; partial: number; weight: number }[] = [];
    for (const { ingredient, of } of brought) {
      let slope = 0;
      for (const [key, count] of of) slope += gradient.totals[model.components.indexOf(key)]! * count;
      const partial = ((slope / kilograms) * factor) / molesIn(ingredient);
      list.push({ input: ingredient.amount, partial, weight: Infinity });
    }
    let concentration = 0;
    for (let j = 0; j < totals.length; j += 1) concentration -= gradient.totals[j]! * totals[j]!;
    const perKilogram = (concentration / kilograms) * factor + extraWater;
    list.push({ input: water, partial: perKilogram / kilogramsIn(water), weight: Infinity });
    if (pH !== undefined) {
      const partial = -Math.LN10 * gradient.lnK[model.species.length + model.heldPH]! * factor;
      list.push({ input: pH, partial, weight: Infinity });
    }
    let [largest, all] = [0, 0];
    for (const [constant, uses] of model.uses) {
      let slope = 0;
      for (const [row, count] of uses) slope += gradient.lnK[row]! * count;
      const partial = slope * Math.LN10 * factor;
      if (partial === 0) continue;
      const weight = Math.abs(partial) * Math.max(constant.standardUncertainty, 1e-6);
      largest = Math.max(largest, weight);
      all = Math.hypot(all, partial);
      list.push({ input: constant.input(), partial, weight });
    }
    const least = ROUNDING * Math.abs(value);
    const ofActivity = -Math.LN10 * gradient.activity * factor;
    if (doubt !== undefined && Math.abs(ofActivity) > least)
      list.push({ input: doubt, partial: ofActivity, weight: Infinity });
    if (away !== undefined && all > least) list.push({ input: away, partial: all, weight: Infinity });
    return list.filter(({ weight }) => weight >= NEGLIGIBLE * largest && weight > least);
  };
  return {
    make: (value, unit, figure, factor, naming) =>
      solvedFigure(digits(value), unit, "equilibrium", naming, () => inputs(value, figure, factor, 0)),
    amount: (molality, figure, naming) =>
      solvedFigure(digits(molality * kilograms), "mol", "equilibrium", naming, () =>
        inputs(molality * kilograms, figure, kilograms, molality),
      ) as Quantity<"amount of substance">,
  };
}

/** Moles in one unit of the amount as it is written: partials are in the inputs' own units. */
const molesIn = ({ amount }: Ingredient): number => unitFactor(amount, "mol");
const kilogramsIn = (water: Quantity): number => unitFactor(water, "kg");

function unitFactor(q: Quantity, unit: string): number {
  if (q.unit === unit) return 1;
  return quantity({ value: "1", unit }).toNumber(q.unit);
}

// The scale on which the solubility of one solid runs nearly straight against 1/T. A·nH2O in contact with its solution is
// A and n H2O leaving together, so van 't Hoff's law is for ln(x(A) x(H2O)^n), here with mole fractions for activities. It
// ends where the solution has the composition of the solid: there the hydrate melts in its own water.
import { molarMass } from "../../formula";
import { crystalWater } from "../../hydrate";

/** What is known of a solid for this: its waters, and the grams of anhydrous salt that make 1 mol to 1 mol with 100 g of water. */
export interface SolidScale {
  readonly waters: number;
  readonly equimolar: number;
  /** Grams per 100 g water in the solid itself: no stable solution in contact with it holds more. */
  readonly ceiling: number;
}

export function solidScale(solute: string, solid: string | undefined): SolidScale {
  const waters = solid === undefined ? 0 : crystalWater(solid).waters.valueOf();
  const equimolar = 100 * molarMass(solute).dividedBy(molarMass("H2O")).toNumber();
  return { waters, equimolar, ceiling: waters === 0 ? Number.POSITIVE_INFINITY : equimolar / waters };
}

/** Where a solubility lies on the scale. */
export function ordinateOf({ waters, equimolar }: SolidScale, grams: number): number {
  const all = grams + equimolar;
  return Math.log(grams / all) + waters * Math.log(equimolar / all);
}

/** Newton's steps suffice in a handful; near the melting point, where the scale is flat, each only halves the error. */
const STEPS = 60;

/** The solubility at a place of the scale; the composition of the solid for a place above all it reaches. */
export function gramsAt({ waters, equimolar, ceiling }: SolidScale, ordinate: number): number {
  // u = ln x(A). The scale is concave in u and below it everywhere, so that the steps come up to the root from below.
  let u = ordinate;
  if (waters > 0) {
    for (let i = 0; i < STEPS; i += 1) {
      const x = Math.exp(u);
      const steepness = 1 - (waters * x) / (1 - x);
      const step = (ordinate - u - waters * Math.log1p(-x)) / steepness;
      if (!(steepness > 0) || u + step >= -Math.log1p(waters)) return ceiling;
      u += step;
      if (step < 1e-12) break;
    }
  }
  const x = Math.exp(u);
  return (equimolar * x) / (1 - x);
}

/** Smallest rise of the scale with ln S that is used: the last kelvin before a melting point is not known that well. */
const FLATTEST = 0.02;

/** d ln S for a step on the scale. */
export function stretchAt({ waters, equimolar }: SolidScale, grams: number): number {
  return 1 / Math.max(FLATTEST, 1 - ((waters + 1) * grams) / (grams + equimolar));
}

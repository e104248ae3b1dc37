// Activity coefficients of ions from the Davies equation, for what moderate salt does to a solubility product. Good to
// ionic strengths of about 0.5 mol/L; beyond that it is refused rather than believed.
import { SolubilityError } from "./error";

/** Debye-Hückel slope of water at 25 °C for decimal logarithms (mol/L)^(-1/2). */
const SLOPE = 0.509;
/** Davies' 1962 coefficient of the linear term. */
const LINEAR = 0.3;
/** Highest ionic strength at which the equation is used, mol/L. */
export const DAVIES_LIMIT = 0.5;

/** -log10 of the activity coefficient of a singly charged ion; it grows with the square of the charge. */
export function daviesExponent(ionicStrength: number): number {
  if (!(ionicStrength >= 0) || ionicStrength > DAVIES_LIMIT) {
    throw new SolubilityError(
      "solubility.ionic-strength",
      `the Davies equation serves ionic strengths from 0 to ${DAVIES_LIMIT} mol/L, not ${ionicStrength} mol/L`,
      {
        hint: "dilute, or measure: no simple equation applies in a brine",
        details: { ionicStrength, limit: DAVIES_LIMIT },
      },
    );
  }
  const root = Math.sqrt(ionicStrength);
  return SLOPE * (root / (1 + root) - LINEAR * ionicStrength);
}

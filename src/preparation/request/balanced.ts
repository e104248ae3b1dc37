// The equation of a request, balanced. Water that it leaves out is there in any preparation: it is put in where nothing else is
// missing.

import { type BalancedEquation, type EquationInput, parseEquation, tryBalance } from "../../equation";
import { Fraction } from "../../foundation/fraction";

/** A balanced equation, and whether its water was left out. */
interface Balanced {
  readonly equation: BalancedEquation;
  readonly lacksWater: boolean;
}

/** Do the species have the coefficients that were written, all of them times one number? */
function isAsWritten(mended: BalancedEquation, input: EquationInput): boolean {
  const written = parseEquation(input);
  const given = [...written.reactants, ...written.products].map(({ coefficient }) => coefficient);
  if (given.every((one) => one === undefined)) return true;
  // What was put in stands last on its side.
  const found = [
    ...mended.reactants.slice(0, written.reactants.length),
    ...mended.products.slice(0, written.products.length),
  ].map(({ coefficient }) => new Fraction(coefficient));
  const times = found.map((one, i) => one.div(given[i] ?? new Fraction(1)));
  return times.every((one) => one.equals(times[0]!));
}

/** The equation balanced: as it is written, or with the water that is all it lacks. */
export function balancedOf(input: EquationInput | BalancedEquation): Balanced {
  const found = tryBalance(input);
  if (found.ok) return { equation: found.value, lacksWater: false };
  // the coefficients are asked after below, once the water is in: without it no ones can balance
  const bare =
    found.error.code === "equation.wrong-coefficients" ? tryBalance(input, { coefficients: "ignore" }) : found;
  if (bare.ok || bare.error.code !== "equation.impossible") throw found.error;
  const water = bare.error.details?.mending.find(({ add }) => add.length === 1 && add[0] === "H2O");
  const mended = water === undefined ? undefined : tryBalance(water.equation);
  if (mended?.ok !== true || !isAsWritten(mended.value, input as EquationInput)) throw found.error;
  return { equation: mended.value, lacksWater: true };
}

// What stands on both sides of an equation, taken out.

import { inLowestTerms, ONE } from "../../foundation/rational";
import { Equation } from "../equation";
import { EquationError } from "../error";

/** Take out what stands on both sides; of given coefficients the difference stays. */
export function withoutSpectators(equation: Equation): Equation {
  const { formulas, reactantCount, given } = equation;
  const gone = new Set<number>();
  const coefficients = given === undefined ? undefined : [...given];
  for (let left = 0; left < reactantCount; left++) {
    const text = String(formulas[left]);
    for (let right = reactantCount; right < formulas.length; right++) {
      if (gone.has(right) || String(formulas[right]) !== text) continue;
      if (coefficients === undefined) {
        gone.add(left).add(right);
        break;
      }
      const a = coefficients[left] ?? ONE;
      const b = coefficients[right] ?? ONE;
      const difference = a.n * b.d - b.n * a.d;
      if (difference <= 0n) gone.add(left);
      if (difference >= 0n) gone.add(right);
      const rest = inLowestTerms(difference < 0n ? -difference : difference, a.d * b.d);
      // a rest of one needs no number
      const written = rest.n === rest.d ? undefined : rest;
      if (difference > 0n) coefficients[left] = written;
      if (difference < 0n) coefficients[right] = written;
      break;
    }
  }
  if (gone.size === 0) return equation;
  const stays = (_: unknown, at: number) => !gone.has(at);
  const reactants = formulas.slice(0, reactantCount).filter(stays).length;
  const rest = formulas.filter(stays);
  if (reactants === 0 || reactants === rest.length) {
    throw new EquationError("equation.only-spectators", "nothing is left on one side once the spectators are out", {
      details: { spectators: equation.spectators.map(String) },
    });
  }
  return new Equation(rest, reactants, equation.arrow, coefficients?.filter(stays), equation.notes);
}

// Ions as a caller names them, and what is settled about a solution before it is solved.

import { parseFormula } from "../../formula";
import type { Fields } from "../../foundation/argument";
import {
  type ConcentrationText,
  type NumberLike,
  type Quantity,
  type QuantityLike,
  quantity,
  sum,
} from "../../quantity";
import { expectDimension } from "../../quantity/internal";
import { daviesExponent } from "../davies";
import { SolubilityError } from "../error";
import type { DissolvedIon } from "./product";

export const ION = { ion: true, concentration: true } as const satisfies Fields<IonConcentration>;

/** An ion at a concentration. */
export interface IonConcentration {
  /** Formula with charge: `SO4^2-`, `Cu^2+`. */
  readonly ion: string;
  /** Of the ion in the solution. */
  readonly concentration: QuantityLike<"concentration", ConcentrationText>;
}

/** @internal Ions compare by composition and charge, however written. */
export function sameIon(a: string, b: string): boolean {
  return a === b || parseFormula(a).hasSameComposition(parseFormula(b));
}

/** @internal The concentration of what is in a solution: nothing of it at least. */
export function concentrationOf({ ion, concentration }: IonConcentration): Quantity {
  const c = expectDimension(concentration, "concentration", `concentration of ${ion}`).to("mol/L");
  if (c.compare("0 mol/L") >= 0) return c;
  throw new SolubilityError("solubility.not-positive", `a concentration is not negative: ${c}`);
}

/** @internal Concentration of each ion of a solid among those given, all that is named of it; undefined where it is not named. */
export function concentrationsFor(
  ions: readonly DissolvedIon[],
  present: readonly IonConcentration[],
): (Quantity | undefined)[] {
  return ions.map(({ formula }) => {
    const all = present.filter(({ ion }) => sameIon(ion, formula)).map(concentrationOf);
    if (all.length === 0) return undefined;
    const c = all.length === 1 ? all[0]! : sum(all);
    return c.symbol === undefined ? c.named({ symbol: `c(${formula})`, label: `${formula} in the solution` }) : c;
  });
}

/** @internal Factor on Ksp, as power of ten, from activity coefficients. */
export function activityExponent(ions: readonly DissolvedIon[], ionicStrength: number | undefined): number {
  if (ionicStrength === undefined) return 0;
  const one = daviesExponent(ionicStrength);
  return ions.reduce((all, { charge, count }) => all + count * charge * charge * one, 0);
}

export const isHydroxide = (formula: string): boolean => sameIon(formula, "OH-");

/** @internal Does a pH say how much there is of it? */
export const isOfWater = (formula: string): boolean => isHydroxide(formula) || sameIon(formula, "H+");

/** @internal pH that stands for pKw: the upper end of every range of pH. */
export const TOP_PH = 14;

/** @internal pH of a solution, from 0 to 14. */
export function readPH(pH: NumberLike | undefined): Quantity {
  const read = quantity({ value: pH as NumberLike, unit: "" }, { symbol: "pH", label: "pH of the solution" });
  const plain = read.toNumber();
  if (plain >= 0 && plain <= TOP_PH) return read;
  throw new SolubilityError("solubility.out-of-reach", `a pH of 0 to ${TOP_PH} is understood, not ${read}`);
}

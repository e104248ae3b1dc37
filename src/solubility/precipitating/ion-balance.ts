// The balance behind every precipitation question: ions present plus ions set free, multiplied up, equal the product.
// Solved in plain numbers; callers wrap the result as a quantity with its derivatives.

import { parseFormula } from "../../formula";
import type { Fields } from "../../foundation/argument";
import { bisected } from "../../foundation/bisect";
import type { ConcentrationText, Quantity, QuantityLike } from "../../quantity";
import { expectDimension } from "../../quantity/internal";
import { daviesExponent } from "../davies";
import type { DissolvedIon } from "./product";

export const ION = { ion: true, concentration: true } as const satisfies Fields<IonConcentration>;

/** An ion at a concentration. */
export interface IonConcentration {
  /** Formula with charge: `SO4^2-`, `Cu^2+`. */
  readonly ion: string;
  readonly concentration: QuantityLike<"concentration", ConcentrationText>;
}

/** @internal Ions compare by composition and charge, however written. */
export function sameIon(a: string, b: string): boolean {
  return a === b || parseFormula(a).hasSameComposition(parseFormula(b));
}

/** @internal Concentration of each ion of a solid among those given; 0 where it is not named. */
export function concentrationsFor(
  ions: readonly DissolvedIon[],
  present: readonly IonConcentration[],
): (Quantity | undefined)[] {
  return ions.map(({ formula }) => {
    const found = present.find(({ ion }) => sameIon(ion, formula));
    if (found === undefined) return undefined;
    const c = expectDimension(found.concentration, "concentration", `concentration of ${found.ion}`).to("mol/L");
    return c.symbol === undefined ? c.named({ symbol: `c(${formula})`, label: `${formula} in the solution` }) : c;
  });
}

/** @internal Factor on Ksp, as power of ten, from activity coefficients. */
export function activityExponent(ions: readonly DissolvedIon[], ionicStrength: number | undefined): number {
  if (ionicStrength === undefined) return 0;
  const one = daviesExponent(ionicStrength);
  return ions.reduce((all, { charge, count }) => all + count * charge * charge * one, 0);
}

/** @internal Ionic product of water at 25 °C as the tables of this layer have it. */
export const PKW = 14;
/** @internal */
export const KW = 10 ** -PKW;

/** @internal One ion of a dissolution: how many, and its concentration when x formula units per litre have dissolved. */
export interface Released {
  readonly count: number;
  /** Present before, mol/L. */
  readonly start: number;
  /** Hydroxide in otherwise pure water: its own ions and those of the water must balance. */
  readonly inWater: boolean;
}

/** @internal */
export function concentrationAt({ count, start, inWater }: Released, x: number): number {
  const set = start + count * x;
  return inWater ? (set + Math.sqrt(set * set + 4 * KW)) / 2 : set;
}

/** @internal d(concentration)/d(start); times count it is d/dx. */
export function gain({ count, start, inWater }: Released, x: number): number {
  const set = start + count * x;
  return inWater ? (1 + set / Math.sqrt(set * set + 4 * KW)) / 2 : 1;
}

/** @internal Solve sum of count × ln(concentration at x) = ln K for x; negative x is precipitation. */
export function solveProduct(ions: readonly Released[], lnK: number): number {
  const f = (x: number): number => ions.reduce((all, ion) => all + ion.count * Math.log(concentrationAt(ion, x)), -lnK);
  // Below this some ion runs out and the function falls to minus infinity; above, it rises without bound.
  const floor = Math.max(...ions.filter((ion) => !ion.inWater).map(({ count, start }) => -start / count));
  let high = Math.max(1, 2 * Math.abs(floor));
  while (f(floor + high) < 0) high *= 2;
  // Narrowed on a logarithmic scale above the floor: solubilities span thirty powers of ten.
  const isBelow = (ln: number): boolean => f(floor + Math.exp(ln)) < 0;
  const [a, b] = bisected(isBelow, [Math.log(1e-300), Math.log(high)], 200, 1e-15);
  return floor + Math.exp((a + b) / 2);
}

/** @internal An ion of a solid that precipitates: how much is over when the scarcest ion is gone, and its count per scarce ion. */
export interface Remaining {
  readonly count: number;
  /** What is over of it, mol/L; 0 for the scarcest ion. */
  readonly over: number;
  readonly perScarce: number;
}

/**
 * @internal ln of what stays of the scarcest ion: sum of count × ln(over + perScarce × residue) = ln K. Written in the
 * logarithm it rises and is convex, so Newton's steps from above converge on it without overshooting, however small it is.
 */
export function solveResidue(ions: readonly Remaining[], lnK: number, lnStart: number): number {
  let at = lnStart;
  for (let i = 0; i < 100; i += 1) {
    const { value, slope } = residueAt(ions, at);
    const step = (value - lnK) / slope;
    at -= step;
    if (Math.abs(step) <= 1e-15 * Math.max(1, Math.abs(at))) break;
  }
  return at;
}

/** @internal ln of the ion product when exp(ln) of the scarcest ion stays, and its slope. */
export function residueAt(ions: readonly Remaining[], ln: number): { readonly value: number; readonly slope: number } {
  let [value, slope] = [0, 0];
  for (const { count, over, perScarce } of ions) {
    const own = perScarce * Math.exp(ln);
    value += count * (over > 0 ? Math.log(over + own) : Math.log(perScarce) + ln);
    slope += over > 0 ? (count * own) / (over + own) : count;
  }
  return { value, slope };
}

// What of a case goes into the beaker: the pot as the steps leave it, and its carbon dioxide.

import { molarMass } from "../../formula";
import { isOneOf } from "../../ion/internal";
import { type Poured, settled } from "../contents/equilibrium";
import { sameCore } from "../reaction/species";
import { type Beaker, isKnown, type Keeping, type Pour, scaled } from "./beaker";
import type { Case } from "./case";

const CARBONATE = "CO3^2-";

/** The pot as the steps leave it, what the tables know of it; undefined where it contains a product that they do not know. */
export function potOf({ pot, made }: Case): Poured | undefined {
  if (pot === undefined) return undefined;
  const isStrange = ({ formula }: Pour): boolean =>
    !isKnown(formula) && made.some(({ species }) => sameCore(species.formula, formula));
  const pours = pot.pours.filter(({ formula }) => isKnown(formula));
  const gas = pot.gas.filter(({ formula }) => isKnown(formula));
  return pours.length === 0 || pot.pours.some(isStrange) ? undefined : { ...pot, pours, gas };
}

/** The same without what the limiting material leaves unused. */
export function withoutExcess({ put, water }: Case, pot: Poured): Poured {
  const pours = pot.pours.map((one) => {
    const over = put.find(({ species, left }) => left > 0 && sameCore(species.formula, one.formula))?.left ?? 0;
    return { ...one, moles: one.moles - over / water };
  });
  return { ...pot, pours };
}

/** A pot at equilibrium, for one mole of product. */
export function beakerOf(
  { celsius, water }: Case,
  { pours, fizzed }: Poured,
  how?: Omit<Keeping, "carbonDioxide">,
): Beaker | undefined {
  const beaker = settled(pours, celsius, fizzed, how);
  return beaker === undefined ? undefined : scaled(beaker, water);
}

/** The pot, and what its carbon dioxide makes of it. */
export interface Beakers {
  /** As the steps leave it. */
  readonly stands: Beaker;
  /** With the carbon dioxide that stays under one atmosphere; and with all gone that air does not keep. */
  readonly kept: Beaker;
  readonly gone: Beaker;
  /** Carbonate is there. */
  readonly differs: boolean;
}

/** The pot at equilibrium. */
export function beakersOf(c: Case, pot: Poured, how?: Omit<Keeping, "carbonDioxide">): Beakers | undefined {
  const stands = beakerOf(c, pot, how);
  if (stands === undefined) return undefined;
  // who leads carbon dioxide in keeps it
  const ledIn = c.put.some(({ species }) => isOneOf(species.formula, "CO2"));
  if (ledIn || !stands.components.includes(CARBONATE)) return { stands, kept: stands, gone: stands, differs: false };
  const keep = (keeping: "kept" | "leaves"): Beaker | undefined =>
    pot.fizzed.keeping === keeping
      ? stands
      : beakerOf(c, { ...pot, fizzed: { ...pot.fizzed, keeping } }, { solids: "fresh", ...how, near: stands });
  const [kept, gone] = [keep("kept"), keep("leaves")];
  return kept === undefined || gone === undefined ? undefined : { stands, kept, gone, differs: true };
}

/** Is all that the product is made of in the beaker, as the tables name it? */
export const holds = (beaker: Beaker, of: ReadonlyMap<string, number>): boolean =>
  [...of.keys()].every((key) => key === "H+" || beaker.total(key) > 0);

/** Mass of an amount, g. */
export const gramsOf = (formula: Pour["formula"], moles: number): number =>
  moles * molarMass(formula).toNumber("g/mol");

/** A share as it is read: `91 %`. */
export function percent(share: number): string {
  const p = 100 * share;
  return `${p >= 99.95 ? "100" : p >= 10 ? p.toFixed(0) : p >= 0.05 ? p.toPrecision(2) : "0"} %`;
}

/** Two figures of a number, without an exponent. */
export const brief = (x: number): string => String(Number(x.toPrecision(2)));

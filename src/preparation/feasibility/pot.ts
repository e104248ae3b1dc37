// What of a case goes into the beaker: the reactants as they are poured, or, where oxidation states change or a reactant is a
// stranger to the tables, what the equation makes of them with what is left over.

import { molarMass } from "../../formula";
import { isOneOf } from "../../ion/internal";
import { type Beaker, isKnown, type Keeping, type Pour, settle } from "./beaker";
import type { Case } from "./case";

/** What is poured, and whether it stands for what the equation has already made. */
export interface Pot {
  readonly pours: readonly Pour[];
  readonly afterwards: boolean;
}

const CARBONATE = "CO3^2-";

const isElement = (kind: string): boolean => kind === "element";

/** What goes into the beaker; `over` false leaves every excess out. */
export function potOf(c: Case, over = true): Pot | undefined {
  const asPut = c.redox === undefined && c.put.every(({ species }) => isKnown(species.formula));
  if (asPut) {
    const pours = c.put
      .filter(({ made }) => made.kind !== "water")
      .map(({ species, moles, left }) => ({ formula: species.formula, moles: over ? moles : moles - left }));
    return pours.length === 0 ? undefined : { pours, afterwards: false };
  }
  const made = c.made
    .filter(
      ({ made: m, gas, species }) => !isElement(m.kind) && m.kind !== "water" && (!gas || isKnown(species.formula)),
    )
    .map(({ species, moles }) => ({ formula: species.formula, moles }));
  const left = c.put
    .filter(({ made: m, left: n, species }) => over && n > 0 && !isElement(m.kind) && isKnown(species.formula))
    .map(({ species, left: n }) => ({ formula: species.formula, moles: n }));
  if (made.some(({ formula }) => !isKnown(formula))) return undefined;
  return { pours: [...made, ...left], afterwards: true };
}

/** Both ways of keeping the carbon dioxide; one beaker where there is none. */
export interface Beakers {
  readonly kept: Beaker;
  readonly gone: Beaker;
  /** Carbonate is there. */
  readonly differs: boolean;
}

/** The pot at equilibrium with the carbon dioxide kept and gone. */
export function beakersOf(
  c: Case,
  pot: Pot,
  how: Omit<Keeping, "carbonDioxide"> = { solids: "fresh" },
): Beakers | undefined {
  const kept = settle(pot.pours, c.water, c.celsius, { ...how, carbonDioxide: "kept" });
  if (kept === undefined) return undefined;
  // who leads carbon dioxide in keeps it
  const ledIn = c.put.some(({ species }) => isOneOf(species.formula, "CO2"));
  if (ledIn || !kept.components.includes(CARBONATE)) return { kept, gone: kept, differs: false };
  const gone = settle(pot.pours, c.water, c.celsius, { ...how, carbonDioxide: "leaves", near: kept });
  return gone === undefined ? undefined : { kept, gone, differs: true };
}

/** Is all that the product is made of in the beaker, as the tables name it? */
export const holds = ({ kept }: Beakers, of: ReadonlyMap<string, number>): boolean =>
  [...of.keys()].every((key) => key === "H+" || kept.total(key) > 0);

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

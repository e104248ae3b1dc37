// What really stands in a vessel, asked of the equilibrium of the whole mixture: the question, and the beaker that answers it.
// Asked per kilogram of water and to four figures, so that a batch of any size has one answer.
import { type Formula, parseFormula } from "../../formula";
import { keptBeside, once, remembering } from "../../foundation/memo";
import { isOneOf } from "../../ion/internal";
import { type Quantity, quantity } from "../../quantity";
import {
  type Beaker,
  componentsOf,
  isKnown,
  type Keeping,
  knowsSolid,
  type Pour,
  settle,
  unitsIn,
} from "../feasibility/beaker";
import type { Books, Fizzed } from "./books";
import type { Entry } from "./entry";
import type { Matter } from "./matter";

/** Anything with books: a vessel. */
export interface Booked {
  readonly books: Books;
  readonly asked: Asked;
}

/** What a vessel was asked before, kept with it: its books never change. */
export interface Asked {
  /** What it says at any temperature: vessels that differ in nothing else share it. */
  readonly whenever: { mass?: Quantity; poured?: Poured | false };
  standing?: Beaker | false;
}

/** Little more water than there is may stand for it, where the liquor is too strong for the model. */
const THINNED = 1.25;

/** Metals, sulfur and charcoal stand by; they are no part of the equilibrium. */
const standsBy = ({ matter }: Entry): boolean => matter.formula.size === 1;

/** Things that the beaker of a vessel contains, mol for each kilogram of water; undefined where there is too little water or a stranger. */
function perKilogram(pot: Booked): Poured | undefined {
  const known = pot.asked.whenever.poured;
  if (known !== undefined) return known || undefined;
  const kg = waterOf(pot);
  const found = kg === undefined ? undefined : pouredOf(pot, kg);
  const isWhole = found !== undefined && found.pours.length > 0 && found.pours.every(({ formula }) => isKnown(formula));
  pot.asked.whenever.poured = isWhole && found;
  return isWhole ? found : undefined;
}

/** Most vessels stand at one of a few temperatures. */
const celsiusOf = /* @__PURE__ */ keptBeside((temperature: Quantity) => temperature.toNumber("°C"));

const carbonDioxide = /* @__PURE__ */ once(() => parseFormula("CO2"));

/** kg of water in a vessel; undefined where it is not known or none is left. */
export function waterOf({ books: { water, waterMissing } }: Pick<Booked, "books">): number | undefined {
  const kg = water.toNumber() / 1000;
  return waterMissing.length > 0 || !(kg > 0) ? undefined : kg;
}

/** A vessel as it is judged, for each kilogram of water. */
export interface Poured {
  /** What lies and swims in it, elements left out. */
  readonly pours: readonly Pour[];
  /** What it has given off. */
  readonly gas: readonly Pour[];
  readonly fizzed: Fizzed;
}

/** Equal for vessels that contain the same. */
export const keyOfPoured = ({ pours, gas, fizzed }: Poured): string =>
  `${inWords([...pours, ...gas])} ${fizzed.keeping} ${fizzed.left}`;

/** A vessel for so many kilograms of water. */
export function pouredOf({ books }: Pick<Booked, "books">, kg: number): Poured {
  const summed = (entries: readonly Entry[]): Pour[] => {
    // what of a substance is dissolved and what of it stands is for the equilibrium to say
    const sums = new Map<string, { readonly formula: Formula; moles: number }>();
    for (const entry of entries) {
      if (standsBy(entry)) continue;
      const { key, formula } = entry.matter;
      const moles = entry.amount.toNumber() / kg;
      const before = sums.get(key);
      if (before === undefined) sums.set(key, { formula, moles });
      else before.moles += moles;
    }
    return [...sums]
      .sort(([one], [other]) => (one < other ? -1 : 1))
      .map(([, { formula, moles }]) => ({ formula, moles: Number(moles.toPrecision(4)) }))
      .filter(({ moles }) => moles > 0);
  };
  return {
    pours: summed([...books.dissolved, ...books.solids]),
    gas: summed(books.gas),
    fizzed: books.fizzed ?? STILL,
  };
}

const inWords = (pours: readonly Pour[]): string => pours.map(({ formula, moles }) => `${formula} ${moles}`).join(" ");

/** Nothing has fizzed. */
const STILL: Fizzed = { keeping: "kept", left: 0 };

const remembered = /* @__PURE__ */ remembering<Beaker | undefined>(1500);

/** With what has left of the carbon dioxide. */
export const withGas = (pours: readonly Pour[], { left }: Fizzed): readonly Pour[] =>
  left > 0 ? [...pours, { formula: carbonDioxide(), moles: left }] : pours;

/** A vessel at equilibrium, for a kilogram of water; the answer is kept. */
export function settled(
  pours: readonly Pour[],
  celsius: number,
  fizzed: Fizzed,
  how: Omit<Keeping, "carbonDioxide"> = { solids: "fresh" },
): Beaker | undefined {
  const all = withGas(pours, fizzed);
  const ask = (): Beaker | undefined => settle(all, 1, celsius, { ...how, carbonDioxide: fizzed.keeping });
  if (how.solids !== "fresh" || how.lower !== undefined) return ask();
  return remembered(`${celsius} ${fizzed.keeping} ${inWords(all)}`, ask);
}

/** What stands in a vessel, asked once of it. */
export function standingIn(pot: Booked): Beaker | undefined {
  const known = pot.asked.standing;
  if (known !== undefined) return known || undefined;
  const put = perKilogram(pot);
  const found = put && settled(put.pours, celsiusOf(pot.books.temperature), put.fizzed);
  pot.asked.standing = found ?? false;
  return found;
}

/** What stands in a vessel where the liquor itself is within the model, and not only a weaker one. */
export function ownStanding(pot: Booked): Beaker | undefined {
  const found = standingIn(pot);
  return found === undefined || found.water > THINNED ? undefined : found;
}

const CARBONATE = "CO3^2-";
/** Shares of a product are told apart from this difference on. */
const DIFFERS = 0.02;
/** Less of a solid, in mol for each kilogram of water, is rounding. */
const ROUNDING = 1e-9;

/**
 * How a pot stands in which carbonate is. Whoever writes carbon dioxide on the right lets it go or keeps it as the product asks;
 * else the pot is open as pots are, where that makes a difference to the product.
 */
export function fizzedIn(pot: Booked, product: Matter, isWritten: boolean, precipitates: boolean): Fizzed | undefined {
  const put = perKilogram(pot);
  const of = componentsOf(product.formula);
  if (put === undefined || of === undefined) return undefined;
  const left = put.gas.find(({ formula }) => isOneOf(formula, "CO2"))?.moles ?? 0;
  if (left === 0 && !put.pours.some(({ formula }) => componentsOf(formula)?.has(CARBONATE))) return undefined;
  if (!precipitates) return { keeping: isWritten ? "leaves" : "kept", left };
  const celsius = celsiusOf(pot.books.temperature);
  const kept = settled(put.pours, celsius, { keeping: "kept", left });
  if (kept === undefined) return undefined;
  // a product that it cannot tell of changes nothing: the equation says whether gas leaves
  if (isWritten && !knowsSolid(kept, of)) return { keeping: "leaves", left };
  const gone = settled(put.pours, celsius, { keeping: "leaves", left }, { solids: "fresh", near: kept });
  if (gone === undefined) return { keeping: "kept", left };
  const [closed, open] = [unitsIn(kept, of), unitsIn(gone, of)];
  const apart = Math.max(DIFFERS * Math.max(closed, open), ROUNDING);
  const isLess = open < closed - apart;
  const isMore = open > closed + apart;
  return { keeping: (isWritten ? isMore : isLess) ? "leaves" : "kept", left };
}

/** pH of a vessel; undefined where the model does not reach. */
export function phOf(pot: Booked): Quantity<"number"> | undefined {
  const celsius = celsiusOf(pot.books.temperature);
  if (celsius < 5 || celsius > 60) return undefined;
  const found = ownStanding(pot);
  return found && shownPh(found);
}

const shownPh = /* @__PURE__ */ keptBeside(
  ({ pH }: Beaker): Quantity<"number"> =>
    quantity({ value: pH.toFixed(2), unit: "" }, { symbol: "pH", label: "pH at the equilibrium of the mixture" }),
);

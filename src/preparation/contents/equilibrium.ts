// What really stands in a vessel: pH, and how much of each solid the liquor keeps, asked of the equilibrium of the whole
// mixture. Asked per kilogram of water and to four figures, so that a batch of any size has one answer.
import { atomsOf, type Phase } from "../../aqueous/internal";
import { isNonmetal } from "../../equation/internal";
import { type Formula, parseFormula } from "../../formula";
import { once, remembering } from "../../foundation/memo";
import { isOneOf } from "../../ion/internal";
import { type Quantity, quantity } from "../../quantity";
import {
  type Beaker,
  componentsOf,
  isKnown,
  type Keeping,
  type Pour,
  printed,
  ratio,
  settle,
  unitsIn,
} from "../feasibility/beaker";
import { type Parts, partsOf } from "../feasibility/by-parts";
import { isFormOf } from "../feasibility/oxide-or-hydroxide";
import type { Books, Fizzed } from "./books";
import type { Entry } from "./entry";
import { type Matter, matterOf } from "./matter";

/** Anything with books: a vessel. */
interface Booked {
  readonly books: Books;
  readonly asked: Asked;
}

/** What a vessel was asked before, kept with it: its books never change. */
export interface Asked {
  poured?: Poured | false;
  standing?: Beaker | false;
}

/** Hydrons and water belong to everything. */
const HYDRON = "H+";

/** Little more water than there is may stand for it, where the liquor is too strong for the model. */
const THINNED = 1.25;

/** Metals, sulfur and charcoal stand by; they are no part of the equilibrium. */
const standsBy = ({ matter }: Entry): boolean => matter.formula.size === 1;

/** Things that the beaker of a vessel contains, mol for each kilogram of water; undefined where there is too little water or a stranger. */
function perKilogram(pot: Booked): Poured | undefined {
  const known = pot.asked.poured;
  if (known !== undefined) return known || undefined;
  const kg = waterOf(pot);
  const found = kg === undefined ? undefined : pouredOf(pot, kg);
  const isWhole = found !== undefined && found.pours.length > 0 && found.pours.every(({ formula }) => isKnown(formula));
  pot.asked.poured = isWhole && found;
  return isWhole ? found : undefined;
}

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
  /** Equal for vessels that contain the same. */
  readonly key: string;
}

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
  const [pours, gas] = [summed([...books.dissolved, ...books.solids]), summed(books.gas)];
  const fizzed = books.fizzed ?? STILL;
  return {
    pours,
    gas,
    fizzed,
    get key() {
      return `${inWords([...pours, ...gas])} ${fizzed.keeping} ${fizzed.left}`;
    },
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
function standingIn(pot: Booked): Beaker | undefined {
  const known = pot.asked.standing;
  if (known !== undefined) return known || undefined;
  const put = perKilogram(pot);
  const found = put && settled(put.pours, pot.books.temperature.toNumber("°C"), put.fizzed);
  pot.asked.standing = found ?? false;
  return found;
}

const CARBONATE = "CO3^2-";
/** Shares of a product are told apart from this difference on. */
const DIFFERS = 0.02;

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
  const celsius = pot.books.temperature.toNumber("°C");
  const kept = settled(put.pours, celsius, { keeping: "kept", left });
  if (kept === undefined) return undefined;
  const gone = settled(put.pours, celsius, { keeping: "leaves", left }, { solids: "fresh", near: kept });
  if (gone === undefined) return { keeping: "kept", left };
  const [closed, open] = [unitsIn(kept, of), unitsIn(gone, of)];
  const most = Math.max(closed, open);
  const isLess = open < closed - DIFFERS * most;
  const isMore = open > closed + DIFFERS * most;
  return { keeping: (isWritten ? isMore : isLess) ? "leaves" : "kept", left };
}

/** The same where the liquor itself is within the model, and not only a weaker one. */
export function ownStanding(pot: Booked): Beaker | undefined {
  const found = standingIn(pot);
  return found === undefined || found.water > THINNED ? undefined : found;
}

/** Differences below this share of a solid are rounding of its amounts. */
const NOISE = 0.001;

/** Less than this share of the metal in another solid is not a solid of its own. */
const OWN_SOLID = 0.02;

/** Solids that contain the metal of a product and are another one, most first; of a stronger liquor, those of a weaker one. */
export function solidsBeside(
  pot: Booked,
  product: Matter,
): readonly { readonly matter: Matter; readonly amount: Quantity }[] {
  const beaker = standingIn(pot);
  const own = componentsOf(product.formula);
  if (beaker === undefined || own === undefined) return [];
  const metals = metalsOf(product, own);
  const isBooked = (of: ReadonlyMap<string, number>): boolean =>
    pot.books.solids.some(({ matter }) => {
      const there = componentsOf(matter.formula);
      return matter.key !== product.key && there !== undefined && ratio(of, there) !== undefined;
    });
  // Where no constant of the product is known, nothing can be said of what stands in its place.
  const isKnownSolid = beaker.conditions.some(({ phase }) => phase !== undefined && ratio(phase.of, own) !== undefined);
  const isLeftOut = beaker.excluded.some(({ phase }) => ratio(phase.of, own) !== undefined);
  if (!isKnownSolid && !isLeftOut) return [];
  return beaker.solids.flatMap(({ phase, moles }) => {
    const isProduct = ratio(phase.of, own) !== undefined && isFormOf(phase, product.formula);
    if (isProduct || isBooked(phase.of)) return [];
    const share = Math.max(0, ...metals.map((key) => (moles * (phase.of.get(key) ?? 0)) / beaker.total(key)));
    if (share < OWN_SOLID) return [];
    const perKg = quantity(
      { value: moles.toPrecision(4), unit: "mol/kg" },
      {
        symbol: `b(${printed(phase)})`,
        label: `${printed(phase)} that stands for each kilogram of water, at equilibrium`,
      },
    );
    return [{ matter: matterOf(parseFormula(phase.formula)), amount: perKg.times(pot.books.water).to("mol") }];
  });
}

/** Solids that stand beside a product and contain nothing of its metal: what something else in the vessel precipitates as. */
export function solidsApart(
  pot: Booked,
  product: Matter,
): readonly { readonly matter: Matter; readonly amount: Quantity }[] {
  const beaker = standingIn(pot);
  const own = componentsOf(product.formula);
  if (beaker === undefined || own === undefined) return [];
  const metals = metalsOf(product, own);
  return beaker.solids.flatMap(({ phase, moles }) => {
    if (metals.some((key) => phase.of.has(key))) return [];
    const perKg = quantity({ value: moles.toPrecision(4), unit: "mol/kg" }, { symbol: `b(${printed(phase)})` });
    return [{ matter: matterOf(parseFormula(phase.formula)), amount: perKg.times(pot.books.water).to("mol") }];
  });
}

/** How much of a solid stands at the equilibrium of a vessel; undefined where the model does not reach, or does not know it. */
export function standingOf(pot: Booked, matter: Matter): Quantity | undefined {
  const found = ownStanding(pot);
  const of = componentsOf(matter.formula);
  if (found === undefined || of === undefined) return undefined;
  for (const { phase, moles } of found.solids) {
    const units = ratio(phase.of, of);
    if (units === undefined) continue;
    const perKg = quantity(
      { value: (moles * units).toPrecision(4), unit: "mol/kg" },
      { symbol: `b(${matter.name})`, label: `${matter.name} that stands for each kilogram of water, at equilibrium` },
    );
    return perKg.times(pot.books.water).to("mol");
  }
  return undefined;
}

/** Components that carry a metal of a formula. */
const metalsOf = (matter: Matter, own: ReadonlyMap<string, number>): string[] =>
  [...own.keys()].filter((key) => matter.formula.symbols.some((s) => !isNonmetal(s) && atomsOf(key).has(s)));

/** pH of a vessel; undefined where the model does not reach. */
export function phOf(pot: Booked): Quantity<"number"> | undefined {
  const { temperature } = pot.books;
  const celsius = temperature.toNumber("°C");
  if (celsius < 5 || celsius > 60 || pot.books.dissolved.length === 0) return undefined;
  const found = ownStanding(pot);
  return found === undefined
    ? undefined
    : quantity(
        { value: found.pH.toFixed(2), unit: "" },
        { symbol: "pH", label: "pH at the equilibrium of the mixture" },
      );
}

/**
 * What a kilogram of water keeps of a solid: what its ions could still make, and never more than the books have of it beyond what
 * stands; mol.
 */
function keptPerKilogram(pot: Booked, kg: number, matter: Matter, beaker: Beaker, own: ReadonlyMap<string, number>) {
  const ions = leastDissolved(beaker, own);
  const isIt = (one: Entry): boolean => one.matter.key === matter.key;
  const booked = pot.books.solids.reduce((n, one) => (isIt(one) ? n + one.amount.toNumber() : n), 0) / kg;
  const beyond = Math.max(0, booked - unitsIn(beaker, own));
  return ions === undefined || booked === 0 || ions <= beyond + NOISE * booked ? ions : beyond;
}

/** An amount for each kilogram of water, as much as there is water. */
const forAll = (perKg: number, pot: Booked, matter: Matter, figures: number): Quantity => {
  const label = `${matter.name} that a kilogram of this liquor keeps at equilibrium`;
  const value = perKg === 0 ? "0" : perKg.toPrecision(figures);
  return quantity({ value, unit: "mol/kg" }, { symbol: `b(${matter.name})`, label })
    .times(pot.books.water)
    .to("mol");
};

/** How much of a solid the liquor keeps at equilibrium; undefined where it does not stand, or the model does not reach. */
export function keptAtEquilibrium(pot: Booked, matter: Matter): Quantity | undefined {
  const beaker = ownStanding(pot);
  const own = componentsOf(matter.formula);
  const kg = waterOf(pot);
  if (beaker === undefined || own === undefined || kg === undefined) return undefined;
  if (!beaker.solids.some(({ phase }) => ratio(own, phase.of) !== undefined)) return undefined;
  const least = keptPerKilogram(pot, kg, matter, beaker, own);
  return least === undefined
    ? undefined
    : forAll(least, pot, matter, 4).named({
        symbol: `n(${matter.name}, kept)`,
        rule: "kept = what a kilogram of the liquor keeps × water",
      });
}

/** The same with the constant of the solid one standard uncertainty to either side; undefined where that is not known. */
export function keptRange(pot: Booked, matter: Matter): readonly [least: Quantity, most: Quantity] | undefined {
  const found = ownStanding(pot);
  const own = componentsOf(matter.formula);
  const put = perKilogram(pot);
  const kg = waterOf(pot);
  if (found === undefined || own === undefined || put === undefined || kg === undefined) return undefined;
  const isIt = (phase: Phase): boolean => ratio(phase.of, own) !== undefined;
  const doubts = found.conditions.flatMap(({ phase }) =>
    phase !== undefined && isIt(phase) ? [phase.shares[0]?.[0].standardUncertainty ?? 0] : [],
  );
  const by = Math.max(0, ...doubts);
  if (by === 0) return undefined;
  const celsius = pot.books.temperature.toNumber("°C");
  const [one, other] = [by, -by].map((shift) => {
    const lower = { by: shift, which: isIt };
    const beaker = settled(put.pours, celsius, put.fizzed, { solids: "fresh", lower, near: found });
    return beaker === undefined ? undefined : keptPerKilogram(pot, kg, matter, beaker, own);
  });
  if (one === undefined || other === undefined) return undefined;
  return [forAll(Math.min(one, other), pot, matter, 3), forAll(Math.max(one, other), pot, matter, 3)];
}

/** Formula units of a solid that a kilogram of water could make of what it keeps of its ions. */
function leastDissolved(beaker: Beaker, own: ReadonlyMap<string, number>): number | undefined {
  let least = Number.POSITIVE_INFINITY;
  for (const [key, count] of own) {
    if (key === HYDRON || !(count > 0)) continue;
    least = Math.min(least, beaker.dissolved(key) / count);
  }
  return Number.isFinite(least) ? least / beaker.water : undefined;
}

/** May a solid stand, and nothing of it does, nor anything else of its metal? Then all of it stays dissolved. */
export function staysDissolved(pot: Booked, matter: Matter): boolean {
  const found = ownStanding(pot);
  const own = componentsOf(matter.formula);
  if (found === undefined || own === undefined || unitsIn(found, own) > 0) return false;
  const isAllowed = found.conditions.some(({ phase }) => phase !== undefined && ratio(phase.of, own) !== undefined);
  return isAllowed && standsInstead(pot, matter).length === 0;
}

/** Does a solid not stand, by the equilibrium or that of a weaker liquor? False where nothing is known. */
export function standsNot(pot: Booked, matter: Matter): boolean {
  const found = standingIn(pot);
  const own = componentsOf(matter.formula);
  if (found === undefined || own === undefined) return false;
  return !found.solids.some(({ phase }) => ratio(phase.of, own) !== undefined && isFormOf(phase, matter.formula));
}

/** The parts that stand of a solid without a constant, and the most of it that the liquor keeps by theirs. */
export function keptByParts(
  pot: Booked,
  matter: Matter,
  put: readonly Matter["formula"][],
): (Parts & { readonly kept: Quantity }) | undefined {
  const found = ownStanding(pot);
  const own = componentsOf(matter.formula);
  const parts = found === undefined ? undefined : partsOf(found, matter.formula, put);
  if (found === undefined || own === undefined || parts === undefined) return undefined;
  const [metal] = metalsOf(matter, own);
  const perKg = quantity(
    { value: (found.dissolved(metal!) / own.get(metal!)! / found.water).toPrecision(4), unit: "mol/kg" },
    {
      symbol: `b(${matter.name})`,
      label: `most ${matter.name} that a kilogram of this liquor keeps, by ${parts.names.join(" and ")}`,
    },
  );
  const kept = perKg
    .times(pot.books.water)
    .to("mol")
    .named({ symbol: `n(${matter.name}, kept)`, rule: "kept = what a kilogram of the liquor keeps × water" });
  return { ...parts, kept };
}

/** What stands at equilibrium in place of a solid that should have formed, as printed; empty where that stands, or nothing is known. */
export function standsInstead(pot: Booked, matter: Matter): readonly string[] {
  const found = ownStanding(pot);
  const own = componentsOf(matter.formula);
  if (found === undefined || own === undefined) return [];
  const { solids } = found;
  if (solids.some(({ phase }) => ratio(own, phase.of) !== undefined)) return [];
  const metals = metalsOf(matter, own);
  return solids.filter(({ phase }) => metals.some((key) => phase.of.has(key))).map(({ phase }) => printed(phase));
}

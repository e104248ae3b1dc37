// What really stands in a vessel: pH, and how much of each solid the liquor keeps, asked of the equilibrium of the whole
// mixture. Asked per kilogram of water and to four figures, so that a batch of any size has one answer.
import { atomsOf, type Phase } from "../../aqueous/internal";
import { isNonmetal } from "../../equation/internal";
import { parseFormula } from "../../formula";
import { remembering } from "../../foundation/memo";
import { type Quantity, quantity } from "../../quantity";
import { type Beaker, componentsOf, isKnown, printed, ratio, settle } from "../feasibility/beaker";
import type { Books } from "./books";
import type { Entry } from "./entry";
import { type Matter, matterOf } from "./matter";

/** Anything with books: a vessel. */
interface Booked {
  readonly books: Books;
}

/** The equilibrium of a vessel, for each kilogram of its water. */
interface Standing {
  readonly pH: number;
  readonly beaker: Beaker;
}

/** Hydrons and water belong to everything. */
const HYDRON = "H+";

/** Little more water than there is may stand for it, where the liquor is too strong for the model. */
const THINNED = 1.25;

const remembered = /* @__PURE__ */ remembering<Standing | undefined>(600);

/** Metals, sulfur and charcoal stand by; they are no part of the equilibrium. */
const standsBy = ({ matter }: Entry): boolean => matter.formula.size === 1;

/** Things that the beaker of a vessel contains, mol for each kilogram of water; undefined where there is too little water or a stranger. */
function perKilogram({ books }: Booked): { readonly matter: Matter; readonly moles: number }[] | undefined {
  const kg = books.water.toNumber() / 1000;
  if (books.waterMissing.length > 0 || !(kg > 0)) return undefined;
  const all: { readonly matter: Matter; readonly moles: number }[] = [];
  for (const entry of [...books.dissolved, ...books.solids]) {
    if (standsBy(entry)) continue;
    if (!isKnown(entry.matter.formula)) return undefined;
    const moles = Number((entry.amount.toNumber() / kg).toPrecision(4));
    if (moles > 0) all.push({ matter: entry.matter, moles });
  }
  return all.length === 0 ? undefined : all;
}

function standingIn(pot: Booked): Standing | undefined {
  const put = perKilogram(pot);
  if (put === undefined) return undefined;
  const celsius = pot.books.temperature.toNumber("°C");
  const key = `${celsius} ${put.map(({ matter, moles }) => `${matter.key} ${moles}`).join(" ")}`;
  return remembered(key, () => {
    const pours = put.map(({ matter, moles }) => ({ formula: matter.formula, moles }));
    const beaker = settle(pours, 1, celsius, { carbonDioxide: "kept", solids: "fresh" });
    return beaker === undefined ? undefined : { pH: beaker.pH, beaker };
  });
}

/** The same where the liquor itself is within the model, and not only a weaker one. */
export function ownStanding(pot: Booked): Standing | undefined {
  const found = standingIn(pot);
  return found === undefined || found.beaker.water > THINNED ? undefined : found;
}

/** Less than this share of the metal in another solid is no solid of its own. */
const OWN_SOLID = 0.02;

/** Solids that contain the metal of a product and are another one, most first; of a stronger liquor, those of a weaker one. */
export function solidsBeside(
  pot: Booked,
  product: Matter,
): readonly { readonly matter: Matter; readonly amount: Quantity }[] {
  const found = standingIn(pot);
  const own = componentsOf(product.formula);
  if (found === undefined || own === undefined) return [];
  const { beaker } = found;
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
    if (ratio(phase.of, own) !== undefined || isBooked(phase.of)) return [];
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

/** How much of a solid stands at the equilibrium of a vessel; undefined where the model does not reach, or does not know it. */
export function standingOf(pot: Booked, matter: Matter): Quantity | undefined {
  const found = ownStanding(pot);
  const of = componentsOf(matter.formula);
  if (found === undefined || of === undefined) return undefined;
  for (const { phase, moles } of found.beaker.solids) {
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

/** How much of a solid the liquor keeps at equilibrium; undefined where it does not stand, or the model does not reach. */
export function keptAtEquilibrium(pot: Booked, matter: Matter): Quantity | undefined {
  const found = ownStanding(pot);
  const own = componentsOf(matter.formula);
  if (found === undefined || own === undefined) return undefined;
  const { beaker } = found;
  const stands = beaker.solids.some(({ phase }) => ratio(own, phase.of) !== undefined);
  if (!stands) return undefined;
  const least = leastDissolved(beaker, own);
  if (least === undefined) return undefined;
  const perKg = quantity(
    { value: least.toPrecision(4), unit: "mol/kg" },
    { symbol: `b(${matter.name})`, label: `${matter.name} that a kilogram of this liquor keeps at equilibrium` },
  );
  return perKg
    .times(pot.books.water)
    .to("mol")
    .named({ symbol: `n(${matter.name}, kept)`, rule: "kept = what a kilogram of the liquor keeps × water" });
}

/** The same with the constant of the solid one standard uncertainty to either side; undefined where that is not known. */
export function keptRange(pot: Booked, matter: Matter): readonly [least: Quantity, most: Quantity] | undefined {
  const found = ownStanding(pot);
  const own = componentsOf(matter.formula);
  const put = perKilogram(pot);
  if (found === undefined || own === undefined || put === undefined) return undefined;
  const isIt = (phase: Phase): boolean => ratio(phase.of, own) !== undefined;
  const doubts = found.beaker.conditions.flatMap(({ phase }) =>
    phase !== undefined && isIt(phase) ? [phase.shares[0]?.[0].standardUncertainty ?? 0] : [],
  );
  const by = Math.max(0, ...doubts);
  if (by === 0) return undefined;
  const pours = put.map(({ matter: one, moles }) => ({ formula: one.formula, moles }));
  const celsius = pot.books.temperature.toNumber("°C");
  const ends = [by, -by].map((one) => {
    const how = {
      carbonDioxide: "kept",
      solids: "fresh",
      lower: { by: one, which: isIt },
      near: found.beaker,
    } as const;
    const beaker = settle(pours, 1, celsius, how);
    return beaker === undefined ? undefined : leastDissolved(beaker, own);
  });
  const [one, other] = ends;
  if (one === undefined || other === undefined) return undefined;
  const amount = (perKg: number): Quantity =>
    quantity({ value: perKg.toPrecision(3), unit: "mol/kg" })
      .times(pot.books.water)
      .to("mol");
  return [amount(Math.min(one, other)), amount(Math.max(one, other))];
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

/** What stands at equilibrium in place of a solid that should have formed, as printed; empty where that stands, or nothing is known. */
export function standsInstead(pot: Booked, matter: Matter): readonly string[] {
  const found = ownStanding(pot);
  const own = componentsOf(matter.formula);
  if (found === undefined || own === undefined) return [];
  const { solids } = found.beaker;
  if (solids.some(({ phase }) => ratio(own, phase.of) !== undefined)) return [];
  const metals = [...own.keys()].filter((key) =>
    matter.formula.symbols.some((s) => !isNonmetal(s) && atomsOf(key).has(s)),
  );
  return solids.filter(({ phase }) => metals.some((key) => phase.of.has(key))).map(({ phase }) => printed(phase));
}

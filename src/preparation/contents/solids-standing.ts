// Which solids stand in a vessel at equilibrium: a product, others of its metal, and what something else precipitates as.
import { atomsOf, type Phase } from "../../aqueous/internal";
import { isNonmetal } from "../../equation/internal";
import { parseFormula } from "../../formula";
import { type Quantity, quantity } from "../../quantity";
import { componentsOf, knowsSolid, printed, ratio, unitsIn } from "../feasibility/beaker";
import { isFormOf } from "../feasibility/oxide-or-hydroxide";
import { type Booked, ownStanding, standingIn } from "./equilibrium";
import { type Matter, matterOf } from "./matter";

/** Components that carry a metal of a formula. */
export const metalsOf = (matter: Matter, own: ReadonlyMap<string, number>): string[] =>
  [...own.keys()].filter((key) => matter.formula.symbols.some((s) => !isNonmetal(s) && atomsOf(key).has(s)));

/** Less than this share of the metal in another solid is not a solid of its own. */
const OWN_SOLID = 0.02;

/** A solid of the equilibrium with how much of it the whole vessel has. */
interface StandingSolid {
  readonly matter: Matter;
  readonly amount: Quantity;
}

/** The equilibrium of a vessel, of a stronger liquor that of a weaker one, beside a product; undefined where either is not known. */
function standingWith(pot: Booked, product: Matter) {
  const beaker = standingIn(pot);
  const own = componentsOf(product.formula);
  return beaker === undefined || own === undefined ? undefined : { beaker, own, metals: metalsOf(product, own) };
}

/** So many moles for each kilogram of water, in all the water of a vessel. */
const inAllWater = (pot: Booked, molesPerKg: number, name: string): Quantity =>
  quantity(
    { value: molesPerKg.toPrecision(4), unit: "mol/kg" },
    { symbol: `b(${name})`, label: `${name} that stands for each kilogram of water, at equilibrium` },
  )
    .times(pot.books.water)
    .to("mol");

const standing = (pot: Booked, phase: Phase, moles: number): StandingSolid => ({
  matter: matterOf(parseFormula(phase.formula)),
  amount: inAllWater(pot, moles, printed(phase)),
});

/** Solids that contain the metal of a product and are another one, most first; of a stronger liquor, those of a weaker one. */
export function solidsBeside(pot: Booked, product: Matter): readonly StandingSolid[] {
  const found = standingWith(pot, product);
  if (found === undefined) return [];
  const { beaker, own, metals } = found;
  const isBooked = (of: ReadonlyMap<string, number>): boolean =>
    pot.books.solids.some(({ matter }) => {
      const there = componentsOf(matter.formula);
      return matter.key !== product.key && there !== undefined && ratio(of, there) !== undefined;
    });
  // Where no constant of the product is known, nothing can be said of what stands in its place.
  if (!knowsSolid(beaker, own)) return [];
  return beaker.solids.flatMap(({ phase, moles }) => {
    const isProduct = ratio(phase.of, own) !== undefined && isFormOf(phase, product.formula);
    if (isProduct || isBooked(phase.of)) return [];
    const share = Math.max(0, ...metals.map((key) => (moles * (phase.of.get(key) ?? 0)) / beaker.total(key)));
    return share < OWN_SOLID ? [] : [standing(pot, phase, moles)];
  });
}

/** Solids that stand beside a product and contain nothing of its metal: what something else in the vessel precipitates as. */
export function solidsApart(pot: Booked, product: Matter): readonly StandingSolid[] {
  const found = standingWith(pot, product);
  if (found === undefined) return [];
  const { beaker, metals } = found;
  return beaker.solids
    .filter(({ phase }) => !metals.some((key) => phase.of.has(key)))
    .map(({ phase, moles }) => standing(pot, phase, moles));
}

/** How much of a solid stands at the equilibrium of a vessel; undefined where the model does not reach, or does not know it. */
export function standingOf(pot: Booked, matter: Matter): Quantity | undefined {
  const found = ownStanding(pot);
  const of = componentsOf(matter.formula);
  if (found === undefined || of === undefined) return undefined;
  for (const { phase, moles } of found.solids) {
    const units = ratio(phase.of, of);
    if (units !== undefined) return inAllWater(pot, moles * units, matter.name);
  }
  return undefined;
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

/** Is a solid one that the equilibrium of a vessel cannot tell of: its solubility product is not known at this temperature? */
export function isStranger(pot: Booked, matter: Matter): boolean {
  const found = standingIn(pot);
  const own = componentsOf(matter.formula);
  return found !== undefined && (own === undefined || !knowsSolid(found, own));
}

/** What stands at equilibrium in place of a solid that should have formed, as printed; empty where that stands, or nothing is known. */
export function standsInstead(pot: Booked, matter: Matter): readonly string[] {
  const found = ownStanding(pot);
  const own = componentsOf(matter.formula);
  if (found === undefined || own === undefined || !knowsSolid(found, own)) return [];
  const { solids } = found;
  if (solids.some(({ phase }) => ratio(own, phase.of) !== undefined)) return [];
  const metals = metalsOf(matter, own);
  return solids.filter(({ phase }) => metals.some((key) => phase.of.has(key))).map(({ phase }) => printed(phase));
}

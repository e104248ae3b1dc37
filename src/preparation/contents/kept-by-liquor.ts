// How much of a solid the liquor of a vessel keeps at equilibrium, with the doubt of its constants, or by the parts that stand.
import { doubtOfSolids } from "../../aqueous/internal";
import { list } from "../../foundation/wording";
import { type Quantity, quantity } from "../../quantity";
import { type Beaker, componentsOf, ratio, unitsIn } from "../feasibility/beaker";
import { type Parts, partsOf } from "../feasibility/by-parts";
import type { Entry } from "./entry";
import { type Booked, ownStanding, waterOf } from "./equilibrium";
import type { Matter } from "./matter";
import { metalsOf } from "./solids-standing";

/** Hydrons and water belong to everything. */
const HYDRON = "H+";

/** Differences below this share of a solid are rounding of its amounts. */
const NOISE = 0.001;

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
  return quantity({ value: perKg.toPrecision(figures), unit: "mol/kg" }, { symbol: `b(${matter.name})`, label })
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

/**
 * The same one standard uncertainty to either side, by all constants of the liquor and the activity model; undefined where it does not
 * stand.
 */
export function keptRange(pot: Booked, matter: Matter): readonly [least: Quantity, most: Quantity] | undefined {
  const found = ownStanding(pot);
  const own = componentsOf(matter.formula);
  const kg = waterOf(pot);
  if (found === undefined || own === undefined || kg === undefined) return undefined;
  const kept = keptPerKilogram(pot, kg, matter, found, own);
  const solids = found.conditions.flatMap(({ phase, kind }, j) =>
    kind === "solid" && phase !== undefined && ratio(phase.of, own) !== undefined ? [j] : [],
  );
  const stands = unitsIn(found, own) / found.water;
  if (kept === undefined || stands === 0) return undefined;
  const by = doubtOfSolids(found.start, solids) / found.water;
  return [forAll(Math.max(0, kept - by), pot, matter, 3), forAll(Math.min(kept + stands, kept + by), pot, matter, 3)];
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
      label: `most ${matter.name} that a kilogram of this liquor keeps, by ${list(parts.names)}`,
    },
  );
  const kept = perKg
    .times(pot.books.water)
    .to("mol")
    .named({ symbol: `n(${matter.name}, kept)`, rule: "kept = what a kilogram of the liquor keeps × water" });
  return { ...parts, kept };
}

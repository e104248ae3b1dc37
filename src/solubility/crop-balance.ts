// The one balance behind every crop: what the cold liquor holds stays, the rest falls out as the solid in contact with
// it, and a hydrate takes its crystal water out of the liquor as it falls.
import { molarMass } from "../formula";
import { type Quantity, quantity } from "../quantity";
import { SolubilityError } from "./error";
import { hundredGrams } from "./figure";
import { anhydrousMolarMass, type Solute } from "./solute";

/** Anhydrous share of a solid's mass. */
export function shareOf(solid: Solute): Quantity {
  if (!solid.isHydrate) return quantity("1");
  return anhydrousMolarMass(solid)
    .dividedBy(molarMass(solid.formula))
    .named({
      symbol: "f",
      label: `anhydrous share of ${solid.formula}`,
      rule: "f = anhydrous molar mass / molar mass",
    });
}

/** Crystals and the liquor they leave. */
export interface Balance {
  /** Crystals. */
  readonly mass: Quantity;
  /** Anhydrous salt and water left in the liquor. */
  readonly dry: Quantity;
  readonly water: Quantity;
}

/**
 * Crystals from a liquor holding `dry` anhydrous salt in `water`, at solubility `s`; undefined if none fall. Where the
 * crystals would take up all the water there is, there is no liquor and the balance does not hold: refused.
 */
export function cropFrom(
  dry: Quantity,
  water: Quantity,
  s: Quantity,
  solid: Solute,
  words: string,
): Balance | undefined {
  const share = shareOf(solid);
  const kept = s.times(water).dividedBy(hundredGrams());
  const over = dry.minus(kept);
  if (!over.isPositive()) return undefined;
  const divisor = solid.isHydrate
    ? share.minus(s.dividedBy(hundredGrams()).times(quantity("1").minus(share)))
    : quantity("1");
  if (!divisor.isPositive()) {
    throw new SolubilityError(
      "solubility.any-proportion",
      `${solid.formula} melts in its own water here: there is no crop to compute`,
      {
        details: { formula: solid.formula.toString() },
      },
    );
  }
  const mass = (solid.isHydrate ? over.dividedBy(divisor) : over).named({
    symbol: `m(${solid.formula})`,
    label: words,
    rule: solid.isHydrate
      ? "crop = (anhydrous − S × water / 100 g) / (f − (1 − f) × S / 100 g)"
      : "crop = mass − S × water / 100 g",
  });
  if (!solid.isHydrate) return { mass, dry: dry.minus(mass), water };
  const inCrystals = mass.times(share);
  const waterLeft = water.minus(mass.minus(inCrystals));
  if (!waterLeft.isPositive()) throw noLiquor(dry, water, solid, share);
  return { mass, dry: dry.minus(inCrystals), water: waterLeft };
}

/** All of the salt as this hydrate binds at least the water there is. */
function noLiquor(dry: Quantity, water: Quantity, solid: Solute, share: Quantity): SolubilityError {
  const bound = dry.dividedBy(share).minus(dry);
  const short = bound.minus(water).to("g");
  return new SolubilityError(
    "solubility.no-liquor",
    `${solid.formula} takes up all the water: the solution sets as a whole and leaves no liquor`,
    {
      hint: `keep more than ${bound.to("g").format({ significant: 4 })} of water in the liquor: ${short.format({ significant: 4 })} more than there is`,
      details: { formula: solid.formula.toString(), waterBound: String(bound.value), waterShort: String(short.value) },
    },
  );
}

// The one balance behind every crop: what the cold liquor holds stays, the rest precipitates as the solid in contact with
// it, and a hydrate takes its crystal water out of the liquor as it precipitates.
import { molarMass } from "../../formula";
import { type Quantity, quantity } from "../../quantity";
import { hundredGrams } from "../curves/figure";
import { anhydrousMolarMass, type Solute, soluteOf } from "../curves/solute";
import { SolubilityError } from "../error";
import type { Solubility } from "../record";

/** Anhydrous share of a solid's mass. */
export function shareOf(solid: Solute): Quantity {
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
 * Crystals from a liquor holding `dry` anhydrous salt in `water`, at solubility `s`; undefined if none precipitate. Where the
 * crystals would bind all the water there is, there is no liquor and the balance does not hold: refused.
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
    `${solid.formula} binds all the water: the solution sets as a whole and leaves no liquor`,
    {
      hint: `keep more than ${bound.to("g").format({ significant: 4 })} of water in the liquor: ${short.format({ significant: 4 })} more than there is`,
      details: { formula: solid.formula.toString(), waterBound: String(bound.value), waterShort: String(short.value) },
    },
  );
}

/** What of a solubility the balance asks for: the figure and the solid it is for. */
type Saturation = Pick<Solubility, "perHundredGramsWater" | "solidPhase" | "formula">;

/** One of several salts in a liquor. */
interface Dissolving {
  /** Anhydrous salt, dissolved or not. */
  readonly dry: Quantity;
  readonly solubility: Saturation;
}

/** Water that a gram of anhydrous salt binds in its solid; undefined for a solid without crystal water. */
function boundBy({ solidPhase, formula }: Saturation): Quantity | undefined {
  const solid = soluteOf(solidPhase ?? formula);
  return solid.isHydrate ? quantity("1").dividedBy(shareOf(solid)).minus("1") : undefined;
}

/**
 * What precipitates from a liquor of several salts that each keep their own solubility, as anhydrous masses in the order
 * given (0 g for a salt that all stays), and the water left. A hydrate that precipitates leaves less water for all.
 */
export function settleSalts(
  salts: readonly Dissolving[],
  water: Quantity,
): { readonly solids: readonly Quantity[]; readonly water: Quantity } {
  const per = salts.map(({ dry, solubility }) => ({
    dry,
    s: solubility.perHundredGramsWater.dividedBy(hundredGrams()),
    bound: boundBy(solubility),
    solubility,
  }));
  let left = water;
  let falling = per.filter(({ dry, s }) => dry.compare(s.times(left)) > 0);
  let known: number;
  do {
    known = falling.length;
    // left = water − sum of bound (dry − s left), over the hydrates that precipitate
    let [free, keep]: [Quantity, Quantity] = [water, quantity("1")];
    for (const { dry, s, bound } of falling) {
      if (bound === undefined) continue;
      free = free.minus(bound.times(dry));
      keep = keep.minus(bound.times(s));
    }
    if (falling.every(({ bound }) => bound === undefined)) break;
    if (!free.isPositive() || !keep.isPositive()) throw setsSolid(falling.map(({ solubility }) => solubility));
    left = free
      .dividedBy(keep)
      .named({ label: "water left in the liquor", rule: "water − crystal water of the solids" });
    falling = per.filter(({ dry, s }) => dry.compare(s.times(left)) > 0);
  } while (known < falling.length);
  return {
    solids: per.map((salt) => (falling.includes(salt) ? salt.dry.minus(salt.s.times(left)) : quantity("0 g"))),
    water: left,
  };
}

function setsSolid(falling: readonly Saturation[]): SolubilityError {
  const names = falling.map(({ solidPhase, formula }) => solidPhase ?? formula);
  return new SolubilityError(
    "solubility.no-liquor",
    `${names.join(" and ")} bind all the water: the solution sets as a whole and leaves no liquor`,
    { hint: "use more water", details: { solids: names } },
  );
}

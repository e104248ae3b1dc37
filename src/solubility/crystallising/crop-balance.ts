// The one balance behind every crop: what the cold liquor holds stays, the rest precipitates as the solid in contact with
// it, and a hydrate takes its crystal water out of the liquor as it precipitates.
import { molarMass } from "../../formula";
import { once } from "../../foundation/memo";
import { list } from "../../foundation/wording";
import { type Quantity, quantity } from "../../quantity";
import { hundredGrams } from "../curves/figure";
import { anhydrousMolarMass, type Solute, soluteOf } from "../curves/solute";
import { SolubilityError } from "../error";

const one = /* @__PURE__ */ once((): Quantity => quantity("1"));
const nothing = /* @__PURE__ */ once((): Quantity => quantity("0 g"));

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
  const divisor = solid.isHydrate ? share.minus(s.dividedBy(hundredGrams()).times(one().minus(share))) : one();
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

/** Figures of the balance at a solubility, for any amount of the salt. */
interface Saturated {
  /** Anhydrous salt that a gram of water keeps. */
  readonly s: Quantity;
  /** Water that a gram of anhydrous salt binds in its solid; undefined for a solid without crystal water. */
  readonly bound: Quantity | undefined;
  /** Both as plain numbers. */
  readonly perGram: number;
  readonly binds: number;
  readonly solid: string;
}

export function saturatedBy(perHundredGramsWater: Quantity, solid: string): Saturated {
  const s = perHundredGramsWater.dividedBy(hundredGrams());
  const solute = soluteOf(solid);
  const bound = solute.isHydrate ? one().dividedBy(shareOf(solute)).minus(one()) : undefined;
  return { s, bound, perGram: s.toNumber(""), binds: bound?.toNumber("") ?? 0, solid };
}

/** One of several salts in a liquor. */
interface Dissolving {
  /** Anhydrous salt, dissolved or not. */
  readonly dry: Quantity;
  readonly saturated: Saturated;
}

/** One of several salts in plain grams. */
interface PlainSalt {
  /** Anhydrous salt, dissolved or not. */
  readonly dry: number;
  /** Grams of it that a gram of water keeps. */
  readonly perGram: number;
  /** Grams of water that a gram of it binds as it precipitates. */
  readonly binds: number;
}

/**
 * Which of the salts precipitate from so much water, and the water that is left: undefined where their crystals would bind all of it.
 * A hydrate that precipitates leaves less water for all, so that one may bring out another.
 */
export function fallingFrom(
  salts: readonly PlainSalt[],
  water: number,
): { readonly falls: readonly boolean[]; readonly water: number | undefined } {
  let left = water;
  let falls = salts.map(({ dry, perGram }) => dry > perGram * left);
  for (let known = -1; known !== falls.filter(Boolean).length; ) {
    known = falls.filter(Boolean).length;
    // left = water - sum of binds (dry - perGram left), over what precipitates
    let [free, keep] = [water, 1];
    salts.forEach(({ dry, perGram, binds }, i) => {
      if (!falls[i]) return;
      free -= binds * dry;
      keep -= binds * perGram;
    });
    if (free <= 0 || keep <= 0) return { falls, water: undefined };
    left = free / keep;
    falls = salts.map(({ dry, perGram }, i) => falls[i]! || dry > perGram * left);
  }
  return { falls, water: left };
}

/**
 * What precipitates from a liquor of several salts that each keep their own solubility, as anhydrous masses in the order
 * given (0 g for a salt that all stays), and the water left. A hydrate that precipitates leaves less water for all.
 */
export function settleSalts(
  salts: readonly Dissolving[],
  water: Quantity,
): { readonly solids: readonly Quantity[]; readonly water: Quantity } {
  const { falls, water: some } = fallingFrom(
    salts.map(({ dry, saturated: { perGram, binds } }) => ({ dry: dry.toNumber("g"), perGram, binds })),
    water.toNumber("g"),
  );
  const falling = salts.filter((_, i) => falls[i]);
  if (some === undefined) throw setsSolid(falling.map(({ saturated }) => saturated.solid));
  const hydrates = falling.flatMap(({ dry, saturated: { s, bound } }) =>
    bound === undefined ? [] : [{ dry, s, bound }],
  );
  const free = hydrates.reduce((all, { dry, bound }) => all.minus(bound.times(dry)), water);
  const keep = hydrates.reduce((all, { s, bound }) => all.minus(bound.times(s)), one());
  const left =
    hydrates.length === 0
      ? water
      : free.dividedBy(keep).named({ label: "water left in the liquor", rule: "water − crystal water of the solids" });
  return {
    solids: salts.map(({ dry, saturated: { s } }, i) => (falls[i] ? dry.minus(s.times(left)) : nothing())),
    water: left,
  };
}

function setsSolid(names: readonly string[]): SolubilityError {
  return new SolubilityError(
    "solubility.no-liquor",
    `${list(names)} bind all the water: the solution sets as a whole and leaves no liquor`,
    { hint: "use more water", details: { solids: names } },
  );
}

// Water for dissolving: how much to add for a salt as weighed, for several salts in one liquor, and the same solubility
// on the bases other people use. Crystal water counts as water, because in the saturated solution it is.

import { densityOfWater, type MassLike, type TemperatureLike } from "../../amount";
import type { Formula } from "../../formula";
import type { Fields } from "../../foundation/argument";
import { type Facts, lookingIn } from "../../foundation/facts";
import { readable } from "../../foundation/readable";
import { maximum, type NumberLike, type Quantity, quantity, sum } from "../../quantity";
import { expectDimension } from "../../quantity/internal";
import { guard } from "../argument";
import { type Figure, figureAt, hundredGrams, positiveMass, type SolubilityFigure } from "../curves/figure";
import { anhydrousMass, type Solute, soluteOf } from "../curves/solute";
import { SolubilityError } from "../error";
import { saltIons } from "../precipitating/ions";
import type { Solubility } from "../record";

const DISSOLVING = {
  formula: true,
  mass: true,
  temperature: true,
  waterFactor: true,
  solubility: true,
  facts: true,
} as const satisfies Fields<DissolvingRequest>;

const LIQUOR_SALT = { formula: true, mass: true, solubility: true } as const satisfies Fields<LiquorSalt>;

const LIQUOR = { salts: [LIQUOR_SALT], temperature: true, waterFactor: true, facts: true } as const satisfies Fields<
  Parameters<typeof waterForSolution>[0]
>;

/** What `waterToDissolve` needs to know. */
export interface DissolvingRequest {
  /** The salt as weighed, crystal water included. */
  readonly formula: string | Formula;
  /** Mass as weighed, > 0. */
  readonly mass: MassLike;
  /** Temperature at which it has to be dissolved. */
  readonly temperature: TemperatureLike;
  /** Total water over what just dissolves it, >= 1: 1 saturated, 1.1 to 1.3 for crystallising, 2 to 5 for a feed. Default 1. */
  readonly waterFactor?: NumberLike;
  /** Your own solubility, g anhydrous per 100 g water, instead of the table's. */
  readonly solubility?: SolubilityFigure;
  /** Facts of the caller's own, looked up before the tables. */
  readonly facts?: Facts | undefined;
}

/** Water for one salt. */
export interface DissolvingWater {
  /** Water to add; 0 g when the crystal water alone is enough. */
  readonly water: Quantity<"mass">;
  /** The same as a volume of water measured at 20 °C. */
  readonly volume: Quantity<"volume">;
  /** All water in the solution, crystal water included. */
  readonly totalWater: Quantity<"mass">;
  /** Salt in the solution, without its crystal water. */
  readonly anhydrousMass: Quantity<"mass">;
  /** The salt dissolves in its own crystal water on warming. */
  readonly meltsInOwnWater: boolean;
  /** Solubility used: g anhydrous per 100 g of all water. */
  readonly perHundredGramsWater: Quantity<"mass">;
  /** The table's answer; undefined when a solubility was passed in. */
  readonly solubility: Solubility | undefined;
  /** What to know before relying on it. */
  readonly warnings: readonly string[];
}

function waterFactorOf(given: NumberLike | undefined): Quantity | undefined {
  if (given === undefined) return undefined;
  const waterFactor = quantity({ value: given, unit: "" }, { symbol: "h", label: "water factor" });
  if (waterFactor.compare("1") >= 0) return waterFactor;
  throw new SolubilityError(
    "solubility.out-of-reach",
    `a water factor below 1 leaves salt undissolved (${waterFactor})`,
    {
      hint: "1 is just saturated; 1.1 to 1.3 leaves room for crystallising",
    },
  );
}

function volumeOf(water: Quantity): Quantity {
  return water
    .dividedBy(densityOfWater("20 °C"))
    .to("mL")
    .named({ symbol: "V(H2O)", label: "water to measure at 20 °C", rule: "volume = mass / density of water" });
}

const nothing = (): Quantity => quantity("0 g");

function waterFor(solute: Solute, mass: Quantity, figure: Figure, waterFactor: Quantity | undefined) {
  const dry = anhydrousMass(solute, mass);
  const total = (waterFactor === undefined ? dry : waterFactor.times(dry))
    .times(hundredGrams())
    .dividedBy(figure.perHundredGramsWater)
    .named({
      symbol: "m(H2O, total)",
      label: "water in the solution",
      rule: `total water = ${waterFactor === undefined ? "" : "water factor × "}anhydrous mass × 100 g / solubility`,
    });
  const added = solute.isHydrate ? total.minus(mass.minus(dry)) : total;
  const meltsInOwnWater = solute.isHydrate && !added.isPositive();
  const water = (meltsInOwnWater ? nothing() : added).named({
    symbol: "m(H2O)",
    label: "water to add",
    ...(meltsInOwnWater
      ? { rule: "none: the crystal water is enough" }
      : { rule: "water to add = total water − crystal water" }),
  });
  return { dry, total, water, meltsInOwnWater };
}

/**
 * Water that a weighed salt needs to dissolve at a temperature.
 *
 * @param request - salt as weighed, mass, temperature; `waterFactor` (>= 1, default 1) multiplies the water
 * @returns mass and volume of water to add; crystal water has been counted, and when it suffices the answer is 0 g
 * @throws {SolubilityError} `solubility.missing-option`, `solubility.bad-option`, `solubility.no-data`,
 *   `solubility.outside-range`, `solubility.not-positive`,
 *   `solubility.out-of-reach` (a water factor below 1) and the other codes of `solubilityOf`
 * @source water balance over the saturated solution; the solubility names its own source
 * @category Dissolving
 * @example
 * waterToDissolve({ formula: "CuSO4·5H2O", mass: "50 g", temperature: "20 °C" }).water.format({ decimals: 1 }) // => "141.8 g"
 */
export function waterToDissolve(request: DissolvingRequest): DissolvingWater {
  guard.fields(request, DISSOLVING, "request");
  if (request.facts !== undefined) {
    const { facts, ...others } = request;
    return lookingIn(facts, guard, () => waterToDissolve(others));
  }
  const solute = soluteOf(request.formula);
  const mass = positiveMass(request.mass, "mass", `m(${solute.formula})`, `${solute.formula} as weighed`);
  const waterFactor = waterFactorOf(request.waterFactor);
  const figure = figureAt(solute.formula, request.temperature, request.solubility, "solubility");
  const { dry, total, water, meltsInOwnWater } = waterFor(solute, mass, figure, waterFactor);
  const warnings = [...figure.warnings];
  if (meltsInOwnWater) warnings.push("dissolves in its own crystal water at this temperature");
  return readable({
    water,
    volume: volumeOf(water),
    totalWater: total,
    anhydrousMass: dry,
    meltsInOwnWater,
    perHundredGramsWater: figure.perHundredGramsWater,
    solubility: figure.solubility,
    warnings,
  });
}

/** One salt among several in a liquor. */
export interface LiquorSalt {
  /** As weighed, crystal water included. */
  readonly formula: string | Formula;
  /** As weighed, crystal water included. */
  readonly mass: MassLike;
  /** Your own solubility, g anhydrous per 100 g water. */
  readonly solubility?: SolubilityFigure;
}

/** Water for several salts dissolved together. */
export interface LiquorWater {
  /** Water to add. */
  readonly water: Quantity<"mass">;
  /** The same as a volume of water measured at 20 °C. */
  readonly volume: Quantity<"volume">;
  /** What each salt would need alone, in the order given. */
  readonly alone: readonly DissolvingWater[];
  /** Salts that share an ion push each other out, so their waters are added; otherwise the largest counts. */
  readonly sharesIon: boolean;
  /** How the waters of the salts were put together, in words. */
  readonly assumption: string;
  /** What to know before relying on it. */
  readonly warnings: readonly string[];
}

function sharesIon(solutes: readonly Solute[]): boolean {
  const seen = new Set<string>();
  for (const { anhydrous } of solutes) {
    const ions = saltIons(anhydrous);
    if (ions === undefined) continue;
    const own = ions.map(({ formula }) => formula);
    if (own.some((ion) => seen.has(ion))) return true;
    for (const ion of own) seen.add(ion);
  }
  return false;
}

/**
 * Water for several salts in one liquor. Without a common ion the salt that needs most water decides; with one, the waters are
 * added, which is on the safe side.
 *
 * @param request - the salts as weighed, the temperature, and the `waterFactor` (>= 1, default 1)
 * @returns water to add, what each salt would need alone, and the assumption used
 * @throws {SolubilityError} `solubility.bad-option`, as `waterToDissolve`; `solubility.missing-option` for an empty
 *   list
 * @source common practice, no source: mutual influence of salts is neglected but for a common ion
 * @category Dissolving
 * @example
 * waterForSolution({ salts: [{ formula: "KNO3", mass: "10 g" }, { formula: "NaCl", mass: "10 g" }], temperature: "20 °C" }).sharesIon // => false
 */
export function waterForSolution(request: {
  readonly salts: readonly LiquorSalt[];
  readonly temperature: TemperatureLike;
  readonly waterFactor?: NumberLike;
  /** Facts of the caller's own, looked up before the tables. */
  readonly facts?: Facts | undefined;
}): LiquorWater {
  guard.fields(request, LIQUOR, "request");
  if (request.facts !== undefined) {
    const { facts, ...others } = request;
    return lookingIn(facts, guard, () => waterForSolution(others));
  }
  const { salts, temperature, waterFactor } = request;
  guard.list(salts, "salts");
  if (salts.length === 0) throw new SolubilityError("solubility.missing-option", "no salt named");
  const alone = salts.map(({ formula, mass, solubility }) =>
    waterToDissolve({
      formula,
      mass,
      temperature,
      ...(waterFactor === undefined ? {} : { waterFactor }),
      ...(solubility === undefined ? {} : { solubility }),
    }),
  );
  const shared = sharesIon(salts.map(({ formula }) => soluteOf(formula)));
  const totals = alone.map(({ totalWater }) => totalWater);
  const crystal = salts.map(({ formula, mass }, i) => {
    const solute = soluteOf(formula);
    return solute.isHydrate ? expectDimension(mass, "mass", "mass").minus(alone[i]!.anhydrousMass) : nothing();
  });
  const needed = (shared ? sum(totals) : maximum(totals)).minus(sum(crystal));
  const assumption = shared
    ? "salts with a common ion: their waters are added"
    : "no common ion: the salt that needs most water decides; other influence of salts on each other is neglected";
  const water = (needed.isPositive() ? needed : nothing()).named({
    symbol: "m(H2O)",
    label: "water to add",
    rule: shared ? "sum of the waters − crystal water" : "largest of the waters − crystal water",
    assumption,
  });
  return readable({
    water,
    volume: volumeOf(water),
    alone,
    sharesIon: shared,
    assumption,
    warnings: alone.flatMap(({ warnings }) => warnings),
  });
}

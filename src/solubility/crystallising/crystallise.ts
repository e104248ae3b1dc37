// Crystallising: water for the hot solution, the crop in its true hydrate, what the liquor keeps, a second crop after
// evaporating. One water balance does it all: crystals take water out of the liquor.

import type { MassLike, TemperatureLike } from "../../amount";
import type { Formula } from "../../formula";
import type { Fields } from "../../foundation/argument";
import { attempt } from "../../foundation/error";
import { bringsFacts, type LookupOptions, withItsFacts } from "../../foundation/facts";
import { once } from "../../foundation/memo";
import { readable } from "../../foundation/readable";
import { type NumberLike, type Quantity, type QuantityLike, quantity } from "../../quantity";
import { expectDimension } from "../../quantity/internal";
import { guard } from "../argument";
import { figureAt, positiveMass, type SolubilityFigure } from "../curves/figure";
import type { WorkingPoint } from "../curves/picture";
import { solidTransitions } from "../curves/solid-changes";
import { type Solute, soluteOf } from "../curves/solute";
import { waterToDissolve } from "../dissolving/dissolve";
import { SolubilityError } from "../error";
import { type Balance, cropFrom, shareOf } from "./crop-balance";

const CRYSTALLISING = {
  formula: true,
  mass: true,
  hot: true,
  cold: true,
  water: true,
  waterFactor: true,
  hotSolubility: true,
  coldSolubility: true,
  evaporateTo: true,
  facts: true,
} as const satisfies Fields<CrystallisingRequest>;

/** What `crystallise` needs to know. */
export interface CrystallisingRequest extends LookupOptions {
  /** The salt as weighed, crystal water included. */
  readonly formula: string | Formula;
  /** As weighed, crystal water included. */
  readonly mass: MassLike;
  /** Temperature of the clear hot solution. */
  readonly hot: TemperatureLike;
  /** Temperature at which the crystals are taken off, below `hot`. */
  readonly cold: TemperatureLike;
  /** Water added; without it, what just dissolves the salt at `hot` times `waterFactor` (default 1). */
  readonly water?: MassLike;
  /** Water for each water that just dissolves the salt; 1 unless given. */
  readonly waterFactor?: NumberLike;
  /** Your own solubilities, g anhydrous per 100 g water. */
  readonly hotSolubility?: SolubilityFigure;
  /** At the cold temperature; g anhydrous per 100 g water. */
  readonly coldSolubility?: SolubilityFigure;
  /** For a second crop: share of the liquor's water left after evaporating, between 0 and 1. */
  readonly evaporateTo?: NumberLike;
}

/** One crop of crystals. */
export interface Crop {
  /** What the crystals are. */
  readonly formula: string;
  /** Dry, crystal water included. */
  readonly mass: Quantity<"mass">;
  /** Share of all the salt that is in this crop. */
  readonly share: Quantity<"number">;
}

/** A crystallisation. */
export interface Crystallisation {
  /** Water to add for the hot solution. */
  readonly water: Quantity<"mass">;
  /** Water of the hot solution, crystal water included. */
  readonly totalWater: Quantity<"mass">;
  /** What too little water leaves undissolved at the hot end, taken off before cooling; undefined when all dissolves. */
  readonly undissolvedHot: Crop | undefined;
  /** Crystals that cooling gives. */
  readonly crop: Crop;
  /** Salt that stays in the cold liquor, in the form of the crop; recoverable, not lost. */
  readonly leftInLiquor: Quantity<"mass">;
  /** Water left in the liquor. */
  readonly liquorWater: Quantity<"mass">;
  /** Undefined when not asked for, or, with a warning, when so little water would leave no liquor. */
  readonly secondCrop:
    | (Crop & { readonly waterToEvaporate: Quantity<"mass">; readonly leftInLiquor: Quantity<"mass"> })
    | undefined;
  /** Hot solution, cooled solution, liquor, as grams of anhydrous salt per 100 g of water: for drawing. */
  readonly path: readonly WorkingPoint[];
  /** What to know before relying on it. */
  readonly warnings: readonly string[];
}

/** Salts known to stay dissolved far beyond saturation until seeded (common practice, no source). */
const SUPERSATURATES = [
  "Na2S2O3",
  "KNaC4H4O6",
  "NaCH3COO",
  "Na2SO4",
  "Na2CO3",
  "KAl(SO4)2",
  "NH4Al(SO4)2",
  "KCr(SO4)2",
  "Na2B4O7",
  "CaSO4",
  "C6H8O7",
  "Ca(NO3)2",
  "Mg(NO3)2",
  "Zn(NO3)2",
  "Ca(C3H5O3)2",
];

/** By what they are, not by how they are written. */
const supersaturating = /* @__PURE__ */ once(() => new Set(SUPERSATURATES.map((text) => soluteOf(text).key)));

/** @internal Is it known to stay dissolved far beyond saturation until it is seeded? */
export const staysSupersaturated = (formula: string | Formula): boolean => supersaturating().has(soluteOf(formula).key);

const nameOf = (solidPhase: string | undefined, solute: Solute): string => solidPhase ?? solute.formula.toString();

function changesBetween(solute: Solute, cold: number, hot: number): string[] {
  const known = attempt(() => solidTransitions(solute.formula));
  if (!known.ok) return [];
  return known.value
    .filter(({ celsius }) => celsius >= cold && celsius <= hot)
    .map(
      ({ celsius, below = "another solid", above = "another solid" }) =>
        `the solid changes at ${celsius} °C: ${above} above, ${below} below; cool past it before filtering`,
    );
}

/**
 * Crystallise a salt by cooling: water for the hot solution, crop, and what the liquor keeps.
 *
 * @param request - salt as weighed, hot and cold temperature; `water` or `waterFactor`; `evaporateTo` for a second crop
 * @returns water to add, the crop in the hydrate that belongs to the cold temperature, liquor, second crop, warnings
 * @throws {SolubilityError} `solubility.missing-option`, `solubility.bad-option`, `solubility.no-crop` when the cold
 *   liquor holds everything, `solubility.no-liquor` when the crystals would bind all the water, `solubility.any-proportion`,
 *   `solubility.out-of-reach` (hot not above cold, evaporation outside 0 to 1), and the codes of `solubilityOf`
 * @source water balance over the saturated solution; the list of salts that stay supersaturated is common practice
 * @category Crystallising
 * @example
 * crystallise({ formula: "KNO3", mass: "100 g", hot: "80 °C", cold: "10 °C" }).crop.mass.format({ decimals: 1 }) // => "87.4 g"
 */
export function crystallise(request: CrystallisingRequest): Crystallisation {
  if (bringsFacts(request)) return withItsFacts(request, guard, crystallise);
  guard.fields(request, CRYSTALLISING, "request");
  const solute = soluteOf(request.formula);
  const [hot, cold] = (["hot", "cold"] as const).map((name) =>
    expectDimension(request[name], "temperature", name).toNumber("°C"),
  ) as [number, number];
  if (!(hot > cold)) {
    throw new SolubilityError(
      "solubility.out-of-reach",
      `the hot solution (${hot} °C) must be hotter than the cold one (${cold} °C)`,
      {
        hint: "a salt that dissolves better cold is filtered hot: ask lossToLiquor at both temperatures",
      },
    );
  }
  const dissolved = dissolvedHot(request, solute);
  const figure = figureAt(solute.formula, request.cold, request.coldSolubility, "coldSolubility");
  const solid = soluteOf(figure.solidPhase ?? solute.formula);
  const warnings = [...dissolved.warnings, ...figure.warnings, ...changesBetween(solute, cold, hot)];
  if (figure.solubility !== undefined && figure.solidPhase === undefined) {
    warnings.push(`the crop is counted as ${solute.formula} because the table does not name the solid`);
  }
  if (staysSupersaturated(solute.formula)) warnings.push("stays supersaturated easily: seed it (common practice)");
  const first = cropFrom(
    dissolved.dry,
    dissolved.water,
    figure.perHundredGramsWater,
    solid,
    "crystals in the first crop",
  );
  if (first === undefined) {
    throw new SolubilityError(
      "solubility.no-crop",
      `at ${cold} °C the liquor still contains all the ${solute.anhydrous}`,
      {
        hint: "use less water, cool further, or evaporate",
        details: { formula: solute.formula.toString(), cold },
      },
    );
  }
  const share = shareOf(solid);
  const inForm = (dry: Quantity, label: string): Quantity =>
    (solid.isHydrate ? dry.dividedBy(share) : dry).named({ label, rule: "what was dissolved − what crystallised" });
  const ofAll = (mass: Quantity): Quantity =>
    (solid.isHydrate ? mass.times(share) : mass).dividedBy(dissolved.all).to("%");
  const crop = { formula: nameOf(figure.solidPhase, solute), mass: first.mass, share: ofAll(first.mass) };
  const again = secondCrop(request, first, figure.perHundredGramsWater, crop.formula, solid, inForm, ofAll, warnings);
  if (again !== undefined) {
    const water = first.water.minus(again.waterToEvaporate);
    if (first.dry.times("100 g").dividedBy(water).compare(dissolved.saturated) > 0)
      warnings.push(
        `boiled down for the second crop, the liquor contains more ${solute.anhydrous} than water dissolves at ${hot} °C: some of it crystallises hot`,
      );
  }
  return readable({
    water: dissolved.added,
    totalWater: dissolved.totalWater,
    undissolvedHot: dissolved.undissolved,
    crop,
    leftInLiquor: inForm(first.dry, `${solid.formula} in the cold liquor`),
    liquorWater: first.water.named({ label: "water in the cold liquor", rule: "water − crystal water of the crop" }),
    path: pathOf(hot, cold, dissolved, figure.perHundredGramsWater),
    secondCrop: again,
    warnings: [...new Set(warnings)],
  });
}

function pathOf(
  hot: number,
  cold: number,
  { dry, water }: { dry: Quantity; water: Quantity },
  s: Quantity,
): WorkingPoint[] {
  const grams = (dry.toNumber("g") / water.toNumber("g")) * 100;
  return [
    { celsius: hot, grams, label: "hot solution" },
    { celsius: cold, grams, label: "cooled" },
    { celsius: cold, grams: s.toNumber("g"), label: "liquor" },
  ];
}

function dissolvedHot(request: CrystallisingRequest, solute: Solute) {
  if (request.water !== undefined && request.waterFactor !== undefined) {
    throw new SolubilityError("solubility.conflicting-options", "water and waterFactor are both given");
  }
  const { formula, mass, hot, waterFactor, hotSolubility } = request;
  const needed = waterToDissolve({
    formula,
    mass,
    temperature: hot,
    ...(waterFactor === undefined ? {} : { waterFactor }),
    ...(hotSolubility === undefined ? {} : { solubility: hotSolubility }),
  });
  const all = needed.anhydrousMass;
  const clear = (added: Quantity, water: Quantity) => ({
    ...{ added, totalWater: water, water, dry: all, all, saturated: needed.perHundredGramsWater },
    undissolved: undefined as Crop | undefined,
    warnings: needed.warnings,
  });
  if (request.water === undefined) return clear(needed.water, totalOf(needed, mass));
  const added = positiveMass(request.water, "water", "m(H2O)", "water added");
  const crystal = expectDimension(mass, "mass", "mass").minus(all);
  const water = solute.isHydrate ? added.plus(crystal) : added;
  if (added.compare(needed.water) >= 0) return clear(added, water);
  const solid = soluteOf(needed.solubility?.solidPhase ?? solute.formula);
  const left = cropFrom(all, water, needed.perHundredGramsWater, solid, "left undissolved at the hot end");
  if (left === undefined) return clear(added, water);
  const undissolved = {
    formula: nameOf(needed.solubility?.solidPhase, solute),
    mass: left.mass,
    share: all.minus(left.dry).dividedBy(all).to("%"),
  };
  const warning = `not all dissolves hot: ${needed.water.format({ significant: 4 })} of water is needed; the crop is that of the clear solution`;
  return {
    ...{ ...clear(added, water), dry: left.dry, water: left.water },
    undissolved,
    warnings: [...needed.warnings, warning],
  };
}

/** A salt that melts in its own water brings more water than it needs. */
function totalOf(needed: ReturnType<typeof waterToDissolve>, mass: QuantityLike): Quantity {
  return needed.meltsInOwnWater ? expectDimension(mass, "mass", "mass").minus(needed.anhydrousMass) : needed.totalWater;
}

function secondCrop(
  request: CrystallisingRequest,
  first: Balance,
  s: Quantity,
  formula: string,
  solid: Solute,
  inForm: (dry: Quantity, label: string) => Quantity,
  ofAll: (mass: Quantity) => Quantity,
  warnings: string[],
): Crystallisation["secondCrop"] {
  if (request.evaporateTo === undefined) return undefined;
  const left = quantity({ value: request.evaporateTo, unit: "" }, { symbol: "x", label: "share of the water left" });
  if (!left.isPositive() || left.compare("1") >= 0) {
    throw new SolubilityError(
      "solubility.out-of-reach",
      `evaporateTo is the share of water left, between 0 and 1, not ${left}`,
    );
  }
  const water = first.water.times(left);
  const outcome = attempt(() => cropFrom(first.dry, water, s, solid, "crystals in the second crop"));
  if (!outcome.ok) {
    if (outcome.error.code !== "solubility.no-liquor") throw outcome.error;
    warnings.push(`no second crop: evaporated so far, ${outcome.error.problem}`);
    return undefined;
  }
  const second = outcome.value;
  if (second === undefined) return undefined;
  return {
    formula,
    mass: second.mass,
    share: ofAll(second.mass),
    waterToEvaporate: first.water
      .minus(water)
      .named({ label: "water to evaporate", rule: "water in the liquor × (1 − x)" }),
    leftInLiquor: inForm(second.dry, `${solid.formula} in the liquor after the second crop`),
  };
}

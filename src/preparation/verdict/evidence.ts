// Figures and words that every explanation of a dry mass uses: what a difference must be to count, what losses explain.

import { parseFormula } from "../../formula";
import type { Quantity } from "../../quantity";
import { matterOf } from "../contents/matter";
import type { Identity } from "../identity/types";
import type { Batch } from "../planning/batch";
import { asMassOfWater, exact, planned } from "../planning/exact";
import { mayLeaveCrucible, standsBesideInCrucible, staysInCrucible, usuallyWater } from "../planning/in-the-crucible";
import type { Hand } from "../procedure/words";
import type { Candidate } from "../reaction/candidates";
import { keptByWater } from "../reaction/fate";
import { firstCropOf, grownBy, ofOtherBatches, precipitatedOf, yieldOfSteps } from "./crops";
import { clearlyAbove } from "./difference";
import type { Dryness } from "./dryness";
import type { Loss } from "./losses";
import type { Observed } from "./observations";

/** A theory less its part of what was lost on the way. */
export const afterLosses = ({ batch, expected, losses }: Evidence, theory: Quantity): Quantity =>
  losses.length === 0 ? theory : theory.times(expected.dividedBy(batch.product.theoreticalYield)).to("g");

/** What else the packs contain that is in the vessel at the end: what nobody knows, and what precipitated with the product. */
export const besidesOf = (evidence: Evidence): Quantity => {
  const { batch } = evidence;
  if (batch.isolation.how === "residue") return staysInFire(evidence);
  const { other, solids } = batch.steps.at(-1)!.before;
  const all = solids
    .filter(({ formula }) => isOfPacks(evidence, formula))
    .reduce((sum, { mass }) => sum.plus(mass), other);
  const isLittle = all.compare(batch.product.theoreticalYield.times(planned("worthAWord"))) <= 0;
  return isLittle ? exact("0 g") : afterLosses(evidence, all);
};

/** What stays in a crucible beside the product: what is left over, fired, and what a pack has besides, unless that is water after all. */
export const staysInFire = (evidence: Evidence): Quantity => afterLosses(evidence, staysInCrucible(evidence.batch));

/** What of that is left over by the calculation, as the fire leaves it. */
export const standsBesideInFire = (evidence: Evidence): Quantity =>
  afterLosses(evidence, standsBesideInCrucible(evidence.batch));

/** What of that the packs bring, and usually is water. */
export const usuallyWaterInFire = (evidence: Evidence): Quantity => afterLosses(evidence, usuallyWater(evidence.batch));

/** What of that may have left with the heat. */
export const mayLeaveFire = (evidence: Evidence): Quantity => afterLosses(evidence, mayLeaveCrucible(evidence.batch));

/** A solid without the metal of the product, of a metal that no species of the equation has: a pack brought it besides. */
function isOfPacks({ batch, observed: { setting } }: Evidence, formula: string): boolean {
  if (batch.isolation.how !== "precipitate" || !setting.materials.some(({ also }) => also.length > 0)) return false;
  const own = new Set([...setting.reactants, ...setting.products].flatMap((one) => one.formula.symbols));
  return parseFormula(formula).symbols.some((symbol) => !own.has(symbol));
}

/** Solids that ignition leaves, where the product is not among them: what they have in common is that they are another one. */
export const othersByFire = ({ batch, identity }: Pick<Evidence, "batch" | "identity">): readonly string[] =>
  identity === undefined || identity.remaining.includes(batch.product.formula) ? [] : identity.remaining;

/** What the crystals are of all that was left, by the record or by the steps; undefined where neither says. */
export function cropOf(evidence: Evidence): Quantity | undefined {
  const { batch, observed } = evidence;
  if (observed.crops > 1) return yieldOfSteps(batch);
  if (observed.filtrateVolume === undefined) return firstCropOf(batch);
  const { kept } = leastExplained(evidence);
  return kept === undefined || batch.isolation.how !== "crystallise"
    ? undefined
    : batch.product.theoreticalYield.minus(kept).to("g");
}

/** How warm the liquor is at the filter: as measured, or as the steps have it. */
export const atTheFilter = ({ batch, observed }: Evidence): Quantity<"temperature"> =>
  batch.crystallising?.cold ?? observed.setting.temperature;

/** Product that each 100 g of water of a mother liquor keeps at the filter. */
export const keptAtTheFilter = (
  evidence: Evidence,
  isolation: Extract<Batch["isolation"], { how: "crystallise" }>,
): Quantity<"mass"> =>
  keptByWater(evidence.observed.setting.product.formula, exact("100 g"), atTheFilter(evidence)) ??
  isolation.retainedPer100g;

/** Product in the liquor that a hot filter keeps with what is on it; nothing where there is none. */
export function onHotFilter({ batch: { steps }, observed: { setting } }: Evidence): Quantity {
  const { formula, molarMass } = setting.product;
  const { name } = matterOf(formula).core;
  return steps
    .flatMap(({ left }) => left)
    .filter(({ what }) => what === "residue")
    .flatMap(({ contents: { dissolved } }) => dissolved.filter((one) => one.formula === name))
    .reduce((all, { amount }) => all.plus(amount.times(molarMass).to("g")), exact("0 g"));
}

/** Crystals that the steps bring of what was weighed: of one mass the first crop, of several all of them. */
const cropsWeighed = ({ batch, observed }: Evidence): Quantity | undefined =>
  (observed.crops > 1 ? yieldOfSteps(batch) : undefined) ?? firstCropOf(batch);

/** What stays in the liquor: by the filtrate that was measured, else by the work as planned; no more than there was. */
function keptByLiquor(evidence: Evidence): Quantity | undefined {
  const { batch, observed } = evidence;
  const { product } = observed.setting;
  const theory = batch.product.theoreticalYield;
  const volume = observed.filtrateVolume;
  const washed = batch.washing !== undefined && "plan" in batch.washing ? batch.washing.plan.productLost : undefined;
  const { completeness } = batch;
  const inLiquor = completeness !== undefined && "dissolved" in completeness ? completeness.dissolved : undefined;
  const crop = volume === undefined ? cropsWeighed(evidence) : undefined;
  const kept =
    volume !== undefined
      ? keptByWater(product.formula, asMassOfWater(volume), atTheFilter(evidence))
      : crop !== undefined
        ? theory.minus(crop)
        : washed === undefined || inLiquor === undefined
          ? (washed ?? inLiquor)
          : washed.plus(inLiquor);
  return kept === undefined || kept.compare(theory) <= 0 ? kept : theory;
}

/** How far what was lost may be from its middle, at one of its ends: nothing where nothing was stirred up in it. */
const doubtOfLosses = ({ losses }: Evidence, end: "atLeast" | "atMost"): Quantity =>
  losses.reduce<Quantity>((all, loss) => all.plus(loss.product.minus(loss[end])), exact("0 g"));

/** The most dry mass that there may be: all that was left, and what the packs contain besides. */
export const mostExplained = (evidence: Evidence): Quantity =>
  grownOrAll(evidence).plus(besidesOf(evidence)).plus(doubtOfLosses(evidence, "atLeast"));

/** All of the product that was left; more where the acid of the liquor may have taken less of the metal than is counted. */
export const mostOfProduct = (evidence: Evidence): Quantity => {
  const { most } = evidence.batch.product;
  return most === undefined ? evidence.expected : afterLosses(evidence, most);
};

/** All of the product that was left; more than that where the salt of an earlier batch is with the crystals. */
function grownOrAll(evidence: Evidence): Quantity {
  const { batch, expected } = evidence;
  const grown = ofOtherBatches(batch).isPositive() ? grownBy(batch) : undefined;
  const all = grown === undefined ? undefined : afterLosses(evidence, grown);
  return all !== undefined && all.compare(expected) > 0 ? all : mostOfProduct(evidence);
}

/** The least dry mass that losses on the way, solubility and handling explain. */
interface Least {
  readonly least: Quantity;
  /** What liquor and washing keep. */
  readonly kept: Quantity | undefined;
  /** Is what was weighed clearly less? */
  readonly isLight: boolean;
}

const explained = /* @__PURE__ */ new WeakMap<Evidence, Least>();

/** The least that is explained, worked out once of an evidence. */
export function leastExplained(evidence: Evidence): Least {
  const before = explained.get(evidence);
  if (before !== undefined) return before;
  const { dry, expected, handlingLoss } = evidence;
  const kept = keptByLiquor(evidence);
  // what the liquor keeps is on no filter
  const part = evidence.observed.filtrateVolume === undefined ? precipitatedOf(evidence.batch) : undefined;
  const handled = part === undefined ? expected : afterLosses(evidence, part);
  const stays = staysInFire(evidence).minus(mayLeaveFire(evidence));
  const afterHandling = expected
    .plus(stays)
    .minus(handled.plus(stays).times(handlingLoss))
    .plus(doubtOfLosses(evidence, "atMost"));
  const least = kept === undefined ? afterHandling : afterHandling.minus(afterLosses(evidence, kept));
  const made = { least, kept, isLight: clearlyAbove(least, dry) };
  explained.set(evidence, made);
  return made;
}

/** What the verdict is made from. */
export interface Evidence {
  readonly batch: Batch;
  /** The product under other formulas: what else precipitates, its hydrates, what air makes of it. */
  readonly candidates: readonly Candidate[];
  /** Formulas of what air makes of it. */
  readonly inAir: ReadonlySet<string>;
  /** Formulas that no table lists: only a test of a sample, or a drying that took much, speaks for them. */
  readonly onlyByTest: ReadonlySet<string>;
  readonly observed: Observed;
  readonly dry: Quantity;
  /** Masses in words, no finer than the balance of the plan. */
  readonly grams: Hand["grams"];
  readonly losses: readonly Loss[];
  /** Theory less what was lost on the way. */
  readonly expected: Quantity;
  readonly dryness: Dryness;
  readonly identity: Identity | undefined;
  readonly handlingLoss: Quantity;
  /** Material the plan expected to run out. */
  readonly plannedLimiting: string;
}

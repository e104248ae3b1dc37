// The run: the plan recomputed from what was really weighed, and the verdict on what came out.

import type { MassLike } from "../amount";
import { attempt, type Result } from "../foundation/error";
import { expectDimension, type Quantity } from "../quantity";
import { reading } from "./account";
import { PlanError } from "./error";
import { portionOf, shareOf } from "./material";
import { batchOf, type Plan, type PlanRecord, planFromJSON, settingBehind } from "./plan";
import type { Portion, ShelfMaterial } from "./request";
import { type Finding, findingsFor, type Yield, yieldsOf } from "./verdict";

/** What was really done; anything left out is taken as planned. */
export interface Observations {
  /** Portions really taken, by the name of the material. */
  readonly weighed?: Readonly<Record<string, Portion>> | undefined;
  /** Mass of the dry product; or successive weighings, the last one last. */
  readonly dried?: MassLike | readonly MassLike[] | undefined;
  /** Anything to print with the run. */
  readonly note?: string | undefined;
}

/** How the run differs from the plan, for one figure. */
export interface Change {
  readonly what: string;
  readonly planned: Quantity | string;
  readonly now: Quantity | string;
}

/** Is the product dry? Constant mass: two weighings that differ by less than the criterion. */
export interface Dryness {
  readonly constant: boolean | undefined;
  readonly lastLoss: Quantity<"mass"> | undefined;
  readonly criterion: Quantity<"mass"> | undefined;
}

/** A preparation as it really went. */
export interface Run extends ReturnType<typeof batchOf> {
  readonly kind: "run";
  readonly plan: Plan;
  readonly observations: Observations;
  readonly changes: readonly Change[];
  readonly dryMass: Quantity<"mass"> | undefined;
  readonly dryness: Dryness;
  readonly yields: readonly Yield[];
  /** Yield against the wanted formula. */
  readonly percentYield: Quantity | undefined;
  readonly verdict: readonly Finding[];
  /** The product as a material for the next plan. */
  asMaterial(options?: { readonly name?: string; readonly assay?: ShelfMaterial["assay"] }): ShelfMaterial;
  toJSON(): RunRecord;
}

/** A run as plain data. */
export interface RunRecord {
  readonly type: "run";
  readonly schema: 1;
  readonly plan: PlanRecord;
  readonly observations: Observations;
}

/** Smallest relative change that still counts as drying (common practice, no source). */
const STILL_DRYING = "0.002";

function drynessOf(masses: readonly Quantity[], step: Quantity): Dryness {
  const last = masses.at(-1);
  const before = masses.at(-2);
  if (last === undefined || before === undefined)
    return { constant: undefined, lastLoss: undefined, criterion: undefined };
  const share = last.times(STILL_DRYING);
  const steps = step.times(2);
  const criterion = (steps.compare(share) > 0 ? steps : share).to("g");
  const lastLoss = before.minus(last).to("g");
  const size = lastLoss.compare("0 g") < 0 ? lastLoss.negated() : lastLoss;
  return { constant: size.compare(criterion) <= 0, lastLoss, criterion };
}

function changesBetween(plan: Plan, batch: ReturnType<typeof batchOf>): Change[] {
  const changes: Change[] = [];
  plan.account.supplied.forEach((planned, i) => {
    const now = batch.account.supplied[i]!;
    if (planned.portion.compare(now.portion) !== 0)
      changes.push({ what: `${now.material} taken`, planned: planned.portion, now: now.portion });
  });
  if (changes.length === 0) return [];
  const figures = (what: string, planned: Quantity, now: Quantity): void => {
    if (planned.compare(now) !== 0) changes.push({ what, planned, now });
  };
  if (plan.account.limiting !== batch.account.limiting) {
    changes.push({ what: "limiting material", planned: plan.account.limiting, now: batch.account.limiting });
  }
  batch.account.supplied.forEach((now, i) => {
    figures(`excess of ${now.material}`, plan.account.supplied[i]!.excess, now.excess);
  });
  figures("theoretical yield", plan.product.theoreticalYield, batch.product.theoreticalYield);
  batch.gas.forEach((gas, i) => {
    figures(`${gas.formula} evolved`, plan.gas[i]!.volume, gas.volume);
  });
  return changes;
}

/**
 * Record what was really weighed and found, and recompute everything from it.
 *
 * @param plan - the plan that was followed
 * @param observations - any of: portions taken, dry mass or successive weighings; what is left out is taken as planned
 * @returns limiting material, theory, percent yield with uncertainty, what changed, and a ranked verdict
 * @throws {PlanError} `plan.no-such-material`, `plan.observation`, `plan.not-positive`; codes of `quantity`
 * @category Yield
 * @example
 * const plan = planPreparation({
 *   equation: "ZnSO4 + Na2CO3 + H2O -> Zn5(CO3)2(OH)6 + Na2SO4 + CO2",
 *   product: "Zn5(CO3)2(OH)6",
 *   materials: [{ name: "zinc sulfate", form: "ZnSO4·7H2O" }, { name: "soda", form: "Na2CO3", excess: "5 %" }],
 *   scale: { product: "50 g" },
 * });
 * recordRun(plan, { dried: "55.0 g" }).verdict[0]!.code // => "other-formula-fits"
 */
export function recordRun(plan: Plan, observations: Observations): Run {
  const setting = settingBehind(plan);
  const { weighed = {}, dried } = observations;
  for (const name of Object.keys(weighed)) {
    if (setting.materials.some((m) => m.shelf.name === name)) continue;
    throw new PlanError("plan.no-such-material", `no material of the plan is called '${name}'`, {
      hint: `the materials are ${setting.materials.map((m) => m.shelf.name).join(", ")}`,
    });
  }
  const portions = setting.materials.map((material, i) => {
    const { name } = material.shelf;
    const given = weighed[name];
    if (given === undefined) return plan.weighings[i]!.portion;
    const portion = portionOf(given, `${name} taken`);
    const isMass = portion.dimension === "mass";
    const naming = { symbol: `${isMass ? "m" : "V"}(${name})`, label: `${name} really taken` };
    // A reading that states no uncertainty of its own has that of the instrument.
    return portion.standardUncertainty === undefined
      ? reading(portion, isMass ? setting.steps.mass : setting.steps.volume, naming)
      : portion.named(naming);
  });
  const batch = batchOf(setting, portions);
  const list = dried === undefined ? [] : Array.isArray(dried) ? (dried as readonly MassLike[]) : [dried as MassLike];
  const masses = list.map((like, i) => {
    const mass = expectDimension(like, "mass", "dried");
    if (!mass.isPositive())
      throw new PlanError("plan.not-positive", `a dry mass must be above zero, not ${String(mass)}`);
    const naming = { symbol: list.length === 1 ? "m(dry)" : `m(dry, ${i + 1})`, label: "dry product as weighed" };
    return mass.standardUncertainty === undefined ? reading(mass, setting.steps.mass, naming) : mass.named(naming);
  });
  const dryMass = masses.at(-1);
  const handlingLoss = shareOf(plan.handlingLoss, "handlingLoss", "1", {
    label: "share that may stay on filters and vessels",
  });
  const yields = dryMass === undefined ? [] : yieldsOf(batch, dryMass);
  const run: Run = {
    kind: "run",
    plan,
    observations,
    ...batch,
    changes: changesBetween(plan, batch),
    dryMass,
    dryness: drynessOf(masses, setting.steps.mass),
    yields,
    percentYield: yields.find((y) => y.wanted)?.percentYield,
    verdict: dryMass === undefined ? [] : findingsFor(batch, dryMass, handlingLoss),
    asMaterial: ({ name = batch.product.name, assay } = {}) => ({
      name,
      form: setting.product.formula.toString(),
      ...(assay === undefined ? {} : { assay }),
      ...(dryMass === undefined ? {} : { available: dryMass }),
      ...(dryMass === undefined || batch.cost.total === undefined
        ? {}
        : { pack: { size: dryMass, price: batch.cost.total } }),
      note: `from ${plan.title}`,
    }),
    toJSON: () => ({ type: "run", schema: 1, plan: plan.toJSON(), observations }),
  };
  return run;
}

/**
 * As `recordRun`, but gives the refusal back as data.
 *
 * @category Yield
 * @example
 * typeof tryRecordRun // => "function"
 */
export const tryRecordRun = (plan: Plan, observations: Observations): Result<Run> =>
  attempt(() => recordRun(plan, observations));

/**
 * A run from the record that `toJSON` wrote.
 *
 * @throws {PlanError} `plan.json` for anything else; and the codes of `planPreparation` and `recordRun`
 * @category Yield
 * @example
 * typeof runFromJSON // => "function"
 */
export function runFromJSON(data: unknown): Run {
  const record = data as Partial<RunRecord> | null;
  if (typeof record !== "object" || record === null || record.type !== "run" || record.schema !== 1) {
    throw new PlanError("plan.json", "not a run record", { hint: "pass what toJSON gave, parsed" });
  }
  return recordRun(planFromJSON(record.plan), record.observations ?? {});
}

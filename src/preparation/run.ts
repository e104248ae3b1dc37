// The run: the plan recomputed from what was really weighed and found, and the verdict on what came out. Only what is
// looked at is worked out; a batch that went as planned is the plan's own.

import { attempt, type Result } from "../foundation/error";
import { under } from "../foundation/facts";
import { lazily, type Parts } from "../foundation/lazy";
import { type RecordHead, recordHead } from "../foundation/record";
import { INSPECT, shownAs } from "../foundation/shown";
import type { Quantity } from "../quantity";
import { PlanError, type PlanRefusal } from "./error";
import type { Identity } from "./identity/types";
import { behindPlan, type Plan, type PlanRecord, planFromJSON } from "./plan";
import { type Batch, type Before, batchOf } from "./planning/batch";
import { type Figure, figure, figuresOf, type MovedFigure, movedSince, readFigures } from "./planning/figures";
import { judgedAs } from "./planning/in-place";
import { handOf } from "./procedure/words";
import { plain } from "./request/door";
import { recordOf } from "./request/records";
import type { ShelfMaterial } from "./request/request";
import { candidatesOf } from "./verdict/candidates";
import { type Change, changesBetween } from "./verdict/changes";
import { type Dryness, drynessOf } from "./verdict/dryness";
import type { Finding, Yield } from "./verdict/finding";
import { materialMade } from "./verdict/handed-on";
import { identityOf } from "./verdict/identity";
import { broughtOf, type Loss, theoryLeft } from "./verdict/losses";
import { lossesIn, type Observations, readObservations } from "./verdict/observations";
import { takenObservations } from "./verdict/taken-observations";
import { pureIn } from "./verdict/titrated";
import { findingsFor, notWeighed, yieldsOf } from "./verdict/verdict";

/** A preparation as it really went. Figures are worked out when asked for. */
export interface Run extends Batch {
  /** What marks it among records. */
  readonly kind: "run";
  /** The plan that was followed. */
  readonly plan: Plan;
  /** What was weighed and seen, copied and frozen. */
  readonly observations: Observations;
  /** Where the run differs from the plan. */
  readonly changes: readonly Change[];
  /** What was lost on the way, and what of the product went with it. */
  readonly losses: readonly Loss[];
  /** What the steps should bring: the theory, or of crystals their crops; less what was lost on the way. */
  readonly expected: Quantity<"mass">;
  /** Successive weighings of the drying product, in order. */
  readonly dryings: readonly Quantity<"mass">[];
  /** The last weighing, or all crops together. */
  readonly dryMass: Quantity<"mass"> | undefined;
  /** Pure product in the dry mass by its titration; undefined without one. */
  readonly pureMass: Quantity<"mass"> | undefined;
  /** Yield of pure product; undefined without a titration. */
  readonly pureYield: Quantity<"number"> | undefined;
  /** What the successive weighings say of how dry it is. */
  readonly dryness: Dryness;
  /** What ignition and acid say the product is; undefined without such an observation. The firing of a kiln plan itself is no test. */
  readonly identity: Identity | undefined;
  /** The mass against each formula that the product may have. */
  readonly yields: readonly Yield[];
  /** Yield against the wanted formula. */
  readonly percentYield: Quantity<"number"> | undefined;
  /** What the figures say, likeliest first. */
  readonly verdict: readonly Finding[];
  /** The product as a material for the next plan; its assay is estimated from washing and yield unless given. */
  asMaterial(options?: { readonly name?: string; readonly assay?: ShelfMaterial["assay"] }): ShelfMaterial;
  /** For a run that was read back: its figures that this release of the library computes otherwise. */
  readonly moved: readonly MovedFigure[];
  /** The figures of the run as plain data. */
  figures(): Figure[];
  /** Title, dry mass and yield in one line. */
  toString(): string;
  /** Plain data, as `fromJSON` reads it back. */
  toJSON(): RunRecord;
}

/** A run as plain data. */
export interface RunRecord extends RecordHead<"run"> {
  /** Record of the plan that was followed. */
  readonly plan: PlanRecord;
  /** What was recorded, quantities as plain data. */
  readonly observations: Observations;
  /** As they were when the record was written. */
  readonly figures?: readonly Figure[];
}

const SCHEMA = 1;

/** What all runs share. */
class RunMethods {
  /** What consoles call a run, whatever a minifier makes of it. */
  static get name(): string {
    return "Run";
  }

  get [Symbol.toStringTag](): string {
    return "Run";
  }

  figures(this: Run): Figure[] {
    const { dryMass, percentYield, losses, expected, pureMass, pureYield } = this;
    return [
      ...figuresOf(this),
      ...(losses.length === 0 ? [] : [figure("expected after losses", expected)]),
      ...(dryMass === undefined ? [] : [figure("dry mass", dryMass)]),
      ...(percentYield === undefined ? [] : [figure("percent yield", percentYield)]),
      ...(pureMass === undefined ? [] : [figure("pure product", pureMass)]),
      ...(pureYield === undefined ? [] : [figure("yield of pure product", pureYield)]),
    ];
  }

  toString(this: Run): string {
    const { dryMass, percentYield } = this;
    const outcome = dryMass === undefined ? "not weighed" : `${dryMass} dry, yield ${percentYield}`;
    return `run of ${this.plan.title}: ${outcome}`;
  }

  [INSPECT](this: Run): string {
    return shownAs("Run", this);
  }

  toJSON(this: Run): RunRecord {
    const { plan, observations } = this;
    return {
      ...recordHead("run", SCHEMA),
      plan: plan.toJSON(),
      observations: plain(observations),
      figures: this.figures(),
    };
  }
}

/**
 * Record what was really weighed and found, and recompute everything from it.
 *
 * @param plan - the plan that was followed
 * @param observations - any of: portions weighed and measured, strengths and assays found, temperature, what was lost, wet
 *   cake, washes, volume of the filtrate, dry mass (or gross and tare) or successive weighings, crops, ignition, tests of
 *   the filtrate and the last wash, pH, assay of the product, acid it neutralises; what is left out is taken as planned
 * @returns limiting material, theory, percent yield with uncertainty, what changed, dryness, identity, a ranked verdict
 * @throws {PlanError} `plan.no-such-material`, `plan.observation`, `plan.unknown-option`, `plan.not-positive`, `plan.strength`; codes of `quantity`
 * @category Yield
 * @example
 * const plan = planPreparation({
 *   equation: "ZnSO4 + Na2CO3 + H2O -> Zn5(CO3)2(OH)6 + Na2SO4 + CO2",
 *   product: "Zn5(CO3)2(OH)6",
 *   materials: [{ name: "zinc sulfate", form: "ZnSO4·7H2O" }, { name: "soda", form: "Na2CO3", excess: "5 %" }],
 *   scale: { product: "50 g" },
 * });
 * evaluateRun(plan, { dried: "55.0 g" }).verdict[0]!.code // => "other-formula-fits"
 */
export function evaluateRun(plan: Plan, observations: Observations): Run {
  return make(plan, observations);
}

/** With the facts of its plan in force. */
const make = (plan: Plan, observations: unknown, stored?: readonly Figure[]): Run => {
  const planned = behindPlan(plan);
  return under(planned.facts, () => computed(plan, planned, takenObservations(observations as Observations), stored));
};

function computed(plan: Plan, planned: Before, observations: Observations, stored: readonly Figure[] | undefined): Run {
  const observed = readObservations(plan, planned.setting, observations);
  const batch = observed.asPlanned ? planned.batch : batchOf(observed.setting, observed.portions, planned);
  const dryMass = observed.dry as Quantity<"mass"> | undefined;
  const judged = judgedAs(batch);
  const losses = lossesIn(observed, judged);
  const whole = theoryLeft(judged, losses);
  const expected = broughtOf(judged, whole);
  const dryness = drynessOf(observed.dried, observed.wetCake, observed.setting.steps.mass);
  const identity = identityOf(observed, judged, observations, dryness.constant === true);
  const own: Parts<Omit<Run, keyof Batch | keyof RunMethods>> = {
    kind: () => "run" as const,
    plan: () => plan,
    observations: () => observations,
    changes: () => (observed.asPlanned ? [] : changesBetween(plan, batch)),
    losses: () => losses,
    expected: () => expected,
    dryings: () => observed.dried as readonly Quantity<"mass">[],
    dryMass: () => dryMass,
    pureMass: () => pureIn(judged, observed),
    pureYield: () =>
      run.pureMass
        ?.dividedBy(judged.product.theoreticalYield)
        .to("%")
        .named({ symbol: "yield(pure)", label: "yield of pure product", rule: "pure product / theoretical yield" }),
    dryness: () => dryness,
    identity: () => identity,
    yields: () => (dryMass === undefined ? [] : yieldsOf(judged, dryMass)),
    percentYield: () => run.yields.find((y) => y.wanted)?.percentYield,
    verdict: () =>
      dryMass === undefined
        ? notWeighed(judged, identity, plan.handlingLoss, expected, observed.setting.steps)
        : findingsFor({
            batch: judged,
            ...candidatesOf(observed, judged),
            observed,
            dry: dryMass,
            grams: handOf(observed.setting.steps, !observed.setting.wet).grams,
            losses,
            expected: whole,
            dryness,
            identity,
            handlingLoss: plan.handlingLoss,
            plannedLimiting: plan.materialBalance.limiting,
          }),
    moved: () => movedSince(stored, () => run.figures()),
    asMaterial:
      () =>
      (options = {}) =>
        materialMade(batch, observed, plan.title, options),
  };
  const run = lazily<Run, Batch, RunMethods>(own, batch, RunMethods.prototype);
  return run;
}

/**
 * As `evaluateRun`, but gives the refusal back as data.
 *
 * @category Yield
 * @example
 * typeof tryEvaluateRun // => "function"
 */
export const tryEvaluateRun = (plan: Plan, observations: Observations): Result<Run, PlanRefusal> =>
  attempt(() => evaluateRun(plan, observations));

/**
 * A run from the record that `toJSON` wrote.
 *
 * @throws {PlanError} `plan.json` for anything else; and the codes of `planPreparation` and `evaluateRun`
 * @category Yield
 * @example
 * typeof runFromJSON // => "function"
 */
export function runFromJSON(data: unknown): Run {
  const { plan, observations, figures } = recordOf<RunRecord>(data, "run", SCHEMA);
  if (observations === undefined) throw new PlanError("plan.json", "not a run record: no observations");
  return make(planFromJSON(plan), observations, readFigures(figures));
}

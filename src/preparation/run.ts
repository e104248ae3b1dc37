// The run: the plan recomputed from what was really weighed and found, and the verdict on what came out. Only what is
// looked at is worked out; a batch that went as planned is the plan's own.

import type { Formula } from "../formula";
import { attempt, type Result } from "../foundation/error";
import { under } from "../foundation/facts";
import { frozen } from "../foundation/frozen";
import { lazily, type Parts } from "../foundation/lazy";
import { type RecordHead, recordHead } from "../foundation/record";
import { INSPECT, shownAs } from "../foundation/shown";
import { anhydrousOf, crystalWater } from "../hydrate";
import { type Quantity, quantity } from "../quantity";
import { expectDimension } from "../quantity/internal";
import { PlanError, type PlanRefusal } from "./error";
import { alternativesOf } from "./feasibility/oxide-or-hydroxide";
import { identified } from "./identity/identity";
import { lossOf } from "./identity/tests";
import type { Identity } from "./identity/types";
import { behindPlan, type Plan, type PlanRecord, planFromJSON, recordOf } from "./plan";
import { type Batch, type Before, batchOf } from "./planning/batch";
import { exact, planned } from "./planning/exact";
import { type Figure, figure, figuresOf, type MovedFigure, movedSince, readFigures } from "./planning/figures";
import { handOf } from "./procedure/words";
import { type Candidate, candidatesLike, changedInAir } from "./reaction/candidates";
import { guard } from "./request/argument";
import { plain } from "./request/door";
import type { ShelfMaterial } from "./request/request";
import { clearlyAbove } from "./verdict/difference";
import { type Dryness, drynessOf } from "./verdict/dryness";
import type { Evidence } from "./verdict/evidence";
import type { Finding, Yield } from "./verdict/finding";
import type { Loss } from "./verdict/losses";
import { lossesIn, type Observations, type Observed, readObservations } from "./verdict/observations";
import { takenObservations } from "./verdict/taken-observations";
import { findingsFor, notWeighed, yieldsOf } from "./verdict/verdict";

/** How the run differs from the plan, for one figure. */
export interface Change {
  /** Figure or fact that differs, in words. */
  readonly what: string;
  /** As the plan has it. */
  readonly planned: Quantity | string;
  /** As it really was. */
  readonly now: Quantity | string;
}

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
  /** Theory less what was lost on the way. */
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

/** Theory less all that was lost, which is no more than there was. */
function expectedOf({ product }: Batch, losses: readonly Loss[]): Quantity<"mass"> {
  const theory = product.theoreticalYield;
  if (losses.length === 0) return theory;
  const naming = { symbol: "m(expected)", label: "expected after losses", rule: "theory - lost" };
  const left = losses.reduce<Quantity>((rest, one) => rest.minus(one.product), theory);
  return (left.isPositive() ? left.to("g").named(naming) : quantity("0 g", naming)) as Quantity<"mass">;
}

function changesBetween(plan: Plan, batch: Batch): Change[] {
  const changes: Change[] = [];
  plan.materialBalance.supplied.forEach((planned, i) => {
    const now = batch.materialBalance.supplied[i]!;
    if (planned.portion.compare(now.portion) !== 0)
      changes.push({ what: `${now.material} taken`, planned: planned.portion, now: now.portion });
  });
  const figures = (what: string, planned: Quantity, now: Quantity): void => {
    if (planned.compare(now) !== 0) changes.push({ what, planned, now });
  };
  if (plan.materialBalance.limiting !== batch.materialBalance.limiting) {
    changes.push({
      what: "limiting material",
      planned: plan.materialBalance.limiting,
      now: batch.materialBalance.limiting,
    });
  }
  batch.materialBalance.supplied.forEach((now, i) => {
    figures(`excess of ${now.material}`, plan.materialBalance.supplied[i]!.excess, now.excess);
  });
  figures("theoretical yield", plan.product.theoreticalYield, batch.product.theoreticalYield);
  batch.gas.forEach((gas, i) => {
    figures(`${gas.formula} evolved`, plan.gas[i]!.volume, gas.volume);
  });
  return changes;
}

/** What air makes of the product, but for what was put in: what is left of that is reported with the materials. */
const inAirOf = ({ setting: { materials, product } }: Observed): Formula[] =>
  changedInAir(product.formula).filter((formula) => !materials.some(({ form }) => form.hasSameComposition(formula)));

/** The product without its water, which every hydrate may lose. */
const driedOf = ({ setting: { product } }: Observed): Formula[] =>
  crystalWater(product.formula).waters.n === 0n ? [] : [anhydrousOf(product.formula)];

/** What the product may be: what the plan counts on, what air makes of it, the salt without its water. */
function candidatesOf(observed: Observed, batch: Batch): Pick<Evidence, "candidates" | "inAir" | "onlyByTest"> {
  const more = (formulas: readonly Formula[]) =>
    candidatesLike(formulas, observed.setting.product.formula, batch.product.amount).filter(
      (one) => !batch.candidates.some(({ formula }) => formula === one.formula),
    );
  const [inAir, dried] = [more(inAirOf(observed)), more(driedOf(observed))];
  const names = (list: readonly Candidate[]) => new Set(list.map(({ formula }) => formula));
  return { candidates: [...batch.candidates, ...inAir, ...dried], inAir: names(inAir), onlyByTest: names(dried) };
}

/** What another sample of the same powder may lose beside this one. */
const scatterOfSamples = (): Quantity =>
  quantity(
    { value: "0", unit: "%", standardUncertainty: planned("sampleScatter").in("%").toString() },
    { symbol: "s", label: "scatter of samples", assumption: "one sample represents all of the product" },
  );

/** No sample of a product weighs more than all of it: what does is the charge of the kiln, and its ignition the firing itself. */
function isFiring(batch: Batch, { dry, dried }: Observed, { before, after }: NonNullable<Observations["ignition"]>) {
  if (batch.isolation.how !== "residue") return false;
  const charge = expectDimension(before, "mass", "ignition.before");
  const weighings = dry === undefined ? [batch.product.theoreticalYield] : [dry, ...dried];
  if (!weighings.every((one) => clearlyAbove(charge, one))) return false;
  // Refused like any ignition that makes heavier.
  lossOf(charge, expectDimension(after, "mass", "ignition.after"), exact("0 %"));
  return true;
}

function identityOf(
  observed: Observed,
  batch: Batch,
  { ignition, acidPerGram }: Observations,
  isDry: boolean,
): Identity | undefined {
  const sample = ignition === undefined || isFiring(batch, observed, ignition) ? undefined : ignition;
  if (sample === undefined && acidPerGram === undefined) return undefined;
  const { product } = observed.setting;
  const residue = sample?.residue;
  return identified(
    {
      before: sample?.before,
      after: sample?.after,
      product: product.formula,
      candidates: [...inAirOf(observed), ...driedOf(observed), ...alternativesOf(observed.setting)],
      ...(residue === undefined ? {} : { residue }),
      // Nothing comes damp out of a fire.
      adsorbedWater: planned(isDry || !observed.setting.wet ? "dryHolds" : "dampHolds"),
      acidPerGram: acidPerGram as "1 mmol/g" | undefined,
    },
    scatterOfSamples(),
  );
}

/** Purity that washing and yield allow: no more than the theory can be in it, no less than the salts left behind. */
function assayEstimate(batch: Batch, dry: Quantity, washes: number | undefined): Quantity | undefined {
  const { theoreticalYield } = batch.product;
  const { washing } = batch;
  if (washing === undefined || !("plan" in washing)) return undefined;
  const { residueAfter, residueUnwashed } = washing.plan;
  const done = Math.min(washes ?? residueAfter.length, residueAfter.length);
  const salt = done === 0 ? residueUnwashed : (residueAfter[done - 1] ?? residueUnwashed);
  const most = theoreticalYield.compare(dry) < 0 ? theoreticalYield.dividedBy(dry).toNumber("") : 1;
  const least = Math.max(0.01, most - salt.dividedBy(dry).toNumber(""));
  const [middle, half] = [(50 * (most + least)).toFixed(2), (50 * (most - least)).toFixed(2)];
  return quantity(
    { value: middle, unit: "%", halfWidth: half, distribution: "rectangular" },
    {
      label: `assay of ${batch.product.name}, estimated`,
      assumption: "between pure and holding the salts that the washing leaves",
    },
  );
}

/** A titration says what an estimate can only bound; nothing is purer than pure. */
const titrated = (assay: Quantity | undefined): Quantity | undefined =>
  assay === undefined || assay.compare("100 %") > 0 ? undefined : assay;

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
  const losses = lossesIn(observed, batch);
  const expected = expectedOf(batch, losses);
  const dryness = drynessOf(observed.dried, observed.wetCake, observed.setting.steps.mass);
  const identity = identityOf(observed, batch, observations, dryness.constant === true);
  const own: Parts<Omit<Run, keyof Batch | keyof RunMethods>> = {
    kind: () => "run" as const,
    plan: () => plan,
    observations: () => observations,
    changes: () => (observed.asPlanned ? [] : changesBetween(plan, batch)),
    losses: () => losses,
    expected: () => expected,
    dryings: () => observed.dried as readonly Quantity<"mass">[],
    dryMass: () => dryMass,
    pureMass: () => {
      if (dryMass === undefined || observed.assay === undefined) return undefined;
      const pure = dryMass.times(observed.assay).to("g");
      const label = `pure ${batch.product.name}`;
      return pure.named({ symbol: "m(pure)", label, rule: "dry mass × assay" }) as Quantity<"mass">;
    },
    pureYield: () =>
      run.pureMass
        ?.dividedBy(batch.product.theoreticalYield)
        .to("%")
        .named({ symbol: "yield(pure)", label: "yield of pure product", rule: "pure product / theoretical yield" }),
    dryness: () => dryness,
    identity: () => identity,
    yields: () => (dryMass === undefined ? [] : yieldsOf(batch, dryMass)),
    percentYield: () => run.yields.find((y) => y.wanted)?.percentYield,
    verdict: () =>
      dryMass === undefined
        ? notWeighed(batch, identity, plan.handlingLoss, expected, observed.setting.steps)
        : findingsFor({
            batch,
            ...candidatesOf(observed, batch),
            observed,
            dry: dryMass,
            grams: handOf(observed.setting.steps).grams,
            losses,
            expected,
            dryness,
            identity,
            handlingLoss: plan.handlingLoss,
            plannedLimiting: plan.materialBalance.limiting,
          }),
    moved: () => movedSince(stored, () => run.figures()),
    asMaterial:
      () =>
      (options = {}) => {
        guard.fields(options, { name: true, assay: true });
        const { name = batch.product.name, assay } = options;
        const estimate =
          assay ??
          titrated(observed.assay) ??
          (dryMass === undefined ? undefined : assayEstimate(batch, dryMass, observed.washes));
        return frozen({
          name,
          form: observed.setting.product.formula.toString(),
          ...(estimate === undefined ? {} : { assay: estimate }),
          ...(dryMass === undefined ? {} : { available: dryMass }),
          ...(dryMass === undefined || batch.cost.total === undefined
            ? {}
            : { pack: { size: dryMass, price: batch.cost.total } }),
          note: `from ${plan.title}`,
        });
      },
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

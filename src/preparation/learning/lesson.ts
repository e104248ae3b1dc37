// What one run teaches of losses and of its limiting material, or why it teaches nothing.

import { isQuantity, type Quantity, type QuantityLike, quantity } from "../../quantity";
import { planned } from "../planning/exact";
import { isSecondCrop } from "../procedure/step";
import { formulaFrom } from "../reaction/species";
import { guard } from "../request/argument";
import { type Run, type RunRecord, runFromJSON } from "../run";
import { ofOtherBatches } from "../verdict/crops";
import type { FindingCode } from "../verdict/finding";
import { theoryLeft } from "../verdict/losses";

export const share = (q: Quantity): number => q.toNumber("");

/** Findings that leave a yield to be what losses and materials make it. */
export const TEACHES: readonly FindingCode[] = [
  "consistent",
  "loss-explained",
  "lighter-than-losses-explain",
  "reagent-short",
];

/** A run, or what a record of one says. */
export function asRun(one: Run | RunRecord, place: string): Run {
  const kind = typeof one === "object" && one !== null && "kind" in one ? one.kind : undefined;
  if (kind === "run" && isWhole(one as Run)) return one as Run;
  guard.record(one, place);
  return runFromJSON(one);
}

/** A run as `evaluateRun` made it, and no record in its clothes. */
const isWhole = (one: Run): boolean => "verdict" in one && "plan" in one && "materialBalance" in one;

/** What one run says of losses and of its limiting material. */
export interface Lesson {
  readonly way: Way;
  readonly limiting: string;
  /** Share of what was to be expected that is missing, what stays dissolved counted as there. */
  readonly missing: number;
  /** Variance of that share by weighing. */
  readonly variance: number;
  /** Assay it was calculated with. */
  readonly assay: number | undefined;
}

/** Ways of working that lose alike: what is filtered off, crystals that are drained, what stays in its crucible. */
export type Way = "wet" | "crystals" | "dry";

export const wayOf = ({ isolation }: Pick<Run, "isolation">): Way =>
  isolation.how === "residue" ? "dry" : isolation.how === "crystallise" ? "crystals" : "wet";

/** Crystals that the steps of a run bring by cooling, with the second crop where one was taken; undefined where they do not say. */
function cropsOf(run: Run): Quantity | undefined {
  const { observations, steps, plan } = run;
  const wanted = formulaFrom(plan.request.product);
  const grown = (solids: Run["steps"][number]["after"]["solids"]): Quantity | undefined =>
    solids.find(({ formula }) => formulaFrom(formula).hasSameComposition(wanted))?.mass;
  const first = grown(steps.at(-1)?.after.solids ?? [])?.minus(ofOtherBatches(run));
  if (first === undefined || (observations.crops?.length ?? 1) < 2) return first;
  const again = steps.filter(isSecondCrop).flatMap(({ after }) => grown(after.solids) ?? []);
  return again.reduce((all, one) => all.plus(one), first);
}

/** Product that the liquor and the washes keep by the plan: no loss of handling. */
export function keptOf(run: Run): Quantity | undefined {
  const { completeness, product, washing } = run;
  if (wayOf(run) === "crystals") {
    const crops = cropsOf(run);
    return crops === undefined ? undefined : product.theoreticalYield.minus(crops).to("g");
  }
  const inLiquor = completeness !== undefined && "dissolved" in completeness ? completeness.dissolved : undefined;
  const washed = washing !== undefined && "plan" in washing ? washing.plan.productLost : undefined;
  return inLiquor === undefined ? washed : washed === undefined ? inLiquor : inLiquor.plus(washed);
}

/** What a run teaches, or why it does not. */
export function lessonOf(run: Run): Lesson | string {
  const { dryMass, isolation, materialBalance, plan, pureMass } = run;
  const whole = theoryLeft(run, run.losses);
  if (dryMass === undefined) return "nothing was weighed dry";
  const code = run.verdict[0]!.code;
  if (!TEACHES.includes(code)) return `its verdict is '${code}'`;
  const found = pureMass ?? dryMass;
  const kept = keptOf(run);
  if (isolation.how === "crystallise" && kept === undefined) return "its steps do not say what cooling brings";
  const there = (kept === undefined ? found : found.plus(kept)).dividedBy(whole);
  const { limiting } = materialBalance;
  const material = plan.request.materials.find(({ name }) => name === limiting)!;
  // What a liquor keeps is no better known than the solubility it is counted by.
  const { standardUncertainty } = isolation.how === "crystallise" ? there : found.dividedBy(whole);
  const u = standardUncertainty?.toNumber() ?? 0;
  const assay = material.strength === undefined ? assayOf(run, limiting) : undefined;
  return {
    way: wayOf(run),
    limiting,
    missing: 1 - share(there),
    // Its assay is an unknown here, and no uncertainty of the yield as well.
    variance: (isolation.how === "crystallise" ? u : Math.min(u, share(planned("runScatter")))) ** 2,
    assay: assay === undefined ? undefined : share(assay),
  };
}

/** Assay that a run counted a material with: as found, as stated, or all. */
function assayOf({ observations, plan }: Run, name: string): Quantity {
  const stated =
    observations.assays?.[name] ?? plan.request.materials.find((one) => one.name === name)?.assay ?? "100 %";
  return isQuantity(stated) ? stated : quantity(stated as QuantityLike);
}

// What the trials of one reaction that went teach together: loss in handling, yield, assay.

import { type LearnedFigure, learnFromRuns, type Run } from "../preparation";
import { theoryLeft, wayOf } from "../preparation/internal";
import { type Quantity, quantity } from "../quantity";
import { expectedOf, foundIn, type TrialRead, yieldOf } from "./trial-read";

/** What trials teach. */
export interface Taught {
  /** Share of the theory that handling loses. */
  readonly loss: Quantity<"number">;
  /** What one next run should lose at most. */
  readonly allowance: Quantity<"number">;
  /** Mean of dry mass over theory. */
  readonly yield: Quantity<"number">;
  /** Mean of the assays that were titrated; undefined where none was. */
  readonly assay: Quantity<"number"> | undefined;
  readonly text: string;
}

const numberOf = (q: Quantity): number => q.toNumber("");
/** The most that a plan allows for handling. */
const MOST_LOSS = 0.95;

const percent = (value: number, u: number, symbol: string, label: string): Quantity<"number"> =>
  quantity(
    { value: (100 * value).toPrecision(8), unit: "%", standardUncertainty: (100 * u).toPrecision(4) },
    { symbol, label },
  ) as Quantity<"number">;

/** A mean and its standard uncertainty, as shares. */
interface Share {
  readonly mean: number;
  readonly u: number;
}

const meanOf = (values: readonly number[]): number => values.reduce((a, b) => a + b, 0) / values.length;

const uOf = (q: Quantity): number => (q.standardUncertainty?.toNumber() ?? 0) / 100;

/**
 * Handling loss as runs teach it. Where they lose otherwise than is usual, the usual loss is held as much less sure as it must be for
 * them to be no surprise: runs that agree with it move it little, runs that do not are believed.
 */
function believed({ value, prior }: LearnedFigure): Share {
  const before = { mean: numberOf(prior), u: uOf(prior) };
  const after = { mean: numberOf(value), u: uOf(value) };
  // value = prior + weight × (what the runs say - prior)
  const weight = 1 - (after.u / before.u) ** 2;
  const away = (after.mean - before.mean) / weight;
  const variance = after.u ** 2 / weight;
  if (away ** 2 <= before.u ** 2 + variance) return after;
  const wide = 1 - variance / away ** 2;
  return { mean: before.mean + wide * away, u: Math.sqrt(wide * variance) };
}

/** Share of the theory that a run lost, beside what its liquor keeps by the plan. */
function missingOf(run: Run): number {
  const { plan } = run;
  const { keptLiquor, product } = plan;
  const there =
    keptLiquor === undefined
      ? numberOf(expectedOf(run).dividedBy(theoryLeft(run, run.losses)))
      : numberOf(keptLiquor.amount.dividedBy(product.amount));
  return there - numberOf(foundIn(run)!.dividedBy(theoryLeft(run, run.losses)));
}

/** What the trials of one reaction that went teach, at least one of them. */
export function taughtBy(went: readonly TrialRead[]): Taught {
  const runs = went.map(({ run }) => run);
  const n = runs.length;
  const learned = learnFromRuns(runs);
  const scatter = numberOf(learned.scatter);
  const yields = runs.map((run) => yieldOf(run)!);
  // of one run the balance tells, of many their scatter
  const u = Math.sqrt((scatter ** 2 + meanOf(yields.map(uOf).map((one) => one ** 2))) / n);
  const isLiquor = runs[0]!.plan.request.isolate === false;
  const figure = isLiquor ? undefined : learned.handlingLoss.find(({ of }) => of === wayOf(runs[0]!));
  const loss = figure === undefined ? { mean: meanOf(runs.map(missingOf)), u } : believed(figure);
  const most = Math.min(MOST_LOSS, Math.max(0, loss.mean + 1.96 * Math.hypot(scatter, loss.u)));
  const figures = went.map((one) => one.figures).join("; ");
  const seen = percent(meanOf(yields.map((one) => one.toNumber("%") / 100)), u, "yield", "yield as tried");
  const assays = runs.flatMap(({ pureMass, dryMass }) =>
    pureMass === undefined ? [] : [numberOf(pureMass.dividedBy(dryMass!))],
  );
  return {
    assay:
      assays.length === 0
        ? undefined
        : (quantity({ value: (100 * meanOf(assays)).toPrecision(8), unit: "%" }) as Quantity<"number">),
    loss: percent(loss.mean, loss.u, "loss", `loss in handling, tried: ${figures}`),
    allowance: quantity({ value: (100 * most).toPrecision(3), unit: "%" }) as Quantity<"number">,
    yield: seen,
    text: `${n === 1 ? "1 trial" : `${n} trials`} here: ${figures}; yield ${seen.format({ decimals: 0, uncertainty: "none" })}`,
  };
}

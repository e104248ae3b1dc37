// What past runs teach: how much handling really loses, how much liquor cakes really keep, what is really in a pack. Each is a prior
// and what the runs add to it, so that one odd run moves little and ten that agree move all.

import { attempt } from "../../foundation/error";
import { frozen } from "../../foundation/frozen";
import { readable } from "../../foundation/readable";
import { expandedUncertainty, isQuantity, type Quantity, type QuantityLike, quantity } from "../../quantity";
import { planned } from "../planning/exact";
import { guard } from "../request/argument";
import type { Run, RunRecord } from "../run";
import { type Belief, type Evidence, updated } from "./gaussian";
import { asRun, type Lesson, lessonOf, share, type Way } from "./lesson";

/** A figure as runs teach it. */
export interface LearnedFigure {
  /** What it is the figure of: a way of working, a product, a material. */
  readonly of: string;
  /** With its standard uncertainty. */
  readonly value: Quantity<"number" | "specific volume">;
  /** Runs or titrations it rests on, beside the prior. */
  readonly n: number;
  /** Where it lies with 95 % probability. */
  readonly interval: {
    readonly lower: Quantity<"number" | "specific volume">;
    readonly upper: Quantity<"number" | "specific volume">;
  };
  /** What was believed before the first run. */
  readonly prior: Quantity<"number" | "specific volume">;
  /** One sentence for a person to read. */
  readonly text: string;
}

/** What runs teach. */
export interface Learned {
  /** Share of the theory that stays on filters and vessels (wet), with crystals (crystals), or in crucibles (dry), of one run on average. */
  readonly handlingLoss: readonly LearnedFigure[];
  /** The most that a single next run should lose, with 97.5 % probability: what a plan takes as its handling loss. */
  readonly allowances: readonly { readonly of: string; readonly handlingLoss: Quantity<"number"> }[];
  /** Liquor that a gram of dry product keeps in its cake, by product. */
  readonly retainedLiquor: readonly LearnedFigure[];
  /** Assay of a pack, by the name of the material. */
  readonly assays: readonly LearnedFigure[];
  /** What yields scatter by from run to run. */
  readonly scatter: Quantity<"number">;
  /** Runs that teach nothing of losses and assays, and why. */
  readonly leftOut: readonly { readonly run: number; readonly why: string }[];
}

/** As many runs as the prior of the scatter counts for. */
const SCATTER_RUNS = 2;

const percentOf = (value: number, u: number, label: string): Quantity =>
  quantity(
    { value: (100 * value).toPrecision(8), unit: "%", standardUncertainty: (100 * u).toPrecision(4) },
    { label },
  );

/** The interval of 95 %, no lower than nothing. */
function intervalOf(value: Quantity): LearnedFigure["interval"] {
  const half = expandedUncertainty(value).expandedUncertainty;
  const at = (x: typeof half): Quantity =>
    quantity({ value: (x.isNegative() ? x.times(0) : x).toString(), unit: value.unit });
  return { lower: at(value.value.minus(half)), upper: at(value.value.plus(half)) };
}

function figureOf(of: string, what: string, value: Quantity, n: number, prior: Quantity): LearnedFigure {
  const interval = intervalOf(value);
  const shown = (q: Quantity): string => q.format({ significant: 3, uncertainty: "none" });
  return {
    of,
    value,
    n,
    interval,
    prior,
    text: `${what} of ${of}: ${String(value)} from ${n} ${n === 1 ? "run" : "runs"} (95 %: ${shown(interval.lower)} to ${shown(interval.upper)}; before: ${String(prior)})`,
  };
}

/** Half of what a plan allows, spread evenly from nothing to all of it. */
const priorLoss = (way: Way): { mean: number; u: number } => {
  const most = share(planned(way === "dry" ? "crucibleLoss" : "handlingLoss"));
  return { mean: most / 2, u: most / Math.sqrt(12) };
};

const unique = <T>(list: readonly T[]): T[] => [...new Set(list)];

/** Variance from run to run: of like runs about their mean, with the prior as so many runs more. */
function scatterOf(lessons: readonly Lesson[]): number {
  const groups = new Map<string, number[]>();
  for (const { way, limiting, missing, assay } of lessons) {
    const key = `${way} ${limiting} ${assay ?? ""}`;
    groups.set(key, [...(groups.get(key) ?? []), missing]);
  }
  let [squares, freedom] = [SCATTER_RUNS * share(planned("runScatter")) ** 2, SCATTER_RUNS];
  for (const values of groups.values()) {
    const mean = values.reduce((a, b) => a + b, 0) / values.length;
    squares += values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
    freedom += values.length - 1;
  }
  return squares / freedom;
}

/** A titration of a pack. */
interface Titration {
  readonly name: string;
  readonly value: number;
  readonly u: number;
}

/** Assays of solids that were titrated, in a run or before it; the same figure in several runs is one titration. */
function titrationsOf(runs: readonly Run[]): Titration[] {
  const all = runs.flatMap(({ observations }) =>
    Object.entries(observations.assays ?? {}).map(([name, like]) => {
      const found = isQuantity(like) ? like : quantity(like as QuantityLike);
      const u = found.dividedBy("1").standardUncertainty?.toNumber();
      const value = share(found);
      return {
        name,
        value,
        u: u === undefined ? value * share(planned("titration")) : (u * value) / found.toNumber(),
      };
    }),
  );
  return [...new Map(all.map((one) => [`${one.name} ${one.value} ${one.u}`, one])).values()];
}

/** Cakes that were weighed wet and dry, by product. */
function retainedOf(runs: readonly Run[]): LearnedFigure[] {
  const cakes = runs.flatMap((run) => {
    const { dryMass, observations, product, washing } = run;
    if (dryMass === undefined || observations.wetCake === undefined || washing === undefined || !("plan" in washing))
      return [];
    const wet = attempt(() => quantity(observations.wetCake as QuantityLike));
    if (!wet.ok || wet.value.compare(dryMass) <= 0) return [];
    const perGram = share(wet.value.minus(dryMass).dividedBy(dryMass));
    const asPlanned = share(
      washing.plan.retainedVolume.times(quantity("1 g/mL")).dividedBy(run.plan.product.theoreticalYield),
    );
    return [{ of: product.formula, perGram, asPlanned }];
  });
  return unique(cakes.map(({ of }) => of)).map((of) => {
    const own = cakes.filter((cake) => cake.of === of);
    const before = own[0]!.asPlanned;
    const u = before * share(planned("liquorDoubt"));
    const mean = own.reduce((sum, { perGram }) => sum + perGram, 0) / own.length;
    // Cakes of one product scatter as the prior does, until there are enough of them to say.
    const squares = own.reduce((sum, { perGram }) => sum + (perGram - mean) ** 2, 0);
    const variance = (u * u + squares) / own.length;
    const after = updated(
      { mean: [before], covariance: [[u * u]] },
      { factors: [1], value: mean, variance: variance / own.length },
    );
    const liquor = (value: number, spread: number): Quantity =>
      quantity(
        { value: value.toPrecision(6), unit: "mL/g", standardUncertainty: spread.toPrecision(4) },
        { label: `liquor in a cake of ${of}` },
      );
    return figureOf(
      of,
      "liquor in a gram",
      liquor(after.mean[0]!, Math.sqrt(after.covariance[0]![0]!)),
      own.length,
      liquor(before, u),
    );
  });
}

/**
 * What past runs teach: handling loss, liquor that cakes keep, assays of packs; each with its number of runs, its interval and the
 * prior it started from. Crystals are held against the crop that the steps bring by cooling.
 *
 * @param runs - runs, or records of runs as they are kept
 * @returns figures for {@link withLearned}; and the runs that teach nothing, with the reason: not weighed, or a verdict
 *   that explains the mass otherwise
 * @throws {PlanError} `plan.request` for what is no run; codes of `runFromJSON`
 * @source normal prior and likelihood, linear in the unknowns (JCGM 100:2008, 4.3; textbook statistics): the share missing is
 *   the handling loss less what the pack has more than stated; priors: planning values, common practice
 * @category Yield
 * @example
 * const plan = planPreparation({
 *   equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
 *   product: "CaCO3",
 *   materials: [{ name: "de-icer", form: "CaCl2·2H2O" }, { name: "soda", form: "Na2CO3", excess: "5 %" }],
 *   scale: { product: "100 g" },
 * });
 * const runs = ["97.1 g", "96.8 g", "97.4 g"].map((dried) => evaluateRun(plan, { dried: dried as "1 g" }));
 * learnFromRuns(runs).handlingLoss[0]!.n // => 3
 */
export function learnFromRuns(runs: readonly (Run | RunRecord)[]): Learned {
  guard.list(runs, "runs");
  const read = runs.map((one, i) => asRun(one, `runs[${i}]`));
  const judged = read.map(lessonOf);
  const lessons = judged.filter((one) => typeof one !== "string");
  const titrations = titrationsOf(read);
  const ways = unique(lessons.map(({ way }) => way));
  const packs = unique([
    ...lessons.filter(({ assay }) => assay !== undefined).map(({ limiting }) => limiting),
    ...titrations.map(({ name }) => name),
  ]);
  /** What the pack says of itself. */
  const stated = packs.map((name) => {
    const request = read
      .map(({ plan }) => plan.request.materials.find((one) => one.name === name))
      .find((one) => one !== undefined);
    const given = quantity((request?.assay ?? "100 %") as QuantityLike);
    const value = share(given);
    const u = given.standardUncertainty;
    return { value, u: u === undefined ? share(planned("statedAssay")) : u.div(given.value).toNumber() * value };
  });
  const losses = ways.map(priorLoss);
  const priors = [...losses, ...stated.map(({ value, u }) => ({ mean: value, u }))];
  const before: Belief = {
    mean: priors.map(({ mean }) => mean),
    covariance: priors.map(({ u }, i) => priors.map((_, j) => (i === j ? u * u : 0))),
  };
  const scatter = scatterOf(lessons);
  const factorsOf = (entries: readonly (readonly [number, number])[]): number[] =>
    priors.map((_, i) => entries.find(([index]) => index === i)?.[1] ?? 0);
  const evidence: Evidence[] = [
    ...lessons.map(({ way, limiting, missing, variance, assay }) => {
      const pack = packs.indexOf(limiting);
      const from = ways.indexOf(way);
      // missing = loss - (assay / counted - 1), for small shares of either
      return assay === undefined
        ? { factors: factorsOf([[from, 1]]), value: missing, variance: scatter + variance }
        : {
            factors: factorsOf([
              [from, 1],
              [ways.length + pack, -1 / assay],
            ]),
            value: missing - 1,
            variance: scatter + variance,
          };
    }),
    ...titrations.map(({ name, value, u }) => ({
      factors: factorsOf([[ways.length + packs.indexOf(name), 1]]),
      value,
      variance: u * u,
    })),
  ];
  const after = evidence.reduce(updated, before);
  const u = (i: number): number => Math.sqrt(after.covariance[i]![i]!);
  const handlingLoss = ways.map((way, i) =>
    figureOf(
      way,
      "handling loss",
      percentOf(after.mean[i]!, u(i), `handling loss, ${way}`),
      lessons.filter((one) => one.way === way).length,
      percentOf(losses[i]!.mean, losses[i]!.u, `handling loss, ${way}, before any run`),
    ),
  );
  return frozen(
    readable({
      handlingLoss,
      allowances: ways.map((way, i) => ({
        of: way,
        handlingLoss: quantity({
          value: (100 * Math.min(1, Math.max(0, after.mean[i]! + 1.96 * Math.sqrt(scatter + u(i) ** 2)))).toPrecision(
            3,
          ),
          unit: "%",
        }),
      })),
      retainedLiquor: retainedOf(read),
      assays: packs.map((name, i) =>
        figureOf(
          name,
          "assay",
          percentOf(after.mean[ways.length + i]!, u(ways.length + i), `assay of ${name}, from runs`),
          lessons.filter(({ limiting, assay }) => limiting === name && assay !== undefined).length +
            titrations.filter((one) => one.name === name).length,
          percentOf(stated[i]!.value, stated[i]!.u, `assay of ${name}, as stated`),
        ),
      ),
      scatter: quantity(
        { value: (100 * Math.sqrt(scatter)).toPrecision(4), unit: "%" },
        { label: "scatter from run to run" },
      ),
      leftOut: judged.flatMap((one, run) => (typeof one === "string" ? [{ run, why: one }] : [])),
    }),
  );
}

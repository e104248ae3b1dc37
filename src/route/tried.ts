// What trials and whole batches that were run say of a way: which reaction each is of, by what it is made from and what it makes,
// not by name or place; whether it went, ended the way or settles nothing; and what all runs of one reaction teach together.

import { type Fields, isRecord } from "../foundation/argument";
import { attempt } from "../foundation/error";
import { under } from "../foundation/facts";
import { once } from "../foundation/memo";
import { type LearnedFigure, learnFromRuns, type Run, type RunRecord } from "../preparation";
import { asRun, keptOf, plain, TEACHES, theoryLeft, wayOf } from "../preparation/internal";
import { type Quantity, quantity } from "../quantity";
import { guard } from "./argument";
import { gramsOn } from "./balance";
import type { Candidate } from "./candidates";
import { keyOf, madeOf } from "./compound";
import { ENDINGS, HALF, type TrialEndCode } from "./endings";
import { RouteError } from "./error";
import { likeness } from "./likeness";
import { leavesLiquor } from "./liquor";

/** A run of a trial, with what was seen that no balance shows. */
export interface TrialReport {
  /** As `evaluateRun` gave it, or its record; without a dry mass where nothing came to be weighed. */
  readonly run: Run | RunRecord;
  /** Which of the outcomes that end the route was seen: one of `TrialStep.endCodes`. */
  readonly ended: TrialEndCode;
}

/** What a trial says of the routes that were found. */
export interface TrialReading {
  /** Place of the trial in the list that was given, from 1. */
  readonly trial: number;
  /** Equation of what was run. */
  readonly equation: string;
  /** Went: its yield counts. Ended: no route goes by this reaction. Unclear: it settles nothing. Unrelated: no route has the reaction. */
  readonly outcome: "went" | "ended" | "unclear" | "unrelated";
  /** Where the reaction stands among the routes that were found, both from 1. */
  readonly steps: readonly { readonly route: number; readonly step: number }[];
  /** What was weighed dry; undefined where nothing was. */
  readonly dry: Quantity<"mass"> | undefined;
  /** What there should have been by what was weighed in, less what liquor and washings keep. */
  readonly expected: Quantity<"mass">;
  /** Dry mass over theory. */
  readonly yield: Quantity<"number"> | undefined;
  /** What was made in place of the product, where ignition or acid shows it. */
  readonly instead: readonly string[];
  /** One sentence for a person to read. */
  readonly text: string;
  /** What to do next; empty where there is nothing to do. */
  readonly next: string;
}

/** What a run says by itself. */
interface Said {
  readonly outcome: "went" | "ended" | "unclear";
  readonly text: string;
  readonly next: string;
  readonly instead: readonly string[];
}

/** A trial as plain data. */
export type TrialRecord = RunRecord | { readonly run: RunRecord; readonly ended: TrialEndCode };

/** A trial as it was read, before it is known where it belongs. */
interface TrialRead extends Said {
  readonly index: number;
  readonly run: Run;
  readonly reaction: Reaction | undefined;
  readonly expected: Quantity<"mass">;
  /** For people: "1.83 g of 1.96 g expected", or what was seen. */
  readonly figures: string;
  readonly record: () => TrialRecord;
}

/** Which reaction it is, however it is written. */
interface Reaction {
  /** Equal for all forms of the product. */
  readonly any: string;
  /** The form of the product as well: its crystal water, or that it stays in its liquor. */
  readonly id: string;
}

/** All trials of one reaction. */
export interface Tried {
  readonly reads: readonly TrialRead[];
  /** How many of them went. */
  readonly n: number;
  /** The reaction does not go: as many trials say so as say that it goes, or more. */
  readonly isOver: boolean;
  /** What the trials that went teach; asked for only where there are such. */
  readonly taught: () => Taught;
}

interface Taught {
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

/** Trials by reaction. */
export interface Trials {
  readonly reads: readonly TrialRead[];
  readonly of: (reaction: Reaction | undefined) => Tried | undefined;
  /** Did a trial of it go, whatever the form of the product? */
  readonly went: (reaction: Reaction | undefined) => boolean;
}

const MOST_TRIALS = 200;

const REPORT = { run: true, ended: true } as const satisfies Fields<TrialReport>;

/** The reaction that makes a product from these feeds. */
function reactionOf(product: string, inLiquor: boolean, feeds: readonly (string | undefined)[]): Reaction | undefined {
  const own = madeOf(product);
  if (own === undefined || feeds.length === 0 || feeds.includes(undefined)) return undefined;
  const any = `${own.anhydrousIdentity} < ${[...new Set(feeds as readonly string[])].sort().join(" | ")}`;
  return { any, id: `${any} : ${inLiquor ? "liquor" : own.identity}` };
}

/** The reaction of a candidate that makes a form of its product. */
export const reactionOfCandidate = ({ feeds }: Candidate, form: string, inLiquor = false): Reaction | undefined =>
  reactionOf(
    form,
    inLiquor,
    feeds.map(({ key }) => key),
  );

const isWater = (form: string): boolean => keyOf(form) === keyOf("H2O");

function reactionOfRun({ plan }: Run): Reaction | undefined {
  const { materials, isolate } = plan.request;
  const feeds = materials.filter(({ aside, form }) => aside !== true && !isWater(String(form)));
  const read = attempt(() =>
    reactionOf(
      plan.product.formula,
      isolate === false,
      feeds.map(({ form }) => keyOf(String(form))),
    ),
  );
  return read.ok ? read.value : undefined;
}

const FINEST = 4;
const decimalsOf = (text: string): number => /\.(\d+)/.exec(text)?.[1]?.length ?? 0;

/** A mass as it was read off, and what was expected as finely. */
function figuresOf({ dryMass, plan }: Run, expected: Quantity): string {
  if (dryMass === undefined) return "";
  const decimals = Math.min(FINEST, Math.max(dryMass.value.decimalPlaces(), decimalsOf(gramsOn(plan)(dryMass))));
  const [dry, all] = [dryMass, expected].map((q) => q.format({ unit: dryMass.unit, decimals, uncertainty: "none" }));
  return `${dry} of ${all} expected`;
}

/** A compound that ignition or acid shows in place of the product; another hydrate is no other compound. */
function madeInstead({ identity, product }: Run): string | undefined {
  const [other] = identity?.verdict === "identified" ? identity.remaining : [];
  if (other === undefined) return undefined;
  const [a, b] = [attempt(() => keyOf(other)), attempt(() => keyOf(product.formula))];
  return a.ok && b.ok && a.value !== undefined && a.value !== b.value ? other : undefined;
}

/** What of the product came out, and its part of the theory: pure where it was titrated. */
const foundIn = ({ pureMass, dryMass }: Run): Quantity<"mass"> | undefined => pureMass ?? dryMass;
export const yieldOf = ({ pureYield, percentYield }: Run): Quantity<"number"> | undefined => pureYield ?? percentYield;

/** What there should have been, but for handling. */
function expectedOf(run: Run): Quantity<"mass"> {
  const kept = run.plan.request.isolate === false ? undefined : keptOf(run);
  const whole = theoryLeft(run, run.losses);
  const left = kept === undefined ? whole : whole.minus(kept).to("g");
  return (left.isPositive() ? left : whole) as Quantity<"mass">;
}

function said(run: Run, expected: Quantity, figures: string, ended: TrialEndCode | undefined): Said {
  const over = (text: string, instead: readonly string[] = []): Said => ({
    outcome: "ended",
    text: `tried: ${text}`,
    next: "",
    instead,
  });
  if (ended !== undefined) return over(ENDINGS[ended]);
  const other = madeInstead(run);
  if (other !== undefined) return over(`what was made is ${other}, not ${run.product.formula}`, [other]);
  const unclear = (text: string, next: string): Said => ({
    outcome: "unclear",
    text: `tried, and it settles nothing: ${text}`,
    next,
    instead: [],
  });
  const { dryMass, losses, plan, verdict } = run;
  const [first] = verdict;
  if (dryMass === undefined || !TEACHES.includes(first!.code) || first!.code === "reagent-short")
    return unclear(first!.text, first!.next);
  // nobody knows a spill to better than a fifth
  if (losses.length > 0) return unclear(losses.map(({ text }) => text).join("; "), "repeat it without a loss");
  const least = expected.times(quantity("1").minus(plan.handlingLoss)).times(String(HALF));
  if (foundIn(run)!.compare(least) < 0) return over(`${figures}, less than half of it`);
  return { outcome: "went", text: `tried: ${figures}`, next: "", instead: [] };
}

/** Endings that only some work can have. */
function checkEnding(code: TrialEndCode, { plan }: Run, place: string): void {
  guard.choice(code, place, Object.keys(ENDINGS));
  const has =
    code === "no-gas" ? plan.gas.length > 0 : code.startsWith("liquor-") ? plan.request.isolate === false : true;
  if (has) return;
  throw new RouteError("route.trial", `${place}: ${plan.title} cannot end with '${code}'`, {
    hint:
      code === "no-gas" ? "by its plan no gas is given off" : "by its plan the product is brought out of its liquor",
    details: { argument: place },
  });
}

function readOne(given: unknown, index: number): TrialRead {
  const place = `trials[${index}]`;
  // records and runs say what they are
  const isReport = isRecord(given) && !("type" in given) && !("kind" in given);
  if (isReport) guard.fields(given, REPORT, place);
  const report = isReport ? (given as unknown as TrialReport) : undefined;
  // a run is what it was when it was recorded, whatever facts are in force now
  const read = attempt(() =>
    under(undefined, () => asRun((isReport ? report!.run : given) as Run, isReport ? `${place}.run` : place)),
  );
  if (!read.ok)
    throw new RouteError("route.trial", `${place} is not a run: ${read.error.problem}`, {
      hint: "give what evaluateRun gave, its record, or { run, ended }",
      details: { argument: place, because: read.error.code },
    });
  const run = read.value;
  if (report !== undefined) checkEnding(report.ended, run, `${place}.ended`);
  const expected = expectedOf(run);
  const figures = figuresOf(run, expected);
  const record = once(
    (): TrialRecord => (report === undefined ? run.toJSON() : { run: run.toJSON(), ended: report.ended }),
  );
  const one = said(run, expected, figures, report?.ended);
  return { ...one, index, run, expected, figures, record, reaction: reactionOfRun(run) };
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

function taughtBy(went: readonly TrialRead[]): Taught {
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

function triedOf(all: readonly TrialRead[]): Tried {
  // in one order whatever the order they were given in
  const keyed = all.map((read) => ({ read, key: all.length === 1 ? "" : JSON.stringify(plain(read.record())) }));
  const reads = keyed.sort((a, b) => (a.key < b.key ? -1 : a.key > b.key ? 1 : 0)).map(({ read }) => read);
  const went = reads.filter(({ outcome }) => outcome === "went");
  const ended = reads.filter(({ outcome }) => outcome === "ended");
  return {
    reads,
    n: went.length,
    isOver: ended.length > 0 && ended.length >= went.length,
    taught: once(() => taughtBy(went)),
  };
}

const groupedBy = (reads: readonly TrialRead[], key: (reaction: Reaction) => string): Map<string, TrialRead[]> => {
  const groups = new Map<string, TrialRead[]>();
  for (const read of reads) {
    if (read.reaction === undefined) continue;
    const name = key(read.reaction);
    groups.set(name, [...(groups.get(name) ?? []), read]);
  }
  return groups;
};

/** The trials that were given, read and put together by reaction. */
export function readTrials(given: unknown): Trials {
  if (given === undefined) return NO_TRIALS;
  guard.list(given, "trials");
  const list = given as readonly unknown[];
  if (list.length > MOST_TRIALS)
    throw new RouteError("route.request", `${list.length} trials; the most is ${MOST_TRIALS}`);
  const reads = list.map(readOne);
  const groups = new Map([...groupedBy(reads, ({ id }) => id)].map(([id, all]) => [id, triedOf(all)]));
  const gone = new Set(
    reads.flatMap(({ reaction }) => (reaction !== undefined && isGoing(groups.get(reaction.id)) ? [reaction.any] : [])),
  );
  return {
    reads,
    of: (reaction) => (reaction === undefined ? undefined : groups.get(reaction.id)),
    went: (reaction) => reaction !== undefined && gone.has(reaction.any),
  };
}

/** Nothing was tried. */
export const NO_TRIALS: Trials = /* @__PURE__ */ Object.freeze({ reads: [], of: () => undefined, went: () => false });

/** Trials that ended a reaction: of the form it would make, or of the liquor that it would be used in. */
function endedOf(candidate: Candidate, form: string, trials: Trials): Tried | undefined {
  return [...(leavesLiquor(candidate) ? [] : [false]), true]
    .map((inLiquor) => trials.of(reactionOfCandidate(candidate, form, inLiquor)))
    .find((tried) => tried?.isOver === true);
}

const NOTHING: ReadonlyMap<Candidate, Tried> = /* @__PURE__ */ new Map();

/** The reactions of a list that trials ended; with them those that bring the same ions together, but for one that went itself. */
export function endedAmong(
  candidates: readonly Candidate[],
  form: string,
  trials: Trials,
): ReadonlyMap<Candidate, Tried> {
  if (trials.reads.length === 0) return NOTHING;
  const found = new Map<Candidate, Tried>();
  const likes = new Map<string, Tried>();
  for (const one of candidates) {
    const tried = endedOf(one, form, trials);
    if (tried === undefined) continue;
    found.set(one, tried);
    if (precipitates(one)) likes.set(likeness(one), tried);
  }
  if (likes.size > 0)
    for (const one of candidates) {
      const tried = precipitates(one) ? likes.get(likeness(one)) : undefined;
      if (tried !== undefined && !found.has(one) && !isGoing(trials.of(reactionOfCandidate(one, form))))
        found.set(one, tried);
    }
  return found;
}

const precipitates = ({ family }: Candidate): boolean =>
  family.separate === "filter" && family.code !== "keep-filtrate";

/** Did it go where it was tried, so that its figures count? */
export const isGoing = (tried: Tried | undefined): tried is Tried =>
  tried !== undefined && tried.n > 0 && !tried.isOver;

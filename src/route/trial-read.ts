// One trial as it was given, read: whether it went, ended the way or settles nothing, by itself.

import { type Fields, isRecord } from "../foundation/argument";
import { attempt } from "../foundation/error";
import { under } from "../foundation/facts";
import { once } from "../foundation/memo";
import type { Run, RunRecord } from "../preparation";
import { asRun, keptOf, TEACHES, theoryLeft } from "../preparation/internal";
import { type Quantity, quantity } from "../quantity";
import { guard } from "./argument";
import { gramsOn } from "./balance";
import { keyOf } from "./compound";
import { ENDINGS, HALF, type TrialEndCode } from "./endings";
import { RouteError } from "./error";
import { type Reaction, reactionOfRun } from "./trial-reaction";

/** A run of a trial, with what was seen that no balance shows. */
export interface TrialReport {
  /** As `evaluateRun` gave it, or its record; without a dry mass where nothing came to be weighed. */
  readonly run: Run | RunRecord;
  /** Which of the outcomes that end the route was seen: one of `TrialStep.endCodes`. */
  readonly ended: TrialEndCode;
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
export interface TrialRead extends Said {
  readonly index: number;
  readonly run: Run;
  readonly reaction: Reaction | undefined;
  readonly expected: Quantity<"mass">;
  /** For people: "1.83 g of 1.96 g expected", or what was seen. */
  readonly figures: string;
  readonly record: () => TrialRecord;
}

const REPORT = { run: true, ended: true } as const satisfies Fields<TrialReport>;

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

/** What of the product came out: pure where it was titrated. */
export const foundIn = ({ pureMass, dryMass }: Run): Quantity<"mass"> | undefined => pureMass ?? dryMass;

/** Part of the theory that came out: pure where it was titrated. */
export const yieldOf = ({ pureYield, percentYield }: Run): Quantity<"number"> | undefined => pureYield ?? percentYield;

/** What there should have been, but for handling. */
export function expectedOf(run: Run): Quantity<"mass"> {
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

/** A trial as it was given, read. */
export function readTrial(given: unknown, index: number): TrialRead {
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

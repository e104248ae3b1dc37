// Why reactions that were looked at do not serve, in words with their figures; and what is missing for one that would.
import { list } from "../foundation/wording";
import { notInWater } from "../preparation/internal";
import type { Quantity } from "../quantity";

import { barredFor, type Candidate, candidatesFor } from "./candidates";
import { type Compound, formOf, formulaFrom, keyOf } from "./compound";
import { type Judgement, judge } from "./judge";
import type { RefusedRoute } from "./reason";
import { isRefused } from "./safety";
import { materialOf, type Refused } from "./search";
import type { Index } from "./shelf";
import { endedAmong, type Trials, type Tried } from "./tried";
import type { Bar } from "./why";

/** Barred reactions that are explained. */
const MOST_BARRED = 5;
/** Rows that are missing on the way, listed. */
const MOST_LACKING = 3;
/** Refusals that are listed. */
const MOST_REFUSALS = 12;

const refusalOf = ({ judgement }: Refused): RefusedRoute => ({
  code:
    judgement.why === "refused"
      ? "refused"
      : judgement.why === "unknown"
        ? "unknown"
        : (judgement.reasons[0]?.code ?? "no"),
  text: judgement.why === "unknown" ? `unknown, lacks ${judgement.text.replace(/^missing: /, "")}` : judgement.text,
  numbers: judgement.reasons[0]?.numbers ?? [],
  source: judgement.reasons[0]?.source ?? "common practice, no source",
  equation: judgement.why === "refused" || judgement.equation === undefined ? undefined : String(judgement.equation),
  instead: judgement.instead,
  unknown: judgement.why === "unknown",
});

/** Figures of what forms of the same feeds in place of the product, for a refusal that has none. */
function figuresInstead({ feeds }: Candidate, [instead]: readonly string[], index: Index): readonly Quantity[] {
  const compound = instead === undefined ? undefined : index.all.byKey.get(keyOf(instead) ?? "");
  if (compound === undefined) return [];
  const keys = feeds.map(({ key }) => key).sort();
  const way = candidatesFor(compound, index.all).find((one) => {
    const own = one.feeds.map(({ key }) => key).sort();
    return own.length === keys.length && own.every((key, i) => key === keys[i]);
  });
  if (way === undefined) return [];
  const judgement = judge(
    way,
    formOf(compound),
    way.feeds.map((feed) => materialOf(feed, index)),
  );
  return judgement.ok ? (judgement.feasibility.reasons[0]?.numbers ?? []) : [];
}

/** A refusal; where it has no figures, those of what forms instead. */
function withFigures(one: Refused, index: Index): RefusedRoute {
  const refusal = refusalOf(one);
  if (refusal.numbers.length > 0 || refusal.instead.length === 0) return refusal;
  return { ...refusal, numbers: figuresInstead(one.candidate, refusal.instead, index) };
}

/** Refusals of reactions whose feeds all stand on the shelf come first: they answer what a person would have tried. */
export function refusalsOf(refused: readonly Refused[], target: Compound, index: Index): RefusedRoute[] {
  const { jars } = index;
  const weight = ({ candidate: { product, feeds } }: Refused): number =>
    (product === target ? 0 : 2) + (feeds.every(({ key }) => jars.has(key)) ? 0 : 1);
  const order = refused
    .filter((one) => weight(one) < 2 && one.judgement.equation !== undefined)
    .map((one, i) => ({ one, i }));
  order.sort((a, b) => weight(a.one) - weight(b.one) || a.i - b.i);
  const seen = new Set<string>();
  const list: RefusedRoute[] = [];
  for (const { one } of order) {
    const refusal = withFigures(one, index);
    if (seen.has(refusal.text)) continue;
    seen.add(refusal.text);
    list.push(refusal);
    if (list.length === MOST_REFUSALS) break;
  }
  return list;
}

/** Rows of tables that are missing on the way, where nothing goes. */
export function lackingOnTheWay(refused: readonly Refused[], target: Compound, { jars }: Index): RefusedRoute[] {
  const found = refused.filter(
    ({ candidate: { product, feeds }, judgement }) =>
      judgement.why === "unknown" && product !== target && feeds.every(({ key }) => jars.has(key)),
  );
  const texts = new Map(found.map((one) => [one.judgement.text, refusalOf(one)]));
  return [...texts.values()].slice(0, MOST_LACKING);
}

const PRACTICE = "common practice, no source";

/** Why it is no way, in words and figures; with what the engine says of its carbon dioxide while that stays. */
function barOf({ bar }: Candidate, judgement: Judgement): Bar {
  const own = typeof bar === "function" ? bar() : { text: bar!, numbers: [], source: PRACTICE };
  const reasons = judgement.ok ? judgement.feasibility.reasons : [];
  const kept = own.numbers.length > 0 ? undefined : reasons.find(({ code }) => code === "carbon-dioxide-kept");
  return kept === undefined ? own : { text: `${own.text}; ${kept.text}`, numbers: kept.numbers, source: kept.source };
}

/** Reactions of jars that somebody might try and that are no way: with the figures of the engine, where it says no as well. */
export function barred(target: Compound, form: string, index: Index): RefusedRoute[] {
  const ofJars = barredFor(target, index.all).filter(({ feeds }) => feeds.every(({ key }) => index.jars.has(key)));
  return ofJars.slice(0, MOST_BARRED).map((candidate) => {
    const judgement = judge(
      candidate,
      form,
      candidate.feeds.map((feed) => materialOf(feed, index)),
    );
    if (!judgement.ok && judgement.equation !== undefined) return withFigures({ candidate, judgement }, index);
    return {
      code: "no-way",
      ...barOf(candidate, judgement),
      equation: judgement.equation === undefined ? undefined : String(judgement.equation),
      instead: [],
      unknown: false,
    };
  });
}

/** A target that water does not let be, with what stands in its place; none for one that water lets be. */
export function noWater({ made: { cations, anions, ligands } }: Compound, form: string): RefusedRoute[] {
  const found = ligands.length > 0 ? undefined : notInWater(cations, anions);
  if (found === undefined) return [];
  const { why, instead, source } = found.row;
  const names = instead.map(({ formula }) => formulaFrom(formula).toUnicode());
  const stands = names.length === 0 ? "" : `; ${list(names)} forms in its place`;
  return [
    {
      code: "not-in-water",
      text: `${formulaFrom(form).toUnicode()} does not exist in water: ${why}${stands}`,
      numbers: [],
      source: source === "commonPractice" ? PRACTICE : source,
      equation: undefined,
      instead: instead.map(({ formula }) => formula),
      unknown: false,
    },
  ];
}

/** A reaction of jars, or of what one more step makes of them, that gives a compound. */
function wayTo(formula: string, index: Index): string | undefined {
  const compound = index.all.byKey.get(keyOf(formula) ?? "");
  if (compound === undefined || isRefused(compound)) return undefined;
  if (index.jars.has(compound.key)) return "it is on the shelf";
  for (const way of candidatesFor(compound, index.all)) {
    if (!way.feeds.every(({ key }) => index.jars.has(key))) continue;
    const judgement = judge(
      way,
      formOf(compound),
      way.feeds.map((feed) => materialOf(feed, index)),
    );
    if (judgement.ok) return judgement.equation.toUnicode();
  }
  return undefined;
}

/** What trials ended, and the nearest way that works. */
export function endedBy({ reads, n }: Tried, way: string | undefined): RefusedRoute {
  const ended = reads.filter(({ outcome }) => outcome === "ended");
  const { run } = ended[0]!;
  const likes = run.plan.isolation.how === "precipitate" ? ["the same ions from other jars give the same"] : [];
  const others = n === 0 ? [] : [`${n} of ${reads.length} trials of it went: repeat it to decide`];
  const nearest =
    way === undefined ? "no other way to the target is known from this shelf" : `the nearest way that works: ${way}`;
  return {
    code: "trial-ended",
    text: [...ended.map(({ text }) => text), ...likes, ...others, nearest].join("; "),
    numbers: ended.flatMap(({ run: { dryMass }, expected }) => (dryMass === undefined ? [] : [dryMass, expected])),
    source: "own trial",
    equation: String(run.plan.equation),
    instead: [...new Set(ended.flatMap(({ instead }) => instead))],
    unknown: false,
  };
}

/** Where nothing goes: what one more jar would open, or what forms and can be had in its place. */
export function nearest(
  target: Compound,
  form: string,
  index: Index,
  refusals: readonly RefusedRoute[],
  trials: Trials,
): RefusedRoute[] {
  const ways: RefusedRoute[] = [];
  for (const instead of new Set(refusals.flatMap((one) => one.instead))) {
    const way = wayTo(instead, index);
    ways.push({
      code: "forms-instead",
      text: `what forms is ${formulaFrom(instead).toUnicode()}: ask for a route to that${way === undefined ? "" : `; nearest from here: ${way}`}`,
      numbers: [],
      source: "constants of the tables, each with its source",
      equation: undefined,
      instead: [instead],
      unknown: false,
    });
  }
  let tried = 0;
  const candidates = candidatesFor(target, index.all);
  const gone = endedAmong(candidates, form, trials);
  for (const c of candidates) {
    if (gone.has(c)) continue;
    const lacking = c.feeds.filter(({ key }) => index.reach(key, 1) === undefined);
    if (lacking.length !== 1 || isRefused(lacking[0]!) || tried >= 12) continue;
    tried += 1;
    const judgement = judge(
      c,
      form,
      c.feeds.map((feed) => materialOf(feed, index)),
    );
    if (!judgement.ok) continue;
    const name = formulaFrom(formOf(lacking[0]!)).toUnicode();
    ways.push({
      code: "lacks-jar",
      text: `with ${name}, which is not on the shelf, it goes: ${judgement.equation.toUnicode()}`,
      numbers: judgement.feasibility.reasons[0]?.numbers ?? [],
      source: judgement.feasibility.reasons[0]?.source ?? "common practice, no source",
      equation: String(judgement.equation),
      instead: [],
      unknown: false,
    });
    if (ways.filter(({ code }) => code === "lacks-jar").length === 3) break;
  }
  return ways;
}

const remark = (code: string, text: string): RefusedRoute => ({
  code,
  text,
  numbers: [],
  source: "the tables of this library",
  equation: undefined,
  instead: [],
  unknown: true,
});

/** Nothing was found, and nothing could be tried. */
export const noKind = (form: string): RefusedRoute =>
  remark("no-kind", `unknown, lacks a kind of reaction that makes ${formulaFrom(form).toUnicode()}`);

/** Jars that take no part because nobody can read what is in them. */
export const unread = ({ unread: names }: Index): RefusedRoute[] =>
  names.map((name) => remark("unread-jar", `what is in ${name} cannot be read: it takes no part`));

export const onShelf = (name: string): RefusedRoute => ({
  code: "on-the-shelf",
  text: `it is on the shelf as ${name}`,
  numbers: [],
  source: "the shelf",
  equation: undefined,
  instead: [],
  unknown: false,
});

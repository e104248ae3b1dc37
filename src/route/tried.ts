// What trials and whole batches that were run say of a way: put together by reaction, which of them went, and which the trials
// ended.

import { once } from "../foundation/memo";
import { plain } from "../preparation/internal";
import { guard } from "./argument";
import type { Candidate } from "./candidates";
import { RouteError } from "./error";
import { likeness } from "./likeness";
import { leavesLiquor } from "./liquor";
import { type Taught, taughtBy } from "./taught";
import { type Reaction, reactionOfCandidate } from "./trial-reaction";
import { readTrial, type TrialRead } from "./trial-read";

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

/** Trials by reaction. */
export interface Trials {
  readonly reads: readonly TrialRead[];
  readonly of: (reaction: Reaction | undefined) => Tried | undefined;
  /** Did a trial of it go, whatever the form of the product? */
  readonly went: (reaction: Reaction | undefined) => boolean;
}

const MOST_TRIALS = 200;

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
  const reads = list.map(readTrial);
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

// Best-first search back from the target: a plan that is not yet whole waits with the least that it can cost, and a reaction
// is judged when its plan comes to the front, not before. Ties go by name, so that the order of the shelf decides nothing.

import type { ShelfMaterial } from "../preparation";
import { type Candidate, candidatesFor } from "./candidates";
import { type Compound, formOf } from "./compound";
import { type Judgement, judge } from "./judge";
import { likeness } from "./likeness";
import { isKeptDissolved, leavesLiquor, takesLiquor } from "./liquor";
import { costOf, type Index } from "./shelf";
import { reactionOfCandidate } from "./trial-reaction";
import { endedAmong, type Trials, type Tried } from "./tried";

/** A reaction of a route that was found, with its judgement. */
export interface FoundStep {
  readonly candidate: Candidate;
  readonly judgement: Extract<Judgement, { readonly ok: true }>;
  /** What each feed is taken from: a jar, or what another step makes. */
  readonly materials: readonly ShelfMaterial[];
  /** Its product stays dissolved, and is used as the liquor it is in. */
  readonly inLiquor: boolean;
}

/** A route that was found: steps in the order of the work. */
export interface Found {
  readonly steps: readonly FoundStep[];
  /** Equal for routes that differ only in ions that are washed out. */
  readonly kind: string;
  readonly cost: number;
}

/** A reaction that was looked at and does not serve. */
export interface Refused {
  readonly candidate: Candidate;
  readonly judgement: Extract<Judgement, { readonly ok: false }>;
}

interface Waiting {
  readonly cost: number;
  readonly spent: number;
  readonly open: readonly Compound[];
  /** From the target back. */
  readonly steps: readonly { readonly candidate: Candidate; readonly judgement?: Judgement }[];
  readonly id: string;
  /** Compounds it takes from jars. */
  readonly uses: readonly string[];
}

const before = (a: Waiting, b: Waiting): boolean => a.cost < b.cost || (a.cost === b.cost && a.id < b.id);

/** A heap of what waits. */
class Queue {
  private readonly heap: Waiting[] = [];

  get size(): number {
    return this.heap.length;
  }

  push(one: Waiting): void {
    const { heap } = this;
    let at = heap.push(one) - 1;
    while (at > 0) {
      const parent = (at - 1) >> 1;
      if (!before(one, heap[parent]!)) break;
      heap[at] = heap[parent]!;
      at = parent;
    }
    heap[at] = one;
  }

  pop(): Waiting {
    const { heap } = this;
    const first = heap[0]!;
    const last = heap.pop()!;
    if (heap.length === 0) return first;
    let at = 0;
    for (;;) {
      let child = 2 * at + 1;
      if (child >= heap.length) break;
      if (child + 1 < heap.length && before(heap[child + 1]!, heap[child]!)) child += 1;
      if (!before(heap[child]!, last)) break;
      heap[at] = heap[child]!;
      at = child;
    }
    heap[at] = last;
    return first;
  }
}

/** Ions that stay in the liquor, whichever they are, do not make another kind of route; what is made for it may. */
const kindOf = (candidate: Candidate, { jars }: Index): string => likeness(candidate, ({ key }) => !jars.has(key));

/** What a feed is taken from. */
export function materialOf(feed: Compound, index: Index): ShelfMaterial {
  const jar = index.jars.get(feed.key)?.[0];
  if (jar !== undefined) return jar.material;
  const form = formOf(feed);
  return { name: form, form };
}

/** How a search is bounded. */
interface Bounds {
  readonly steps: number;
  /** Kinds of route wanted. */
  readonly kinds: number;
  /** Judgements at most. */
  readonly judgements: number;
  /** What was run already. */
  readonly trials: Trials;
}

/** What a reaction that was tried is ahead of its like: more than any price, less than any doubt. */
const AHEAD = 0.05;

/** Search for routes to a compound. */
export function search(
  target: Compound,
  targetForm: string,
  index: Index,
  bounds: Bounds,
): { readonly found: readonly Found[]; readonly refused: readonly Refused[]; readonly over: readonly Tried[] } {
  const { all, reach, jars } = index;
  /** Kinds of reactions of jars alone that go: to make a feed for one of them is no other way. */
  const direct = new Set<string>();
  const queue = new Queue();
  const found: Found[] = [];
  const kinds = new Set<string>();
  const refused = new Map<string, Refused>();
  const over = new Set<Tried>();
  const { trials } = bounds;
  const stepsOf = ({ key }: Compound): number => reach(key, bounds.steps)?.steps ?? 99;
  const sumOf = (feeds: readonly Compound[]): number => feeds.reduce((n, feed) => n + stepsOf(feed), 0);
  /** What is made once may be used twice: a feed that another one can be made from is counted with that one. */
  const stepsTo = (feeds: readonly Compound[], within: number): number => {
    const apart = sumOf(feeds);
    if (apart <= within || feeds.length < 2) return apart;
    const each = [...new Set(feeds)];
    const isShared = (feed: Compound): boolean =>
      each.some((other) => other !== feed && stepsOf(other) > stepsOf(feed) && canUse(other, feed));
    return sumOf(each.filter((feed) => !isShared(feed)));
  };
  const canUse = (other: Compound, feed: Compound): boolean =>
    candidatesFor(other, all).some(({ feeds }) => feeds.includes(feed));
  const costTo = (feeds: readonly Compound[]): number =>
    feeds.reduce((n, { key }) => n + (reach(key, bounds.steps)?.cost ?? 99), 0);
  queue.push({ cost: 0, spent: 0, open: [target], steps: [], id: "", uses: [] });
  const taken: { readonly uses: readonly string[]; readonly steps: number }[] = [];
  let judgements = 0;
  while (queue.size > 0 && kinds.size < bounds.kinds && judgements < bounds.judgements) {
    const here = queue.pop();
    // whoever needs all the jars of another route, and more, makes a detour
    if (taken.some((one) => one.steps < here.steps.length && one.uses.every((key) => here.uses.includes(key))))
      continue;
    const last = here.steps.at(-1);
    if (last !== undefined && last.judgement === undefined) {
      const c = last.candidate;
      if (refused.has(c.id)) continue;
      const ofJars = c.feeds.every(({ key }) => jars.has(key));
      if (!ofJars && direct.has(likeness(c))) continue;
      if (here.open.length === 0 && kinds.has(kindOfRoute(here, index))) continue;
      judgements += 1;
      const judgement = judge(
        c,
        c.product === target ? targetForm : formOf(c.product),
        c.feeds.map((feed) => materialOf(feed, index)),
      );
      if (!judgement.ok) {
        refused.set(c.id, { candidate: c, judgement });
        continue;
      }
      if (ofJars) direct.add(likeness(c));
      const steps = [...here.steps.slice(0, -1), { candidate: c, judgement }];
      queue.push({ ...here, steps });
      continue;
    }
    const goal = here.open.at(-1);
    if (goal === undefined) {
      const kind = kindOfRoute(here, index);
      if (kinds.has(kind)) continue;
      kinds.add(kind);
      taken.push({ uses: here.uses, steps: here.steps.length });
      found.push({ kind, cost: here.spent, steps: inOrder(here, index) });
      continue;
    }
    const rest = here.open.slice(0, -1).filter((one) => one !== goal);
    const made = new Set(here.steps.map(({ candidate }) => candidate.product.key));
    const later = usersOf(goal, here.steps);
    if (made.has(goal.key)) {
      queue.push({ ...here, open: rest });
      continue;
    }
    const form = goal === target ? targetForm : formOf(goal);
    const ways = candidatesFor(goal, all);
    const gone = endedAmong(ways, form, trials);
    for (const candidate of ways) {
      // nothing is undone: what is made further on is no feed
      if (candidate.feeds.some(({ key }) => key === target.key || later.has(key))) continue;
      const tried = gone.get(candidate);
      if (tried !== undefined) {
        over.add(tried);
        continue;
      }
      const open = [...rest, ...candidate.feeds.filter(({ key }) => !jars.has(key) && !made.has(key))];
      const left = bounds.steps - here.steps.length - 1;
      // where one is made of another, that other is looked for last
      if (sumOf(open) > left) open.sort((a, b) => stepsOf(a) - stepsOf(b));
      if (stepsTo(open, left) > left) continue;
      const isAhead = trials.reads.length > 0 && trials.went(reactionOfCandidate(candidate, form));
      const spent = here.spent + costOf(candidate) - (isAhead ? AHEAD : 0);
      const uses = [
        ...new Set([...here.uses, ...candidate.feeds.filter(({ key }) => jars.has(key)).map(({ key }) => key)]),
      ];
      queue.push({
        uses,
        cost: spent + costTo(open) + pricesOf(candidate, index),
        spent,
        open,
        steps: [...here.steps, { candidate }],
        id: `${here.id};${candidate.id}`,
      });
    }
  }
  return { found, refused: [...refused.values()], over: [...over] };
}

/** What is made of a compound on the way to the target. */
function usersOf({ key }: Compound, steps: Waiting["steps"]): ReadonlySet<string> {
  const users = new Set<string>([key]);
  // each round goes one step further on; there are as many at most as there are steps
  for (const _ of steps)
    for (const { candidate } of steps)
      if (candidate.feeds.some((feed) => users.has(feed.key))) users.add(candidate.product.key);
  return users;
}

const kindOfRoute = ({ steps }: Waiting, index: Index): string =>
  steps.map(({ candidate }) => kindOf(candidate, index)).join(" ; ");

/** Of two jars that serve alike the cheaper is looked at first; a price never counts as much as a doubt. */
function pricesOf({ feeds }: Candidate, index: Index): number {
  let sum = 0;
  for (const { key } of feeds) {
    const jar = index.jars.get(key)?.[0];
    if (jar === undefined) continue;
    sum += jar.perMole === undefined ? 0.5 : jar.perMole / (jar.perMole + 1);
  }
  return (0.04 * sum) / Math.max(1, feeds.length);
}

/** Every step that uses it takes a solution. */
const isUsedAsLiquor = (candidate: Candidate, steps: Waiting["steps"]): boolean =>
  leavesLiquor(candidate) &&
  steps.every(({ candidate: other }) => !other.feeds.includes(candidate.product) || takesLiquor(other));

/** Steps in the order of the work: what is used is made before. */
function inOrder({ steps }: Waiting, index: Index): readonly FoundStep[] {
  const byProduct = new Map(steps.map((step) => [step.candidate.product.key, step]));
  const done: FoundStep[] = [];
  const visit = (step: Waiting["steps"][number]): void => {
    if (done.some(({ candidate }) => candidate === step.candidate)) return;
    for (const { key } of step.candidate.feeds) {
      const made = byProduct.get(key);
      if (made !== undefined) visit(made);
    }
    done.push({
      candidate: step.candidate,
      judgement: step.judgement as FoundStep["judgement"],
      materials: step.candidate.feeds.map((feed) => materialOf(feed, index)),
      inLiquor: step === steps[0] ? isKeptDissolved(step.candidate) : isUsedAsLiquor(step.candidate, steps),
    });
  };
  visit(steps[0]!);
  return done;
}

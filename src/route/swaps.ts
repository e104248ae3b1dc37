import { type Candidate, candidatesFor } from "./candidates";
import type { Compound } from "./compound";
import { judge } from "./judge";
import { BASIC } from "./kinds";
import { type Found, materialOf } from "./search";
import type { Index } from "./shelf";
import { endedAmong, type Trials } from "./tried";
import type { Swap } from "./types";

/** The other jars of a kind, those alone that go as well. */
export function swapsOf({ steps }: Found, index: Index, trials: Trials): Swap[] {
  const found: Swap[] = [];
  for (const { candidate, materials, judgement } of steps) {
    const ways = candidatesFor(candidate.product, index.all);
    const gone = endedAmong(ways, judgement.product, trials);
    for (const other of ways) {
      if (other.family !== candidate.family || other.feeds.length !== candidate.feeds.length) continue;
      const differs = other.feeds
        .map((feed, i) => (feed.key === candidate.feeds[i]!.key ? -1 : i))
        .filter((i) => i >= 0);
      const [at] = differs;
      if (
        at === undefined ||
        differs.length !== 1 ||
        !index.jars.has(other.feeds[at]!.key) ||
        !isLike(candidate, other, at)
      )
        continue;
      const jars = other.feeds.map((feed, i) => (i === at ? materialOf(feed, index) : materials[i]!));
      if (gone.has(other)) continue;
      if (judge(other, judgement.product, jars).ok) found.push({ instead: materials[at]!.name, use: jars[at]!.name });
    }
  }
  for (const { materials, candidate } of steps)
    candidate.feeds.forEach(({ key }, i) => {
      for (const { material } of index.jars.get(key)?.slice(1) ?? [])
        found.push({ instead: materials[i]!.name, use: material.name });
    });
  return found;
}

/** Do two reactions differ only in an ion that is washed out? */
function isLike(a: Candidate, b: Candidate, at: number): boolean {
  const own = new Set([...a.product.made.cations, ...a.product.made.anions].map(({ formula }) => formula));
  const kept = ({ made }: Compound): string =>
    [...made.cations, ...made.anions]
      .map(({ formula }) => formula)
      .filter((ion) => own.has(ion) || BASIC.has(ion))
      .sort()
      .join(" ");
  return kept(a.feeds[at]!) === kept(b.feeds[at]!);
}

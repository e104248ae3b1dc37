// How well a step is vouched for: somebody published it, the same kind was published with this metal, or it is only computed.

import { isNonmetal } from "../equation/internal";
import { once } from "../foundation/memo";
import { isMetalCation } from "../ion/internal";
import type { Quantity } from "../quantity";
import type { Candidate } from "./candidates";
import { formulaFrom, keyOf, madeOf } from "./compound";
import { PUBLISHED, type PublishedRow } from "./data/published";
import { cite } from "./data/sources";
import { BASIC, CARBONATES } from "./kinds";
import { isGoing, type Tried } from "./tried";

/** How well a step is vouched for. */
export interface RouteEvidence {
  /** From trials that went and a preparation in print down to a computation alone. */
  readonly grade: "tried here" | "published" | "same kind with this metal" | "computed only";
  /** What was run, where it is published, or what the computation rests on. */
  readonly source: string;
  /** Trials that went: how many, and their yield on average; absent where none did. */
  readonly trials?: { readonly n: number; readonly yield: Quantity<"number"> };
}

/** Metals that come with an anion or a base and tell nothing about a preparation. */
const CARRIERS = ["Li", "Na", "K"];

const metalsIn = (formula: string): string[] =>
  formulaFrom(formula).symbols.filter((symbol) => !isNonmetal(symbol) && !CARRIERS.includes(symbol));

const index = /* @__PURE__ */ once(() => {
  const exact = new Map<string, PublishedRow>();
  for (const row of PUBLISHED())
    exact.set(
      id(
        keyOf(row.product)!,
        row.feeds.map((one) => keyOf(one)!),
      ),
      row,
    );
  return exact;
});

const id = (product: string, feeds: readonly string[]): string => `${product} < ${[...feeds].sort().join(" | ")}`;

/** The kind of a published preparation: what its product is beside its metal, and what it is taken from. */
function likeness(product: string, feeds: readonly string[]): string {
  const anions = (formula: string): string =>
    formulaFrom(formula)
      .symbols.filter((s) => !metalsIn(formula).includes(s))
      .sort()
      .join("");
  return `${anions(product)} < ${feeds.map(anions).sort().join(" | ")}`;
}

const known = new WeakMap<Candidate, RouteEvidence>();

/** The evidence for a reaction: what was tried of it counts before what is in print. */
export function evidenceOf(candidate: Candidate, tried?: Tried): RouteEvidence {
  const printed = byPrint(candidate);
  if (!isGoing(tried)) return printed;
  const { text, yield: share } = tried.taught();
  const source = printed.grade === "published" ? `${text}; published: ${printed.source}` : text;
  return { grade: "tried here", source, trials: { n: tried.n, yield: share } };
}

function byPrint(candidate: Candidate): RouteEvidence {
  const evidence = known.get(candidate) ?? looked(candidate);
  known.set(candidate, evidence);
  return evidence;
}

function looked({ product, feeds, family }: Candidate): RouteEvidence {
  const own = index().get(
    id(
      product.key,
      feeds.map(({ key }) => key),
    ),
  );
  if (own !== undefined) return { grade: "published", source: cite(own.source) };
  const name = product.forms[0]!;
  const kind = likeness(
    name,
    feeds.map(({ forms }) => forms[0]!),
  );
  const metals = metalsIn(name);
  const like = PUBLISHED().find(
    (row) =>
      likeness(row.product, row.feeds) === kind ||
      (metals.some((m) => metalsIn(row.product).includes(m)) &&
        row.feeds.length === feeds.length &&
        familyOf(row) === family.code),
  );
  return like === undefined
    ? { grade: "computed only", source: "constants of the tables, each with its source" }
    : { grade: "same kind with this metal", source: cite(like.source) };
}

/** The family of a published row, as far as its feeds show it. */
function familyOf({ product, feeds }: PublishedRow): string | undefined {
  if (feeds.length === 1) return keyOf(feeds[0]!) === keyOf(product) ? undefined : "heat";
  const made = feeds.map(madeOf);
  const has = (ions: ReadonlySet<string>): boolean =>
    made.some((one) => one?.anions.some(({ formula }) => ions.has(formula)));
  const acid = made.some((one) => one?.kind === "acid");
  const { cations = [], anions = [] } = madeOf(product) ?? {};
  if (has(CARBONATES) && anions.some(({ formula }) => formula === "CO3^2-")) return "precipitate-carbonate";
  if (acid && feeds.some((one, i) => made[i]?.kind === "element" && metalsIn(one).length > 0)) return "metal-and-acid";
  if (acid && has(BASIC)) return "neutralise";
  const shared = cations.length === 2 && anions.length === 1;
  if (shared && cations.some(({ formula }) => isMetalCation(formula))) return "double-salt";
  return undefined;
}

/** From the best evidence to the weakest. */
const GRADES: readonly RouteEvidence["grade"][] = [
  "tried here",
  "published",
  "same kind with this metal",
  "computed only",
];

/** 0 for the best. */
export const gradeOf = ({ grade }: RouteEvidence): number => GRADES.indexOf(grade);

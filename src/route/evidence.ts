// How well a step is vouched for: somebody published it, the same kind was published with this metal, or it is only computed.
import { once } from "../foundation/memo";
import type { Candidate } from "./candidates";
import { formulaFrom, keyOf } from "./compound";
import { PUBLISHED, type PublishedRow } from "./data/published";
import { cite } from "./data/sources";

/** How well a step is vouched for. */
export interface Evidence {
  readonly grade: "published" | "same kind with this metal" | "computed only";
  /** Where it is published, or what the computation rests on. */
  readonly source: string;
}

const metalsIn = (formula: string): string[] =>
  formulaFrom(formula).symbols.filter(
    (symbol) => !/^(?:H|C|N|O|S|Cl|P|B|F|Br|I|Si)$/.test(symbol) && !/^(?:Na|K|Li)$/.test(symbol),
  );

const index = /* @__PURE__ */ once(() => {
  const exact = new Map<string, PublishedRow>();
  for (const row of PUBLISHED)
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

/** The evidence for a reaction. */
export function evidenceOf({ product, feeds, family }: Candidate): Evidence {
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
  const like = PUBLISHED.find(
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
  const has = (test: RegExp): boolean => feeds.some((one) => test.test(one));
  if (feeds.length === 1) return "heat";
  if (has(/CO3/) && product.includes("CO3")) return "precipitate-carbonate";
  if (has(/^(?:Zn|Fe|Al|Cu)$/) && has(/^H|COOH/)) return "metal-and-acid";
  if (has(/CO3|O$|OH/) && has(/^H|COOH/)) return "neutralise";
  if (/\(SO4\)2$/.test(product)) return "double-salt";
  return undefined;
}

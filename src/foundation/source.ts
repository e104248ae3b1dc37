// Citations. Every layer keeps the sources of its own tables beside them (`data/sources.ts`), so that a program carries only
// those it can cite; they are merged at the root alone. A row of data names a key; no key, no row.
import { shown } from "./argument";
import { SourceError } from "./error";
import { OWN_FIGURE } from "./facts";
import { nearestWord } from "./slips";

/** One source: what it is, and how far it was checked for our rows. */
export interface Source {
  /** What the work is called, with author or publisher where known. */
  readonly title: string;
  /** As printed on the work. */
  readonly edition?: string;
  /** Year it was published. */
  readonly year?: number;
  /** Place in the work, or where to find it. */
  readonly where?: string;
  /** Digital object identifier, without an address before it. */
  readonly doi?: string;
  /** How the figures reached us, when not read in the source itself. */
  readonly access?: string;
  /** Recalled, not read there: said wherever the source is cited. */
  readonly fromMemory?: "all" | "partly";
}

/** The sources of one layer, by key. */
export type Sources = Readonly<Record<string, Source>>;

/**
 * How figures reached us, for those sources of a layer that were not read themselves. Apart from the sources, because no citation
 * prints it.
 */
export type Access<Table> = { readonly [Key in keyof Table]?: string };

/** The entry of a key in the first table which has it. */
export function entryIn(tables: readonly Sources[], key: string): Source {
  const own = typeof key === "string" ? tables.find((table) => Object.hasOwn(table, key)) : undefined;
  if (own !== undefined) return own[key]!;
  if (typeof key === "string" && key.startsWith(OWN_FIGURE)) return { title: key };
  const nearest = typeof key === "string" ? nearestWord(key, tables.flatMap(Object.keys)) : undefined;
  throw new SourceError("source.unknown", `no source has the key ${shown(key)}`, {
    hint: nearest === undefined ? "sourceKeys() lists them" : `did you mean ${nearest}?`,
  });
}

/** A source on one line; says so where the figures were recalled and not read in it. */
export function citation(key: string, tables: readonly Sources[]): string {
  const { title, edition, where, year, doi, fromMemory } = entryIn(tables, key);
  const memory = fromMemory === undefined ? "" : fromMemory === "all" ? " (from memory)" : " (partly from memory)";
  const entry = [
    title,
    edition === undefined ? undefined : `${edition} ed.`,
    where,
    year,
    doi === undefined ? undefined : `doi ${doi}`,
  ]
    .filter((part) => part !== undefined)
    .join(", ");
  return entry + memory;
}

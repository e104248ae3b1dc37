// What the rows of a table rest on, as the rights of the data and the page of trust count them.
import { cite } from "../../src/sources";
import { type Table, tablesOf } from "./tables";

/** How well a row is known. `weak`: published, but doubtful, unsigned, read at second hand or only in part. */
export type Ground = "published" | "weak" | "memory" | "practice";

/** A table whose rows name their sources. */
export interface CountedTable extends Table {
  /** Source of each row: its own, else the first that stands inside it. */
  readonly sources: readonly string[];
  readonly grounds: Readonly<Record<Ground, number>>;
}

/** Field that names a source, and flags that make a row weak. */
const SOURCE = /^(?:source|sources|\w+Source)$/;

function firstSource(value: unknown): string | undefined {
  if (typeof value !== "object" || value === null) return undefined;
  const own = (value as { source?: unknown }).source;
  if (typeof own === "string") return own;
  for (const [field, inner] of Object.entries(value)) {
    const found = SOURCE.test(field) ? [inner].flat().find((one) => typeof one === "string") : firstSource(inner);
    if (typeof found === "string") return found;
  }
  return undefined;
}

/** What a source alone is worth. */
export function groundOf(source: string): Ground {
  if (source === "memory") return "memory";
  if (source === "commonPractice") return "practice";
  const line = cite(source as Parameters<typeof cite>[0]);
  return /\(from memory\)$/.test(line)
    ? "memory"
    : /\(partly from memory\)$|\(unsigned\)/.test(line)
      ? "weak"
      : "published";
}

const isDoubtful = (row: unknown): boolean => {
  const { weak, doubtful, doubt, knownAs, change, changeSource } = row as Readonly<Record<string, unknown>>;
  // where heat changes it is from memory unless the row says otherwise
  const recalledInPart = change !== undefined && changeSource === undefined;
  return weak === true || doubtful !== undefined || doubt !== undefined || knownAs === "estimated" || recalledInPart;
};

/** Tables with at least this many rows are counted; what is smaller is a setting more than a table. */
const LEAST_ROWS = 10;

/** Every table of all layers in which most rows name a source. */
export async function countedTables(): Promise<CountedTable[]> {
  const found: CountedTable[] = [];
  for (const table of await tablesOf()) {
    const rows = Array.isArray(table.rows) ? (table.rows as readonly unknown[]) : [];
    const known = rows.map((row) => [row, firstSource(row)] as const).filter(([, source]) => source !== undefined);
    if (known.length < LEAST_ROWS) continue;
    const grounds = { published: 0, weak: 0, memory: 0, practice: 0 };
    for (const [row, source] of known) {
      const ground = groundOf(source!);
      grounds[ground === "published" && isDoubtful(row) ? "weak" : ground] += 1;
    }
    found.push({ ...table, sources: known.map(([, source]) => source!), grounds });
  }
  return found;
}

/** `solution densities` of `SOLUTION_DENSITIES`. */
export const inWords = (name: string): string => name.toLowerCase().replaceAll("_", " ");

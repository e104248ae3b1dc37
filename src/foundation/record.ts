// What every record begins with: what it is, in which version of the layout, and which release wrote it.
import { shownValue } from "./error";

/** The release; a test compares it with package.json. */
const LIBRARY = "0.1.0";

/** The beginning of every record that a `toJSON` writes. */
export interface RecordHead<T extends string = string> {
  /** What it is a record of. */
  readonly type: T;
  /** Version of the layout; it changes when an older reader could no longer read a newer record rightly. */
  readonly schema: number;
  /** Release of the library that wrote it. */
  readonly library?: string;
}

/**
 * The beginning of a record of a kind.
 *
 * @internal
 */
export const recordHead = <T extends string>(type: T, schema: number) =>
  ({ type, schema, library: LIBRARY }) as const satisfies RecordHead<T>;

/**
 * Why data is not a record of a kind, in words; undefined where its beginning is right. The fields are the reader's to check.
 *
 * @internal
 */
export function headProblem(data: unknown, type: string, schema: number): string | undefined {
  if (typeof data !== "object" || data === null || Array.isArray(data)) return "no object";
  const head = data as { readonly [K in keyof RecordHead]?: unknown };
  if (head.type !== type) return `type is not '${type}'`;
  const { schema: written, library } = head;
  if (library !== undefined && typeof library !== "string") return "library is not text";
  if (written === schema) return undefined;
  if (Number.isInteger(written) && (written as number) > schema) {
    const by = library === undefined ? "" : ` (${library.slice(0, 40)})`;
    return `written by a newer library${by}: schema ${written}, where ${LIBRARY} reads ${schema}`;
  }
  return `schema ${shownValue(written).slice(0, 40)} is not ${schema}`;
}

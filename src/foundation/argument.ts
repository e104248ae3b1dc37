// One guard for the arguments of every layer: options and requests as objects of known fields, lists without holes, words
// of a few. What callers without types get wrong is refused by name, before anything reads it.
import type { ErrorPlace, PreparativeError } from "./error";
import { nearestWord } from "./slips";

/** Every field of an options type, of each of its alternatives. */
type FieldOf<T> = T extends unknown ? keyof T & string : never;

/**
 * The fields an object may have. `true` leaves the value to whoever reads it; known fields ask for an object of those,
 * and known fields in a list for a list of such objects.
 *
 * @internal
 */
export interface KnownFields {
  readonly [field: string]: true | KnownFields | readonly [KnownFields];
}

/**
 * The fields of an options type as a value: `{ … } as const satisfies Fields<Options>` has to name every field of the
 * type and no other, so that the type and what is let through cannot drift apart.
 *
 * @internal
 */
export type Fields<T> = { readonly [F in FieldOf<T>]-?: KnownFields[string] };

/**
 * The codes a room refuses an argument with: a field that nobody knows, a value of the wrong kind, one that is left out.
 *
 * @internal
 */
interface ArgumentCodes<Code extends string> {
  readonly unknown: Code;
  readonly bad: Code;
  /** The code for a wrong kind also serves for what is left out, where none is given. */
  readonly missing?: Code;
  /** The code for a quantity at zero or below, where the room asks for more. */
  readonly notPositive?: Code;
}

/** A quantity, as far as this layer knows it. */
interface Signed {
  isPositive(): boolean;
}

type Refusal<Code extends string> = new (code: Code, problem: string, place?: ErrorPlace) => PreparativeError;

/** Longest text a message quotes. */
const LONGEST_QUOTE = 80;

/**
 * A text for a message, in quotes and no longer than a line.
 *
 * @internal
 */
const quoted = (text: string): string => `'${text.length > LONGEST_QUOTE ? `${text.slice(0, LONGEST_QUOTE)}…` : text}'`;

/**
 * What a value is, in words that are safe for any value.
 *
 * @internal
 */
export function kindOf(value: unknown): string {
  if (value === null) return "null";
  return Array.isArray(value) ? "a list" : typeof value;
}

/**
 * A value for a message: text in quotes, anything else by its kind.
 *
 * @internal
 */
export const shown = (value: unknown): string => (typeof value === "string" ? quoted(value) : kindOf(value));

/**
 * Is it an object with fields, and no list?
 *
 * @internal
 */
export function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === "object" && value !== null && !Array.isArray(value);
}

/**
 * Is it an object of fields alone, as written in braces or read from JSON? Its prototype is that of plain objects, of
 * this or another window, or none; what a Map, a date or a formula keeps is not in its fields.
 */
function isPlain(value: object): boolean {
  const prototype: unknown = Object.getPrototypeOf(value);
  return prototype === null || prototype === Object.prototype || Object.getPrototypeOf(prototype) === null;
}

/** What an object is that is not plain. */
function classOf(value: object): string {
  const name: unknown = (value as { readonly constructor?: { readonly name?: unknown } }).constructor?.name;
  return typeof name === "string" && name !== "" ? `an instance of ${name.slice(0, 40)}` : "another object";
}

/** Is it what the function was given as a whole, so that its fields need no further place? */
const isWhole = (argument: string): boolean => argument === "options" || argument === "request";

/**
 * The guard of a room: each check answers nothing, or throws an error of the room which names the argument.
 *
 * @internal
 */
export class ArgumentGuard<Code extends string> {
  private readonly Refusal: Refusal<Code>;
  private readonly codes: ArgumentCodes<Code>;

  constructor(refusal: Refusal<Code>, codes: ArgumentCodes<Code>) {
    this.Refusal = refusal;
    this.codes = codes;
  }

  /** The quantity, which must be above zero. */
  positive<Q extends Signed>(q: Q, argument: string): Q {
    if (q.isPositive()) return q;
    throw new this.Refusal(this.codes.notPositive ?? this.codes.bad, `${argument} must be above zero, not ${q}`, {
      details: { argument, value: String(q) },
    });
  }

  /** An object with none but the known fields. Objects and lists of objects inside are looked through too. */
  fields(value: unknown, known: KnownFields, argument = "options"): void {
    this.record(value, argument);
    for (const field of Object.keys(value as object)) {
      const expected = known[field];
      if (expected === true) continue;
      if (expected === undefined || !Object.hasOwn(known, field)) throw this.unknown(field, known, argument);
      const inner = (value as Readonly<Record<string, unknown>>)[field];
      if (inner === undefined) continue;
      const place = isWhole(argument) ? field : `${argument}.${field}`;
      if (Array.isArray(expected)) this.listOf(inner, expected[0] as KnownFields, place);
      else this.fields(inner, expected as KnownFields, place);
    }
  }

  /** As `fields`, or left out. */
  options(value: unknown, known: KnownFields, argument = "options"): void {
    if (value !== undefined) this.fields(value, known, argument);
  }

  /** A list of objects with none but the known fields. */
  listOf(value: unknown, known: KnownFields, argument: string): void {
    this.list(value, argument);
    for (const [i, entry] of (value as readonly unknown[]).entries()) this.fields(entry, known, `${argument}[${i}]`);
  }

  /** An object of any fields, such as a table by formula. */
  record(value: unknown, argument: string): void {
    if (!isRecord(value)) throw this.refused(value, argument, "an object");
    if (!isPlain(value)) throw this.refused(value, argument, "an object of plain fields", classOf(value));
  }

  /** A list without holes. */
  list(value: unknown, argument: string): void {
    if (!Array.isArray(value)) throw this.refused(value, argument, "a list");
    for (let i = 0; i < value.length; i += 1) {
      if (!(i in value)) throw this.refused(undefined, `${argument}[${i}]`, "given", "a hole in the list");
    }
  }

  /** One of a few words. */
  choice(value: unknown, argument: string, known: readonly string[]): void {
    if (known.includes(value as string)) return;
    throw this.refused(value, argument, `one of ${known.join(", ")}`);
  }

  text(value: unknown, argument: string): void {
    if (typeof value !== "string") throw this.refused(value, argument, "text");
  }

  number(value: unknown, argument: string): void {
    if (typeof value !== "number" || Number.isNaN(value))
      throw this.refused(value, argument, "a number", Number.isNaN(value) ? "NaN" : undefined);
  }

  boolean(value: unknown, argument: string): void {
    if (typeof value !== "boolean") throw this.refused(value, argument, "true or false");
  }

  /** The refusal of a value of the wrong kind, or of one that is left out. */
  refused(value: unknown, argument: string, wanted: string, is = shown(value)): PreparativeError {
    const { bad, missing = bad } = this.codes;
    const verb = argument === "options" ? "are" : "must be";
    return new this.Refusal(value === undefined ? missing : bad, `${argument} ${verb} ${wanted}, not ${is}`, {
      details: { argument },
    });
  }

  private unknown(field: string, known: KnownFields, argument: string): PreparativeError {
    const names = Object.keys(known);
    const nearest = nearestWord(field, names);
    const where = isWhole(argument) ? "" : ` in ${argument}`;
    return new this.Refusal(this.codes.unknown, `there is no option ${quoted(field)}${where}`, {
      hint: `${nearest === undefined ? "" : `did you mean ${nearest}? `}known: ${names.join(", ")}`,
      details: { argument, option: field.slice(0, LONGEST_QUOTE), known: names, nearest },
    });
  }
}

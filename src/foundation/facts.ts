// Facts of the caller's own, and the one place where they are looked up. A set of facts is immutable and belongs to nobody but
// the call that was given it: `under` makes it the set in force while that call computes and puts back what was there before,
// however the call ends. Whatever is worked out later (lazy.ts) is worked out under the set of its making, and whatever is
// remembered (memo.ts) is remembered apart for each set, so that no answer depends on what was asked before.

/** Tables of own rows by key, as the layers look them up. */
export type OwnTables = Readonly<Record<string, ReadonlyMap<string, unknown>>>;

/** @internal Of whichever copy of the library. */
export const OWN_TABLES: unique symbol = /* @__PURE__ */ Symbol.for("preparative.facts");

/** A set of facts of the caller's own, made by `facts`: immutable, and passed to whatever looks something up. */
export interface Facts {
  /** Tells facts from other objects. */
  readonly kind: "facts";
  /** How many rows of each kind there are. */
  readonly size: number;
  /** The rows in one line. */
  toString(): string;
  /** The rows as they were given, each with its source. */
  toJSON(): { readonly type: "facts"; readonly schema: number; readonly parts: readonly object[] };
  /** @internal A function: proxies of state libraries wrap the objects they meet. */
  readonly [OWN_TABLES]: () => OwnTables;
}

/** What a function takes that looks something up. */
export interface LookupOptions {
  /** Facts of the caller's own, looked up before the tables of the library. */
  readonly facts?: Facts | undefined;
}

export const LOOKUP = { facts: true } as const;

let inForce: Facts | undefined;

/** The set in force; undefined where nothing of the caller's own was given. */
export const factsInForce = (): Facts | undefined => inForce;

/** Computes with a set in force, or with none. */
export function under<T>(facts: Facts | undefined, compute: () => T): T {
  if (facts === inForce) return compute();
  const before = inForce;
  inForce = facts;
  try {
    return compute();
  } finally {
    inForce = before;
  }
}

/** The caller's own row of a table, if there is a set in force which has it. */
export const ownRow = <Row>(table: string, key: () => string): Row | undefined =>
  inForce === undefined ? undefined : (inForce[OWN_TABLES]()[table]?.get(key()) as Row | undefined);

/** All of the caller's own rows of a table. */
export const ownRows = <Row>(table: string): readonly Row[] =>
  inForce === undefined ? [] : ([...(inForce[OWN_TABLES]()[table]?.values() ?? [])] as Row[]);

/** Is it a set of facts, of this or another copy of the library? */
export const isFacts = (value: unknown): value is Facts =>
  typeof value === "object" && value !== null && OWN_TABLES in value;

interface Refusing {
  refused(value: unknown, argument: string, wanted: string): Error;
}

interface Guard extends Refusing {
  fields(value: unknown, known: typeof LOOKUP): void;
  record(value: unknown, argument: string): void;
}

/** Computes with the facts of an option in force; where none are given, those of whoever asks stay in force. */
export function lookingIn<T>(facts: unknown, guard: Refusing, compute: () => T): T {
  if (facts === undefined) return compute();
  if (!isFacts(facts)) throw guard.refused(facts, "facts", "what facts() gave");
  return under(facts, compute);
}

/** Computes with the facts of options that have nothing else. */
export function lookingWith<T>(options: LookupOptions, guard: Guard, compute: () => T): T {
  guard.fields(options, LOOKUP);
  return lookingIn(options.facts, guard, compute);
}

/** Are there facts of the caller's own in a request? */
export const bringsFacts = (request: unknown): boolean =>
  typeof request === "object" && request !== null && (request as LookupOptions).facts !== undefined;

/** Asks again without the facts of the request, and with these in force. */
export function withItsFacts<R, T>(request: R, guard: Guard, ask: (others: R) => T): T {
  guard.record(request, "request");
  const { facts, ...others } = request as R & LookupOptions;
  return lookingIn(facts, guard, () => ask(others as R));
}

/** What stands before a source of the caller's own wherever it is cited. */
export const OWN_FIGURE = "own figure: ";

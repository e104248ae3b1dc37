// Figures that are worked out when first asked for, and then kept: a run with one observation changed recomputes only what
// is looked at and depends on it. The objects are frozen: a figure, once looked at, is the figure.
import { type Facts, factsInForce, under } from "./facts";
import { frozen } from "./frozen";
import { PRINTING, readable, readableInside } from "./readable";

/** One function for each property. */
export type Parts<T extends object> = { readonly [K in keyof T]-?: () => T[K] };

/** What stands behind a lazy object: how each property is worked out, and what already was. */
interface Behind {
  readonly parts: Readonly<Record<string, (() => unknown) | undefined>>;
  /** Another object that has the properties no part is given for. */
  readonly base: Readonly<Record<string, unknown>> | undefined;
  readonly made: Record<string, unknown>;
  /** What the room keeps with the object for itself. */
  readonly kept: unknown;
  /** The facts of the caller's own that it was made with. */
  readonly facts: Facts | undefined;
}

const BEHIND: unique symbol = /* @__PURE__ */ Symbol("behind");

/** One getter for each name of a property, shared by all objects: thousands of objects then have one shape. */
const accessors = /* @__PURE__ */ new Map<string, PropertyDescriptor>();

function accessor(key: string): PropertyDescriptor {
  let found = accessors.get(key);
  if (found === undefined) {
    found = {
      enumerable: true,
      get(this: { readonly [BEHIND]: () => Behind }) {
        const { parts, base, made, facts } = this[BEHIND]();
        const known = made[key];
        if (known !== undefined || key in made) return known;
        const part = parts[key];
        const value = part === undefined ? base?.[key] : frozen(under(facts, part), readableInside);
        made[key] = value;
        return value;
      },
    };
    accessors.set(key, found);
  }
  return found;
}

/**
 * A frozen object whose properties are computed on first use; properties of `base`, itself lazy, are handed through, and
 * methods come from `methods`, a prototype.
 */
export function lazily<T extends object>(parts: Parts<T>): T;
export function lazily<T extends B, B extends object, M extends object>(
  parts: Parts<Omit<T, keyof B | keyof M>>,
  base: B,
  methods: M,
  kept?: unknown,
): T;
export function lazily(parts: Behind["parts"], base?: object, methods: object = PRINTING, kept?: unknown): object {
  const behind = { parts, base: base as Behind["base"], made: {}, kept, facts: factsInForce() };
  const target = standingBefore(Object.create(methods), behind);
  if (base !== undefined) for (const key of Object.keys(base)) Object.defineProperty(target, key, accessor(key));
  return completed(target, parts);
}

/**
 * The record itself, frozen, with properties more that are computed on first use: what is known already is no work to keep.
 * The record is the caller's own and plain.
 */
export function withLazy<Known extends object, Lazy extends object>(known: Known, parts: Parts<Lazy>): Known & Lazy {
  for (const value of Object.values(known)) frozen(value, readableInside);
  const behind = { parts, base: undefined, made: {}, kept: undefined, facts: factsInForce() };
  return completed(standingBefore(readable(known), behind), parts) as Known & Lazy;
}

/** With what stands behind it. A function: proxies of state libraries wrap the objects they meet, and a frozen property may not be answered so. */
const standingBefore = (target: object, behind: Behind): object =>
  Object.defineProperty(target, BEHIND, { value: () => behind });

function completed(target: object, parts: Behind["parts"]): object {
  for (const key of Object.keys(parts)) Object.defineProperty(target, key, accessor(key));
  return Object.freeze(target);
}

/** What is kept with a lazy object of this copy of the library. */
export const keptWith = (object: object): unknown => (object as { readonly [BEHIND]?: () => Behind })[BEHIND]?.().kept;

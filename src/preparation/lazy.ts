// Figures that are worked out when first asked for, and then kept: a run with one observation changed recomputes only what
// is looked at and depends on it.

/** One function for each property. */
export type Parts<T extends object> = { readonly [K in keyof T]-?: () => T[K] };

/** What stands behind a lazy object: how each property is worked out, and what already was. */
interface Behind {
  readonly parts: Readonly<Record<string, (() => unknown) | undefined>>;
  /** Another object that has the properties no part is given for. */
  readonly base: Readonly<Record<string, unknown>> | undefined;
  readonly made: Record<string, unknown>;
}

const BEHIND: unique symbol = /* @__PURE__ */ Symbol("behind");

/** One getter for each name of a property, shared by all objects: thousands of objects then have one shape. */
const accessors = /* @__PURE__ */ new Map<string, PropertyDescriptor>();

function accessor(key: string): PropertyDescriptor {
  let found = accessors.get(key);
  if (found === undefined) {
    found = {
      enumerable: true,
      get(this: { readonly [BEHIND]: Behind }) {
        const { parts, base, made } = this[BEHIND];
        if (key in made) return made[key];
        const part = parts[key];
        const value = part === undefined ? base?.[key] : part();
        made[key] = value;
        return value;
      },
    };
    accessors.set(key, found);
  }
  return found;
}

/** An object whose properties are computed on first use; properties of `base`, itself lazy, are handed through. */
export function lazily<T extends object>(parts: Parts<T>): T;
export function lazily<T extends B, B extends object>(parts: Parts<Omit<T, keyof B>>, base: B): T;
export function lazily(parts: Behind["parts"], base?: object): object {
  const target = Object.defineProperty({}, BEHIND, { value: { parts, base, made: {} } });
  if (base !== undefined) for (const key of Object.keys(base)) Object.defineProperty(target, key, accessor(key));
  for (const key of Object.keys(parts)) Object.defineProperty(target, key, accessor(key));
  return target;
}

/** Answers of a pure function by its key, the oldest forgotten: tables do not change, and plans are made again and again. */
export function remembering<T>(most: number): (key: string, compute: () => T) => T {
  const kept = new Map<string, T>();
  return (key, compute) => {
    if (kept.has(key)) return kept.get(key)!;
    const value = compute();
    if (kept.size >= most) kept.delete(kept.keys().next().value!);
    kept.set(key, value);
    return value;
  };
}

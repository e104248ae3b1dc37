// Figures that are worked out when first asked for, and then kept: a run with one observation changed recomputes only what
// is looked at and depends on it.

/** One function for each property. */
export type Parts<T extends object> = { readonly [K in keyof T]-?: () => T[K] };

/** An object whose properties are computed on first use. */
export function lazily<T extends object>(parts: Parts<T>): T {
  const target = {} as T;
  for (const key of Object.keys(parts) as (keyof T)[]) {
    Object.defineProperty(target, key, {
      enumerable: true,
      configurable: true,
      get() {
        const value = parts[key]();
        Object.defineProperty(target, key, { enumerable: true, value });
        return value;
      },
    });
  }
  return target;
}

/** Some properties of an object that is itself lazy, as parts of another. */
export function partsOf<T extends object>(source: T, keys: readonly (keyof T)[]): Parts<T> {
  return Object.fromEntries(keys.map((key) => [key, () => source[key]])) as unknown as Parts<T>;
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

// What is worked out once and kept: tables and indexes on first use, answers of pure functions up to a number.

/** What `make` gives, made on first use and kept. Nothing is built at import, and a table that nobody asks is never made. */
export function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

/** Answers by key, the oldest forgotten beyond `most`: tables do not change, and the same is asked again and again. */
export function remembering<T>(most: number): (key: string, compute: () => T) => T {
  const kept = new Map<string, T>();
  return (key, compute) => {
    const known = kept.get(key);
    if (known !== undefined || kept.has(key)) return known as T;
    const value = compute();
    if (kept.size >= most) kept.delete(kept.keys().next().value!);
    kept.set(key, value);
    return value;
  };
}

/** A function of one text, with up to `most` of its answers remembered. */
export function memoised<T>(most: number, answer: (text: string) => T): (text: string) => T {
  const keep = remembering<T>(most);
  return (text) => keep(text, () => answer(text));
}

// What is worked out once and kept: tables and indexes on first use, answers of pure functions up to a number.

/** What `make` gives, made on first use and kept. Nothing is built at import, and a table that nobody asks is never made. */
export function once<T>(make: () => T): () => T {
  let made: { readonly value: T } | undefined;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}

/** Keeps an answer, the oldest forgotten beyond `most`. */
function kept<T>(answers: Map<string, T>, most: number, key: string, answer: T): T {
  if (answers.size >= most) answers.delete(answers.keys().next().value!);
  answers.set(key, answer);
  return answer;
}

/** Answers by key, up to a number: tables do not change, and the same is asked again and again. */
export function remembering<T>(most: number): (key: string, compute: () => T) => T {
  const answers = new Map<string, T>();
  return (key, compute) => {
    const known = answers.get(key);
    return known !== undefined || answers.has(key) ? (known as T) : kept(answers, most, key, compute());
  };
}

/** A function of one text, with up to `most` of its answers remembered; makes nothing where an answer is known. */
export function memoised<T>(most: number, answer: (text: string) => T): (text: string) => T {
  const answers = new Map<string, T>();
  return (text) => {
    const known = answers.get(text);
    return known !== undefined || answers.has(text) ? (known as T) : kept(answers, most, text, answer(text));
  };
}

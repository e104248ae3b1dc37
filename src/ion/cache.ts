// Answers remembered by text, up to a number: then all are forgotten, and asked for again.

/** The function, with up to `most` of its answers remembered. */
export function memoised<T>(most: number, answer: (text: string) => T): (text: string) => T {
  const answers = new Map<string, T>();
  return (text) => {
    let value = answers.get(text);
    if (value === undefined) {
      value = answer(text);
      if (answers.size >= most) answers.clear();
      answers.set(text, value);
    }
    return value;
  };
}

// Words put together for a person.

/** Words in a row: `a`, `a and b`, `a, b and c`. */
export const list = (words: readonly string[], last: "and" | "or" = "and"): string =>
  words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} ${last} ${words.at(-1)}`;

/** A sentence from words of the middle of one. */
export const capital = (text: string): string => `${text.slice(0, 1).toUpperCase()}${text.slice(1)}`;

// Text that somebody else wrote, made fit for one line of paper: a name may hold anything, and must not start a line of its
// own, turn the writing round or command a terminal.

/** Controls with the line breaks among them, separators, and what turns the direction of writing. */
const CONTROLS = /[\p{Cc}\u2028\u2029\u061C\u200E\u200F\u202A-\u202E\u2066-\u2069\uFEFF\u{E0000}-\u{E007F}]+/gu;

/** Halves of surrogate pairs, which no file may hold. */
const HALVES = /\p{Cs}/gu;

/**
 * The text on one line: runs of control characters become a space, half characters the replacement character.
 *
 * @internal
 */
export const onOneLine = (text: string): string => text.replace(CONTROLS, " ").replace(HALVES, "\uFFFD");

const SPECIAL: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

/**
 * The text on one line for HTML and SVG, in elements and attributes.
 *
 * @internal
 */
export const inMarkup = (text: string): string => onOneLine(text).replace(/[&<>"']/g, (c) => SPECIAL[c]!);

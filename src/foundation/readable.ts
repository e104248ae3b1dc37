// Answers that are plain data and still read as text: `${answer}` prints a line for each field that holds something.

/** The name of a field in words: `perHundredGramsWater` is "per hundred grams water". */
const inWords = (field: string): string =>
  field.replace(
    /([a-z\d])([A-Z])(?=[a-z])/g,
    (_, before: string, letter: string) => `${before} ${letter.toLowerCase()}`,
  );

const isEmpty = (value: unknown): boolean =>
  value === undefined || value === "" || typeof value === "function" || (Array.isArray(value) && value.length === 0);

/** Does the value have a text of its own, rather than that of its kind or of its fields? */
const saysItself = (value: object): boolean => {
  const own: unknown = value.toString;
  return own !== Object.prototype.toString && own !== Array.prototype.toString && own !== print;
};

/** A value on one line; undefined where it takes several. */
function onOneLine(value: unknown): string | undefined {
  if (typeof value === "boolean") return value ? "yes" : "no";
  if (typeof value !== "object" || value === null) return String(value);
  if (Array.isArray(value)) {
    const items = value.map(onOneLine);
    return items.every((item) => item !== undefined) ? items.join("; ") : undefined;
  }
  const text = saysItself(value) ? String(value) : "\n";
  return text.includes("\n") ? undefined : text;
}

function linesOf(value: object, indent: string): string[] {
  if (Array.isArray(value)) return value.flatMap((item) => itemLines(item, indent));
  if (saysItself(value))
    return String(value)
      .split("\n")
      .map((line) => indent + line);
  return Object.entries(value).flatMap(([field, held]) => {
    if (isEmpty(held)) return [];
    const line = onOneLine(held);
    if (line !== undefined) return [`${indent}${inWords(field)}: ${line}`];
    const inner = linesOf(held as object, `${indent}  `);
    return inner.length === 0 ? [] : [`${indent}${inWords(field)}:`, ...inner];
  });
}

/** One of a list, its first line marked. */
function itemLines(item: unknown, indent: string): string[] {
  const line = onOneLine(item);
  const lines = line === undefined ? linesOf(item as object, `${indent}  `) : [`${indent}  ${line}`];
  return lines.map((text, at) => (at === 0 ? `${indent}- ${text.slice(indent.length + 2)}` : text));
}

function print(this: object): string {
  return linesOf(this, "").join("\n");
}

const TO_STRING: PropertyDescriptor = { value: print };

/**
 * The answer itself, with a `toString` that is not among its fields and prints them.
 *
 * @internal
 */
export const readable = <T extends object>(answer: T): T => Object.defineProperty(answer, "toString", TO_STRING);

/**
 * A record inside an answer, which prints its fields unless it has a text of its own.
 *
 * @internal
 */
export const readableInside = (record: object): object => (saysItself(record) ? record : readable(record));

/**
 * The answer itself, with a `toString` of its own that is not among its fields.
 *
 * @internal
 */
export const printsItself = <T extends object>(answer: T, own: (answer: T) => string): T =>
  Object.defineProperty(answer, "toString", { value: () => own(answer) });

/**
 * A prototype for objects that print their fields.
 *
 * @internal
 */
export const PRINTING: object = /* @__PURE__ */ Object.defineProperty({}, "toString", TO_STRING);

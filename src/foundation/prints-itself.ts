// Answers that are plain data and still read as text: `${answer}` prints lines a person understands.

/**
 * The answer itself, with a `toString` that is not among its fields.
 *
 * @internal
 */
export const printsItself = <T extends object>(answer: T, print: (answer: T) => string): T =>
  Object.defineProperty(answer, "toString", { value: () => print(answer) });

// Recognising values of another loaded copy of the library: a brand from the global symbol registry, asked by `instanceof`.

/**
 * Does a value carry a brand? Classes ask this in their `Symbol.hasInstance`; their subclasses are told apart as usual.
 *
 * @internal
 */
export const hasBrand = (value: unknown, brand: symbol): boolean =>
  typeof value === "object" && value !== null && (value as Record<symbol, unknown>)[brand] === true;

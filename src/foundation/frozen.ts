// What is handed out is nobody's to alter: lists and plain objects are frozen all the way down before a caller sees them.

/** Told by its parts: what never meets a fraction need not load them. */
const isFraction = (value: object): boolean => "n" in value && typeof value.n === "bigint" && "d" in value;

/**
 * The value itself, frozen through: lists, plain objects and fractions. Values of the library's own classes are frozen
 * where they are made; what is frozen already is not walked again.
 *
 * @internal
 */
export function frozen<T>(value: T): T {
  if (typeof value !== "object" || value === null || Object.isFrozen(value)) return value;
  if (Array.isArray(value)) {
    Object.freeze(value);
    for (const item of value) frozen(item);
    return value;
  }
  const prototype: unknown = Object.getPrototypeOf(value);
  if (prototype === Object.prototype || prototype === null) {
    Object.freeze(value);
    for (const item of Object.values(value)) frozen(item);
  } else if (isFraction(value)) Object.freeze(value);
  return value;
}

// What is handed out is nobody's to alter: lists and plain objects are frozen all the way down before a caller sees them.
import { readableInside } from "./readable";

/**
 * The value itself, frozen through: lists and plain objects all the way down; formulas, fractions and other instances of
 * classes by themselves. What is frozen already is not walked again. `first` is done to each plain object before.
 *
 * @internal
 */
export function frozen<T>(value: T, first?: (record: object) => unknown): T {
  if (typeof value !== "object" || value === null || Object.isFrozen(value)) return value;
  if (Array.isArray(value)) {
    Object.freeze(value);
    for (const item of value) frozen(item, first);
    return value;
  }
  const prototype: unknown = Object.getPrototypeOf(value);
  if (prototype === Object.prototype || prototype === null) {
    first?.(value);
    Object.freeze(value);
    for (const item of Object.values(value)) frozen(item, first);
  } else if (!ArrayBuffer.isView(value)) Object.freeze(value);
  return value;
}

/**
 * A row of frozen values of which some are worked out when they are read: frozen as it stands, since to walk it is to read it.
 *
 * @internal
 */
export const frozenUnread = <Row extends object>(row: Row): Row => Object.freeze(readableInside(row) as Row);

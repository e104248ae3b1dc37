// The guard of this layer's arguments, and the fields that its options and records may have.
import { ArgumentGuard, type KnownFields } from "../foundation/argument";
import { SubstanceError } from "./error";

export const guard = /* @__PURE__ */ new ArgumentGuard(SubstanceError, {
  unknown: "substance.unknown-option",
  bad: "substance.bad-input",
});

/** Options with none but the known fields; left out means none. */
export function readableOptions<T extends object>(value: T | undefined, known: KnownFields): Partial<T> {
  guard.options(value, known);
  return value ?? {};
}

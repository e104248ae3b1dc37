// The one error class of this layer.
import { ArgumentGuard } from "../foundation/argument";
import { errorClass } from "../foundation/error";

/** Codes a {@link FactsError} can carry. */
export type FactsErrorCode =
  | "facts.bad-row"
  | "facts.clash"
  | "facts.json"
  | "facts.missing-field"
  | "facts.no-source"
  | "facts.too-many"
  | "facts.unknown-field";

/**
 * A row of the caller's own that cannot be taken; the message begins with its place, such as `solubilities[2].points`.
 *
 * @category Errors
 * @example
 * new FactsError("facts.no-source", "names[0] names no source").code // => "facts.no-source"
 */
export class FactsError extends /* @__PURE__ */ errorClass<FactsErrorCode>("FactsError") {}

/** The guard of this layer. */
export const guard = /* @__PURE__ */ new ArgumentGuard(FactsError, {
  unknown: "facts.unknown-field",
  bad: "facts.bad-row",
  missing: "facts.missing-field",
});

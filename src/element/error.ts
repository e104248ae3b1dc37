// Errors of the element room.
import { type ErrorPlace, PreparativeError } from "../foundation/error";

/**
 * An element, nuclide or atomic weight that cannot be given. Codes start with `element.`.
 *
 * @category Errors
 * @example
 * const outcome = tryAtomicWeight("Tc");
 * outcome.ok ? "" : outcome.error.code // => "element.no-atomic-weight"
 */
export class ElementError extends PreparativeError {
  constructor(code: `element.${string}`, problem: string, place: ErrorPlace = {}) {
    super(code, problem, place);
    this.name = "ElementError";
  }
}

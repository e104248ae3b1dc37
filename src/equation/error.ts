// Errors of the equation room.
import { type ErrorPlace, PreparativeError } from "../foundation/error";

/**
 * An equation that cannot be read, balanced or interpreted. Codes start with `equation.`.
 *
 * @category Errors
 * @example
 * const outcome = tryBalance("C + O2 -> CO + CO2");
 * outcome.ok ? "" : outcome.error.code // => "equation.underdetermined"
 */
export class EquationError extends PreparativeError {
  constructor(code: `equation.${string}`, problem: string, place: ErrorPlace = {}) {
    super(code, problem, place);
    this.name = "EquationError";
  }
}

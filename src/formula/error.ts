// Errors of the formula room.
import { type ErrorPlace, PreparativeError } from "../foundation/error";

/**
 * A formula that cannot be read, or a question it cannot answer. Codes start with `formula.`.
 *
 * @category Errors
 * @example
 * const outcome = tryParseFormula("NACL");
 * outcome.ok ? "" : outcome.error.code // => "formula.unknown-symbol"
 */
export class FormulaError extends PreparativeError {
  constructor(code: `formula.${string}`, problem: string, place: ErrorPlace = {}) {
    super(code, problem, place);
    this.name = "FormulaError";
  }
}

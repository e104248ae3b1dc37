import { type ErrorPlace, PreparativeError } from "../foundation/error";

/** Codes of everything that can be refused in the sheet room. */
export type SheetErrorCode = "sheet.format" | "sheet.subject";

/**
 * A sheet or label that cannot be written as asked.
 *
 * @category Errors
 * @example
 * new SheetError("sheet.format", "no such format").code // => "sheet.format"
 */
export class SheetError extends PreparativeError {
  declare readonly code: SheetErrorCode;

  constructor(code: SheetErrorCode, problem: string, place?: ErrorPlace) {
    super(code, problem, place);
    this.name = "SheetError";
  }
}

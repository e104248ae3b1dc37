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

/** Refuse options that are no object, before they are taken apart. */
export function needOptions(options: unknown): void {
  if (typeof options === "object" && options !== null) return;
  throw new SheetError("sheet.format", `options must be an object, not ${options === null ? "null" : typeof options}`, {
    hint: '{ format: "text" }',
  });
}

import { ArgumentGuard } from "../foundation/argument";
import { type ErrorWithCode, errorClass } from "../foundation/error";
import type { RouteErrorDetails, RouteRefusal } from "../route";

/** Codes of everything that can be refused in the sheet layer. */
export type SheetErrorCode = "sheet.unknown-option" | "sheet.format" | "sheet.bad-option" | "sheet.subject";

/**
 * A sheet or label that cannot be written as asked.
 *
 * @category Errors
 * @example
 * new SheetError("sheet.format", "no such format").code // => "sheet.format"
 */
export class SheetError extends /* @__PURE__ */ errorClass<SheetErrorCode>("SheetError") {}

/** Refuses options nobody knows, and values of another kind, by name. */
export const guard = /* @__PURE__ */ new ArgumentGuard(SheetError, {
  unknown: "sheet.unknown-option",
  bad: "sheet.bad-option",
});

/** Refuses formats by name. */
export const formatGuard = /* @__PURE__ */ new ArgumentGuard(SheetError, {
  unknown: "sheet.unknown-option",
  bad: "sheet.format",
});

export const FORMATS = ["text", "markdown", "html"] as const;

/**
 * Why a sheet or a label was refused: by the layout, or by what it is of. Comparing `code` tells what `details` hold.
 *
 * @category Errors
 * @example
 * const outcome = tryBenchSheet({} as never);
 * outcome.ok ? "" : outcome.error.code // => "sheet.subject"
 */
export type SheetRefusal = ErrorWithCode<SheetErrorCode | RouteRefusal["code"], RouteErrorDetails>;

// Sheet: paper for the bench.
export { benchSheet } from "./bench-sheet";
export type { SheetFormat } from "./document";
export type { SheetErrorCode } from "./error";
export { SheetError } from "./error";

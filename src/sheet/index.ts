// Sheet: paper for the bench.
export type { SheetOptions } from "./bench-sheet";
export { benchSheet, tryBenchSheet } from "./bench-sheet";
export type { LabelOptions } from "./bottle-label";
export { bottleLabel, tryBottleLabel } from "./bottle-label";
export type { SheetFormat } from "./document";
export type { SheetErrorCode } from "./error";
export { SheetError } from "./error";

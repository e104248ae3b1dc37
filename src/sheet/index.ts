// Sheet: paper for the bench.
export type { SheetOptions, SheetSubject } from "./bench-sheet";
export { benchSheet, tryBenchSheet } from "./bench-sheet";
export type { Groups } from "./class/class";
export type { SheetFormat } from "./document/blocks";
export type { Page } from "./document/style";
export type { SheetErrorCode, SheetRefusal } from "./error";
export { SheetError } from "./error";
export type { LabelOptions, LabelSubject } from "./label/bottle-label";
export { bottleLabel, tryBottleLabel } from "./label/bottle-label";
export type { LabelSize } from "./label/label";
export type { SheetPart } from "./plan/plan";
export type { SheetWords } from "./words";
export { sheetWordsEnglish } from "./words";

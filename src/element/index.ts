// Element: what an atom weighs.

export { atomicWeight } from "./atomic-weight";
export type { AtomicWeightOptions, WeightConvention } from "./convention";
export type { IsotopicCompositionRow } from "./data/isotopic-compositions";
export type { Element, StandardAtomicWeight } from "./element";
export { element, elements } from "./element";
export type { ElementErrorCode, ElementErrorDetails } from "./error";
export { ElementError } from "./error";
export type { Nuclide } from "./nuclide";
export { nuclide, nuclidesOf } from "./nuclide";

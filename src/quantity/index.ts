// Quantities: how much, in what unit, how sure, and how do we know. Follows the SI Brochure (9th ed.) and JCGM 100 (GUM).
export type { QuantityErrorCode, QuantityErrorDetails, QuantityRefusal } from "./error";
export { QuantityError } from "./error";
export type { Given, Step, Working } from "./explain";
export { explain } from "./explain";
export type { FormatOptions } from "./text/format-options";
export type { Distribution } from "./text/read";
export type * from "./text/text";
export { significantFigures, withSignificantFigures } from "./uncertainty/figures";
export { meanOfReadings, meansOfPairedReadings, withCorrelation } from "./uncertainty/inputs";
export type { BudgetLine, ExpandedUncertainty } from "./uncertainty/uncertainty";
export {
  correlationCoefficient,
  effectiveDegreesOfFreedom,
  expandedUncertainty,
  uncertaintyBudget,
} from "./uncertainty/uncertainty";
export type { RootOf } from "./value/functions";
export {
  applyFunction,
  decimalLogarithm,
  exponential,
  maximum,
  minimum,
  naturalLogarithm,
  squareRoot,
  sum,
} from "./value/functions";
export type { Naming } from "./value/graph";
export type { QuantityRecord } from "./value/json";
export { isQuantity, quantity, quantityFromJSON, tryQuantity } from "./value/quantity";
export type { Rounding } from "./value/rational";
export type { NumberLike } from "./value/read-number";
export type { Decimal } from "./value/real";
export type { DimensionIn, InputNaming, Measured, Quantity, QuantityLike } from "./value/types";

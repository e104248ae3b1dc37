// Quantities: how much, in what unit, how sure, and how do we know. Follows the SI Brochure (9th ed.) and JCGM 100 (GUM).
export type { QuantityErrorCode } from "./error";
export { QuantityError } from "./error";
export type { Given, Step, Working } from "./explain";
export { explain } from "./explain";
export { significantFigures, withSignificantFigures } from "./figures";
export type { FormatOptions } from "./format";
export {
  apply,
  decimalLogarithm,
  exponential,
  largest,
  naturalLogarithm,
  smallest,
  solvedFigure,
  squareRoot,
  sum,
} from "./functions";
export type { Naming } from "./graph";
export type { QuantityRecord } from "./json";
export { expectDimension, isQuantity, quantity, quantityFromJSON, tryQuantity } from "./quantity";
export type { Rounding } from "./rational";
export type { Distribution } from "./read";
export type { NumberLike } from "./read-number";
export type { Decimal } from "./real";
export type * from "./text";
export {
  tryApply,
  tryCorrelated,
  tryCorrelationCoefficient,
  tryDecimalLogarithm,
  tryEffectiveDegreesOfFreedom,
  tryExpandedUncertainty,
  tryExplain,
  tryExponential,
  tryJointReadings,
  tryLargest,
  tryNaturalLogarithm,
  tryQuantityFromJSON,
  tryReadings,
  trySignificantFigures,
  trySmallest,
  trySquareRoot,
  trySum,
  tryUncertaintyBudget,
  tryWithSignificantFigures,
} from "./twins";
export type { InputNaming, Measured, Quantity, QuantityLike } from "./types";
export type { BudgetLine, ExpandedUncertainty } from "./uncertainty";
export {
  correlated,
  correlationCoefficient,
  effectiveDegreesOfFreedom,
  expandedUncertainty,
  jointReadings,
  readings,
  uncertaintyBudget,
} from "./uncertainty";

// The twins of everything in this room that can refuse: same arguments, the refusal as data instead of an exception.
import { type Result, twin } from "../../foundation/error";
import { explain } from "../explain";
import { significantFigures, withSignificantFigures } from "../uncertainty/figures";
import {
  correlated,
  correlationCoefficient,
  effectiveDegreesOfFreedom,
  expandedUncertainty,
  jointReadings,
  readings,
  uncertaintyBudget,
} from "../uncertainty/uncertainty";
import {
  apply,
  decimalLogarithm,
  exponential,
  largest,
  naturalLogarithm,
  smallest,
  squareRoot,
  sum,
} from "./functions";
import { quantityFromJSON } from "./quantity";

/**
 * As `sum`, but gives the refusal back as data.
 *
 * @category Quantities
 * @example
 * trySum([]).ok // => false
 */
export const trySum: (...args: Parameters<typeof sum>) => Result<ReturnType<typeof sum>> = /* @__PURE__ */ twin(sum);

/**
 * As `smallest`, but gives the refusal back as data.
 *
 * @category Quantities
 * @example
 * trySmallest(["1 g", "1 mL"]).ok // => false
 */
export const trySmallest: (...args: Parameters<typeof smallest>) => Result<ReturnType<typeof smallest>> =
  /* @__PURE__ */ twin(smallest);

/**
 * As `largest`, but gives the refusal back as data.
 *
 * @category Quantities
 * @example
 * tryLargest(["1 g", "2 g"]).ok // => true
 */
export const tryLargest: (...args: Parameters<typeof largest>) => Result<ReturnType<typeof largest>> =
  /* @__PURE__ */ twin(largest);

/**
 * As `apply`, but gives the refusal back as data.
 *
 * @category Quantities
 * @example
 * tryApply(["1 g"], { name: "f", unit: "g", value: () => 1, partials: () => [] }).ok // => false
 */
export const tryApply: (...args: Parameters<typeof apply>) => Result<ReturnType<typeof apply>> =
  /* @__PURE__ */ twin(apply);

/**
 * As `naturalLogarithm`, but gives the refusal back as data.
 *
 * @category Quantities
 * @example
 * tryNaturalLogarithm("-1").ok // => false
 */
export const tryNaturalLogarithm: (
  ...args: Parameters<typeof naturalLogarithm>
) => Result<ReturnType<typeof naturalLogarithm>> = /* @__PURE__ */ twin(naturalLogarithm);

/**
 * As `decimalLogarithm`, but gives the refusal back as data.
 *
 * @category Quantities
 * @example
 * tryDecimalLogarithm("100").ok // => true
 */
export const tryDecimalLogarithm: (
  ...args: Parameters<typeof decimalLogarithm>
) => Result<ReturnType<typeof decimalLogarithm>> = /* @__PURE__ */ twin(decimalLogarithm);

/**
 * As `exponential`, but gives the refusal back as data.
 *
 * @category Quantities
 * @example
 * tryExponential("1 g").ok // => false
 */
export const tryExponential: (...args: Parameters<typeof exponential>) => Result<ReturnType<typeof exponential>> =
  /* @__PURE__ */ twin(exponential);

/**
 * As `squareRoot`, but gives the refusal back as data.
 *
 * @category Quantities
 * @example
 * trySquareRoot("-4").ok // => false
 */
export const trySquareRoot: (...args: Parameters<typeof squareRoot>) => Result<ReturnType<typeof squareRoot>> =
  /* @__PURE__ */ twin(squareRoot);

/**
 * As `quantityFromJSON`, but gives the refusal back as data.
 *
 * @category Quantities
 * @example
 * tryQuantityFromJSON({}).ok // => false
 */
export const tryQuantityFromJSON: (
  ...args: Parameters<typeof quantityFromJSON>
) => Result<ReturnType<typeof quantityFromJSON>> = /* @__PURE__ */ twin(quantityFromJSON);

/**
 * As `uncertaintyBudget`, but gives the refusal back as data.
 *
 * @category Uncertainty
 * @example
 * tryUncertaintyBudget("12 cups").ok // => false
 */
export const tryUncertaintyBudget: (
  ...args: Parameters<typeof uncertaintyBudget>
) => Result<ReturnType<typeof uncertaintyBudget>> = /* @__PURE__ */ twin(uncertaintyBudget);

/**
 * As `correlationCoefficient`, but gives the refusal back as data.
 *
 * @category Uncertainty
 * @example
 * tryCorrelationCoefficient("1 g", "1 g").ok // => false
 */
export const tryCorrelationCoefficient: (
  ...args: Parameters<typeof correlationCoefficient>
) => Result<ReturnType<typeof correlationCoefficient>> = /* @__PURE__ */ twin(correlationCoefficient);

/**
 * As `effectiveDegreesOfFreedom`, but gives the refusal back as data.
 *
 * @category Uncertainty
 * @example
 * tryEffectiveDegreesOfFreedom("1 g").ok // => false
 */
export const tryEffectiveDegreesOfFreedom: (
  ...args: Parameters<typeof effectiveDegreesOfFreedom>
) => Result<ReturnType<typeof effectiveDegreesOfFreedom>> = /* @__PURE__ */ twin(effectiveDegreesOfFreedom);

/**
 * As `expandedUncertainty`, but gives the refusal back as data.
 *
 * @category Uncertainty
 * @example
 * tryExpandedUncertainty("1.0(1) g").ok // => true
 */
export const tryExpandedUncertainty: (
  ...args: Parameters<typeof expandedUncertainty>
) => Result<ReturnType<typeof expandedUncertainty>> = /* @__PURE__ */ twin(expandedUncertainty);

/**
 * As `readings`, but gives the refusal back as data.
 *
 * @category Uncertainty
 * @example
 * tryReadings(["1.0 g"]).ok // => false
 */
export const tryReadings: (...args: Parameters<typeof readings>) => Result<ReturnType<typeof readings>> =
  /* @__PURE__ */ twin(readings);

/**
 * As `jointReadings`, but gives the refusal back as data.
 *
 * @category Uncertainty
 * @example
 * tryJointReadings({ a: ["1 g", "2 g"], b: ["1 g"] }).ok // => false
 */
export const tryJointReadings: (...args: Parameters<typeof jointReadings>) => Result<ReturnType<typeof jointReadings>> =
  /* @__PURE__ */ twin(jointReadings);

/**
 * As `correlated`, but gives the refusal back as data.
 *
 * @category Uncertainty
 * @example
 * tryCorrelated({ a: "1.0(1) g", b: "1.0(1) g" }, [["a", "b", 2]]).ok // => false
 */
export const tryCorrelated: (...args: Parameters<typeof correlated>) => Result<ReturnType<typeof correlated>> =
  /* @__PURE__ */ twin(correlated);

/**
 * As `explain`, but gives the refusal back as data.
 *
 * @category Quantities
 * @example
 * tryExplain("12 cups").ok // => false
 */
export const tryExplain: (...args: Parameters<typeof explain>) => Result<ReturnType<typeof explain>> =
  /* @__PURE__ */ twin(explain);

/**
 * As `significantFigures`, but gives the refusal back as data.
 *
 * @category Quantities
 * @example
 * trySignificantFigures("twelve").ok // => false
 */
export const trySignificantFigures: (
  ...args: Parameters<typeof significantFigures>
) => Result<ReturnType<typeof significantFigures>> = /* @__PURE__ */ twin(significantFigures);

/**
 * As `withSignificantFigures`, but gives the refusal back as data.
 *
 * @category Quantities
 * @example
 * tryWithSignificantFigures("divide", ["1", "0"]).ok // => false
 */
export const tryWithSignificantFigures: (
  ...args: Parameters<typeof withSignificantFigures>
) => Result<ReturnType<typeof withSignificantFigures>> = /* @__PURE__ */ twin(withSignificantFigures);

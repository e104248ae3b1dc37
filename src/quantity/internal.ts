// What the layers above use of this one and callers do not see.
export { quantitySources } from "./data/sources";
export { sourcesOf } from "./explain";
export { inPlainNumbers } from "./uncertainty/budget";
export { studentFactor } from "./uncertainty/student";
export { Combination, combinationOf } from "./value/combination";
export { expectDimension } from "./value/expect";
export { solvedFigure } from "./value/functions";
export { nodeOf, viewOf } from "./value/quantity";
export { add, multiply, type Rational, rational } from "./value/rational";
export { toRational } from "./value/read-number";
export { isUnitSymbol, readUnit, type Unit, usualUnit } from "./value/unit";

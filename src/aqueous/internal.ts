// What the layers above use of this one and callers do not see.

export { stabilityRows } from "./accessors";
export { compositionBy, originOf } from "./composition/composition";
export { doubtOfSolids } from "./composition/doubt";
export { isComposition } from "./composition/working";
export { COMPLEXES, type ComplexRow, type ComplexStep } from "./data/complexes";
export { GASES, GASES_KNOWN, type GasRow } from "./data/gases";
export { SOLUBILITY_PRODUCTS, type SolubilityProductRow } from "./data/products";
export { aqueousSources } from "./data/sources";
export { givenConstant } from "./mixture/constant";
export { redoxPartners, uncovered } from "./mixture/coverage";
export { network } from "./mixture/given";
export { termsOf } from "./mixture/material";
export {
  type Brought,
  broughtBy,
  keysOf,
  molesOf,
  refuseTooStrong,
  type Start,
  solveMoles,
  TOO_STRONG,
  WATER_MOLAR_MASS,
  waterMoles,
} from "./mixture/mixture";
export type { ModelCondition } from "./mixture/model";
export { Network, type Phase } from "./mixture/network";
export {
  atomsOf,
  chargeOf,
  dissolutionOf,
  HYDRON,
  type Key,
  keyOf,
  readReaction,
  type Term,
  WATER,
} from "./mixture/notation";
export { carbonDioxideOf, keptModel, OF_ANOTHER_TEMPERATURE } from "./mixture/request";
export { PKW } from "./mixture/tabulated";
export type { Equilibrium } from "./solve/equilibrium";
export { crossing } from "./solve/root";
export { type Solution, solutionOf } from "./solve/sensitivity";

// Solubility: does it dissolve, does it fall out, what does washing cost. Figures come from tables with their sources;
// what they do not hold is said to be unknown.
export type { CompetingFigure, SolubilityBasis } from "./data/curves";
export type {
  DissolvingRequest,
  DissolvingWater,
  LiquorSalt,
  LiquorWater,
  SaturatedSolution,
} from "./dissolve";
export {
  saturatedSolution,
  trySaturatedSolution,
  tryWaterForLiquor,
  tryWaterToDissolve,
  waterForLiquor,
  waterToDissolve,
} from "./dissolve";
export type { SolubilityErrorCode } from "./error";
export { SolubilityError } from "./error";
export type { SolubilityFigure } from "./figure";
export type { DissolvedSubstance, DissolvedVerdict, LiquorCheck, Residual } from "./liquor";
export { residual, staysDissolved, tryResidual, tryStaysDissolved } from "./liquor";
export type { SolubilityClass, SolubilityRule } from "./rules";
export { solubilityRule } from "./rules";
export type { SolidChange, Solubility, SolubilityKind, UncertaintyPart } from "./solubility";
export { solidChanges, solubilityOf, trySolubilityOf } from "./solubility";
export type { KindOfSolid, WashPlan, WashRequest } from "./wash";
export { retainedLiquor, tryWashPlan, washPlan } from "./wash";
export { tryWaterDensity, tryWaterVapourPressure, waterDensity, waterVapourPressure } from "./water";

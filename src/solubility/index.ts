// Solubility: does it dissolve, does it fall out, what does washing cost. Figures come from tables with their sources;
// what they do not hold is said to be unknown.
export type { CarbonatePrecipitant, CarbonateVerdict } from "./carbonate";
export { carbonateVerdict, tryCarbonateVerdict } from "./carbonate";
export type { Crop, Crystallisation, CrystallisingRequest } from "./crystallise";
export { crystallise, tryCrystallise } from "./crystallise";
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
export type { HydroxideRequest, HydroxideWindow } from "./hydroxide";
export { hydroxideWindow, tryHydroxideWindow } from "./hydroxide";
export type { DissolvedSubstance, DissolvedVerdict, LiquorCheck, Residual } from "./liquor";
export { residual, staysDissolved, tryResidual, tryStaysDissolved } from "./liquor";
export type {
  MixedSolution,
  PrecipitationOrderRequest,
  PrecipitationRequest,
  PrecipitationStart,
  PrecipitationVerdict,
} from "./precipitate";
export { precipitationOrder, tryPrecipitationOrder, tryWillPrecipitate, willPrecipitate } from "./precipitate";
export type {
  DissolvedIon,
  IonConcentration,
  MolarSolubility,
  MolarSolubilityRequest,
  SolidConversion,
  SolubilityProduct,
} from "./product";
export {
  molarSolubility,
  solidConversion,
  solubilityProduct,
  tryMolarSolubility,
  trySolidConversion,
  trySolubilityProduct,
} from "./product";
export type { SolubilityClass, SolubilityRule } from "./rules";
export { solubilityRule } from "./rules";
export type { PutIn, SaltPairPlan, SaltPairRequest } from "./salt-pair";
export { separateSaltPair, trySeparateSaltPair } from "./salt-pair";
export type { SolidChange, Solubility, SolubilityKind, UncertaintyPart } from "./solubility";
export { solidChanges, solubilityOf, trySolubilityOf } from "./solubility";
export type { KindOfSolid, WashPlan, WashRequest } from "./wash";
export { retainedLiquor, tryWashPlan, washPlan } from "./wash";

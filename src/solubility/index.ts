// Solubility: does it dissolve, does it fall out, what does washing cost. Figures come from tables with their sources;
// what they do not hold is said to be unknown.
export type { CarbonatePrecipitant, CarbonateVerdict } from "./carbonate";
export { carbonateVerdict, tryCarbonateVerdict } from "./carbonate";
export type { SolidConversion } from "./conversion";
export { solidConversion, trySolidConversion } from "./conversion";
export type { Crop, Crystallisation, CrystallisingRequest } from "./crystallise";
export { crystallise, tryCrystallise } from "./crystallise";
export type { CompetingFigure, SolubilityBasis } from "./data/curves";
export type { DissolvingRequest, DissolvingWater, LiquorSalt, LiquorWater } from "./dissolve";
export { tryWaterForLiquor, tryWaterToDissolve, waterForLiquor, waterToDissolve } from "./dissolve";
export type { SolubilityErrorCode } from "./error";
export { SolubilityError } from "./error";
export type { SolubilityFigure } from "./figure";
export type { GasPressureBasis, GasSolubility } from "./gas";
export { gasSolubility, tryGasSolubility } from "./gas";
export type { HydroxideRequest, HydroxideWindow } from "./hydroxide";
export { hydroxideWindow, tryHydroxideWindow } from "./hydroxide";
export type { IonConcentration } from "./ion-balance";
export type { DissolvedSubstance, DissolvedVerdict, LiquorCheck, PairingOutcome } from "./liquor";
export { staysDissolved, tryStaysDissolved } from "./liquor";
export type { FreeLigand, MolarSolubility, MolarSolubilityRequest } from "./molar-solubility";
export { molarSolubility, tryMolarSolubility } from "./molar-solubility";
export type { SolubilityPicture, WorkingPoint } from "./picture";
export { drawSolubility, tryDrawSolubility } from "./picture";
export type { MixedSolution, PrecipitationRequest, PrecipitationVerdict } from "./precipitate";
export { tryWillPrecipitate, willPrecipitate } from "./precipitate";
export type { PrecipitationOrderRequest, PrecipitationStart } from "./precipitation-order";
export { precipitationOrder, tryPrecipitationOrder } from "./precipitation-order";
export type { DissolvedIon, SolubilityProduct } from "./product";
export { solubilityProduct, trySolubilityProduct } from "./product";
export type { SolubilityKind, UncertaintyPart } from "./reading";
export type { SolubilityRecord } from "./record";
export type { Residual } from "./residual";
export { residual, tryResidual } from "./residual";
export type { KindOfSolid } from "./retained";
export { retainedLiquor, tryRetainedLiquor } from "./retained";
export type { SolubilityClass, SolubilityRule } from "./rules";
export { solubilityRule, trySolubilityRule } from "./rules";
export type { PutIn, SaltPairPlan, SaltPairRequest } from "./salt-pair";
export { separateSaltPair, trySeparateSaltPair } from "./salt-pair";
export type { SaturatedSolution } from "./saturated";
export { saturatedSolution, trySaturatedSolution } from "./saturated";
export type { SolidChange } from "./solid-changes";
export { solidChanges, trySolidChanges } from "./solid-changes";
export type { Solubility } from "./solubility";
export {
  solubilityFromJSON,
  solubilityOf,
  trySolubilityFromJSON,
  trySolubilityOf,
} from "./solubility";
export type { WashPlan, WashRequest } from "./wash";
export { tryWashPlan, washPlan } from "./wash";
export type { WashAdvice } from "./wash-advice";
export { tryWashAdvice, washAdvice } from "./wash-advice";

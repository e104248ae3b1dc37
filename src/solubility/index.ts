// Solubility: does it dissolve, does it fall out, what does washing cost. Figures come from tables with their sources;
// what they do not hold is said to be unknown.

export type { SolidConversion } from "./conversion";
export { solidConversion, trySolidConversion } from "./conversion";
export type { Crop, Crystallisation, CrystallisingRequest } from "./crystallising/crystallise";
export { crystallise, tryCrystallise } from "./crystallising/crystallise";
export type { PutIn, SaltPairPlan, SaltPairRequest } from "./crystallising/salt-pair";
export { separateSaltPair, trySeparateSaltPair } from "./crystallising/salt-pair";
export type { SolubilityFigure } from "./curves/figure";
export type { SolubilityPicture, WorkingPoint } from "./curves/picture";
export { drawSolubility, tryDrawSolubility } from "./curves/picture";
export type { SolubilityKind, UncertaintyPart } from "./curves/reading";
export type { SolidChange } from "./curves/solid-changes";
export { solidChanges, trySolidChanges } from "./curves/solid-changes";
export type { Solubility } from "./curves/solubility";
export {
  solubilityFromJSON,
  solubilityOf,
  trySolubilityFromJSON,
  trySolubilityOf,
} from "./curves/solubility";
export type { CompetingFigure, SolubilityBasis } from "./data/curves";
export type { DissolvingRequest, DissolvingWater, LiquorSalt, LiquorWater } from "./dissolving/dissolve";
export { tryWaterForLiquor, tryWaterToDissolve, waterForLiquor, waterToDissolve } from "./dissolving/dissolve";
export type { DissolvedSubstance, DissolvedVerdict, LiquorCheck, PairingOutcome } from "./dissolving/liquor";
export { staysDissolved, tryStaysDissolved } from "./dissolving/liquor";
export type { Residual } from "./dissolving/residual";
export { residual, tryResidual } from "./dissolving/residual";
export type { SaturatedSolution } from "./dissolving/saturated";
export { saturatedSolution, trySaturatedSolution } from "./dissolving/saturated";
export type { SolubilityErrorCode } from "./error";
export { SolubilityError } from "./error";
export type { GasPressureBasis, GasSolubility } from "./gas";
export { gasSolubility, tryGasSolubility } from "./gas";
export type { CarbonatePrecipitant, CarbonateVerdict } from "./precipitating/carbonate";
export { carbonateVerdict, tryCarbonateVerdict } from "./precipitating/carbonate";
export type { HydroxideRequest, HydroxideWindow } from "./precipitating/hydroxide";
export { hydroxideWindow, tryHydroxideWindow } from "./precipitating/hydroxide";
export type { IonConcentration } from "./precipitating/ion-balance";
export type { FreeLigand, MolarSolubility, MolarSolubilityRequest } from "./precipitating/molar-solubility";
export { molarSolubility, tryMolarSolubility } from "./precipitating/molar-solubility";
export type { MixedSolution, PrecipitationRequest, PrecipitationVerdict } from "./precipitating/precipitate";
export { tryWillPrecipitate, willPrecipitate } from "./precipitating/precipitate";
export type { PrecipitationOrderRequest, PrecipitationStart } from "./precipitating/precipitation-order";
export { precipitationOrder, tryPrecipitationOrder } from "./precipitating/precipitation-order";
export type { DissolvedIon, SolubilityProduct } from "./precipitating/product";
export { solubilityProduct, trySolubilityProduct } from "./precipitating/product";
export type { SolubilityRecord } from "./record";
export type { SolubilityClass, SolubilityRule } from "./rules";
export { solubilityRule, trySolubilityRule } from "./rules";
export type { KindOfSolid } from "./washing/retained";
export { retainedLiquor, tryRetainedLiquor } from "./washing/retained";
export type { WashPlan, WashRequest } from "./washing/wash";
export { tryWashPlan, washPlan } from "./washing/wash";
export type { WashAdvice } from "./washing/wash-advice";
export { tryWashAdvice, washAdvice } from "./washing/wash-advice";

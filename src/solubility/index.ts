// Solubility: does it dissolve, does it precipitate, what does washing cost. Figures come from tables with their sources;
// what they do not hold is said to be unknown.

export type { SaltConversion } from "./conversion";
export { saltConversion } from "./conversion";
export type { Crop, Crystallisation, CrystallisingRequest } from "./crystallising/crystallise";
export { crystallise } from "./crystallising/crystallise";
export type { FractionalCrystallization, FractionalCrystallizationRequest } from "./crystallising/salt-pair";
export { fractionalCrystallization } from "./crystallising/salt-pair";
export type { PutIn } from "./crystallising/salt-pair-solids";
export type { SolubilityFigure } from "./curves/figure";
export type { SolubilityPicture, WorkingPoint } from "./curves/picture";
export { solubilityDiagram } from "./curves/picture";
export type { SolubilityKind, UncertaintyPart } from "./curves/reading";
export type { SolidTransition } from "./curves/solid-changes";
export { solidTransitions } from "./curves/solid-changes";
export { solubilityFromJSON, solubilityOf, trySolubilityOf } from "./curves/solubility";
export type { CompetingFigure, SolubilityBasis } from "./data/curves";
export type { DissolvingRequest, DissolvingWater, LiquorSalt, LiquorWater } from "./dissolving/dissolve";
export { waterForSolution, waterToDissolve } from "./dissolving/dissolve";
export type { DissolvedSubstance, DissolvedVerdict, LiquorCheck } from "./dissolving/liquor";
export { remainsInSolution } from "./dissolving/liquor";
export type { PairingOutcome } from "./dissolving/liquor-pairings";
export type { LossToLiquor } from "./dissolving/residual";
export { lossToLiquor } from "./dissolving/residual";
export type { SaturatedSolution } from "./dissolving/saturated";
export { saturatedSolution } from "./dissolving/saturated";
export type { SolubilityErrorCode, SolubilityErrorDetails, SolubilityRefusal } from "./error";
export { SolubilityError } from "./error";
export type { GasPressureBasis, GasSolubility } from "./gas";
export { gasSolubility } from "./gas";
export type { PrecipitatedCarbonate } from "./precipitating/carbonate";
export { precipitatedCarbonate } from "./precipitating/carbonate";
export type { CarbonateLiquor, CarbonateOutcome, CarbonatePrecipitant } from "./precipitating/carbonate-liquor";
export type { DissolvedAmount } from "./precipitating/dissolved-amount";
export type { IonConcentration } from "./precipitating/given-ions";
export type { HydroxidePrecipitationRange, HydroxideRange, HydroxideRequest } from "./precipitating/hydroxide";
export { hydroxidePrecipitationRange } from "./precipitating/hydroxide";
export type { MixedSolution } from "./precipitating/mixed-solutions";
export type {
  FreeLigand,
  MolarSolubility,
  MolarSolubilityRequest,
} from "./precipitating/molar-solubility";
export { molarSolubility } from "./precipitating/molar-solubility";
export type {
  MixtureOutcome,
  PrecipitationRequest,
  PrecipitationVerdict,
} from "./precipitating/precipitate";
export { willPrecipitate } from "./precipitating/precipitate";
export type { PrecipitationOrderRequest, PrecipitationStart, StartOfSolid } from "./precipitating/precipitation-order";
export { precipitationOrder } from "./precipitating/precipitation-order";
export type { DissolvedIon, SolubilityProduct } from "./precipitating/product";
export { solubilityProduct } from "./precipitating/product";
export type { EquilibriumBasis } from "./precipitating/way";
export type { Solubility, SolubilityRecord } from "./record";
export type { SolubilityClass, SolubilityRule } from "./rules";
export { solubilityRule } from "./rules";
export type { KindOfSolid } from "./washing/retained";
export { retainedLiquor } from "./washing/retained";
export type { WashPlan, WashRequest } from "./washing/wash";
export { washPlan } from "./washing/wash";
export type { WashAdvice } from "./washing/wash-advice";
export { washAdvice } from "./washing/wash-advice";

// Amount: mass, moles, gas litres, solution strength, dilution.
export type { Purity } from "./amount";
export { amountOf, amountOfEntities, entitiesOf, massOf } from "./amount";
export type {
  AmountLike,
  DensityLike,
  FormulaLike,
  MassFractionLike,
  MassLike,
  PressureLike,
  TemperatureLike,
  VolumeLike,
} from "./argument";
export { densityOfSolution, massFractionFromDensity } from "./density/density";
export type { DensityOptions } from "./density/density-table";
export { tabulatedSolutes } from "./density/density-table";
export type { Glassware, GlasswareKind } from "./density/glassware";
export { measuredVolume } from "./density/glassware";
export type { AmountErrorCode, AmountErrorDetails } from "./error";
export { AmountError } from "./error";
export { avogadroConstant, molarGasConstant } from "./gas/constants";
export {
  gasAmount,
  gasDensity,
  gasPressure,
  gasVolume,
  gasVolumeAt,
  molarMassOfGas,
  molarVolumeOfGas,
} from "./gas/gas";
export type { GasConditions } from "./gas/gas-state";
export { secondVirialCoefficient } from "./gas/virial";
export type { FeedRecord, SpeciesFeed } from "./jar/feed";
export { feedAmount } from "./jar/feed";
export type { PortionLike } from "./jar/portion";
export type { ReactionLike } from "./jar/species";
export { densityOfWater, vapourPressureOfWater } from "./jar/water";
export type { EquivalentKind, Equivalents } from "./reaction/equivalents";
export { equivalentsIn } from "./reaction/equivalents";
export type { Partner } from "./reaction/needed";
export { requiredAmount } from "./reaction/needed";
export type { ReactionAmounts, ReactionSpecies } from "./reaction/reaction";
export { limitingReagents, reactionAmounts } from "./reaction/reaction";
export { atomEconomy, percentYield, theoreticalYield } from "./reaction/yield";
export type { BaumeScale } from "./strength/baume";
export type { Dilution, DilutionPlan } from "./strength/dilute";
export { dilute } from "./strength/dilute";
export type { MixToStrengthRequest, Mixture, MixturePart, TwoParts } from "./strength/mix";
export { mixSolutions, mixToStrength } from "./strength/mix";
export type { StockRequest, StockSolution } from "./strength/stock";
export { stockSolution, strengthPrepared } from "./strength/stock";
export { convertStrength } from "./strength/strength";
export type {
  PercentBasis,
  StrengthKind,
  StrengthLike,
  StrengthOptions,
  TradeStrengthText,
} from "./strength/strength-kind";
export type { Replicates, Suspect } from "./titration/replicates";
export { replicateStatistics } from "./titration/replicates";
export type { Standardisation, StandardisationRequest, StandardPortion } from "./titration/standardise";
export { standardise } from "./titration/standardise";
export type { Proportion, Titrant, Titration, TitrationRequest } from "./titration/titration";
export { backTitrate, titrate } from "./titration/titration";
export type { BuretteReadings, LeftOut, Titre } from "./titration/titre";

// Amount: mass, moles, gas litres, solution strength, dilution.
export type { Purity } from "./amount";
export {
  amountOf,
  amountOfEntities,
  entitiesOf,
  massOf,
  tryAmountOf,
  tryAmountOfEntities,
  tryEntitiesOf,
  tryMassOf,
} from "./amount";
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
export {
  densityOfSolution,
  massFractionFromDensity,
  tryDensityOfSolution,
  tryMassFractionFromDensity,
} from "./density/density";
export type { DensityOptions } from "./density/density-table";
export { tabulatedSolutes } from "./density/density-table";
export type { Glassware, GlasswareKind } from "./density/glassware";
export { measuredVolume, tryMeasuredVolume } from "./density/glassware";
export type { AmountErrorCode } from "./error";
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
  tryGasAmount,
  tryGasDensity,
  tryGasPressure,
  tryGasVolume,
  tryGasVolumeAt,
  tryMolarMassOfGas,
  tryMolarVolumeOfGas,
} from "./gas/gas";
export type { GasConditions } from "./gas/gas-state";
export { secondVirialCoefficient, trySecondVirialCoefficient } from "./gas/virial";
export type { FeedRecord, SpeciesFeed } from "./jar/feed";
export { feedAmount, tryFeedAmount } from "./jar/feed";
export type { PortionLike } from "./jar/portion";
export type { ReactionLike } from "./jar/species";
export {
  densityOfWater,
  tryDensityOfWater,
  tryVapourPressureOfWater,
  vapourPressureOfWater,
} from "./jar/water";
export type { EquivalentKind, Equivalents } from "./reaction/equivalents";
export { equivalentsIn, tryEquivalentsIn } from "./reaction/equivalents";
export type { Partner } from "./reaction/needed";
export { neededFor, tryNeededFor } from "./reaction/needed";
export type { ReactionAmounts, ReactionSpecies } from "./reaction/reaction";
export { limitingReagents, reactionAmounts, tryLimitingReagents, tryReactionAmounts } from "./reaction/reaction";
export {
  atomEconomy,
  percentYield,
  theoreticalYield,
  tryAtomEconomy,
  tryPercentYield,
  tryTheoreticalYield,
} from "./reaction/yield";
export type { BaumeScale } from "./strength/baume";
export type { Dilution, DilutionPlan } from "./strength/dilute";
export { dilute, tryDilute } from "./strength/dilute";
export type { Mixture, MixtureAim, MixturePart, TwoParts } from "./strength/mix";
export { mixSolutions, mixToStrength, tryMixSolutions, tryMixToStrength } from "./strength/mix";
export type { StockRequest, StockSolution } from "./strength/stock";
export { stockSolution, strengthAsMade, tryStockSolution, tryStrengthAsMade } from "./strength/stock";
export { convertStrength, tryConvertStrength } from "./strength/strength";
export type {
  PercentBasis,
  StrengthKind,
  StrengthLike,
  StrengthOptions,
  TradeStrengthText,
} from "./strength/strength-kind";
export type { Replicates, Suspect } from "./titration/replicates";
export { replicates, tryReplicates } from "./titration/replicates";
export type { Titrant, Titration, TitrationRequest } from "./titration/titration";
export { backTitrate, titrate, tryBackTitrate, tryTitrate } from "./titration/titration";

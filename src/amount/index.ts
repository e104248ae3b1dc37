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
export type { BaumeScale } from "./baume";
export { avogadroConstant, molarGasConstant } from "./constants";
export {
  densityOfSolution,
  massFractionFromDensity,
  tryDensityOfSolution,
  tryMassFractionFromDensity,
} from "./density";
export type { DensityOptions } from "./density-table";
export { tabulatedSolutes } from "./density-table";
export type { Dilution, DilutionPlan } from "./dilute";
export { dilute, tryDilute } from "./dilute";
export type { EquivalentKind, Equivalents } from "./equivalents";
export { equivalentsIn, tryEquivalentsIn } from "./equivalents";
export type { AmountErrorCode } from "./error";
export { AmountError } from "./error";
export type { FeedRecord, SpeciesFeed } from "./feed";
export { feedAmount, tryFeedAmount } from "./feed";
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
} from "./gas";
export type { GasConditions } from "./gas-state";
export type { Glassware, GlasswareKind } from "./glassware";
export { measuredVolume, tryMeasuredVolume } from "./glassware";
export type { Mixture, MixtureAim, MixturePart, TwoParts } from "./mix";
export { mixSolutions, mixToStrength, tryMixSolutions, tryMixToStrength } from "./mix";
export type { Partner } from "./needed";
export { neededFor, tryNeededFor } from "./needed";
export type { PortionLike } from "./portion";
export type { ReactionAmounts, ReactionSpecies } from "./reaction";
export { limitingReagents, reactionAmounts, tryLimitingReagents, tryReactionAmounts } from "./reaction";
export type { Replicates, Suspect } from "./replicates";
export { replicates, tryReplicates } from "./replicates";
export type { ReactionLike } from "./species";
export type { StockRequest, StockSolution } from "./stock";
export { stockSolution, strengthAsMade, tryStockSolution, tryStrengthAsMade } from "./stock";
export { convertStrength, tryConvertStrength } from "./strength";
export type { PercentBasis, StrengthKind, StrengthLike, StrengthOptions, TradeStrengthText } from "./strength-kind";
export type { Titrant, Titration, TitrationRequest } from "./titration";
export { backTitrate, titrate, tryBackTitrate, tryTitrate } from "./titration";
export { secondVirialCoefficient, trySecondVirialCoefficient } from "./virial";
export {
  densityOfWater,
  tryDensityOfWater,
  tryVapourPressureOfWater,
  vapourPressureOfWater,
} from "./water";
export {
  atomEconomy,
  percentYield,
  theoreticalYield,
  tryAtomEconomy,
  tryPercentYield,
  tryTheoreticalYield,
} from "./yield";

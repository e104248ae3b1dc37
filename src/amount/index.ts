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
export { avogadroConstant, molarGasConstant } from "./constants";
export type { DensityOptions } from "./density";
export {
  densityOfSolution,
  massFractionFromDensity,
  tabulatedSolutes,
  tryDensityOfSolution,
  tryMassFractionFromDensity,
} from "./density";
export type { Dilution, DilutionPlan, Mixture, MixturePart } from "./dilute";
export { dilute, mixSolutions, mixToStrength, tryDilute, tryMixSolutions, tryMixToStrength } from "./dilute";
export type { AmountErrorCode } from "./error";
export { AmountError } from "./error";
export type { FeedRecord, SpeciesFeed } from "./feed";
export { feedAmount, tryFeedAmount } from "./feed";
export type { GasConditions } from "./gas";
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
export type { Glassware, GlasswareKind } from "./glassware";
export { measuredVolume, tryMeasuredVolume } from "./glassware";
export type { PortionLike } from "./portion";
export type { Partner, ReactionAmounts, ReactionLike, ReactionSpecies } from "./reaction";
export {
  atomEconomy,
  limitingReagents,
  neededFor,
  percentYield,
  reactionAmounts,
  theoreticalYield,
  tryAtomEconomy,
  tryLimitingReagents,
  tryNeededFor,
  tryPercentYield,
  tryReactionAmounts,
  tryTheoreticalYield,
} from "./reaction";
export type { StockRequest, StockSolution } from "./stock";
export { stockSolution, strengthAsMade, tryStockSolution, tryStrengthAsMade } from "./stock";
export type { PercentBasis, StrengthKind, StrengthLike, StrengthOptions, TradeStrengthText } from "./strength";
export { convertStrength, tryConvertStrength } from "./strength";
export type { Replicates, Suspect, Titrant, Titration, TitrationRequest } from "./titration";
export { backTitrate, replicates, titrate, tryBackTitrate, tryReplicates, tryTitrate } from "./titration";
export { secondVirialCoefficient, trySecondVirialCoefficient } from "./virial";
export {
  densityOfWater,
  tryDensityOfWater,
  tryVapourPressureOfWater,
  vapourPressureOfWater,
} from "./water";

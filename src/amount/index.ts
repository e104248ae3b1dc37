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
export type { AmountErrorCode } from "./error";
export { AmountError } from "./error";
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
export { secondVirialCoefficient, trySecondVirialCoefficient } from "./virial";
export {
  densityOfWater,
  tryDensityOfWater,
  tryVapourPressureOfWater,
  vapourPressureOfWater,
} from "./water";

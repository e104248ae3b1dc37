// Thermochemistry: does it get hot? Enthalpies of formation, heats of reaction, dissolving and dilution, temperature rise.
export type { SubstanceState } from "./data/enthalpies";
export type { ThermochemistryErrorCode, ThermochemistryErrorDetails } from "./error";
export { ThermochemistryError } from "./error";
export type { FormationEnthalpy } from "./formation";
export { formationEnthalpy } from "./formation";
export type { EnthalpyOptions, EnthalpyTerm, ReactionEnthalpy } from "./reaction";
export { reactionEnthalpy, solutionEnthalpy, sulfuricAcidDilution } from "./reaction";
export type { TemperatureRise, TemperatureRiseRequest, WaterCarriedByGas } from "./temperature";
export { temperatureRise, waterCarriedByGas } from "./temperature";

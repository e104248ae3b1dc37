// Aqueous equilibrium: what is in the beaker. Acids and bases, complexes, solids, gases and activities in one balance.
export type { AcidConstant, StabilityConstant } from "./accessors";
export { acidConstant, stabilityConstants, tryAcidConstant, tryStabilityConstants } from "./accessors";
export type { AdditionOptions, Reagent } from "./addition";
export type { BufferPair, BufferRecipe, BufferRequest } from "./buffer";
export { bufferCapacity, bufferRecipe, tryBufferCapacity, tryBufferRecipe } from "./buffer";
export type {
  AqueousComposition,
  DissolvedSpecies,
  EscapedGas,
  FiltrateIon,
  Saturation,
  StandingSolid,
} from "./composition";
export { aqueousComposition, pHOf, tryAqueousComposition, tryPHOf } from "./composition";
export type { Dose, DoseRequest, Redissolving, RedissolvingRequest } from "./dose";
export { doseToPH, redissolving, tryDoseToPH, tryRedissolving } from "./dose";
export type { AqueousErrorCode } from "./error";
export { AqueousError } from "./error";
export type { GivenConstants, LogarithmLike } from "./given";
export type { Dissolved } from "./material";
export type { AtPH, OverPH, OverPHRequest } from "./over-ph";
export { solidsOverPH, trySolidsOverPH } from "./over-ph";
export type { AqueousRequest, CarbonDioxide, SolidsAllowed } from "./request";
export type {
  CurvePoint,
  EndPoint,
  IndicatorChoice,
  TitrationCurve,
  TitrationCurveRequest,
} from "./titration";
export {
  endPoints,
  indicatorFor,
  titrationCurve,
  tryEndPoints,
  tryIndicatorFor,
  tryTitrationCurve,
} from "./titration";

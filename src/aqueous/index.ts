// Aqueous equilibrium: what is in the beaker. Acids and bases, complexes, solids, gases and activities in one balance.
export type { AcidConstant, StabilityConstant } from "./accessors";
export { acidConstant, stabilityConstants } from "./accessors";
export type {
  AqueousComposition,
  DissolvedSpecies,
  EscapedGas,
  FiltrateIon,
  OtherAnswer,
  Saturation,
  StandingSolid,
} from "./composition/answer";
export { aqueousComposition, pHOf, tryAqueousComposition } from "./composition/composition";
export type { AtPH, OverPH, OverPHRequest } from "./composition/over-ph";
export { solidsOverPH } from "./composition/over-ph";
export type { OverPHPicture, PictureSize } from "./composition/picture";
export { overExcessDiagram, overPHDiagram, titrationDiagram } from "./composition/picture";
export type { CompositionWorking } from "./composition/working";
export { workingOfComposition } from "./composition/working";
export type { AdditionOptions } from "./dose/addition";
export type { AlongRequest, Stretch } from "./dose/along";
export { solidsAlongAddition } from "./dose/along";
export type { BufferPair, BufferRecipe, BufferRequest } from "./dose/buffer";
export { bufferCapacity, bufferRecipe } from "./dose/buffer";
export type { Dose, DoseRequest, Redissolving, RedissolvingRequest } from "./dose/dose";
export { doseToPH, redissolving } from "./dose/dose";
export type { AtExcess, OverExcess, OverExcessRequest } from "./dose/excess";
export { dissolvedOverExcess } from "./dose/excess";
export type { IndicatorChoice } from "./dose/indicator";
export { indicatorFor } from "./dose/indicator";
export type { Reagent } from "./dose/reagent";
export type {
  CurvePoint,
  EndPoint,
  TitrationCurve,
  TitrationCurveRequest,
} from "./dose/titration";
export { endPoints, titrationCurve } from "./dose/titration";
export type { AqueousErrorCode, AqueousErrorDetails, AqueousRefusal, Residuals } from "./error";
export { AqueousError } from "./error";
export type { GivenConstants, LogarithmLike } from "./mixture/given";
export type { Dissolved } from "./mixture/material";
export type { AqueousRequest, CarbonDioxide, SolidsAllowed } from "./mixture/request";

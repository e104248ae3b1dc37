// The fields of every request of this room, each list held complete by its type.
import type { Fields } from "../foundation/argument";
import type { carbonateVerdict } from "./carbonate";
import type { solidConversion } from "./conversion";
import type { CrystallisingRequest } from "./crystallise";
import type { DissolvingRequest, LiquorSalt, waterForLiquor } from "./dissolve";
import type { HydroxideRequest } from "./hydroxide";
import type { IonConcentration } from "./ion-balance";
import type { DissolvedSubstance, staysDissolved } from "./liquor";
import type { FreeLigand, MolarSolubilityRequest } from "./molar-solubility";
import type { SolubilityPicture, WorkingPoint } from "./picture";
import type { MixedSolution, PrecipitationRequest } from "./precipitate";
import type { PrecipitationOrderRequest } from "./precipitation-order";
import type { residual } from "./residual";
import type { PutIn, SaltPairRequest } from "./salt-pair";
import type { saturatedSolution } from "./saturated";
import type { WashRequest } from "./wash";
import type { washAdvice } from "./wash-advice";

type Request<F extends (request: never) => unknown> = Fields<Parameters<F>[0]>;

export const CARBONATE = { metal: true, precipitant: true, concentration: true } as const satisfies Request<
  typeof carbonateVerdict
>;

export const CONVERSION = { from: true, to: true } as const satisfies Request<typeof solidConversion>;

export const CRYSTALLISING = {
  formula: true,
  mass: true,
  hot: true,
  cold: true,
  water: true,
  headroom: true,
  hotSolubility: true,
  coldSolubility: true,
  evaporateTo: true,
} as const satisfies Fields<CrystallisingRequest>;

export const DISSOLVING = {
  formula: true,
  mass: true,
  temperature: true,
  headroom: true,
  solubility: true,
} as const satisfies Fields<DissolvingRequest>;

const LIQUOR_SALT = { formula: true, mass: true, solubility: true } as const satisfies Fields<LiquorSalt>;

export const LIQUOR = { salts: [LIQUOR_SALT], temperature: true, headroom: true } as const satisfies Request<
  typeof waterForLiquor
>;

export const HYDROXIDE = {
  metal: true,
  concentration: true,
  residual: true,
  form: true,
} as const satisfies Fields<HydroxideRequest>;

const DISSOLVED = {
  formula: true,
  mass: true,
  amount: true,
  solubility: true,
} as const satisfies Fields<DissolvedSubstance>;

export const LIQUOR_CHECK = { substances: [DISSOLVED], water: true, temperature: true } as const satisfies Request<
  typeof staysDissolved
>;

const ION = { ion: true, concentration: true } as const satisfies Fields<IonConcentration>;

const LIGAND = { ligand: true, concentration: true } as const satisfies Fields<FreeLigand>;

export const MOLAR_SOLUBILITY = {
  solid: true,
  form: true,
  ksp: true,
  ions: true,
  commonIons: [ION],
  freeLigands: [LIGAND],
  ionicStrength: true,
} as const satisfies Fields<MolarSolubilityRequest>;

const POINT = { celsius: true, grams: true, label: true } as const satisfies Fields<WorkingPoint>;

export const PICTURE = {
  formulas: true,
  points: [POINT],
  path: true,
  width: true,
  height: true,
} as const satisfies Fields<SolubilityPicture>;

const MIXED = { volume: true, ions: [ION] } as const satisfies Fields<MixedSolution>;

export const PRECIPITATION = {
  solid: true,
  form: true,
  solutions: [MIXED],
  pH: true,
  ionicStrength: true,
} as const satisfies Fields<PrecipitationRequest>;

const SOLID = { solid: true, form: true, concentration: true } as const satisfies Fields<
  PrecipitationOrderRequest["solids"][number]
>;

export const PRECIPITATION_ORDER = {
  precipitant: true,
  pH: true,
  solids: [SOLID],
} as const satisfies Fields<PrecipitationOrderRequest>;

export const RESIDUAL = {
  formula: true,
  water: true,
  temperature: true,
  of: true,
  solubility: true,
} as const satisfies Request<typeof residual>;

const PUT_IN = { formula: true, mass: true } as const satisfies Fields<PutIn>;

export const SALT_PAIR = {
  wanted: true,
  other: true,
  from: [PUT_IN],
  water: true,
  hot: true,
  cold: true,
} as const satisfies Fields<SaltPairRequest>;

export const SATURATED = { formula: true, temperature: true, density: true } as const satisfies Request<
  typeof saturatedSolution
>;

export const WASH_ADVICE = { product: true, washedOut: true, temperature: true } as const satisfies Request<
  typeof washAdvice
>;

const WASHED = { formula: true, temperature: true } as const satisfies Fields<NonNullable<WashRequest["product"]>>;

export const WASH = {
  dryCakeMass: true,
  retainedLiquorPerGram: true,
  kindOfSolid: true,
  filter: true,
  saltConcentration: true,
  saltMassInLiquor: true,
  liquorVolume: true,
  washVolume: true,
  targetResidue: true,
  method: true,
  product: WASHED,
} as const satisfies Fields<WashRequest>;

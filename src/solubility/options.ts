// The fields of every request of this layer, each list held complete by its type.
import type { Fields } from "../foundation/argument";
import type { saltConversion } from "./conversion";
import type { CrystallisingRequest } from "./crystallising/crystallise";
import type { PutIn, SaltPairRequest } from "./crystallising/salt-pair";
import type { SolubilityPicture, WorkingPoint } from "./curves/picture";
import type { DissolvingRequest, LiquorSalt, waterForSolution } from "./dissolving/dissolve";
import type { DissolvedSubstance, remainsInSolution } from "./dissolving/liquor";
import type { lossToLiquor } from "./dissolving/residual";
import type { saturatedSolution } from "./dissolving/saturated";
import type { precipitatedCarbonate } from "./precipitating/carbonate";
import type { HydroxideRequest } from "./precipitating/hydroxide";
import type { IonConcentration } from "./precipitating/ion-balance";
import type { FreeLigand, MolarSolubilityRequest } from "./precipitating/molar-solubility";
import type { MixedSolution, PrecipitationRequest } from "./precipitating/precipitate";
import type { PrecipitationOrderRequest } from "./precipitating/precipitation-order";
import type { WashRequest } from "./washing/wash";
import type { washAdvice } from "./washing/wash-advice";

type Request<F extends (request: never) => unknown> = Fields<Parameters<F>[0]>;

export const CARBONATE = { metal: true, precipitant: true, concentration: true } as const satisfies Request<
  typeof precipitatedCarbonate
>;

export const CONVERSION = { from: true, to: true } as const satisfies Request<typeof saltConversion>;

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
  typeof waterForSolution
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
  typeof remainsInSolution
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
} as const satisfies Request<typeof lossToLiquor>;

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

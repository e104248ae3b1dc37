// The fields of every request and every set of options in this layer. Each list has to name all fields of its type and no
// other, so a field that is added to a type is let through only once it is added here.
import type { Fields } from "../foundation/argument";
import type { Purity } from "./amount";
import type { massFractionFromDensity } from "./density/density";
import type { DensityOptions } from "./density/density-table";
import type { Glassware } from "./density/glassware";
import type { gasPressure, gasVolumeAt, molarMassOfGas } from "./gas/gas";
import type { GasConditions } from "./gas/gas-state";
import type { FeedRecord } from "./jar/feed";
import type { Partner } from "./reaction/needed";
import type { Dilution } from "./strength/dilute";
import type { MixtureAim, MixturePart, mixSolutions } from "./strength/mix";
import type { StockRequest, stockSolution } from "./strength/stock";
import type { convertStrength } from "./strength/strength";
import type { StrengthOptions } from "./strength/strength-kind";
import type { replicateStatistics } from "./titration/replicates";
import type { backTitrate, Titrant, TitrationRequest } from "./titration/titration";

export const PURITY = { assay: true, moisture: true } as const satisfies Fields<Purity>;

export const DENSITY = { temperature: true } as const satisfies Fields<DensityOptions>;

export const STRENGTH_FROM_DENSITY = { ...DENSITY, between: true } as const satisfies Fields<
  NonNullable<Parameters<typeof massFractionFromDensity>[2]>
>;

/** What goes with a strength whose solute and density are given apart. */
const DETAILS = {
  temperature: true,
  basis: true,
  equivalents: true,
  reaction: true,
  soluteDensity: true,
  solvent: true,
  baume: true,
} as const satisfies Fields<Omit<StrengthOptions, "of" | "density">>;

export const STRENGTH = { of: true, density: true, ...DETAILS } as const satisfies Fields<StrengthOptions>;

export const CONVERSION = { ...STRENGTH, to: true } as const satisfies Fields<Parameters<typeof convertStrength>[1]>;

export const DILUTION = {
  from: true,
  take: true,
  to: true,
  makeUpTo: true,
  fromDensity: true,
  toDensity: true,
  of: true,
  ...DETAILS,
} as const satisfies Fields<Dilution>;

/** Conditions of a gas that is measured, whichever it is. */
export const MEASURED_GAS = { temperature: true, pressure: true, collectedOver: true } as const satisfies Fields<
  NonNullable<Parameters<typeof molarMassOfGas>[1]>
>;

export const NAMED_GAS = { ...MEASURED_GAS, model: true } as const satisfies Fields<Omit<GasConditions, "gas">>;

export const GAS = { ...NAMED_GAS, gas: true } as const satisfies Fields<GasConditions>;

export const GAS_CHANGE = { from: MEASURED_GAS, to: MEASURED_GAS } as const satisfies Fields<
  Parameters<typeof gasVolumeAt>[1]
>;

export const GAS_VESSEL = { volume: true, temperature: true } as const satisfies Fields<
  Parameters<typeof gasPressure>[1]
>;

export const GLASS = {
  with: true,
  class: true,
  size: true,
  distribution: true,
  temperature: true,
} as const satisfies Fields<Glassware>;

export const FEED = {
  ...PURITY,
  mass: true,
  amount: true,
  volume: true,
  as: true,
  strength: true,
  density: true,
  gas: NAMED_GAS,
  strengthOptions: DETAILS,
} as const satisfies Fields<FeedRecord>;

export const PARTNER = {
  ...PURITY,
  as: true,
  strength: true,
  strengthOptions: { ...DETAILS, density: true },
  excess: true,
} as const satisfies Fields<Partner>;

export const MIXTURE_PART = { strength: true, portion: true, density: true } as const satisfies Fields<MixturePart>;

export const MIXTURE = { ...STRENGTH, additiveVolumes: true } as const satisfies Fields<
  NonNullable<Parameters<typeof mixSolutions>[1]>
>;

export const MIXTURE_AIM = {
  strong: true,
  weak: true,
  wanted: true,
  mass: true,
  of: true,
  ...DETAILS,
} as const satisfies Fields<MixtureAim>;

export const STOCK_MADE = {
  ...PURITY,
  of: true,
  volume: true,
  glassware: GLASS,
  equivalents: true,
  reaction: true,
} as const satisfies Fields<StockRequest>;

export const STOCK = { ...STOCK_MADE, strength: true } as const satisfies Fields<Parameters<typeof stockSolution>[0]>;

export const REPLICATES = { concordance: true, level: true, label: true } as const satisfies Fields<
  NonNullable<Parameters<typeof replicateStatistics>[1]>
>;

const TITRANT = { strength: true, of: true, options: { ...DETAILS, density: true } } as const satisfies Fields<Titrant>;

const TITRES = { titrant: TITRANT, titre: true, blank: true, analyte: true, sample: true } as const;

export const TITRATION = {
  ...TITRES,
  equation: true,
  titrantPerAnalyte: true,
} as const satisfies Fields<TitrationRequest>;

export const BACK_TITRATION = {
  ...TITRES,
  reagent: TITRANT,
  reagentVolume: true,
  titrantPerReagent: true,
  reagentPerAnalyte: true,
} as const satisfies Fields<Parameters<typeof backTitrate>[0]>;

// Hydrate: the same salt with more or less water.
export type { CrystalWater, WaterCount } from "./crystal-water";
export {
  anhydrousOf,
  crystalWater,
  crystalWaterIn,
  tryAnhydrousOf,
  tryCrystalWater,
  tryCrystalWaterIn,
  tryWaterContent,
  tryWithWater,
  waterContent,
  withWater,
} from "./crystal-water";
export type { EquivalenceReading, FormsOfOne } from "./equivalent";
export { equivalenceReadings, equivalentMass, tryEquivalenceReadings, tryEquivalentMass } from "./equivalent";
export type { HydrateErrorCode } from "./error";
export { HydrateError } from "./error";
export type { DehydrationStages, DehydrationStep, HydrateForm, HydrateFormData } from "./forms";
export {
  formAt,
  formsInPack,
  knownForms,
  stagedDehydration,
  tryFormAt,
  tryFormsInPack,
  tryKnownForms,
  tryStagedDehydration,
} from "./forms";
export type { HeatingExperiment, HydrationCandidate, HydrationNumber, MeanWater } from "./hydration-number";
export { hydrationNumber, meanWater, tryHydrationNumber, tryMeanWater } from "./hydration-number";
export type { HydrateMixUp, MixUpQuestion } from "./mix-up";
export { hydrateMixUps, tryHydrateMixUps } from "./mix-up";

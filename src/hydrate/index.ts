// Hydrate: the same salt with more or less water.
export type { CrystalWater, WaterCount } from "./crystal-water";
export { anhydrousOf, crystalWater, crystalWaterIn, hydrateOf, waterContent } from "./crystal-water";
export type { DehydrationStages, DehydrationStep } from "./dehydration";
export { stagedDehydration } from "./dehydration";
export type { EquivalenceReading, FormsOfOne } from "./equivalent";
export { equivalenceOptions, equivalentMass } from "./equivalent";
export type { HydrateErrorCode, HydrateErrorDetails } from "./error";
export { HydrateError } from "./error";
export type { HydrateForm, HydrateFormData } from "./forms";
export { knownHydrates, soldHydrates, stableHydrate } from "./forms";
export type { HydrationCandidate } from "./hydration-candidates";
export type { HeatingExperiment, HydrationNumber } from "./hydration-number";
export { hydrationNumber } from "./hydration-number";
export type { MeanHydration } from "./mean-hydration";
export { meanHydration } from "./mean-hydration";
export type { HydrateMixUp, HydrateMixUpRequest } from "./mix-up";
export { hydrateMixUps } from "./mix-up";

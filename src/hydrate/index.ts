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

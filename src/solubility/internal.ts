// What the layers above use of this one and callers do not see.

export { fallingFrom, saturatedBy, settleSalts } from "./crystallising/crop-balance";
export { staysSupersaturated } from "./crystallising/crystallise";
export { type DrawnPoint, drawnCurve } from "./curves/drawn";
export { soluteOf } from "./curves/solute";
export type { SolubilityRow } from "./data/curves";
export { DOUBLE_SALTS, type DoubleSaltRow } from "./data/double-salts";
export { ISOMORPHOUS } from "./data/isomorphous";
export {
  APART_IN_LYE,
  NEVER_IN_WATER,
  NO_TUTTON_SALT,
  ONLY_IN_SOLUTION,
  OXIDE_OR_HYDROXIDE,
  TAKEN_APART,
} from "./data/never-in-water";
export { cite, solubilitySources } from "./data/sources";
export { RESIDUE } from "./data/wash-tests";
export { saltIons } from "./precipitating/ions";
export {
  doubtfulPairings,
  judgePairing,
  type Pairing,
  type PooledIon,
  pairingsOf,
  saturatedProduct,
} from "./precipitating/pairings";
export { findRows, ionsOf, type ProductRow } from "./precipitating/product";
export { COLD_WATER, HOT_WASH, HOT_WATER } from "./washing/wash-advice";

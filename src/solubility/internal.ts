// What the layers above use of this one and callers do not see.
export { cite, solubilitySources } from "./data/sources";
export {
  doubtfulPairings,
  judgePairing,
  type Pairing,
  type PooledIon,
  pairingsOf,
  saturatedProduct,
} from "./precipitating/pairings";

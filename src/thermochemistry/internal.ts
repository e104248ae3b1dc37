// What the layers above use of this one and callers do not see.
export { thermochemistrySources } from "./data/sources";
export { heatKeptBySulfuricAcid, heatOfDilution } from "./dilution";
export type { OwnEnthalpy } from "./formation";
export { heatCapacityOf } from "./heat-capacity";

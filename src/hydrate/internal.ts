// What the layers above use of this one and callers do not see.
export { heatingSources, hydrateSources } from "./data/sources";
export { isTraded } from "./forms";

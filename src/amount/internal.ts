export { PURITY } from "./amount"; // What the layers above use of this one and callers do not see.
export { assayOf, formulaOfArgument, inSymbol, positive } from "./argument";
export { amountSources } from "./data/sources";
export type { SoluteRows } from "./density/density-table";

// Facts of the caller's own: immutable sets of rows that are looked up before the tables of the library.
export type { Facts, LookupOptions } from "../foundation/facts";
export type { FactsErrorCode } from "./error";
export { FactsError } from "./error";
export type { FactsRecord } from "./facts";
export { facts, factsFromJSON } from "./facts";
export type {
  ConstantFact,
  DensityFact,
  EnthalpyFact,
  FactRows,
  HazardFact,
  IncompatibilityFact,
  MaterialFact,
  NameFact,
  SolubilityFact,
  SubstanceFact,
  UnitFact,
  WeightFact,
} from "./rows";

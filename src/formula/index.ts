// Formula: what is in it, and what a mole of it weighs.

export type { FormulaErrorCode, FormulaErrorDetails, FormulaRefusal } from "./error";
export { FormulaError } from "./error";
export type { FormulaPart, FormulaRecord } from "./formula";
export { Formula, formulaFromJSON, parseFormula, tryParseFormula } from "./formula";
export type {
  EmpiricalCandidate,
  EmpiricalFormula,
  EmpiricalOptions,
} from "./mass/empirical";
export { empiricalFormula } from "./mass/empirical";
export type { FoundComposition } from "./mass/found-composition";
export type { ElementShare } from "./mass/mass-fraction";
export { massFractionOf, percentComposition } from "./mass/mass-fraction";
export { molarMass, monoisotopicMass, tryMolarMass } from "./mass/molar-mass";
export type { MolarMassOptions } from "./mass/options";
export type { OxideEquivalent } from "./mass/oxide";
export { massAs, oxideEquivalents } from "./mass/oxide";
export type { ReadOptions } from "./read/read";

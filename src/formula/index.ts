// Formula: what is in it, and what a mole of it weighs.
export type {
  EmpiricalCandidate,
  EmpiricalFormula,
  EmpiricalOptions,
  FoundComposition,
} from "./empirical";
export { empiricalFormula, tryEmpiricalFormula } from "./empirical";
export type { FormulaErrorCode } from "./error";
export { FormulaError } from "./error";
export type { FormulaPart, FormulaRecord } from "./formula";
export { Formula, formulaFromJSON, parseFormula, tryFormulaFromJSON, tryParseFormula } from "./formula";
export type { ElementShare } from "./mass-fraction";
export { massFractionOf, percentComposition, tryMassFractionOf, tryPercentComposition } from "./mass-fraction";
export type { MolarMassOptions } from "./molar-mass";
export { molarMass, monoisotopicMass, tryMolarMass, tryMonoisotopicMass } from "./molar-mass";
export type { OxideEquivalent } from "./oxide";
export { massAs, oxideEquivalents, tryMassAs, tryOxideEquivalents } from "./oxide";
export type { ReadOptions } from "./read";

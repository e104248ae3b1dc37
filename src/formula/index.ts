// Formula: what is in it, and what a mole of it weighs.
export { FormulaError } from "./error";
export type { FormulaPart, FormulaRecord } from "./formula";
export { Formula, formulaFromJSON, parseFormula, tryParseFormula } from "./formula";
export type { ReadOptions } from "./read";

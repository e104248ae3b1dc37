// Equation: what reacts with what, in whole numbers.
export type { BalanceOptions } from "./balance";
export { balance, tryBalance } from "./balance";
export type { BalancedTerm, StoichiometricRow } from "./balanced";
export { BalancedEquation, balancedEquationFromJSON } from "./balanced";
export type { Condition } from "./condition";
export type { EquationRecord, Term, TermRecord } from "./equation";
export { Equation, equationFromJSON } from "./equation";
export { EquationError } from "./error";
export type { ImpossibleDetails, Mending } from "./explain";
export { imbalance, isBalanced } from "./imbalance";
export { integerNullspace } from "./kernel/nullspace";
export type { EquationInput, EquationLists, EquationOptions } from "./parse";
export { parseEquation, tryParseEquation } from "./parse";
export type { ReactionSpace, SpaceOptions } from "./space";
export { reactionSpace, tryReactionSpace } from "./space";
export type { Arrow } from "./split";

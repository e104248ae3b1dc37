// Equation: what reacts with what, in whole numbers.
export type { BalanceOptions } from "./balance";
export { balance, tryBalance } from "./balance";
export type { BalancedEquationRecord, BalancedTerm, StoichiometricRow } from "./balanced";
export { BalancedEquation, balancedEquationFromJSON, tryBalancedEquationFromJSON } from "./balanced";
export type { Condition } from "./condition";
export type { EquationFields, EquationRecord, Term, TermRecord } from "./equation";
export { Equation, equationFromJSON, tryEquationFromJSON } from "./equation";
export type { EquationErrorCode } from "./error";
export { EquationError } from "./error";
export type { ImpossibleDetails } from "./explain";
export type { HalfReactionOptions, HalfReactions } from "./half";
export { halfReactions, tryHalfReactions } from "./half";
export type { Medium } from "./half-solve";
export { imbalance, isBalanced, tryImbalance, tryIsBalanced } from "./imbalance";
export type { IonicEquationRecord } from "./ionic";
export {
  completeIonic,
  IonicEquation,
  ionicEquationFromJSON,
  netIonic,
  tryCompleteIonic,
  tryIonicEquationFromJSON,
  tryNetIonic,
} from "./ionic";
export { integerNullspace, tryIntegerNullspace } from "./kernel/nullspace";
export type { Mending } from "./mend";
export type { OverallEquationRecord, OverallOptions } from "./overall";
export {
  OverallEquation,
  overallEquation,
  overallEquationFromJSON,
  tryOverallEquation,
  tryOverallEquationFromJSON,
} from "./overall";
export type { OxidationSite } from "./oxidation/states";
export { OxidationStates, oxidationStates, tryOxidationStates } from "./oxidation/states";
export type { EquationInput, EquationLists, EquationOptions } from "./parse";
export { parseEquation, tryParseEquation } from "./parse";
export type { RedoxAnalysis, StateChange } from "./redox";
export { redoxAnalysis, tryRedoxAnalysis } from "./redox";
export type { ReactionSpace, SpaceOptions } from "./space";
export { reactionSpace, tryReactionSpace } from "./space";
export type { Arrow } from "./split";

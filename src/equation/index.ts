// Equation: what reacts with what, in whole numbers.
export type { BalanceOptions } from "./balance/balance";
export { balance, tryBalance } from "./balance/balance";
export type { BalancedEquationRecord, BalancedTerm, StoichiometricRow } from "./balance/balanced";
export { BalancedEquation, balancedEquationFromJSON, tryBalancedEquationFromJSON } from "./balance/balanced";
export type { Condition } from "./balance/condition";
export type { ImpossibleDetails } from "./balance/explain";
export { imbalance, isBalanced, tryImbalance, tryIsBalanced } from "./balance/imbalance";
export type { Mending } from "./balance/mend";
export type { ReactionSpace, SpaceOptions } from "./balance/space";
export { reactionSpace, tryReactionSpace } from "./balance/space";
export type { EquationFields, EquationRecord, Term, TermRecord } from "./equation";
export { Equation, equationFromJSON, tryEquationFromJSON } from "./equation";
export type { EquationErrorCode } from "./error";
export { EquationError } from "./error";
export type { IonicEquationRecord } from "./ionic/ionic";
export {
  completeIonic,
  IonicEquation,
  ionicEquationFromJSON,
  netIonic,
  tryCompleteIonic,
  tryIonicEquationFromJSON,
  tryNetIonic,
} from "./ionic/ionic";
export { integerNullspace, tryIntegerNullspace } from "./kernel/nullspace";
export type { OxidationSite } from "./oxidation/states";
export { OxidationStates, oxidationStates, tryOxidationStates } from "./oxidation/states";
export type { EquationInput, EquationLists, EquationOptions } from "./read/parse";
export { parseEquation, tryParseEquation } from "./read/parse";
export type { Arrow } from "./read/split";
export type { HalfReactionOptions, HalfReactions } from "./redox/half";
export { halfReactions, tryHalfReactions } from "./redox/half";
export type { Medium } from "./redox/half-solve";
export type { OverallEquationRecord, OverallOptions } from "./redox/overall";
export {
  OverallEquation,
  overallEquation,
  overallEquationFromJSON,
  tryOverallEquation,
  tryOverallEquationFromJSON,
} from "./redox/overall";
export type { RedoxAnalysis, StateChange } from "./redox/redox";
export { redoxAnalysis, tryRedoxAnalysis } from "./redox/redox";

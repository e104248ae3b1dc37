// Preparation: the plan, the run as it really went, the verdict.

export { chainFromJSON, planSequence, tryPlanSequence } from "./chain";
export type { Chain, ChainMaterial, ChainRecord, ChainRequest, ChainStep } from "./chain/types";
export type { Complexed } from "./contents/complexes";
export type { Contents, SolidInside, SoluteInside } from "./contents/contents";
export type { MeasuringWay } from "./data/measuring";
export type { WorkStep } from "./data/work-cautions";
export type { PlanErrorCode, PlanErrorDetails, PlanRefusal } from "./error";
export { PlanError } from "./error";
export type { FeasibilityRequest } from "./feasibility/does-it-go";
export { doesItGo } from "./feasibility/does-it-go";
export type {
  Feasibility,
  FeasibilityCode,
  FeasibilityReason,
  FeasibilityVerdict,
  FormedSolid,
} from "./feasibility/feasibility";
export { identifyByMassLoss } from "./identity/identity";
export type { SampleMixture, SampleMixtureKind } from "./identity/mixtures";
export type { PowderOutcome, Powders, PowdersRequest, PowderTest } from "./identity/powders";
export { distinguishPowders } from "./identity/powders";
export type { Identity, IdentityCandidate, IgnitionCandidate, MassLossRequest } from "./identity/types";
export type { Learned, LearnedFigure } from "./learning/learn";
export { learnFromRuns } from "./learning/learn";
export { withLearned } from "./learning/with-learned";
export type { BetterMeasurement, DecidingTest, MeasuringMeans } from "./measuring/next";
export { whatToMeasureNext } from "./measuring/next";
export type { Operation } from "./operation/operation";
export type { Plan, PlanRecord } from "./plan";
export { planFromJSON, planPreparation, tryPlanPreparation } from "./plan";
export type { Assumption } from "./planning/assumptions";
export type { Batch } from "./planning/batch";
export type { ByProduct } from "./planning/by-products";
export type { Check } from "./planning/check";
export type { Figure, MovedFigure } from "./planning/figures";
export type { KeptLiquor } from "./planning/kept-liquor";
export type { Liquor } from "./planning/liquor";
export type { Pace } from "./planning/pace";
export type { GasEvolved, Vessel } from "./planning/vessel";
export type { Weighing } from "./planning/weighings";
export type { AcidDiluted } from "./procedure/acid-diluted";
export type { AtHand } from "./procedure/at-hand";
export type { Apparatus } from "./procedure/bench";
export type { Completeness } from "./procedure/completeness";
export type { Cooling } from "./procedure/cooling";
export type { Crystallising } from "./procedure/crystallising";
export type { Drying } from "./procedure/drying";
export type { Dilution as FeedDilution, Feed as MaterialFeed } from "./procedure/feed";
export type { Isolation, WashSchedule } from "./procedure/isolation";
export type { Procedure } from "./procedure/kind";
export type { ProcedureKind } from "./procedure/kinds";
export type { MoreOf } from "./procedure/more-of";
export type { LeftContents, ProcedureStep } from "./procedure/step";
export type { Account, Formed, Supplied } from "./reaction/account";
export type { Candidate } from "./reaction/candidates";
export type { DissolvingHeat } from "./reaction/dissolving-heat";
export type { Heat } from "./reaction/heat";
export { checkRecipe, tryCheckRecipe } from "./recipe/recipe";
export type {
  Recipe,
  RecipeCheck,
  RecipeFinding,
  RecipeFindingCode,
  RecipeGas,
  RecipeMaterial,
  RecipeYield,
} from "./recipe/types";
export type { PlanRequest, Rinse, Scale, ShelfMaterial, Washing } from "./request/request";
export type { Room } from "./request/setting";
export type { Run, RunRecord } from "./run";
export { evaluateRun, runFromJSON, tryEvaluateRun } from "./run";
export type { NextWater, StillIn } from "./safety/next-batch";
export type { StepCaution, StepCautions } from "./safety/step-cautions";
export type { Waste, WasteVessel } from "./safety/waste";
export type { WasteReagent } from "./safety/waste-note";
export type { DissolvedMetal, Held, Treatment } from "./safety/waste-treatment";
export type { Cost, CostLine } from "./shelf/cost";
export { openStock, stockFromJSON } from "./stock/ledger";
export { lotAsMaterial, onHand, runsOutFirst, shoppingList } from "./stock/on-hand";
export { receive, receiveProduct } from "./stock/taking-in";
export { issue, issueForRun } from "./stock/taking-out";
export { stocktake } from "./stock/taking-stock";
export type { Count, Issue, Kept, Lot, Reach, Receipt, ShoppingLine, Stock, StockEntry } from "./stock/types";
export type { Change } from "./verdict/changes";
export type { Dryness } from "./verdict/dryness";
export type { Finding, FindingCode, TestNeed, Yield } from "./verdict/finding";
export type { Loss, Lost } from "./verdict/losses";
export type { Observations, Weighed } from "./verdict/observations";
export type { TestOutcome } from "./verdict/test-outcome";
export type { VerdictWorking } from "./verdict/working";
export { workingOfVerdict } from "./verdict/working";

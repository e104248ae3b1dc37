// Preparation: the plan, the run as it really went, the verdict.
export type { Account, Formed, Supplied } from "./account";
export type { Assumption } from "./assumptions";
export type { Batch } from "./batch";
export type { Candidate } from "./candidates";
export type { Chain, ChainMaterial, ChainRecord, ChainRequest, ChainStep } from "./chain";
export { chainFromJSON, planSequence, tryPlanSequence } from "./chain";
export type { Check } from "./checks";
export type { Completeness } from "./completeness";
export type { Contents, SolidInside, SoluteInside } from "./contents/contents";
export type { Cost, CostLine } from "./cost";
export type { Crystallising } from "./crystallising";
export type { MeasuringWay } from "./data/measuring";
export type { WorkStep } from "./data/work-cautions";
export type { DissolvingHeat } from "./dissolving-heat";
export type { Drying } from "./drying";
export type { PlanErrorCode } from "./error";
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
export type { Dilution as FeedDilution, Feed as MaterialFeed } from "./feed";
export type { Figure, MovedFigure } from "./figures";
export type { Heat } from "./heat";
export { identifyByMassLoss } from "./identity/identity";
export type { SampleMixture, SampleMixtureKind } from "./identity/mixtures";
export type { Identity, IdentityCandidate, IgnitionCandidate, MassLossRequest } from "./identity/types";
export type { Isolation, WashSchedule } from "./isolation";
export type { Liquor } from "./liquor";
export type { Loss, Lost } from "./losses";
export type { BetterMeasurement, DecidingTest, MeasuringMeans } from "./measuring/next";
export { whatToMeasureNext } from "./measuring/next";
export type { Observations, Weighed } from "./observations";
export type { Operation } from "./operation/operation";
export type { Pace } from "./pace";
export type { Plan, PlanRecord, Weighing } from "./plan";
export { planFromJSON, planPreparation, tryPlanPreparation } from "./plan";
export type { Procedure } from "./procedure/kind";
export type { ProcedureKind } from "./procedure/kinds";
export type { LeftContents, ProcedureStep } from "./procedure/step";
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
export type { PlanRequest, Portion, Scale, ShelfMaterial, Washing } from "./request";
export type { Change, Run, RunRecord } from "./run";
export { evaluateRun, runFromJSON, tryEvaluateRun } from "./run";
export type { StepCaution, StepCautions } from "./safety/step-cautions";
export type { Room } from "./setting";
export type { TestOutcome } from "./test-outcome";
export type { Dryness } from "./verdict/dryness";
export type { Finding, FindingCode, Yield } from "./verdict/finding";
export type { GasEvolved, Vessel } from "./vessel";
export type { ByProduct, Waste } from "./waste";
export type { DissolvedMetal, Treatment } from "./waste-treatment";

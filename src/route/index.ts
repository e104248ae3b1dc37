// Route: what can be made from this shelf, and how.
export type { FamilyCode } from "./data/families";
export type { TrialEndCode } from "./endings";
export type { RouteErrorCode, RouteErrorDetails, RouteRefusal } from "./error";
export { RouteError } from "./error";
export type { RouteEvidence } from "./evidence";
export type { Routes } from "./find-routes";
export { findRoutes, routeWeights, tryFindRoutes } from "./find-routes";
export type { Margin } from "./margin";
export type { RefusedRoute, RouteReason } from "./reason";
export { routeFromJSON } from "./record";
export type { RouteRequest } from "./request";
export type { TrialRecord, TrialReport } from "./trial-read";
export type { TrialReading } from "./trial-readings";
export type {
  Rank,
  RankParts,
  Route,
  RouteMaterial,
  RouteRecord,
  RouteStep,
  RouteStepRecord,
  StepPurity,
  Swap,
  Trial,
  TrialStep,
} from "./types";

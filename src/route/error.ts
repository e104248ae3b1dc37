import { type ErrorWithCode, errorClass } from "../foundation/error";
import type { PlanErrorDetails, PlanRefusal } from "../preparation";

/** Codes of everything that can be refused in the route layer. */
export type RouteErrorCode =
  | "route.request"
  | "route.unknown-option"
  /** Never made here, whatever the way: `details.class` names the class, and nothing else is said. */
  | "route.refused-target"
  /** A formula or name that no table knows: nothing is invented. */
  | "route.unknown-target"
  /** What is no run of a trial, no record of one, or ends in a way that its work has not. */
  | "route.trial"
  /** Data that `toJSON` of a route did not write. */
  | "route.json"
  /** A step of a stored route that the tables of this release do not let go. */
  | "route.no-longer";

/**
 * A search for a way to make something that is not done. Codes start with `route.`.
 *
 * @category Errors
 * @example
 * const outcome = tryFindRoutes({ target: "Xq", shelf: [] });
 * outcome.ok ? "" : outcome.error.code // => "route.unknown-target"
 */
export class RouteError extends /* @__PURE__ */ errorClass<RouteErrorCode>("RouteError") {}

/** What the details of an error of routes hold, by code. */
export interface RouteErrorDetails extends PlanErrorDetails {
  /** The class that no route is given to. */
  readonly "route.refused-target": { readonly class: string };
}

/**
 * Why a search for routes was refused. Comparing `code` tells what `details` hold.
 *
 * @category Errors
 * @example
 * const outcome = tryFindRoutes({ target: "Pb(N3)2", shelf: [] });
 * if (!outcome.ok && outcome.error.code === "route.refused-target") {
 *   outcome.error.details.class // => "explosive"
 * }
 */
export type RouteRefusal = ErrorWithCode<RouteErrorCode | PlanRefusal["code"], RouteErrorDetails>;

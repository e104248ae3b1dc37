import { errorClass } from "../foundation/error";

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

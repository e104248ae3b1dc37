// Errors of the hydrate layer.
import { errorClass } from "../foundation/error";

/** Codes of everything that can be refused in the hydrate layer. */
export type HydrateErrorCode =
  | "hydrate.only-water"
  | "hydrate.water-count"
  | "hydrate.no-common-part"
  | "hydrate.several-readings"
  | "hydrate.not-in-both"
  | "hydrate.gained-mass"
  | "hydrate.not-positive"
  | "hydrate.unknown-salt"
  | "hydrate.missing-input"
  | "hydrate.too-many-inputs"
  | "hydrate.outside-range"
  | "hydrate.unknown-option"
  | "hydrate.bad-option";

/**
 * A question about crystal water that cannot be answered as asked. Codes start with `hydrate.`.
 *
 * @category Errors
 * @example
 * const outcome = attempt(() => anhydrousOf("5H2O"));
 * outcome.ok ? "" : outcome.error.code // => "hydrate.only-water"
 */
export class HydrateError extends /* @__PURE__ */ errorClass<HydrateErrorCode>("HydrateError") {}

/** What the details of a hydrate's error hold, by code. */
export interface HydrateErrorDetails {
  /** Two forms that can stand for each other in several ways: which element or group counts, and the ratio by it. */
  readonly "hydrate.several-readings": {
    readonly from: string;
    readonly to: string;
    readonly readings: readonly { readonly per: string; readonly ratio: string }[];
  };
}

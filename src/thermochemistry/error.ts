import { errorClass } from "../foundation/error";

/** Codes of everything the thermochemistry layer can refuse. */
export type ThermochemistryErrorCode =
  | "thermochemistry.no-data"
  | "thermochemistry.not-an-equation"
  | "thermochemistry.not-positive"
  | "thermochemistry.outside-range"
  | "thermochemistry.missing-option"
  | "thermochemistry.bad-option"
  | "thermochemistry.unknown-option"
  | "thermochemistry.conflicting-options";

/**
 * A heat that cannot be computed from what is known.
 *
 * @category Errors
 * @example
 * const outcome = attempt(() => reactionEnthalpy("Na2CO3 + CuSO4 -> CuCO3 + Na2SO4"));
 * outcome.ok ? "" : outcome.error.code // => "thermochemistry.no-data"
 */
export class ThermochemistryError extends /* @__PURE__ */ errorClass<ThermochemistryErrorCode>(
  "ThermochemistryError",
) {}

/** What the details of an error of heats hold, by code. */
export interface ThermochemistryErrorDetails {
  /** Species without an enthalpy in the table. */
  readonly "thermochemistry.no-data": { readonly missing: readonly string[] };
}

import type { AmountErrorCode } from "../amount";
import type { AqueousErrorCode, AqueousErrorDetails } from "../aqueous";
import type { ElementErrorCode } from "../element";
import type { FormulaErrorCode } from "../formula";
import { type ErrorWithCode, errorClass } from "../foundation/error";
import type { HydrateErrorCode, HydrateErrorDetails } from "../hydrate";
import type { QuantityErrorCode } from "../quantity";
import type { SubstanceErrorCode } from "../substance";

/** Codes of everything the solubility layer can refuse. */
export type SolubilityErrorCode =
  | "solubility.no-data"
  | "solubility.outside-range"
  | "solubility.far-from-single-figure"
  | "solubility.solid-changes"
  | "solubility.any-proportion"
  | "solubility.not-positive"
  | "solubility.conflicting-options"
  | "solubility.missing-option"
  | "solubility.bad-option"
  | "solubility.unknown-option"
  | "solubility.out-of-reach"
  | "solubility.no-crop"
  | "solubility.no-liquor"
  | "solubility.other-solute"
  | "solubility.other-solid"
  | "solubility.not-a-salt"
  | "solubility.ambiguous-formula"
  | "solubility.ionic-strength"
  | "solubility.too-many";

/**
 * A question about dissolving, precipitating or washing that cannot be answered from what is known.
 *
 * @category Errors
 * @example
 * const outcome = trySolubilityOf("KNO3", "140 °C");
 * outcome.ok ? "" : outcome.error.code // => "solubility.outside-range"
 */
export class SolubilityError extends /* @__PURE__ */ errorClass<SolubilityErrorCode>("SolubilityError") {}

/** What the details of an error of a solubility hold, by code. */
export interface SolubilityErrorDetails extends AqueousErrorDetails, HydrateErrorDetails {
  /** A formula that several salts have. */
  readonly "solubility.ambiguous-formula": { readonly readings: readonly string[] };
  /** A solution too strong for the model of activities. */
  readonly "solubility.ionic-strength": { readonly ionicStrength: number; readonly limit: number };
  /** Another salt of the same ions precipitates. */
  readonly "solubility.other-solid": {
    readonly solid: string;
    readonly stays: "yes" | "barely" | "no" | "unknown";
    readonly saturation: number | undefined;
    readonly wanted: string;
  };
  /** The solid changes between two temperatures, in °C, and where is not known. */
  readonly "solubility.solid-changes": {
    readonly formula: string;
    readonly celsius: number;
    readonly from: number;
    readonly to: number;
  };
}

/**
 * Why a solubility was refused. Comparing `code` tells what `details` hold.
 *
 * @category Errors
 * @example
 * const outcome = trySolubilityOf("Xx", "20 °C");
 * if (!outcome.ok && outcome.error.code === "formula.unknown-symbol") {
 *   outcome.error.details.written // => "Xx"
 * }
 */
export type SolubilityRefusal = ErrorWithCode<
  | SolubilityErrorCode
  | AqueousErrorCode
  | SubstanceErrorCode
  | HydrateErrorCode
  | AmountErrorCode
  | FormulaErrorCode
  | ElementErrorCode
  | QuantityErrorCode,
  SolubilityErrorDetails
>;

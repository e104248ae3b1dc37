import { errorClass } from "../foundation/error";

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

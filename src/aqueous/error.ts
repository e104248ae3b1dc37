import type { AmountErrorCode, AmountErrorDetails } from "../amount";
import type { ElementErrorCode } from "../element";
import type { FormulaErrorCode } from "../formula";
import { type ErrorWithCode, errorClass } from "../foundation/error";
import type { QuantityErrorCode } from "../quantity";
import type { SubstanceErrorCode, SubstanceErrorDetails } from "../substance";

/** Codes of everything the aqueous layer can refuse. */
export type AqueousErrorCode =
  | "aqueous.not-converged"
  | "aqueous.too-strong"
  | "aqueous.over-determined"
  | "aqueous.impossible-totals"
  | "aqueous.missing-option"
  | "aqueous.bad-option"
  | "aqueous.unknown-option"
  | "aqueous.not-positive"
  | "aqueous.outside-range"
  | "aqueous.not-an-ion-maker"
  | "aqueous.charged"
  | "aqueous.no-data"
  | "aqueous.out-of-reach";

/**
 * A question about the contents of a beaker that cannot be answered from what is known.
 *
 * @category Errors
 * @example
 * const outcome = attempt(() => acidConstant("NaCl"));
 * outcome.ok ? "" : outcome.error.code // => "aqueous.no-data"
 */
export class AqueousError extends /* @__PURE__ */ errorClass<AqueousErrorCode>("AqueousError") {}

/** Residuals of a mixture that was not solved, relative to what was summed up; `saturation` as ln(Q/K). */
export interface Residuals {
  /** Of the components: what was put in less what was found. */
  readonly mass: number;
  /** Of the ionic strength. */
  readonly ionicStrength: number;
  /** Largest of the solids and gases. */
  readonly saturation: number;
  /** Most negative amount of a solid or gas, mol/kg. */
  readonly negative: number;
  /** Do all of them hold? */
  readonly holds: boolean;
}

/** What the details of an error of a mixture hold, by code. */
export interface AqueousErrorDetails extends SubstanceErrorDetails, AmountErrorDetails {
  /** Charge of what was put in, in mol. */
  readonly "aqueous.charged": { readonly charge: number };
  /** How far the balances were off. */
  readonly "aqueous.not-converged": Residuals;
  /** How far the balances were off. */
  readonly "aqueous.over-determined": Residuals;
}

/**
 * Why a mixture was refused. Comparing `code` tells what `details` hold.
 *
 * @category Errors
 * @example
 * const outcome = tryAqueousComposition({ water: "1 kg", dissolved: [{ formula: "Na+", amount: "1 mol" }] });
 * if (!outcome.ok && outcome.error.code === "aqueous.charged") {
 *   outcome.error.details.charge // => 1
 * }
 */
export type AqueousRefusal = ErrorWithCode<
  AqueousErrorCode | SubstanceErrorCode | FormulaErrorCode | ElementErrorCode | AmountErrorCode | QuantityErrorCode,
  AqueousErrorDetails
>;

import { errorClass } from "../foundation/error";

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

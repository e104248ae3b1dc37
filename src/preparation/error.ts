import type { EquationErrorCode, EquationErrorDetails } from "../equation";
import type { FactsErrorCode } from "../facts";
import { type ErrorWithCode, errorClass } from "../foundation/error";
import type { SolubilityErrorDetails, SolubilityRefusal } from "../solubility";
import type { ThermochemistryErrorCode, ThermochemistryErrorDetails } from "../thermochemistry";
import type { FeasibilityReason } from "./feasibility/feasibility";

/** Codes of everything that can be refused in the preparation layer. */
export type PlanErrorCode =
  | "plan.request"
  | "plan.unknown-option"
  | "plan.no-such-material"
  | "plan.unmatched-material"
  | "plan.missing-material"
  | "plan.no-such-product"
  | "plan.scale"
  | "plan.strength"
  | "plan.too-small"
  | "plan.not-positive"
  | "plan.observation"
  | "plan.no-residue"
  | "plan.forbidden-combination"
  | "plan.dangerous-product"
  | "plan.does-not-go"
  | "plan.no-procedure"
  | "plan.acknowledge"
  | "plan.json";

/**
 * A preparation that cannot be planned or evaluated as asked.
 *
 * @category Errors
 * @example
 * const outcome = tryPlanPreparation({ equation: "A -> B", product: "B", materials: [], scale: "all" } as never);
 * outcome.ok // => false
 */
export class PlanError extends /* @__PURE__ */ errorClass<PlanErrorCode>("PlanError") {}

/** What the details of a plan's error hold, by code. */
export interface PlanErrorDetails extends SolubilityErrorDetails, EquationErrorDetails, ThermochemistryErrorDetails {
  /** What stands at the end instead, as part of what would be the whole, and why. */
  readonly "plan.does-not-go": {
    readonly verdict: "does not go";
    readonly solids: readonly { readonly formula: string; readonly share: number }[];
    readonly reasons: readonly Pick<FeasibilityReason, "code" | "text" | "source">[];
  };
  /** What must not meet, and what comes of it. */
  readonly "plan.forbidden-combination": {
    readonly combinations: readonly {
      readonly code: string;
      readonly materials: readonly string[];
      readonly what: string;
      readonly condition?: string;
      readonly products: readonly string[];
      readonly source: string;
    }[];
  };
  /** Explosives and gases that are never planned, or only where `opens` and acknowledged by code. */
  readonly "plan.dangerous-product": {
    readonly dangers: readonly {
      readonly code: "explosive" | "deadly-gas" | "poison-gas";
      readonly formula: string;
      readonly name: string;
      readonly as: "material" | "product" | "by-product";
      readonly opens: boolean;
      readonly source: string;
    }[];
  };
  /** A material that supplies nothing of the equation. */
  readonly "plan.unmatched-material": { readonly material: string; readonly form: string };
}

/**
 * Why a plan, a chain, a run or a recipe was refused. Comparing `code` tells what `details` hold.
 *
 * @category Errors
 * @example
 * const outcome = tryPlanPreparation({
 *   equation: "NaCl + KNO3 -> NaNO3 + KCl",
 *   product: "NaNO3",
 *   materials: [{ name: "salt", form: "NaCl" }, { name: "saltpetre", form: "KNO3" }, { name: "chalk", form: "CaCO3" }],
 *   scale: { product: "10 g" },
 * });
 * if (!outcome.ok && outcome.error.code === "plan.unmatched-material") {
 *   outcome.error.details.material // => "chalk"
 * }
 */
export type PlanRefusal = ErrorWithCode<
  PlanErrorCode | FactsErrorCode | EquationErrorCode | ThermochemistryErrorCode | SolubilityRefusal["code"],
  PlanErrorDetails
>;

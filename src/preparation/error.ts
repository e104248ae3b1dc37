import { errorClass } from "../foundation/error";

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

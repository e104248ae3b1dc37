// The guard of this layer's arguments, and what must be above zero.
import { ArgumentGuard } from "../../foundation/argument";
import type { Quantity } from "../../quantity";
import { PlanError } from "../error";

/** What is no request, no option or no list is refused by name. */
export const guard = /* @__PURE__ */ new ArgumentGuard(PlanError, {
  unknown: "plan.unknown-option",
  bad: "plan.request",
});

/** The quantity, refused by name at zero and below. */
export function mustBePositive<Q extends Quantity>(quantity: Q, what: string): Q {
  if (quantity.isPositive()) return quantity;
  throw new PlanError("plan.not-positive", `${what} must be above zero, not ${quantity}`);
}

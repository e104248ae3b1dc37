// The guard of this layer's arguments.
import { ArgumentGuard } from "../../foundation/argument";
import { PlanError } from "../error";

/** What is no request, no option or no list is refused by name. */
export const guard = /* @__PURE__ */ new ArgumentGuard(PlanError, {
  unknown: "plan.unknown-option",
  bad: "plan.request",
  notPositive: "plan.not-positive",
});

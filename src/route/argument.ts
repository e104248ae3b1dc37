// The guard of this layer's arguments.
import { ArgumentGuard } from "../foundation/argument";
import { RouteError } from "./error";

/** What is no request, no option or no list is refused by name. */
export const guard = /* @__PURE__ */ new ArgumentGuard(RouteError, {
  unknown: "route.unknown-option",
  bad: "route.request",
});

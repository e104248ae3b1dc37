import { ArgumentGuard } from "../foundation/argument";
import { HydrateError } from "./error";

export const guard = /* @__PURE__ */ new ArgumentGuard(HydrateError, {
  unknown: "hydrate.unknown-option",
  bad: "hydrate.bad-option",
  missing: "hydrate.missing-input",
});

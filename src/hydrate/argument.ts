// The guard of this room's arguments, and the fields that each of its requests may have.
import { PURITY } from "../amount/internal";
import { ArgumentGuard, type Fields } from "../foundation/argument";
import type { equivalenceOptions, FormsOfOne } from "./equivalent";
import { HydrateError } from "./error";
import type { HeatingExperiment, meanHydration } from "./hydration-number";
import type { MixUpQuestion } from "./mix-up";

export const guard = /* @__PURE__ */ new ArgumentGuard(HydrateError, {
  unknown: "hydrate.unknown-option",
  bad: "hydrate.bad-option",
  missing: "hydrate.missing-input",
});

export const TWO_FORMS = { from: true, to: true } as const satisfies Fields<Parameters<typeof equivalenceOptions>[0]>;

export const FORMS = {
  ...TWO_FORMS,
  per: true,
  fromPurity: PURITY,
  toPurity: PURITY,
} as const satisfies Fields<FormsOfOne>;

export const HEATING = {
  before: true,
  after: true,
  anhydrous: true,
  vessel: true,
  residue: true,
} as const satisfies Fields<HeatingExperiment>;

export const DAMP = {
  salt: true,
  assay: true,
  before: true,
  after: true,
  vessel: true,
} as const satisfies Fields<Parameters<typeof meanHydration>[0]>;

export const MIX_UP = {
  ratio: true,
  yield: true,
  observed: true,
  expected: true,
  of: true,
  relativeUncertainty: true,
} as const satisfies Fields<MixUpQuestion>;

// The guard of this layer's arguments, and the fields that its options and records may have.
import { ArgumentGuard, type Fields, type KnownFields } from "../foundation/argument";
import { SubstanceError } from "./error";
import type { MaterialOfStrength } from "./hazards/cautions";
import type { CautionOptions } from "./hazards/entries";
import type { FormulaOfStrength } from "./hazards/formula-cautions";
import type { ReadingOptions } from "./names/readings";
import type { SearchOptions } from "./search/search";
import type { ShopCandidate, TextRange } from "./shop/shop";
import type { PricedPack } from "./shop/tell-apart";

export const guard = /* @__PURE__ */ new ArgumentGuard(SubstanceError, {
  unknown: "substance.unknown-option",
  bad: "substance.bad-input",
});

export const SEARCH = { limit: true } as const satisfies Fields<SearchOptions>;

export const READING = { literal: true } as const satisfies Fields<ReadingOptions>;

export const CAUTIONS = { circumstances: true } as const satisfies Fields<CautionOptions>;

export const OF_STRENGTH = {
  material: true,
  strength: true,
  inCylinder: true,
} as const satisfies Fields<MaterialOfStrength>;

export const OF_MASS_PERCENT = {
  formula: true,
  massPercent: true,
  inCylinder: true,
} as const satisfies Fields<FormulaOfStrength>;

export const PACK = { formula: true, price: true, size: true, assay: true } as const satisfies Fields<PricedPack>;

const RANGE = { lower: true, upper: true } as const satisfies Fields<TextRange>;

const STATED = { ...RANGE, of: true, note: true } as const satisfies Fields<ShopCandidate["stated"][number]>;

export const CANDIDATE = {
  formula: true,
  name: true,
  soldAs: true,
  usual: true,
  form: true,
  assay: RANGE,
  stated: [STATED],
  density: RANGE,
  impurities: true,
  otherGoods: true,
  formTrap: true,
  source: true,
} as const satisfies Fields<ShopCandidate>;

/** Options with none but the known fields; left out means none. */
export function readableOptions<T extends object>(value: T | undefined, known: KnownFields): Partial<T> {
  guard.options(value, known);
  return value ?? {};
}

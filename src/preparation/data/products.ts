// Peculiar products: those that change if they are kept warm in their liquor, and those whose water no formula fixes.
import type { SourceKey } from "../../foundation";

/** A product not to be warmed in its liquor. */
export interface NotWarmRow {
  readonly product: RegExp;
  readonly why: string;
  readonly source: SourceKey;
}

export const NOT_WARM: readonly NotWarmRow[] = [
  { product: /^Cu\(OH\)2$/, why: "warm it turns into black copper oxide", source: "commonPractice" },
  { product: /^(Mg|Zn|Ni|Co|Pb|Cd)CO3/, why: "warm it turns basic", source: "commonPractice" },
  { product: /Cr\(SO4\)2/, why: "above 60 °C it turns green and hardly crystallises", source: "commonPractice" },
  { product: /NH3\)/, why: "warm it loses ammonia", source: "commonPractice" },
];

/** A precipitate as it dries in air. */
export interface VariableWaterRow {
  readonly formula: string;
  /** Waters per formula unit, fewest and most. */
  readonly from: number;
  readonly to: number;
  readonly source: SourceKey;
}

export const VARIABLE_WATER: readonly VariableWaterRow[] = [
  { formula: "Fe4[Fe(CN)6]3", from: 10, to: 16, source: "memory" },
];

// Tolerances of volumetric ware at 20 °C, plus or minus mL, by nominal volume. Recalled from the standards named in the
// source, so every volume measured with them says so. Class B is about twice class A, as the standards put it.
import type { SourceKey } from "./sources";

/** Vessels that volumes are measured with, by their names in the trade. */
export type GlasswareKind = "volumetric flask" | "pipette" | "burette" | "measuring cylinder";

interface GlasswareRow {
  readonly kind: GlasswareKind;
  readonly source: SourceKey;
  readonly knownAs: "memory";
  /** [nominal mL, class A ± mL, class B ± mL]. */
  readonly sizes: readonly (readonly [nominal: string, a: string, b: string])[];
}

export const GLASSWARE: readonly GlasswareRow[] = [
  { kind: "volumetric flask", source: "iso1042", knownAs: "memory", sizes: [["5", "0.025", "0.05"], ["10", "0.025", "0.05"], ["20", "0.04", "0.08"], ["25", "0.04", "0.08"], ["50", "0.06", "0.12"], ["100", "0.10", "0.20"], ["200", "0.15", "0.30"], ["250", "0.15", "0.30"], ["500", "0.25", "0.50"], ["1000", "0.40", "0.80"], ["2000", "0.60", "1.20"]] },
  { kind: "pipette", source: "iso648", knownAs: "memory", sizes: [["1", "0.008", "0.015"], ["2", "0.010", "0.02"], ["5", "0.015", "0.03"], ["10", "0.02", "0.04"], ["20", "0.03", "0.06"], ["25", "0.03", "0.06"], ["50", "0.05", "0.10"], ["100", "0.08", "0.15"]] },
  { kind: "burette", source: "iso385", knownAs: "memory", sizes: [["5", "0.01", "0.02"], ["10", "0.02", "0.05"], ["25", "0.03", "0.05"], ["50", "0.05", "0.10"], ["100", "0.10", "0.20"]] },
  { kind: "measuring cylinder", source: "iso4788", knownAs: "memory", sizes: [["5", "0.05", "0.1"], ["10", "0.1", "0.2"], ["25", "0.25", "0.5"], ["50", "0.5", "1"], ["100", "0.5", "1"], ["250", "1", "2"], ["500", "2.5", "5"], ["1000", "5", "10"], ["2000", "10", "20"]] },
];

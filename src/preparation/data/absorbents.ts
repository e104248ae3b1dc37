// What takes a gas out of the air that leaves a vessel: the equation of the wash bottle. Common practice of the laboratory; the
// equations are those of any textbook.
import type { SourceKey } from "./sources";

/** A gas and what its wash bottle is filled with. */
export interface AbsorbentRow {
  /** The gas. */
  readonly formula: string;
  readonly absorbent: string;
  /** What the bottle is filled with, in words. */
  readonly called: string;
  readonly equation: string;
  /** What not to do with the bottle afterwards. */
  readonly after?: string;
  readonly source: SourceKey;
}

const LYE = { absorbent: "NaOH", called: "sodium hydroxide solution" } as const;
const NEVER_SOUR = "never put acid to it: the gas would come back";

export const ABSORBENTS: readonly AbsorbentRow[] = [
  { formula: "SO2", ...LYE, equation: "SO2 + NaOH -> Na2SO3 + H2O", after: NEVER_SOUR, source: "commonPractice" },
  { formula: "SO3", ...LYE, equation: "SO3 + NaOH -> Na2SO4 + H2O", source: "commonPractice" },
  { formula: "Cl2", ...LYE, equation: "Cl2 + NaOH -> NaCl + NaClO + H2O", after: NEVER_SOUR, source: "commonPractice" },
  { formula: "H2S", ...LYE, equation: "H2S + NaOH -> Na2S + H2O", after: NEVER_SOUR, source: "commonPractice" },
  { formula: "HCN", ...LYE, equation: "HCN + NaOH -> NaCN + H2O", after: NEVER_SOUR, source: "commonPractice" },
  { formula: "NO2", ...LYE, equation: "NO2 + NaOH -> NaNO2 + NaNO3 + H2O", after: NEVER_SOUR, source: "commonPractice" },
  { formula: "HCl", ...LYE, equation: "HCl + NaOH -> NaCl + H2O", source: "commonPractice" },
  { formula: "HBr", ...LYE, equation: "HBr + NaOH -> NaBr + H2O", source: "commonPractice" },
  { formula: "HI", ...LYE, equation: "HI + NaOH -> NaI + H2O", source: "commonPractice" },
  { formula: "HF", ...LYE, equation: "HF + NaOH -> NaF + H2O", source: "commonPractice" },
  { formula: "NH3", absorbent: "H2SO4", called: "sulfuric acid", equation: "NH3 + H2SO4 -> (NH4)2SO4", source: "commonPractice" },
];

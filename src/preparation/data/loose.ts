// How loose a dry powder lies, where it is lighter than powders usually are. Common practice: the lighter end of what is sold.
import type { SourceKey } from "./sources";

/** A class of powders by what they are made of; the first row that fits counts. */
export interface LooseRow {
  /** Elements beside carbon, hydrogen and oxygen, where these alone may be in it. */
  readonly of?: readonly string[];
  /** Anions that must be in it. */
  readonly anions: readonly string[];
  /** Whether water or hydroxide must be bound in it. */
  readonly hydrous?: true;
  readonly density: string;
  readonly source: SourceKey;
}

export const LOOSE: readonly LooseRow[] = [
  // light carbonate and light magnesia: 0.1 to 0.25
  { of: ["Mg"], anions: ["CO3^2-"], density: "0.15 g/mL", source: "commonPractice" },
  { of: ["Mg"], anions: ["O^2-"], density: "0.15 g/mL", source: "commonPractice" },
  // dried gel of silica: 0.2 to 0.5
  { of: ["Si"], anions: [], hydrous: true, density: "0.3 g/mL", source: "commonPractice" },
  // basic carbonates: 0.3 to 0.8
  { anions: ["CO3^2-", "OH-"], density: "0.4 g/mL", source: "commonPractice" },
  // slaked lime, dried gels, ochre, clay: 0.4 to 1
  { anions: ["OH-"], density: "0.5 g/mL", source: "commonPractice" },
];

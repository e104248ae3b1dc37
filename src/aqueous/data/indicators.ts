// Acid-base indicators with the pH between which their colour changes.
import type { SourceKey } from "./sources";

interface IndicatorRow {
  readonly name: string;
  /** pH at which the change begins and ends. */
  readonly from: string;
  readonly to: string;
  readonly acid: string;
  readonly base: string;
  readonly source: SourceKey;
}

export const INDICATORS: readonly IndicatorRow[] = [
  { name: "methyl orange", from: "3.1", to: "4.4", acid: "red", base: "yellow", source: "memory" },
  { name: "bromocresol green", from: "3.8", to: "5.4", acid: "yellow", base: "blue", source: "memory" },
  { name: "methyl red", from: "4.4", to: "6.2", acid: "red", base: "yellow", source: "memory" },
  { name: "phenol red", from: "6.8", to: "8.4", acid: "yellow", base: "red", source: "memory" },
  { name: "cresol red", from: "7.2", to: "8.8", acid: "yellow", base: "red", source: "memory" },
  { name: "phenolphthalein", from: "8.2", to: "10.0", acid: "colourless", base: "pink", source: "memory" },
  { name: "thymolphthalein", from: "9.3", to: "10.5", acid: "colourless", base: "blue", source: "memory" },
  { name: "alizarin yellow R", from: "10.0", to: "12.0", acid: "yellow", base: "red", source: "memory" },
];

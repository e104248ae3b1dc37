// What shows at the bench that a reaction by oxidation or reduction is done, where the colours of the solid and its liquor tell.
import type { SourceKey } from "./sources";

/** The end of a reaction that is seen. */
interface EndRow {
  /** The product. */
  readonly formula: string;
  /** How warm it is kept until then; undefined where the room is warm enough. */
  readonly at?: string;
  /** What is seen, after "until". */
  readonly until: string;
  /** What is seen while more of what reduces the oxidiser is needed. */
  readonly short?: string;
  readonly source: SourceKey;
}

export const ENDS: readonly EndRow[] = [
  { formula: "CuCl", at: "60 °C", until: "the solid is white and neither green nor brown is left in the liquor", source: "memory" },
  { formula: "CuBr", at: "60 °C", until: "the solid is white and neither green nor brown is left in the liquor", source: "memory" },
  { formula: "CuI", until: "the solid is nearly white and no more iodine colours the liquor brown", source: "commonPractice" },
  // 50 to 60; colder it stays yellow and runs through the paper
  { formula: "Cu2O", at: "55 °C", until: "no green or blue is left and the solid is brick red, no longer yellow", source: "memory" },
  // hot it gets dense enough to settle and to be filtered
  { formula: "MnO2", at: "80 °C", until: "neither purple nor pink is left in the clear liquor", short: "if it stays purple", source: "commonPractice" },
];

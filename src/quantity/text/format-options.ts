// What a caller may ask of the printing of a quantity.
import type { Rounding } from "../value/rational";

/** How to print a quantity. */
export interface FormatOptions {
  /** Unit to print in; the quantity's own unless given. */
  readonly unit?: string | undefined;
  /** Decimals of the value; negative rounds before the point. */
  readonly decimals?: number | undefined;
  /** Significant figures of the value, 1 to 60. */
  readonly significant?: number | undefined;
  /** Whether and how the standard uncertainty is printed: "plus-minus" `12.50 ± 0.20 g`, "concise" `12.50(20) g`. */
  readonly uncertainty?: "none" | "plus-minus" | "concise" | undefined;
  /** Figures of a printed uncertainty; the value is rounded to match. Two unless given. */
  readonly uncertaintyFigures?: number | undefined;
  /** What happens to a value exactly half-way between two printed ones; "half-even" unless given. */
  readonly rounding?: Rounding | undefined;
  /** "engineering" moves to the prefixed unit that leaves 1 to 999 before the point. */
  readonly prefix?: "engineering" | undefined;
  /** A language tag for digit grouping and decimal sign; such output is for people and need not read back. */
  readonly locale?: string | undefined;
}

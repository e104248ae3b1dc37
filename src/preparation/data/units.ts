// Units of old books that stand for two sizes, and what each may mean.
import type { SourceKey } from "./sources";

/** One unit under the names it has. */
export interface TwoSizedRow {
  readonly units: readonly string[];
  readonly readings: readonly string[];
  readonly source: SourceKey;
}

export const TWO_SIZED: readonly TwoSizedRow[] = [
  { units: ["gal", "gallon", "gallons"], readings: ["US gal", "imp gal"], source: "commonPractice" },
  { units: ["qt", "quart", "quarts"], readings: ["US qt", "imp qt"], source: "commonPractice" },
  { units: ["pt", "pint", "pints"], readings: ["US pt", "imp pt"], source: "commonPractice" },
  { units: ["fl oz"], readings: ["US fl oz", "imp fl oz"], source: "commonPractice" },
];

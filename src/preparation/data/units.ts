// Units of old books that stand for two sizes, and what each may mean.
import type { SourceKey } from "./sources";

/** One unit under the names it has. */
interface TwoSizedRow {
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

/** Pounds that old books mean by the same word, in grains of 64.79891 mg; the first is calculated with. */
export const POUNDS: readonly { readonly name: string; readonly grains: string; readonly source: SourceKey }[] = [
  { name: "avoirdupois", grains: "7000", source: "commonPractice" },
  { name: "troy or apothecaries'", grains: "5760", source: "commonPractice" },
];

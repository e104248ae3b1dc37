// Repeated readings summed up and judged: mean, standard deviation, range, and a test of the one that lies farthest out.
// Nothing is ever left out.

import type { Fields } from "../../foundation/argument";
import { readable } from "../../foundation/readable";
import {
  type DimensionIn,
  meanOfReadings,
  type Quantity,
  type QuantityLike,
  quantity,
  type Unchecked,
} from "../../quantity";
import { studentFactor } from "../../quantity/internal";
import { grouped, guard, listed } from "../argument";
import { AmountError } from "../error";

const REPLICATES = { concordance: true, level: true, label: true } as const satisfies Fields<
  NonNullable<Parameters<typeof replicateStatistics>[1]>
>;

/** A reading that lies far from the others. */
export interface Suspect<D extends string = Unchecked> {
  /** The reading itself, as it was given. */
  readonly value: Quantity<D>;
  /** Grubbs' statistic: distance from the mean in standard deviations. */
  readonly statistic: number;
  /** Largest statistic that chance allows at the chosen level. */
  readonly critical: number;
  /** Is the statistic beyond the critical one? */
  readonly outlier: boolean;
}

/** Repeated readings, summed up. */
export interface Replicates<D extends string = Unchecked> {
  /** Mean, with the standard deviation of the mean as its uncertainty. */
  readonly mean: Quantity<D>;
  /** Number of readings that were taken into the mean. */
  readonly count: number;
  /** Standard deviation of one reading; undefined for a single one. */
  readonly standardDeviation: Quantity<D> | undefined;
  /** Largest less smallest. */
  readonly range: Quantity<D>;
  /** Do all readings lie within the wanted range of each other? */
  readonly concordant: boolean;
  /** The reading farthest from the mean, tested; undefined for fewer than three or when all agree. */
  readonly suspect: Suspect<D> | undefined;
}

const MOST_READINGS = 1000;

/**
 * Sum up repeated readings: mean, standard deviation, range, and a test of the one that lies farthest out.
 *
 * The test is Grubbs' for one outlier, two-sided. It only tells; no reading is left out.
 *
 * @param list - 1 to 1000 readings of one dimension
 * @param options - `concordance`, the range within which readings agree (0.1 mL for titres unless given, common practice);
 *   `level` of confidence of the test, 0.95 unless given; `label`
 * @returns mean with uncertainty, standard deviation, range, concordance and the suspect
 * @throws {AmountError} `amount.readings` for none or too many
 * @throws {QuantityError} `quantity.wrong-dimension`
 * @source JCGM 100:2008, 4.2; Grubbs, Technometrics 11, 1 (1969), and ISO 5725-2 for the test
 * @category Solutions
 * @example
 * replicateStatistics(["24.15 mL", "24.10 mL", "24.20 mL"]).standardDeviation!.format({ decimals: 2 }) // => "0.05 mL"
 * replicateStatistics(["24.15 mL", "24.10 mL", "24.20 mL", "25.40 mL"]).suspect!.outlier // => true
 */
export function replicateStatistics<const L extends readonly QuantityLike[]>(
  list: L,
  options: {
    readonly concordance?: QuantityLike | undefined;
    readonly level?: number | undefined;
    readonly label?: string;
  } = {},
): Replicates<DimensionIn<L[number]>> {
  const { concordance, level = 0.95, label = "readings" } = grouped(options, REPLICATES);
  if (listed(list, "readings").length === 0 || list.length > MOST_READINGS) {
    throw new AmountError("amount.readings", `${list.length} readings; give 1 to ${MOST_READINGS}`);
  }
  guard.number(level, "level");
  guard.text(label, "label");
  if (!(level > 0 && level < 1)) {
    throw new AmountError("amount.outside-range", `a level of confidence lies between 0 and 1, not ${level}`);
  }
  const all = list.map((reading) => quantity(reading));
  const unit = all[0]!.unit;
  const numbers = all.map((q) => q.in(unit));
  const largest = numbers.reduce((a, b) => (b.greaterThan(a) ? b : a));
  const least = numbers.reduce((a, b) => (b.lessThan(a) ? b : a));
  // What lies between two temperatures is a difference, not a point on the scale.
  const step = all[0]!.dimension === "temperature" ? `Δ${unit}` : unit;
  const range = quantity(
    { value: largest.minus(least), unit: step },
    { symbol: "range", label: `range of the ${label}` },
  );
  const limit = concordance ?? (range.dimension === "volume" ? "0.1 mL" : undefined);
  const concordant = limit === undefined ? true : range.compare(limit) <= 0;
  if (all.length === 1) {
    return readable({ mean: all[0]!, count: 1, standardDeviation: undefined, range, concordant, suspect: undefined });
  }
  const n = all.length;
  const total = numbers.reduce((a, b) => a.plus(b));
  const average = total.div(n);
  const variance = numbers.reduce((s, x) => s.plus(x.minus(average).pow(2)), total.times(0)).div(n - 1);
  const s = variance.sqrt();
  const mean = meanOfReadings(all, { symbol: "mean", label: `mean of ${n} ${label}` });
  const far = numbers.reduce((a, b) => (b.minus(average).abs().greaterThan(a.minus(average).abs()) ? b : a));
  const suspect =
    n < 3 || s.isZero()
      ? undefined
      : grubbs(all[numbers.indexOf(far)]!, far.minus(average).abs().div(s).toNumber(), n, level);
  const standardDeviation = quantity(
    { value: s, unit: step },
    { symbol: "s", label: `standard deviation of one of the ${label}` },
  );
  return readable({ mean, count: n, standardDeviation, range, concordant, suspect });
}

/** Grubbs' test: critical value from Student's t at level 1 - (1 - level)/n, two-sided. */
function grubbs(value: Quantity, statistic: number, n: number, level: number): Suspect {
  const t = studentFactor(1 - (1 - level) / n, n - 2);
  const critical = ((n - 1) / Math.sqrt(n)) * Math.sqrt((t * t) / (n - 2 + t * t));
  return { value, statistic, critical, outlier: statistic > critical };
}

import { shownValue } from "../../foundation/error";
import { QuantityError } from "../error";
import { needList, needNaming, needRecord } from "../value/argument";
import type { Group, Naming } from "../value/graph";
import { inputLeaf, nodeOf, quantity } from "../value/quantity";
import { add, divide, multiply, type Rational, rational, subtract, ZERO } from "../value/rational";
import { type NumberLike, toRational } from "../value/read-number";
import { fromDecimal, squareRootOf } from "../value/real";
import type { DimensionIn, Quantity, QuantityLike } from "../value/types";
import { uncertaintyOf } from "./budget";

/** Readings of one thing, exactly, in SI units less the offset of the scale. */
interface Sample {
  readonly mean: Rational;
  readonly deviations: readonly Rational[];
  readonly like: Quantity;
}

const MOST_READINGS = 10_000;

function sampleOf(list: readonly QuantityLike[], what: string): Sample {
  needList(list, what);
  if (list.length < 2 || list.length > MOST_READINGS) {
    throw new QuantityError("quantity.readings", `${what}: ${list.length} readings; give 2 to ${MOST_READINGS}`);
  }
  const all = list.map((reading) => quantity(reading));
  const first = nodeOf(all[0]!);
  const values = all.map((q) => {
    const node = nodeOf(q);
    if (node.dimension !== first.dimension) {
      throw new QuantityError(
        "quantity.wrong-dimension",
        `${what}: ${first.dimension.name} and ${node.dimension.name} mixed`,
      );
    }
    return node.value;
  });
  const total = values.reduce(add);
  const mean = divide(total, rational(BigInt(values.length)));
  return { mean, deviations: values.map((v) => subtract(v, mean)), like: all[0]! };
}

const covarianceOfMeans = (a: Sample, b: Sample): Rational => {
  const n = BigInt(a.deviations.length);
  const cross = a.deviations.map((d, i) => multiply(d, b.deviations[i]!)).reduce(add);
  return divide(cross, rational(n * (n - 1n)));
};

/**
 * What the readings state for themselves: the tolerance or calibration of one instrument, which their scatter does not show
 * and their number does not lessen. Fully correlated uncertainties add up linearly, so that their mean has the mean of them
 * (JCGM 100:2008, 4.3.10 and 5.2.2, note 1).
 */
function withStated(mean: Quantity, list: readonly QuantityLike[], naming: Naming, what: string): Quantity {
  const own = list.flatMap((reading) => quantity(reading).to(mean.unit).standardUncertainty ?? []);
  if (own.every((u) => u.isZero())) return mean;
  const common = own.reduce((a, b) => a.plus(b)).div(list.length);
  const { unit } = mean;
  const stated = quantity(
    {
      value: 0,
      unit: unit === "°C" || unit === "°F" || unit === "K" ? differenceOf(unit) : unit,
      standardUncertainty: common,
    },
    { symbol: "δ(common)", label: `what all ${what} have in common, as stated with them` },
  );
  const read = mean.named({ symbol: `${naming.symbol ?? "mean"}(read)` });
  return read.plus(stated).named({ rule: "mean of the readings, with the uncertainty they state", ...naming });
}

/** Unit of a difference on a scale of temperature. */
const differenceOf = (unit: string): string => `Δ${unit}`;

/**
 * The mean of repeated readings, with the standard deviation of the mean as its uncertainty (Type A evaluation).
 *
 * An uncertainty that the readings state (`"10.01 ± 0.02 mL"`) is taken for what they have in common, such as the tolerance
 * of the instrument, and is added in full: averaging does not lessen it.
 *
 * @param list - 2 to 10 000 readings of one dimension
 * @returns the mean, u = √(s²/n + u²) with s the scatter, n - 1 degrees of freedom, and u the mean of what they state
 * @throws {QuantityError} `quantity.readings`, `quantity.wrong-dimension`
 * @source JCGM 100:2008, 4.2, 4.3.10 and 5.2.2 (note 1)
 * @category Uncertainty
 * @example
 * meanOfReadings(["10.01 mL", "10.03 mL", "10.02 mL"]).toString() // => "10.0200 ± 0.0058 mL"
 */
export function meanOfReadings<const L extends readonly QuantityLike[]>(
  list: L,
  naming: Naming = {},
): Quantity<DimensionIn<L[number]>> {
  needNaming(naming);
  const sample = sampleOf(list, naming.label ?? "readings");
  const mean = inputLeaf(sample.mean, sample.like, naming, {
    variance: covarianceOfMeans(sample, sample),
    distribution: "normal",
    degreesOfFreedom: list.length - 1,
  });
  return withStated(mean, list, naming, "readings");
}

/**
 * Means of several things that were read together, reading by reading, with the correlation between them kept.
 *
 * What the readings of a series state for themselves is added as in {@link meanOfReadings}; the series, read on different
 * instruments, share none of it.
 *
 * @param series - for each name its readings, all of one length; position k of each was read at the same moment
 * @returns for each name the mean with its uncertainty; results computed from several of them have their covariance right
 * @throws {QuantityError} `quantity.readings` for series of different length, `quantity.wrong-dimension`
 * @source JCGM 100:2008, 5.2.3 and H.2
 * @category Uncertainty
 * @example
 * const { a, b } = meansOfPairedReadings({ a: ["1.0 g", "1.2 g", "1.1 g"], b: ["2.0 g", "1.8 g", "1.9 g"] });
 * a!.plus(b!).standardUncertainty!.toString() // => "0"
 */
export function meansOfPairedReadings<const S extends Readonly<Record<string, readonly QuantityLike[]>>>(
  series: S,
): { -readonly [K in keyof S]: Quantity<DimensionIn<S[K][number]>> } {
  needRecord(series, "series of readings");
  const names = Object.keys(series);
  const samples = names.map((name) => sampleOf(series[name]!, name));
  const n = samples[0]?.deviations.length ?? 0;
  const odd = samples.findIndex((s) => s.deviations.length !== n);
  if (odd >= 0) {
    throw new QuantityError(
      "quantity.readings",
      `${names[odd]} has ${samples[odd]!.deviations.length} readings, ${names[0]} has ${n}`,
      {
        hint: "readings taken together come in series of one length",
      },
    );
  }
  const covariances = samples.map((a) => samples.map((b) => covarianceOfMeans(a, b)));
  const means = members(
    names,
    samples.map((s) => ({ value: s.mean, like: s.like })),
    { covariances, degreesOfFreedom: n - 1 },
  );
  const stated = names.map((name) => {
    const { symbol = name, label } = means[name]!;
    return [name, withStated(means[name]!, series[name]!, { symbol, label }, name)];
  });
  return Object.fromEntries(stated) as { -readonly [K in keyof S]: Quantity<DimensionIn<S[K][number]>> };
}

function members<K extends string>(
  names: readonly K[],
  inputs: readonly { value: Rational; like: Quantity }[],
  group: Group,
): Record<K, Quantity> {
  const entries = names.map((name, i) => {
    const { value, like } = inputs[i]!;
    const own = nodeOf(like);
    const naming = { symbol: like.symbol ?? name, label: like.label, source: like.source };
    const quantityOf = inputLeaf(value, like, naming, {
      variance: group.covariances[i]![i]!,
      distribution: own.leaf?.distribution ?? "normal",
      degreesOfFreedom: group.degreesOfFreedom ?? own.leaf?.degreesOfFreedom ?? Infinity,
      group,
      member: i,
    });
    return [name, quantityOf] as const;
  });
  return Object.fromEntries(entries) as Record<K, Quantity>;
}

/**
 * Inputs with declared correlation coefficients: two volumes from one pipette, ten resistors compared with one standard.
 *
 * @param inputs - for each name a quantity that carries an uncertainty
 * @param coefficients - triples of two names and their correlation coefficient in [-1, 1]; pairs not named are
 *   uncorrelated
 * @returns for each name a new input with the same value and uncertainty that knows its correlations
 * @throws {QuantityError} `quantity.correlation` for an unknown name, a coefficient out of range, or coefficients no set
 *   of measurements can have; `quantity.uncertainty` for an input without uncertainty
 * @source JCGM 100:2008, 5.2.2
 * @category Uncertainty
 * @example
 * const { a, b } = withCorrelation({ a: "10.0(1) mL", b: "10.0(1) mL" }, [["a", "b", 1]]);
 * a!.minus(b!).standardUncertainty!.toString() // => "0"
 */
export function withCorrelation<const I extends Readonly<Record<string, QuantityLike>>>(
  inputs: I,
  coefficients: readonly (readonly [keyof I & string, keyof I & string, NumberLike])[],
): { -readonly [K in keyof I]: Quantity<DimensionIn<I[K]>> } {
  needRecord(inputs, "correlated inputs");
  needList(coefficients, "coefficients");
  const names = Object.keys(inputs);
  const all = names.map((name) => quantity(inputs[name]!, {}));
  const u2 = all.map((q, i) => {
    const variance = uncertaintyOf(nodeOf(q));
    if (variance === undefined) throw new QuantityError("quantity.uncertainty", `${names[i]} carries no uncertainty`);
    return variance;
  });
  const r: Rational[][] = names.map((_, i) => names.map((_name, j) => (i === j ? rational(1n) : ZERO)));
  for (const triple of coefficients) {
    needList(triple, "each coefficient");
    const [a, b, value] = triple;
    const [i, j] = [names.indexOf(a), names.indexOf(b)];
    if (i < 0 || j < 0 || i === j)
      throw new QuantityError(
        "quantity.correlation",
        `no pair '${shownValue(a)}' and '${shownValue(b)}' among the inputs`,
      );
    const c = toRational(value);
    if (c.n > c.d || -c.n > c.d)
      throw new QuantityError("quantity.correlation", `r(${a}, ${b}) = ${shownValue(value)} is outside [-1, 1]`);
    r[i]![j] = c;
    r[j]![i] = c;
  }
  refuseImpossible(r);
  const covariances = r.map((row, i) =>
    row.map((c, j) => (i === j ? u2[i]! : multiply(c, fromDecimal(squareRootOf(multiply(u2[i]!, u2[j]!)))))),
  );
  return members(
    names,
    all.map((like) => ({ value: nodeOf(like).value, like })),
    { covariances, degreesOfFreedom: undefined },
  ) as { -readonly [K in keyof I]: Quantity<DimensionIn<I[K]>> };
}

/** A correlation matrix is positive semidefinite: exact elimination, pivot by pivot. */
function refuseImpossible(matrix: readonly (readonly Rational[])[]): void {
  const rows = matrix.map((row) => [...row]);
  rows.forEach((row, k) => {
    const pivot = row[k]!;
    const bad = pivot.n < 0n || (pivot.n === 0n && row.slice(k).some((x) => x.n !== 0n));
    if (bad)
      throw new QuantityError(
        "quantity.correlation",
        "these coefficients contradict each other: no measurements can have them",
      );
    if (pivot.n === 0n) return;
    for (let i = k + 1; i < rows.length; i++) {
      const factor = divide(rows[i]![k]!, pivot);
      rows[i] = rows[i]!.map((x, j) => subtract(x, multiply(factor, row[j]!)));
    }
  });
}

// Uncertainty as the guide sets it out: the budget of a result, its covariance with another, effective degrees of
// freedom and expanded uncertainty (JCGM 100:2008).

import type { Fields } from "../../foundation/argument";
import { printsItself, readable } from "../../foundation/readable";
import { QuantityError } from "../error";
import { formatQuantity } from "../text/format";
import type { Distribution } from "../text/read";
import { guard } from "../value/argument";
import { nodeOf, quantity, viewOf } from "../value/quantity";
import { add, divide, multiply, square, ZERO } from "../value/rational";
import { type Decimal, squareRootOf, toDecimal } from "../value/real";
import type { Quantity, QuantityLike } from "../value/types";
import { covarianceOf, grouped, uncertaintyOf, variances } from "./budget";
import { studentFactor } from "./student";

/** One independent input of a result and what it adds to the uncertainty. */
export interface BudgetLine {
  /** Label, symbol or, failing both, the value of the input. */
  readonly input: string;
  /** The input itself. */
  readonly quantity: Quantity;
  /** u(x) in the input's own unit. */
  readonly standardUncertainty: Decimal;
  /** c = d(result)/d(input), in result unit per input unit. */
  readonly sensitivity: Decimal;
  /** |c| u(x) in the result's unit. */
  readonly contribution: Decimal;
  /** Part of the combined variance, its covariances included; the shares of a budget sum to 1. */
  readonly share: number;
  /** The distribution that the input was said to have. */
  readonly distribution: Distribution | undefined;
  /** Degrees of freedom of the input; infinite where its uncertainty counts as exact. */
  readonly degreesOfFreedom: number;
  /** Key of the input's source. */
  readonly source: string | undefined;
}

/**
 * Where the uncertainty of a result comes from, the largest part first. An input used twice is one line; a constant
 * used by two results is the same line in both.
 *
 * @param like - any quantity
 * @returns one line for each input that carries an uncertainty; empty when none does
 * @throws {QuantityError} those of `quantity`, if text is given
 * @source JCGM 100:2008, 5.1.3, 5.2.2 and table H.1
 * @category Uncertainty
 * @example
 * const m = quantity("10.0 ± 0.3 g", { label: "jar" }).minus(quantity("4.0 ± 0.4 g", { label: "empty jar" }));
 * uncertaintyBudget(m).map((line) => line.input) // => ["empty jar", "jar"]
 */
export function uncertaintyBudget(like: QuantityLike): BudgetLine[] {
  const root = nodeOf(like);
  const parts = variances(root);
  const total = parts.map(({ part }) => part).reduce(add, ZERO);
  const lines = parts.map(({ input: { leaf, node, coefficient }, part }) => {
    const u = squareRootOf(divide(leaf.variance!, square(node.unit.factor)));
    const sensitivity = toDecimal(divide(multiply(coefficient, node.unit.factor), root.unit.factor));
    return {
      input: node.naming?.label ?? node.naming?.symbol ?? formatQuantity(node),
      quantity: viewOf(node),
      standardUncertainty: u,
      sensitivity,
      contribution: sensitivity.times(u).abs(),
      share: total.n === 0n ? 0 : toDecimal(divide(part, total)).toNumber(),
      distribution: leaf.distribution,
      degreesOfFreedom: leaf.group?.degreesOfFreedom ?? leaf.degreesOfFreedom,
      source: node.naming?.source,
    };
  });
  return lines
    .sort((a, b) => b.share - a.share)
    .map((line) =>
      printsItself(line, ({ input, quantity, share }) => `${(100 * share).toFixed(1)} %  ${input} = ${quantity}`),
    );
}

/**
 * Correlation coefficient of two results, through the inputs they share: 1 for a value with itself, 0 for strangers.
 *
 * @throws {QuantityError} `quantity.uncertainty` when one of them carries no uncertainty
 * @source JCGM 100:2008, F.1.2.3
 * @category Uncertainty
 * @example
 * const x = quantity("5.0(1) g");
 * correlationCoefficient(x, x.times(3)).toString() // => "1"
 */
export function correlationCoefficient(a: QuantityLike, b: QuantityLike): Decimal {
  const [x, y] = [nodeOf(a), nodeOf(b)];
  const [u2, v2] = [uncertaintyOf(x), uncertaintyOf(y)];
  if (u2 === undefined || v2 === undefined || u2.n === 0n || v2.n === 0n) {
    throw new QuantityError("quantity.uncertainty", "a value without uncertainty is correlated with nothing");
  }
  return toDecimal(covarianceOf(x, y)).div(squareRootOf(multiply(u2, v2)));
}

/** Expanded uncertainty with how it was obtained. */
export interface ExpandedUncertainty {
  /** U = k u, in the result's unit. */
  readonly expandedUncertainty: Decimal;
  /** Expanded over standard uncertainty, k. */
  readonly coverageFactor: number;
  /** In the unit of the quantity. */
  readonly standardUncertainty: Decimal;
  /** By the formula of Welch and Satterthwaite. */
  readonly effectiveDegreesOfFreedom: number;
  /** Coverage probability, 0.95 for 95 %. */
  readonly level: number;
}

/**
 * Effective degrees of freedom of a result by the Welch-Satterthwaite formula; inputs of one group count as one part.
 *
 * @returns a number, `Infinity` when every input is fully known
 * @throws {QuantityError} `quantity.uncertainty` when the result carries no uncertainty
 * @source JCGM 100:2008, G.4.1
 * @category Uncertainty
 * @example
 * effectiveDegreesOfFreedom(meanOfReadings(["5.00 g", "5.02 g", "5.01 g"])) // => 2
 */
export function effectiveDegreesOfFreedom(like: QuantityLike): number {
  const parts = variances(nodeOf(like));
  if (parts.length === 0) throw new QuantityError("quantity.uncertainty", "the value carries no uncertainty");
  const part = new Map(parts.map(({ input, part }) => [input, part]));
  const total = [...part.values()].reduce(add, ZERO);
  if (total.n === 0n) return Infinity;
  let sum = 0;
  for (const members of grouped([...part.keys()])) {
    const variance = members.map((m) => part.get(m)!).reduce(add, ZERO);
    const dof = members[0]!.leaf.group?.degreesOfFreedom ?? Math.min(...members.map((m) => m.leaf.degreesOfFreedom));
    sum += toDecimal(divide(variance, total)).toNumber() ** 2 / dof;
  }
  return sum === 0 ? Infinity : 1 / sum;
}

const LEVEL = { level: true } as const satisfies Fields<{ readonly level?: number }>;

/**
 * Expanded uncertainty: the half-width that holds the value with the stated level of confidence.
 *
 * @param like - a quantity with uncertainty
 * @param options - `level`, above 0 and below 1; 0.95 unless given
 * @returns U with coverage factor (Student's t for the effective degrees of freedom, rounded down to a whole number)
 * @throws {QuantityError} `quantity.uncertainty`, `quantity.out-of-range` for the level
 * @source JCGM 100:2008, G.3.4 and G.4.1
 * @category Uncertainty
 * @example
 * expandedUncertainty("12.50(20) g").expandedUncertainty.toFixed(2) // => "0.39"
 */
export function expandedUncertainty(
  like: QuantityLike,
  options: { readonly level?: number } = {},
): ExpandedUncertainty {
  guard.fields(options, LEVEL);
  const { level = 0.95 } = options;
  guard.number(level, "level");
  if (!(level > 0 && level < 1)) {
    throw new QuantityError("quantity.out-of-range", `a level of confidence lies between 0 and 1, not ${level}`);
  }
  const q = quantity(like);
  const dof = effectiveDegreesOfFreedom(q);
  const coverageFactor = studentFactor(level, dof === Infinity ? dof : Math.max(1, Math.floor(dof + 1e-9)));
  const standardUncertainty = q.standardUncertainty!;
  return readable({
    expandedUncertainty: standardUncertainty.times(coverageFactor),
    coverageFactor,
    standardUncertainty,
    effectiveDegreesOfFreedom: dof,
    level,
  });
}

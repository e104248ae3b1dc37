// The inputs of the graph: what a person or a table states, read into a node without operands.
import { type Fields, kindOf } from "../../foundation/argument";
import { shownValue } from "../../foundation/error";
import { QuantityError } from "../error";
import { type Distribution, readQuantity, varianceOf } from "../text/read";
import { DISTRIBUTIONS, guard } from "./argument";
import type { Leaf, Naming, Node } from "./graph";
import { checkRecord } from "./json";
import { add, multiply, type Rational, square } from "./rational";
import { type NumberLike, toRational } from "./read-number";
import type { InputNaming, Measured } from "./types";
import { readUnit, type Unit } from "./unit";

const EXACT_NUMBER: Leaf = { variance: undefined, distribution: undefined, degreesOfFreedom: Infinity };

const MEASURED = {
  value: true,
  unit: true,
  standardUncertainty: true,
  halfWidth: true,
  readability: true,
  distribution: true,
  degreesOfFreedom: true,
} as const satisfies Fields<Measured>;

export function notAQuantity(value: unknown): QuantityError {
  return new QuantityError("quantity.not-a-quantity", `${kindOf(value)} is not a quantity`, {
    hint: 'give text such as "12.5 g", a Quantity, or { value, unit }',
  });
}

export function words({ symbol, label, rule, source, assumption }: InputNaming): Naming | undefined {
  if ((symbol ?? label ?? rule ?? source ?? assumption) === undefined) return undefined;
  return { symbol, label, rule, source, assumption };
}

export function fromText(text: string, naming: InputNaming): Node {
  const { value, unit, variance, distribution, decimals } = readQuantity(text);
  const stated = naming.distribution ?? distribution;
  const restated = naming.distribution !== undefined && variance !== undefined && distribution === "normal";
  const spread = restated ? multiply(variance, varianceOf({ n: 1n, d: 1n }, naming.distribution!)) : variance;
  return leaf(value, unit, spread, stated, naming, decimals);
}

function leaf(
  value: Rational,
  unit: Unit,
  variance: Rational | undefined,
  distribution: Distribution | undefined,
  naming: InputNaming,
  decimals?: number,
  degreesOfFreedom = naming.degreesOfFreedom,
): Node {
  const dof = degreesOfFreedom ?? Infinity;
  if (typeof dof !== "number" || !(dof > 0)) {
    throw new QuantityError("quantity.uncertainty", `degrees of freedom must be positive, not ${shownValue(dof)}`);
  }
  return {
    value: add(multiply(value, unit.factor), unit.offset),
    dimension: unit.dimension,
    unit,
    naming: words(naming),
    leaf:
      variance === undefined && degreesOfFreedom === undefined
        ? { ...EXACT_NUMBER }
        : {
            variance: variance === undefined ? undefined : multiply(variance, square(unit.factor)),
            distribution,
            degreesOfFreedom: dof,
          },
    decimals,
    operation: undefined,
    operands: [],
  };
}

export function fromMeasured(m: Measured, naming: InputNaming): Node {
  if (typeof m.unit !== "string") throw notAQuantity(m);
  guard.fields(m, MEASURED, "the quantity");
  if (m.distribution !== undefined) guard.choice(m.distribution, "distribution", DISTRIBUTIONS);
  const value = toRational(m.value);
  const parts: Rational[] = [];
  const nonNegative = (x: NumberLike): Rational => {
    const r = toRational(x);
    if (r.n < 0n) throw new QuantityError("quantity.uncertainty", `an uncertainty cannot be negative: ${String(x)}`);
    return r;
  };
  if (m.standardUncertainty !== undefined) parts.push(square(nonNegative(m.standardUncertainty)));
  if (m.halfWidth !== undefined)
    parts.push(varianceOf(nonNegative(m.halfWidth), m.distribution ?? naming.distribution ?? "rectangular"));
  if (m.readability !== undefined) {
    const { n, d } = nonNegative(m.readability);
    parts.push(varianceOf({ n, d: d * 2n }, "rectangular"));
  }
  const variance = parts.length === 0 ? undefined : parts.reduce(add);
  const distribution =
    parts.length === 0
      ? undefined
      : (m.distribution ?? naming.distribution ?? (m.standardUncertainty === undefined ? "rectangular" : "normal"));
  const dof = m.degreesOfFreedom ?? naming.degreesOfFreedom;
  return leaf(value, readUnit(m.unit), variance, distribution, naming, undefined, dof);
}

/** The input that `toJSON` wrote. */
export function fromRecord(data: unknown): Node {
  const record = checkRecord(data);
  const u = record.standardUncertainty;
  const { symbol, label, source, degreesOfFreedom, distribution, decimals } = record;
  const variance = u === undefined ? undefined : square(toRational(u));
  return leaf(
    toRational(record.value),
    readUnit(record.unit),
    variance,
    distribution,
    { symbol, label, source, degreesOfFreedom },
    decimals,
  );
}

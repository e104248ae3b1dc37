// Functions of quantities: sums, choices, roots, logarithms, and whatever the caller brings with its derivatives.

import type { Fields } from "../../foundation/argument";
import { once } from "../../foundation/memo";
import { QuantityError } from "../error";
import { withArticle } from "../text/meant";
import type { Unchecked, UnitDimension } from "../text/text";
import { guard, needList, needNaming } from "./argument";
import { dimension, isNumber, KELVIN } from "./dimension";
import { choice, combination, evaluated, type Naming, type Operation } from "./graph";
import { make, nodeOf, operation, valueIn } from "./quantity";
import { add, compare, divide, multiply, ONE, ZERO } from "./rational";
import { type NumberLike, toRational } from "./read-number";
import { type Decimal, decimal, fromDecimal, squareRootOf, toDecimal } from "./real";
import { commonDecimals, mismatch, sumDimension } from "./result";
import type { DimensionIn, Quantity, QuantityLike } from "./types";
import { readUnit, usualUnit } from "./unit";

/**
 * Sum of quantities of one dimension.
 * @throws {QuantityError} `quantity.wrong-dimension`; `quantity.readings` for an empty list, which has no unit
 * @category Quantities
 * @example
 * sum(["1.0 g", "250 mg"]).toString() // => "1.25 g"
 */
export function sum<const L extends readonly QuantityLike[]>(
  list: L,
  naming?: Naming,
): Quantity<DimensionIn<L[number]>> {
  needList(list, "sum");
  if (naming !== undefined) needNaming(naming);
  if (list.length === 0) throw new QuantityError("quantity.readings", "the sum of an empty list has no unit");
  const nodes = list.map(nodeOf);
  const first = nodes[0]!;
  for (const { dimension } of nodes)
    if (dimension !== first.dimension) throw mismatch(first.dimension, dimension, "add");
  if (first.dimension.name === "temperature" && nodes.length > 1)
    sumDimension(first.dimension, first.dimension, "plus");
  return operation(
    nodes.reduce((total, { value }) => add(total, value), ZERO),
    first.dimension,
    first.unit,
    combination(nodes.map(() => ONE)),
    nodes,
    naming && { ...naming },
    commonDecimals(first.unit, nodes),
  );
}

/**
 * A figure that was computed elsewhere, such as the answer of a system of equations: its inputs and derivatives may be
 * worked out only when somebody asks for its uncertainty or its working.
 *
 * @param later - the inputs and d(figure)/d(input), both in their own units
 * @internal
 */
export function solvedFigure(
  value: NumberLike,
  unit: string,
  name: string,
  naming: Naming,
  later: () => readonly { readonly input: Quantity; readonly partial: number }[],
): Quantity {
  const u = readUnit(unit);
  const inputs = once(later);
  const lazy: Operation = {
    partials: () =>
      inputs().map(({ input, partial }) => divide(multiply(toRational(partial), u.factor), nodeOf(input).unit.factor)),
    write: () => ({ text: `${name} of ${inputs().length} inputs`, binds: 1 }),
  };
  const si = add(multiply(toRational(value), u.factor), u.offset);
  return operation(si, u.dimension, u, lazy, () => inputs().map(({ input }) => nodeOf(input)), naming);
}

function chosen(list: readonly QuantityLike[], word: "min" | "max", naming?: Naming): Quantity {
  needList(list, word);
  if (naming !== undefined) needNaming(naming);
  if (list.length === 0) throw new QuantityError("quantity.readings", `the ${word} of an empty list`);
  const nodes = list.map(nodeOf);
  let at = 0;
  nodes.forEach((node, i) => {
    if (node.dimension !== nodes[0]!.dimension) throw mismatch(nodes[0]!.dimension, node.dimension, "compare");
    const order = compare(node.value, nodes[at]!.value);
    if (word === "min" ? order < 0 : order > 0) at = i;
  });
  const { value, dimension, unit, decimals } = nodes[at]!;
  return make({
    value,
    dimension,
    unit,
    naming: naming && { ...naming },
    leaf: undefined,
    decimals,
    operation: choice(word, at),
    operands: nodes,
  });
}

/**
 * The smallest of several quantities; its uncertainty is that of the one chosen.
 * @throws {QuantityError} `quantity.wrong-dimension`, `quantity.readings` for an empty list
 * @category Quantities
 * @example
 * minimum(["2.0 mol", "900 mmol"]).toString() // => "900 mmol"
 */
export const minimum = <const L extends readonly QuantityLike[]>(
  list: L,
  naming?: Naming,
): Quantity<DimensionIn<L[number]>> => chosen(list, "min", naming);

/**
 * The largest of several quantities; its uncertainty is that of the one chosen.
 * @throws {QuantityError} `quantity.wrong-dimension`, `quantity.readings` for an empty list
 * @category Quantities
 * @example
 * maximum(["2.0 mol", "900 mmol"]).toString() // => "2.0 mol"
 */
export const maximum = <const L extends readonly QuantityLike[]>(
  list: L,
  naming?: Naming,
): Quantity<DimensionIn<L[number]>> => chosen(list, "max", naming);

const SPEC = { name: true, unit: true, value: true, partials: true } as const satisfies Fields<
  Parameters<typeof applyFunction>[1]
>;

/**
 * A function that is not built in - a sine, a fitted curve - applied to quantities, with its derivatives.
 *
 * @param operands - the quantities it is computed from
 * @param spec - `name` for the working, `unit` of the result, `value` and `partials` (d result / d operand, in order)
 *   for the operands' values in their own units
 * @returns the result; its uncertainty follows from the derivatives
 * @throws {QuantityError} `quantity.not-a-number` if a value or derivative is not finite
 * @category Quantities
 * @example
 * applyFunction(["0.5 rad"], { name: "sin", unit: "", value: ([x]) => Math.sin(x!.toNumber()), partials: ([x]) => [Math.cos(x!.toNumber())] }).format({ significant: 4 }) // => "0.4794"
 */
export function applyFunction<const U extends string>(
  operands: readonly QuantityLike[],
  spec: {
    readonly name: string;
    readonly unit: U;
    readonly value: (values: readonly Decimal[]) => NumberLike;
    readonly partials: (values: readonly Decimal[]) => readonly NumberLike[];
  },
  naming?: Naming,
): Quantity<UnitDimension<U>> {
  needList(operands, "apply");
  guard.fields(spec, SPEC, "the function to apply");
  if (naming !== undefined) needNaming(naming);
  guard.text(spec.name, "name");
  if (typeof spec.value !== "function" || typeof spec.partials !== "function" || typeof spec.unit !== "string") {
    throw new QuantityError("quantity.not-a-quantity", "apply needs { name, unit, value, partials }");
  }
  const nodes = operands.map(nodeOf);
  const values = nodes.map((node) => valueIn(node.value, node.unit));
  const unit = readUnit(spec.unit);
  const si = add(multiply(toRational(spec.value(values)), unit.factor), unit.offset);
  const derivatives = spec.partials(values);
  needList(derivatives, "partials");
  if (derivatives.length !== nodes.length) {
    throw new QuantityError(
      "quantity.not-a-number",
      `${nodes.length} operands need as many derivatives, not ${derivatives.length}`,
    );
  }
  const partials = derivatives.map((p, i) => divide(multiply(toRational(p), unit.factor), nodes[i]!.unit.factor));
  return operation(si, unit.dimension, unit, evaluated(spec.name, partials), nodes, naming && { ...naming });
}

/** A function of a pure number, to 40 digits. */
function numberFunction(
  like: QuantityLike,
  name: string,
  f: (x: Decimal) => Decimal,
  derivative: (x: Decimal, y: Decimal) => Decimal,
): Quantity {
  const node = nodeOf(like);
  if (!isNumber(node.dimension)) {
    throw new QuantityError(
      "quantity.wrong-dimension",
      `${name} needs a pure number, not ${withArticle(node.dimension.name)}`,
      {
        details: { expected: "number", received: node.dimension.name },
      },
    );
  }
  const x = toDecimal(node.value);
  const y = f(x);
  if (!y.isFinite()) throw new QuantityError("quantity.out-of-range", `${name}(${x}) is not a finite number`);
  const unit = readUnit("");
  return operation(fromDecimal(y), unit.dimension, unit, evaluated(name, [fromDecimal(derivative(x, y))]), [node]);
}

/**
 * Natural logarithm of a pure number, to 40 digits.
 * @throws {QuantityError} `quantity.wrong-dimension`, `quantity.out-of-range` for zero and below
 * @category Quantities
 * @example
 * naturalLogarithm("10").format({ significant: 5 }) // => "2.3026"
 */
export function naturalLogarithm(x: QuantityLike): Quantity<"number"> {
  return numberFunction(
    x,
    "ln",
    (v) => positive(v, "ln").ln(),
    (v) => decimal("1").div(v),
  );
}

/**
 * Decimal logarithm of a pure number, to 40 digits.
 * @throws {QuantityError} `quantity.wrong-dimension`, `quantity.out-of-range` for zero and below
 * @category Quantities
 * @example
 * decimalLogarithm("1000").toString() // => "3"
 */
export function decimalLogarithm(x: QuantityLike): Quantity<"number"> {
  return numberFunction(
    x,
    "log10",
    (v) => positive(v, "log10").log(10),
    (v) => decimal("1").div(v.times(decimal("10").ln())),
  );
}

/**
 * e to the power of a pure number, to 40 digits; the exponent may run from -500 to 500.
 * @throws {QuantityError} `quantity.wrong-dimension`, `quantity.out-of-range`
 * @category Quantities
 * @example
 * exponential("1").format({ significant: 6 }) // => "2.71828"
 */
export function exponential(x: QuantityLike): Quantity<"number"> {
  return numberFunction(
    x,
    "exp",
    (v) => {
      if (v.abs().greaterThan(500))
        throw new QuantityError("quantity.out-of-range", `exp(${v}): the exponent may run from -500 to 500`);
      return v.exp();
    },
    (_, y) => y,
  );
}

const positive = (v: Decimal, name: string): Decimal => {
  if (v.lessThanOrEqualTo(0))
    throw new QuantityError("quantity.out-of-range", `${name}(${v}): the argument must be positive`);
  return v;
};

/** The dimension of a square root: of a number a number, of an area a length; of another the run says it. */
export type RootOf<D extends string> = [D] extends ["number" | "mass fraction" | "volume fraction" | "mole fraction"]
  ? "number"
  : [D] extends ["area"]
    ? "length"
    : Unchecked;

/**
 * Square root, to 40 digits; the dimension must have even exponents.
 * @throws {QuantityError} `quantity.out-of-range` for a negative value, `quantity.wrong-dimension`
 * @category Quantities
 * @example
 * squareRoot("2").format({ significant: 8 }) // => "1.4142136"
 */
export function squareRoot<const Q extends QuantityLike>(like: Q): Quantity<RootOf<DimensionIn<Q>>> {
  const node = nodeOf(like);
  if (node.value.n < 0n) throw new QuantityError("quantity.out-of-range", "the square root of a negative value");
  if (node.dimension.exponents.some((e) => e % 2 !== 0) || node.dimension.currencies.length > 0) {
    throw new QuantityError(
      "quantity.wrong-dimension",
      `the square root of ${withArticle(node.dimension.name)} has no unit`,
    );
  }
  const exponents = node.dimension.exponents.map((e) => e / 2);
  const halved = dimension(exponents, [], exponents.join() === KELVIN ? "difference" : "");
  const root = squareRootOf(node.value);
  const derivative = root.isZero() ? ZERO : fromDecimal(decimal("0.5").div(root));
  return operation(fromDecimal(root), halved, usualUnit(halved), evaluated("sqrt", [derivative]), [node]);
}

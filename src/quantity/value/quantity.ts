// The value of the library: a magnitude with a unit, exact inside, that remembers what it was made from. Immutable and
// branded by a symbol of the global registry, so that values of two loaded copies still understand each other.
import { type Fields, kindOf } from "../../foundation/argument";
import { attempt, type ErrorWithCode, type Result, shownValue } from "../../foundation/error";
import { nearestNumber } from "../../foundation/rational";
import { INSPECT, shownAs } from "../../foundation/shown";
import { QuantityError, type QuantityErrorCode } from "../error";
import { withDecimalComma } from "../text/decimal-sign";
import { formatQuantity } from "../text/format";
import type { FormatOptions } from "../text/format-options";
import { hintFor, withArticle, withUnits } from "../text/meant";
import { type Distribution, readQuantity, varianceOf } from "../text/read";
import type { DimensionOf } from "../text/text";
import { uncertaintyOf } from "../uncertainty/budget";
import { DISTRIBUTIONS, guard, needInputNaming, needNaming } from "./argument";
import { type Dimension, dimensionPower, isNumber, ownDimension, product, quotient, sameExponents } from "./dimension";
import {
  DIFFERENCE,
  type Leaf,
  type Naming,
  NEGATION,
  type Node,
  type Operation,
  PRODUCT,
  powerOf,
  QUOTIENT,
  SAME,
  SUM,
  scaling,
} from "./graph";
import { checkRecord, type QuantityRecord, toRecord } from "./json";
import { add, compare, divide, multiply, negate, power, type Rational, rational, square, subtract } from "./rational";
import { type NumberLike, toRational } from "./read-number";
import { type Decimal, squareRootOf, toDecimal } from "./real";
import { BRAND, type InputNaming, type Measured, type Quantity, type QuantityLike } from "./types";
import { readUnit, type Unit, usualUnit } from "./unit";

const EXACT_NUMBER: Leaf = { variance: undefined, distribution: undefined, degreesOfFreedom: Infinity };
const MAX_POWER = 12;
const NO_NAMING: InputNaming = {};

const MEASURED = {
  value: true,
  unit: true,
  standardUncertainty: true,
  halfWidth: true,
  readability: true,
  distribution: true,
  degreesOfFreedom: true,
} as const satisfies Fields<Measured>;

class Value implements Quantity {
  /** What consoles and `toString` of an object call it; the class itself has a name of its own to stay off the interface. */
  static get name(): string {
    return "Quantity";
  }

  // Private and read through the brand: nothing of the graph lies open on the value, and freezing deep would cost as much
  // as the arithmetic.
  readonly #node: Node;

  constructor(node: Node) {
    this.#node = node;
    Object.freeze(this);
  }

  get [BRAND](): Node {
    return this.#node;
  }

  get [Symbol.toStringTag](): string {
    return "Quantity";
  }

  [INSPECT](): string {
    return shownAs("Quantity", this);
  }

  get value(): Decimal {
    const { value, unit } = this.#node;
    return valueIn(value, unit);
  }
  get unit(): string {
    return this.#node.unit.symbol;
  }
  get dimension(): string {
    return this.#node.dimension.name;
  }
  get symbol(): string | undefined {
    return this.#node.naming?.symbol;
  }
  get label(): string | undefined {
    return this.#node.naming?.label;
  }
  get source(): string | undefined {
    return this.#node.naming?.source;
  }
  get standardUncertainty(): Decimal | undefined {
    const variance = uncertaintyOf(this.#node);
    return variance === undefined ? undefined : squareRootOf(divide(variance, square(this.#node.unit.factor)));
  }

  in(unit: string): Decimal {
    return valueIn(this.#node.value, this.matching(unit));
  }

  to(unit: string): Quantity {
    const { value, dimension, naming, leaf, operation, operands } = this.#node;
    const shown = this.matching(unit);
    return make({ value, dimension, unit: shown, naming, leaf, decimals: undefined, operation, operands });
  }

  private matching(symbol: string): Unit {
    const unit = readUnit(symbol);
    const own = this.#node.dimension;
    if (!meets(unit.dimension, own)) {
      throw new QuantityError(
        "quantity.wrong-dimension",
        `${own.name} cannot be given in '${symbol}' (${unit.dimension.name})`,
        {
          input: symbol,
          position: 0,
          details: { expected: own.name, received: unit.dimension.name },
          hint: hintFor(unit.dimension.name, this.#node.unit.symbol, String(this)),
        },
      );
    }
    return unit;
  }

  plus(other: QuantityLike): Quantity {
    const [a, b] = [this.#node, nodeOf(other)];
    const dimension = sumDimension(a.dimension, b.dimension, "plus");
    const unit = a.dimension === dimension ? a.unit : b.unit;
    return operation(add(a.value, b.value), dimension, unit, SUM, [a, b], undefined, commonDecimals(unit, [a, b]));
  }

  minus(other: QuantityLike): Quantity {
    const [a, b] = [this.#node, nodeOf(other)];
    const dimension = sumDimension(a.dimension, b.dimension, "minus");
    const unit = dimension === a.dimension ? a.unit : usualUnit(dimension);
    const decimals = commonDecimals(unit, [a, b]);
    return operation(subtract(a.value, b.value), dimension, unit, DIFFERENCE, [a, b], undefined, decimals);
  }

  times(other: QuantityLike | NumberLike): Quantity {
    const a = this.#node;
    const factor = exactNumber(other);
    if (factor !== undefined)
      return operation(multiply(a.value, factor), a.dimension, plainUnit(a), scaling(factor), [a]);
    const b = nodeOf(other as QuantityLike);
    const dimension = product(a.dimension, b.dimension);
    return operation(multiply(a.value, b.value), dimension, resultUnit(dimension, a, b), PRODUCT, [a, b]);
  }

  dividedBy(other: QuantityLike | NumberLike): Quantity {
    const a = this.#node;
    const factor = exactNumber(other);
    if (factor !== undefined) {
      if (factor.n === 0n) throw divisionByZero();
      const inverse = rational(factor.d, factor.n);
      return operation(multiply(a.value, inverse), a.dimension, plainUnit(a), scaling(inverse), [a]);
    }
    const b = nodeOf(other as QuantityLike);
    if (b.value.n === 0n) throw divisionByZero(b.naming?.label ?? b.naming?.symbol);
    const dimension = quotient(a.dimension, b.dimension);
    const unit = dimension === b.dimension ? plainUnit(b) : resultUnit(dimension, a, b);
    return operation(divide(a.value, b.value), dimension, unit, QUOTIENT, [a, b]);
  }

  negated(): Quantity {
    const a = this.#node;
    return operation(negate(a.value), a.dimension, plainUnit(a), NEGATION, [a]);
  }

  toThePower(exponent: number): Quantity {
    const a = this.#node;
    if (!Number.isInteger(exponent) || Math.abs(exponent) > MAX_POWER) {
      throw new QuantityError(
        "quantity.out-of-range",
        `a power must be a whole number from -${MAX_POWER} to ${MAX_POWER}, not ${exponent}`,
      );
    }
    if (exponent < 0 && a.value.n === 0n) throw divisionByZero(a.naming?.label);
    const dimension = dimensionPower(a.dimension, exponent);
    return operation(power(a.value, exponent), dimension, usualUnit(dimension), powerOf(exponent), [a]);
  }

  compare(other: QuantityLike): -1 | 0 | 1 {
    const [a, b] = [this.#node, nodeOf(other)];
    if (!meets(a.dimension, b.dimension)) throw mismatch(a.dimension, b.dimension, "compare");
    return compare(a.value, b.value);
  }

  equals(other: QuantityLike): boolean {
    const [a, b] = [this.#node, nodeOf(other)];
    if (a.dimension !== b.dimension || compare(a.value, b.value) !== 0) return false;
    const [u, v] = [uncertaintyOf(a), uncertaintyOf(b)];
    if (u === undefined || v === undefined) return u === v;
    return squareRootOf(u).toSignificantDigits(30).equals(squareRootOf(v).toSignificantDigits(30));
  }

  isPositive(): boolean {
    return this.#node.value.n > 0n;
  }

  isZero(): boolean {
    return this.#node.value.n === 0n;
  }

  named(naming: Naming): Quantity {
    needNaming(naming);
    const { value, dimension, unit, naming: before, leaf, decimals, operation, operands } = this.#node;
    const words = { ...before, ...naming };
    // A leaf keeps its identity and only gains words; a named result becomes a step of its own if it had a name already.
    if (leaf === undefined && before?.symbol !== undefined && naming.symbol !== undefined) {
      return make({ value, dimension, unit, naming: words, leaf, decimals, operation: SAME, operands: [this.#node] });
    }
    return make({ value, dimension, unit, naming: words, leaf, decimals, operation, operands });
  }

  format(options?: FormatOptions): string {
    return formatQuantity(this.#node, options);
  }

  toString(): string {
    return formatQuantity(this.#node);
  }

  toJSON(): QuantityRecord {
    return toRecord(this.#node);
  }

  toNumber(unit?: string): number {
    return nearestNumber(inUnit(this.#node.value, unit === undefined ? this.#node.unit : this.matching(unit)));
  }

  valueOf(): never {
    throw new QuantityError("quantity.not-a-number", `${this} has a unit: it cannot stand for a number`, {
      hint: "use compare() for < and >, plus() or minus() for + and -, toNumber(unit) for a plain number",
    });
  }
}

const inUnit = (value: Rational, unit: Unit): Rational => divide(subtract(value, unit.offset), unit.factor);

/** @internal */
export const valueIn = (value: Rational, unit: Unit): Decimal => toDecimal(inUnit(value, unit));

const divisionByZero = (what?: string): QuantityError =>
  new QuantityError("quantity.division-by-zero", `division by zero${what === undefined ? "" : `: ${what} is 0`}`);

/** @internal */
export const mismatch = (a: Dimension, b: Dimension, verb: string): QuantityError =>
  new QuantityError("quantity.wrong-dimension", `cannot ${verb} ${a.name} and ${b.name}`, {
    details: { expected: a.name, received: b.name },
  });

/** May the two be compared and shown as each other? A plain number may stand for any fraction; two kinds never meet. */
const meets = (a: Dimension, b: Dimension): boolean =>
  a === b || (isNumber(a) && isNumber(b) && (a.kind === "" || b.kind === ""));

const isTemperature = (d: Dimension): boolean => d.name === "temperature";

/** Dimension of a sum or difference, with the rules for temperatures and fraction kinds. */
export function sumDimension(a: Dimension, b: Dimension, verb: "plus" | "minus"): Dimension {
  if (a === b) {
    if (!isTemperature(a)) return a;
    if (verb === "minus") return readUnit("ΔK").dimension;
    throw new QuantityError("quantity.wrong-dimension", "two temperatures cannot be added", {
      hint: "add a temperature difference, such as 5 Δ°C",
    });
  }
  if (sameExponents(a, b)) {
    if (isTemperature(a) && b.kind === "difference") return a;
    if (verb === "plus" && isTemperature(b) && a.kind === "difference") return b;
    if (isNumber(a) && (a.kind === "" || b.kind === "")) return a.kind === "" ? b : a;
  }
  throw mismatch(a, b, verb === "plus" ? "add" : "subtract");
}

/** The exact number an operand stands for, when it is a bare number and not a quantity. */
function exactNumber(value: QuantityLike | NumberLike): Rational | undefined {
  if (typeof value === "number" || typeof value === "bigint") return toRational(value);
  if (typeof value === "string")
    return /^[+-]?[\d.]+(?:[eE][+-]?\d+)?(?: *\/ *\d+)?$/.test(value) ? toRational(value) : undefined;
  if (value === null || typeof value !== "object") throw notAQuantity(value);
  return isQuantity(value) || "unit" in value ? undefined : toRational(value as NumberLike);
}

/** Unit of a scaled value: a multiple of a temperature is counted from absolute zero, so it is shown in kelvin. */
const plainUnit = (a: Node): Unit => (a.unit.offset.n === 0n ? a.unit : readUnit("K"));

/** Two figures written to as many decimals of one unit have a sum and a difference to as many: 24.40 - 0.10 is 24.30. */
export function commonDecimals(unit: Unit, nodes: readonly Node[]): number | undefined {
  const shared = nodes[0]?.decimals;
  const same = (node: Node): boolean =>
    node.decimals === shared && node.unit === unit && node.leaf?.variance === undefined;
  return unit.offset.n === 0n && nodes.every(same) ? shared : undefined;
}

/**
 * Unit to show a product or quotient in: the operand's own when the other is a pure number, the divisor's where it is what
 * results (10 mL × 25 mL / 100 mL), else the usual one.
 */
function resultUnit(dimension: Dimension, a: Node, b: Node): Unit {
  if (dimension === a.dimension && isNumber(b.dimension)) return plainUnit(a);
  if (dimension === b.dimension && isNumber(a.dimension)) return plainUnit(b);
  return usualUnit(dimension);
}

export function make(node: Node): Quantity {
  return new Value(node);
}

export function operation(
  value: Rational,
  dimension: Dimension,
  unit: Unit,
  op: Operation,
  operands: Node["operands"],
  naming?: Naming,
  decimals?: number,
): Quantity {
  return make({ value, dimension, unit, naming, leaf: undefined, decimals, operation: op, operands });
}

/** A node with dimensions of this copy of the library, which compares them by identity; leaves and operands stay. */
function ownNode(node: Node): Node {
  const dimension = ownDimension(node.dimension);
  if (dimension === node.dimension) return node;
  // By name: what a node works out when asked stands on its class.
  const { value, unit, naming, leaf, decimals, operation, operands } = node;
  return { value, dimension, unit: { ...unit, dimension }, naming, leaf, decimals, operation, operands };
}

/** The graph node behind a quantity of any loaded copy. */
export function nodeOf(like: QuantityLike): Node {
  return isQuantity(like) ? ownNode(like[BRAND]) : quantity(like)[BRAND];
}

/**
 * Is this a quantity, of this or another loaded copy of the library?
 *
 * @category Quantities
 * @example
 * isQuantity(quantity("1 g")) // => true
 */
export function isQuantity(value: unknown): value is Quantity {
  return typeof value === "object" && value !== null && (value as { [BRAND]?: Node })[BRAND] !== undefined;
}

function notAQuantity(value: unknown): QuantityError {
  return new QuantityError("quantity.not-a-quantity", `${kindOf(value)} is not a quantity`, {
    hint: 'give text such as "12.5 g", a Quantity, or { value, unit }',
  });
}

function words({ symbol, label, rule, source, assumption }: InputNaming): Naming | undefined {
  if ((symbol ?? label ?? rule ?? source ?? assumption) === undefined) return undefined;
  return { symbol, label, rule, source, assumption };
}

function fromText(text: string, naming: InputNaming): Quantity {
  const { value, unit, variance, distribution, decimals } = readQuantity(text);
  const stated = naming.distribution ?? distribution;
  const retold = naming.distribution !== undefined && variance !== undefined && distribution === "normal";
  const spread = retold ? multiply(variance, varianceOf({ n: 1n, d: 1n }, naming.distribution!)) : variance;
  return leaf(value, unit, spread, stated, naming, decimals);
}

function leaf(
  value: Rational,
  unit: Unit,
  variance: Rational | undefined,
  distribution: Distribution | undefined,
  naming: InputNaming,
  decimals?: number,
): Quantity {
  const dof = naming.degreesOfFreedom ?? Infinity;
  if (typeof dof !== "number" || !(dof > 0)) {
    throw new QuantityError("quantity.uncertainty", `degrees of freedom must be positive, not ${shownValue(dof)}`);
  }
  return make({
    value: add(multiply(value, unit.factor), unit.offset),
    dimension: unit.dimension,
    unit,
    naming: words(naming),
    leaf:
      variance === undefined && naming.degreesOfFreedom === undefined
        ? { ...EXACT_NUMBER }
        : {
            variance: variance === undefined ? undefined : multiply(variance, square(unit.factor)),
            distribution,
            degreesOfFreedom: dof,
          },
    decimals,
    operation: undefined,
    operands: [],
  });
}

function fromMeasured(m: Measured, naming: InputNaming): Quantity {
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
  return leaf(value, readUnit(m.unit), variance, distribution, {
    ...naming,
    degreesOfFreedom: m.degreesOfFreedom ?? naming.degreesOfFreedom,
  });
}

/**
 * Read a quantity: text such as `"48.20 g"`, `"12.5(2) g"`, `"25 °C"`, a `Quantity`, or a value with its unit apart.
 *
 * @param like - text, quantity or `{ value, unit, standardUncertainty? }`
 * @param naming - symbol, label, source and distribution of the input, kept for `explain` and the budget; the decimal
 *   sign of the text
 * @returns an immutable quantity; text that states an uncertainty gives one that carries it
 * @throws {QuantityError} `quantity.not-a-number`, `quantity.unknown-unit`, `quantity.ambiguous-unit`,
 *   `quantity.decimal-comma`, `quantity.look-alike`, `quantity.not-a-quantity`, `quantity.out-of-range`, `quantity.too-long`
 * @source JCGM 100:2008 (GUM), 7.2.2 for the ways of stating an uncertainty
 * @category Quantities
 * @example
 * quantity("12.5(2) g").standardUncertainty?.toString() // => "0.2"
 * quantity("12,5 g" as string, { decimalSign: "," }).toString() // => "12.5 g"
 */
export function quantity<const T extends string>(like: T, naming?: InputNaming): Quantity<DimensionOf<T>>;
export function quantity<D extends string>(like: Quantity<D>, naming?: InputNaming): Quantity<D>;
export function quantity(like: QuantityLike, naming?: InputNaming): Quantity;
export function quantity(like: QuantityLike, naming: InputNaming = NO_NAMING): Quantity {
  if (naming !== NO_NAMING) needInputNaming(naming);
  if (typeof like === "string") {
    if (naming.decimalSign === ",") return withDecimalComma(like, (text) => fromText(text, naming));
    return fromText(like, naming);
  }
  if (isQuantity(like)) {
    const node = ownNode(like[BRAND]);
    const own = node === like[BRAND] ? like : make(node);
    return words(naming) === undefined ? own : own.named(words(naming)!);
  }
  if (typeof like !== "object" || like === null) throw notAQuantity(like);
  if ((like as { readonly type?: unknown }).type === "quantity") return quantity(quantityFromJSON(like), naming);
  return fromMeasured(like, naming);
}

/**
 * As `quantity`, but gives the refusal back as data.
 *
 * @category Quantities
 * @example
 * tryQuantity("12.5 g").ok // => true
 */
export function tryQuantity(
  like: QuantityLike,
  naming?: InputNaming,
): Result<Quantity, ErrorWithCode<QuantityErrorCode>> {
  return attempt(() => quantity(like, naming));
}

/** `assay must be a mass fraction`; `expected a mass` where the argument is called so. */
const asked = (argument: string, dimension: string): string =>
  `${argument === dimension ? "expected" : `${argument} must be`} ${withArticle(dimension)}`;

/**
 * Read an argument of a known dimension, refusing any other with the argument's name.
 *
 * @internal
 */
export function expectDimension<D extends string>(
  like: QuantityLike,
  dimension: D,
  argument: string,
  naming?: InputNaming,
): Quantity<D> {
  if (typeof like === "number") {
    throw new QuantityError("quantity.not-a-quantity", `${asked(argument, dimension)}, not a bare number`, {
      details: { argument, expected: dimension, received: "number" },
      hint: withUnits(String(like), dimension),
    });
  }
  const q = quantity(like, naming);
  const fits =
    q.dimension === dimension ||
    (q[BRAND].dimension.kind === "" && isNumber(q[BRAND].dimension) && dimension.endsWith("fraction"));
  if (fits) return q as Quantity<D>;
  throw new QuantityError(
    "quantity.wrong-dimension",
    `${asked(argument, dimension)}, not ${withArticle(q.dimension)} (${String(q)})`,
    {
      details: { argument, expected: dimension, received: q.dimension },
      hint: hintFor(dimension, q.unit, String(q)),
    },
  );
}

/**
 * An input with a value in SI units, shown like another quantity: how means and correlated inputs are made.
 *
 * @internal
 */
export function inputLeaf(value: Rational, like: Quantity, naming: Naming, spread: Leaf): Quantity {
  const { dimension, unit } = like[BRAND];
  return make({
    value,
    dimension,
    unit,
    naming,
    leaf: spread,
    decimals: undefined,
    operation: undefined,
    operands: [],
  });
}

/**
 * The quantity that shows a node of the graph.
 *
 * @internal
 */
export const viewOf = (node: Node): Quantity => make(node);

/**
 * A quantity from the record that `toJSON` wrote: same value, unit, uncertainty, label and source, as a new input.
 *
 * @throws {QuantityError} `quantity.json` for anything else
 * @category Quantities
 * @example
 * quantityFromJSON(JSON.parse(JSON.stringify(quantity("12.5(2) g")))).toString() // => "12.50 ± 0.20 g"
 */
export function quantityFromJSON(data: unknown): Quantity {
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

// The value of the library: a magnitude with a unit, exact inside, that remembers what it was made from. Immutable and
// branded by a symbol of the global registry, so that values of two loaded copies still understand each other.
import { attempt, type Result } from "../../foundation/error";
import { lookingIn } from "../../foundation/facts";
import { memoised } from "../../foundation/memo";
import { nearestNumber } from "../../foundation/rational";
import { INSPECT, shownAs } from "../../foundation/shown";
import { QuantityError, type QuantityRefusal } from "../error";
import { withDecimalComma } from "../text/decimal-sign";
import { formatQuantity } from "../text/format";
import type { FormatOptions } from "../text/format-options";
import { hintFor } from "../text/meant";
import { uncertaintyOf } from "../uncertainty/budget";
import { guard, needInputNaming, needNaming } from "./argument";
import { type Dimension, dimensionPower, ownDimension, product, quotient } from "./dimension";
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
import { type QuantityRecord, toRecord } from "./json";
import { fromMeasured, fromRecord, fromText, notAQuantity, words } from "./leaf";
import { add, compare, divide, multiply, negate, power, type Rational, rational, square, subtract } from "./rational";
import { type NumberLike, toRational } from "./read-number";
import { type Decimal, squareRootOf, toDecimal } from "./real";
import { commonDecimals, meets, mismatch, plainUnit, resultUnit, sumDimension } from "./result";
import { BRAND, type DimensionIn, type InputNaming, type Quantity, type QuantityLike } from "./types";
import { readUnit, type Unit, usualUnit } from "./unit";

const MAX_POWER = 12;
const NO_NAMING: InputNaming = {};

/** Words a quantity has, with those that are given now: what is not given takes none away. */
const gained = (before: Naming | undefined, now: Naming): Naming =>
  before === undefined
    ? { ...now }
    : {
        symbol: now.symbol ?? before.symbol,
        label: now.label ?? before.label,
        rule: now.rule ?? before.rule,
        source: now.source ?? before.source,
        assumption: now.assumption ?? before.assumption,
      };

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
    // what is shown so already is itself; only decimals as they were written are given up
    if (shown === this.#node.unit && this.#node.decimals === undefined) return this;
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
    const [a, b] = [this.#node, typeof other === "string" ? written(other) : nodeOf(other)];
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
    const words = gained(before, naming);
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

/** A text that is compared with, read once: which input it is matters to no comparison. */
const written = /* @__PURE__ */ memoised(200, (text) => nodeOf(text as QuantityLike));

function inUnit(value: Rational, { offset, factor }: Unit): Rational {
  const fromZero = offset.n === 0n ? value : subtract(value, offset);
  return factor.n === factor.d ? fromZero : divide(fromZero, factor);
}

/** @internal */
export const valueIn = (value: Rational, unit: Unit): Decimal => toDecimal(inUnit(value, unit));

const divisionByZero = (what?: string): QuantityError =>
  new QuantityError("quantity.division-by-zero", `division by zero${what === undefined ? "" : `: ${what} is 0`}`);

/** The exact number an operand stands for, when it is a bare number and not a quantity. */
function exactNumber(value: QuantityLike | NumberLike): Rational | undefined {
  if (typeof value === "number" || typeof value === "bigint") return toRational(value);
  if (typeof value === "string")
    return /^[+-]?[\d.]+(?:[eE][+-]?\d+)?(?: *\/ *\d+)?$/.test(value) ? toRational(value) : undefined;
  if (value === null || typeof value !== "object") throw notAQuantity(value);
  return isQuantity(value) || "unit" in value ? undefined : toRational(value as NumberLike);
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
export function quantity<const Q extends QuantityLike>(like: Q, naming?: InputNaming): Quantity<DimensionIn<Q>>;
export function quantity(like: QuantityLike, naming: InputNaming = NO_NAMING): Quantity {
  if (naming !== NO_NAMING) {
    needInputNaming(naming);
    const { facts, ...words } = naming;
    if (facts !== undefined) return lookingIn(facts, guard, () => quantity(like, words));
  }
  if (typeof like === "string") {
    if (naming.decimalSign === ",") return withDecimalComma(like, (text) => make(fromText(text, naming)));
    return make(fromText(like, naming));
  }
  if (isQuantity(like)) {
    const node = ownNode(like[BRAND]);
    const own = node === like[BRAND] ? like : make(node);
    return words(naming) === undefined ? own : own.named(words(naming)!);
  }
  if (typeof like !== "object" || like === null) throw notAQuantity(like);
  if ((like as { readonly type?: unknown }).type === "quantity") return quantity(quantityFromJSON(like), naming);
  return make(fromMeasured(like, naming));
}

/**
 * As `quantity`, but gives the refusal back as data.
 *
 * @category Quantities
 * @example
 * tryQuantity("12.5 g").ok // => true
 */
export function tryQuantity<const Q extends QuantityLike>(
  like: Q,
  naming?: InputNaming,
): Result<Quantity<DimensionIn<Q>>, QuantityRefusal> {
  return attempt(() => quantity(like, naming));
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
  return make(fromRecord(data));
}

// The graph behind every quantity: a node is a leaf (something measured or tabulated) or an operation on other nodes.
// Value, uncertainty, working and sources are all read off this one structure. Nodes point only at their operands, so
// nothing lives longer than the caller holds it.

import type { Distribution } from "../text/read";
import type { Dimension } from "./dimension";
import { divide, multiply, negate, ONE, power, type Rational, rational, ZERO } from "./rational";
import type { Unit } from "./unit";

/** What a person calls a value, and where it comes from. */
export interface Naming {
  /** Short symbol used in formulas, such as `m` or `M(H2O)`. */
  readonly symbol?: string | undefined;
  /** The value in words. */
  readonly label?: string | undefined;
  /** The rule that gives a result, in words: "amount = mass / molar mass". */
  readonly rule?: string | undefined;
  /** Where the figure or the rule is published, or how it was obtained. */
  readonly source?: string | undefined;
  /** Something assumed, printed with the result. */
  readonly assumption?: string | undefined;
}

/** Inputs that belong together: observed jointly, or with declared correlation. */
export interface Group {
  /** Covariance of members i and j, in the product of their SI units. */
  readonly covariances: readonly (readonly Rational[])[];
  /** Degrees of freedom of the estimate they share; undefined when each has its own. */
  readonly degreesOfFreedom: number | undefined;
}

/** Something that was not computed: one independent input. Its identity is what makes `x - x` exactly zero. */
export interface Leaf {
  /** Square of the standard uncertainty in SI units; undefined when nothing is known about it. */
  readonly variance: Rational | undefined;
  readonly distribution: Distribution | undefined;
  readonly degreesOfFreedom: number;
  readonly group?: Group | undefined;
  /** Index of this input in its group. */
  readonly member?: number | undefined;
}

/** How an operation differentiates and how it is written. */
export interface Operation {
  /** d(result)/d(operand i), exactly or to 40 digits, in SI units. */
  partials(node: Node, operands: readonly Node[]): readonly Rational[];
  /** The expression for given operand texts; each operand text comes with how tightly it binds. */
  write(operands: readonly Written[]): Written;
}

/** An expression as text: 1 binds like a sum, 2 like a product, 3 like a power or a name. */
export interface Written {
  readonly text: string;
  readonly binds: number;
}

export interface Node {
  readonly value: Rational;
  readonly dimension: Dimension;
  readonly unit: Unit;
  readonly naming: Naming | undefined;
  readonly leaf: Leaf | undefined;
  /** Decimals as written, for a value that was read from text. */
  readonly decimals: number | undefined;
  readonly operation: Operation | undefined;
  /** Operands, possibly made only when somebody asks. */
  readonly operands: readonly Node[] | (() => readonly Node[]);
}

const madeOperands = /* @__PURE__ */ new WeakMap<Node, readonly Node[]>();

/** The operands of a node; a lazy list is made once and lives as long as the node. */
export function operandsOf(node: Node): readonly Node[] {
  const { operands } = node;
  if (typeof operands !== "function") return operands;
  const before = madeOperands.get(node);
  if (before !== undefined) return before;
  const made = operands();
  madeOperands.set(node, made);
  return made;
}

/** Operand nodes before the nodes made from them; every node once. Iterative, so that no chain is too long. */
export function inOrder(root: Node): Node[] {
  const order: Node[] = [];
  const seen = new Set<Node>();
  const stack: { node: Node; next: number }[] = [{ node: root, next: 0 }];
  seen.add(root);
  while (stack.length > 0) {
    const top = stack[stack.length - 1]!;
    const operand = operandsOf(top.node)[top.next];
    if (operand === undefined) {
      order.push(top.node);
      stack.pop();
      continue;
    }
    top.next += 1;
    if (seen.has(operand)) continue;
    seen.add(operand);
    stack.push({ node: operand, next: 0 });
  }
  return order;
}

const bracket = (w: Written, atLeast: number): string => (w.binds < atLeast ? `(${w.text})` : w.text);

export const SUM: Operation = {
  partials: () => [ONE, ONE],
  write: ([a, b]) => ({
    text: b!.text.startsWith("-") ? `${a!.text} + (${b!.text})` : `${a!.text} + ${b!.text}`,
    binds: 1,
  }),
};

const MINUS_ONE = /* @__PURE__ */ negate(ONE);

export const DIFFERENCE: Operation = {
  partials: () => [ONE, MINUS_ONE],
  write: ([a, b]) => ({ text: `${a!.text} - ${b!.text.startsWith("-") ? `(${b!.text})` : bracket(b!, 2)}`, binds: 1 }),
};

export const NEGATION: Operation = {
  partials: () => [MINUS_ONE],
  write: ([a]) => ({ text: `-${bracket(a!, 2)}`, binds: 1 }),
};

export const PRODUCT: Operation = {
  partials: (_, [a, b]) => [b!.value, a!.value],
  write: ([a, b]) => ({ text: `${bracket(a!, 2)} × ${bracket(b!, 2)}`, binds: 2 }),
};

export const QUOTIENT: Operation = {
  partials: (_, [a, b]) => {
    const inverse: Rational = divide(ONE, b!.value);
    return [inverse, negate(multiply(multiply(inverse, inverse), a!.value))];
  },
  write: ([a, b]) => ({ text: `${bracket(a!, 2)} / ${bracket(b!, 3)}`, binds: 2 }),
};

/** A value taken over under another name. */
export const SAME: Operation = {
  partials: () => [ONE],
  write: ([a]) => a!,
};

/** Multiplication by an exact number that is part of the rule, not a measured thing. */
export function scaling(factor: Rational): Operation {
  const { n, d } = factor;
  return {
    partials: () => [factor],
    write: ([a]) => {
      const multiple = n === 1n && d !== 1n ? bracket(a!, 2) : `${n} × ${bracket(a!, 2)}`;
      return { text: d === 1n ? multiple : `${multiple} / ${d}`, binds: 2 };
    },
  };
}

/** Exact coefficients times operands, summed: a molar mass from atomic weights. */
export function combination(coefficients: readonly Rational[]): Operation {
  return {
    partials: () => coefficients,
    write: (operands) => {
      const terms = operands.map((w, i) => {
        const { n, d } = coefficients[i]!;
        if (n === 1n && d === 1n) return bracket(w, 2);
        return `${d === 1n ? n : `(${n}/${d})`} × ${bracket(w, 2)}`;
      });
      return { text: terms.join(" + "), binds: terms.length > 1 ? 1 : 2 };
    },
  };
}

export function powerOf(k: number): Operation {
  return {
    partials: (_, [a]) => [
      a!.value.n === 0n ? (k === 1 ? ONE : ZERO) : multiply(rational(BigInt(k)), power(a!.value, k - 1)),
    ],
    write: ([a]) => ({ text: `${bracket(a!, 4)}^${k < 0 ? `(${k})` : k}`, binds: 3 }),
  };
}

/** The smallest or largest of several: moves with the one that was chosen. */
export function choice(word: "min" | "max", chosen: number): Operation {
  return {
    partials: (_, operands) => operands.map((_operand, i) => (i === chosen ? ONE : ZERO)),
    write: (operands) => ({ text: `${word}(${operands.map((w) => w.text).join(", ")})`, binds: 3 }),
  };
}

/** A function of its operands whose derivatives are already known numbers. */
export function evaluated(name: string, partials: readonly Rational[]): Operation {
  return {
    partials: () => partials,
    write: (operands) => ({ text: `${name}(${operands.map((w) => w.text).join(", ")})`, binds: 3 }),
  };
}

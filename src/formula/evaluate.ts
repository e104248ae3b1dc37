// From the nodes of a formula to what it holds: exact counts over one common denominator, and the charge.

import { gcd } from "../foundation/gcd";
import { FormulaError } from "./error";
import { MAX_COUNT } from "./read/limits";
import type { FormulaNode } from "./read/nodes";
import { add, multiply, ONE, type Ratio } from "./read/ratio";

/** Counts by element or nuclide index, in the order first written: `numerators[i] / denominator`. */
export interface Composition {
  readonly elementIndices: number[];
  readonly numerators: number[];
  readonly denominator: number;
  readonly charge: number;
}

function tooLarge(input: string): FormulaError {
  return new FormulaError("formula.count-too-large", "the counts leave the range in which they are exact (2^53)", {
    input,
    position: 0,
    details: { limit: MAX_COUNT },
  });
}

/** Sum the nodes up. One pass; `input` is only for the error. */
export function evaluate(nodes: readonly FormulaNode[], input: string): Composition {
  const counts = new Map<number, Ratio>();
  const stack: { base: Ratio; current: Ratio }[] = [];
  let base = ONE;
  let current = ONE;
  let charge: Ratio = { n: 0, d: 1 };
  const times = (a: Ratio, b: Ratio): Ratio => {
    const product = multiply(a, b);
    if (product === undefined) throw tooLarge(input);
    return product;
  };
  const plus = (a: Ratio, b: Ratio): Ratio => {
    const sum = add(a, b);
    if (sum === undefined) throw tooLarge(input);
    return sum;
  };
  for (const node of nodes) {
    switch (node.kind) {
      case "part":
        current = times(base, node.number);
        break;
      case "atom": {
        const count = times(current, node.count);
        const before = counts.get(node.atom);
        counts.set(node.atom, before === undefined ? count : plus(before, count));
        break;
      }
      case "open":
        stack.push({ base, current });
        base = times(current, node.count);
        current = base;
        break;
      case "close":
        ({ base, current } = stack.pop()!);
        break;
      case "charge":
        charge = plus(charge, times(current, { n: node.charge, d: 1 }));
        break;
      case "electron":
        charge = plus(charge, times(current, { n: -1, d: 1 }));
        break;
    }
  }
  if (charge.d !== 1) {
    throw new FormulaError("formula.fractional-charge", `the charges add up to ${charge.n}/${charge.d}`, {
      input,
      position: 0,
    });
  }
  let denominator = 1;
  for (const { d } of counts.values()) {
    denominator *= d / gcd(denominator, d);
    if (denominator > MAX_COUNT) throw tooLarge(input);
  }
  const numerators: number[] = [];
  for (const { n, d } of counts.values()) {
    const scaled = n * (denominator / d);
    if (scaled > MAX_COUNT) throw tooLarge(input);
    numerators.push(scaled);
  }
  return { elementIndices: [...counts.keys()], numerators, denominator, charge: charge.n };
}

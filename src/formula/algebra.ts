// Formula algebra on exact counts and on the written structure.
import { symbolAt } from "../element/internal";
import { kindOf } from "../foundation/argument";
import { shownValue } from "../foundation/error";
import { gcd } from "../foundation/gcd";
import { FormulaError } from "./error";
import type { Composition } from "./evaluate";
import { MAX_COUNT } from "./read/limits";
import type { FormulaNode } from "./read/nodes";
import { ratioFromText } from "./read/numbers";
import { add, multiply, type Ratio, ratio } from "./read/ratio";

/** What is added or taken away. */
interface Counted {
  readonly size: number;
  readonly denominator: number;
  readonly charge: number;
  elementIndexAt(i: number): number;
  numeratorAt(i: number): number;
}

function outOfRange(): FormulaError {
  return new FormulaError("formula.count-too-large", "the counts leave the range in which they are exact (2^53)", {
    details: { limit: MAX_COUNT },
  });
}

/** Counts and charge of `a` plus (`sign` 1) or minus (-1) `b`. */
export function combine(a: Counted, b: Counted, sign: 1 | -1): Composition {
  const counts = new Map<number, Ratio>();
  for (let i = 0; i < a.size; i += 1) counts.set(a.elementIndexAt(i), ratio(a.numeratorAt(i), a.denominator));
  for (let i = 0; i < b.size; i += 1) {
    const index = b.elementIndexAt(i);
    const count = add(counts.get(index) ?? { n: 0, d: 1 }, ratio(sign * b.numeratorAt(i), b.denominator));
    if (count === undefined) throw outOfRange();
    if (count.n < 0) {
      throw new FormulaError("formula.negative-count", `not enough ${symbolAt(index)} to take away`, {
        details: { symbol: symbolAt(index) },
      });
    }
    if (count.n === 0) counts.delete(index);
    else counts.set(index, count);
  }
  const charge = a.charge + sign * b.charge;
  if (counts.size === 0 && charge >= 0) {
    throw new FormulaError("formula.nothing-left", "nothing is left of the formula");
  }
  let denominator = 1;
  for (const { d } of counts.values()) {
    denominator *= d / gcd(denominator, d);
    if (denominator > MAX_COUNT) throw outOfRange();
  }
  const numerators = [...counts.values()].map(({ n, d }) => n * (denominator / d));
  if (numerators.some((n) => n > MAX_COUNT)) throw outOfRange();
  return { elementIndices: [...counts.keys()], numerators, denominator, charge };
}

/** The factor of a multiplication: a positive whole number, decimal or fraction. */
export function factorRatio(factor: unknown): Ratio {
  if (factor === undefined || factor === null) {
    throw new FormulaError("formula.bad-factor", `a formula is multiplied by a number, not ${kindOf(factor)}`);
  }
  const { n, d, s } = factor as { n?: unknown; d?: unknown; s?: unknown };
  const text =
    typeof n === "bigint" && typeof d === "bigint" ? `${s === -1n ? "-" : ""}${n}/${d}` : shownValue(factor).trim();
  const value = ratioFromText(text);
  if (value === undefined || value.n === 0) {
    throw new FormulaError("formula.bad-factor", `${text.slice(0, 40)} is not a positive number to multiply by`, {
      hint: "a whole number, or decimal or fraction text of at most 12 digits",
    });
  }
  return value;
}

/** Every outermost part with its number multiplied. */
export function multiplyParts(nodes: readonly FormulaNode[], factor: Ratio): FormulaNode[] {
  let depth = 0;
  return nodes.map((node) => {
    if (node.kind === "open") depth += 1;
    if (node.kind === "close") depth -= 1;
    if (node.kind !== "part" || depth > 0) return node;
    const number = multiply(node.number, factor);
    if (number === undefined) throw outOfRange();
    return { ...node, number };
  });
}

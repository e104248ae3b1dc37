// The working of a result, as a teacher writes it on a board: each named result once, in order, with its rule, the rule
// in symbols, the numbers put in, and the result; then what was given, what was assumed, and the sources.

import { subscript } from "../foundation/characters";
import { formatQuantity } from "./text/format";
import { uncertaintyOf } from "./uncertainty/budget";
import { inOrder, type Node, operandsOf, type Written } from "./value/graph";
import { nodeOf } from "./value/quantity";
import { leadingExponent } from "./value/rational";
import type { QuantityLike } from "./value/types";

/** One line of reasoning. */
export interface Step {
  /** Symbol of what the step gives. */
  readonly symbol: string;
  /** What it is, in words. */
  readonly label: string | undefined;
  /** The rule in words. */
  readonly rule: string | undefined;
  /** The rule in symbols: "w × m / M(ZnSO4)". */
  readonly formula: string;
  /** The same with numbers and units put in. */
  readonly substituted: string;
  /** The result, rounded sensibly for reading; the exact value goes on inside. */
  readonly result: string;
  /** Key of the source of the rule. */
  readonly source: string | undefined;
  /** What was assumed in it. */
  readonly assumption: string | undefined;
}

/** Something that was not computed but measured, tabulated or chosen. */
export interface Given {
  /** Its symbol in the formulas of the steps. */
  readonly symbol: string;
  /** What it is, in words. */
  readonly label: string | undefined;
  /** Value, uncertainty and unit as text. */
  readonly value: string;
  /** Key of the source of the figure. */
  readonly source: string | undefined;
  /** What was assumed with it. */
  readonly assumption: string | undefined;
}

/** The working behind a quantity, as data; `toString()` prints it. */
export interface Working {
  /** The last line: symbol, value and unit. */
  readonly result: string;
  /** Each line of the calculation, in order. */
  readonly steps: readonly Step[];
  /** The figures it starts from. */
  readonly given: readonly Given[];
  /** What was assumed, in words. */
  readonly assumptions: readonly string[];
  /** The sources that given and steps cite, printed. */
  readonly sources: readonly string[];
  /** The whole working as text. */
  toString(): string;
}

/** Figures shown for a value without uncertainty: enough to follow, one more than a bench needs. */
const FIGURES = 5;
/** Never more than this many, however sure the value. */
const MOST_FIGURES = 7;

/** An expression longer than this is cut into lines. */
const LONGEST = 300;

/** Above this many nodes results are shown to fixed figures: finding the uncertainty of each line would be quadratic. */
const MANY_NODES = 2000;

/** A value for reading: as written for inputs, to the digit its uncertainty reaches for results. */
function shown(node: Node, small = true): string {
  if (node.decimals !== undefined) return formatQuantity(node, { uncertainty: "none", decimals: node.decimals });
  const variance = small ? uncertaintyOf(node) : undefined;
  if (node.value.n === 0n || node.unit.offset.n !== 0n) return formatQuantity(node, { decimals: 2 });
  if (variance === undefined || variance.n === 0n) {
    const whole = formatQuantity(node, { uncertainty: "none" });
    return whole.split(" ")[0]!.length <= FIGURES + 2 ? whole : formatQuantity(node, { significant: FIGURES });
  }
  // one figure beyond the leading figure of u
  const u =
    1 +
    Math.ceil((leadingExponent({ n: node.value.n ** 2n, d: node.value.d ** 2n }) - leadingExponent(variance)) / 2) +
    1;
  return formatQuantity(node, { significant: Math.max(3, Math.min(u, MOST_FIGURES)) });
}

/** What is one and the same in all its views: an input under any words, a result in any unit or named once more. */
function thingOf(node: Node): unknown {
  let at = node;
  while (at.leaf === undefined) {
    const [only, ...more] = operandsOf(at);
    if (only === undefined || more.length > 0 || only.naming?.symbol === undefined) break;
    if (only.naming.symbol !== at.naming?.symbol) break;
    at = only;
  }
  return at.leaf ?? at.operands;
}

/** Nothing for the first, ₂ for the second. */
const placeMark = (place: number): string => (place === 0 ? "" : subscript(place + 1));

const distinct = (texts: readonly (string | undefined)[]): string[] => [
  ...new Set(texts.filter((text) => text !== undefined)),
];

/** Sources of the inputs, then of the results. */
const sourcesIn = (nodes: readonly Node[]): string[] => {
  const [inputs, results] = [true, false].map((isInput) =>
    nodes.filter(({ leaf }) => (leaf !== undefined) === isInput),
  );
  return distinct([...inputs!, ...results!].map(({ naming }) => naming?.source));
};

/** @internal The sources of a working, without the working. */
export const sourcesOf = (like: QuantityLike): readonly string[] => sourcesIn(inOrder(nodeOf(like)));

/**
 * How a quantity was obtained: every named step once, in order, with the numbers put in.
 *
 * @param like - any quantity; the working goes back to measured and tabulated inputs
 * @returns steps, inputs, assumptions and sources as data; `.toString()` prints the working
 * @throws {QuantityError} those of `quantity`, if text is given
 * @category Quantities
 * @example
 * const m = quantity("36.03 g", { symbol: "m" });
 * const M = quantity("18.015 g/mol", { symbol: "M" });
 * explain(m.dividedBy(M).named({ symbol: "n", rule: "amount = mass / molar mass" })).steps[0]!.formula // => "m / M"
 */
export function explain(like: QuantityLike): Working {
  const root = nodeOf(like);
  const order = inOrder(root);
  const uses = new Map<Node, number>();
  for (const node of order) for (const operand of operandsOf(node)) uses.set(operand, (uses.get(operand) ?? 0) + 1);
  /** Does this result get a line of its own? Named ones do, and unnamed ones that stand in more than one place. */
  const named = (node: Node): boolean =>
    node === root || node.naming?.symbol !== undefined || node.naming?.rule !== undefined || uses.get(node)! > 1;
  const symbols = new Map<Node, string>();
  const bearers = new Map<string, unknown[]>();
  let unnamed = 0;
  /** A symbol stands for one thing in a working: the next of the same name is numbered, as in `mean` and `mean₂`. */
  const symbolOf = (node: Node): string => {
    let symbol = symbols.get(node);
    if (symbol === undefined) {
      const own = node.naming?.symbol ?? node.naming?.label ?? (node === root ? "result" : `x${++unnamed}`);
      const before = bearers.get(own) ?? [];
      const thing = thingOf(node);
      const place = before.indexOf(thing);
      if (place < 0) bearers.set(own, [...before, thing]);
      symbol = own + placeMark(place < 0 ? before.length : place);
      symbols.set(node, symbol);
    }
    return symbol;
  };
  /** Is this leaf so plain that its value says all? */
  const bare = (node: Node): boolean =>
    node.leaf !== undefined && node.naming?.symbol === undefined && node.naming?.label === undefined;
  const steps: Step[] = [];
  const given = new Map<object, Given>();
  // Expressions of unnamed nodes, in both forms, built once each and in order: no recursion, whatever the depth.
  const inSymbols = new Map<Node, Written>();
  const inNumbers = new Map<Node, Written>();
  for (const node of order) {
    const { naming } = node;
    if (node.leaf !== undefined) {
      const value = shown(node);
      inSymbols.set(node, { text: bare(node) ? value : symbolOf(node), binds: 4 });
      inNumbers.set(node, { text: value, binds: value.startsWith("-") ? 1 : 4 });
      if (!bare(node) && !given.has(node.leaf)) {
        given.set(node.leaf, {
          symbol: symbolOf(node),
          label: naming?.label,
          value: formatQuantity(node),
          source: naming?.source,
          assumption: naming?.assumption,
        });
      }
      continue;
    }
    const operands = operandsOf(node);
    const formula = node.operation!.write(operands.map((operand) => inSymbols.get(operand)!));
    const numbers = node.operation!.write(operands.map((operand) => inNumbers.get(operand)!));
    if (!named(node) && formula.text.length <= LONGEST) {
      inSymbols.set(node, formula);
      inNumbers.set(node, numbers);
      continue;
    }
    const result = shown(node, order.length <= MANY_NODES);
    inSymbols.set(node, { text: symbolOf(node), binds: 4 });
    inNumbers.set(node, { text: result, binds: result.startsWith("-") ? 1 : 4 });
    steps.push({
      symbol: symbolOf(node),
      label: naming?.label,
      rule: naming?.rule,
      formula: formula.text,
      substituted: numbers.text,
      result,
      source: naming?.source,
      assumption: naming?.assumption,
    });
  }
  const givens = [...given.values()];
  const all = [...givens, ...steps];
  const working = {
    result: shown(root),
    steps,
    given: givens,
    assumptions: distinct(all.map((x) => x.assumption)),
    sources: sourcesIn(order),
  };
  return { ...working, toString: () => print(working) };
}

function print({ steps, given, assumptions, sources }: Omit<Working, "toString">): string {
  const lines: string[] = [];
  const mark = (source: string | undefined): string =>
    source === undefined ? "" : `  [${sources.indexOf(source) + 1}]`;
  if (given.length > 0) {
    lines.push("Given");
    const width = Math.min(24, Math.max(...given.map((g) => g.symbol.length)));
    for (const g of given) {
      const label = g.label === undefined || g.label === g.symbol ? "" : `   ${g.label}`;
      lines.push(`  ${g.symbol.padEnd(width)} = ${g.value}${label}${mark(g.source)}`);
    }
  }
  steps.forEach((step, i) => {
    lines.push(`${i + 1}. ${step.rule ?? step.label ?? step.symbol}${mark(step.source)}`);
    const indent = "   ";
    lines.push(`${indent}${step.symbol} = ${step.formula}`);
    const lead = `${indent}${" ".repeat(step.symbol.length)} = `;
    if (step.substituted !== step.formula) lines.push(lead + step.substituted);
    if (step.result !== step.substituted) lines.push(lead + step.result);
  });
  if (assumptions.length > 0) lines.push("Assumptions", ...assumptions.map((a) => `  - ${a}`));
  if (sources.length > 0) lines.push("Sources", ...sources.map((s, i) => `  [${i + 1}] ${s}`));
  return lines.join("\n");
}

// Combined standard uncertainty by reverse-mode derivatives: one pass down the graph gives d(result)/d(input) for every
// independent input, whatever the number of paths between them (JCGM 100:2008, 5.1 and 5.2). Derivatives stay exact
// fractions, so that x - x and x / x come out as exactly 0 and not as rounding noise.
import { nearestNumber } from "../../foundation/rational";
import { inOrder, type Leaf, type Node, operandsOf } from "../value/graph";
import { add, multiply, ONE, type Rational, rational, shortened, ZERO } from "../value/rational";

/** One independent input with its sensitivity coefficient, in SI units. */
interface Sensitivity {
  readonly leaf: Leaf;
  readonly node: Node;
  readonly coefficient: Rational;
}

/** Sensitivity coefficients of a node to every input with an uncertainty that it depends on; each input once. */
function sensitivities(root: Node): Sensitivity[] {
  const found = new Map<Leaf, { node: Node; coefficient: Rational }>();
  const order = inOrder(root);
  // what rests on figures without an uncertainty alone has nothing to add, and no weight
  const weights = new Map<Node, Rational>();
  for (const node of order)
    if (node.leaf === undefined ? operandsOf(node).some((one) => weights.has(one)) : node.leaf.variance !== undefined)
      weights.set(node, ZERO);
  if (weights.has(root)) weights.set(root, ONE);
  for (let i = order.length - 1; i >= 0; i--) {
    const node = order[i]!;
    const weight = weights.get(node);
    if (weight === undefined) continue;
    if (node.leaf !== undefined) {
      const before = found.get(node.leaf);
      found.set(node.leaf, {
        node: before?.node ?? node,
        coefficient: before === undefined ? weight : add(before.coefficient, weight),
      });
      continue;
    }
    const operands = operandsOf(node);
    const partials = node.operation!.partials(node, operands);
    operands.forEach((operand, k) => {
      const before = weights.get(operand);
      if (before === undefined) return;
      const part = partials[k] === ONE ? weight : multiply(weight, partials[k]!);
      weights.set(operand, before === ZERO ? part : add(before, part));
    });
  }
  return [...found].map(([leaf, { node, coefficient }]) => ({ leaf, node, coefficient }));
}

/** Covariance of two inputs in SI units: their variance if they are one, else what their group says, else zero. */
function covarianceOfLeaves(a: Leaf, b: Leaf): Rational {
  if (a === b) return a.variance ?? ZERO;
  if (a.group === undefined || a.group !== b.group) return ZERO;
  return a.group.covariances[a.member!]![b.member!]!;
}

/** Inputs by group; an input without a group stands alone. */
export function grouped(inputs: readonly Sensitivity[]): Sensitivity[][] {
  const groups = new Map<object, Sensitivity[]>();
  for (const input of inputs) {
    const key = input.leaf.group ?? input.leaf;
    const members = groups.get(key);
    if (members === undefined) groups.set(key, [input]);
    else members.push(input);
  }
  return [...groups.values()];
}

/** Covariance of two linear forms over inputs, in SI units. */
function bilinear(a: readonly Sensitivity[], b: readonly Sensitivity[]): Rational {
  let total = ZERO;
  const others = new Map(grouped(b).map((members) => [members[0]!.leaf.group ?? members[0]!.leaf, members]));
  for (const x of a) {
    for (const y of others.get(x.leaf.group ?? x.leaf) ?? []) {
      const part = covarianceOfLeaves(x.leaf, y.leaf);
      if (part.n !== 0n) total = add(total, multiply(multiply(x.coefficient, y.coefficient), part));
    }
  }
  return total;
}

/** Variance through an input that stands alone: squares add up, so that rounding them cancels nothing out. */
function varianceThrough({ leaf, coefficient }: Sensitivity): Rational {
  const short = shortened(coefficient);
  return shortened(multiply(multiply(short, short), covarianceOfLeaves(leaf, leaf)));
}

/** What each uncertain input adds to the variance of the result, its share of the covariances included. */
export function variances(root: Node): { input: Sensitivity; part: Rational }[] {
  return grouped(sensitivities(root)).flatMap((members) => {
    const [only] = members;
    if (members.length === 1) return [{ input: only!, part: varianceThrough(only!) }];
    return members.map((input) => ({ input, part: bilinear([input], members) }));
  });
}

/** Covariance of two results through the inputs they share or that are correlated, in SI units. */
export const covarianceOf = (a: Node, b: Node): Rational => bilinear(sensitivities(a), sensitivities(b));

const known = /* @__PURE__ */ new WeakMap<Node, { variance: Rational | undefined }>();

/** Combined variance in SI units; undefined when no input carries an uncertainty. Kept with the node once computed. */
export function uncertaintyOf(node: Node): Rational | undefined {
  if (node.leaf !== undefined) return node.leaf.variance;
  const before = known.get(node);
  if (before !== undefined) return before.variance;
  const parts = variances(node);
  const total = parts.length === 0 ? undefined : parts.map(({ part }) => part).reduce(add);
  // Fully anti-correlated inputs may leave a tiny negative remainder of declared covariances, which hold a root.
  const variance = total !== undefined && total.n < 0n ? rational(0n) : total;
  known.set(node, { variance });
  return variance;
}

/**
 * Value and standard uncertainty in SI units as plain numbers, for what is compared and not printed; without an uncertainty that is 0.
 *
 * @internal
 */
export function inPlainNumbers(node: Node): { readonly value: number; readonly u: number } {
  const variance = uncertaintyOf(node);
  return { value: nearestNumber(node.value), u: variance === undefined ? 0 : Math.sqrt(nearestNumber(variance)) };
}

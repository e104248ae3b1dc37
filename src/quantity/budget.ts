// Combined standard uncertainty by reverse-mode derivatives: one pass down the graph gives d(result)/d(input) for every
// independent input, whatever the number of paths between them (JCGM 100:2008, 5.1 and 5.2). Derivatives stay exact
// fractions, so that x - x and x / x come out as exactly 0 and not as rounding noise.
import { inOrder, type Leaf, type Node, operandsOf } from "./graph";
import { add, multiply, ONE, type Rational, rational, square, ZERO } from "./rational";
import { fromDecimal, squareRootOf } from "./real";

/** One independent input with its sensitivity coefficient, in SI units. */
export interface Sensitivity {
  readonly leaf: Leaf;
  readonly node: Node;
  readonly coefficient: Rational;
}

/** Sensitivity coefficients of a node to every input it depends on; each input once. */
export function sensitivities(root: Node): Sensitivity[] {
  const adjoint = new Map<Node, Rational>([[root, ONE]]);
  const found = new Map<Leaf, { node: Node; coefficient: Rational }>();
  const order = inOrder(root);
  for (let i = order.length - 1; i >= 0; i--) {
    const node = order[i]!;
    const weight = adjoint.get(node)!;
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
      const part = multiply(weight, partials[k]!);
      const before = adjoint.get(operand);
      adjoint.set(operand, before === undefined ? part : add(before, part));
    });
  }
  return [...found].map(([leaf, { node, coefficient }]) => ({ leaf, node, coefficient }));
}

/** Covariance of two members of a correlation group, in SI units; to 40 digits, because it holds a square root. */
function covariance(a: Leaf, b: Leaf): Rational {
  const r = a.correlations!.coefficients[a.member!]![b.member!]!;
  if (r.n === 0n) return ZERO;
  return multiply(r, fromDecimal(squareRootOf(multiply(a.variance!, b.variance!))));
}

/** What each uncertain input adds to the variance of the result, its share of the covariances included. */
export function variances(root: Node): { input: Sensitivity; part: Rational }[] {
  const inputs = sensitivities(root).filter(({ leaf }) => leaf.variance !== undefined);
  const groups = new Map<object, Sensitivity[]>();
  for (const input of inputs) {
    const group = input.leaf.correlations;
    if (group === undefined) continue;
    const members = groups.get(group);
    if (members === undefined) groups.set(group, [input]);
    else members.push(input);
  }
  return inputs.map((input) => {
    const { leaf, coefficient } = input;
    let part = multiply(square(coefficient), leaf.variance!);
    for (const other of leaf.correlations === undefined ? [] : groups.get(leaf.correlations)!) {
      if (other === input) continue;
      part = add(part, multiply(multiply(coefficient, other.coefficient), covariance(leaf, other.leaf)));
    }
    return { input, part };
  });
}

const known = /* @__PURE__ */ new WeakMap<Node, { variance: Rational | undefined }>();

/** Combined variance in SI units; undefined when no input carries an uncertainty. Kept with the node once computed. */
export function uncertaintyOf(node: Node): Rational | undefined {
  if (node.leaf !== undefined) return node.leaf.variance;
  const before = known.get(node);
  if (before !== undefined) return before.variance;
  const parts = variances(node);
  const total = parts.length === 0 ? undefined : parts.map(({ part }) => part).reduce(add);
  // Fully anti-correlated inputs may leave a tiny negative remainder of the 40-digit covariances.
  const variance = total !== undefined && total.n < 0n ? rational(0n) : total;
  known.set(node, { variance });
  return variance;
}

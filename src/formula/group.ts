// How often a group stands in a formula, as written: `H2O` in CuSO4·5H2O, `SO4` in Al2(SO4)3, `NH4` in (NH4)2SO4.
import type { FormulaNode } from "./read/nodes";
import { add, multiply, ONE, type Ratio } from "./read/ratio";

/** A node as it is compared: element or kind, and count; one pair of brackets is as good as another. */
function mark(node: FormulaNode): string {
  const what = node.kind === "atom" ? node.atom : node.kind;
  return "count" in node ? `${what} ${node.count.n}/${node.count.d}` : `${what}`;
}

/** Total count of the run of nodes `group` in `nodes`; zero if it does not stand there. Undefined beyond 2^53. */
export function countGroup(nodes: readonly FormulaNode[], group: readonly FormulaNode[]): Ratio | undefined {
  const wanted = group
    .filter((node) => node.kind !== "part" && node.kind !== "charge" && node.kind !== "oxidation")
    .map(mark);
  const inside = nodes.filter((node) => node.kind !== "charge" && node.kind !== "oxidation");
  const marks = inside.map(mark);
  const stack: { base: Ratio; current: Ratio }[] = [];
  let base = ONE;
  let current = ONE;
  let total: Ratio = { n: 0, d: 1 };
  for (let i = 0; i < inside.length; i += 1) {
    const node = inside[i]!;
    if (node.kind === "part") {
      const product = multiply(base, node.number);
      if (product === undefined) return undefined;
      current = product;
      continue;
    }
    if (wanted.every((want, k) => want === marks[i + k])) {
      const sum = add(total, current);
      if (sum === undefined) return undefined;
      total = sum;
      i += wanted.length - 1;
      continue;
    }
    if (node.kind === "open") {
      stack.push({ base, current });
      const product = multiply(current, node.count);
      if (product === undefined) return undefined;
      base = product;
      current = product;
    } else if (node.kind === "close") ({ base, current } = stack.pop()!);
  }
  return total;
}

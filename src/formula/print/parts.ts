// The parts of an adduct, as texts that can be read on their own.
import type { FormulaNode, Reading } from "../read/nodes";
import { ONE, type Ratio } from "../read/ratio";
import { asciiNodes } from "./print";

interface PartText {
  readonly text: string;
  readonly multiplier: Ratio;
}

/** Parts at the outermost level, in written order. */
export function partTexts({ nodes }: Reading): PartText[] {
  const parts: { nodes: FormulaNode[]; multiplier: Ratio }[] = [];
  let depth = 0;
  for (const node of nodes) {
    if (node.kind === "open") depth += 1;
    if (node.kind === "close") depth -= 1;
    if (node.kind === "part" && depth === 0) {
      parts.push({ nodes: [{ kind: "part", dot: false, number: ONE }], multiplier: node.number });
    } else parts.at(-1)!.nodes.push(node);
  }
  return parts.map((part) => ({ text: asciiNodes(part.nodes), multiplier: part.multiplier }));
}

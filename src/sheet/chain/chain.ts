// The sheets of a chain: what must be on the shelf for all of it, what it costs, and one sheet for each preparation.
import type { Chain } from "../../preparation";
import type { Block } from "../document/blocks";
import { about, handy } from "../figures";
import { basisBlocks, movedBlocks } from "../plan/basis";
import { planBlocks, type SheetPart } from "../plan/plan";
import { filled, type SheetWords } from "../words";

function costLine({ cost }: Chain, words: SheetWords): string {
  if (cost.total === undefined) return filled(words.costUnknown, { missing: cost.missing.join("; ") });
  const total = cost.total.format({ decimals: 2, uncertainty: "none" });
  return cost.perGram === undefined ? total : `${total}, ${about(cost.perGram)}`;
}

export function chainBlocks(chain: Chain, parts: readonly SheetPart[], words: SheetWords): Block[] {
  const rows = chain.inventory.map(({ material, form, portion, steps }) => [
    material,
    form,
    handy(portion),
    steps.join(", "),
  ]);
  const overall = chain.overall?.toUnicode() ?? chain.overallMissing ?? "";
  return [
    { kind: "title", text: String(chain), lines: overall === "" ? [] : [overall], blanks: [words.date, words.worker] },
    { kind: "heading", text: words.shopping },
    { kind: "table", head: [words.material, words.form, words.planned, words.inSteps], rows, figures: [2] },
    { kind: "paragraph", text: costLine(chain, words) },
    ...movedBlocks(chain.moved, words),
    ...chain.plans.flatMap((plan): Block[] => [
      { kind: "page" },
      ...planBlocks(
        plan,
        parts.filter((part) => part === "bench"),
        words,
      ),
      ...(parts.includes("basis") ? basisBlocks({ plan, words }) : []),
    ]),
  ];
}

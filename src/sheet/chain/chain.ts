// The sheets of a chain: what must be on the shelf for all of it, what it costs, and one sheet for each preparation.
import type { Chain } from "../../preparation";
import type { Quantity } from "../../quantity";
import type { Block } from "../document/blocks";
import { basisBlocks, movedBlocks } from "../plan/basis";
import { handFor } from "../plan/context";
import { planBlocks, type SheetPart } from "../plan/plan";
import { filled, type SheetWords } from "../words";

function costLine({ cost }: Chain, words: SheetWords): string {
  if (cost.total === undefined) return filled(words.costUnknown, { missing: cost.missing.join("; ") });
  const total = cost.total.format({ decimals: 2, uncertainty: "none" });
  return cost.perGram === undefined
    ? total
    : filled(words.chainCost, { total, perGram: cost.perGram.format({ significant: 3, uncertainty: "none" }) });
}

/** What the last preparation brings. */
function titleOf({ plans }: Chain, words: SheetWords): string {
  const last = plans.at(-1)!;
  const { formula, theoreticalYield } = last.product;
  return filled(words.chain, {
    mass: handFor({ plan: last, words }).grams(theoreticalYield),
    product: formula,
    count: String(plans.length),
  });
}

/** As the instruments of the first preparation show it. */
const shownBy = ({ plans }: Chain, portion: Quantity, words: SheetWords): string => {
  const hand = handFor({ plan: plans[0]!, words });
  return portion.dimension === "volume" ? hand.litres(portion) : hand.grams(portion);
};

export function chainBlocks(chain: Chain, parts: readonly SheetPart[], words: SheetWords): Block[] {
  const rows = chain.inventory.map(({ material, form, portion, steps }) => [
    material,
    form,
    shownBy(chain, portion, words),
    steps.join(", "),
  ]);
  const overall = chain.overall?.toUnicode() ?? chain.overallMissing ?? "";
  return [
    {
      kind: "title",
      text: titleOf(chain, words),
      lines: overall === "" ? [] : [overall],
      blanks: [words.date, words.worker].map((name) => ({ name })),
    },
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

// The sheet of a plan: two pages for the bench, and a page with the ground it stands on.
import { under } from "../../foundation/facts";
import type { Plan } from "../../preparation";
import type { Block } from "../document/blocks";
import type { SheetWords } from "../words";
import { basisBlocks } from "./basis";
import type { OnPaper } from "./context";
import { readyBlocks } from "./have-ready";
import { hazardBlocks } from "./hazards";
import { leadBlocks, stripBlock, titleBlock } from "./head";
import { recordBlocks } from "./record";
import { wasteBlocks } from "./waste";
import { weighingBlocks } from "./weighing";
import { workBlocks } from "./work";

/** Parts of a sheet. */
export type SheetPart = "bench" | "basis";

export function planBlocks(
  plan: Plan,
  parts: readonly SheetPart[],
  words: SheetWords,
  whose: string = words.batch,
): Block[] {
  return under(plan.request.facts, () => blocksFor({ plan, words }, parts, whose));
}

function blocksFor(on: OnPaper, parts: readonly SheetPart[], whose: string): Block[] {
  const bench = parts.includes("bench")
    ? [
        stripBlock(on),
        ...leadBlocks(on),
        ...hazardBlocks(on),
        ...readyBlocks(on),
        ...weighingBlocks(on),
        ...workBlocks(on),
        ...recordBlocks(on),
        ...wasteBlocks(on),
      ]
    : [];
  const basis = parts.includes("basis") ? basisBlocks(on) : [];
  const between: Block[] = bench.length > 0 && basis.length > 0 ? [{ kind: "page" }] : [];
  return [titleBlock(on, whose), ...bench, ...between, ...basis];
}

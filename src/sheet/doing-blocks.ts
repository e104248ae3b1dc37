// The work itself, step by step as the plan has it: one action each, with the cautions that belong to it.
import type { Plan, ProcedureStep } from "../preparation";
import type { Block } from "./document";
import { sentence } from "./words";

/** A step with its cautions, and a line for what is noted in it. */
function stepLine({ text, cautions, blank }: ProcedureStep): string {
  // What the work itself asks for; the substances have their own list.
  const own = [...new Set(cautions.filter(({ about }) => about === undefined).map((one) => one.text))];
  const care = own.length === 0 ? "" : ` CAUTION: ${own.join("; ")}.`;
  return `${text}${care}${blank === undefined ? "" : " ________"}`;
}

/** What else this kind of preparation is watched for; the test for complete precipitation is a step of its own. */
function watching({ checks, completeness }: Plan): Block[] {
  const items = checks.filter((one) => one.text !== completeness?.test).map(({ text }) => sentence(text));
  return items.length === 0
    ? []
    : [
        { kind: "heading", level: 2, text: "Checks" },
        { kind: "list", items },
      ];
}

export function doingBlocks(plan: Plan): Block[] {
  return [
    { kind: "heading", level: 2, text: "Procedure" },
    { kind: "list", ordered: true, items: plan.steps.map(stepLine) },
    ...watching(plan),
  ];
}

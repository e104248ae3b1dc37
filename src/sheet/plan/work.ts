// The work, one action a step, each with its caution and with the observation it takes.
import type { ProcedureStep } from "../../preparation";
import { leadOf } from "../../preparation/internal";
import type { Block, StepBlock } from "../document/blocks";
import { sentence } from "../figures";
import { type OnPaper, stepsOnPaper } from "./context";

/** What the work itself asks for; the substances have their table. */
const ownCautions = ({ cautions }: ProcedureStep): string[] => [
  ...new Set(cautions.filter(({ about }) => about === undefined).map(({ text }) => sentence(text))),
];

export function workBlocks({ plan, words }: OnPaper): Block[] {
  const { first, rest } = stepsOnPaper(plan);
  const weighing = plan.steps.filter(({ operation }) => operation === "weigh");
  const steps: StepBlock[] = [
    ...(first
      ? [{ text: words.weighAll, cautions: [...new Set(weighing.flatMap(ownCautions))], blanks: ["weighed"] }]
      : []),
    ...rest.map((step) => ({
      text: step.text,
      cautions: ownCautions(step),
      blanks: step.blank === undefined ? [] : [step.blank],
    })),
  ];
  const lead = leadOf(plan.feasibility, plan.product.formula);
  return [
    { kind: "heading", text: words.procedure },
    ...(lead === undefined ? [] : [{ kind: "list", items: [`${words.check}: ${sentence(lead)}`] } as const]),
    { kind: "steps", steps },
  ];
}

// The work, one action a step, each with its caution and with the observation it takes.
import type { ProcedureStep } from "../../preparation";
import type { Blank, Block, StepBlock } from "../document/blocks";
import { sentence } from "../figures";
import type { SheetWords } from "../words";
import { type OnPaper, stepsOnPaper } from "./context";
import { broughtToMass } from "./have-ready";
import { blanksFor } from "./observation";

/** What the work itself asks for; the substances have their table. */
const ownCautions = ({ cautions }: ProcedureStep): string[] => [
  ...new Set(cautions.filter(({ about }) => about === undefined).map(({ text }) => sentence(text))),
];

/** Of crystals a sample is tested, and no wash. */
const ofCrystals = (words: SheetWords): SheetWords => ({ ...words, obsLastWashTest: words.obsCrystalTest });

/** Weighings while drying have a table of their own; the last one is the result. */
const blanksOf = ({ operation, blank, choices }: ProcedureStep, { words, plan }: OnPaper): Blank[] =>
  blank === undefined
    ? []
    : operation === "dry"
      ? [{ name: words.inRecord, choices: [] }]
      : blanksFor(blank, plan.isolation.how === "crystallise" ? ofCrystals(words) : words, choices);

export function workBlocks(on: OnPaper): Block[] {
  const { plan, words } = on;
  const { first, rest } = stepsOnPaper(plan);
  const weighing = plan.steps.filter(({ operation }) => operation === "weigh");
  const byMass = new Set(broughtToMass(plan));
  const steps: StepBlock[] = [
    ...(first
      ? [
          {
            text: words.weighAll,
            cautions: [...new Set(weighing.flatMap(ownCautions))],
            blanks: [],
          },
        ]
      : []),
    ...rest.map((step) => ({
      text: step.text,
      cautions: ownCautions(step),
      blanks: [...(byMass.has(step) ? [{ name: words.tare, unit: "g" }] : []), ...blanksOf(step, on)],
    })),
  ];
  return [
    { kind: "heading", text: words.procedure },
    { kind: "steps", steps },
  ];
}

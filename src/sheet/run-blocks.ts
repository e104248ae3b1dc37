// The sheet of a run: what differs from the plan, what came out, and the verdict.
import type { Run } from "../preparation";
import type { Quantity } from "../quantity";
import type { Block } from "./document";
import { movedBlocks } from "./plan-blocks";
import { about, withUncertainty } from "./words";

function weighedBlocks(run: Run): Block[] {
  const shown = (x: Quantity | string): string => (typeof x === "string" ? x : about(x, undefined, 4));
  const { product, materialBalance } = run;
  return [
    { kind: "heading", level: 2, text: "As weighed" },
    run.changes.length === 0
      ? { kind: "paragraph", text: "As planned." }
      : {
          kind: "table",
          head: ["", "planned", "as weighed"],
          rows: run.changes.map((c) => [c.what, shown(c.planned), shown(c.now)]),
        },
    {
      kind: "paragraph",
      text: `${materialBalance.limiting} limits; theory ${withUncertainty(product.theoreticalYield)} of ${product.formula}.`,
    },
  ];
}

function drynessOf({ dryness }: Run): string {
  const cake =
    dryness.moistureOfCake === undefined ? "" : ` The wet cake was ${about(dryness.moistureOfCake, "%", 2)} liquor.`;
  if (dryness.constant === undefined) return `One weighing says nothing about dryness: dry on and weigh again.${cake}`;
  const [loss, criterion] = [about(dryness.lastLoss!, "g", 2), about(dryness.criterion!, "g", 2)];
  if (dryness.state === "gaining")
    return `It gained ${about(dryness.lastLoss!.negated(), "g", 2)}: it absorbs water, or was weighed warm.${cake}`;
  const goes = dryness.endsAt === undefined ? "" : ` It goes to about ${about(dryness.endsAt, "g", 3)}.`;
  return dryness.constant
    ? `Constant mass: the last two weighings differ by ${loss}, within ${criterion}.${cake}`
    : `Still drying: the last two weighings differ by ${loss}, more than ${criterion}.${goes}${cake}`;
}

export function runBlocks(run: Run): Block[] {
  const { dryMass, observations } = run;
  const blocks: Block[] = [
    { kind: "heading", level: 1, text: `Run: ${run.plan.title}` },
    ...(observations.note === undefined ? [] : [{ kind: "paragraph", text: observations.note } as const]),
    ...movedBlocks(run.moved),
    ...weighedBlocks(run),
  ];
  if (dryMass === undefined) return blocks;
  return [
    ...blocks,
    { kind: "heading", level: 2, text: "Result" },
    { kind: "paragraph", text: `${withUncertainty(dryMass)} dry. ${drynessOf(run)}` },
    {
      kind: "table",
      head: ["if the product is", "theory", "yield"],
      rows: run.yields.map((y) => [y.formula, withUncertainty(y.theoreticalYield), withUncertainty(y.percentYield)]),
    },
    ...(run.identity === undefined
      ? []
      : ([
          { kind: "heading", level: 2, text: "What it is" },
          { kind: "paragraph", text: `${run.identity.text}. Next: ${run.identity.next}.` },
        ] as const)),
    { kind: "heading", level: 2, text: "Verdict" },
    { kind: "list", items: run.verdict.map((f) => `${f.code.replace(/-/g, " ")}: ${f.text}. Next: ${f.next}.`) },
  ];
}

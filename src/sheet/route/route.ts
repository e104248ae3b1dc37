// The page of a route: what it makes and what that rests on, the trial of two grams first with what to see and what ends it,
// the steps with their margins, what is taken from the shelf; then the sheet of each step.
import type { Quantity } from "../../quantity";
import type { Route } from "../../route";
import type { Block } from "../document/blocks";
import { about, handy } from "../figures";
import { basisBlocks } from "../plan/basis";
import { asRead } from "../plan/context";
import { planBlocks, type SheetPart } from "../plan/plan";
import { filled, type SheetWords } from "../words";

const percent = (q: Quantity): string => `${q.in("%").toPrecision(2)} %`.replace("1.0e+2", "100");

function keyFigures(route: Route, words: SheetWords): Block {
  const { cost, evidence, margin, equipment, gas, waste } = route;
  const money =
    cost.perGram === undefined ? words.unknown : cost.perGram.format({ significant: 2, uncertainty: "none" });
  const gases = gas.map(({ formula, volume }) => `${handy(volume, 2)} ${formula}`).join(", ");
  return {
    kind: "strip",
    cells: [
      {
        label: words.routeYield,
        value: percent(route.yield),
        note: filled(words.routeFor, { mass: handy(route.wanted) }),
      },
      { label: words.cost, value: money, note: cost.missing.join("; ") },
      { label: words.evidence, value: evidence.grade, note: evidence.source },
      { label: words.routeMargin, value: margin.text, note: "" },
      { label: words.routeNeeds, value: equipment.length > 0 ? equipment.join(", ") : words.none, note: "" },
      { label: words.gas, value: gases === "" ? words.none : gases, note: "" },
      {
        label: words.waste,
        value: waste.volume === undefined ? words.unknown : handy(waste.volume, 2),
        note: waste.metals.join(", "),
      },
    ],
  };
}

/** What was tried already, by step. */
function tried({ steps }: Route["trial"]): Block[] {
  const items = steps.flatMap(({ plan, tried: lines }) => lines.map((line) => `${plan.product.name}: ${line}`));
  return items.length === 0 ? [] : [{ kind: "list", items }];
}

function trialBlocks({ trial }: Route, words: SheetWords): Block[] {
  return [
    { kind: "heading", text: filled(words.trialFirst, { mass: about(trial.product, undefined, 1) }) },
    {
      kind: "table",
      head: [words.material, words.trialSee, words.trialEnds],
      rows: trial.steps.map(({ plan, expect, ends }) => [
        `${plan.product.name}: ${plan.weighings.map(({ material, portion }) => `${asRead(plan, portion)} ${material}`).join(", ")}`,
        expect.join("; "),
        ends.join("; "),
      ]),
    },
    ...tried(trial),
    {
      kind: "blanks",
      items: trial.steps.map(({ plan }) => ({ name: filled(words.trialRecord, { product: plan.product.name }) })),
    },
  ] as Block[];
}

/** The blocks of a route. */
export function routeBlocks(route: Route, parts: readonly SheetPart[], words: SheetWords): Block[] {
  const steps = route.steps.map((step, i) => [
    String(i + 1),
    `${step.name}: ${step.equation.toUnicode()}`,
    percent(step.yield),
    step.margins[0]?.text ?? "",
    step.evidence.grade,
  ]);
  const { plan: first } = route.steps[0]!;
  const shelf = route.inventory.map((line) => [
    line.material,
    line.form,
    asRead(first, line.portion),
    line.steps.join(", "),
  ]);
  const swaps = route.swaps.map(({ instead, use }) => filled(words.routeSwap, { use, instead }));
  return [
    {
      kind: "title",
      text: String(route),
      lines: [route.steps.map(({ product }) => product).join(" → ")],
      blanks: [words.date, words.worker].map((name) => ({ name })),
    },
    keyFigures(route, words),
    ...trialBlocks(route, words),
    { kind: "heading", text: words.routeSteps },
    {
      kind: "table",
      head: ["", words.routeReaction, words.routeYield, words.routeMargin, words.evidence],
      rows: steps,
      figures: [2],
    },
    { kind: "heading", text: words.shopping },
    { kind: "table", head: [words.material, words.form, words.planned, words.inSteps], rows: shelf, figures: [2] },
    ...(swaps.length === 0 ? [] : [{ kind: "list", items: swaps } as const]),
    { kind: "heading", text: words.routeReasons },
    {
      kind: "list",
      items: route.steps.flatMap(({ product, reasons }) =>
        reasons.map(({ text, source }) => `${product}: ${text} (${source})`),
      ),
    },
    ...route.steps.flatMap(({ plan }): Block[] => [
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

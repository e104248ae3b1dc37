// What stands ready, and what is weighed and measured: materials and water, each in the unit that the tool shows.
import { waterByTheJug } from "../../preparation/internal";
import type { Quantity } from "../../quantity";
import { BLANK, type Block, type Cell } from "../document/blocks";
import { about, handy, sentence, sizeOf } from "../figures";
import { filled } from "../words";
import { asRead, type OnPaper, stepsOnPaper, waterOf } from "./context";

/** Smallest usual jug that takes a volume with room to stir. */
const JUGS = [50, 100, 250, 500, 1000, 2000, 3000, 5000, 10_000, 20_000] as const;

function jugFor(volume: Quantity): string {
  const needed = volume.in("mL").toNumber() * 1.25;
  const size = JUGS.find((mL) => mL >= needed);
  if (size === undefined) return handy(volume, 2);
  return size < 1000 ? `${size} mL` : `${size / 1000} L`;
}

export function readyBlocks({ plan, words }: OnPaper): Block[] {
  const { steps, vessel, waste, request } = plan;
  const does = (...operations: readonly string[]): boolean =>
    steps.some(({ operation }) => operations.includes(operation));
  const jugs = steps.flatMap(({ operation, materials, after }) =>
    operation === "dissolve" && after.volume !== undefined
      ? [filled(words.jug, { volume: jugFor(after.volume), material: materials.join(", ") })]
      : [],
  );
  const step = request.readability?.mass ?? "0.1 g";
  const items = [
    ...(vessel?.smallest === undefined ? [] : [filled(words.vesselOf, { size: sizeOf(vessel.smallest) })]),
    ...jugs,
    ...(does("dissolve", "suspend", "add") && vessel !== undefined ? [words.stirrer] : []),
    filled(words.balance, { step: String(step) }),
    ...(steps.some((one) => waterOf(one) !== undefined) ? [words.cylinder] : []),
    ...(does("heat", "hold", "cool", "concentrate") || !("missing" in plan.heat) ? [words.thermometer] : []),
    ...(does("filter") ? [words.filter] : []),
    ...(does("dry") ? [words.tray] : []),
    ...(does("fire") ? [words.kiln] : []),
    ...(waste.volume === undefined ? [] : [filled(words.container, { volume: handy(waste.volume, 2) })]),
  ];
  return [
    { kind: "heading", text: words.ready },
    { kind: "ticks", items },
  ];
}

/** Water of each step that takes some, by the number the step has on paper. */
function waterRows({ plan, words }: OnPaper): Cell[][] {
  const { first, rest } = stepsOnPaper(plan);
  return rest.flatMap((step, i) => {
    const water = waterOf(step);
    if (water === undefined) return [];
    const number = String(i + (first ? 2 : 1));
    return [[filled(words.water, { step: number }), "H₂O", waterByTheJug(water), BLANK, BLANK, ""]];
  });
}

export function weighingBlocks(on: OnPaper): Block[] {
  const { plan, words } = on;
  const rows = plan.weighings.map((w): Cell[] => [
    w.material,
    w.form,
    asRead(plan, w.portion),
    BLANK,
    BLANK,
    w.limiting ? words.limiting : filled(words.excess, { share: about(w.excess, "%", 2) }),
  ]);
  const notes = plan.weighings.flatMap(({ material, note }) => {
    const shelf = plan.request.materials.find(({ name }) => name === material);
    const assay = shelf?.strength ?? shelf?.assay;
    const known = [...(assay === undefined ? [] : [String(assay)]), ...(note === undefined ? [] : [note])];
    return known.length === 0 ? [] : [`${material}: ${known.join("; ")}`];
  });
  const warnings = plan.warnings.map((one) => `${words.check}: ${sentence(one)}`);
  const items = [...warnings, ...notes];
  return [
    { kind: "heading", text: words.weigh },
    {
      kind: "table",
      head: [words.material, words.form, words.planned, words.actual, words.lot, words.note],
      rows: [...rows, ...waterRows(on)],
      figures: [2],
      wide: [4],
    },
    ...(items.length === 0 ? [] : [{ kind: "list", items } as const]),
  ];
}

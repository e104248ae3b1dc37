// The sheets of a class: one page for whoever prepares the lesson, with what each group and all of them need, and the sheet
// that each group works from.
import type { Plan } from "../../preparation";
import { type Quantity, quantity } from "../../quantity";
import { BLANK, type Block, type Cell } from "../document/blocks";
import { asRead, expectedInWords, handFor, type OnPaper } from "../plan/context";
import { kitOf } from "../plan/have-ready";
import { hazardBlocks } from "../plan/hazards";
import { planBlocks, type SheetPart } from "../plan/plan";
import { waterSteps } from "../plan/weighing";
import { filled, type SheetWords } from "../words";

/** Groups by number, or by their names. */
export type Groups = number | readonly string[];

const namesOf = (groups: Groups): readonly string[] =>
  typeof groups === "number" ? Array.from({ length: groups }, (_, i) => String(i + 1)) : groups;

/** Whole packs that so much takes; undefined where no pack is known. */
function packsFor(
  plan: Plan,
  material: string,
  all: Quantity,
): { readonly size: Quantity; readonly count: number } | undefined {
  const pack = plan.request.materials.find(({ name }) => name === material)?.pack;
  if (pack === undefined) return undefined;
  const size = quantity(pack.size as Quantity);
  return size.dimension === all.dimension ? { size, count: Math.ceil(all.dividedBy(size).toNumber("")) } : undefined;
}

/** What one group and all groups take, and how many packs that is. */
function shoppingRows(on: OnPaper, groups: number): Cell[][] {
  const { plan, words } = on;
  const hand = handFor(on);
  const times = BigInt(groups);
  const shown = (portion: Quantity): string =>
    portion.dimension === "volume" ? hand.litres(portion) : hand.grams(portion);
  const materials = plan.weighings.map(({ material, form, portion: weighed }): Cell[] => {
    const portion = plan.steps
      .flatMap(({ more }) => (more?.material === material && more.portion !== undefined ? [more.portion] : []))
      .filter((one) => one.dimension === weighed.dimension)
      .reduce((sum, one) => sum.plus(one), weighed);
    const all = portion.times(times);
    const packs = packsFor(plan, material, all);
    const count =
      packs === undefined ? "" : filled(words.packsOf, { count: String(packs.count), size: shown(packs.size) });
    return [material, form, asRead(plan, portion), asRead(plan, all), count];
  });
  const water = waterSteps(plan).map((one) => one.water);
  // the water of all washes of a step, and no alcohol; what a pack brings is bought with it
  const washed = plan.steps.flatMap(({ operation, put, materials }) =>
    (operation === "wash" || operation === "rinse") && materials.length === 0 ? put.map((pot) => pot.water) : [],
  );
  const [first, ...rest] = [...water, ...washed].filter((one) => one.isPositive());
  if (first === undefined) return materials;
  const litres = rest.reduce((sum, one) => sum.plus(one), first);
  return [...materials, [words.waterOfAll, "H₂O", hand.litres(litres), hand.litres(litres.times(times)), ""]];
}

/** A row for each group, with a blank for each portion, the dry mass and the yield. */
function resultRows({ plan }: OnPaper, names: readonly string[]): Cell[][] {
  const portions = plan.weighings.map(() => BLANK);
  return names.map((name) => [name, ...portions, BLANK, BLANK, BLANK]);
}

const unitOf = (plan: Plan, portion: Quantity): string => asRead(plan, portion).split(" ").at(-1)!;

function teacherBlocks(on: OnPaper, groups: Groups): Block[] {
  const { plan, words } = on;
  const names = namesOf(groups);
  const count = names.length;
  const hand = handFor(on);
  const waste = plan.waste.volume;
  return [
    {
      kind: "title",
      text: filled(words.class, { groups: String(count), title: plan.title }),
      lines: [plan.equation.toUnicode(), words.classLine],
      blanks: [words.date, words.teacher].map((name) => ({ name })),
    },
    { kind: "heading", text: words.shopping },
    {
      kind: "table",
      head: [
        words.material,
        words.form,
        words.oneGroup,
        filled(words.allGroups, { groups: String(count) }),
        words.packs,
      ],
      rows: shoppingRows(on, count),
      figures: [2, 3],
    },
    { kind: "heading", text: words.kit },
    { kind: "ticks", items: kitOf(on).map((item) => filled(words.kitTimes, { groups: String(count), item })) },
    ...hazardBlocks(on),
    ...(waste === undefined
      ? []
      : [
          {
            kind: "paragraph",
            text: filled(words.classWaste, { volume: hand.litres(waste.times(BigInt(count))) }),
          } as const,
        ]),
    { kind: "heading", text: words.results },
    { kind: "paragraph", text: filled(words.expectedOfGroup, expectedInWords(on)) },
    {
      kind: "table",
      head: [
        words.group,
        ...plan.weighings.map(({ material, portion }) => `${material}, ${unitOf(plan, portion)}`),
        `${words.obsDried}, g`,
        `${words.yieldIs}, %`,
        words.remarks,
      ],
      rows: resultRows(on, names),
    },
  ];
}

export function classBlocks(plan: Plan, groups: Groups, parts: readonly SheetPart[], words: SheetWords): Block[] {
  return [...teacherBlocks({ plan, words }, groups), { kind: "page" }, ...planBlocks(plan, parts, words, words.group)];
}

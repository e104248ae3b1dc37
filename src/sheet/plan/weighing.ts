import { list } from "../../foundation/wording";
import type { Plan, ProcedureStep } from "../../preparation";
import { isFromRounding } from "../../preparation/internal";
import type { Quantity } from "../../quantity";
import { BLANK, type Block, blankCell, type Cell } from "../document/blocks";
import { about, pretty, sentence } from "../figures";
import { filled } from "../words";
import { asRead, gasesLedIn, handFor, numberOf, type OnPaper, stepsOnPaper, waterOf } from "./context";

/** Water of each step that takes some, with the number the step has on paper. */
export const waterSteps = (plan: Plan): { readonly step: ProcedureStep; readonly water: Quantity }[] =>
  stepsOnPaper(plan).rest.flatMap((step) => {
    const water = waterOf(step);
    return water === undefined ? [] : [{ step, water }];
  });

/** Materials that take no part in the equation: they are weighed as well. */
const asideRows = ({ plan, words }: OnPaper): Cell[][] =>
  plan.steps
    .filter(
      ({ operation, materials }) =>
        operation === "weigh" && !plan.weighings.some(({ material }) => material === materials[0]),
    )
    .map(({ materials, amounts }): Cell[] => {
      const shelf = plan.request.materials.find(({ name }) => name === materials[0]);
      const [portion] = amounts;
      const shown = portion === undefined ? words.asNeeded : asRead(plan, portion);
      const blank = portion === undefined ? BLANK : blankCell(unitOf(shown));
      return [materials.join(", "), shelf === undefined ? "" : pretty(String(shelf.form)), shown, blank, BLANK, ""];
    });

/** Of a solution the other of mass and volume, beside the one that is taken. */
function otherUnit(on: OnPaper, material: string): string[] {
  const { plan } = on;
  const step = plan.steps.find(({ operation, materials }) => operation === "weigh" && materials[0] === material);
  const [portion, other] = step?.amounts ?? [];
  if (portion === undefined || other === undefined) return [];
  const { grams, litres } = handFor(on);
  const shown = other.dimension === "mass" ? grams(other) : litres(other);
  return [filled(on.words.inOtherUnit, { portion: asRead(plan, portion), other: shown })];
}

/** What a step takes of a pack beside what is weighed of it at first. */
function takenLater(on: OnPaper, material: string): string[] {
  const { plan, words } = on;
  return plan.steps
    .filter(
      ({ operation, materials, from }) =>
        BESIDE.includes(operation) && materials.includes(material) && from === undefined,
    )
    .flatMap((step) => {
      const portion = step.amounts.at(-1);
      return portion === undefined
        ? []
        : [filled(words.takenLater, { portion: asRead(plan, portion), step: numberOf(plan, step) })];
    });
}

/** Work that something of a pack goes into beside, to keep a liquor as it is. */
const BESIDE: readonly ProcedureStep["operation"][] = ["concentrate", "cool", "filter", "heat"];

const unitOf = (shown: string): string => shown.split(" ").at(-1)!;

/** Of an excess of as much again the third figure is a whole percent. */
const WHOLE = "100 %";

export function weighingBlocks(on: OnPaper): Block[] {
  const { plan, words } = on;
  const hand = handFor(on);
  const led = gasesLedIn(plan);
  const weighed = plan.weighings.filter((one) => !led.includes(one));
  const rows = weighed.map((w): Cell[] => {
    const shown = asRead(plan, w.portion);
    return [
      w.material,
      w.form,
      shown,
      blankCell(unitOf(shown)),
      BLANK,
      w.limiting
        ? words.limiting
        : isFromRounding(w.excess)
          ? words.inProportion
          : filled(words.excess, { share: about(w.excess, "%", w.excess.compare(WHOLE) < 0 ? 2 : 3) }),
    ];
  });
  const water = waterSteps(plan).map(({ step, water }): Cell[] => {
    const shown = hand.litres(water);
    return [filled(words.water, { step: numberOf(plan, step) }), "H₂O", shown, blankCell(unitOf(shown)), BLANK, ""];
  });
  const beside = plan.request.materials.filter(({ name }) => !plan.weighings.some(({ material }) => material === name));
  const asides = beside.map(({ name, note }) => ({ material: name, note }));
  const notes = [...plan.weighings, ...asides].flatMap(({ material, note }) => {
    const shelf = plan.request.materials.find(({ name }) => name === material);
    const assay = shelf?.strength ?? shelf?.assay;
    // a bare percent is taken by mass; packs of spirit print it by volume
    const isBare = assay === shelf?.strength && /^[\d.,\s]+%$/.test(String(assay));
    const has = (shelf?.also ?? []).map(({ form, share }) =>
      filled(words.shareOf, { share: String(share), formula: pretty(String(form)) }),
    );
    const known = [
      ...(assay === undefined ? [] : [isBare ? filled(words.byMass, { share: String(assay) }) : String(assay)]),
      ...(has.length === 0 ? [] : [filled(words.packHas, { besides: list(has) })]),
      ...otherUnit(on, material),
      ...takenLater(on, material),
      ...(note === undefined ? [] : [note]),
    ];
    return known.length === 0 ? [] : [`${material}: ${known.join("; ")}`];
  });
  const warnings = plan.warnings.map((one) => `${words.check}: ${sentence(one)}`);
  const gases = led.map(({ material, portion }) => filled(words.ledIn, { material, portion: asRead(plan, portion) }));
  const decided = plan.checks.flatMap(({ about: of, text }) => (of === "weighing" ? [sentence(text)] : []));
  const items = [...warnings, ...gases, ...notes, ...decided];
  return [
    { kind: "heading", text: words.weigh },
    {
      kind: "table",
      head: [words.material, words.form, words.planned, words.actual, words.lot, words.note],
      rows: [...rows, ...asideRows(on), ...water],
      figures: [2],
      wide: [4],
    },
    ...(items.length === 0 ? [] : [{ kind: "list", items } as const]),
  ];
}

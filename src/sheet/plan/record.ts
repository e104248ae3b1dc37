// What is written down at the end: drying, result, what the mass says, waste, label, deviations.
import { molarMass, parseFormula } from "../../formula";
import type { Plan, WasteVessel } from "../../preparation";
import {
  type Gain,
  gainOf,
  heldWaterOf,
  ignitionDecides,
  isGel,
  leftOnIgnition,
  withGelWater,
} from "../../preparation/internal";
import type { Quantity } from "../../quantity";
import { BLANK, type Block, type Picture } from "../document/blocks";
import { about, capital, pretty, sentence } from "../figures";
import { liquorOnLabel } from "../label/liquor-label";
import { dryingChart } from "../pictures/charts";
import { filled, type SheetWords } from "../words";
import { bare, expectedOf, handFor, instrumentsOf, type OnPaper, rangeOf, warmestOf } from "./context";
import { observationName } from "./observation";

const grams = (q: Quantity): number => q.toNumber("g");

/** What is dried, or fired. */
const recordOf = ({ plan, words }: OnPaper): string => (plan.isolation.how === "residue" ? words.firing : words.drying);

const chartOf = (on: OnPaper): Picture => {
  const { plan, words } = on;
  const { low, high } = expectedOf(plan);
  const shown = rangeOf(on);
  return {
    svg: dryingChart({
      title: recordOf(on),
      text: filled(words.dryingText, shown),
      across: words.number,
      band: words.bandDry,
      low: grams(low),
      high: grams(high),
    }),
    text: "",
  };
};

/** May a heated sample tell which formula it is, where the work itself fires nothing? */
const asksForIgnition = ({ isolation, product, candidates }: Plan): boolean =>
  isolation.how !== "residue" &&
  isolation.how !== "liquor" &&
  ignitionDecides(parseFormula(product.formula), candidates);

/** What a mass means, and what heat would leave of a sample, where that tells which formula it is. */
function meaning({ plan, words }: OnPaper, means: string, formula: string): string {
  const left = asksForIgnition(plan) ? leftOnIgnition(parseFormula(formula)) : undefined;
  if (left === undefined) return means;
  const { residue, condition } = left;
  const share = about(left.share, "%");
  return condition === undefined
    ? filled(words.heatLeaves, { means, share, residue })
    : filled(words.heatLeavesWhere, { means, share, residue, where: condition });
}

/** The most that a gel may weigh at constant mass; undefined for what is none. */
function gelMost(plan: Plan): Quantity | undefined {
  const formula = parseFormula(plan.product.formula);
  const isWet = plan.isolation.how === "precipitate" && isGel(formula) && heldWaterOf(formula) === undefined;
  return isWet ? withGelWater(expectedOf(plan).high) : undefined;
}

/** What the mass found says, before any candidate is looked at. */
function keyRows(on: OnPaper): string[][] {
  const { plan, words } = on;
  const hand = handFor(on);
  const { low, high } = rangeOf(on);
  const theory = hand.grams(plan.product.theoreticalYield);
  const { high: expected, isOpen } = expectedOf(plan);
  const isCrop = expected.compare(plan.product.theoreticalYield) < 0 && high !== theory;
  const most = gelMost(plan);
  const gel = most === undefined ? undefined : hand.grams(most);
  const others = plan.candidates.filter(({ wanted }) => !wanted);
  const within = low === high ? high : filled(words.within, { low: bare(low), high });
  if (isOpen)
    return [
      [filled(words.above, { mass: high }), words.wet],
      [filled(words.atMost, { mass: high }), filled(words.keepsUnknown, { formula: plan.product.formula })],
    ];
  return [
    [
      filled(words.above, { mass: gel ?? (isCrop ? theory : high) }),
      plan.isolation.how === "residue" ? words.raw : words.wet,
    ],
    ...(gel === undefined ? [] : [[filled(words.within, { low: bare(high), high: gel }), words.gelWater]]),
    ...(isCrop && gel === undefined
      ? [[filled(words.within, { low: bare(high), high: theory }), words.lessStayed]]
      : []),
    [within, meaning(on, words.consistent, plan.product.formula)],
    [filled(words.below, { mass: low }), words.lost],
    ...others.map(({ formula, theoreticalYield }) => [
      filled(words.ifItIs, { mass: hand.grams(theoreticalYield) }),
      meaning(on, formula, formula),
    ]),
  ];
}

/** What a mass means that the fire makes larger: less than the charge is a loss, and the gain is held against what handling takes. */
function gainRows(on: OnPaper, { start, end, gain, tells }: Gain): string[][] {
  const { plan, words } = on;
  const hand = handFor(on);
  const { low, high } = rangeOf(on);
  const charge = hand.grams(start);
  const rows = (from: string, what: string): string[] => [filled(words.within, { low: bare(from), high }), what];
  const loss = hand.grams(end.times(plan.handlingLoss));
  return [
    [filled(words.above, { mass: high }), words.overGain],
    ...(tells
      ? [rows(low, words.consistent), [filled(words.within, { low: bare(charge), high: low }), words.notThrough]]
      : [rows(charge, filled(words.hiddenGain, { loss, gain: hand.grams(gain) }))]),
    [filled(words.below, { mass: charge }), words.belowCharge],
  ];
}

/** Weighings of what dries or is fired. */
const WEIGHINGS = [1, 2, 3, 4] as const;

/** A liquor is weighed as it is: nothing is dried. */
const liquorBlocks = (on: OnPaper): Block[] => [
  { kind: "heading", text: on.words.result },
  { kind: "blanks", items: [{ name: on.words.liquorMass, unit: "g" }] },
  ...labelBlocks(on),
];

export function recordBlocks(on: OnPaper): Block[] {
  const { plan, words } = on;
  if (plan.isolation.how === "liquor") return liquorBlocks(on);
  const rows = WEIGHINGS.map((i) => [String(i), BLANK, BLANK, BLANK]);
  const hand = handFor(on);
  const theory = hand.grams(plan.product.theoreticalYield);
  const gain = gainOf(plan, plan.handlingLoss);
  const share =
    gain === undefined
      ? []
      : [{ name: filled(words.shareDone, { start: hand.grams(gain.start), gain: hand.grams(gain.gain) }), unit: "%" }];
  return [
    {
      kind: "columns",
      columns: [
        [
          { kind: "heading", text: recordOf(on) },
          { kind: "blanks", items: [{ name: words.tare, unit: "g" }] },
          { kind: "table", head: ["", words.time, `${words.gross}, g`, `${words.net}, g`], rows },
          { kind: "heading", text: words.result },
          {
            kind: "blanks",
            items: [
              { name: observationName("dried", words), unit: "g" },
              { name: filled(words.yieldLine, { theory }), unit: "%" },
              ...share,
            ],
          },
          ...labelBlocks(on),
        ],
        [
          { kind: "pictures", pictures: () => [chartOf(on)] },
          { kind: "heading", text: words.key },
          {
            kind: "table",
            head: [words.found, words.means],
            rows: gain === undefined ? keyRows(on) : gainRows(on, gain),
          },
        ],
      ],
    },
  ];
}

/** Work that is done where somebody wants to know. */
const OPTIONAL = "ignition test";

/** Cautions of the ignition test, where the meaning of a mass asks for one. */
export const testCautions = (on: OnPaper): string[] =>
  asksForIgnition(on.plan) ? furtherCautions(on, (work) => work === OPTIONAL) : [];

/** Cautions of work that is no step of its own: the ignition test, the waste. */
function furtherCautions({ plan }: OnPaper, about: (work: string) => boolean): string[] {
  const said = new Set(plan.steps.flatMap(({ cautions }) => cautions.map(({ text }) => text)));
  return plan.stepCautions
    .filter(({ step }) => about(step))
    .flatMap(({ step, cautions }) =>
      cautions
        .filter(({ about: substance, text }) => substance === undefined && !said.has(text))
        .map(({ text }) => `${capital(step)}: ${text}.`),
    );
}

/** Less than this a drop of anything settles. */
const WORTH_TREATING = "1 mmol";
/** As many substances of a vessel are named. */
const MOST_NAMED = 4;

/** What is in a vessel that is left, heaviest first, as far as a balance shows it. */
function contentsLine({ plan, words }: OnPaper, { contents }: WasteVessel): string {
  const hand = handFor({ plan, words });
  const step = instrumentsOf(plan).mass;
  const inside = [
    ...contents.solids.map(({ formula, mass }) => ({ formula, mass })),
    ...contents.dissolved.map(({ formula, amount }) => ({ formula, mass: amount.times(molarMass(formula)).to("g") })),
  ].filter(({ mass }) => mass.compare(step) >= 0);
  const named = inside.sort((one, other) => other.mass.compare(one.mass)).slice(0, MOST_NAMED);
  const known = named.map(({ mass, formula }) => filled(words.massOf, { mass: hand.grams(mass), formula }));
  const missing = contents.unknown.map((what) => `${what} (${words.unknown})`);
  const all = [...known, ...missing];
  return all.length === 0 ? words.hardlyAnything : all.join(", ");
}

/** What to put to one vessel, and how much of it. */
const treatments = (on: OnPaper, { treatment }: Pick<WasteVessel, "treatment">): string[] => {
  const { words } = on;
  const hand = handFor(on);
  return treatment
    .filter(({ amount }) => amount.compare(WORTH_TREATING) > 0)
    .map(({ reagent, purpose, mass, vinegar }) =>
      vinegar === undefined
        ? filled(words.reagentFor, {
            mass: mass === undefined ? "" : hand.grams(mass),
            reagent: pretty(reagent),
            purpose,
          })
        : filled(words.vinegarFor, { volume: hand.litres(vinegar), purpose }),
    );
};

const nameOf = (vessel: WasteVessel["vessel"], words: SheetWords): string =>
  ({
    "mother liquor": words.motherLiquor,
    filtrate: words.filtrate,
    "wash water": words.washWater,
    residue: words.residue,
    "gas trap": words.inTrap,
    liquor: words.liquor,
  })[vessel];

/** One line for each vessel: what it is, how much, what is in it, and what is put to it. */
function vesselLine(on: OnPaper, one: WasteVessel): string {
  const { words } = on;
  const name = nameOf(one.vessel, words);
  const which =
    one.volume === undefined || one.vessel === "residue"
      ? name
      : filled(words.ofVolume, { vessel: name, volume: handFor(on).litres(one.volume) });
  return [`${which}: ${contentsLine(on, one)}.`, ...treatments(on, one)].join(" ");
}

function wasteItems(on: OnPaper): string[] {
  const { plan, words } = on;
  const { waste, byProducts, cautions } = plan;
  const hand = handFor(on);
  const vessels = waste.vessels.map((one) => vesselLine(on, one));
  const metals = waste.metals
    .filter(({ precipitate, mass }) => precipitate && mass.compare(instrumentsOf(plan).mass) >= 0)
    .map(({ symbol, mass, pH }) =>
      filled(words.dissolvedMetal, { metal: symbol, mass: hand.grams(mass), pH: pH ?? words.unknown }),
    );
  const kept = byProducts
    .filter(({ where, worthKeeping }) => where === "in the liquor" && worthKeeping)
    .map(({ mass, formula, why }) => filled(words.worthKeeping, { mass: hand.grams(mass), formula, why }));
  const handled = new Set(plan.weighings.map(({ form }) => form));
  const disposal = cautions.substances
    .filter(({ material, status }) => status === "classified" && handled.has(pretty(material)))
    .map(({ material, disposal: how }) =>
      filled(words.ofMaterial, { observation: pretty(material), material: how ?? "" }),
    );
  return [
    ...vessels,
    ...metals,
    ...waste.notes.map(sentence),
    ...kept,
    ...disposal,
    ...furtherCautions(on, (work) => work !== OPTIONAL),
    ...(waste.volume === undefined ? [] : [waste.closing]),
  ];
}

function labelBlocks({ plan, words }: OnPaper): Block[] {
  const upTo = warmestOf(plan);
  const limit =
    upTo === undefined
      ? ""
      : filled(words.notAbove, { temperature: upTo.format({ unit: "°C", decimals: 0, uncertainty: "none" }) });
  return [
    { kind: "heading", text: words.label },
    {
      kind: "paragraph",
      text: filled(words.labelLine, {
        product: plan.isolation.how === "liquor" ? liquorOnLabel(plan, words) : plan.product.formula,
        limit,
      }).replace(/, $/, ""),
    },
    { kind: "blanks", items: [{ name: words.deviations }] },
  ];
}

export const wasteBlocks = (on: OnPaper): Block[] => [
  { kind: "heading", text: on.words.wasteOf },
  { kind: "list", items: [...new Set(wasteItems(on))] },
];

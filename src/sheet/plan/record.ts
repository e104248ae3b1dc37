// What is written down at the end: drying, result, what the mass says, waste, label, deviations.
import { parseFormula } from "../../formula";
import type { Plan } from "../../preparation";
import {
  gainOf,
  heldWaterOf,
  isSecondCrop,
  restInCrucible,
  standsBesideInCrucible,
  staysInCrucible,
} from "../../preparation/internal";
import type { Quantity } from "../../quantity";
import { BLANK, type Blank, type Block, type Picture } from "../document/blocks";
import { sentence } from "../figures";
import { dryingChart } from "../pictures/charts";
import { filled } from "../words";
import { expectedOf, handFor, type OnPaper, rangeOf, weighedAs } from "./context";
import { labelBlocks } from "./label-line";
import { massRows } from "./mass-table";
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

/** Weighings of what dries or is fired. */
const WEIGHINGS = [1, 2, 3, 4] as const;

/** A liquor is weighed as it is: nothing is dried. */
const liquorBlocks = (on: OnPaper): Block[] => [
  { kind: "heading", text: on.words.result },
  { kind: "blanks", items: [{ name: on.words.liquorMass, unit: "g" }] },
  ...labelBlocks(on),
];

/** Crystals of the mother liquor, weighed apart. */
const hasSecondCrop = ({ steps }: Plan): boolean => steps.some(isSecondCrop);

/** The blank of the yield; none where no theory can be stated. */
function yieldLine(on: OnPaper, theory: string | undefined): Blank[] {
  const { plan, words } = on;
  if (theory === undefined) return [];
  const { formula, inPlace } = weighedAs(plan);
  const held = heldWaterOf(parseFormula(formula));
  const all = weighedAs(plan).theory ?? plan.product.theoreticalYield;
  if (held !== undefined) {
    const [least, most] = [held.least, held.most].map((times) => handFor(on).grams(all.times(times)));
    return [{ name: filled(words.yieldWithWater, { least: least!, most: most! }), unit: "%" }];
  }
  const { ofAnotherBatch: rest } = expectedOf(plan);
  if (rest !== undefined)
    return [
      { name: filled(words.yieldUnrinsed, { theory }), unit: "%" },
      { name: filled(words.yieldRinsed, { theory, rest: handFor(on).grams(rest) }), unit: "%" },
    ];
  const beside = standsBesideInCrucible(plan);
  if (beside.isPositive())
    return [{ name: filled(words.yieldWithout, { stays: handFor(on).grams(beside), theory }), unit: "%" }];
  const phrase = inPlace ? words.yieldInPlace : hasSecondCrop(plan) ? words.yieldOfCrops : words.yieldLine;
  return [{ name: filled(phrase, { theory, formula }), unit: "%" }];
}

/** Weighings to a constant mass, as they are written down. */
const weighings = (on: OnPaper): Block[] => [
  { kind: "heading", text: recordOf(on) },
  { kind: "blanks", items: [{ name: on.words.tare, unit: "g" }] },
  {
    kind: "table",
    head: ["", on.words.time, `${on.words.gross}, g`, `${on.words.net}, g`],
    rows: WEIGHINGS.map((i) => [String(i), BLANK, BLANK, BLANK]),
  },
];

export function recordBlocks(on: OnPaper): Block[] {
  const { plan, words } = on;
  if (plan.isolation.how === "liquor") return liquorBlocks(on);
  const hand = handFor(on);
  const as = weighedAs(plan);
  const theory = as.theory && hand.grams(as.theory);
  const twice = hasSecondCrop(plan);
  const weighed = twice
    ? ["1", "2"].map((number) => ({ name: filled(words.obsCrop, { number }), unit: "g" }))
    : [{ name: observationName("dried", words), unit: "g" }];
  const stays = staysInCrucible(plan);
  const without =
    restInCrucible(plan).isPositive() && theory !== undefined
      ? [{ name: filled(words.yieldWithoutRest, { stays: hand.grams(stays), theory }), unit: "%" }]
      : [];
  const gain = gainOf(plan, plan.handlingLoss);
  // what never comes to a constant mass is weighed once
  const isWeighedOften = !plan.steps.some(({ operation, blank }) => operation === "dry" && blank === undefined);
  const share =
    gain === undefined
      ? []
      : [{ name: filled(words.shareDone, { start: hand.grams(gain.start), gain: hand.grams(gain.gain) }), unit: "%" }];
  return [
    {
      kind: "columns",
      columns: [
        [
          ...(isWeighedOften ? weighings(on) : []),
          { kind: "heading", text: words.result },
          {
            kind: "blanks",
            items: [...weighed, ...yieldLine(on, theory), ...without, ...share],
          },
          ...(theory === undefined
            ? [
                {
                  kind: "paragraph",
                  text: sentence(filled(words.noYield, { formula: as.formula, asked: plan.product.formula })),
                } as const,
              ]
            : []),
          ...labelBlocks(on),
        ],
        [
          ...(isWeighedOften ? [{ kind: "pictures", pictures: () => [chartOf(on)] } as const] : []),
          { kind: "heading", text: words.key },
          {
            kind: "table",
            head: [words.found, words.means],
            rows: massRows(on),
          },
        ],
      ],
    },
  ];
}

// What is written down at the end: drying, result, what the mass says, waste, label, deviations.
import { parseFormula } from "../../formula";
import type { Plan } from "../../preparation";
import {
  firstCropOf,
  type Gain,
  gainOf,
  goneByItselfIn,
  heldWaterOf,
  ignitionDecides,
  isGel,
  isSecondCrop,
  leftOnIgnition,
  list,
  massInCrop,
  mayLeaveCrucible,
  mayStayInCake,
  restInCrucible,
  standsBesideInCrucible,
  staysInCrucible,
  usuallyWater,
  withGelWater,
} from "../../preparation/internal";
import type { Quantity } from "../../quantity";
import { BLANK, type Blank, type Block, type Picture } from "../document/blocks";
import { about, sentence } from "../figures";
import { dryingChart } from "../pictures/charts";
import { filled } from "../words";
import { bare, expectedOf, handFor, type OnPaper, rangeOf, weighedAs } from "./context";
import { labelBlocks } from "./label-line";
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
export const asksForIgnition = (plan: Plan): boolean =>
  plan.isolation.how !== "residue" &&
  plan.isolation.how !== "liquor" &&
  ignitionDecides(parseFormula(weighedAs(plan).formula), plan.candidates);

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

/** What a mass does not tell of a charge whose feeds give off each by itself all that leaves it. */
function untold({ plan, words }: OnPaper): string | undefined {
  const gone = goneByItselfIn(plan);
  if (gone === undefined) return undefined;
  const { formula } = plan.product;
  return gone.length === 0
    ? filled(words.nothingLeft, { formula })
    : filled(words.onlyLeft, { gases: list(gone), formula });
}

/** The most that a gel may weigh at constant mass; undefined for what is none. */
function gelMost(plan: Plan): Quantity | undefined {
  const formula = parseFormula(weighedAs(plan).formula);
  const isWet = plan.isolation.how === "precipitate" && isGel(formula) && heldWaterOf(formula) === undefined;
  return isWet ? withGelWater(expectedOf(plan).high) : undefined;
}

/** Is any liquor boiled down or cooled, so that this may go further than the steps say? */
const wasShrunk = ({ isolation, steps }: Plan): boolean =>
  isolation.how === "crystallise" || steps.some(({ operation }) => operation === "concentrate");

/** What another formula weighs, less where some of it may have been water; in words where the mass does not tell it. */
function candidateRow(on: OnPaper, other: Plan["candidates"][number]): string[] {
  const { plan, words } = on;
  const { grams: shown } = handFor(on);
  const { low, high } = expectedOf(plan);
  const most = massInCrop(plan, other, firstCropOf(plan)).plus(staysInCrucible(plan));
  const least = most.minus(mayLeaveCrucible(plan));
  const mass = shown(most);
  const isInside = most.compare(low) >= 0 && least.compare(high) <= 0;
  const { formula } = other;
  return [
    shown(least) === mass
      ? filled(words.ifItIs, { mass })
      : filled(words.within, { low: bare(shown(least)), high: mass }),
    meaning(on, isInside ? filled(words.untoldByMass, { formula }) : formula, formula),
  ];
}

/** Masses above what is expected that are none the worse for it, from the lowest on, with what they mean. */
function bandsAbove(on: OnPaper, theory: Quantity): { readonly to: Quantity; readonly means: string }[] {
  const { plan, words } = on;
  const { grams } = handFor(on);
  const { high } = expectedOf(plan);
  const gel = gelMost(plan);
  const isCrop = high.compare(theory) < 0 && grams(high) !== grams(theory);
  const own =
    gel !== undefined
      ? [{ to: gel, means: words.gelWater }]
      : isCrop
        ? [{ to: theory, means: wasShrunk(plan) ? words.lessStayed : words.lessKept }]
        : [];
  const rest = mayStayInCake(plan);
  const water = usuallyWater(plan);
  const to = (own.at(-1)?.to ?? high).plus(rest).plus(water);
  if (water.isPositive()) return [...own, { to, means: filled(words.restNoWater, { rest: grams(water) }) }];
  return rest.isPositive() ? [...own, { to, means: filled(words.restOfPacks, { rest: grams(rest) }) }] : own;
}

/** What the mass found says, before any candidate is looked at. */
function keyRows(on: OnPaper): string[][] {
  const { plan, words } = on;
  const hand = handFor(on);
  const { low, high } = rangeOf(on);
  const { formula, theory: all = expectedOf(plan).high, inPlace } = weighedAs(plan);
  const { isOpen } = expectedOf(plan);
  const others = plan.candidates.filter((one) => (inPlace ? one.formula !== formula : !one.wanted));
  const within = low === high ? high : filled(words.within, { low: bare(low), high });
  if (isOpen) return openRows(on, high);
  const bands = bandsAbove(on, all);
  const tops = [high, ...bands.map(({ to }) => hand.grams(to))];
  return [
    [filled(words.above, { mass: tops.at(-1)! }), plan.isolation.how === "residue" ? words.raw : words.wet],
    ...bands
      .map(({ means }, i) => [filled(words.within, { low: bare(tops[i]!), high: tops[i + 1]! }), means])
      .reverse(),
    [within, untold(on) ?? meaning(on, words.consistent, formula)],
    [filled(words.below, { mass: low }), words.lost],
    ...others.map((other) => candidateRow(on, other)),
  ];
}

/** What the mass of crystals says where it is not known how much of them the liquor keeps. */
function openRows(on: OnPaper, high: string): string[][] {
  const { plan, words } = on;
  const { formula } = plan.product;
  const more = plan.steps.find(({ onceMoreBelow }) => onceMoreBelow !== undefined)?.onceMoreBelow;
  const wet = [filled(words.above, { mass: high }), words.wet];
  if (more === undefined) return [wet, [filled(words.atMost, { mass: high }), filled(words.keepsUnknown, { formula })]];
  const low = handFor(on).grams(more);
  return [
    wet,
    [filled(words.within, { low: bare(low), high }), filled(words.keepsSome, { formula })],
    [filled(words.below, { mass: low }), words.keepsMore],
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
            rows: gain === undefined ? keyRows(on) : gainRows(on, gain),
          },
        ],
      ],
    },
  ];
}

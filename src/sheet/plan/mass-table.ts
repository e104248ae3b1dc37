// What the mass found says: a row for every range that means something else, and one for every other formula.
import { parseFormula } from "../../formula";
import { list } from "../../foundation/wording";
import type { Plan } from "../../preparation";
import {
  firstCropOf,
  type Gain,
  gainOf,
  goneByItselfIn,
  heldWaterOf,
  ignitionDecides,
  isAntisolvent,
  isGel,
  keepsSaltOfLiquor,
  leftOnIgnition,
  massInCrop,
  mayLeaveCrucible,
  mayStayInCake,
  staysInCrucible,
  usualFirstCrop,
  usuallyWater,
  withGelWater,
  yieldOfSteps,
} from "../../preparation/internal";
import type { Quantity } from "../../quantity";
import { about } from "../figures";
import { filled } from "../words";
import {
  bare,
  expectedOf,
  gasesLedIn,
  handFor,
  instrumentsOf,
  type OnPaper,
  rangeInWords,
  rangeOf,
  weighedAs,
} from "./context";
import { doubleSaltRows } from "./double-salt-rows";
import { acidRows, ifFeedReacted, lessOxidisedRows } from "./mass-notes";

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

/** What a gel is that weighs more than its theory: water, and what the washes leave of salts where a balance shows it. */
function gelMeans(on: OnPaper): string {
  const { washing } = on.plan;
  const salts = washing !== undefined && "plan" in washing && washing.plan.washes > 0 ? washing.leaves : undefined;
  if (salts === undefined || salts.compare(instrumentsOf(on.plan).mass) < 0) return on.words.gelWater;
  return filled(on.words.gelWaterAndSalts, { salts: handFor(on).grams(salts) });
}

/** Crystals of one weighing, or of both: the figures of a table of masses, and how their rows begin. */
interface Crop {
  readonly range: { readonly low: Quantity; readonly high: Quantity };
  /** Product of its own batch in it; undefined where the steps do not say. */
  readonly own: Quantity | undefined;
  /** Whether a second crop follows, or is in it. */
  readonly of: "all" | "first" | "both";
}

/** What is weighed: all at once, or the first crop and then both together. */
function cropsOn({ plan }: OnPaper): Crop[] {
  const { together, ...own } = expectedOf(plan);
  const first = firstCropOf(plan);
  return together === undefined
    ? [{ range: own, own: first, of: "all" }]
    : [
        { range: own, own: first, of: "first" },
        { range: together, own: yieldOfSteps(plan), of: "both" },
      ];
}

/** What is found, with the crop that it is of. */
const ofCrop = ({ words }: OnPaper, { of }: Crop, found: string): string =>
  of === "all" ? found : filled(of === "first" ? words.ofFirstCrop : words.ofBothCrops, { found });

const rowOf = (on: OnPaper, crop: Crop, found: string, means: string): string[] => [ofCrop(on, crop, found), means];

/** What a mass means, and what heat leaves of it: said once, for of both crops it is what it is of the first. */
const asHeated = (on: OnPaper, { of }: Crop, means: string, formula: string): string =>
  of === "both" ? means : meaning(on, means, formula);

/** Did alcohol that no figure counts come into the liquor before its crystals were filtered off, and stay in it? */
const isBroughtByAlcohol = ({ steps, crystallising }: Plan): boolean =>
  crystallising !== undefined &&
  steps.some(
    ({ operation, vessel, put, after }) =>
      operation === "add" &&
      vessel === "pot" &&
      [...put, after].every(({ dissolved }) => dissolved.some(({ formula }) => isAntisolvent(parseFormula(formula)))),
  );

/** Why more crystals were found than the steps bring, and dry: what may have gone further, and what may be left in them. */
function whyMore({ plan, words }: OnPaper, { of }: Crop): string {
  const { steps, weighings } = plan;
  const isBoiled = steps.some(({ operation }) => operation === "concentrate");
  const led = gasesLedIn(plan);
  const reasons = [
    isBoiled ? words.boiledFurther : words.cooledFurther,
    ...(keepsSaltOfLiquor(plan) ? [words.saltLeft] : []),
    ...(isBroughtByAlcohol(plan) ? [words.broughtByAlcohol] : []),
    // how far a gas that is led in was taken up shows in no mass
    ...(led.length === 0 ? [] : weighings.filter((one) => !led.includes(one))).map(({ form }) =>
      filled(words.materialLeft, { formula: form }),
    ),
  ];
  const why = filled(words.lessStayed, {
    why: reasons.reduce((one, other) => filled(words.or, { one, other })),
  });
  return of !== "both" && isTestedPair(plan) ? filled(words.moreBeside, { why }) : why;
}

/** Do crystals from a pair of salts have a test for the other one? Each salt is counted as if the other only shared ions with it. */
const isTestedPair = ({ crystallising, steps }: Plan): boolean =>
  crystallising?.parted !== undefined &&
  steps.some(({ operation, blank }) => operation === "wash" && blank !== undefined);

/** Is any liquor boiled down or cooled, so that this may go further than the steps say? */
const wasShrunk = ({ isolation, steps }: Plan): boolean =>
  isolation.how === "crystallise" || steps.some(({ operation }) => operation === "concentrate");

/** What another formula weighs, less where some of it may have been water; in words where the mass does not tell it. */
function candidateRow(on: OnPaper, crop: Crop, other: Plan["candidates"][number]): string[] {
  const { plan, words } = on;
  const { grams: shown } = handFor(on);
  const { low, high } = crop.range;
  const most = massInCrop(plan, other, crop.own).plus(staysInCrucible(plan));
  const least = most.minus(mayLeaveCrucible(plan));
  const mass = shown(most);
  const isInside = most.compare(low) >= 0 && least.compare(high) <= 0;
  const { formula } = other;
  const found =
    shown(least) === mass
      ? filled(words.ifItIs, { mass })
      : filled(words.within, { low: bare(shown(least)), high: mass });
  const means = isInside ? filled(words.untoldByMass, { formula }) : formula;
  return rowOf(on, crop, found, asHeated(on, crop, means, formula));
}

/** Masses above what is expected that are none the worse for it, from the lowest on, with what they mean. */
function bandsAbove(on: OnPaper, crop: Crop, theory: Quantity): { readonly to: Quantity; readonly means: string }[] {
  const { plan, words } = on;
  const { grams } = handFor(on);
  const { high } = crop.range;
  const gel = gelMost(plan);
  const isCrop = high.compare(theory) < 0 && grams(high) !== grams(theory);
  const own =
    gel !== undefined
      ? [{ to: gel, means: gelMeans(on) }]
      : isCrop
        ? [{ to: theory, means: wasShrunk(plan) ? whyMore(on, crop) : words.lessKept }]
        : [];
  const rest = mayStayInCake(plan);
  const water = usuallyWater(plan);
  const to = (own.at(-1)?.to ?? high).plus(rest).plus(water);
  if (water.isPositive()) return [...own, { to, means: filled(words.restNoWater, { rest: grams(water) }) }];
  return rest.isPositive() ? [...own, { to, means: filled(words.restOfPacks, { rest: grams(rest) }) }] : own;
}

/** What is expected: where a rinse leaves salt of an earlier batch, the masses that hold some of it apart. */
function expectedRows(on: OnPaper, crop: Crop, means: string): string[][] {
  const { words, plan } = on;
  const { grams } = handFor(on);
  const { low, high } = crop.range;
  const { ofAnotherBatch: rest } = expectedOf(plan);
  const without = rest === undefined ? high : high.minus(rest);
  if (rest === undefined || without.compare(low) <= 0) return [rowOf(on, crop, rangeInWords(on, crop.range), means)];
  return [
    rowOf(on, crop, rangeInWords(on, { low: without, high }), filled(words.withAnotherBatch, { rest: grams(rest) })),
    rowOf(on, crop, rangeInWords(on, { low, high: without }), means),
  ];
}

/** What the mass of a crop says, before any other formula is looked at. */
function cropRows(on: OnPaper, crop: Crop, theory: Quantity): string[][] {
  const { plan, words } = on;
  const hand = handFor(on);
  const { formula } = weighedAs(plan);
  const [low, high] = [hand.grams(crop.range.low), hand.grams(crop.range.high)];
  const bands = bandsAbove(on, crop, theory);
  const tops = [high, ...bands.map(({ to }) => hand.grams(to))];
  const above = (mass: string, means: string) => rowOf(on, crop, filled(words.above, { mass }), means);
  const below = (means: string) => rowOf(on, crop, filled(words.below, { mass: low }), means);
  const within = bands
    .map(({ means }, i) => rowOf(on, crop, filled(words.within, { low: bare(tops[i]!), high: tops[i + 1]! }), means))
    .reverse();
  if (crop.of === "first")
    return [
      above(high, whyMore(on, crop)),
      ...expectedRows(on, crop, meaning(on, words.consistent, formula)),
      below(words.lostOrLater),
    ];
  return [
    above(
      tops.at(-1)!,
      plan.isolation.how !== "residue" ? words.wet : goneByItselfIn(plan)?.length === 0 ? words.damp : words.raw,
    ),
    ...within,
    ...expectedRows(on, crop, untold(on) ?? asHeated(on, crop, ifFeedReacted(on, words.consistent), formula)),
    below(words.lost),
  ];
}

/** What the mass found says, crop by crop. */
function keyRows(on: OnPaper): string[][] {
  const { plan } = on;
  const { formula, theory = expectedOf(plan).high, inPlace } = weighedAs(plan);
  const others = plan.candidates.filter((one) => (inPlace ? one.formula !== formula : !one.wanted));
  if (expectedOf(plan).isOpen) return openRows(on, rangeOf(on).high);
  const crops = cropsOn(on);
  return [
    ...crops.flatMap((crop) => cropRows(on, crop, theory)),
    ...crops.flatMap((crop) => others.map((other) => candidateRow(on, crop, other))),
    ...(asksForIgnition(plan) ? [] : doubleSaltRows(on)),
    ...lessOxidisedRows(on),
    ...acidRows(on),
  ];
}

/** What the mass of crystals says where it is not known how much of them the liquor keeps. */
function openRows(on: OnPaper, high: string): string[][] {
  const { plan, words } = on;
  const { formula } = plan.product;
  const more = plan.steps.find(({ onceMoreBelow }) => onceMoreBelow !== undefined)?.onceMoreBelow;
  const wet = [filled(words.above, { mass: high }), words.wet];
  if (more === undefined)
    return [
      wet,
      [filled(words.atMost, { mass: high }), filled(words.keepsUnknown, { formula })],
      ...doubleSaltRows(on),
    ];
  const usual = usualFirstCrop(plan);
  const low = handFor(on).grams(more);
  return [
    wet,
    [filled(words.within, { low: bare(low), high }), filled(words.keepsSome, { formula })],
    [
      filled(words.below, { mass: low }),
      usual === undefined
        ? words.keepsMore
        : filled(words.keepsMoreOfDouble, { means: words.keepsMore, mass: handFor(on).grams(usual) }),
    ],
    ...doubleSaltRows(on),
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

/** Rows of the table: the mass found, and what it means. */
export function massRows(on: OnPaper): string[][] {
  const gain = gainOf(on.plan, on.plan.handlingLoss);
  return gain === undefined ? keyRows(on) : gainRows(on, gain);
}

// The head of a sheet: what is made, from what, and the figures that are looked for first.
import { list } from "../../foundation/wording";
import type { Plan } from "../../preparation";
import { gasesThatMayCome, leadOf, usualByAlcohol, usualFirstCrop } from "../../preparation/internal";
import { type Quantity, quantity } from "../../quantity";
import type { Block } from "../document/blocks";
import { about, handy, sentence, sizeOf } from "../figures";
import { strengthOf } from "../label/liquor-label";
import { filled } from "../words";
import {
  absorbentsOf,
  askedInWords,
  expectedInWords,
  expectedOf,
  handFor,
  isWasteByVolume,
  mostWasteOf,
  type OnPaper,
  rangeOf,
  trapOf,
  weighedAs,
} from "./context";

/** The title, with a blank for whose sheet it is: a batch, or a group of a class. */
export function titleBlock({ plan, words }: OnPaper, whose: string): Block {
  const { product, weighings } = plan;
  const named = product.name === product.formula ? product.formula : `${product.name}, ${product.formula}`;
  const materials = weighings.map((one) => one.material).join(", ");
  // a title that nobody gave says the materials already
  const from =
    plan.request.title !== undefined
      ? [filled(words.from, { product: named, materials })]
      : product.name === product.formula
        ? []
        : [product.formula];
  return {
    kind: "title",
    text: plan.title,
    lines: [...from, plan.equation.toUnicode()],
    blanks: [whose, words.date, words.worker, words.checked].map((name) => ({ name })),
  };
}

function vesselCell(on: OnPaper) {
  const { plan, words } = on;
  const { vessel } = plan;
  if (vessel?.smallest !== undefined)
    return {
      label: words.vessel,
      value: filled(
        trapOf(plan) !== undefined ? words.tubed : absorbentsOf(plan).length > 0 ? words.tubedTwice : words.open,
        { size: sizeOf(vessel.smallest) },
      ),
      note: filled(words.liquid, { volume: handFor(on).litres(vessel.liquid) }),
    };
  const fired = plan.steps.some(({ operation }) => operation === "fire");
  return { label: words.vessel, value: fired ? words.crucible : words.unknown, note: "" };
}

/** Less than this nobody feels. */
const FELT = "1 ΔK";

/** The feed that warms its own cold water the most, where that is more than the reaction does. */
function hottestFeed({ heat, dissolvingHeat, feeds, temperature }: Plan) {
  // what goes into warm water is warmed by it; a salt that is only dissolved has no other heat than its own
  const isCold = (name: string): boolean =>
    feeds.length === 1 ||
    feeds.some((feed) => feed.material === name && (feed.how !== "dissolve" || feed.at.compare(temperature) <= 0));
  const reaction = "rise" in heat ? heat.rise.rise : quantity("0 ΔK");
  return dissolvingHeat
    .flatMap((one) => ("rise" in one ? [{ material: one.material, rise: one.rise.rise as Quantity }] : []))
    .filter(({ material, rise }) => isCold(material) && rise.compare(reaction) > 0 && rise.compare(quantity(FELT)) >= 0)
    .sort((one, other) => other.rise.compare(one.rise))[0];
}

const kelvins = (rise: Quantity): string =>
  rise.format({ unit: "ΔK", decimals: 0, uncertainty: "none" }).split(" ")[0]!;

function heatCell({ plan, words }: OnPaper) {
  const { heat } = plan;
  const feed = "missing" in heat ? undefined : hottestFeed(plan);
  if (feed !== undefined)
    return {
      label: words.heat,
      value: filled(words.degrees, { rise: kelvins(feed.rise) }),
      note: filled(words.warmsFeed, { material: feed.material }),
    };
  if ("missing" in heat) return { label: words.heat, value: words.unknown, note: "" };
  const { rise } = heat.rise;
  const phrase = rise.value.isNegative() ? words.cools : words.warms;
  const size = rise.value.isNegative() ? rise.negated() : rise;
  if (size.compare(quantity(FELT)) < 0) return { label: words.heat, value: words.hardly, note: "" };
  return {
    label: words.heat,
    value: filled(words.degrees, { rise: kelvins(size) }),
    note: phrase,
  };
}

/** What comes out: dry product, or the liquor that is kept. */
function outcomeCell(on: OnPaper) {
  const { plan, words } = on;
  const { grams } = handFor(on);
  const { keptLiquor } = plan;
  if (keptLiquor !== undefined)
    return {
      label: words.keptLiquor,
      value: grams(keptLiquor.mass),
      note: filled(words.liquorStrength, {
        strength: strengthOf(keptLiquor, words),
        formula: keptLiquor.formula,
      }),
    };
  if (plan.isolation.how === "liquor")
    return {
      label: words.keptLiquor,
      value: `${grams(plan.product.theoreticalYield)} ${plan.product.formula}`,
      note: words.theoryInLiquor,
    };
  const looks = plan.product.looks === undefined || weighedAs(plan).inPlace ? "" : `, ${plan.product.looks}`;
  const usual = usualFirstCrop(plan);
  const brought = usualByAlcohol(plan);
  if (expectedOf(plan).isOpen)
    return {
      label: words.expected,
      value: `${filled(words.atMost, { mass: rangeOf(on).high })}${looks}`,
      note:
        usual !== undefined
          ? filled(words.lessOfDouble, { mass: grams(usual) })
          : brought !== undefined
            ? filled(words.lessUsually, { mass: grams(brought), formula: plan.product.formula })
            : filled(words.lessUnknown, { formula: plan.product.formula }),
    };
  const { value, note } = expectedInWords(on);
  return { label: words.expected, value: `${value}${looks}`, note };
}

/** What leaves warm work as vapour, water and drying aside. */
const vapoursOf = ({ steps }: Plan): readonly string[] => [
  ...new Set(
    steps
      .filter(({ operation }) => operation !== "dry")
      .flatMap(({ left }) => left)
      .flatMap(({ what, contents }) => (what === "vapour" ? contents.dissolved.map(({ formula }) => formula) : [])),
  ),
];

/** Steam of a firing. */
function steamOf(on: OnPaper): string[] {
  const { grams } = handFor(on);
  const waters = on.plan.steps
    .filter(({ operation }) => operation === "fire")
    .flatMap(({ left }) => left.flatMap(({ what, contents }) => (what === "vapour" ? [contents.water] : [])));
  return waters.filter((water) => water.isPositive()).map((water) => filled(on.words.steam, { mass: grams(water) }));
}

export function stripBlock(on: OnPaper): Block {
  const { plan, words } = on;
  const { litres, grams } = handFor(on);
  const gases = plan.gas.map(({ formula, volume }) => `${handy(volume)} ${formula}`);
  const most = mostWasteOf(plan);
  const amount = ({ volume, mass }: Pick<Plan["waste"], "volume" | "mass">): string =>
    isWasteByVolume(plan) ? litres(volume!) : grams(mass!);
  const vapours = vapoursOf(plan).map((formula) => filled(words.vapour, { formula }));
  const mayCome = gasesThatMayCome(plan.cautions, plan.equation.reactants);
  const gas = [...steamOf(on), ...gases, ...vapours].join(", ");
  return {
    kind: "strip",
    cells: [
      outcomeCell(on),
      vesselCell(on),
      {
        label: words.gas,
        value:
          gas === "" ? (mayCome.length === 0 ? words.none : filled(words.noneButMay, { gases: list(mayCome) })) : gas,
        note: gases.length === 0 ? "" : filled(words.atRoom, { temperature: about(plan.temperature, "°C", 2) }),
      },
      heatCell(on),
      {
        label: words.waste,
        value: plan.waste.volume === undefined ? words.none : amount(plan.waste),
        note:
          plan.waste.volume === undefined
            ? ""
            : most === undefined
              ? words.collect
              : filled(words.collectMore, { amount: amount(most) }),
      },
    ],
  };
}

/** What a wanted mass was taken for, and whether it goes, where that is not a plain yes: read before anything is weighed. */
export function leadBlocks(on: OnPaper): Block[] {
  const { plan, words } = on;
  const lead = leadOf(plan.feasibility, plan.product.formula, handFor(on).grams);
  const isHeatOpen = plan.steps.some(({ operation, target }) => operation === "fire" && target === undefined);
  const said = [
    ...(lead === undefined ? [] : [lead]),
    ...(plan.isolation.how === "liquor" && plan.isolation.inPlaceOfSolid === true
      ? [filled(words.inPlaceOfSolid, { why: plan.isolation.why, formula: plan.product.formula })]
      : []),
    ...plan.checks.flatMap(({ about: of, text }) => (of === "purity" ? [text] : [])),
    ...(isHeatOpen ? [filled(words.firingUnknown, { formula: plan.product.formula })] : []),
  ];
  const asked = askedInWords(on);
  const items = [...(asked === undefined ? [] : [asked]), ...said.map((one) => `${words.check}: ${sentence(one)}`)];
  return items.length === 0 ? [] : [{ kind: "list", items }];
}

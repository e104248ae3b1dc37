// What the parts of a plan's sheet share: the plan, the words, and figures no finer than the instrument.
import { parseFormula } from "../../formula";
import { list } from "../../foundation/wording";
import type { Plan, ProcedureStep } from "../../preparation";
import {
  absorbentOf,
  changedByAir,
  dryingIn,
  glassOf,
  type Hand,
  handOf,
  heldWaterOf,
  hydrateInPlace,
  type Instruments,
  isGas,
  isSecondCrop,
  isWashedOfChromate,
  mayLeaveCrucible,
  standsInPlace,
  staysInCrucible,
  usuallyWater,
} from "../../preparation/internal";
import { type Quantity, quantity, sum } from "../../quantity";
import { about, pretty, withUncertainty } from "../figures";
import { filled, type SheetWords } from "../words";

/** A plan on its way to paper. */
export interface OnPaper {
  readonly plan: Plan;
  readonly words: SheetWords;
}

/** Is the volume of all that is poured away known: has each vessel of it one, by its density? */
export const isWasteByVolume = ({ waste }: Plan): boolean =>
  waste.vessels.every(({ vessel, volume }) => vessel === "residue" || vessel === "gas trap" || volume !== undefined);

/** Waste of a plan that is washed until no test shows; undefined where that is no more than without. */
export function mostWasteOf({
  waste: { volume, mass },
  washing,
}: Plan): Pick<Plan["waste"], "volume" | "mass"> | undefined {
  const more = washing !== undefined && "plan" in washing ? washing.untilTest?.water : undefined;
  if (more === undefined || volume === undefined || mass === undefined) return undefined;
  return { volume: volume.plus(more), mass: mass.plus(more.times(quantity("1 g/mL")).to("g")) };
}

/** What balance and measuring cylinder show, where the request does not say. */
const USUAL = { mass: "0.1 g", volume: "1 mL" } as const;

const instruments = new WeakMap<Plan, Instruments>();

export function instrumentsOf(plan: Plan): Instruments {
  const known = instruments.get(plan);
  if (known !== undefined) return known;
  const { readability = {} } = plan.request;
  const read = {
    mass: quantity((readability.mass ?? USUAL.mass) as Quantity),
    volume: quantity((readability.volume ?? USUAL.volume) as Quantity),
  };
  instruments.set(plan, read);
  return read;
}

/** Figures as the instruments of the plan show them. */
export const handFor = (on: OnPaper): Hand => {
  const known = hands.get(on);
  if (known !== undefined) return known;
  const hand = handOf(instrumentsOf(on.plan), on.plan.isolation.how === "residue", (mass) =>
    filled(on.words.lessThan, { mass }),
  );
  hands.set(on, hand);
  return hand;
};

const hands = new WeakMap<OnPaper, Hand>();

/** A mass or volume to the step of the instrument it is read on. */
export function asRead(plan: Plan, portion: Quantity): string {
  const { mass, volume } = instrumentsOf(plan);
  const { value, unit } = portion.dimension === "mass" ? mass : volume;
  return portion.format({ unit, decimals: value.decimalPlaces(), uncertainty: "none" });
}

/** A mass with its uncertainty, as far as the balance shows either. */
export const massWithUncertainty = (plan: Plan, mass: Quantity): string => {
  const { value, unit } = instrumentsOf(plan).mass;
  const decimals = value.decimalPlaces();
  const known = written.get(mass);
  if (known?.decimals === decimals && known.unit === unit) return known.text;
  const text = withUncertainty(mass.to(unit), decimals);
  written.set(mass, { decimals, unit, text });
  return text;
};

/** An uncertainty is a root over everything behind a figure: written once, it is kept as long as the figure. */
const written = new WeakMap<Quantity, { readonly decimals: number; readonly unit: string; readonly text: string }>();

/** Water that a step takes from the tap: what is put in that holds nothing else. */
export function waterOf({ operation, put }: ProcedureStep): Quantity | undefined {
  if (operation === "wash" || operation === "rinse") return undefined;
  const plain = put.filter(
    ({ water, solids, dissolved }) => water.isPositive() && solids.length + dissolved.length === 0,
  );
  return plain[0]?.water;
}

/** What the wash bottle for gas is filled with; undefined where there is none. */
/** Materials that come from a cylinder or a generator: nobody weighs them. */
export const gasesLedIn = ({ request, weighings }: Plan) =>
  weighings.filter(({ material, form }) => {
    const shelf = request.materials.find(({ name }) => name === material);
    return shelf?.strength === undefined && isGas(parseFormula(form), false);
  });

/** What the wash bottles are filled with through which a gas that is led in leaves the vessel. */
export const absorbentsOf = (plan: Plan): string[] =>
  gasesLedIn(plan).flatMap(({ form }) => absorbentOf(parseFormula(form))?.called ?? []);

export const trapOf = ({ steps }: Plan): Quantity | undefined =>
  steps.find(({ vessel }) => vessel.startsWith("gas trap"))?.amounts[0];

/** The steps as they are numbered on paper: all weighing is one. */
export function stepsOnPaper({ steps }: Plan): { readonly first: boolean; readonly rest: readonly ProcedureStep[] } {
  const rest = steps.filter(({ operation }) => operation !== "weigh");
  return { first: rest.length < steps.length, rest };
}

/** The number that a step has on paper. */
export function numberOf(plan: Plan, step: ProcedureStep): string {
  const { first, rest } = stepsOnPaper(plan);
  return String(rest.indexOf(step) + (first ? 2 : 1));
}

/** Does the air of a room change what a fire left: it slakes, or takes its water again? */
export const drawsFromAir = ({ isolation, product, weighings }: Plan): boolean =>
  isolation.how === "residue" &&
  changedByAir(
    parseFormula(product.formula),
    weighings.map(({ form }) => parseFormula(form)),
  ) !== undefined;

/** What a product is not warmed above, where more would change it; what is kept in its liquor or was fired is not dried. */
export const warmestOf = (plan: Plan): Quantity<"temperature"> | undefined => {
  const { isolation } = plan;
  const { formula, inPlace } = weighedAs(plan);
  const drying = inPlace ? dryingIn(parseFormula(formula), plan.temperature) : plan.drying;
  return drying.changesAbove && isolation.how !== "liquor" && isolation.how !== "residue" ? drying.upTo : undefined;
};

/** What a fired product has in it beside itself, for the label of its bottle. */
export function besideOnLabel({ plan, words }: OnPaper): string[] {
  if (plan.isolation.how !== "residue") return [];
  const own = new Set(
    plan.request.materials.flatMap(({ aside, form }) =>
      aside === true
        ? [form, glassOf(parseFormula(String(form)))].flatMap((one) => (one === undefined ? [] : [pretty(String(one))]))
        : [],
    ),
  );
  const put = (plan.steps.at(-1)?.after.solids ?? []).filter(({ formula }) => own.has(formula));
  return [
    ...(put.length === 0 ? [] : [filled(words.withBeside, { formulas: list(put.map(({ formula }) => formula)) })]),
    ...(isWashedOfChromate(plan.steps) ? [words.chromateWashed] : []),
  ];
}

/** The solid that the sheet says to weigh. */
interface WeighedAs {
  readonly formula: string;
  /** All that there may be of it; undefined where none can be stated. */
  readonly theory: Quantity | undefined;
  /** Does it stand in place of the product? */
  readonly inPlace: boolean;
}

const weighed = new WeakMap<Plan, WeighedAs>();

export function weighedAs(plan: Plan): WeighedAs {
  const known = weighed.get(plan);
  if (known !== undefined) return known;
  const { formula, theoreticalYield } = plan.product;
  const other = standsInPlace(plan) ?? hydrateInPlace(plan);
  const found =
    other === undefined ? { formula, theory: theoreticalYield, inPlace: false } : { ...other, inPlace: true };
  weighed.set(plan, found);
  return found;
}

/** Dry product that the work should bring, by its steps. */
interface Expected {
  readonly low: Quantity;
  readonly high: Quantity;
  /** What the liquor keeps is not known: any less than `high` may be right. */
  readonly isOpen: boolean;
  /** Of both crops, where there is a second one: the first alone is what the rest says. */
  readonly together?: { readonly low: Quantity; readonly high: Quantity };
  /** The most of another batch that is weighed with it: no yield. */
  readonly ofAnotherBatch?: Quantity;
}

const larger = (a: Quantity, b: Quantity): Quantity => (a.compare(b) < 0 ? b : a);

/** A crop by cooling that is well below the theory. */
const WELL_BELOW = "99 %";

/**
 * What handling takes its usual share of: all of the theory, or the crystals that cooling brings; and with it what the
 * steps weigh at most: another solid, what is inert in the crucible. A second crop is weighed apart.
 */
export function expectedOf(plan: Plan): Expected {
  const known = expected.get(plan);
  if (known !== undefined) return known;
  const found = expectedBy(plan);
  expected.set(plan, found);
  return found;
}

const expected = new WeakMap<Plan, Expected>();

/** How much more and how much less the liquor of a precipitate may keep than its equilibrium says. */
function doubtOfLiquor({ completeness }: Plan): { readonly more: Quantity; readonly less: Quantity } {
  const { dissolved, range } = completeness !== undefined && "dissolved" in completeness ? completeness : {};
  const none = quantity("0 g");
  return dissolved === undefined || range === undefined
    ? { more: none, less: none }
    : { more: range.most.minus(dissolved), less: dissolved.minus(range.least) };
}

function expectedBy(plan: Plan): Expected {
  const { product, handlingLoss, isolation, steps } = plan;
  const { formula, theory: all } = weighedAs(plan);
  const kept = quantity("1").minus(handlingLoss);
  const last = steps.at(-1);
  const weighed = last?.target?.dimension === "mass" ? last.target : (all ?? product.theoreticalYield);
  const theory = all ?? weighed;
  const isParted = isolation.how === "crystallise" || isolation.how === "precipitate";
  const held = heldWaterOf(parseFormula(formula));
  if (held !== undefined)
    return { low: weighed.times(held.least).times(kept), high: weighed.times(held.most), isOpen: false };
  const isCrop = isParted && weighed.compare(theory.times(quantity(WELL_BELOW))) < 0;
  if (!isCrop) {
    const most = isolation.how === "residue" && last !== undefined ? larger(weighed, last.after.mass) : weighed;
    const stays = staysInCrucible(plan).minus(mayLeaveCrucible(plan));
    const high = larger(larger(theory, product.most ?? theory), most.minus(usuallyWater(plan)));
    return { low: theory.plus(stays).times(kept), high, isOpen: isolation.how === "unknown" };
  }
  const again = steps.filter(isSecondCrop).flatMap(({ after }) => after.solids.map(({ mass }) => mass));
  const others = steps.flatMap(({ ofAnotherBatch }) => ofAnotherBatch ?? []);
  const byIons = steps.flatMap(({ mayBring }) => mayBring ?? []);
  const both = sum([weighed, ...again]);
  const doubt = doubtOfLiquor(plan);
  return {
    low: weighed.minus(doubt.more).times(kept),
    high: sum([weighed, doubt.less, ...others, ...byIons]),
    isOpen: false,
    ...(again.length === 0 ? {} : { together: { low: both.times(kept), high: sum([both, ...others]) } }),
    ...(others.length === 0 ? {} : { ofAnotherBatch: sum(others) }),
  };
}

/** The range of a mass, its unit once. */
export function rangeInWords(on: OnPaper, { low, high }: Pick<Expected, "low" | "high">): string {
  const { grams } = handFor(on);
  const [least, most] = [grams(low), grams(high)];
  return least === most ? most : filled(on.words.range, { low: bare(least), high: most });
}

/** What dry product to expect, and beside it what that of one crop is and what 100 % are. */
export function expectedInWords(on: OnPaper): { readonly value: string; readonly note: string } {
  const own = expectedOf(on.plan);
  const theory = theoryNote(on);
  const { ofAnotherBatch: foreign } = own;
  const batch = (one: Pick<Expected, "low" | "high">): string =>
    rangeInWords(on, foreign === undefined ? one : { low: one.low, high: one.high.minus(foreign) });
  if (own.together === undefined) return { value: batch(own), note: theory };
  return {
    value: filled(on.words.inTwoCrops, { mass: batch(own.together) }),
    note: filled(on.words.firstCropNote, { mass: batch(own), theory }),
  };
}

/** So near to the theory that nobody takes more of everything for it: what sticks to a vessel. */
const NEAR_THEORY = "1.05";

/** A wanted mass of product is the theory of the batch: what is left of it in the hand, and how many times the batch that would be all; undefined where no mass was asked for. */
export function askedInWords(on: OnPaper): string | undefined {
  const { plan, words } = on;
  const { scale } = plan.request;
  const wanted = typeof scale === "object" && "product" in scale ? quantity(scale.product as Quantity) : undefined;
  const { theory, inPlace } = weighedAs(plan);
  if (wanted?.dimension !== "mass" || theory === undefined || inPlace || plan.isolation.how === "liquor")
    return undefined;
  const asked = handFor(on).grams(wanted);
  const { formula } = plan.product;
  const own = expectedOf(plan);
  if (own.isOpen) return filled(words.askedAsMost, { asked, formula });
  const foreign = own.ofAnotherBatch ?? quantity("0 g");
  const { low, high } = own.together ?? own;
  const least = wanted.dividedBy(high.minus(foreign));
  const most = wanted.dividedBy(low);
  if (most.compare(quantity(NEAR_THEORY)) < 0) return undefined;
  const times =
    least.compare(quantity(NEAR_THEORY)) < 0
      ? filled(words.upToTimes, { most: about(most) })
      : filled(words.toTimes, { least: about(least), most: about(most) });
  return filled(words.askedAsTheory, { asked, formula, expected: expectedInWords(on).value, times });
}

/** What dry product to expect of the first crop, as printed. */
export function rangeOf(on: OnPaper): { readonly low: string; readonly high: string } {
  const { grams } = handFor(on);
  const { low, high } = expectedOf(on.plan);
  return { low: grams(low), high: grams(high) };
}

/** The figure of a range before "to": its unit stands once. */
export const bare = (mass: string): string => mass.replace(/ g$/, "");

/** What is 100 %, and of which solid where it is not the product; or that nothing is. */
function theoryNote(on: OnPaper): string {
  const { plan, words } = on;
  const { formula, theory, inPlace } = weighedAs(plan);
  if (theory === undefined) return filled(words.noYield, { formula, asked: plan.product.formula });
  const mass = handFor(on).grams(theory);
  if (inPlace) return filled(words.theoryOf, { mass, formula });
  const { most } = plan.product;
  return most === undefined
    ? filled(words.theory, { mass })
    : filled(words.theoryUpTo, { mass, most: handFor(on).grams(most) });
}

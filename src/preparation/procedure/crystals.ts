// Getting a product out of its liquor by cooling: hot filter, boil off or add to the mass at which it stops, cool to where,
// filter, rinse, and a second crop; evaporated where cooling brings little, or nobody knows what.

import { list } from "../../foundation/wording";
import { minimum, type Quantity } from "../../quantity";
import { massOf } from "../contents/entry";
import { type Matter, matterOf } from "../contents/matter";
import { dissolve } from "../contents/react";
import type { Coming } from "../operation/concentrate";
import { cool } from "../operation/cool";
import { heat } from "../operation/heat";
import { exact, planned } from "../planning/exact";
import { putAgainstBase } from "./acid-against-base";
import { type Bench, POT } from "./bench";
import { bringToWater } from "./boiling-down";
import { waterFor } from "./by-eye";
import { clearHot } from "./clearing";
import { type Crystals, comingHot, crystalsFrom, moreByCommonIon, saidAlong, solutesOf } from "./coming";
import { type Crystallising, clearOf } from "./crystallising";
import { evaporate } from "./evaporating";
import { feltOf } from "./felted";
import { comesFirstAs } from "./first-hydrate";
import { untilClearHot } from "./haze";
import { sourAfterIron } from "./iron-out";
import { guardOf, keptFrom, withAcidFirst } from "./keeping";
import { isRecrystallised } from "./kind";
import { filterAndRinse } from "./rinsing";
import { secondCrop } from "./second-crop";
import { seedLiquor } from "./seeding";
import { saturatedHot } from "./settling";
import { makeNeutral } from "./sour-cyanide";
import { standCold } from "./standing-cold";
import { hasCooled } from "./tempering";
import { sayBuiltAlike } from "./vitriols";
import { dissolvesLessHot } from "./water-rinse";
import { celsius, percent } from "./words";

export function isolateCrystals(bench: Bench): void {
  const { crystallising } = bench.frame;
  if (crystallising === undefined) return;
  const { hot, cold, cooling, asItForms, intoCrystals } = crystallising;
  if (asItForms) {
    standCold(bench, cold);
    return;
  }
  makeNeutral(bench);
  warm(bench, hot);
  dissolveBesides(bench, hot);
  const guarded = guardOf(bench) !== undefined && !intoCrystals;
  const water = waterForWhatIsThere(bench, crystallising);
  // Into its crystals nothing can be filtered: what comes before them goes while the product is dissolved.
  const first = water === undefined || !intoCrystals ? water : clearWater(bench, crystallising);
  const besides = (): Coming[] => (first === undefined ? [] : comingHot(bench, bench.pot, first, hot));
  // what keeps air from the liquor stays in it until the water is off
  if (guarded && first !== undefined) bringToWater(bench, crystallising, first, []);
  clearHot(bench, hot, besides().length > 0 || !isDissolved(bench, cooling));
  sayBuiltAlike(bench);
  sourAfterIron(bench);
  putAgainstBase(bench);
  // of what a filter keeps with its liquor nothing comes any more
  const beside = besides();
  if (first !== undefined && beside.length > 0)
    bringToWater(bench, { ...crystallising, intoCrystals: false }, first, beside);
  if (water !== undefined && (intoCrystals || beside.length === 0)) bringToWater(bench, crystallising, water, []);
  const crystals = water === undefined ? undefined : crystalsFrom(bench, bench.pot, cold);
  if (crystals === undefined) evaporate(bench, "missing" in cooling ? cooling.missing : undefined);
  else growCrystals(bench, crystallising, crystals);
}

function warm(bench: Bench, hot: Quantity<"temperature">): void {
  const isHot = bench.pot.books.temperature.compare(hot) >= 0;
  if (isHot && !hasCooled(bench)) return;
  const kept = keptFrom(bench);
  const clear = untilClearHot(bench);
  bench.did(
    POT,
    withAcidFirst(kept, bench.pot, (pot) => heat(pot, hot)),
    {
      ...kept.takes,
      care: "isolating",
      target: hot,
      say: () => `Warm the liquor to ${celsius(hot)}${isHot ? " again" : ""}, stirring${clear}${kept.text}.`,
    },
  );
}

/**
 * A salt that is crystallised again in much hot water: what its pack has besides and hardly dissolves passes the filter as far as that
 * keeps it, and comes again where the cold liquor keeps less.
 */
function dissolveBesides(bench: Bench, hot: Quantity<"temperature">): void {
  const { reactants, products, product } = bench.frame.setting;
  if (!isRecrystallised(reactants, products) || bench.drafts.at(-1)?.vessel !== POT) return;
  const { books } = bench.pot;
  const own = matterOf(product.formula).core.key;
  const after = books.solids.reduce((pot, { matter, amount }) => {
    const kept = matter.core.key === own ? undefined : saturatedHot(matter, hot)?.perHundredGramsWater;
    if (kept === undefined) return pot;
    const most = kept.times(books.water).dividedBy(exact("100 g")).dividedBy(matter.core.molarMass).to("mol");
    return dissolve(pot, matter, minimum([amount, most]));
  }, bench.pot);
  if (after !== bench.pot) bench.amend(after);
}

/** Water that just dissolves hot what there is of the product; undefined where no figure tells. */
const clearWater = (bench: Bench, { cooling, ...rest }: Crystallising): Quantity | undefined =>
  "missing" in cooling
    ? undefined
    : waterForWhatIsThere(bench, { ...rest, cooling, water: clearOf(cooling) as Quantity<"mass"> });

/** Is it certain that the product is dissolved hot? What is not clear may be product otherwise, and no dirt. */
function isDissolved({ pot, frame: { isolation } }: Bench, cooling: Crystallising["cooling"]): boolean {
  if (!("missing" in cooling) || isolation.how !== "crystallise") return true;
  return pot.books.water.compare(isolation.waterToSaturate.times(exact(ALL))) >= 0;
}

/** Less than this of the theory is in the liquor where a solid stayed what it was. */
const ALL = "98 %";

/** Water for all the theory, or for less of it where a solid stayed what it was. */
function waterForWhatIsThere({ pot, frame }: Bench, { water }: Crystallising): Quantity | undefined {
  const { formula, molarMass } = frame.setting.product;
  const { own } = solutesOf(pot, matterOf(formula));
  const share = own?.amount.times(molarMass).dividedBy(frame.theory);
  return share === undefined || share.compare(exact(ALL)) >= 0 ? water : water?.times(share).to("g");
}

/** Cooled to its crystals, which are filtered off and rinsed; then what their liquor still gives. */
function growCrystals(bench: Bench, crystallising: Crystallising, crystals: Crystals): void {
  const { cold, hot } = crystallising;
  const { matter: crop } = crystals.own;
  const mass = massOf(crystals.own);
  // it stands in the room before it comes into ice
  seedLiquor(bench, crop, hot, crystallising.inIce ? bench.frame.setting.temperature : cold);
  const isBlock = setsToBlock(bench.pot, mass);
  const felt = feltOf(crop.formula);
  const firstAs = comesFirstAs(bench.pot, crop, { cold, hot });
  const besides = comesInIce(bench, crystals, cold);
  const more = moreByCommonIon(bench, bench.pot, crystals, cold);
  const brought =
    more === undefined
      ? ""
      : `, or up to ${bench.hand.grams(more.mass)} more, for ${list(more.salts.map(({ name }) => name))} beside it ${more.salts.length === 1 ? "brings" : "bring"} an ion of its own (how much more is in no table)`;
  const colder = crystallising.parted === undefined ? [] : colderComes(bench);
  bench.did(POT, cool(bench.pot, cold, crystals.all), {
    target: cold,
    blank: "temperature",
    ...(more === undefined ? {} : { mayBring: more.mass }),
    ...(crystallising.inIce ? { atHand: ["ice" as const] } : {}),
    say: () =>
      `Let it cool${felt !== undefined ? felt.cooled : isBlock ? ", stirring now and then, for undisturbed it would set to a block," : " undisturbed"} to ${coldIn(bench, besides, colder)}: ${bench.hand.grams(mass)} of ${crop.name} crystallises, ${percent(crystals.share)} of it${saidAlong(bench, crystals)}${againFor(bench, crystals)}${brought}${unlikeAsked(bench, crop, cold)}${firstAs}.`,
  });
  filterAndRinse(bench, crop.formula, mass, cold);
  if (!crystallising.intoCrystals || isHeldBack(crystals)) secondCrop(bench, crystallising, mass);
}

/** A salt that is crystallised again, and comes with something all the same, in words: once more it has less of that. */
function againFor({ frame: { setting } }: Bench, { along }: Crystals): string {
  const isSeen = along.some((one) => massOf(one).compare(setting.steps.mass) >= 0);
  return isSeen && isRecrystallised(setting.reactants, setting.products) ? " (once more makes it purer)" : "";
}

/** Where it cools to, and how, in words. */
function coldIn(
  { frame: { setting, crystallising } }: Bench,
  besides: readonly Coming[],
  colder: readonly string[],
): string {
  const { cold, hot, inIce } = crystallising!;
  if (inIce) return `${celsius(setting.temperature)}, then in ice and water to ${celsius(cold)}`;
  const wait = dissolvesLessHot(setting.product.formula, hot)
    ? " (it came as the water went: no need to wait)"
    : ", overnight if there is time";
  return `${celsius(cold)}${noColder(crystallising!, colder) ?? `${wait}${aloneOnly(besides)}`}`;
}

/** What would crystallise beside the product were the liquor stood in ice, and does not at the filter. */
function comesInIce(bench: Bench, { own, along }: Crystals, cold: Quantity<"temperature">): readonly Coming[] {
  const ice = planned("iced") as Quantity<"temperature">;
  if (along.length > 0 || ice.compare(cold) >= 0) return [];
  const iced = crystalsFrom(bench, bench.pot, ice);
  const most = massOf(own).times(planned("residue"));
  return iced?.along.filter((one) => massOf(one).compare(most) > 0) ?? [];
}

/** No colder, and why, in words; nothing where ice brings more of the product only. */
const aloneOnly = (besides: readonly Coming[]): string =>
  besides.length === 0 ? "" : `, and no colder (${list(besides.map(({ matter }) => matter.name))} would come with it)`;

/** Do so many crystals come that they enclose all their liquor? */
const setsToBlock = ({ mass }: Bench["pot"], crystals: Quantity): boolean =>
  crystals.compare(mass.times(planned("setsToBlock"))) > 0;

/** The boiling down ended early, for no more crystals than that may stand in it: the liquor keeps more than it would cold. */
const isHeldBack = ({ share }: Crystals): boolean =>
  share.plus(planned("staysInLiquor")).plus(planned("littleMore")).compare(exact("100 %")) < 0;

/** What else a liquor is saturated with on the way to the temperature of the room, by its own figure. */
function colderComes({ pot: { books }, frame: { setting } }: Bench): string[] {
  const { core } = matterOf(setting.product.formula);
  return books.dissolved.flatMap((one) => {
    if (one.matter.key === core.key) return [];
    const takes = waterFor(one, setting.temperature, "1");
    return takes !== undefined && takes.compare(books.water) > 0 ? [one.matter.name] : [];
  });
}

/** A liquor that is not cooled to the room, in words; undefined for one that is. */
function noColder({ cold, notBelow, parted }: Crystallising, others: readonly string[]): string | undefined {
  if (notBelow !== undefined)
    return `, the thermometer in it, and filter it there (below ${celsius(notBelow)} another hydrate would crystallise)`;
  return parted !== undefined && cold.compare(exact("25 °C")) >= 0
    ? `, the thermometer in it, and filter it there (colder ${others.length === 0 ? "something else" : list(others)} would crystallise with it, as clear prisms or grains beside the crystals: then warm it until they are gone)`
    : undefined;
}

/** Another hydrate than the one asked for, in words. */
function unlikeAsked({ frame }: Bench, crop: Matter, cold: Quantity): string {
  const { product } = frame.setting;
  return crop.formula.hasSameComposition(product.formula)
    ? ""
    : ` (not ${product.name}: at ${celsius(cold)} this is the hydrate that crystallises)`;
}

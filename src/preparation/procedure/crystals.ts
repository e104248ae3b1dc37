// Getting a product out of its liquor by cooling: hot filter, boil off or add to the mass at which it stops, cool to where,
// filter, rinse, and a second crop; otherwise where cooling brings little, or nobody knows what.

import { type Formula, parseFormula } from "../../formula";
import { isOneOf } from "../../ion/internal";
import { type Quantity, sum } from "../../quantity";
import type { Crystallisation } from "../../solubility";
import { massOf } from "../contents/entry";
import { type Matter, matterOf } from "../contents/matter";
import { type Coming, concentrate } from "../operation/concentrate";
import { cool } from "../operation/cool";
import { dilute } from "../operation/dilute";
import { heat } from "../operation/heat";
import { exact, planned } from "../planning/exact";
import { type Bench, POT } from "./bench";
import { boilDown } from "./boiling-down";
import { clearHot, filterHot } from "./clearing";
import { comesHot, hardlySoluble, limited, otherSalt } from "./coming";
import { type Crystallising, coolingOf } from "./crystallising";
import { evaporate } from "./evaporating";
import { protectionOf } from "./protection";
import { filterAndRinse } from "./rinsing";
import { secondCrop } from "./second-crop";
import { seedLiquor } from "./seeding";
import { standCold } from "./standing-cold";
import { about, celsius, percent } from "./words";

export function isolateCrystals(bench: Bench): void {
  const { crystallising } = bench.frame;
  if (crystallising === undefined) return;
  const { hot, cold, saltPair, asItForms } = crystallising;
  if (asItForms) {
    standCold(bench, cold);
    return;
  }
  warm(bench, hot);
  const cooling = coolingOfWhatIsThere(bench, crystallising);
  clearHot(bench, crystallising);
  if ("missing" in cooling) withoutCrop(bench, crystallising, cooling.missing);
  else if (isFlat(bench, cooling)) evaporate(bench);
  else if (saltPair === undefined && bringsLittle(cooling))
    boilDown(bench, `from a liquor saturated hot cooling brings only ${percent(cooling.crop.share)}`, cold);
  else {
    bringToWater(bench, crystallising, cooling.totalWater);
    growCrystals(bench, crystallising, cooling);
  }
}

function warm(bench: Bench, hot: Quantity<"temperature">): void {
  if (bench.pot.books.temperature.compare(hot) >= 0) return;
  bench.did(POT, heat(bench.pot, hot), {
    care: "isolating",
    target: hot,
    say: () => {
      const kept = protectionOf(bench.frame.setting.product.formula, "crystallising");
      return `Warm the liquor to ${celsius(hot)}, stirring${kept === undefined ? "" : `; ${kept}`}.`;
    },
  });
}

/** Cooling of all the theory, or of less, where a solid stayed what it was. */
function coolingOfWhatIsThere({ pot, frame }: Bench, { hot, cold, cooling, saltPair }: Crystallising) {
  const { formula, molarMass } = frame.setting.product;
  const { key } = matterOf(formula).core;
  const there = pot.books.dissolved
    .find(({ matter }) => matter.key === key)
    ?.amount.times(molarMass)
    .to("g");
  const isShort = there !== undefined && there.compare(frame.theory.times(exact("98 %"))) < 0;
  return saltPair !== undefined || !isShort ? cooling : coolingOf(formula, there as Quantity<"mass">, hot, cold);
}

/** No crop by cooling is known: boiled down beside other salts, else evaporated. */
function withoutCrop(bench: Bench, { otherComes, cold }: Crystallising, missing: string): void {
  if (!otherComes && isMixed(bench)) boilDown(bench, `how much hot water dissolves is not known (${missing})`, cold);
  else evaporate(bench, missing);
}

/** Less than this share of it is no crop. */
const FLAT = "25 %";

const bringsLittle = ({ crop }: Crystallisation): boolean => crop.share.compare(exact(FLAT)) < 0;

/** A salt of which cooling brings less than a quarter is evaporated, where it binds no water and hardly anything else is in the liquor. */
function isFlat(bench: Bench, cooling: Crystallisation): boolean {
  const crop = matterOf(bench.frame.setting.product.formula);
  return (
    bench.frame.crystallising?.saltPair === undefined &&
    bringsLittle(cooling) &&
    crop.waters.isZero() &&
    parseFormula(cooling.crop.formula).hasSameComposition(crop.formula) &&
    !isMixed(bench)
  );
}

/** Something else is in the liquor that must not dry into the crystals. */
const isMixed = ({ pot, frame }: Bench): boolean => {
  const { key } = matterOf(frame.setting.product.formula).core;
  const others = pot.books.dissolved.filter(({ matter }) => matter.key !== key && !isFleeting(matter.formula));
  const mass = sum([exact("0 g"), ...others.map(massOf)]);
  return mass.compare(frame.theory.times(planned("littleMore"))) > 0;
};

/** What leaves with the steam. */
const isFleeting = (formula: Formula): boolean => isOneOf(formula, "NH3", "HCl", "CH3COOH", "HCOOH", "CO2");

/** The liquor boiled down or diluted to the water it is cooled with; what comes hot is filtered off. */
function bringToWater(bench: Bench, crystallising: Crystallising, water: Quantity): void {
  const { hot } = crystallising;
  const off = bench.pot.books.water.minus(water);
  const tolerance = water.times(planned("littleMore"));
  const beside = besideHot(bench, crystallising, water);
  if (off.compare(tolerance) > 0 || beside.length > 0) boilOff(bench, off, hot, beside);
  else if (off.negated().compare(tolerance) > 0) thin(bench, off.negated());
  if (beside.length > 0) filterHot(bench, hot);
}

/** What so little hot water no longer keeps: the other salt of a pair, or what hardly dissolves. */
function besideHot(bench: Bench, { hot, saltPair }: Crystallising, water: Quantity): Coming[] {
  if (saltPair === undefined) return hardlySoluble(bench, water, hot);
  return saltPair.filteredHot.isPositive() ? otherSalt(bench, saltPair.filteredHot) : [];
}

function boilOff(bench: Bench, off: Quantity, hot: Quantity<"temperature">, beside: readonly Coming[]): void {
  const done = concentrate(bench.pot, off.isPositive() ? off : exact("0 g"), hot, beside);
  const { mass } = done.after;
  bench.did(POT, done, {
    care: "isolating",
    target: mass,
    limit: () => off,
    say: () =>
      `Boil the liquor down, stirring, until the contents weigh ${bench.hand.grams(mass)} (${bench.hand.water(off)} boiled off, ${bench.hand.grams(done.after.books.water)} of water left)${comesHot(bench, beside)}.`,
  });
}

function thin(bench: Bench, more: Quantity): void {
  const nothing = bench.pot.with({
    water: exact("0 g"),
    solids: [],
    dissolved: [],
    other: exact("0 g"),
    gas: [],
    waterMissing: [],
    unknown: [],
  });
  const done = dilute(bench.pot, nothing, more);
  bench.did(POT, done, {
    target: done.after.mass,
    amounts: [more],
    say: () =>
      `Add ${bench.hand.water(more)}, hot, until the contents weigh ${bench.hand.grams(done.after.mass)}: with less water the crystals would retain all the liquor.`,
  });
}

/** Cooled to its crystals, which are filtered off and rinsed; then what their liquor still gives. */
function growCrystals(bench: Bench, crystallising: Crystallising, cooling: Crystallisation): void {
  const { cold, saltPair } = crystallising;
  const crop = matterOf(parseFormula(cooling.crop.formula));
  const mass = saltPair?.crop ?? cooling.crop.mass;
  seedLiquor(bench, crop, cooling, crystallising);
  const coming: Coming[] = [{ matter: crop, amount: mass.dividedBy(crop.molarMass).to("mol") }];
  if (saltPair?.contamination.isPositive()) coming.push(...otherSalt(bench, saltPair.contamination));
  bench.did(POT, cool(bench.pot, cold, limited(bench.pot, coming)), {
    target: cold,
    blank: "temperature",
    say: () =>
      `Let it cool undisturbed to ${celsius(cold)}, overnight if there is time: ${bench.hand.grams(mass)} of ${crop.name} crystallises, ${saltPair === undefined ? `${percent(cooling.crop.share)} of it` : `${about(saltPair.purity, "%")} pure`}${unlikeAsked(bench, crop, crystallising)}.`,
  });
  filterAndRinse(bench, crop.formula, mass, cold);
  secondCrop(bench, crop, cold);
}

/** Another hydrate than the one asked for, in words. */
function unlikeAsked({ frame }: Bench, crop: Matter, { cold, saltPair }: Crystallising): string {
  const { product } = frame.setting;
  return saltPair !== undefined || crop.formula.hasSameComposition(product.formula)
    ? ""
    : ` (not ${product.name}: at ${celsius(cold)} this is the hydrate that crystallises)`;
}

// The end of every procedure: dry to constant mass, weigh, bottle.
import type { Formula } from "../../formula";
import { list } from "../../foundation/wording";
import { isOneOf } from "../../ion/internal";
import { type Quantity, sum } from "../../quantity";
import { massOf, type SolidEntry } from "../contents/entry";
import { matterOf } from "../contents/matter";
import { DRIED_CLOSED } from "../data/drying";
import { ignitionTellsWater } from "../identity/by-ignition";
import { collect } from "../operation/collect";
import { dry } from "../operation/dry";
import { exact, planned } from "../planning/exact";
import { mostFormed } from "../reaction/account";
import { heldWaterOf, withGelWater } from "../reaction/held-water";
import { isWetWithAlcohol, washWithAlcohol } from "./alcohol";
import { putTheRest, rinseWithAlcohol } from "./asides";
import { type Bench, POT } from "./bench";
import { bottling } from "./bottling";
import { dryingIn, dryingOf, lostToAir } from "./drying";
import { isGel } from "./isolation";
import { restOf } from "./kiln-masses";
import { driesWetWithAcid, isAirless, isKeptCovered, isWashedWithAlcohol, protectionOf } from "./protection";
import { saturatedAt } from "./settling";
import { celsius } from "./words";

export function finish(bench: Bench): void {
  if (bench.frame.isolation.how === "liquor") return;
  const product = inBottle(bench);
  const { upTo, why, deliquescent } = dryingIn(product.formula, bench.frame.setting.temperature);
  const runs = deliquescent
    ? "; it is deliquescent: press it between filter paper first, and dry it in dry air (a strong drying agent may take its crystal water too)"
    : "";
  const kept = protectionOf(product.formula, "drying");
  const care = kept === undefined ? "" : `; ${kept}`;
  rinseWithAlcohol(bench);
  putTheRest(bench);
  if (bench.frame.isolation.how === "precipitate" && isWashedWithAlcohol(product.formula))
    washWithAlcohol(bench, isAirless(product.formula));
  const own = matterOf(product.formula).core.key;
  // no curve goes beyond the boil, and no crystal water that is gone hot comes back hotter
  const hot = planned("hot");
  const warmth = (
    upTo === undefined ? planned("temperature") : upTo.compare(hot) > 0 ? hot : upTo
  ) as Quantity<"temperature">;
  // What crystallised beside it from a colder liquor may lose its own water here.
  const weathers = ({ matter, origin }: SolidEntry): boolean =>
    origin === "crystallised" &&
    matter.core.key !== own &&
    (saturatedAt(matter, warmth)?.solid.waters.compare(matter.waters) ?? 0) < 0;
  const lost = lostToAir(product.formula);
  bench.did(POT, dry(bench.pot, weathers), {
    care: "drying",
    ...(lost === undefined ? { blank: "dried" as const } : {}),
    limit: () => (isAirless(product.formula) ? undefined : upTo),
    ...(isAirless(product.formula) || isOneOf(product.formula, ...DRIED_CLOSED.formulas)
      ? { apparatus: "desiccator" as const }
      : {}),
    ...(isAirless(product.formula) && driesWetWithAcid(product.formula) ? { atHand: ["soda lime" as const] } : {}),
    say: () =>
      lost !== undefined
        ? `Press it between filter paper, let it lie covered with paper at room temperature until it looks dry${isAlcoholic(bench) ? `, ${planned("alcoholLeaves")} at least for the alcohol` : ""}, a few hours at most, and bottle it tightly then: ${lost}${care}.`
        : `${howToDry(bench, product.formula, upTo === undefined ? "at room temperature" : `at no more than ${celsius(upTo)} (${why})`)} until two weighings ${isAirless(product.formula) || isInRoom(upTo) ? "three hours" : "half an hour"} apart ${sameMass(bench)}${runs}${care}.`,
  });
  weighProduct(bench, bottling(deliquescent));
}

/** Constant mass in words: where the share of it is less than the balance shows, it shows the same. */
function sameMass({ pot, frame: { setting } }: Bench): string {
  const share = planned("constantMass");
  const mass = sum([exact("0 g"), ...pot.books.solids.map(massOf)]);
  return mass.times(share).compare(setting.steps.mass) < 0 ? "show the same" : `differ by less than ${share}`;
}

/** In the air of a room it dries so slowly that half an hour shows nothing. */
export const isInRoom = (upTo: Quantity | undefined): boolean =>
  upTo === undefined || upTo.compare(planned("airDry")) <= 0;

/** Is it wet with alcohol? */
const isAlcoholic = ({ drafts, frame: { setting } }: Bench): boolean =>
  setting.wet &&
  drafts.some(({ vessel, after, operation }) => vessel === POT && operation === "rinse" && isWetWithAlcohol(after));

/** Where and how warm, in words: alcohol leaves in open air first, and what air changes damp dries in a closed vessel. */
function howToDry(bench: Bench, product: Formula, warmth: string): string {
  const where = isAirless(product)
    ? `in a desiccator, or in a closed jar with dried calcium chloride${driesWetWithAcid(product) ? " and a dish of soda lime" : ""} beside it (damp it oxidises in air${driesWetWithAcid(product) ? ", and calcium chloride does not take the acid that it is wet with" : ""})${dryingOf(product).changesAbove ? `, ${warmth}` : ""}`
    : warmth;
  return isAlcoholic(bench)
    ? `Let the alcohol leave it, ${isAirless(product) || isKeptCovered(product) ? "covered with filter paper" : "spread thin"}, in moving air at room temperature, ${planned("alcoholLeaves")} at least and no flame near; only then dry it ${where}`
    : `Dry ${where}`;
}

/** The form the product has by now: the hydrate that crystallised, or the solid that formed in its place, where all of it is another one. */
function inBottle({ pot, frame, others }: Bench): { readonly name: string; readonly formula: Formula } {
  const { product } = frame.setting;
  const { core, key } = matterOf(product.formula);
  const own = pot.books.solids.filter(({ matter }) => matter.core.key === core.key);
  // Where none of it stands it is what precipitated in its place, most first.
  const instead = pot.books.solids
    .filter(({ matter }) => others.has(matter.key))
    .sort((one, two) => massOf(two).compare(massOf(one)))[0];
  const other = own[0] ?? instead;
  return other === undefined || own.some(({ matter }) => matter.key === key) ? product : other.matter;
}

/** What a rinse left of another batch. */
const ofAnotherBatch = ({ drafts }: Bench): Quantity | undefined =>
  drafts.find((one) => one.ofAnotherBatch !== undefined)?.ofAnotherBatch;

/** What to expect on the balance: the product, and what comes with it. */
export function weighProduct(bench: Bench, bottle: string): void {
  const { setting } = bench.frame;
  const { name, formula } = inBottle(bench);
  const matter = matterOf(formula);
  const isOther = matter.key !== matterOf(setting.product.formula).key;
  // The theory is an amount: in another hydrate it is another mass.
  const theory =
    isOther && matter.core.key === matterOf(setting.product.formula).core.key
      ? bench.frame.theory.dividedBy(setting.product.molarMass).times(matter.molarMass).to("g")
      : bench.frame.theory;
  const { solids, other } = bench.pot.books;
  const own = solids.filter((one) => one.matter.core.key === matter.core.key).map(massOf);
  const foreign = ofAnotherBatch(bench);
  const mass = own.length === 0 ? theory : foreign === undefined ? sum(own) : sum(own).minus(foreign).to("g");
  const others = solids.filter(
    (one) =>
      one.matter.core.key !== matter.core.key &&
      massOf(one).compare(mass.times(planned("worthAWord"))) > 0 &&
      massOf(one).compare(setting.steps.mass) >= 0,
  );
  const beside = others.map((one) => `${bench.hand.grams(massOf(one))} of ${one.matter.name}`);
  const known = sum([mass, ...others.map(massOf)]);
  const isInert = other.compare(mass.times(planned("worthAWord"))) > 0;
  const isFired = bench.frame.isolation.how === "residue";
  // what a fire leaves is weighed to the step: the little over the need as well
  const all = isInert ? (isFired ? bench.pot.mass : known.plus(other)) : known;
  const isLess = mass.compare(theory.times(exact("99 %"))) < 0;
  const inPlace = matter.core.key !== matterOf(setting.product.formula).core.key;
  const isOpen = bench.frame.isolation.how === "unknown" && !isOther;
  const amount = mostFormed(setting.materials, bench.frame.portions, setting.product);
  const most = amount?.times(setting.product.molarMass).to("g");
  const more =
    most === undefined || bench.hand.grams(most) === bench.hand.grams(theory)
      ? ""
      : ` if all of the acid takes metal, ${bench.hand.grams(most)} at most if none of it does`;
  const about = isOpen
    ? `${bench.hand.grams(theory)} at 100 % yield, less what the liquor keeps, which is not known`
    : inPlace
      ? `about ${bench.hand.grams(mass)} expected, by the equilibrium`
      : isLess || bench.hand.grams(mass) !== bench.hand.grams(theory)
        ? `about ${bench.hand.grams(mass)} expected, ${bench.hand.grams(theory)} at 100 % yield`
        : `${bench.hand.grams(theory)} at 100 % yield${more}`;
  const together = beside.length === 0 ? "" : `, and with it ${list(beside)}, ${bench.hand.grams(known)} in all`;
  const fired = bench.drafts.find(({ operation }) => operation === "fire");
  const isWater = fired !== undefined && restOf(bench.drafts, fired, theory).water.isPositive();
  const inert = !isInert
    ? ""
    : isFired
      ? `; ${bench.hand.grams(all)} with the ${bench.hand.grams(other)} of what the pack has besides, which stays in it unless it is water${isWater ? ", as it usually is" : ""}`
      : `; up to ${bench.hand.grams(all)}, if what the pack has besides stays in it`;
  const held = heldWaterOf(formula);
  const watery =
    held === undefined
      ? bench.frame.isolation.how !== "precipitate" || !isGel(formula)
        ? ""
        : `; a gel keeps up to ${planned("dampHolds")} of water at constant mass (${bench.hand.grams(withGelWater(!inPlace && all.compare(theory) < 0 ? theory : all))} then)${ignitionTellsWater(formula) ? ", which the ignition of a sample tells" : ""}`
      : `; dried in air it keeps ${held.from} to ${held.to} H₂O that no formula fixes, and weighs ${bench.hand.grams(mass.times(held.least))} to ${bench.hand.grams(mass.times(held.most))}`;
  const rinsed =
    foreign === undefined
      ? ""
      : `; up to ${bench.hand.grams(foreign)} more with the salt of the earlier batch that the rinse leaves, which does not count as yield of this one`;
  const changed = isOther ? ` (not ${setting.product.name})` : "";
  bench.did(POT, collect(bench.pot), {
    target: all,
    blank: "dried",
    say: () => `Weigh the dry ${name}${changed}: ${about}${together}${inert}${watery}${rinsed}. ${bottle}.`,
  });
}

// Crystals off their liquor, and rinsed with little of what takes little of them: ice water, their own saturated solution,
// alcohol.

import type { Formula } from "../../formula";
import { parseFormula } from "../../formula";
import { list } from "../../foundation/wording";
import { type Quantity, quantity, sum } from "../../quantity";
import { retainedLiquor } from "../../solubility";
import { madeOf } from "../../substance/internal";
import { type Entry, massOf } from "../contents/entry";
import { type Matter, matterOf } from "../contents/matter";
import { Pot } from "../contents/pot";
import { PlanError } from "../error";
import { filterCake } from "../operation/filter";
import { hold } from "../operation/hold";
import { afterRinse, rinse, rinsedAgain } from "../operation/rinse";
import { exact, planned } from "../planning/exact";
import { isAcid } from "../reaction/acids";
import { dissolvedBy } from "../reaction/fate";
import { isVolatile } from "../reaction/fluids";
import { withAlcohol } from "../reaction/with-alcohol";
import type { Rinse } from "../request/request";
import type { Setting } from "../request/setting";
import type { Material } from "../shelf/material";
import {
  ALCOHOL,
  alcoholOf,
  bearsAlcohol,
  bearsLastAlcohol,
  comingAlong,
  displacedFrom,
  lastAlcoholFor,
} from "./alcohol";
import { putAsides } from "./asides";
import { type Bench, MOTHER, POT } from "./bench";
import { testCrystals } from "./crystal-test";
import { apartInWater } from "./double-salt";
import { feltOf } from "./felted";
import type { Isolation } from "./isolation";
import { isRecrystallised } from "./kind";
import { dropOfOwnAcid, dropsFor, isTurnedByWater, isWashedWithAlcohol, losesAmmonia } from "./protection";
import { useOf } from "./use";
import { type Rinsing, rinseAt, takenBy, waterRinseFor } from "./water-rinse";
import { atMost, celsius, nearly } from "./words";

/** Salts that give oxygen to what burns. */
const OXIDISERS = ["nitrate", "chlorate", "perchlorate", "bromate", "permanganate", "dichromate", "chromate"];
const isOxidiser = (formula: Formula): boolean => OXIDISERS.some((name) => madeOf(formula).groups.has(name));

/** A rinse that was asked for is for crystals, and alcohol never meets an oxidiser (with silver nitrate and its acid it makes a fulminate). */
export function checkRinse({ request, product }: Setting, { how }: Isolation): void {
  const asked = request.washing?.rinse;
  if (asked === undefined) return;
  if (how === "precipitate" || how === "residue")
    throw new PlanError("plan.request", `washing.rinse is for crystals: ${product.name} is none here`, {
      hint:
        how === "precipitate" ? "washing.method, washVolume and residue say how a precipitate is washed" : undefined,
    });
  if (asked === "alcohol" && isOxidiser(product.formula))
    throw new PlanError("plan.request", `alcohol must not meet an oxidiser: not for ${product.name}`, {
      hint: "rinse with its own solution, or with little water",
    });
}

/** What crystals are pressed on: paper that an oxidiser wets burns like tinder, and silver blackens it. */
const pressedOn = (product: Formula): string =>
  isOxidiser(product) ? "on a porous tile, not between paper" : "between filter paper";

/** A liquor that gives a second crop is poured off before the rinse runs into it, in words; read when all steps are known. */
const keptApart = ({ drafts }: Bench): string =>
  drafts.some(({ vessel, operation }) => vessel === MOTHER && operation === "concentrate") &&
  drafts.some(({ vessel, operation }) => vessel === POT && operation === "rinse")
    ? "; pour the liquor off for the second crop before anything else runs into it"
    : "";

/** Filter, and rinse with little of what takes little of the product. */
export function filterAndRinse(bench: Bench, product: Formula, crop: Quantity, cold: Quantity<"temperature">): void {
  const { washing } = bench.frame.setting.request;
  const spirits = spiritsToRinseWith(bench, product);
  if (spirits.length === 0) putAsides(bench, "alcohol");
  const perGram =
    washing?.retainedLiquorPerGram === undefined
      ? retainedLiquor("coarse crystals")
      : quantity(washing.retainedLiquorPerGram as Quantity, {
          symbol: "v(ret)",
          label: "liquor held per gram of crystals, as stated",
        });
  const held = crop.times(perGram).to("mL");
  const liquorBefore = bench.pot;
  const parted = filterCake(bench.pot, held);
  bench.did(POT, parted, {
    care: "isolating",
    blank: "wetCake",
    say: () =>
      `Filter the crystals off at ${celsius(cold)}${cold.compare(bench.frame.setting.temperature) < 0 ? ", before the liquor warms," : ""} and ${feltOf(product)?.pressed ?? "press them"}; they keep ${nearly(bench.hand.litres(held))} of liquor${besides(bench, parted.after, product)}${keptApart(bench)}.`,
  });
  const liquor = parted.left[0]?.pot;
  if (liquor !== undefined) {
    bench.filtrate ??= liquor;
    bench.caught(MOTHER, liquor);
  }
  const water = held.times(exact("1 g/mL")).to("g");
  const at = rinseAt(product, bench.frame.crystallising);
  const taken = takenBy(product, water, crop, cold, at);
  const others = othersHeld(liquorBefore, product, held);
  const besideIt = others.plus(unknownHeld(liquorBefore, held)).to("g");
  const takesMuch = taken !== undefined && taken.compare(crop.times(planned("lostByRinsing"))) > 0;
  const isVain = isRinsedInVain(bench, { product, crop, taken, takesMuch, others, besideIt });
  // What alcohol brought out of the water, or may have, is not rinsed with water.
  const hasAlcohol =
    bench.frame.setting.asides.some((one) => useOf(one, bench.frame.setting) === "alcohol") ||
    bench.drafts.some(({ alcohol }) => alcohol !== undefined);
  const apart = apartInWater(product);
  const best: Rinse =
    isTurnedByWater(product) || (isVain && !hasAlcohol)
      ? "none"
      : apart !== undefined
        ? apart.how
        : takesMuch
          ? bearsLastAlcohol(product) && bearsAlcohol(bench)
            ? "alcohol"
            : "own solution"
          : taken === undefined && (madeOf(product).ammonia || hasAlcohol)
            ? "alcohol"
            : "water";
  if (spirits.length > 0) {
    rinseWithSpirits(bench, spirits, { product, crop, cold });
    testCrystals(bench, product);
    return;
  }
  const how = washing?.rinse ?? best;
  RINSES[how](bench, { product, crop, water, cold, at, taken, takesMuch, others, besideIt });
  if (how !== "none") testCrystals(bench, product);
}

/** Do crystals that cooling brings come with other salts, or stand in a liquor that gives alcohol more than them? */
function isBesideOthers(bench: Bench, product: Formula): boolean {
  const { core } = matterOf(product);
  const isOther = ({ matter }: Entry): boolean => matter.core.key !== core.key;
  return (
    bench.frame.kind !== "complex formation" && (bench.pot.books.solids.some(isOther) || comingAlong(bench).length > 0)
  );
}

/**
 * Alcohol that stands ready for crystals that are made purer, or come beside other salts: in their liquor it would bring those out too, and
 * keep it from a second crop; diluted it rinses them.
 */
function spiritsToRinseWith(bench: Bench, product: Formula): readonly Material[] {
  const { setting, crystallising } = bench.frame;
  const spirits = setting.asides.filter((one) => useOf(one, setting) === "alcohol");
  const isRinse =
    setting.request.washing?.rinse === undefined &&
    crystallising !== undefined &&
    (isRecrystallised(setting.reactants, setting.products) || isBesideOthers(bench, product)) &&
    bearsLastAlcohol(product) &&
    spirits.every((one) => one.asideTaken()?.portion.dimension === "volume");
  return isRinse ? bench.asidesFor("alcohol") : [];
}

/** Rinsed with alcohol of the plan in as much ice water. */
function rinseWithSpirits(
  bench: Bench,
  spirits: readonly Material[],
  { product, crop, cold }: Pick<Rinsing, "product" | "crop" | "cold">,
): void {
  const matter = matterOf(product);
  for (const material of spirits) {
    const { name } = material.shelf;
    const { portion } = material.asideTaken()!;
    const water = portion.times(exact("1 g/mL")).to("g");
    const taken = takenBy(product, water, crop, cold, planned("ice") as Quantity<"temperature">);
    bench.did(POT, rinse(bench.pot, bench.in(bench.pack(name)).plusWater(water), undefined, 2), {
      materials: [name],
      amounts: [portion],
      from: bench.pack(name),
      say: () =>
        `Rinse the crystals with the ${bench.hand.litres(portion)} of ${name} in ${bench.hand.water(water)}, ice-cold, in two portions, sucking off between${
          taken === undefined
            ? ""
            : ` (how much of them it dissolves is not known: less than the ${bench.hand.grams(taken)} that so much water would)`
        }; not into the liquor: what is beside the ${matter.name} in that would come out with it.`,
    });
  }
}

/** What dries off crystals and spoils what it stands beside: nitric and hydrochloric acid, not vinegar's. */
const isMineralAcid = (formula: Formula): boolean => isAcid(formula) && !madeOf(formula).organic;

/** What the liquor that crystals keep would leave in them of other salts. */
function othersHeld(pot: Pot, product: Formula, held: Quantity): Quantity {
  const { core } = matterOf(product);
  const others = pot.books.dissolved.filter(
    ({ matter: { core: of, formula } }) => of.key !== core.key && !(isVolatile(formula) && !isMineralAcid(formula)),
  );
  return others.length === 0 ? exact("0 g") : sum(others.map(massOf)).times(held).dividedBy(pot.liquor.volume).to("g");
}

/** What the liquor that crystals keep has of what the packs have besides, as if all of that stayed dissolved. */
const unknownHeld = (pot: Pot, held: Quantity): Quantity =>
  pot.books.other.times(held).dividedBy(pot.liquor.volume).to("g");

/**
 * Would a rinse cost more of the crystals than it takes out of them? What may stay is not rinsed out at that price; drops of acid, of which
 * the books know nothing, are, and so is whatever is in crystals that are made purer.
 */
function isRinsedInVain(
  { frame: { setting } }: Bench,
  { product, crop, taken, takesMuch, others, besideIt }: Omit<Rinsing, "water" | "cold" | "at">,
): boolean {
  if (dropsFor(product, "crystallising") !== undefined || isRecrystallised(setting.reactants, setting.products))
    return false;
  const isDear = taken === undefined || taken.compare(crop.times(planned("spentOnRinsing"))) > 0;
  if (!isDear || others.compare(crop.times(planned("leftUnrinsed"))) >= 0) return false;
  // what dissolves much of them is not water but their own solution or alcohol, which cost little
  return taken === undefined || takesMuch
    ? besideIt.compare(others) <= 0
    : besideIt.compare(crop.times(planned("residue"))) < 0;
}

const empty = ({ frame: { setting } }: Bench): Pot => Pot.empty(setting.temperature, setting.pressure);

/** Less than this is no portion that can be poured twice. */
const FEW_DROPS = "1 g";

/** How much of a liquid to rinse with, and how. */
const inPortions = ({ hand }: Bench, water: Quantity, liquid: string, portions = 2): string =>
  water.compare(exact(FEW_DROPS)) < 0
    ? `a few drops of ${liquid} (${hand.litres(water)}), sucking off after`
    : `${hand.litres(water)} of ${liquid}, in ${portions === 2 ? "two" : "three"} portions, sucking off between`;

const RINSES: Readonly<Record<Rinse, (bench: Bench, rinsing: Rinsing) => void>> = {
  water: (bench, rinsing) => {
    const { product, at } = rinsing;
    const { water, portions, taken } = waterRinseFor(rinsing);
    const matter = matterOf(product);
    const lost = taken === undefined ? undefined : { matter, amount: taken.dividedBy(matter.molarMass).to("mol") };
    const isIce = at.compare(planned("ice")) <= 0;
    const poured = isIce ? empty(bench) : Pot.empty(at, bench.frame.setting.pressure);
    const first = rinse(bench.pot, poured.plusWater(water), lost, portions);
    const drop = dropsFor(product, "crystallising") === undefined ? undefined : dropOfOwnAcid(product);
    const plain = isIce ? "ice-cold water" : `water of ${celsius(at)}`;
    const liquid = drop === undefined ? plain : `${plain} with a drop of ${drop}`;
    const isFree = bench.frame.setting.request.washing?.rinse === undefined;
    const alcohol = isFree && isWashedWithAlcohol(product) ? lastAlcoholFor(first.after) : undefined;
    bench.did(
      POT,
      alcohol === undefined ? first : rinsedAgain(first, (pot) => displacedFrom(bench, pot, product, alcohol)),
      {
        amounts: alcohol === undefined ? [water] : [water, alcohol],
        ...(drop === undefined ? {} : { atHand: [drop] }),
        ...(alcohol === undefined ? {} : { alcohol }),
        say: () =>
          `Rinse the crystals with ${inPortions(bench, water, liquid, portions)} ${
            taken === undefined
              ? "(how much of them it dissolves is not known: use no more)"
              : `(it dissolves ${atMost(taken, bench.hand.grams)} of them${isIce ? "" : bench.frame.crystallising?.notBelow === undefined ? ", cold water more" : ", and colder it would make another hydrate of them"})`
          }${alcohol === undefined ? "" : `, then with ${bench.hand.litres(alcohol)} of alcohol, in two portions, which takes the water along`}.`,
      },
    );
  },
  "own solution": (bench, { product, water: held, cold, at, taken, takesMuch }) => {
    const matter = matterOf(product);
    const { water, within } = twoPortions(product, held, cold);
    const made = within === undefined ? empty(bench).plusWater(water) : ownSolution(bench, product, water, within);
    const missing =
      within === undefined ? [`how much ${matter.name} a solution saturated at ${celsius(cold)} has`] : [];
    const liquid = made.with({ unknown: missing });
    const done = rinse(bench.pot, liquid, undefined);
    const stays = within?.times(quantity(afterRinse(bench.pot, made, 2).clings.toPrecision(12))).to("g");
    const instead =
      takesMuch && taken !== undefined
        ? `; as much ${at.compare(planned("ice")) <= 0 ? "ice water" : `water of ${celsius(at)}`} would dissolve up to ${bench.hand.grams(taken)}`
        : "";
    bench.did(POT, done, {
      amounts: within === undefined ? [water] : [water, within],
      ...(stays === undefined ? {} : { ofAnotherBatch: stays as Quantity<"mass"> }),
      say: () =>
        within === undefined
          ? `Rinse the crystals in two portions with their own solution, sucking off between: ${bench.hand.water(water)} shaken at ${celsius(cold)} with ${matter.name} of an earlier batch, until some stays undissolved (how much goes into it is not known); it dissolves none of the crystals.`
          : `Rinse the crystals in two portions with their own solution, sucking off between: ${bench.hand.grams(within)} of ${matter.name} of an earlier batch, shaken with ${bench.hand.water(water)} at ${celsius(cold)} until hardly any stays undissolved. It dissolves none of the crystals, and ${bench.hand.grams(stays!)} of what is in it stays with them${instead}. Without an earlier batch do not rinse: press them ${pressedOn(product)}.`,
    });
  },
  alcohol: (bench, { product, crop, water: held, takesMuch }) => {
    // of a complex alcohol takes little, so that there is enough to wet all of it; of plain salts it dissolves some
    const isComplex = bench.frame.kind === "complex formation";
    const isAmmine = losesAmmonia(product);
    const apart = apartInWater(product);
    const isTaken = takesMuch || apart !== undefined || withAlcohol(product) === "dissolves it";
    const usual = isComplex ? crop.times(planned("alcoholRinse")).times(exact("1 g/mL")).to("g") : held;
    const water = isComplex || !isTaken ? noLess(usual, crop) : usual;
    const liquid = isAmmine
      ? "a mixture of alcohol and strong ammonia, half and half"
      : apart === undefined
        ? "50 % alcohol"
        : "ice-cold 50 % alcohol";
    const why = isAmmine ? "; without ammonia in it they lose some of theirs" : "";
    const half = water.dividedBy(exact("2 g/mL")).to("mL") as Quantity<"volume">;
    const isLast = (isComplex || (takesMuch && apart === undefined)) && bearsLastAlcohol(product);
    const first = rinse(bench.pot, halfAlcohol(bench, water, isAmmine), undefined);
    const last = isLast
      ? `; then once, briefly, with ${bench.hand.litres(half)} of alcohol alone, which takes the water along`
      : "";
    bench.did(POT, isLast ? rinsedAgain(first, (pot) => rinse(pot, alcoholOf(bench, half), undefined, 1)) : first, {
      amounts: isLast ? [water, half] : [water],
      ...(isAmmine ? { atHand: ["strong ammonia"] } : {}),
      alcohol: (isLast ? half.times(2) : half).to("mL") as Quantity<"volume">,
      say: () =>
        `Rinse the crystals with ${inPortions(bench, water, liquid)}${why}; plain water ${
          apart !== undefined
            ? `would decompose them and leave ${apart.leaves}`
            : takesMuch
              ? "would dissolve too much of them"
              : "dissolves more of them"
        }, and what this dissolves is not known${last}${apart === undefined ? "" : `; then press them ${pressedOn(product)}`}.`,
    });
  },
  none: (bench, rinsing) => {
    bench.did(POT, hold(bench.pot), {
      say: () =>
        `Do not rinse${notRinsed(bench, rinsing)}: press the crystals ${pressedOn(bench.frame.setting.product.formula)}; what liquor they keep dries into them.`,
    });
  },
};

/** Why crystals are not rinsed, in words. */
function notRinsed(
  { hand, frame: { setting } }: Bench,
  { product, water, taken, at, others, besideIt }: Rinsing,
): string {
  const apart = apartInWater(product);
  if (isTurnedByWater(product)) return ", water would turn them basic";
  if (apart !== undefined) return `, water and alcohol would decompose them and leave ${apart.leaves}`;
  const isIce = at.compare(planned("ice")) <= 0;
  return taken === undefined || besideIt.compare(setting.steps.mass) < 0 || besideIt.compare(others) <= 0
    ? ", nothing but the product is in their liquor"
    : `: ${hand.litres(water)} of ${isIce ? "ice-cold water" : `water of ${celsius(at)}`} would dissolve up to ${hand.grams(taken)} of them to take ${hand.grams(besideIt)} out`;
}

/** A rinse of crystals that it hardly dissolves, no less than covers them in two portions. */
function noLess(usual: Quantity, crop: Quantity): Quantity {
  const [enough, most] = [planned("leastRinse"), crop.times(planned("mostRinse"))];
  const least = (enough.compare(most) > 0 ? most : enough).times(exact("1 g/mL")).to("g");
  return usual.compare(least) > 0 ? usual : least;
}

/** What makes two portions of a product's own solution, each as much as the crystals keep of their liquor; the water alone where no figure is known. */
function twoPortions(product: Formula, held: Quantity, cold: Quantity<"temperature">) {
  const all = held.times(2).to("g");
  const inGram = dissolvedBy(product, exact("1 g"), cold)?.dividedBy(exact("1 g"));
  if (inGram === undefined) return { water: all, within: undefined };
  const water = all.dividedBy(inGram.plus(exact("1"))).to("g");
  return { water, within: dissolvedBy(product, water, cold) };
}

/** Water with as much of a product as it holds. */
function ownSolution(bench: Bench, product: Formula, water: Quantity, mass: Quantity): Pot {
  const matter = matterOf(product);
  return empty(bench).plusWater(water).plusDissolved(matter, mass.dividedBy(matter.molarMass).to("mol"));
}

/** As much alcohol as water. */
function halfAlcohol(bench: Bench, mass: Quantity, withAmmonia: boolean): Pot {
  const half = mass.dividedBy(2);
  const ammonia = withAmmonia ? half.times(exact("25 %")) : exact("0 g");
  const dissolved = (formula: string, of: Quantity): readonly [Matter, Quantity] => {
    const matter = matterOf(parseFormula(formula));
    return [matter, of.dividedBy(matter.molarMass).to("mol")];
  };
  const pot = empty(bench)
    .plusWater(half.minus(ammonia).to("g"))
    .plusDissolved(...dissolved(ALCOHOL, half));
  return withAmmonia ? pot.plusDissolved(...dissolved("NH3", ammonia)) : pot;
}

/** What crystals keep with their liquor: other salts that the balance shows, and what the packs have beside their form. */
function besides({ hand, frame: { setting } }: Bench, { books }: Pot, product: Formula): string {
  const { core } = matterOf(product);
  const salts = books.dissolved
    .filter(({ matter: { core: of, formula } }) => of.key !== core.key && !isVolatile(formula))
    .filter((one) => massOf(one).compare(setting.steps.mass) >= 0)
    .map((one) => `${hand.grams(massOf(one))} of ${one.matter.name}`);
  if (!books.other.isPositive()) return salts.length === 0 ? "" : `, and with it ${list(salts)}`;
  return `, and with it ${list([...salts, `${hand.grams(books.other)} of what the packs have besides`])}, if that stays dissolved`;
}

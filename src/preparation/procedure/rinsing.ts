// Crystals off their liquor, and rinsed with little of what takes little of them: ice water, their own saturated solution,
// alcohol.

import type { Formula } from "../../formula";
import { parseFormula } from "../../formula";
import { type Quantity, quantity, sum } from "../../quantity";
import { retainedLiquor } from "../../solubility";
import { madeOf } from "../../substance/internal";
import { massOf } from "../contents/entry";
import { type Matter, matterOf } from "../contents/matter";
import { Pot } from "../contents/pot";
import { PlanError } from "../error";
import { filterCake } from "../operation/filter";
import { hold } from "../operation/hold";
import { rinse } from "../operation/rinse";
import { exact, planned } from "../planning/exact";
import { isAcid } from "../reaction/acids";
import { dissolvedBy } from "../reaction/fate";
import { isVolatile } from "../reaction/fluids";
import type { Rinse } from "../request/request";
import type { Setting } from "../request/setting";
import { ALCOHOL } from "./alcohol";
import { putAsides } from "./asides";
import { type Bench, MOTHER, POT } from "./bench";
import type { Isolation } from "./isolation";
import { isRecrystallised } from "./kind";
import { dropsFor, isTurnedByWater, losesAmmonia } from "./protection";
import { useOf } from "./use";
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

/** Filter, and rinse with little of what takes little of the product. */
export function filterAndRinse(bench: Bench, product: Formula, crop: Quantity, cold: Quantity<"temperature">): void {
  const { washing } = bench.frame.setting.request;
  putAsides(bench, "alcohol");
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
      `Filter the crystals off at ${celsius(cold)}${bench.frame.crystallising?.inIce === true ? ", before the liquor warms," : ""} and press them; they keep ${nearly(bench.hand.litres(held))} of liquor${besides(parted.after, bench.hand)}.`,
  });
  const liquor = parted.left[0]?.pot;
  if (liquor !== undefined) {
    bench.filtrate ??= liquor;
    bench.caught(MOTHER, liquor);
  }
  const water = held.times(exact("1 g/mL")).to("g");
  const taken = dissolvedBy(product, water, planned("ice") as Quantity<"temperature">, crop);
  const isVain =
    (taken === undefined || taken.compare(crop.times(planned("spentOnRinsing"))) > 0) &&
    nothingToRinse(bench, liquorBefore, product, crop, held);
  const takesMuch = taken !== undefined && taken.compare(crop.times(planned("lostByRinsing"))) > 0;
  // What alcohol brought out of the water, or may have, is not rinsed with water.
  const hasAlcohol =
    bench.frame.setting.asides.some((one) => useOf(one, product) === "alcohol") ||
    bench.drafts.some(({ alcohol }) => alcohol !== undefined);
  const best: Rinse =
    isTurnedByWater(product) || (isVain && !hasAlcohol)
      ? "none"
      : takesMuch
        ? "own solution"
        : taken === undefined && (madeOf(product).ammonia || hasAlcohol)
          ? "alcohol"
          : "water";
  RINSES[washing?.rinse ?? best](bench, { product, water, cold, taken, takesMuch });
}

/** What dries off crystals and spoils what it stands beside: nitric and hydrochloric acid, not vinegar's. */
const isMineralAcid = (formula: Formula): boolean => isAcid(formula) && !madeOf(formula).organic;

/** Would the liquor that crystals keep leave next to nothing in them but themselves? What is made purer is rinsed all the same. */
function nothingToRinse(
  { frame: { setting } }: Bench,
  pot: Pot,
  product: Formula,
  crop: Quantity,
  held: Quantity,
): boolean {
  const { core } = matterOf(product);
  // of the drops of acid that keep it from air and water the books know nothing
  const hasDrops = dropsFor(product, "crystallising") !== undefined;
  if (hasDrops || pot.books.other.isPositive() || isRecrystallised(setting.reactants, setting.products)) return false;
  const others = pot.books.dissolved.filter(
    ({ matter: { core: of, formula } }) => of.key !== core.key && !(isVolatile(formula) && !isMineralAcid(formula)),
  );
  const liquor = pot.with({ solids: [] });
  if (others.length === 0) return true;
  const stays = sum(others.map(massOf)).times(held).dividedBy(liquor.volume);
  return stays.compare(crop.times(planned("leftUnrinsed"))) < 0;
}

/** What crystals are rinsed with, and what of them ice water would take at most. */
interface Rinsing {
  readonly product: Formula;
  /** As much liquid as the crystals keep of their liquor. */
  readonly water: Quantity;
  readonly cold: Quantity<"temperature">;
  readonly taken: Quantity | undefined;
  readonly takesMuch: boolean;
}

const empty = ({ frame: { setting } }: Bench): Pot => Pot.empty(setting.temperature, setting.pressure);

/** Less than this is no portion that can be poured twice. */
const FEW_DROPS = "1 g";

/** How much of a liquid to rinse with, and how. */
const inPortions = ({ hand }: Bench, water: Quantity, liquid: string): string =>
  water.compare(exact(FEW_DROPS)) < 0
    ? `a few drops of ${liquid} (${hand.litres(water)}), sucking off after`
    : `${hand.litres(water)} of ${liquid}, in two portions, sucking off between`;

const RINSES: Readonly<Record<Rinse, (bench: Bench, rinsing: Rinsing) => void>> = {
  water: (bench, { product, water, taken }) => {
    const matter = matterOf(product);
    const lost = taken === undefined ? undefined : { matter, amount: taken.dividedBy(matter.molarMass).to("mol") };
    bench.did(POT, rinse(bench.pot, empty(bench).plusWater(water), lost), {
      amounts: [water],
      say: () =>
        `Rinse the crystals with ${inPortions(bench, water, "ice-cold water")} ${
          taken === undefined
            ? "(how much of them it dissolves is not known: use no more)"
            : `(it dissolves ${atMost(taken, bench.hand.grams)} of them)`
        }.`,
    });
  },
  "own solution": (bench, { product, water: held, cold, taken, takesMuch }) => {
    const matter = matterOf(product);
    const { water, within } = twoPortions(product, held, cold);
    const made = within === undefined ? empty(bench).plusWater(water) : ownSolution(bench, product, water, within);
    const missing =
      within === undefined ? [`how much ${matter.name} a solution saturated at ${celsius(cold)} has`] : [];
    const liquid = made.with({ unknown: missing });
    const done = rinse(bench.pot, liquid, undefined);
    const before = bench.pot.with({ solids: [] }).mass;
    const stays = within?.times(before.dividedBy(made.mass)).to("g");
    const instead =
      takesMuch && taken !== undefined ? `; as much ice water would dissolve up to ${bench.hand.grams(taken)}` : "";
    bench.did(POT, done, {
      amounts: within === undefined ? [water] : [water, within],
      ...(stays === undefined ? {} : { ofAnotherBatch: stays as Quantity<"mass"> }),
      say: () =>
        within === undefined
          ? `Rinse the crystals in two portions with their own solution, sucking off between: ${bench.hand.water(water)} shaken at ${celsius(cold)} with ${matter.name} of an earlier batch, until some stays undissolved (how much goes into it is not known); it dissolves none of the crystals.`
          : `Rinse the crystals in two portions with their own solution, sucking off between: ${bench.hand.grams(within)} of ${matter.name} of an earlier batch, shaken with ${bench.hand.water(water)} at ${celsius(cold)} until hardly any stays undissolved. It dissolves none of the crystals, and ${bench.hand.grams(stays!)} of what is in it stays with them${instead}. Without an earlier batch do not rinse: press them between filter paper.`,
    });
  },
  alcohol: (bench, { product, water, takesMuch }) => {
    const isAmmine = losesAmmonia(product);
    const liquid = isAmmine ? "alcohol with as much strong ammonia" : "50 % alcohol";
    const why = isAmmine ? "; without ammonia in it they lose some of theirs" : "";
    bench.did(POT, rinse(bench.pot, halfAlcohol(bench, water, isAmmine), undefined), {
      amounts: [water],
      ...(isAmmine ? { atHand: ["strong ammonia"] } : {}),
      alcohol: water.dividedBy(exact("2 g/mL")).to("mL") as Quantity<"volume">,
      say: () =>
        `Rinse the crystals with ${inPortions(bench, water, liquid)}${why}; plain water ${
          takesMuch ? "would dissolve too much of them" : "dissolves more of them"
        }, and what this dissolves is not known.`,
    });
  },
  none: (bench) => {
    bench.did(POT, hold(bench.pot), {
      say: () =>
        `Do not rinse${isTurnedByWater(bench.frame.setting.product.formula) ? ", water would turn them basic" : ", nothing but the product is in their liquor"}: press the crystals between filter paper; what liquor they keep dries into them.`,
    });
  },
};

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

/** What crystals keep with their liquor of what the packs have beside their form. */
const besides = ({ books }: Pot, { grams }: Bench["hand"]): string =>
  books.other.isPositive()
    ? `, and with it ${grams(books.other)} of what the packs have besides, if that stays dissolved`
    : "";

// A clear liquor before anything crystallises from it: what is not dissolved goes on the filter hot, then dust and rust.

import { list } from "../../foundation/wording";
import { type Quantity, sum } from "../../quantity";
import { retainedLiquor } from "../../solubility";
import { massOf } from "../contents/entry";
import { matterOf } from "../contents/matter";
import { poisonsIn } from "../contents/poisons";
import type { Pot } from "../contents/pot";
import { filterAndJoin, filterLiquor, filterSalt } from "../operation/filter";
import { hold } from "../operation/hold";
import type { Done } from "../operation/operation";
import { exact, planned } from "../planning/exact";
import { isMetal } from "../reaction/acids";
import { fateOf } from "../reaction/fate";
import { type Bench, POT } from "./bench";
import { type HotFilter, nearlySaturated } from "./hot-filter";
import { kindOfCake } from "./isolation";
import { keptFrom, withAcidAfter } from "./keeping";
import { isTurnedByWater } from "./protection";
import { celsius, times } from "./words";

/** Solids that are not wanted go before anything crystallises. */
export function filterHot(bench: Bench, hot: Quantity<"temperature">): void {
  if (bench.pot.books.solids.length === 0) return;
  const { solids } = bench.pot.books;
  const names = list([...new Set(solids.map(({ matter }) => bench.called(matter)))]);
  // a salt that stands only for want of water would go through
  const stays = solids.every(
    ({ matter: { formula } }) => isMetal(formula) || fateOf(formula, hot).precipitated !== false,
  );
  const done = stays ? filterLiquor(bench.pot) : filterSalt(bench.pot, planned("saltOnFilter"));
  const kept = keptFrom(bench, done.after);
  const { formula } = bench.frame.setting.product;
  const isRinsed = stays && hot.compare(planned("feelsHot")) > 0 && !isTurnedByWater(formula);
  // what stands for want of water is counted at one temperature
  const full = stays ? nearlySaturated(bench, hot) : undefined;
  // what is to crystallise begins to in a cold funnel, however thin it is made
  const coldSets = bench.frame.isolation.how === "crystallise" && hot.compare(planned("feelsHot")) > 0;
  const funnel = stays && full === undefined && !coldSets ? "" : ", through a warmed funnel,";
  const rinsed = isRinsed ? ", and rinse it with a little hot water" : "";
  bench.did(POT, withAcidAfter(kept, done), {
    ...kept.takes,
    ...(full === undefined ? {} : { target: full.target }),
    say: () =>
      `${filtering(bench, hot, full, !stays)}${funnel} from the ${names} that is not dissolved${rinsed}${stays ? "" : pressed(bench, done)}; the clear liquor is kept${kept.text}.`,
  });
}

/** What a salt on the filter keeps of the liquor, in words. */
export function pressed({ hand, frame: { setting } }: Bench, { left }: Done): string {
  const pot = left[0]!.pot;
  const { core } = matterOf(setting.product.formula);
  const own = pot.books.dissolved.find(({ matter }) => matter.key === core.key);
  const lost = own === undefined ? "" : ` with ${hand.grams(massOf(own))} of ${core.name} in it`;
  return `, and press it: it keeps about ${hand.grams(pot.with({ solids: [] }).mass)} of liquor${lost}`;
}

/** What stays on a filter is wet with its liquor; in words where that is a poison. */
export function wetWithPoison(liquor: Pot): string {
  const metals = poisonsIn(liquor);
  return metals.length === 0 ? "" : `, and what is on the filter, wet with ${list(metals)}, goes to the waste`;
}

/** Liquor that the cake of what is not wanted keeps, where it is worth washing out: not of metal in pieces, nor where water spoils the product. */
function worthJoining({ pot, frame: { setting, theory } }: Bench): Quantity | undefined {
  const { formula } = setting.product;
  const { solids, dissolved, waterMissing } = pot.books;
  const own = dissolved.find(({ matter }) => matter.key === matterOf(formula).core.key);
  const isCake = solids.every(
    ({ matter }) => !isMetal(matter.formula) && fateOf(matter.formula, setting.temperature).precipitated === true,
  );
  if (own === undefined || waterMissing.length > 0 || !isCake || isTurnedByWater(formula)) return undefined;
  const held = sum(solids.map((one) => massOf(one).times(retainedLiquor(kindOfCake(one.matter.formula))))).to("mL");
  const share = held.dividedBy(pot.liquor.volume);
  const lost = massOf(own).times(share);
  return share.compare(exact("1")) < 0 && lost.compare(theory.times(planned("littleMore"))) > 0 ? held : undefined;
}

/** The same of a liquor that is wanted: what the cake keeps of it is washed into it, hot where it is. */
export function filterAndWash(
  bench: Bench,
  hot: Quantity<"temperature">,
  portions: Quantity = planned("joinedPortions"),
): void {
  const held = bench.pot.books.solids.length === 0 ? undefined : worthJoining(bench);
  if (held === undefined) {
    filterHot(bench, hot);
    return;
  }
  const names = list([...new Set(bench.pot.books.solids.map(({ matter }) => bench.called(matter)))]);
  const each = held.times(exact("1 g/mL")).to("g");
  const count = portions.toNumber("");
  const parted = filterAndJoin(bench.pot, held, Array<Quantity>(count).fill(each));
  const own = matterOf(bench.frame.setting.product.formula);
  const full = nearlySaturated(bench, hot);
  const stays = parted.left[0]!.pot.books.dissolved.find(({ matter }) => matter.key === own.core.key);
  const lost =
    stays === undefined ? "" : `, and ${bench.hand.grams(massOf(stays))} of ${own.core.name} is left in it then`;
  // of what crystallises it is said where that is boiled down
  const kept = bench.frame.isolation.how === "liquor" ? keptFrom(bench, parted.after) : undefined;
  bench.did(POT, kept === undefined ? parted : withAcidAfter(kept, parted), {
    ...kept?.takes,
    amounts: [each.times(count)],
    ...(full === undefined ? {} : { target: full.target }),
    say: () =>
      `${filtering(bench, hot, full)}${full === undefined ? "" : ", through a warmed funnel,"} from the ${names} that is not dissolved, press it, and wash it ${times(count)} with ${bench.hand.water(each)} each${hot.compare(planned("feelsHot")) > 0 ? ", hot" : ""}, into the liquor: it kept about ${bench.hand.litres(held)} of that${lost}${kept?.text ?? ""}.`,
  });
}

/** How a liquor is filtered, in words. */
const filtering = (bench: Bench, hot: Quantity<"temperature">, full: HotFilter | undefined, atOnce = false): string =>
  full !== undefined
    ? `${madeUp(bench, full)} and filter it hot (${full.at})`
    : hot.compare(planned("feelsHot")) > 0
      ? `Filter ${atOnce ? `at once, no colder than ${celsius(hot)}` : `hot (${celsius(hot)})`}`
      : "Filter";

/** The water that has steamed off put in again, in words. */
const madeUp = ({ hand }: Bench, { target }: HotFilter): string =>
  `Make up what has steamed off with hot water, until the contents weigh ${hand.grams(target)},`;

/** When it is filtered, in words: of what no table tells grains may be product. */
const unclear = (bench: Bench): string =>
  bench.frame.isolation.how === "unknown"
    ? `grains that ${isSoured(bench) ? "a little more of the acid" : "more hot water"} dissolves are product, and get it; if it is cloudy even then`
    : "if it is not clear";

/** Does water turn its crystals basic, so that acid thins its liquor? */
const isSoured = ({ frame: { setting } }: Bench): boolean => isTurnedByWater(setting.product.formula);

/** What a hot filter is rinsed with, in words. */
const hotRinse = (bench: Bench): string =>
  isSoured(bench) ? "a little of the acid, diluted and warm" : "a little hot water";

/** Dust and rust go now: once it cools nothing can be filtered from the crystals. */
export function lookThrough(bench: Bench, hot: Quantity<"temperature">): void {
  const full = nearlySaturated(bench, hot);
  bench.did(POT, hold(bench.pot), {
    care: "isolating",
    ...(full === undefined ? {} : { target: full.target }),
    say: () =>
      full === undefined
        ? `Look through the hot liquor: ${unclear(bench)}, filter it at ${celsius(hot)} through a warmed funnel, and rinse the filter with ${hotRinse(bench)}.`
        : `${madeUp(bench, full)} and look through the hot liquor: if it is not clear, filter it at ${full.at} through a warmed funnel, for it is nearly saturated, and rinse the filter with ${hotRinse(bench)}.`,
  });
}

/** What a technical metal has beside it stays as flocks in its acid. */
export function filterFlocks(bench: Bench): void {
  bench.did(POT, hold(bench.pot), {
    care: "isolating",
    say: () =>
      "Filter it if it is not clear: technical metal leaves grey or black flocks (carbon, silica), which would end up in the crystals.",
  });
}

/** The hot liquor filtered; or looked through where no solid is in it, unless something is filtered off later or may be product. */
export function clearHot(bench: Bench, hot: Quantity<"temperature">, isLeft: boolean): void {
  const dirty = bench.pot.books.solids.length > 0;
  filterAndWash(bench, hot);
  // What leaves on the hot filter takes the dust along.
  if (!dirty && !isLeft) lookThrough(bench, hot);
}

// A flask that is closed but for its tube: what goes in comes from a dropping funnel, and what the liquor keeps of the gas is driven
// out, the tube still in the trap, before anything is filtered or boiled down.
import { attempt } from "../../foundation/error";
import { list } from "../../foundation/wording";
import type { Quantity } from "../../quantity";
import { gasSolubility } from "../../solubility";
import { type Entry, massOf } from "../contents/entry";
import { heat } from "../operation/heat";
import { hold } from "../operation/hold";
import { done, evaporated } from "../operation/operation";
import { exact } from "../planning/exact";
import { absorbentOf } from "../reaction/absorbing";
import { isAmmonia } from "../reaction/acids";
import { type Bench, POT, TRAP } from "./bench";
import { drivesAmmonia, warmestOf } from "./warmest";
import { celsius } from "./words";

/** Has a trap been filled for the gas that is to come? */
export const isClosed = ({ drafts }: Bench): boolean => drafts.some(({ vessel }) => vessel.startsWith(TRAP));

/** The most that a liquor keeps of a gas in the cold, under one atmosphere of it; undefined where no figure is known. */
function keptOf({ pot, frame }: Bench, gas: Entry): Quantity | undefined {
  const { water, waterMissing } = pot.books;
  const found = attempt(() => gasSolubility(gas.matter.formula, frame.setting.temperature));
  if (!found.ok || waterMissing.length > 0) return undefined;
  const most = found.value.perHundredGramsWater.times(water).dividedBy(exact("100 g")).to("g");
  const all = massOf(gas);
  return most.compare(all) < 0 ? most : all;
}

/** A temperature, or what the contents have already. */
const noColder = ({ pot: { books } }: Bench, at: Quantity<"temperature">): Quantity<"temperature"> =>
  books.temperature.compare(at) > 0 ? books.temperature : at;

/** Dissolved poison is warmed out into the trap, or blown out where warmth harms the product. */
export function driveOut(bench: Bench, gases: readonly Entry[]): void {
  const { setting } = bench.frame;
  const poisons = gases
    .filter(({ matter }) => absorbentOf(matter.formula) !== undefined)
    .map((gas) => ({ name: gas.matter.name, kept: keptOf(bench, gas) }))
    .filter(({ kept }) => kept === undefined || kept.compare(setting.steps.mass) >= 0);
  if (poisons.length === 0) return;
  const names = list(poisons.map(({ name }) => name));
  const keeps = list(
    poisons.map(({ name, kept }) =>
      kept === undefined ? `${name}, how much is not known` : `up to ${bench.hand.grams(kept)} of ${name}`,
    ),
  );
  const smells = `Nothing is filtered or boiled down while it smells of ${names}.`;
  const at = warmestOf(setting);
  if (at === undefined) {
    bench.did(POT, hold(bench.pot), {
      say: () =>
        `Blow a slow stream of air through the liquor and on through the trap, an hour at least: it keeps ${keeps}, and is not warmed. ${smells}`,
    });
    return;
  }
  const to = noColder(bench, at);
  bench.did(POT, heat(bench.pot, to), {
    target: to,
    say: () =>
      `Bring the contents to ${celsius(to)}, stirring, the tube still in the trap, until no more bubbles come: cold, the liquor would keep ${keeps}. ${smells}`,
  });
}

/** Ammonia that a base sets free from its salt, all in the liquor yet; undefined where none is to be driven out. */
export function ammoniaToDrive({ frame: { setting } }: Bench, dissolved: readonly Entry[]): Entry | undefined {
  const there = drivesAmmonia(setting) ? dissolved.find(({ matter }) => isAmmonia(matter.formula)) : undefined;
  return there !== undefined && massOf(there).compare(setting.steps.mass) >= 0 ? there : undefined;
}

/** The same driven over into the trap. */
export function driveAmmonia(bench: Bench): void {
  const to = noColder(bench, warmestOf(bench.frame.setting)!);
  const { rest, left } = evaporated(bench.pot.at(to), isAmmonia);
  bench.did(POT, done("heat", bench.pot, rest, [], left), {
    target: to,
    atHand: ["indicator paper"],
    say: () =>
      `Bring the contents to ${celsius(to)} and on to a gentle boil, stirring, the tube still in the trap, until moist indicator paper held into the gas no longer turns blue.`,
  });
}

// A solid that goes into acid warm, so that what forms stays dissolved: cold it would crystallise on what has not reacted.

import { isOneOf } from "../../ion/internal";
import type { Quantity } from "../../quantity";
import { massOf } from "../contents/entry";
import { matterOf } from "../contents/matter";
import type { Pot } from "../contents/pot";
import { KEPT_DISSOLVED, WARM_FOR_METAL } from "../data/firing";
import { type Outcome, type Reaction, reacted } from "../operation/add";
import { heat } from "../operation/heat";
import { exact, planned } from "../planning/exact";
import { absorbentOf } from "../reaction/absorbing";
import { burns } from "../reaction/fluids";
import { heatOf } from "../reaction/heat";
import { type Bench, type KeptDissolved, POT } from "./bench";
import { solutesOf } from "./coming";
import { startsLate } from "./late-start";
import { spoiltByBoiling } from "./not-warm";
import { saturatedAt } from "./settling";
import { fumesWarm, isStillAt, warmestAsAdded } from "./tempering";
import { gasesIn } from "./trap";
import { celsius } from "./words";

type Temperature = Quantity<"temperature">;

/** How warm the vessel is kept as a solid comes into it; undefined where the room is warm enough, or nothing tells. */
function keptDissolved(bench: Bench, i: number, reactions: readonly Reaction[]): KeptDissolved | undefined {
  const { setting, kind, isolation, feeds, account, crystallising } = bench.frame;
  const { product, temperature: room } = setting;
  if (isolation.how !== "crystallise" || (kind !== "neutralisation" && kind !== "metal and acid")) return undefined;
  if (feeds[i]!.how !== "solid" || spoiltByBoiling(product.formula) !== undefined || startsLate(bench, i))
    return undefined;
  const done = reacted(bench.pot.plusAll(bench.in(bench.pack(bench.name(i)))), reactions);
  const { books, mass } = done.pot;
  if (books.waterMissing.length > 0) return undefined;
  // of a poison no more is driven out at once than its trap takes
  const gases = gasesIn(done);
  if (gases.some(({ matter }) => absorbentOf(matter.formula) !== undefined)) return undefined;
  const matter = matterOf(product.formula);
  const { own } = solutesOf(done.pot, matter);
  if (own === undefined) return undefined;
  const dry = massOf({ matter: own.matter.core, amount: own.amount }).toNumber("g");
  const keeps = (at: Temperature): number => (saturatedAt(matter, at)?.perGram ?? 0) * books.water.toNumber("g");
  // hotter than its liquor keeps most, another hydrate would come: the window ends there
  const hottest =
    crystallising === undefined || crystallising.hot.compare(planned("hot")) >= 0 ? [] : [crystallising.hot];
  const [most] = [
    ...hottest.map((hot) => hot.minus(planned("coolsBetween")) as Temperature),
    ...[warmestAsAdded(bench, i)].filter((one) => one !== undefined),
  ].sort((one, other) => one.compare(other));
  const warmer = KEPT_DISSOLVED.at
    .map((text) => exact(text) as Temperature)
    .filter((at) => at.compare(room) > 0 && (most === undefined || at.compare(most) <= 0));
  if (keeps(room) >= dry || warmer.length === 0) return undefined;
  const at = warmer.find((one) => keeps(one) >= dry) ?? warmer.at(-1)!;
  if (keeps(at) <= keeps(room)) return undefined;
  const found = heatOf(setting, account, feeds, [mass]);
  return {
    at,
    byItself: "rise" in found && found.rise.rise.compare(exact(KEPT_DISSOLVED.warmsItself)) > 0,
    why: `colder, ${product.name} would crystallise on what has not reacted${gases.length === 0 ? "" : ", and shut gas in"}`,
  };
}

/** Judge what a vessel comes to where it is kept warm as in the room: the constants of the equilibria are known there. */
export const asInTheRoom =
  ({ keptDissolved: kept, frame: { setting } }: Bench, of: (pot: Pot) => Outcome) =>
  (pot: Pot): Outcome => {
    if (kept === undefined) return of(pot);
    const { temperature } = pot.books;
    const done = of(pot.with({ temperature: setting.temperature }));
    return { ...done, pot: done.pot.with({ temperature }) };
  };

/** Is it a metal that cold acid hardly takes, and does its reaction leave room to warm the acid before? */
function isSlowWhenCold(bench: Bench, i: number, reactions: readonly Reaction[]): boolean {
  const { setting, kind, account, feeds } = bench.frame;
  const { metals, acid, at, upTo } = WARM_FOR_METAL;
  if (kind !== "metal and acid" || !isOneOf(setting.materials[i]!.form, ...metals)) return false;
  if (!setting.materials.some(({ form }) => isOneOf(form, acid))) return false;
  if (warmestAsAdded(bench, i)?.compare(exact(at)) === -1) return false;
  const { pot } = reacted(bench.pot.plusAll(bench.in(bench.pack(bench.name(i)))), reactions);
  const found = heatOf(setting, account, feeds, [pot.mass]);
  return !("rise" in found) || found.rise.rise.compare(exact(upTo)) <= 0;
}

/** How warm the vessel is as a solid comes into it, and the step that warms it, unless the reaction does. */
export function keepWarm(bench: Bench, i: number, reactions: readonly Reaction[]): void {
  const own = keptDissolved(bench, i, reactions);
  const least = exact(WARM_FOR_METAL.at) as Temperature;
  const kept = isSlowWhenCold(bench, i, reactions)
    ? { at: least, byItself: false, why: own?.why ?? "", isSlow: true as const }
    : own;
  bench.keptDissolved = kept;
  if (kept !== undefined) warmedToKeep(bench, i, kept);
}

function warmedToKeep(bench: Bench, i: number, { at, byItself, why, isSlow }: KeptDissolved): void {
  if (byItself || isStillAt(bench, at)) return;
  const fumes = fumesWarm(bench.pot);
  const isFuel = bench.frame.setting.products.some(({ formula }) => burns(formula));
  bench.did(POT, heat(bench.pot, at), {
    target: at,
    ...(fumes ? { apparatus: "fume hood" as const } : {}),
    ...(isFuel ? { atHand: ["hot-water bath" as const] } : {}),
    say: () => {
      const to = isSlow ? WARM_FOR_METAL.kept : celsius(at);
      const bath = isFuel ? ", in a bath of hot water with no flame under it," : "";
      const hood = fumes ? ", loosely covered and under a hood: it fumes," : "";
      const reasons = isSlow
        ? `, never to the boil: cold acid hardly takes it${why === "" ? "" : `, and ${why}`}`
        : `, warmer where crystals show: ${why}`;
      return `Warm the contents to ${to}${bath}${hood} and keep them there as the ${bench.name(i)} comes${reasons}.`;
    },
  });
}

// When the next portion goes in, where a reaction starts late.
import { isOneOf } from "../../ion/internal";
import type { Quantity } from "../../quantity";
import { madeOf } from "../../substance/internal";
import { LATE_START, STARTED } from "../data/late-start";
import { heat } from "../operation/heat";
import { exact } from "../planning/exact";
import { isMetal } from "../reaction/acids";
import { type Bench, POT } from "./bench";
import { isSlowMetal } from "./feed-single";
import { isByLye } from "./roles";
import { celsius } from "./words";

/** The row for what is added to all the rest; undefined where the reaction starts at once, as far as is known. */
function lateStart({ frame: { setting } }: Bench, i: number) {
  const own = setting.materials[i]!.form;
  const others = setting.materials.filter((_, j) => j !== i).map(({ form }) => form);
  return LATE_START.find(
    ({ added, to }) =>
      (added === "a metal" ? isMetal(own) : madeOf(own).groups.has(added)) &&
      (to === undefined ||
        others.some((form) => isOneOf(form, ...to.flatMap((one) => [one, `${one}·H2O`, `${one}·2H2O`])))),
  );
}

/** Does it start late, and run away warm? */
export const startsLate = (bench: Bench, i: number): boolean => lateStart(bench, i) !== undefined;

/** Warm the vessel for the first portion, where it would not start. */
export function warmedForStart(bench: Bench, i: number): void {
  const row = lateStart(bench, i);
  if (row?.warm === undefined) return;
  const at = exact(row.warm) as Quantity<"temperature">;
  if (bench.pot.books.temperature.compare(at) >= 0) return;
  bench.did(POT, heat(bench.pot, at), {
    target: at,
    say: () => `Warm the contents to ${celsius(at)} for the first portion of what comes next: ${row.why}.`,
  });
}

/** What starts a pure metal, in brackets; empty where none is known to need it. */
function startedWith({ frame: { setting } }: Bench, i: number): string {
  const { form } = setting.materials[i]!;
  const row = STARTED.find(
    ({ metal, acid }) => isOneOf(form, metal) && setting.materials.some((one) => isOneOf(one.form, acid)),
  );
  return row === undefined ? "" : ` (pure metal that hardly gives gas is started with ${row.with})`;
}

/** What shows that a portion has reacted, before the next one goes in. */
export function nextPortion(bench: Bench, i: number): { readonly sign: string; readonly otherwise: string } {
  const row = lateStart(bench, i);
  const { kind } = bench.frame;
  const otherwise = row?.otherwise === undefined ? "" : ` (${row.otherwise})`;
  if (row !== undefined) return { sign: `${row.done} and the foam has subsided`, otherwise };
  if (isMetal(bench.material(i).form) && isByLye(bench.frame.setting, bench.frame.roles))
    return { sign: "this portion has gone and the foam has subsided", otherwise };
  // a metal or a redox reaction may take its time: no foam yet is no sign
  const isSlow = kind === "redox" || kind === "metal and acid";
  const isOver = bench.frame.account.supplied[i]!.excess.isPositive();
  if (isSlowMetal(bench.material(i), bench.frame.setting))
    return { sign: "its gas comes evenly, without foam", otherwise };
  // of a metal in excess the last portions never stop
  if (kind === "metal and acid" && isOver && isMetal(bench.material(i).form))
    return { sign: "the gas has become slow and the foam has subsided", otherwise: startedWith(bench, i) };
  return {
    sign: isSlow ? "this portion has stopped giving gas and the foam has subsided" : "the foam has subsided",
    otherwise,
  };
}

// What a liquor is kept from until its crystals are off, said once: in the first step that warms or boils it.

import { isOneOf } from "../../ion/internal";
import type { Matter } from "../contents/matter";
import type { Pot } from "../contents/pot";
import { planned } from "../planning/exact";
import { isMetal } from "../reaction/acids";
import type { Bench } from "./bench";
import { acidKeptWith, isKeptCovered, protectionOf } from "./protection";
import { asRead } from "./weighing";

/** How much more of an acid that the equation uses up keeps the liquor acid; nothing where some is over, or none is there. */
function acidMore({ frame: { setting, portions, account } }: Bench, acid: string): string {
  const i = setting.materials.findIndex(({ form }) => isOneOf(form, acid));
  if (i < 0 || account.supplied[i]!.excess.isPositive()) return "";
  const more = portions[i]!.times(planned("usualExcess"));
  return ` (${asRead(setting, more)} more of the ${setting.materials[i]!.shelf.name} first)`;
}

/** Metal that is left in a vessel; it would take an acid. */
const metalIn = ({ books }: Pot): Matter | undefined =>
  books.solids.find(({ matter }) => isMetal(matter.formula))?.matter;

/** Metal that is left in a liquor which air changes, and keeps it from that; undefined where there is none. */
export const guardOf = ({ pot, frame }: Bench): Matter | undefined =>
  isKeptCovered(frame.setting.product.formula) ? metalIn(pot) : undefined;

/** What of an acid leaves with the water, where that was said to be kept; after a semicolon. */
export const acidAgain = (bench: Bench): string =>
  bench.isKeepingSaid && acidKeptWith(bench.frame.setting.product.formula) !== undefined
    ? "; acid that leaves with the water is put in again"
    : "";

/** What the liquor is kept from, after a semicolon; nothing where that was said before, or nothing is known. */
export function keptFrom(bench: Bench, pot: Pot = bench.pot): string {
  const { formula } = bench.frame.setting.product;
  const text = protectionOf(formula, "crystallising");
  if (text === undefined || bench.isKeepingSaid) return "";
  const guard = metalIn(pot);
  if (guard !== undefined) {
    if (bench.isGuardSaid || !isKeptCovered(formula)) return "";
    bench.isGuardSaid = true;
    return `; leave what is left of the ${guard.name} in it: it keeps the liquor from turning in air`;
  }
  bench.isKeepingSaid = true;
  const acid = acidKeptWith(formula);
  return `; ${text}${acid === undefined ? "" : acidMore(bench, acid)}`;
}

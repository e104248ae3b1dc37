// What a liquor is kept from until its crystals are off, said once: in the first step that warms or boils it.

import { isOneOf } from "../../ion/internal";
import type { Pot } from "../contents/pot";
import { planned } from "../planning/exact";
import { isMetal } from "../reaction/acids";
import type { Bench } from "./bench";
import { acidKeptWith, protectionOf } from "./protection";
import { asRead } from "./weighing";

/** How much more of an acid that the equation uses up keeps the liquor acid; nothing where some is over, or none is there. */
function acidMore({ frame: { setting, portions, account } }: Bench, acid: string): string {
  const i = setting.materials.findIndex(({ form }) => isOneOf(form, acid));
  if (i < 0 || account.supplied[i]!.excess.isPositive()) return "";
  const more = portions[i]!.times(planned("usualExcess"));
  return ` (${asRead(setting, more)} more of the ${setting.materials[i]!.shelf.name} first)`;
}

/** What the liquor is kept from, after a semicolon; nothing where that was said before, or nothing is known, or a metal in it would take the acid. */
export function keptFrom(bench: Bench, { books }: Pot = bench.pot): string {
  const { formula } = bench.frame.setting.product;
  const text = protectionOf(formula, "crystallising");
  if (text === undefined || bench.isKeepingSaid || books.solids.some(({ matter }) => isMetal(matter.formula)))
    return "";
  bench.isKeepingSaid = true;
  const acid = acidKeptWith(formula);
  return `; ${text}${acid === undefined ? "" : acidMore(bench, acid)}`;
}

// What a liquor is kept from until its crystals are off, said once: in the first step that warms or boils it.

import { isOneOf } from "../../ion/internal";
import type { Matter } from "../contents/matter";
import { Pot } from "../contents/pot";
import type { Done } from "../operation/operation";
import { weigh } from "../operation/weigh";
import { planned } from "../planning/exact";
import { isAcid, isMetal } from "../reaction/acids";
import { fateInRoom } from "../reaction/fate";
import type { Bench, Telling } from "./bench";
import { isBase } from "./kind";
import { acidKeptWith, isKeptCovered, protectionOf, souredWith } from "./protection";
import { asRead } from "./weighing";

/** What a liquor is kept from, and what of a pack that takes beside what is weighed. */
interface Kept {
  /** After a semicolon; nothing where that was said before, or nothing is known. */
  readonly text: string;
  readonly takes: Pick<Telling, "materials" | "amounts" | "atHand">;
  /** The same as it is poured in. */
  readonly more?: Pot;
}

const only = (text: string): Kept => ({ text, takes: {} });

/** How much more of an acid that the equation uses up keeps the liquor acid; nothing where some is over, or none is there. */
function acidMore({ frame: { setting, portions, account } }: Bench, acid: string): Kept {
  const i = setting.materials.findIndex(({ form }) => isOneOf(form, acid));
  if (i < 0 || account.supplied[i]!.excess.isPositive()) return only("");
  const more = portions[i]!.times(planned("usualExcess"));
  const material = setting.materials[i]!;
  const { name } = material.shelf;
  const nothing = Pot.empty(setting.temperature, setting.pressure);
  return {
    text: ` (${asRead(setting, more)} more of the ${name} first)`,
    takes: { materials: [name], amounts: [more] },
    more: weigh(material, more, material.amountIn(more), nothing).after,
  };
}

/** A step on a vessel whose liquor gets that acid first. */
export function withAcidFirst({ more }: Kept, pot: Pot, step: (pot: Pot) => Done): Done {
  if (more === undefined) return step(pot);
  const done = step(pot.plusAll(more));
  return { ...done, before: pot, put: [...done.put, more] };
}

/** A step that ends with that acid in the liquor. */
export const withAcidAfter = ({ more }: Kept, done: Done): Done =>
  more === undefined ? done : { ...done, after: done.after.plusAll(more), put: [...done.put, more] };

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

/** Is a metal, oxide or carbonate over that its acid has dissolved? */
const isOverBase = ({ frame: { setting, roles, account, kind } }: Bench): boolean =>
  (kind === "metal and acid" || kind === "neutralisation") &&
  setting.materials.some(({ form }, i) => isAcid(form) && roles[i] === "acid" && account.supplied[i]!.limiting) &&
  setting.materials.some(
    ({ form }, i) =>
      account.supplied[i]!.excess.isPositive() &&
      (isMetal(form) || (isBase(form) && fateInRoom(form).precipitated === true)),
  );

/** The acid that a liquor over such a solid wants, once that is filtered off. */
function soured(bench: Bench, { books }: Pot): Kept {
  const row = souredWith(bench.frame.setting.product.formula);
  if (row === undefined || books.solids.length > 0 || !isOverBase(bench)) return only("");
  bench.isKeepingSaid = true;
  return { text: `; ${row.text}`, takes: { atHand: [row.acid, "indicator paper"] } };
}

/** What the liquor is kept from. */
export function keptFrom(bench: Bench, pot: Pot = bench.pot): Kept {
  const { formula } = bench.frame.setting.product;
  const text = protectionOf(formula, "crystallising");
  if (bench.isKeepingSaid) return only("");
  if (text === undefined) return soured(bench, pot);
  const guard = metalIn(pot);
  if (guard !== undefined) {
    if (bench.isGuardSaid || !isKeptCovered(formula)) return only("");
    bench.isGuardSaid = true;
    return only(`; leave what is left of the ${guard.name} in it: it keeps the liquor from turning in air`);
  }
  bench.isKeepingSaid = true;
  const acid = acidKeptWith(formula);
  const more = acid === undefined ? only("") : acidMore(bench, acid);
  return { ...more, text: `; ${text}${more.text}` };
}

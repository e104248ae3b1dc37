// A gas of a cylinder or a generator, led into the vessel: nobody weighs it, the vessel does.
import type { Formula } from "../../formula";
import { list } from "../../foundation/wording";
import { constitutionOf } from "../../ion";
import { isOneOf } from "../../ion/internal";
import type { Quantity } from "../../quantity";
import type { Pot } from "../contents/pot";
import { BASE_LEFT, UNDER_GAS } from "../data/ends";
import { hold } from "../operation/hold";
import { exact, planned } from "../planning/exact";
import { absorbentOf } from "../reaction/absorbing";
import { acidSaltOfGas } from "../reaction/acid-salt-of-gas";
import { staysInWater } from "../reaction/fluids";
import type { Material } from "../shelf/material";
import { type Bench, type Look, POT } from "./bench";
import { vesselIn } from "./filling";
import { notWarmOf } from "./not-warm";
import { onPaper } from "./paper";
import { gasInRoom, STRENGTH } from "./trap";
import { asRead } from "./weighing";
import { lasting, litres } from "./words";

/** A gas for the hood is not let out of the vessel. */
export function escapes(gas: Formula): string {
  const absorbent = absorbentOf(gas);
  return absorbent === undefined
    ? ""
    : `; what leaves the vessel goes through an empty bottle and a wash bottle with ${absorbent.called} (${STRENGTH}), under a hood`;
}

/** What paper shows after the gas is in: what was set free has left it, and none of the air has come in yet. */
const paperAfter = (pot: Pot) => onPaper(pot.with({ gas: [], fizzed: undefined }));

/** pH of the liquor, or of a drop of it in water, as near as paper shows it; nothing where neither is known. */
function paperOf(pot: Pot): string {
  const found = paperAfter(pot);
  if (found === undefined) return "";
  return `, and ${found.thinned ? "a drop of it in nine drops of water" : "paper"} shows about pH ${found.shown}`;
}

/** The same where the pH falls or rises far: paper tells the end of what the gas reacts with. */
function turned(before: Pot, after: Pot): string {
  const [first, last] = [onPaper(before), paperAfter(after)];
  if (first === undefined || last === undefined || first.thinned || last.thinned) return "";
  if (Math.abs(first.pH.minus(last.pH).toNumber("")) < TELLS) return "";
  return `; paper shows about pH ${last.shown} then, before that ${first.shown}`;
}

/** Change of pH and more that paper shows beyond doubt. */
const TELLS = 2;

/** What a gas is led into, and what becomes of it. */
export interface Led {
  readonly before: Pot;
  /** Of the vessel, where all reacts with it: what is taken less what leaves. */
  readonly gain: Quantity | undefined;
  /** What leaves as it is led in. */
  readonly leaves: readonly string[];
  readonly after: Pot;
}

/** The acid salt that more of the gas would make; undefined where all of the product precipitates, or nobody knows when it is enough. */
const acidSaltBeyond = ({ frame: { setting, isolation } }: Bench, i: number, { gain }: Led): Formula | undefined =>
  isolation.how === "precipitate" || gain === undefined
    ? undefined
    : acidSaltOfGas(setting.materials[i]!.form, setting.product.formula);

/** What paper shows where all hydroxide is carbonate, with the gas still in the liquor; grains that are left bring the pH up again. */
function underGas({ frame: { setting, feeds, isolation } }: Bench, i: number): string | undefined {
  const { gas, from, to, below, wait } = UNDER_GAS;
  const { materials, product } = setting;
  const isFrom = ({ form }: Material): boolean => constitutionOf(form).groups.includes(from);
  const base = materials.findIndex(isFrom);
  if (isolation.how !== "precipitate" || base < 0 || !isOneOf(materials[i]!.form, gas)) return undefined;
  if (!constitutionOf(product.formula).groups.includes(to)) return undefined;
  const grains =
    feeds[base]!.how === "solid"
      ? `, and still does after ${wait} of stirring with the gas shut, for grains of the ${materials[base]!.shelf.name} bring it up again`
      : "";
  return `; paper shows pH ${below} or less then${grains}`;
}

/** What paper shows of the end, after a comma or a semicolon; nothing where it tells nothing. */
function endOnPaper(bench: Bench, i: number, led: Led): string {
  if (acidSaltBeyond(bench, i, led) !== undefined) return paperOf(led.after);
  const under = underGas(bench, i);
  if (under !== undefined) return under;
  return led.gain?.isPositive() === true ? turned(led.before, led.after) : "";
}

/** A gas is led in, slowly enough for the liquid to take it, until the vessel has gained what it should, and no further where more of it makes an acid salt. */
export function leading(bench: Bench, i: number, look: Look, led: Led): string {
  const { gain, leaves } = led;
  const { setting, account, portions, isolation } = bench.frame;
  const { left, amount } = account.supplied[i]!;
  const gas = setting.materials[i]!.form;
  const acid = acidSaltBeyond(bench, i, led);
  const room = gain === undefined ? "" : vesselIn(look);
  const over =
    acid === undefined && left.compare(amount.times(planned("asGoodAsNone"))) > 0
      ? `; about ${litres(gasInRoom(bench, left))} of it passes through`
      : "";
  const warmest = notWarmOf(setting.product.formula)?.upTo;
  const cool = warmest === undefined ? "" : `; cool it from outside, never above ${warmest}`;
  const volume = gasInRoom(bench, amount);
  const takes = lasting(volume.dividedBy(planned("gasStream")).to("min"));
  const tube =
    isolation.how === "precipitate" || notWarmOf(setting.product.formula)?.asItForms === true
      ? " a wide tube (what settles in it stops it: push it free)"
      : "";
  const pace = `about ${litres(planned("gasStream").times(exact("1 min")))} a minute${takes === undefined ? "" : ` (${takes})`}`;
  const bottles = staysInWater(gas)
    ? `the empty bottle${tube === "" ? "" : " and"}`
    : `the wash bottle (count its bubbles)${tube === "" ? " and the empty bottle" : ", the empty bottle and"}`;
  const whole = `Lead the ${bench.name(i)} in slowly, ${pace}, through ${bottles}${tube}, stirring, ${litres(volume)} of it (${asRead(setting, portions[i]!)})`;
  if (acid === undefined) {
    const into = gain?.isPositive() === true ? `, the vessel weighed before${room.replace("vessel: ", "")}` : room;
    return `${whole}${into}${over}${cool}${escapes(gas)}.`;
  }
  const warmed = leaves.length === 0 ? "" : ` and warmed in between until no more ${list(leaves)} rises`;
  const gained =
    gain?.isPositive() === true
      ? `the vessel, weighed before and after${warmed}, has gained ${bench.hand.grams(gain)}`
      : "so much is in";
  return `${whole} and no more${room}, until ${gained}${endOnPaper(bench, i, led)}: more of it makes ${acid.toUnicode()}${cool}${escapes(gas)}.`;
}

/** Does paper tell where to stop as it is led in? */
export const stopsByPaper = (bench: Bench, i: number, led: Led): boolean =>
  acidSaltBeyond(bench, i, led) !== undefined && endOnPaper(bench, i, led) !== "";

/** What tells that enough of a gas is in, where more of it does no harm. */
export function gasIsIn(bench: Bench, i: number, led: Led): void {
  if (acidSaltBeyond(bench, i, led) !== undefined) return;
  const { product } = bench.frame.setting;
  const { gain } = led;
  const paper = endOnPaper(bench, i, led);
  const anions = constitutionOf(product.formula).anions.map(({ formula }) => formula);
  const test = BASE_LEFT.find(({ anion }) => anions.some((one) => one === anion));
  const gained = gain?.isPositive() === true ? ` or the vessel has gained ${bench.hand.grams(gain)}` : "";
  const left = test === undefined ? "" : ` Test it: ${test.text}.`;
  bench.did(POT, hold(bench.pot), {
    atHand: [...(paper === "" ? [] : ["indicator paper" as const]), ...(test === undefined ? [] : [test.atHand])],
    say: () => `It is done when no more is absorbed (its bubbles rise undiminished)${gained}${paper}.${left}`,
  });
}

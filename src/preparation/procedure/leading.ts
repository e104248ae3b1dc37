// A gas of a cylinder or a generator, led into the vessel: nobody weighs it, the vessel does.
import type { Formula } from "../../formula";
import type { Quantity } from "../../quantity";
import { planned } from "../planning/exact";
import { absorbentOf } from "../reaction/absorbing";
import type { Bench, Look } from "./bench";
import { vesselIn } from "./filling";
import { gasInRoom } from "./trap";
import { asRead } from "./weighing";
import { litres } from "./words";

/** A gas for the hood is not let out of the vessel. */
export const escapes = (gas: Formula): string =>
  absorbentOf(gas) === undefined ? "" : "; what leaves the vessel goes through a wash bottle, under a hood";

/**
 * A gas is led in, slowly enough for the liquid to take it, until the vessel has gained what it should.
 *
 * @param gain - of the vessel, where all reacts with it: what is taken less what leaves
 */
export function leading(bench: Bench, i: number, look: Look, gain: Quantity | undefined): string {
  const { setting, account, portions } = bench.frame;
  const { left, amount } = account.supplied[i]!;
  const room = gain === undefined ? "" : vesselIn(look);
  const over =
    left.compare(amount.times(planned("asGoodAsNone"))) > 0
      ? `; about ${litres(gasInRoom(bench, left))} of it passes through`
      : "";
  const weighed =
    gain === undefined || !gain.isPositive()
      ? ""
      : ` or the vessel, weighed before and after, has gained ${bench.hand.grams(gain)}`;
  return `Lead the ${bench.name(i)} in slowly, stirring, ${litres(gasInRoom(bench, amount))} of it (${asRead(setting, portions[i]!)}), until no more is absorbed${weighed}${room}${over}${escapes(setting.materials[i]!.form)}.`;
}

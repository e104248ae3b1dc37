// How a material warms or cools the water that it goes into, in words.

import type { Quantity } from "../../quantity";
import { planned } from "../planning/exact";
import type { Bench, Look } from "./bench";
import { celsius } from "./words";

/** By how much dissolving warms a water, or cools it; undefined where that is not known, or too little to be noticed. */
function riseOf(look: Look, name: string): Quantity | undefined {
  const heat = look.dissolvingHeat.find((one) => one.material === name);
  if (heat === undefined || !("rise" in heat)) return undefined;
  return Math.abs(heat.rise.rise.toNumber("ΔK")) < 5 ? undefined : heat.rise.rise;
}

/** How hot water is got: what warms as it dissolves goes into cold water, which hot it would boil. */
export function hotWater(look: Look, name: string, at: Quantity<"temperature">): string {
  const warms = riseOf(look, name)?.isPositive() === true;
  return warms
    ? `, a little at a time, and warm it to ${celsius(at)} or a little above`
    : ` at ${celsius(at)} or a little above`;
}

/** How warm or cold it gets, and what is done about it. */
export const asWarmsIt = (look: Look, name: string): string => {
  const rise = riseOf(look, name);
  if (rise === undefined) return "";
  const kelvin = rise.toNumber("ΔK");
  const changes = `; it ${kelvin > 0 ? "warms" : "cools"} by about ${Number(Math.abs(kelvin).toPrecision(2))} K`;
  return rise.compare(planned("needsCooling")) > 0
    ? `${changes} if put in at once: a little at a time, in a bath of cold water`
    : kelvin < 0
      ? `${changes}: water of 30 to 40 °C keeps it going`
      : changes;
};

/** How warm dilution makes an acid or a base, where figures are known. */
export function dilutionHeat({ dissolvingHeat }: Look, name: string, { keptDissolved }: Bench): string {
  const heat = dissolvingHeat.find((one) => one.material === name);
  if (heat === undefined) return "";
  // what is warmed for the next material need not cool first
  const cooled = keptDissolved === undefined || keptDissolved.byItself ? ": let it cool" : "";
  if (!("rise" in heat)) return cooled === "" ? "" : `; it warms, how much is not known${cooled}`;
  const kelvin = heat.rise.rise.toNumber("ΔK");
  return kelvin < 5 ? "" : `; it warms by about ${Number(kelvin.toPrecision(2))} K${cooled}`;
}

// How far a liquor is boiled down before its crystals come, where nothing is known of how much water keeps of them.

import type { Quantity } from "../../quantity";
import { exact, planned } from "../planning/exact";
import type { Setting } from "../request/setting";
import { alcoholOnTable } from "./alcohol";

/**
 * Mass of its contents then: so many times the theory, and no more liquor over the crystals than there is alcohol to bring them out of
 * it, as long as they can be stirred.
 */
export function boiledTo(setting: Setting, theory: Quantity): Quantity {
  const usual = theory.times(planned("boiledTo")).to("g");
  const alcohol = alcoholOnTable(setting);
  if (alcohol === undefined) return usual;
  const asMuch = theory.plus(alcohol.times(exact("1 g/mL"))).to("g");
  const least = theory.dividedBy(planned("stirred")).to("g");
  const most = asMuch.compare(least) > 0 ? asMuch : least;
  return most.compare(usual) < 0 ? most : usual;
}

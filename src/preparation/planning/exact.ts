// Exact figures that rules, defaults and planning values are written with, read from their text once. They carry no
// uncertainty, so that sharing one between plans correlates nothing.

import { memoised } from "../../foundation/memo";
import { type Quantity, quantity } from "../../quantity";
import { PLANNING, type PlanningName } from "../data/planning";

/** An exact figure by its text. */
export const exact: (text: string) => Quantity = /* @__PURE__ */ memoised(200, (text) => quantity(text));

/** A planning value by its name in the table. */
export const planned = (name: PlanningName): Quantity => exact(PLANNING[name].value);

/** What is left of the whole: 1 - share. */
export const lessThanAll = (share: Quantity): Quantity => exact("1").minus(share);

/** The volume of a mass of water; near enough for what a jug measures. */
export const asVolumeOfWater = (water: Quantity): Quantity =>
  water.dimension === "volume" ? water : water.dividedBy(exact("1 g/mL")).to("mL");

/** The mass of a volume of water. */
export const asMassOfWater = (water: Quantity): Quantity =>
  water.dimension === "mass" ? water : water.times(exact("1 g/mL")).to("g");

/** Is something beside a mass more than its rounding? */
export const isWorthAWord = (rest: Quantity, beside: Quantity): boolean =>
  rest.compare(beside.times(planned("worthAWord"))) > 0;

/** Is an excess no more than what rounding to the balance brings? */
export const isFromRounding = (excess: Quantity): boolean => excess.compare(planned("asGoodAsNone")) <= 0;

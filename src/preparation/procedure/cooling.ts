// The crop that cooling brings: as hot as the table goes, in the least water, or in more where that is needed.

import { type Formula, parseFormula } from "../../formula";
import { attempt } from "../../foundation/error";
import type { Quantity } from "../../quantity";
import { type Crystallisation, crystallise } from "../../solubility";
import { matterOf } from "../contents/matter";
import { exact, planned } from "../planning/exact";
import type { Account } from "../reaction/account";
import type { Setting } from "../request/setting";
import { belowItsChange, forTheFilter } from "./more-water";
import { saturatedAt } from "./settling";

type Temperature = Quantity<"temperature">;

/** The product by itself, from a solution just saturated hot; or why there is no such figure. */
export type Cooling = Crystallisation | { readonly missing: string };

/** Hot and cold it dissolves nearly alike: most comes as the water goes, and cooling adds little. */
export const isFlat = ({ crop }: Crystallisation): boolean => crop.share.compare(planned("flatCooling")) < 0;

/** Where a solubility ends below 80 °C, or is the largest there, the hot solution is made at one of these. */
const LOWER = ["60 °C", "50 °C", "40 °C"];

/** Times the least hot water: a hydrate that would bind all of it is left a liquor by a little more. */
const THINNER = ["1.25", "1.5", "2"] as const;

export const firstLine = (error: { readonly message: string }): string => error.message.split("\n")[0]!;

/** The crop of so much of a product by cooling; or why there is no figure for it. */
export function coolingOf(
  formula: Formula,
  mass: Quantity<"mass">,
  hot: Temperature,
  cold: Temperature,
  times = 1,
): Cooling {
  const request = { formula, mass, hot, cold } as const;
  const grown = (more: { readonly waterFactor?: string } = times === 1 ? {} : { waterFactor: times.toPrecision(4) }) =>
    attempt((): Crystallisation => crystallise({ ...request, ...more }));
  const setsAsWhole = (found: ReturnType<typeof grown>): boolean =>
    found.ok ? found.value.crop.share.compare(exact("100 %")) > 0 : found.error.code === "solubility.no-liquor";
  const first = grown();
  if (first.ok && !setsAsWhole(first)) return first.value;
  const missing = first.ok
    ? `${first.value.crop.formula} binds all the water: the solution sets as a whole`
    : firstLine(first.error);
  if (!setsAsWhole(first)) return { missing };
  for (const waterFactor of THINNER) {
    if (Number(waterFactor) <= times) continue;
    const thinner = grown({ waterFactor });
    if (setsAsWhole(thinner)) continue;
    // of another hydrate the thinner liquor gives that one, and not what was asked for
    const isAsked = thinner.ok && parseFormula(thinner.value.crop.formula).hasSameComposition(formula);
    return isAsked ? thinner.value : { missing };
  }
  return { missing };
}

/** Cooling from the hot solution that brings most: as hot as the table goes, and where the salt dissolves best. */
export function bestCooling(formula: Formula, theory: Quantity<"mass">, usual: Temperature, cold: Temperature) {
  let hot = usual;
  let cooling = coolingOf(formula, theory, hot, cold);
  const most = (at: Temperature): number => saturatedAt(matterOf(formula), at)?.perGram ?? 0;
  for (const text of LOWER) {
    const lower = exact(text) as Temperature;
    if (lower.compare(usual) >= 0 || lower.compare(cold) <= 0) continue;
    // the table may end below the hot solution
    const isBetter = "missing" in cooling ? most(hot) === 0 : most(lower) > most(hot);
    if (!isBetter) continue;
    const again = coolingOf(formula, theory, lower, cold);
    if ("missing" in again) continue;
    if (!("missing" in cooling) && again.crop.share.compare(cooling.crop.share) <= 0) continue;
    hot = lower;
    cooling = again;
  }
  return { hot, cooling };
}

/**
 * The same with more water, where the hot solution is filtered, another hydrate would crystallise first, or the crystals would hold all
 * of the liquor, and most comes all the same.
 */
export function inMoreWater(
  setting: Setting,
  account: Account,
  theory: Quantity<"mass">,
  { hot, cooling }: { readonly hot: Temperature; readonly cooling: Cooling },
  cold: Temperature,
): { readonly times: number; readonly cooling: Cooling } {
  const { formula } = setting.product;
  if ("missing" in cooling) return { times: 1, cooling };
  const filtered = forTheFilter(setting, account, hot);
  const change = belowItsChange(formula, hot, cold);
  for (const times of new Set([Math.max(change, ...filtered), ...filtered, 1])) {
    const thinner = times === 1 ? cooling : coolingOf(formula, theory, hot, cold, times);
    if (isMost(thinner)) return untilStirred(formula, theory, { hot, cold, times, cooling: thinner });
  }
  return { times: 1, cooling };
}

/** A cooling, and the water that it is made in. */
interface InWater {
  readonly hot: Temperature;
  readonly cold: Temperature;
  /** Times the least hot water. */
  readonly times: number;
  readonly cooling: Crystallisation;
}

/** In so much more water that the crystals can be stirred, where most comes all the same. */
export function untilStirred(
  formula: Formula,
  theory: Quantity<"mass">,
  { hot, cold, times, cooling }: InWater,
): Pick<InWater, "times" | "cooling"> {
  if (isStirred(cooling)) return { times, cooling };
  for (let more = times * FINER; more < times * MOST_THINNED; more *= FINER) {
    const stirred = coolingOf(formula, theory, hot, cold, more);
    if (!isMost(stirred)) break;
    if (isStirred(stirred)) return { times: more, cooling: stirred };
  }
  return { times, cooling };
}

/** Steps in which water is added until the crystals can be stirred, and no more than so much. */
const FINER = 1.05;
const MOST_THINNED = 2;

/** Does most of the product crystallise? */
const isMost = (cooling: Cooling): cooling is Crystallisation =>
  !("missing" in cooling) && cooling.crop.share.compare(planned("mostly")) >= 0;

/** Is so much of what is in the vessel liquor, when it is cold, that the crystals can be stirred and drained? */
const isStirred = ({ crop, leftInLiquor, liquorWater }: Crystallisation): boolean =>
  crop.mass.dividedBy(crop.mass.plus(leftInLiquor).plus(liquorWater)).compare(planned("stirred")) <= 0;

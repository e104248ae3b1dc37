// When a hot solution gets more water than what just dissolves the product: where it is filtered, or would pass through the change
// of a hydrate with its crystals coming.

import type { Formula } from "../../formula";
import type { Quantity } from "../../quantity";
import { matterOf } from "../contents/matter";
import { exact, planned } from "../planning/exact";
import { changeAbove } from "../reaction/change-of-solid";
import type { Setting } from "../request/setting";
import { saturatedAt } from "./settling";

type Temperature = Quantity<"temperature">;

/** Something that is in the packs besides goes on the filter, and nothing is boiled down after that: the salts dissolve and crystallise. */
const isFilteredSaturated = ({ materials, reactants, products }: Setting): boolean =>
  reactants.length === 1 &&
  products.length === 1 &&
  materials.some(({ shelf, also }) => shelf.assay !== undefined || also.length > 0);

/** Times the least hot water of a recrystallised salt that is filtered from something. */
export const forTheFilter = (setting: Setting): number =>
  isFilteredSaturated(setting) ? planned("hotFilter").toNumber("") : 1;

/**
 * Times the least hot water with which the hydrate that is asked for is the first to crystallise: saturated only below its change
 * into one with less water. 1 where no change is between, or what dissolves hot stays dissolved down to it.
 */
export function belowItsChange(formula: Formula, hot: Temperature, cold: Temperature): number {
  const own = changeAbove(formula);
  if (own === undefined) return 1;
  const at = exact(`${own.celsius} °C`) as Temperature;
  if (at.compare(cold) <= 0 || at.compare(hot) >= 0) return 1;
  const matter = matterOf(formula);
  const [top, change] = [hot, at].map((one) => saturatedAt(matter, one)?.perGram);
  if (top === undefined || change === undefined || top <= change) return 1;
  const safe = saturatedAt(matter, at.minus(planned("underChange")) as Temperature)?.perGram;
  return safe === undefined ? 1 : top / safe;
}

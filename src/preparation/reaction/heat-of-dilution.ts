// How much diluting warms an acid.

import type { Formula } from "../../formula";
import { constitutionOf } from "../../ion";
import { isOneOf } from "../../ion/internal";
import type { Quantity } from "../../quantity";
import { heatKeptBySulfuricAcid, heatOfDilution } from "../../thermochemistry/internal";
import { exact } from "../planning/exact";
import type { Feed } from "../procedure/feed";
import type { Setting } from "../request/setting";
import type { Account } from "./account";

/** Heat of diluting so much of an acid, by the water it came in and all the water after; undefined without figures. */
export function enthalpyOfDilution(
  form: Formula,
  amount: Quantity,
  own: Quantity,
  after: Quantity,
): Quantity<"molar energy"> | undefined {
  return heatOfDilution(form, perAcid(own, amount), perAcid(after, amount));
}

const perAcid = (water: Quantity, amount: Quantity): number =>
  water.dividedBy(exact("18.015 g/mol")).dividedBy(amount).toNumber("");

/** Heat that sulfuric acid of a batch gives over the figures of sulfate in much water, as both its hydrons are taken; nothing of other acids. */
export function heatKeptByAcids(
  { materials, products }: Setting,
  { extent, supplied }: Account,
  feeds: readonly Feed[],
): Quantity {
  const none = exact("0 kJ") as Quantity;
  const isHalf = products.some(({ formula }) => constitutionOf(formula).anions.some((one) => one.formula === "HSO4-"));
  if (isHalf) return none;
  return materials.reduce((all, { form, species, solventIn }, i) => {
    const feed = feeds[i]!;
    if (!isOneOf(form, "H2SO4") || feed.how !== "solution") return all;
    const { portion, amount } = supplied[i]!;
    const own = solventIn(portion);
    if (own === undefined) return all;
    const water = feed.dilution === undefined ? own : own.plus(feed.dilution.water);
    return all.plus(heatKeptBySulfuricAcid(perAcid(water, amount)).times(extent).times(species.coefficient).to("kJ"));
  }, none);
}

// How much water a liquor that is to crystallise has when everything has reacted.

import { type Quantity, quantity } from "../../quantity";
import { matterOf } from "../contents/matter";
import { planned } from "../planning/exact";
import type { Account } from "../reaction/account";
import { fateOf } from "../reaction/fate";
import type { Setting } from "../request/setting";
import type { Crystallising } from "./crystallising";
import { isBase } from "./kind";
import { beforeBoilingDown } from "./more-water";
import { saturatedAt } from "./settling";

/** Nothing but clear solutions comes together: there is no dirt that is not filtered from one of them. */
const isClear = ({ materials, products, temperature }: Setting): boolean =>
  products.every(({ formula }) => fateOf(formula, temperature).precipitated !== true) &&
  materials.every(
    ({ isSolution, form }) => isSolution || (!isBase(form) && fateOf(form, temperature).precipitated === false),
  );

/** What dissolves less hot than cold has as much water as the hot filter asks for, and not the room. */
function forHotFilter(
  { product, temperature }: Setting,
  { hot }: Crystallising,
  inRoom: Quantity,
  theory: Quantity,
): Quantity {
  const matter = matterOf(product.formula);
  const [cold, top] = [temperature, hot].map((at) => saturatedAt(matter, at)?.perGram);
  if (cold === undefined || top === undefined || top >= cold) return inRoom;
  const dry = theory.dividedBy(matter.molarMass).times(matter.core.molarMass);
  return dry
    .dividedBy(quantity(top.toPrecision(6)))
    .times(planned("hotFilter"))
    .to("g");
}

/**
 * Water that a liquor has when everything has reacted: it is looked through hot, so the product is dissolved in it then. Without a
 * curve it is as much as dissolves the product in the room; of clear solutions no more is taken than is left in the end. What is filtered
 * from a solid that is over has so much more that nothing crystallises in the funnel, and is boiled down after.
 */
export function waterAtFirst(
  setting: Setting,
  account: Account,
  crystallising: Crystallising | undefined,
  inRoom: Quantity,
  theory: Quantity,
): Quantity | undefined {
  if (crystallising === undefined || crystallising.asItForms) return undefined;
  const { cooling, water } = crystallising;
  if ("missing" in cooling && water !== undefined && isClear(setting)) return water;
  const clear =
    "missing" in cooling
      ? forHotFilter(setting, crystallising, inRoom, theory)
      : cooling.totalWater
          .times(quantity(beforeBoilingDown(setting, account, crystallising.hot).toPrecision(6)))
          .to("g");
  return water === undefined || water.compare(clear) < 0 ? clear : water;
}

// How much water a liquor that is to crystallise has when everything has reacted.

import type { Quantity } from "../../quantity";
import { fateOf } from "../reaction/fate";
import type { Setting } from "../request/setting";
import type { Crystallising } from "./crystallising";
import { isBase } from "./kind";

/** Nothing but clear solutions comes together: there is no dirt that is not filtered from one of them. */
const isClear = ({ materials, products, temperature }: Setting): boolean =>
  products.every(({ formula }) => fateOf(formula, temperature).precipitated !== true) &&
  materials.every(
    ({ isSolution, form }) => isSolution || (!isBase(form) && fateOf(form, temperature).precipitated === false),
  );

/**
 * Water that a liquor has when everything has reacted: it is looked through hot, so the product is dissolved in it then. Without a
 * curve it is as much as dissolves the product in the room; of clear solutions no more is taken than is left in the end.
 */
export function waterAtFirst(
  setting: Setting,
  crystallising: Crystallising | undefined,
  inRoom: Quantity,
): Quantity | undefined {
  if (crystallising === undefined || crystallising.asItForms) return undefined;
  const { cooling, water } = crystallising;
  if ("missing" in cooling && water !== undefined && isClear(setting)) return water;
  const clear = "missing" in cooling ? inRoom : cooling.totalWater;
  return water === undefined || water.compare(clear) < 0 ? clear : water;
}

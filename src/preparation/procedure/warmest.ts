// How warm a liquor may be made to drive gas out of it.
import type { Formula } from "../../formula";
import type { Quantity } from "../../quantity";
import { exact, planned } from "../planning/exact";
import { isAmmonia } from "../reaction/acids";
import { fateOf } from "../reaction/fate";
import type { Setting } from "../request/setting";
import { losesWaterAt } from "./drying";
import { notWarmOf } from "./not-warm";

/** Undefined where the product is not warmed. */
export function warmestOf({ product, temperature }: Pick<Setting, "product" | "temperature">) {
  const { formula } = product;
  const hot = planned("hot") as Quantity<"temperature">;
  const cold = notWarmOf(formula);
  if (cold !== undefined) return cold.upTo === undefined ? undefined : (exact(cold.upTo) as Quantity<"temperature">);
  const stands = (one: Formula): boolean => fateOf(one, temperature).precipitated === true;
  return stands(formula) && losesWaterAt(formula)?.compare(hot) === -1 ? undefined : hot;
}

/** Does a base set ammonia free from its salt, which is driven out warm? */
export const drivesAmmonia = (setting: Setting): boolean =>
  setting.wet &&
  setting.products.some((one) => one !== setting.product && isAmmonia(one.formula)) &&
  warmestOf(setting) !== undefined;

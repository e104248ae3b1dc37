// How much diluting warms an acid.

import type { Formula } from "../../formula";
import type { Quantity } from "../../quantity";
import { heatOfDilution } from "../../thermochemistry/internal";
import { exact } from "../planning/exact";

/** Heat of diluting so much of an acid, by the water it came in and all the water after; undefined without figures. */
export function enthalpyOfDilution(
  form: Formula,
  amount: Quantity,
  own: Quantity,
  after: Quantity,
): Quantity<"molar energy"> | undefined {
  const perAcid = (water: Quantity): number => water.dividedBy(exact("18.015 g/mol")).dividedBy(amount).toNumber("");
  return heatOfDilution(form, perAcid(own), perAcid(after));
}

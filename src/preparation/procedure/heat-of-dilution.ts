// How much diluting warms an acid.

import type { Formula } from "../../formula";
import type { Quantity } from "../../quantity";
import { temperatureRise } from "../../thermochemistry";
import { heatOfDilution } from "../../thermochemistry/internal";
import type { Pot } from "../contents/pot";
import { exact } from "../planning/exact";

/** Warming of a diluted acid, from its amount, the water it came in, and all that is in the vessel after; undefined without figures. */
export function warmingOfDilution(form: Formula, amount: Quantity, own: Quantity, after: Pot): Quantity | undefined {
  const perAcid = (water: Quantity): number => water.dividedBy(exact("18.015 g/mol")).dividedBy(amount).toNumber("");
  const enthalpy = heatOfDilution(form, perAcid(own), perAcid(after.books.water));
  if (enthalpy === undefined) return undefined;
  return temperatureRise({
    enthalpy,
    amount: amount as Quantity<"amount of substance">,
    mass: after.mass as Quantity<"mass">,
    start: after.books.temperature,
  }).rise;
}

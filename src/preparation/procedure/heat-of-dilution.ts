// How much diluting warms an acid: known of sulfuric acid only.

import type { Formula } from "../../formula";
import { attempt } from "../../foundation/error";
import type { Quantity } from "../../quantity";
import { sulfuricAcidDilution, temperatureRise } from "../../thermochemistry";
import type { Pot } from "../contents/pot";
import { exact } from "../planning/exact";

/** Warming of a diluted acid, from its amount and all that is in the vessel after. */
export function warmingOfDilution(form: Formula, amount: Quantity, after: Pot): Quantity | undefined {
  if (form.compositionText !== "H2O4S") return undefined;
  const perAcid = after.books.water.dividedBy(exact("18.015 g/mol")).dividedBy(amount).to("");
  const enthalpy = attempt(() => sulfuricAcidDilution(Math.min(50, perAcid.value.toNumber()).toFixed(3)));
  if (!enthalpy.ok) return undefined;
  return temperatureRise({
    enthalpy: enthalpy.value,
    amount: amount as Quantity<"amount of substance">,
    mass: after.mass as Quantity<"mass">,
    start: after.books.temperature,
  }).rise;
}

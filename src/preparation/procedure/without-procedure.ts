// What these procedures do not do: liquids that are parted, solids in a burning gas, metals that burn.

import { isOneOf } from "../../ion/internal";
import { BURNS_IN_AIR } from "../data/firing";
import { PlanError } from "../error";
import { gasRow, isGas, isOtherLiquid } from "../reaction/fluids";
import type { Setting } from "../request/setting";

/** Work that no procedure of these does: liquids that are parted, and what only a tube furnace or an open fire does. */
export function refuseWithoutProcedure({ wet, product, reactants, materials }: Setting): void {
  const refusal = (why: string, hint = "doesItGo judges the reaction by itself"): PlanError =>
    new PlanError("plan.request", why, { hint });
  if (wet) {
    if (isOtherLiquid(product.formula))
      throw refusal(`${product.name} is a liquid: no procedure parts liquids or distils them`);
    return;
  }
  const burning = reactants.find(({ formula }) => gasRow(formula)?.burns === true);
  if (burning !== undefined)
    throw refusal(`a solid is heated in ${burning.name} in a tube furnace only: no procedure does that`);
  const led = materials.find(({ form }) => isGas(form, false));
  if (led !== undefined)
    throw refusal(`${led.shelf.name} is a gas: nothing is ground with it`, "leave it out: a solid is fired in air");
  const [first] = reactants.filter(({ formula }) => isOneOf(formula, ...BURNS_IN_AIR.elements));
  if (first !== undefined && reactants.some(({ formula }) => isOneOf(formula, "O2")))
    throw refusal(`${first.name} burns once it is hot: it is no charge for a crucible`);
}

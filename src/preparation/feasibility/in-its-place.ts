// What the materials of a compound that does not exist in water make of each other: as an equation, with the gas in litres.

import { gasVolume } from "../../amount";
import { type BalancedEquation, tryBalance } from "../../equation";
import { list } from "../../foundation/wording";
import { constitutionOf } from "../../ion";
import type { Quantity } from "../../quantity";
import { canonicalFormula } from "../../substance";
import { matterOf } from "../contents/matter";
import { isGas } from "../reaction/fluids";
import { nameOfFormula, type Species } from "../reaction/species";
import type { Setting } from "../request/setting";
import type { Feasibility } from "./feasibility";
import { notInWater } from "./judge-compound";

/** What happens instead; undefined where the tables do not tell all that forms. */
function equationInItsPlace({ reactants, products, product }: Setting): BalancedEquation | undefined {
  const { cations, anions } = constitutionOf(product.formula);
  const row = notInWater(cations, anions)?.row;
  if (row === undefined || row.instead.length === 0) return undefined;
  const plain = (list: readonly Species[]): string[] =>
    list.filter((one) => !one.isWater && one !== product).map(({ formula }) => `${matterOf(formula).core.formula}`);
  const put = plain(reactants);
  const made = [
    ...new Set([
      ...row.instead.map(({ formula }) => formula),
      ...(row.beside === undefined ? [] : [row.beside]),
      ...plain(products),
    ]),
  ];
  for (const [left, right] of [
    [put, made],
    [[...put, "H2O"], made],
    [put, [...made, "H2O"]],
  ] as const) {
    const found = tryBalance({ reactants: left, products: right });
    if (found.ok) return found.value;
  }
  return undefined;
}

/** In words, with the volume of each gas for the batch; undefined where the tables do not tell all that forms. */
export function whatHappens({ solids: [solid] }: Feasibility, setting: Setting): string | undefined {
  const equation = equationInItsPlace(setting);
  if (equation === undefined || solid === undefined) return undefined;
  const one = equation.products.find(({ formula }) => canonicalFormula(formula) === solid.key);
  if (one === undefined) return undefined;
  const gases = equation.products
    .filter(({ formula }) => isGas(formula, true))
    .map(({ formula, coefficient }) => {
      const amount = solid.amount.times(coefficient).dividedBy(one.coefficient) as Quantity<"amount of substance">;
      const volume = gasVolume(amount, { temperature: setting.temperature, pressure: setting.pressure });
      return `${volume.format({ significant: 2, uncertainty: "none" })} of ${nameOfFormula(formula)}`;
    });
  return `what happens is ${equation.toUnicode()}${gases.length === 0 ? "" : `, here ${list(gases)}`}`;
}

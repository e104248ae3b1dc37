// What is in a liquor beside its product, by the account: the other salts that form, what is left of the materials, and what the
// packs contain besides.

import type { Formula } from "../../formula";
import { isWater } from "../../formula/internal";
import type { Quantity } from "../../quantity";
import { massOf } from "../contents/entry";
import { type Matter, matterOf } from "../contents/matter";
import type { Account } from "../reaction/account";
import { fateOf } from "../reaction/fate";
import { isGas, isVolatile } from "../reaction/fluids";
import { carbonateFor, madeNeutral } from "../reaction/sour-cyanide";
import type { Setting } from "../request/setting";

/** A solute and its mass without crystal water. */
interface Beside {
  readonly matter: Matter;
  readonly dry: Quantity;
}

/** Everything that stays dissolved beside the product, once each; what leaves with the steam is left out. */
export function besideProduct(setting: Setting, { formed, supplied }: Account): readonly Beside[] {
  const { materials, products, product, temperature } = setting;
  const carbonate = carbonateFor(setting)?.formula;
  const found = new Map<string, Beside>();
  const own = matterOf(product.formula).core.key;
  const take = (formula: Formula, amount: Quantity): void => {
    const matter = matterOf(formula).core;
    if (isWater(formula) || matter.key === own || isGas(formula, true) || isVolatile(formula)) return;
    if (!amount.isPositive() || fateOf(formula, temperature).precipitated === true) return;
    const dry = massOf({ matter, amount });
    const before = found.get(matter.key);
    found.set(matter.key, before === undefined ? { matter, dry } : { matter, dry: before.dry.plus(dry) });
  };
  /** As it is once the liquor has been made neutral, where it is. */
  const takeNeutral = (formula: Formula, amount: Quantity): void => {
    const made = carbonate === undefined ? undefined : madeNeutral(carbonate, formula, amount);
    if (made === undefined) take(formula, amount);
    else
      for (const { matter, count, whereto } of made.terms)
        if (count > 0n && whereto === "dissolved") take(matter.formula, made.extent.times(count));
  };
  products.forEach(({ formula }, i) => {
    takeNeutral(formula, formed[i]!.amount);
  });
  materials.forEach(({ species, also, massOf: weigh }, i) => {
    const { left, portion } = supplied[i]!;
    takeNeutral(species.formula, left);
    const mass = also.length === 0 ? undefined : weigh(portion);
    for (const { form, share } of mass === undefined ? [] : also)
      take(form, mass!.times(share).dividedBy(matterOf(form).molarMass).to("mol"));
  });
  return [...found.values()];
}

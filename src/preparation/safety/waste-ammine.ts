// The liquor of an ammine: soda precipitates nothing from it, and it is left as it is.

import { list } from "../../foundation/wording";
import type { Quantity } from "../../quantity";
import { complexIn } from "../contents/complexes";
import { matterOf } from "../contents/matter";
import { AMMINE_LEFT, HELD_BY_AMMONIA, SLOW_METALS } from "../data/waste";
import type { Dissolved } from "../procedure/isolation";
import { fateOf } from "../reaction/fate";
import type { Setting } from "../request/setting";
import { isWasteMetal } from "./waste-metals";
import { hydronsGivenBy } from "./waste-treatment";

/** Metals that ammonia holds, at once or for good; silver is none of them, whose liquor is never kept. */
const HELD: readonly string[] = [...HELD_BY_AMMONIA.metals, ...SLOW_METALS.flatMap(({ metals }) => metals)];

/** What to do with it, in words; undefined for any other liquor, beside another metal, and where acid is in it. */
export function ammineLeft(
  { product, temperature }: Setting,
  solutes: readonly Dissolved[],
  least: Quantity,
): string | undefined {
  const own = complexIn(matterOf(product.formula));
  if (own?.ligand !== AMMINE_LEFT.ligand || fateOf(product.formula, temperature).precipitated === true)
    return undefined;
  const metals = own.metals.map(({ symbol }) => symbol);
  if (!metals.every((one) => HELD.includes(one))) return undefined;
  const weighed = solutes.filter(({ species, amount }) => amount.times(species.molarMass).compare(least) >= 0);
  const isOther = ({ species }: Dissolved): boolean =>
    hydronsGivenBy(species.formula) > 0n ||
    species.metals.some(({ symbol }) => isWasteMetal(symbol) && !metals.includes(symbol));
  return weighed.some(isOther) ? undefined : AMMINE_LEFT.note.replace("{metals}", list(metals));
}

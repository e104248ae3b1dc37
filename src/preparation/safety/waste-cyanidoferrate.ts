// The liquor of a sparing cyanidoferrate in which salt of its metal is in excess: it is left as it is.

import type { Formula } from "../../formula";
import { list } from "../../foundation/wording";
import type { Quantity } from "../../quantity";
import { madeOf } from "../../substance/internal";
import { CYANIDOFERRATE_LEFT } from "../data/waste";
import type { Dissolved } from "../procedure/isolation";
import { fateOf } from "../reaction/fate";
import { coreOf } from "../reaction/species";
import type { Setting } from "../request/setting";
import { isWasteMetal } from "./waste-metals";

const isCyanidoferrate = (formula: Formula): boolean =>
  [...madeOf(formula).groups].some((name) => name.startsWith("hexacyanidoferrate"));

/** What to do with it, in words; undefined for any other liquor. */
export function cyanidoferrateLeft(
  { product, temperature }: Setting,
  solutes: readonly Dissolved[],
  least: Quantity,
): string | undefined {
  if (!isCyanidoferrate(product.formula) || fateOf(product.formula, temperature).precipitated !== true)
    return undefined;
  const others = solutes.filter(
    ({ species, amount }) =>
      coreOf(species.formula) !== coreOf(product.formula) && amount.times(species.molarMass).compare(least) >= 0,
  );
  const over = others.flatMap(({ species }) => species.metals.map(({ symbol }) => symbol)).filter(isWasteMetal);
  if (over.length === 0 || others.some(({ species }) => isCyanidoferrate(species.formula))) return undefined;
  return CYANIDOFERRATE_LEFT.note.replace("{metals}", list([...new Set(over)])).replace("{product}", product.name);
}

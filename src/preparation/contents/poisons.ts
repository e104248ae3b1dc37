// Poisonous metals in a liquor: what it wets is waste, and little of a product is not worth boiling it for.

import { WASTE_METALS } from "../data/waste";
import type { Pot } from "./pot";

/** Is a metal so poisonous that its liquors go to the waste whole, and nothing is boiled down from them? */
export const isPoisonInWaste = (symbol: string): boolean =>
  WASTE_METALS.some(({ metal, poison }) => metal === symbol && poison === true);

/** Symbols of such metals dissolved in a vessel. */
export const poisonsIn = ({ books: { dissolved } }: Pot): string[] =>
  [...new Set(dissolved.flatMap(({ matter }) => matter.formula.symbols))].filter(isPoisonInWaste);

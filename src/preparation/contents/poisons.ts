// Poisonous metals in a liquor: what it wets is waste, and little of a product is not worth boiling it for.

import { WASTE_METALS } from "../data/waste";
import type { Pot } from "./pot";

/** Symbols of the metals dissolved in a vessel whose liquors go to the waste whole. */
export const poisonsIn = ({ books: { dissolved } }: Pot): string[] =>
  WASTE_METALS.filter(
    ({ metal, poison }) => poison === true && dissolved.some(({ matter }) => matter.formula.count(metal).n !== 0n),
  ).map(({ metal }) => metal);

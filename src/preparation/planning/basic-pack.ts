// A pack with the name of a normal carbonate is often the basic one: another mass in the fire, the same oxide at the end.
import { type Formula, molarMass } from "../../formula";
import type { Quantity } from "../../quantity";
import { madeOf } from "../../substance/internal";
import { REST_IS_NO_WATER } from "../data/firing";
import { isLye } from "../reaction/acids";
import { formulasLike, isKnownCarbonate, keyElement } from "../reaction/candidates";
import { exact } from "./exact";

const isBasic = (formula: Formula): boolean => madeOf(formula).groups.has("hydroxide");

/** The basic carbonate that a normal one may be in truth; undefined for what has none. */
const basicOf = (pack: Formula): Formula | undefined =>
  isKnownCarbonate(pack) ? formulasLike(pack).find((one) => isKnownCarbonate(one) && isBasic(one)) : undefined;

/**
 * Is what such a pack has besides usually water or hydroxide? So it is of hydroxides that are no lye, and of carbonates that
 * precipitate as basic ones; not of stone. Common practice.
 */
const isShortByWater = (pack: Formula): boolean =>
  !REST_IS_NO_WATER.metals.some((metal) => pack.symbols.includes(metal)) &&
  ((isBasic(pack) && !isLye(pack)) || basicOf(pack) !== undefined);

/** What a firing of so much product ends at if the pack was the basic carbonate; undefined where none is known. */
export function ofBasicPack(
  pack: Formula,
  theory: Quantity,
): { readonly formula: string; readonly mass: Quantity } | undefined {
  const metal = keyElement(pack);
  const basic = isBasic(pack) ? undefined : basicOf(pack);
  if (metal === undefined || basic === undefined) return undefined;
  const perMetal = (formula: Formula): Quantity => molarMass(formula).dividedBy(exact(String(formula.count(metal))));
  const mass = theory.times(perMetal(pack)).dividedBy(perMetal(basic)).to("g");
  return { formula: basic.toUnicode(), mass };
}

/** Of what packs have besides, no more than there is of it: the part that usually is water. */
export const waterOfPacks = (
  rest: Quantity,
  packs: readonly { readonly form: Formula; readonly other: Quantity }[],
): Quantity => {
  const water = packs
    .filter(({ form }) => isShortByWater(form))
    .reduce((all, { other }) => all.plus(other), exact("0 g"));
  return water.compare(rest) < 0 ? water : rest;
};

// A pack with the name of a normal carbonate is often the basic one: another mass in the fire, the same oxide at the end.
import { type Formula, molarMass } from "../../formula";
import { type Quantity, sum } from "../../quantity";
import { madeOf } from "../../substance/internal";
import { REST_IS_NO_WATER } from "../data/firing";
import { isLye } from "../reaction/acids";
import { formulasLike, isKnownCarbonate, keyElement } from "../reaction/candidates";
import { exact, isWorthAWord } from "./exact";

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

/** What packs have besides in a charge that is fired. */
export interface PackRest {
  /** All of it; nothing where it is not worth a word. */
  readonly rest: Quantity;
  /** The part that may be water after all, and leave; nothing of a charge that gains, which is weighed against itself. */
  readonly mayLeave: Quantity;
  /** The part that usually is water: what has not reacted may weigh the same. */
  readonly water: Quantity;
}

/** Of what is left besides in a fired charge: what it may be, by the packs that brought it. */
export function restOfPacks(fired: {
  readonly other: Quantity;
  readonly gains: boolean;
  readonly theory: Quantity;
  readonly packs: () => readonly { readonly form: Formula; readonly other: Quantity }[];
}): PackRest {
  const nothing = exact("0 g");
  const rest = isWorthAWord(fired.other, fired.theory) ? fired.other : nothing;
  const mayLeave = fired.gains ? nothing : rest;
  if (!mayLeave.isPositive()) return { rest, mayLeave, water: nothing };
  const ofWater = sum([nothing, ...fired.packs().flatMap(({ form, other }) => (isShortByWater(form) ? [other] : []))]);
  return { rest, mayLeave, water: ofWater.compare(rest) < 0 ? ofWater : rest };
}

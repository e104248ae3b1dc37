// A pack with the name of a normal carbonate is often the basic one: another mass in the fire, the same oxide at the end.
import { type Formula, molarMass } from "../../formula";
import type { Quantity } from "../../quantity";
import { madeOf } from "../../substance/internal";
import { formulasLike, isKnownCarbonate, keyElement } from "../reaction/candidates";
import { exact } from "./exact";

/** What a firing of so much product ends at if the pack was the basic carbonate; undefined where none is known. */
export function ofBasicPack(
  pack: Formula,
  theory: Quantity,
): { readonly formula: string; readonly mass: Quantity } | undefined {
  const metal = keyElement(pack);
  const isBasic = (formula: Formula): boolean => madeOf(formula).groups.has("hydroxide");
  if (metal === undefined || !isKnownCarbonate(pack) || isBasic(pack)) return undefined;
  const basic = formulasLike(pack).find((one) => isKnownCarbonate(one) && isBasic(one));
  if (basic === undefined) return undefined;
  const perMetal = (formula: Formula): Quantity => molarMass(formula).dividedBy(exact(String(formula.count(metal))));
  const mass = theory.times(perMetal(pack)).dividedBy(perMetal(basic)).to("g");
  return { formula: basic.toUnicode(), mass };
}

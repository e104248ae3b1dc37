// Oxalate in a waste: soda leaves it dissolved, and calcium takes it out.

import { molarMass } from "../../formula";
import { isOneOf } from "../../ion/internal";
import { type Quantity, sum } from "../../quantity";
import { madeOf } from "../../substance/internal";
import { complexIn } from "../contents/complexes";
import { matterOf } from "../contents/matter";
import { OXALATE_OUT } from "../data/waste";
import { planned } from "../planning/exact";
import type { Dissolved } from "../procedure/isolation";
import type { Setting } from "../request/setting";

/** Oxalate that soda leaves dissolved, and how much of what takes it out; of a complex all is said with its ligand. */
export function oxalateNotes({ product }: Setting, solutes: readonly Dissolved[], least: Quantity): string[] {
  const { ligand, acid, reagent, note } = OXALATE_OUT;
  if (complexIn(matterOf(product.formula))?.ligand === ligand) return [];
  const own = solutes.filter(
    ({ species: { formula, molarMass }, amount }) =>
      (isOneOf(formula, acid) || [...madeOf(formula).groups].some((one) => one.includes(ligand))) &&
      amount.times(molarMass).compare(least) >= 0,
  );
  if (own.length === 0) return [];
  const each = own.map(({ species: { formula }, amount }) =>
    amount.times(formula.count("C").toFraction()).dividedBy(2),
  );
  const mass = sum(each).times(planned("overdose")).times(molarMass(reagent)).to("g");
  return [note.replace("{mass}", mass.format({ significant: 2, uncertainty: "none" }))];
}

// Oxalate in a waste: soda leaves it dissolved, and calcium takes it out.

import { isOneOf } from "../../ion/internal";
import { type Quantity, sum } from "../../quantity";
import { madeOf } from "../../substance/internal";
import { complexIn } from "../contents/complexes";
import { matterOf } from "../contents/matter";
import { OXALATE_OUT } from "../data/waste";
import { planned } from "../planning/exact";
import type { Dissolved } from "../procedure/isolation";
import type { Setting } from "../request/setting";
import { dry, type WasteNote } from "./waste-note";

/** Oxalate that soda leaves dissolved, and how much of what takes it out; of a complex all is said with its ligand. */
export function oxalateNotes({ product }: Setting, solutes: readonly Dissolved[], least: Quantity): WasteNote[] {
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
  const taken = dry(reagent, sum(each).times(planned("overdose")));
  const mass = taken.portion!.format({ significant: 2, uncertainty: "none" });
  return [{ text: note.replace("{mass}", mass), takes: [taken] }];
}

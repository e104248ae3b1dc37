// A waste that burns with the alcohol or acetone in it.

import { sum } from "../../quantity";
import { massOf } from "../contents/entry";
import type { Pot } from "../contents/pot";
import { exact, planned } from "../planning/exact";
import { isAntisolvent } from "../reaction/fluids";
import { densityAt } from "../shelf/strength";

/** Has a vessel so much alcohol or acetone that its liquor burns? */
export function burnsWithAlcohol(pot: Pot): boolean {
  const { volume } = pot.contents;
  const own = pot.books.dissolved.filter(({ matter }) => isAntisolvent(matter.formula));
  if (volume === undefined || own.length === 0) return false;
  const parts = own.map((one) => massOf(one).dividedBy(densityAt(one.matter.formula, exact("100 %"))!));
  return sum(parts).compare(volume.times(planned("burns"))) > 0;
}

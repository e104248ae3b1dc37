// Acid from the shelf that no pack of the plan brings, as strong as it is planned.
import type { Formula } from "../../formula";
import type { Quantity } from "../../quantity";
import { matterOf } from "../contents/matter";
import { Pot } from "../contents/pot";

/** So much of the pure acid in water, at the strength by mass. */
export function acidAtHand({ books }: Pot, formula: Formula, amount: Quantity, strength: Quantity): Pot {
  const acid = matterOf(formula);
  const mass = amount.times(acid.molarMass).to("g");
  return Pot.empty(books.temperature, books.pressure)
    .plusWater(mass.dividedBy(strength).minus(mass))
    .plusDissolved(acid, amount);
}

// A weighed solid into water, cold or hot, until it is clear.
import type { Quantity } from "../../quantity";
import type { SolidEntry } from "../contents/entry";
import type { Pot } from "../contents/pot";
import { fateOf } from "../reaction/fate";
import { type Done, done, justWater } from "./operation";

/** A solid and water into a vessel; what was solid in the portion is dissolved then, but for what the pack has beside it and water does not dissolve. */
export function dissolve(
  before: Pot,
  solid: Pot,
  water: Quantity,
  temperature: Quantity<"temperature">,
  unknown: readonly string[] = [],
): Done {
  // the salt comes first, what the pack has beside it after
  const isLeft = ({ matter }: SolidEntry, i: number): boolean =>
    i > 0 && fateOf(matter.formula, temperature).precipitated === true;
  const { solids } = solid.books;
  const clear = solids
    .filter((one, i) => !isLeft(one, i))
    .reduce((pot, one) => pot.plusDissolved(one.matter, one.amount), solid.with({ solids: solids.filter(isLeft) }));
  const after = before.plusAll(clear).plusWater(water).at(temperature);
  const known = unknown.length === 0 ? after : after.with({ unknown: [...after.books.unknown, ...unknown] });
  return done("dissolve", before, known, [solid, justWater(before, water)]);
}

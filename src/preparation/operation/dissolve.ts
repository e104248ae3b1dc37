// A weighed solid into water, cold or hot, until it is clear.
import type { Quantity } from "../../quantity";
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
  const [own, ...beside] = solid.books.solids;
  const stays = beside.filter(({ matter }) => fateOf(matter.formula, temperature).precipitated === true);
  const clear = [own, ...beside]
    .filter((one) => one !== undefined && !stays.includes(one))
    .reduce((pot, one) => pot.plusDissolved(one!.matter, one!.amount), solid.with({ solids: stays }));
  const after = before.plusAll(clear).plusWater(water).with({ temperature });
  const known = unknown.length === 0 ? after : after.with({ unknown: [...after.books.unknown, ...unknown] });
  return done("dissolve", before, known, [solid, justWater(before, water)]);
}

// A weighed solid into water, cold or hot, until it is clear.
import type { Quantity } from "../../quantity";
import type { Pot } from "../contents/pot";
import { type Done, done, justWater } from "./operation";

/** A solid and water into a vessel; what was solid in the portion is dissolved then. */
export function dissolve(
  before: Pot,
  solid: Pot,
  water: Quantity,
  temperature: Quantity<"temperature">,
  unknown: readonly string[] = [],
): Done {
  const clear = solid.books.solids.reduce(
    (pot, one) => pot.plusDissolved(one.matter, one.amount),
    solid.with({ solids: [] }),
  );
  const after = before.plusAll(clear).plusWater(water).with({ temperature });
  const known = unknown.length === 0 ? after : after.with({ unknown: [...after.books.unknown, ...unknown] });
  return done("dissolve", before, known, [solid, justWater(before, water)]);
}

// Heating a solid dry until its mass stands still.
import type { Quantity } from "../../quantity";
import type { Pot } from "../contents/pot";
import { type Reaction, reacted } from "./add";
import { type Done, done } from "./operation";

export function fire(before: Pot, reactions: readonly Reaction[], at: Quantity<"temperature"> | undefined): Done {
  const start = at === undefined ? before : before.with({ temperature: at });
  const { pot, left, taken } = reacted(start, reactions);
  // What water the heat drives out is vapour, not liquor.
  const { water } = pot.books;
  const steam = water.isZero()
    ? []
    : [{ what: "vapour" as const, pot: pot.with({ solids: [], dissolved: [], gas: [] }) }];
  const dry = pot.with({ water: water.minus(water) });
  return done("fire", before, dry, taken, [
    ...left,
    ...steam.map((one) => ({ ...one, pot: one.pot.with({ other: one.pot.books.other.minus(one.pot.books.other) }) })),
  ]);
}

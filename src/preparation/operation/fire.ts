// Heating a solid dry until its mass stands still.
import type { Quantity } from "../../quantity";
import type { Pot } from "../contents/pot";
import { type Reaction, reacted } from "./add";
import { type Done, done } from "./operation";

export function fire(before: Pot, reactions: readonly Reaction[], at: Quantity<"temperature"> | undefined): Done {
  const start = at === undefined ? before : before.at(at);
  const { pot, left, taken } = reacted(start, reactions);
  // What the heat drives out, and is no gas once it is cold, is vapour: no liquor is left.
  const { water, dissolved, other } = pot.books;
  const steam =
    water.isZero() && dissolved.length === 0
      ? []
      : [{ what: "vapour" as const, pot: pot.with({ solids: [], gas: [], other: other.minus(other) }) }];
  const dry = pot.with({ water: water.minus(water), dissolved: [] });
  return done("fire", before, dry, taken, [...left, ...steam]);
}

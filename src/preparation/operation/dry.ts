// Drying to constant mass: what the cake still has of liquid goes, what was dissolved in it stays.
import type { Quantity } from "../../quantity";
import type { Books } from "../contents/books";
import type { SolidEntry } from "../contents/entry";
import { massOfWater } from "../contents/matter";
import type { Pot } from "../contents/pot";
import { exact } from "../planning/exact";
import { isVolatile } from "../reaction/fluids";
import { type Done, done, evaporated, vapour } from "./operation";

/** Crystal water that goes as water. */
function withoutWater(
  { solids, water }: Books,
  changes: (solid: SolidEntry) => boolean,
): { readonly solids: readonly SolidEntry[]; readonly water: Quantity } {
  let all = water;
  const dry = solids.map((one) => {
    if (one.matter.waters.isZero() || !changes(one)) return one;
    all = all.plus(massOfWater(one.amount.times(one.matter.waters))).to("g");
    return { ...one, matter: one.matter.core };
  });
  return { solids: dry, water: all };
}

/** @param changes - solids beside the product that keep no crystal water where it is dried */
export function dry(before: Pot, changes: (solid: SolidEntry) => boolean = () => false): Done {
  const { solids, water } = withoutWater(before.books, changes);
  const { rest, left: gone } = evaporated(before, isVolatile);
  const dried = rest.books.dissolved.reduce(
    (pot, { matter, amount }) => {
      const own = solids.find((one) => one.matter.core.key === matter.key);
      const bound = own === undefined ? undefined : massOfWater(amount.times(own.matter.waters));
      const left = bound === undefined ? undefined : pot.books.water.minus(bound);
      // Its own solid takes it up, as far as there is water for that.
      return own === undefined || left!.compare(exact("0 g")) < 0
        ? pot.plusSolid(matter, amount, "from the liquor")
        : pot.with({ water: left! }).plusSolid(own.matter, amount, own.origin);
    },
    before.with({ dissolved: [], solids, water }),
  );
  const steam = vapour(before, dried.books.water);
  return done("dry", before, dried.with({ water: exact("0 g") }), [], [steam, ...gone]);
}

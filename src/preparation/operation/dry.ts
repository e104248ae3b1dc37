// Drying to constant mass: what the cake still has of liquid goes, what was dissolved in it stays.
import type { Entry } from "../contents/entry";
import { massOfWater } from "../contents/matter";
import { Pot } from "../contents/pot";
import { exact } from "../planning/exact";
import { isVolatile } from "../reaction/fluids";
import { type Done, done } from "./operation";

const leaves = ({ matter }: Entry): boolean => isVolatile(matter.formula);

export function dry(before: Pot): Done {
  const { dissolved, solids, temperature, pressure } = before.books;
  const gone = dissolved.filter(leaves);
  const dried = dissolved
    .filter((one) => !leaves(one))
    .reduce(
      (pot, { matter, amount }) => {
        const own = solids.find((one) => one.matter.core.key === matter.key);
        const bound = own === undefined ? undefined : massOfWater(amount.times(own.matter.waters));
        const left = bound === undefined ? undefined : pot.books.water.minus(bound);
        // Its own solid takes it up, as far as there is water for that.
        return own === undefined || left!.value.isNegative()
          ? pot.plusSolid(matter, amount, "from the liquor")
          : pot.with({ water: left! }).plusSolid(own.matter, amount, own.origin);
      },
      before.with({ dissolved: [] }),
    );
  const steam = gone.reduce(
    (pot, { matter, amount }) => pot.plusDissolved(matter, amount),
    Pot.empty(temperature, pressure).plusWater(dried.books.water),
  );
  return done("dry", before, dried.with({ water: exact("0 g") }), [], [{ what: "vapour", pot: steam }]);
}

// Drying to constant mass: what the cake still has of liquid goes, what was dissolved in it stays.
import type { Entry } from "../contents/entry";
import { Pot } from "../contents/pot";
import { VOLATILE } from "../data/volatile";
import { exact } from "../planning/exact";
import { type Done, done } from "./operation";

const isVolatile = ({ matter }: Entry): boolean => VOLATILE.some((row) => row.formula === matter.key);

export function dry(before: Pot): Done {
  const { water, dissolved, solids, temperature, pressure } = before.books;
  const gone = dissolved.filter(isVolatile);
  const steam = gone.reduce(
    (pot, { matter, amount }) => pot.plusDissolved(matter, amount),
    Pot.empty(temperature, pressure).plusWater(water),
  );
  const dried = dissolved
    .filter((one) => !isVolatile(one))
    .reduce(
      (pot, { matter, amount }) => {
        const own = solids.find((one) => one.matter.key === matter.key);
        return pot.plusSolid(matter, amount, own?.origin ?? "from the liquor");
      },
      before.with({ water: exact("0 g"), dissolved: [] }),
    );
  return done("dry", before, dried, [], [{ what: "vapour", pot: steam }]);
}

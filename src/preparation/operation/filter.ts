// Solid and liquor apart: the cake keeps some of the liquor.
import { type Quantity, sum } from "../../quantity";
import { massOf } from "../contents/entry";
import { Pot } from "../contents/pot";
import { dissolve } from "../contents/react";
import { shareFrom } from "../contents/share";
import type { Coming } from "./concentrate";
import { type Done, done, justWater } from "./operation";

/** Share of the liquid that a cake keeps when it keeps so large a volume; all of it at most. */
function shareKept(pot: Pot, retained: Quantity): Quantity {
  const { volume } = pot.liquor;
  return volume.isPositive()
    ? shareFrom(retained.dividedBy(volume).toNumber(""), "share of the liquor that the cake keeps")
    : shareFrom(0, "nothing liquid");
}

/** The cake stays, with a volume of liquor in it; the filtrate leaves, or after washes the last of their water. */
export function filterCake(before: Pot, retained: Quantity, what: "filtrate" | "wash water" = "filtrate"): Done {
  const { kept, rest } = before.split(shareKept(before, retained));
  return done("filter", before, kept, [], [{ what, pot: rest }]);
}

/**
 * The liquor is wanted, and what the cake keeps of it is washed into it with water, a portion at a time: each mixes with what the
 * cake keeps, and as much stays in it as before.
 */
export function filterAndJoin(before: Pot, retained: Quantity, portions: readonly Quantity[]): Done {
  const { kept, rest } = before.split(shareKept(before, retained));
  // what has left as gas is in the books of the vessel
  let [clings, liquor] = [kept.with({ solids: [], gas: [] }), rest.with({ gas: before.books.gas })];
  for (const water of portions) {
    const mixed = clings.plusWater(water);
    const parted = mixed.split(shareKept(mixed, clings.liquor.volume));
    clings = parted.kept;
    liquor = liquor.plusAll(parted.rest);
  }
  const residue = before.books.solids.reduce((pot, one) => pot.plusSolid(one.matter, one.amount, one.origin), clings);
  const water = justWater(before, sum(portions));
  return done("filter", before, liquor, [water], [{ what: "residue", pot: residue }]);
}

/** The liquor is wanted, and the salt on the filter keeps some of it: so much for each mass of the salt. */
export function filterSalt(before: Pot, clings: Quantity): Done {
  const { books } = before;
  const salt = sum(books.solids.map(massOf));
  const liquid = before.with({ solids: [] }).mass;
  const share = liquid.isPositive() ? salt.times(clings).dividedBy(liquid).toNumber("") : 0;
  const { kept, rest } = before.split(shareFrom(share, "share of the liquor that the salt keeps"));
  return done("filter", before, rest.with({ gas: books.gas }), [], [{ what: "residue", pot: kept.with({ gas: [] }) }]);
}

/** The same, and the salt is rinsed with hot water, which dissolves so much of it, into the liquor: as much stays in it as before. */
export function filterSaltRinsed(before: Pot, clings: Quantity, water: Quantity, taken: readonly Coming[]): Done {
  const parted = filterSalt(before, clings);
  const cake = parted.left[0]!.pot;
  const rinsed = taken.reduce((pot, { matter, amount }) => dissolve(pot, matter, amount), cake.plusWater(water));
  const { kept, rest } = rinsed.split(shareKept(rinsed, cake.liquor.volume));
  const poured = justWater(before, water);
  return done("filter", before, parted.after.plusAll(rest), [poured], [{ what: "residue", pot: kept }]);
}

/** The liquor is wanted: what is solid stays on the filter. */
export function filterLiquor(before: Pot): Done {
  const { books } = before;
  const residue = books.solids.reduce(
    (pot, one) => pot.plusSolid(one.matter, one.amount, one.origin),
    Pot.empty(books.temperature, books.pressure),
  );
  return done("filter", before, before.with({ solids: [] }), [], [{ what: "residue", pot: residue }]);
}

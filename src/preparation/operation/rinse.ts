// Crystals rinsed on the filter: the liquor that clings to them goes, a little of the product with it, and the rinse clings in
// its place.
import type { Quantity } from "../../quantity";
import type { Matter } from "../contents/matter";
import type { Pot } from "../contents/pot";
import { dissolve } from "../contents/react";
import { shareFrom } from "../contents/share";
import { exact } from "../planning/exact";
import { type Done, done, justWater } from "./operation";

/** The water that clings to a cake replaced by another liquid; what was dissolved in it stays, as of salts in alcohol. */
export function displaceWater(before: Pot, liquid: Pot): Done {
  const { water } = before.books;
  const cling = liquid.split(shareFrom(water.dividedBy(liquid.mass).toNumber(""), "share of the liquid that clings"));
  const gone = justWater(before, water);
  return done(
    "rinse",
    before,
    before.with({ water: exact("0 g") }).plusAll(cling.kept),
    [liquid],
    [{ what: "wash water", pot: gone.plusAll(cling.rest) }],
  );
}

/** Each portion mixes with what clings, and as large a volume clings after: so much of the first liquor is left. */
export const leftAfter = (clinging: number, portion: number, portions: number): number =>
  clinging > 0 ? (clinging / (clinging + portion)) ** portions : 0;

/** Of the liquor that clings what is left, and of a rinse what clings in its place, as shares. */
export function afterRinse(
  before: Pot,
  liquid: Pot,
  portions: number,
): { readonly left: number; readonly clings: number } {
  const [clinging, poured] = [before, liquid].map((pot) => pot.liquor.volume.toNumber("mL")) as [number, number];
  const left = leftAfter(clinging, poured / portions, portions);
  return { left, clings: ((1 - left) * clinging) / poured };
}

export function rinse(
  before: Pot,
  liquid: Pot,
  lost: { readonly matter: Matter; readonly amount: Quantity } | undefined,
  portions = 2,
): Done {
  const stirred = lost === undefined ? before : dissolve(before, lost.matter, lost.amount);
  const { left, clings } = afterRinse(before, liquid, portions);
  const { kept, rest } = stirred.split(shareFrom(left, "share of the liquor that is left on the crystals"));
  const rinsing = liquid.split(shareFrom(clings, "share of the rinse that clings to the crystals"));
  return done(
    "rinse",
    before,
    kept.plusAll(rinsing.kept),
    [liquid],
    [{ what: "wash water", pot: rest.plusAll(rinsing.rest) }],
  );
}

/** A rinse that another follows in the same step. */
export function rinsedAgain(first: Done, again: (pot: Pot) => Done): Done {
  const second = again(first.after);
  const [one, other] = [first, second].map(({ left }) => left[0]!.pot) as [Pot, Pot];
  return done(
    "rinse",
    first.before,
    second.after,
    [...first.put, ...second.put],
    [{ what: "wash water", pot: one.plusAll(other) }],
  );
}

// Crystals rinsed on the filter: the liquor that clings to them goes, a little of the product with it, and the rinse clings in
// its place.
import type { Quantity } from "../../quantity";
import type { Matter } from "../contents/matter";
import type { Pot } from "../contents/pot";
import { dissolve } from "../contents/react";
import { exact } from "../planning/exact";
import { type Done, done, justWater } from "./operation";
import { shareFrom } from "./share";

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

export function rinse(
  before: Pot,
  liquid: Pot,
  lost: { readonly matter: Matter; readonly amount: Quantity } | undefined,
): Done {
  const stirred = lost === undefined ? before : dissolve(before, lost.matter, lost.amount);
  const { kept, rest } = stirred.split(exact("0"));
  const cling = before.with({ solids: [] }).mass.dividedBy(liquid.mass).toNumber("");
  const rinsing = liquid.split(shareFrom(cling, "share of the rinse that clings to the crystals"));
  return done(
    "rinse",
    before,
    kept.plusAll(rinsing.kept),
    [liquid],
    [{ what: "wash water", pot: rest.plusAll(rinsing.rest) }],
  );
}

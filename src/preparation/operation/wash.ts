// Washing a cake: water in, stirred up, liquor off, so many times.
import { densityOfWater } from "../../amount";
import type { Quantity } from "../../quantity";
import { type Entry, massOf } from "../contents/entry";
import type { Matter } from "../contents/matter";
import type { Pot } from "../contents/pot";
import { dissolve } from "../contents/react";
import { shareFrom } from "../contents/share";
import { lessThanAll } from "../planning/exact";
import { type Done, done, justWater } from "./operation";

/**
 * Washes of a volume each; every one leaves a share of what the cake kept.
 *
 * @param acid - what is in the water of all of them together
 */
export function wash(
  before: Pot,
  washes: number,
  water: Quantity,
  leftByOne: Quantity,
  lost: { readonly matter: Matter; readonly amount: Quantity } | undefined,
  acid?: Entry,
): Done {
  const all = water.times(BigInt(washes)).to("g");
  const stays = shareFrom(leftByOne.toNumber("") ** washes, "share of the salts that the washes leave");
  const start = before.books;
  const stirred = lost === undefined ? before : dissolve(before, lost.matter, lost.amount);
  const { kept, rest } = stirred.split(stays);
  // The cake keeps as large a volume as it held: clean water in place of liquor.
  const gone = before.liquor.volume.times(lessThanAll(stays));
  const clean = gone.times(densityOfWater(start.temperature)).to("g");
  const after = kept.plusWater(clean);
  const off = rest.with({ water: rest.books.water.minus(clean).plus(all).to("g"), temperature: start.temperature });
  if (acid === undefined)
    return done("wash", before, after, [justWater(before, all)], [{ what: "wash water", pot: off }]);
  const { matter, amount } = acid;
  // so strong as its share by mass says: the acid stands for some of the water
  const mass = massOf(acid);
  const stayed = amount.times(clean).dividedBy(all.minus(mass)).to("mol");
  const poured = off.with({ water: off.books.water.minus(mass).to("g") });
  return done(
    "wash",
    before,
    after.plusDissolved(matter, stayed),
    [justWater(before, all.minus(mass).to("g")).plusDissolved(matter, amount)],
    [{ what: "wash water", pot: poured.plusDissolved(matter, amount.minus(stayed)) }],
  );
}

/** A drop of the last wash looked at. */
export const testWash = (before: Pot): Done => done("wash", before, before);

// Boiling water off, and with the first of it what boils lower; what the rest no longer holds crystallises hot.
import type { Quantity } from "../../quantity";
import type { Matter } from "../contents/matter";
import type { Pot } from "../contents/pot";
import { crystallised } from "../contents/react";
import { leavesWithSteam } from "../reaction/fluids";
import { type Done, done, evaporated, vapour } from "./operation";

/** A salt that comes out as the water goes. */
export interface Coming {
  readonly matter: Matter;
  readonly amount: Quantity;
}

export function concentrate(
  before: Pot,
  off: Quantity,
  hot: Quantity<"temperature">,
  coming: readonly Coming[] = [],
): Done {
  const { rest, left } = off.isPositive() ? evaporated(before, leavesWithSteam) : { rest: before, left: [] };
  const boiled = rest.with({ water: before.books.water.minus(off), temperature: hot });
  const after = coming.reduce((pot, one) => crystallised(pot, one.matter, one.amount), boiled);
  return done("concentrate", before, after, [], [vapour(before, off), ...left]);
}

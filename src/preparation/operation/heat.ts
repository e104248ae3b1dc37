// Warming a vessel and keeping it there: what boils lower than that leaves as vapour, and nothing else.
import type { Quantity } from "../../quantity";
import type { Pot } from "../contents/pot";
import { leavesWarm } from "../reaction/fluids";
import { type Done, done, evaporated } from "./operation";

export function heat(before: Pot, to: Quantity<"temperature">): Done {
  const { rest, left } = evaporated(before.at(to), (formula) => leavesWarm(formula, to));
  return done("heat", before, rest, [], left);
}

// Cooling: crystals come, and take their water along.
import type { Quantity } from "../../quantity";
import type { Pot } from "../contents/pot";
import { crystallised } from "../contents/react";
import type { Coming } from "./concentrate";
import { type Done, done } from "./operation";

export function cool(before: Pot, to: Quantity<"temperature">, coming: readonly Coming[] = []): Done {
  const crystals = coming.reduce((pot, one) => crystallised(pot, one.matter, one.amount), before);
  return done("cool", before, crystals.at(to));
}

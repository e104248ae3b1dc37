// A strong solution into water.
import type { Quantity } from "../../quantity";
import type { Pot } from "../contents/pot";
import { type Done, done, justWater } from "./operation";

/** Water first, then the strong solution into it. */
export const dilute = (before: Pot, strong: Pot, water: Quantity): Done =>
  done("dilute", before, before.plusWater(water).plusAll(strong), [justWater(before, water), strong]);

// Letting a vessel stand, and looking at a drop of it.
import type { Quantity } from "../../quantity";
import type { Pot } from "../contents/pot";
import { type Done, done } from "./operation";

export const hold = (before: Pot, at?: Quantity<"temperature">): Done =>
  done("hold", before, at === undefined ? before : before.at(at));

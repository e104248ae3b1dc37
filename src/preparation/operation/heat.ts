// Warming and cooling a vessel, keeping it there, and letting it stand: nothing leaves it.
import type { Quantity } from "../../quantity";
import type { Pot } from "../contents/pot";
import { type Done, done } from "./operation";

export const heat = (before: Pot, to: Quantity<"temperature">): Done =>
  done("heat", before, before.with({ temperature: to }));

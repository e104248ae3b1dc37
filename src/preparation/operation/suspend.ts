// A solid that does not dissolve, stirred into water.
import type { Quantity } from "../../quantity";
import type { Pot } from "../contents/pot";
import { type Done, done, justWater } from "./operation";

/** Stirred into water; an unknown amount of it where nobody told how much. */
export function suspend(before: Pot, solid: Pot, water: Quantity | undefined, missing: string): Done {
  const stirred = before.plusAll(solid);
  return water === undefined
    ? done("suspend", before, stirred.with({ waterMissing: [...stirred.books.waterMissing, missing] }), [solid])
    : done("suspend", before, stirred.plusWater(water), [solid, justWater(before, water)]);
}

// A solid that does not dissolve, stirred into water.
import type { Quantity } from "../../quantity";
import type { Pot } from "../contents/pot";
import { type Done, done, justWater } from "./operation";

/** Stirred into water; where nobody stated how much, into what the reaction at least uses, and more that is `missing`. */
export function suspend(before: Pot, solid: Pot, water: Quantity, missing?: string): Done {
  const stirred = before.plusAll(solid).plusWater(water);
  const after =
    missing === undefined ? stirred : stirred.with({ waterMissing: [...stirred.books.waterMissing, missing] });
  return done("suspend", before, after, [solid, justWater(before, water)]);
}

// A solid that does not dissolve, stirred into water.
import type { Quantity } from "../../quantity";
import type { Pot } from "../contents/pot";
import { type Done, done, justWater } from "./operation";

/** Stirred into water; where nobody stated how much, into what the reaction at least uses, and more that is not known. */
export function suspend(before: Pot, solid: Pot, least: Quantity, missing: string): Done {
  const stirred = before.plusAll(solid).plusWater(least);
  const after = stirred.with({ waterMissing: [...stirred.books.waterMissing, missing] });
  return done("suspend", before, after, [solid, justWater(before, least)]);
}

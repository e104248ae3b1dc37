// What the parts of a check of a recipe share.

import type { Quantity } from "../../quantity";
import type { Account } from "../reaction/account";
import type { ReadRecipe } from "./read";
import type { RecipeYield } from "./types";

/** What the findings are made from. */
export interface RecipeFigures {
  readonly read: ReadRecipe;
  readonly account: Account | undefined;
  readonly theoreticalYield: Quantity | undefined;
  readonly yields: readonly RecipeYield[];
}

// The liquor once everything has reacted: how much water there is, and whether what is dissolved stays so.
import type { Quantity } from "../../quantity";
import { type LiquorCheck, remainsInSolution } from "../../solubility";
import type { Feed } from "../procedure/feed";
import { coreOf, type Species } from "../reaction/species";
import type { Material } from "../shelf/material";

/** The liquor after mixing. */
export interface Liquor {
  /** All the water in it: added, of crystallization, of solutions, used up and set free by the reaction. */
  readonly water: Quantity<"mass"> | undefined;
  /** Whether everything stays dissolved; undefined without water or without solutes. */
  readonly check: LiquorCheck | undefined;
  /** Data without which the water cannot be computed, in words. */
  readonly missing: readonly string[];
}

/** Does what stays in the liquor stay dissolved? */
export function liquorOf(
  feeds: readonly Feed[],
  materials: readonly Material[],
  water: Quantity | undefined,
  missing: readonly string[],
  dissolvedIn: readonly { readonly species: Species; readonly amount: Quantity }[],
  temperature: Quantity<"temperature">,
): Liquor {
  if (water === undefined) return { water: undefined, check: undefined, missing };
  // What came as a solution and is partly used up cannot precipitate from the same water.
  const thinner = new Set(
    materials.filter((_, i) => feeds[i]!.how === "solution").map(({ species }) => coreOf(species.formula)),
  );
  const substances = dissolvedIn
    .filter(
      ({ species, amount }) =>
        amount.isPositive() && species.formula.charge === 0 && !thinner.has(coreOf(species.formula)),
    )
    .map(({ species, amount }) => ({ formula: species.formula, amount }));
  const check =
    substances.length === 0 || !water.isPositive()
      ? undefined
      : remainsInSolution({ substances, water: water as Quantity<"mass">, temperature });
  return { water: water as Quantity<"mass">, check, missing };
}

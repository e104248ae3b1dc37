// Where the solid of a salt changes as it gets warmer in its solution, by the curves.
import { type Formula, parseFormula } from "../../formula";
import { attempt } from "../../foundation/error";
import { type SolidTransition, solidTransitions } from "../../solubility";

/** Changes of the solid, coldest first; none where no curve says. */
export function changesOf(formula: Formula): readonly SolidTransition[] {
  const found = attempt(() => solidTransitions(formula));
  return found.ok ? found.value : [];
}

/** The change at which a solid turns into another as it gets warmer; undefined where no curve says. */
export const changeAbove = (solid: Formula): SolidTransition | undefined =>
  changesOf(solid).find(({ below }) => below !== undefined && parseFormula(below).hasSameComposition(solid));

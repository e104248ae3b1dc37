// Where the solid of a salt changes as it gets warmer in its solution, by the curves.
import type { Formula } from "../../formula";
import { attempt } from "../../foundation/error";
import { remembering } from "../../foundation/memo";
import { type SolidTransition, solidTransitions } from "../../solubility";
import { formulaFrom } from "./species";

const remembered = /* @__PURE__ */ remembering<readonly SolidTransition[]>(300);

/** Changes of the solid, coldest first; none where no curve says. */
export const changesOf = (formula: Formula): readonly SolidTransition[] =>
  remembered(formula.toString(), () => {
    const found = attempt(() => solidTransitions(formula));
    return found.ok ? found.value : [];
  });

/** The change at which a solid turns into another as it gets warmer; undefined where no curve says. */
export const changeAbove = (solid: Formula): SolidTransition | undefined =>
  changesOf(solid).find(({ below }) => below !== undefined && formulaFrom(below).hasSameComposition(solid));

// Salts that no bench gets as a solid: hydrogencarbonates and hydrogensulfites that are solutions in trade and on the sheet.
import type { Formula } from "../../formula";
import { remembering } from "../../foundation/memo";
import { constitutionOf } from "../../ion";
import { ONLY_IN_SOLUTION } from "../../solubility/internal";

type Row = (typeof ONLY_IN_SOLUTION)[number];

const remembered = /* @__PURE__ */ remembering<Row | undefined>(200);

/** Why a salt is kept as its solution; undefined where it can be had as a solid, or nobody knows. */
export const onlyInSolution = (formula: Formula): Row | undefined =>
  remembered(formula.toString(), () => {
    const { cations, anions, complex } = constitutionOf(formula);
    if (complex !== undefined || cations.length !== 1 || anions.length !== 1) return undefined;
    return ONLY_IN_SOLUTION.find(
      (row) => row.cations.includes(cations[0]!.formula) && row.anions.includes(anions[0]!.formula),
    );
  });

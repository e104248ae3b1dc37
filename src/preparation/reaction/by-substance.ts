// Tables looked up by substance: constitution decides, so that a row is found however its formula is spelled.
import { type Formula, parseFormula } from "../../formula";
import { byDryRatio } from "../../formula/internal";
import { remembering } from "../../foundation/memo";
import { constitutionOf } from "../../ion";

/**
 * The row of a table for a formula, crystal water aside; of a bare composition the row of any substance it may be.
 *
 * @param table - rows by the formula of one substance each
 */
export function bySubstance<R extends { readonly formula: string }>(
  table: readonly R[],
): (formula: Formula) => R | undefined {
  const alike = byDryRatio(
    () => table,
    (row) => row.formula,
  );
  const found = remembering<R | undefined>(1000);
  const find = (formula: Formula): R | undefined => {
    // what a bare composition may stand for has the same atoms
    if (alike(formula).length === 0) return undefined;
    for (const one of [formula, ...constitutionOf(formula).readings.map((text) => parseFormula(text))]) {
      const { anhydrousIdentity } = constitutionOf(one);
      const row = alike(one).find((kin) => constitutionOf(kin.formula).anhydrousIdentity === anhydrousIdentity);
      if (row !== undefined) return row;
    }
    return undefined;
  };
  return (formula) => found(formula.text, () => find(formula));
}

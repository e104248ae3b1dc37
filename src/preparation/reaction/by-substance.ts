// Tables looked up by substance: constitution decides, so that a row is found however its formula is spelled.
import type { Formula } from "../../formula";
import { constitutionOf } from "../../ion";

/**
 * The row of a table for a formula, crystal water aside; of a bare composition the row of any substance it may be.
 *
 * @param table - rows by the formula of one substance each
 */
export function bySubstance<R extends { readonly formula: string }>(
  table: readonly R[],
): (formula: Formula) => R | undefined {
  let rows: ReadonlyMap<string, R> | undefined;
  return (formula) => {
    rows ??= new Map(table.map((row) => [constitutionOf(row.formula).anhydrousIdentity, row]));
    const { anhydrousIdentity, readings } = constitutionOf(formula);
    const all = [anhydrousIdentity, ...readings.map((text) => constitutionOf(text).anhydrousIdentity)];
    for (const identity of all) {
      const row = rows.get(identity);
      if (row !== undefined) return row;
    }
    return undefined;
  };
}

// Where the solid in contact with a saturated solution changes: the bends of a solubility curve.

import type { Formula } from "../../formula";
import { type LookupOptions, lookingWith } from "../../foundation/facts";
import { guard } from "../argument";
import { solidOf } from "./solid-of";
import { noData } from "./solubility";
import { rowOf, soluteOf } from "./solute";

/** A change of the solid in contact with a saturated solution. */
export interface SolidTransition {
  /** Temperature of the change in °C. */
  readonly celsius: number;
  /** Solid below that temperature; undefined where the table does not say. */
  readonly below: string | undefined;
  /** Solid above that temperature; undefined where the table does not say. */
  readonly above: string | undefined;
}

/**
 * Temperatures at which the solid in contact with the solution changes, coldest first.
 *
 * @param options - `facts`: facts of the caller's own, looked up before the tables
 * @throws {SolubilityError} `solubility.no-data`
 * @category Solubility
 * @example
 * solidTransitions("Na2SO4").map((change) => change.celsius) // => [32.38]
 */
export function solidTransitions(formula: string | Formula, options?: LookupOptions): readonly SolidTransition[] {
  if (options !== undefined) return lookingWith(options, guard, () => solidTransitions(formula));
  const solute = soluteOf(formula);
  const row = rowOf(solute);
  if (row === undefined) throw noData(solute);
  return row.solids.slice(1).map((range, i) => {
    const colder = row.solids[i]!;
    return { celsius: Number(colder.upTo), below: solidOf(row, colder), above: solidOf(row, range) };
  });
}

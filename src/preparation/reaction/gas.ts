// Which species leave as gas.
import type { BalancedEquation } from "../../equation";
import { GASES, type GasRow } from "../data/gases";

export const rowOf = (hill: string): GasRow | undefined => GASES.find((row) => row.formula === hill);

/** Does this species leave as gas? A phase written in the equation decides; else the table. */
export function isGas(formula: BalancedEquation["reactants"][number]["formula"], wet: boolean): boolean {
  if (formula.phase !== undefined) return formula.phase === "g";
  const row = rowOf(formula.compositionText);
  return row !== undefined && !(wet && row.keptByWater === true);
}

// Density and what heat does first, by the registry's formula text: for a program that names nothing.
import { ownRow } from "../../foundation/facts";
import { PHYSICAL, type PhysicalRow } from "../data/physical";

let rows: ReadonlyMap<string, PhysicalRow> | undefined;

/** Physical data by the registry's formula text. */
export function physicalOf(formula: string): PhysicalRow | undefined {
  const own = ownRow<PhysicalRow>("physical", () => formula);
  if (own !== undefined) return own;
  rows ??= new Map(PHYSICAL().map((row) => [row.formula, row] as const));
  return rows.get(formula);
}

// The formula of a solid that a row of the table gives by its waters.
import type { SolidRange, SolubilityRow } from "../data/curves";

/** The solid of one range of a row; undefined where the table does not say which it is. */
export function solidOf({ formula }: SolubilityRow, { waters, solid }: SolidRange): string | undefined {
  if (waters === undefined) return solid;
  return waters === "0" ? formula : `${formula}·${waters === "1" ? "" : waters}H2O`;
}

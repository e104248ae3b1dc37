// Precipitates that come slowly out of a liquor that is not strong.
import type { Formula } from "../../formula";
import { isOneOf } from "../../ion/internal";
import { COMES_SLOWLY, type SlowlyRow } from "../data/products";

/** What is known of a solid that comes slowly; undefined for any other. */
export const slowlyRow = (formula: Formula): SlowlyRow | undefined =>
  COMES_SLOWLY.find((row) => isOneOf(formula, row.formula));

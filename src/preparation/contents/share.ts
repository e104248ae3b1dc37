// Shares of a liquor: of a sludge or a cake nobody knows more than two figures, so twelve are carried, and not the hundred
// that exact fractions of fractions would have.
import { type Quantity, quantity } from "../../quantity";

const FIGURES = 12;

/** A share as a plain figure, between 0 and 1. */
export function shareFrom(value: number, label: string): Quantity {
  const within = Math.min(1, Math.max(0, value));
  return quantity({ value: within.toPrecision(FIGURES), unit: "" }, { symbol: "x", label });
}

// Liquids that mix with water.
import type { Formula } from "../../formula";
import { MISCIBLE } from "../data/miscible";
import { coreOf } from "../reaction/species";

/** A liquid that mixes with water. */
export const isMiscible = (formula: Formula): boolean => {
  const core = coreOf(formula);
  return MISCIBLE.some((row) => row.formula === core);
};

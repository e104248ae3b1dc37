// What counts as an acid, and how much hydrogen a base takes from it.
import type { Formula } from "../formula";
import { ACIDS, type AcidRow } from "./data/acids";
import { coreOf } from "./species";

const acidRow = (formula: Formula): AcidRow | undefined => {
  const core = coreOf(formula);
  return ACIDS.find((row) => row.formula === core);
};

export const isAcid = (formula: Formula): boolean => acidRow(formula) !== undefined;

/** Hydrogen that a base takes from a molecule of an acid; 0 for what is no acid. */
export const protonsOf = (formula: Formula): bigint => acidRow(formula)?.protons ?? 0n;

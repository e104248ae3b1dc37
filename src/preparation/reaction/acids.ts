// What counts as an acid, and how much hydrogen a base takes from it.
import type { Formula } from "../../formula";
import { type AcidHydrogen, constitutionOf } from "../../ion";
import { isOneOf } from "../../ion/internal";

/** The hydrogen of an acid that a base neutralises; acids as weak as boric and hydrocyanic acid are none here. */
function acidOf(formula: Formula): AcidHydrogen | undefined {
  const { acid } = constitutionOf(formula);
  return acid?.veryWeak ? undefined : acid;
}

export const isAmmonia = (formula: Formula): boolean => isOneOf(formula, "NH3");

export const isAcid = (formula: Formula): boolean => acidOf(formula) !== undefined;

/** Hydrogen that a base takes from a molecule of an acid; 0 for what is no acid. */
export const protonsOf = (formula: Formula): bigint => BigInt(acidOf(formula)?.protons ?? 0);

// What counts as an acid, a lye or a metal, and how much hydrogen a base takes from an acid.
import { ALKALI_METALS } from "../../element/internal";
import { isNonmetal } from "../../equation/internal";
import { type Formula, parseFormula } from "../../formula";
import { attempt } from "../../foundation/error";
import { memoised } from "../../foundation/memo";
import { type AcidHydrogen, constitutionOf } from "../../ion";
import { acidOfAnion, isOneOf } from "../../ion/internal";
import { madeOf } from "../../substance/internal";

/** The hydrogen of an acid that a base neutralises; acids as weak as boric and hydrocyanic acid are none here. */
function acidOf(formula: Formula): AcidHydrogen | undefined {
  const { acid } = constitutionOf(formula);
  return acid?.veryWeak ? undefined : acid;
}

export const isAmmonia = (formula: Formula): boolean => isOneOf(formula, "NH3");

export const isAcid = (formula: Formula): boolean => acidOf(formula) !== undefined;

/** Is an anion what a strong acid leaves, so that no acid joins it? */
export const isAnionOfStrongAcid: (anion: string) => boolean = /* @__PURE__ */ memoised(100, (anion) => {
  const acid = attempt(() => parseFormula(acidOfAnion(anion)));
  return acid.ok && acidOf(acid.value)?.strong === true;
});

/** Hydrogen that a base takes from a molecule of an acid; 0 for what is no acid. */
export const protonsOf = (formula: Formula): bigint => BigInt(acidOf(formula)?.protons ?? 0);

/** Lye: it dissolves aluminium, zinc and tin. */
export const isLye = (formula: Formula): boolean =>
  madeOf(formula).groups.has("hydroxide") &&
  formula.symbols.every((s) => s === "H" || s === "O" || ALKALI_METALS.has(s));

export const isMetal = (formula: Formula): boolean => formula.symbols.length === 1 && !isNonmetal(formula.symbols[0]!);

// Solubility rules, for salts the table does not hold: the rules of the ion layer, asked for a formula.

import type { Formula } from "../formula";
import { readable } from "../foundation/readable";
import { constitutionOf } from "../ion";
import { ruleFor as ruleForIons, type SolubilityClass } from "../ion/internal";
import { type Solute, soluteOf } from "./curves/solute";
import { NOT_IN_WATER } from "./data/never-in-water";

export type { SolubilityClass } from "../ion/internal";

/** What a rule says of a salt. */
export interface SolubilityRule {
  /** What the rule says in a word. */
  readonly class: SolubilityClass;
  /** The rule in words. */
  readonly rule: string;
  /** Rules of thumb of the trade, without a table. */
  readonly source: "commonPractice";
}

/** @internal The rule for a solute already read; none where several cations make it a complex. */
export function ruleFor(solute: Solute): SolubilityRule | undefined {
  const { kind, cations, anions, ligands, molecules } = constitutionOf(solute.anhydrous);
  // the rules are about simple cations
  if (kind !== "salt" || ligands.length > 0 || molecules.length > 0) return undefined;
  const verdict = ruleForIons(
    cations.map(({ formula }) => formula),
    anions.map(({ formula }) => formula),
  );
  // beside an alkali salt of its anion a halide or cyanide that water leaves alone is a complex: K2HgI4 dissolves
  const isComplex =
    cations.length > 1 && verdict?.class === "insoluble" && anions.every(({ formula }) => LIGANDS.includes(formula));
  return verdict === undefined || isComplex ? undefined : { ...verdict, source: "commonPractice" };
}

/** Anions that hold a metal in a complex when there is more of them. */
const LIGANDS: readonly string[] = ["Cl-", "Br-", "I-", "CN-", "SCN-"];

/** Is it a salt that water turns into something else, so that it has no solubility? */
function isNeverInWater({ anhydrous }: Solute): boolean {
  const { cations, anions } = constitutionOf(anhydrous);
  const brings = (ions: readonly { readonly formula: string }[], named: readonly string[]): boolean =>
    ions.some(({ formula }) => named.includes(formula));
  if (brings(anions, ["OH-", "O^2-"])) return false;
  return NOT_IN_WATER().some((row) => brings(cations, row.cations) && brings(anions, row.anions));
}

/** @internal The rule for a solute that water lets be. */
export const ruleInWater = (solute: Solute): SolubilityRule | undefined =>
  isNeverInWater(solute) ? undefined : ruleFor(solute);

/**
 * What the solubility rules say of a salt near room temperature; use `solubilityOf` first, this only where it has no figure.
 *
 * @param formula - a salt, crystal water allowed
 * @returns class and the rule in words, or undefined when no rule speaks of it, and where water does not let the salt be:
 *   aluminium carbonate turns into the hydroxide, copper(II) iodide into copper(I) iodide and iodine
 * @throws {SolubilityError} `solubility.not-a-salt`
 * @source common practice, no source
 * @category Solubility
 * @example
 * solubilityRule("BaSO4")?.class // => "insoluble"
 * solubilityRule("Fe(CH3COO)2")?.class // => "soluble"
 * solubilityRule("Al2(CO3)3") // => undefined
 */
export function solubilityRule(formula: string | Formula): SolubilityRule | undefined {
  const rule = ruleInWater(soluteOf(formula));
  return rule === undefined ? undefined : readable({ ...rule });
}

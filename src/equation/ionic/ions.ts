// What a formula is in water: the ions of a salt, a strong acid or a strong base, or the formula as it stands. The ion layer
// tells the ions and holds the solubility rules; a phase written by the user outweighs them.

import { ALKALI_METALS } from "../../element/internal";
import { type Formula, parseFormula } from "../../formula";
import { withoutPhase } from "../../formula/internal";
import { constitutionOf } from "../../ion";
import { ALKALI, isComplexIon, REACTS_WITH_WATER, ruleFor } from "../../ion/internal";
import { addTo, type Side } from "../redox/half-solve";

/** An ion, or a molecule of crystal water, and how many a formula unit gives. */
interface Released {
  readonly text: string;
  readonly charge: number;
  readonly count: bigint;
}

/** Ions of a neutral salt or strong acid with its water of crystallization; undefined if it is neither. */
function ionsOf(formula: Formula): Released[] | undefined {
  const { kind, inWater, acid, molecules, waters } = constitutionOf(formula);
  if (formula.charge !== 0 || molecules.length > 0) return undefined;
  if (kind !== "salt" && acid?.strong !== true) return undefined;
  const all = [...inWater, ...(waters > 0 ? [{ formula: "H2O", charge: 0, count: waters }] : [])];
  if (!all.every(({ count }) => Number.isInteger(count))) return undefined;
  return all.map(({ formula: text, charge, count }) => ({ text, charge, count: BigInt(count) }));
}

/** Does the salt of these ions dissolve? Undefined where the rules have no row. Strong bases and alkali salts that dissolve slightly count as dissolved. */
function isSolubleSalt(ions: readonly Released[]): boolean | undefined {
  const cations = ions.filter(({ charge }) => charge > 0).map(({ text }) => text);
  const anions = ions.filter(({ charge }) => charge < 0).map(({ text }) => text);
  const verdict = ruleFor(cations, anions);
  if (verdict?.class === "slightly soluble")
    return anions.every((anion) => anion === "OH-") || cations.every((cation) => ALKALI.includes(cation));
  return verdict === undefined ? undefined : verdict.class === "soluble";
}

/** What a species is in water: its ions, or undefined if it stays as it is; and what had to be assumed. */
export function dissociated(formula: Formula): { ions: Released[] | undefined; assumption?: string } {
  const { phase } = formula;
  if (phase !== undefined && phase !== "aq") return { ions: undefined };
  const ions = ionsOf(formula);
  if (ions === undefined) {
    const { symbols } = formula;
    const alkali = formula.charge === 0 && symbols.length > 1 && symbols.some((symbol) => ALKALI_METALS.has(symbol));
    if (!alkali) return { ions };
    return { ions, assumption: `the ions of ${formula} are not known; it is kept whole` };
  }
  if (phase === "aq") return { ions };
  if (ions.some(({ text }) => REACTS_WITH_WATER.includes(text))) return { ions: undefined };
  if (ions.some(({ text }) => text === "H+")) return { ions };
  // the rules are about simple cations: a complex cation is dissolved with nearly any anion
  if (ions.some(({ text, charge }) => isComplexIon(text) && charge > 0)) return { ions };
  const soluble = isSolubleSalt(ions);
  if (soluble !== undefined) return { ions: soluble ? ions : undefined };
  return { ions: undefined, assumption: `no rule says whether ${formula} dissolves; taken as not dissolved` };
}

/**
 * The species of one side in water, without phase, with their amounts; strong electrolytes as their ions if `dissolve`.
 * What had to be assumed about dissolving is added to `assumptions`.
 */
export function inWater(
  formulas: readonly Formula[],
  amounts: readonly bigint[] | undefined,
  dissolve: boolean,
  assumptions?: string[],
): Side {
  const side: Side = new Map();
  formulas.forEach((formula, at) => {
    const amount = amounts?.[at] ?? 1n;
    const { ions, assumption } = dissolve ? dissociated(formula) : { ions: undefined, assumption: undefined };
    if (assumption !== undefined) assumptions?.push(assumption);
    if (ions === undefined) addTo(side, withoutPhase(formula), amount);
    for (const { text, count } of ions ?? []) addTo(side, parseFormula(text), amount * count);
  });
  return side;
}

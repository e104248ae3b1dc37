// Species of an equation and what is asked of their formulas again and again: the printed name, crystal water, the core
// without it.

import type { BalancedEquation } from "../../equation";
import { isNonmetal } from "../../equation/internal";
import { Formula, molarMass, parseFormula } from "../../formula";
import { isWater, withoutPhase } from "../../formula/internal";
import type { Fraction } from "../../foundation/fraction";
import { frozenUnread } from "../../foundation/frozen";
import { withLazy } from "../../foundation/lazy";
import { remembering } from "../../foundation/memo";
import { crystalWater } from "../../hydrate";
import { type Quantity, quantity } from "../../quantity";
import { canonicalFormula } from "../../substance";

/** A metal in a formula, with its atoms. */
interface MetalIn {
  readonly symbol: string;
  readonly count: Fraction;
}

/** A species of the equation with its whole-number coefficient; what depends on the formula alone is worked out once. */
export interface Species {
  readonly formula: Formula;
  readonly name: string;
  readonly coefficient: bigint;
  readonly isWater: boolean;
  readonly molarMass: Quantity<"molar mass">;
  readonly metals: readonly MetalIn[];
  /** Water of crystallization written in the equation, per formula unit. */
  readonly waters: Quantity;
}

/** The formula as it is printed and used in symbols; the phase belongs to the equation, not to the name. */
export const nameOfFormula = (formula: Formula): string => withoutPhase(formula).toUnicode();

const rememberedKeys = /* @__PURE__ */ remembering<string>(1000);

/** The one spelling of a formula, however it is printed. */
export const keyOfFormula = (printed: string): string => rememberedKeys(printed, () => canonicalFormula(printed));

/** The key of what one field of a row prints; one getter for all rows of the field, so that they have one shape. */
const KEYS = {
  formula: {
    enumerable: true,
    get(this: { readonly formula: string }): string {
      return keyOfFormula(this.formula);
    },
  },
  form: {
    enumerable: true,
    get(this: { readonly form: string }): string {
      return keyOfFormula(this.form);
    },
  },
};

/** A frozen row with the `key` of the substance that a field of it prints, worked out when it is read. */
export const keyed = <F extends keyof typeof KEYS, Row extends Readonly<Record<F, string>>>(
  field: F,
  row: Row,
): Row & { readonly key: string } =>
  frozenUnread(Object.defineProperty(row, "key", KEYS[field]) as Row & { readonly key: string });

export function speciesOf(side: BalancedEquation["reactants"]): Species[] {
  return side.map(({ formula, coefficient }) =>
    withLazy(
      { formula, coefficient },
      {
        name: () => nameOfFormula(formula),
        isWater: () => isWater(formula),
        molarMass: () => molarMass(formula),
        metals: () =>
          formula.symbols.flatMap((symbol) => (isNonmetal(symbol) ? [] : [{ symbol, count: formula.count(symbol) }])),
        waters: () => watersOf(formula),
      },
    ),
  );
}

/** What takes no part in an equation. */
export const speciesAside = (formula: Formula): Species =>
  asides(formula.toString(), () => speciesOf([{ formula, coefficient: 0n }])[0]!);

const asides = /* @__PURE__ */ remembering<Species>(300);

/** A formula of a request, read once: its texts and its water are then known to every plan that names it again. */
const readOnce = /* @__PURE__ */ remembering<Formula>(500);
export const formulaFrom = (like: string | Formula): Formula =>
  like instanceof Formula
    ? like
    : typeof like === "string"
      ? readOnce(like, () => parseFormula(like))
      : parseFormula(like);

const rememberedWaters = /* @__PURE__ */ remembering<Quantity>(500);

export function watersOf(formula: Formula): Quantity {
  return rememberedWaters(formula.toString(), () => {
    const waters = isWater(formula) ? "0" : crystalWater(formula).waters.toFraction();
    return quantity({ value: waters, unit: "" });
  });
}

const rememberedCores = /* @__PURE__ */ remembering<string>(500);

/** Atoms and charge without crystal water; water is its own core. */
export const coreOf = (formula: Formula): string =>
  isWater(formula)
    ? formula.compositionText
    : rememberedCores(formula.toString(), () => crystalWater(formula).anhydrous.compositionText);

/** Are the two the same substance, or the same salt with another share of crystal water? */
export function sameCore(a: Formula, b: Formula): boolean {
  if (isWater(a) || isWater(b)) return isWater(a) && isWater(b);
  return coreOf(a) === coreOf(b);
}

// A formula split at its adduct dots into water and what is not water. The one place that says what is water.

import { Fraction } from "../foundation/fraction";
import { type Formula, type FormulaPart, parseFormula } from "./formula";

const WATER = "H2O";

/** @internal */
interface Split {
  /** The parts that are not water, in their smallest whole formula; undefined if there are none. */
  readonly dry: Formula | undefined;
  /** How many of `dry` the formula holds. */
  readonly units: Fraction;
  /** Waters in the whole formula. */
  readonly waters: Fraction;
}

/** @internal The number in front of a part, as the reader takes it: nothing for one, otherwise `5` or `1/2`. */
export const numberText = (x: Fraction): string => (x.equals(1) ? "" : x.d === 1n ? String(x.n) : `${x.n}/${x.d}`);

/** @internal The parts as one formula, each number changed by `change`. */
export function joined(parts: readonly FormulaPart[], change: (x: Fraction) => Fraction): Formula {
  return parseFormula(parts.map((part) => `${numberText(change(part.multiplier))}${part.formula}`).join("."));
}

let water: Formula | undefined;

/** @internal Is this the molecule H2O, in ordinary hydrogen? */
export function isWater(formula: Formula): boolean {
  water ??= parseFormula(WATER);
  return formula.hasSameComposition(water);
}

/** Splits already made, for as long as the formula lives: reading the parts of a formula costs far more than its mass. */
const known = /* @__PURE__ */ new WeakMap<Formula, Split>();

/** Without an adduct dot, a number in front or a phase, a formula is its own only part. */
const PLAIN = /^[A-Z([{][^.·•⋅*]*$/;

/** @internal */
export function splitWater(formula: Formula): Split {
  let split = known.get(formula);
  if (split === undefined) {
    split =
      formula.phase === undefined && PLAIN.test(formula.text) && !isWater(formula)
        ? { dry: formula, units: new Fraction(1), waters: new Fraction(0) }
        : splitParts(formula);
    known.set(formula, split);
  }
  return split;
}

function splitParts(formula: Formula): Split {
  const parts = formula.parts;
  const dry = parts.filter((part) => !isWater(part.formula));
  const waters = parts
    .filter((part) => isWater(part.formula))
    .reduce((total, part) => total.add(part.multiplier), new Fraction(0));
  if (dry.length === 0) return { dry: undefined, units: new Fraction(0), waters };
  // The greatest common divisor of the multipliers, so that 3CdSO4 is three of CdSO4 and ZnCO3·2Zn(OH)2 is one of itself.
  const units = dry.map((part) => part.multiplier).reduce((a, b) => a.gcd(b));
  return { dry: joined(dry, (x) => x.div(units)), units, waters };
}

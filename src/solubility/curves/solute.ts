// From a formula as somebody writes it to the solute the table knows: crystal water taken off, the rest compared by what it is
// made of, so that CH3COONa, NaCH3COO and NaC2H3O2 are one salt, CdSO4 is found from 3CdSO4·8H2O, and isomers stay apart.

import { Formula, molarMass, parseFormula } from "../../formula";
import { byDryRatio, splitWater } from "../../formula/internal";
import { ownRow } from "../../foundation/facts";
import type { Fraction } from "../../foundation/fraction";
import { memoised } from "../../foundation/memo";
import { list } from "../../foundation/wording";
import { constitutionOf } from "../../ion";
import type { Quantity } from "../../quantity";
import { SOLUBILITY, type SolubilityRow } from "../data/curves";
import { SolubilityError } from "../error";

/** A solute as given, apart from its crystal water. */
export interface Solute {
  /** As given, crystal water included. */
  readonly formula: Formula;
  /** Without crystal water. */
  readonly anhydrous: Formula;
  /** Anhydrous units in one formula unit: 3 for 3CdSO4·8H2O. */
  readonly units: Fraction;
  readonly isHydrate: boolean;
  /** Same substance, same key, crystal water left aside. */
  readonly key: string;
}

const soluteByText = /* @__PURE__ */ memoised(2000, readSolute);

function readSolute(text: string): Solute {
  const formula = parseFormula(text);
  if (formula.charge !== 0) {
    throw new SolubilityError("solubility.not-a-salt", "an ion alone has no solubility", {
      input: text,
      position: 0,
      hint: "name the whole salt, or use the solubility product",
    });
  }
  const { dry: anhydrous, units, waters } = splitWater(formula);
  if (anhydrous === undefined) {
    throw new SolubilityError("solubility.not-a-salt", "water is the solvent here, not a solute", {
      input: text,
      position: 0,
    });
  }
  const { readings, anhydrousIdentity } = constitutionOf(anhydrous);
  if (readings.length > 1) {
    throw new SolubilityError("solubility.ambiguous-formula", `${anhydrous} may be ${list(readings, "or")}`, {
      input: text,
      position: 0,
      hint: `write which is meant: ${list(readings, "or")}`,
      details: { readings },
    });
  }
  return { formula, anhydrous, units, isHydrate: !waters.equals(0), key: anhydrousIdentity };
}

/** Read a formula as a solute; remembered, because a plan asks for the same few again and again. */
export function soluteOf(given: string | Formula): Solute {
  const text = given instanceof Formula ? given.toString() : given;
  return soluteByText(text);
}

const rowsLike = /* @__PURE__ */ byDryRatio(SOLUBILITY, ({ formula }) => formula);

/** The row for a solute, if there is one: the caller's own, or that of the table. */
export function rowOf(solute: Solute): SolubilityRow | undefined {
  const own = ownRow<SolubilityRow>("solubilities", () => solute.key);
  return own ?? rowsLike(solute.anhydrous).find(({ formula }) => soluteOf(formula).key === solute.key);
}

/** Molar mass of the anhydrous units in one formula unit. */
export function anhydrousMolarMass(solute: Solute): Quantity {
  const one = molarMass(solute.anhydrous);
  return solute.units.equals(1) ? one : one.times(`${solute.units.n}/${solute.units.d}`);
}

/** Anhydrous mass in a mass as weighed. */
export function anhydrousMass(solute: Solute, mass: Quantity): Quantity {
  if (!solute.isHydrate) return mass;
  return mass
    .times(anhydrousMolarMass(solute))
    .dividedBy(molarMass(solute.formula))
    .named({
      symbol: `m(${solute.anhydrous})`,
      label: `anhydrous ${solute.anhydrous} in ${solute.formula}`,
      rule: "anhydrous mass = mass as weighed × anhydrous molar mass / molar mass of the hydrate",
    });
}

/** A mass of anhydrous salt as a mass of the form named; the water it binds is not asked about. */
export function massAsNamed(
  solute: Solute,
  dry: Quantity,
  words: { readonly symbol: string; readonly label: string },
): Quantity {
  if (!solute.isHydrate) return dry.named(words);
  return dry
    .times(molarMass(solute.formula))
    .dividedBy(anhydrousMolarMass(solute))
    .named({ ...words, rule: "anhydrous mass × molar mass of the hydrate / anhydrous molar mass" });
}

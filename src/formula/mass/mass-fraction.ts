// Mass fractions: of one element or group in a formula, and of all its elements.

import { elementIndexOf, symbolAt } from "../../element/internal";
import { bringsFacts, withItsFacts } from "../../foundation/facts";
import type { Fraction } from "../../foundation/fraction";
import { withPlainJSON } from "../../foundation/plain-json";
import { printsItself } from "../../foundation/readable";
import type { Quantity } from "../../quantity";
import { combinationOf, multiply, type Rational, rational, toRational } from "../../quantity/internal";
import { guard, notText } from "../argument";
import { FormulaError } from "../error";
import { asFormula, type Formula, parseFormula } from "../formula";
import { countGroup } from "../group";
import { hillOrder } from "../print/order";
import { massTerms, molarMass } from "./molar-mass";
import type { MolarMassOptions } from "./options";

/** Share of one element in a formula. */
export interface ElementShare {
  /** Of the element. */
  readonly symbol: string;
  /** Atoms per formula unit. */
  readonly count: Fraction;
  /** Mass fraction in per cent, with standard uncertainty. */
  readonly massFraction: Quantity<"number">;
}

/** Count times molar mass, as one step of the working. */
function portion(coefficient: Rational, mass: Quantity, what: string): Quantity {
  const source = {
    sum: () => multiply(coefficient, toRational(mass.in("g/mol"))),
    named: () => ({
      symbol: `m(${what})`,
      label: `mass of ${what} in one mole`,
      rule: "mass of the part = count × its molar mass",
    }),
    terms: () => [{ coefficient, quantity: mass }],
  };
  return combinationOf(source, "g/mol");
}

function share(part: Quantity, whole: Quantity, what: string, f: Formula): Quantity {
  return part.dividedBy(whole).named({
    symbol: `w(${what})`,
    label: `mass fraction of ${what} in ${f.toUnicode()}`,
    rule: "mass fraction = mass of the part / mass of the whole",
  });
}

/**
 * Mass fraction of an element or group in a formula: how much of the mass is copper, or water.
 *
 * A group is counted as it is written: `H2O` in `CuSO4·5H2O` is five, `SO4` in `Al2(SO4)3` is three.
 *
 * @param what - element symbol, labelled nuclide (`"D"`), or group formula
 * @param formula - formula text or `Formula`
 * @returns mass fraction as a number between 0 and 1, with standard uncertainty; 0 for an element that is not there
 * @throws {FormulaError} `formula.group-not-found`, `formula.bad-option`, and all codes of {@link parseFormula}
 * @throws {ElementError} `element.no-atomic-weight`, `element.unknown-nuclide`, `element.not-a-weight`
 * @source definition: IUPAC Green Book, mass fraction
 * @category Formulas
 * @example
 * massFractionOf("Cu", "CuSO4·5H2O").format({ decimals: 4 }) // => "0.2545"
 * massFractionOf("H2O", "CuSO4·5H2O").format({ decimals: 4 }) // => "0.3608"
 */
export function massFractionOf(
  what: string,
  formula: string | Formula,
  options?: MolarMassOptions,
): Quantity<"number"> {
  if (bringsFacts(options)) return withItsFacts(options!, guard, (others) => massFractionOf(what, formula, others));
  const f = asFormula(formula, "formula");
  const whole = molarMass(f, options);
  if (typeof what !== "string") throw notText(what, "what");
  const name = what.trim();
  if (elementIndexOf(name) >= 0 || name === "D" || name === "T") {
    const term = massTerms(f, options ?? {}).find((candidate) => candidate.symbol === name);
    if (term === undefined) return share(portion(rational(0n), molarMass(name, options), name), whole, name, f);
    return share(portion(term.coefficient, term.quantity, name), whole, name, f);
  }
  const group = parseFormula(name);
  const count = countGroup(f.reading().nodes, group.reading().nodes);
  if (count === undefined || count.n === 0) {
    throw new FormulaError("formula.group-not-found", `${group} does not occur in ${f}`, {
      hint: "a group is found as it is written in the formula; for an element give its symbol",
      details: { group: group.toString(), formula: f.toString() },
    });
  }
  const coefficient = rational(BigInt(count.n), BigInt(count.d));
  return share(portion(coefficient, molarMass(group, options), group.toUnicode()), whole, group.toUnicode(), f);
}

/**
 * Percent composition: the mass fraction of every element, in Hill order.
 *
 * @param formula - formula text or `Formula`
 * @returns symbol, count and mass fraction in per cent; the fractions sum to 100 %
 * @throws {FormulaError} all codes of {@link parseFormula}, `formula.bad-option`
 * @throws {ElementError} `element.no-atomic-weight`, `element.unknown-nuclide`, `element.not-a-weight`
 * @category Formulas
 * @example
 * percentComposition("C9H8O4").map((e) => `${e.symbol} ${e.massFraction.format({ decimals: 2 })}`) // => ["C 60.00 %", "H 4.48 %", "O 35.52 %"]
 */
export function percentComposition(formula: string | Formula, options?: MolarMassOptions): ElementShare[] {
  if (bringsFacts(options)) return withItsFacts(options!, guard, (others) => percentComposition(formula, others));
  const f = asFormula(formula, "formula");
  const whole = molarMass(f, options);
  const terms = massTerms(f, options ?? {});
  const composition = f.composition;
  return hillOrder(f.elementIndices).map((position, i) => {
    const term = terms[position]!;
    const symbol = symbolAt(f.elementIndexAt(position));
    const part = {
      symbol,
      count: composition[i]!.count,
      massFraction: share(portion(term.coefficient, term.quantity, symbol), whole, symbol, f).to("%"),
    };
    return withPlainJSON(printsItself(part, ({ massFraction }) => `${symbol} ${massFraction.format()}`));
  });
}

// Molar mass: the value is summed exactly in integers; its graph (one shared constant per element, so that correlations
// are right) is only made when somebody asks for the working or the uncertainty.

import { atomicWeight, ElementError, type ElementErrorCode } from "../../element";
import { ELEMENT_COUNT, elementOf, mostAbundant, nuclideMass, symbolAt, weightConstant } from "../../element/internal";
import type { Fields } from "../../foundation/argument";
import { attempt, type ErrorWithCode, type Result } from "../../foundation/error";
import { lookingIn, ownRow, ownRows, under } from "../../foundation/facts";
import { type Naming, type Quantity, type QuantityErrorCode, quantity } from "../../quantity";
import {
  add,
  Combination,
  combinationOf,
  multiply,
  type Rational,
  rational,
  readUnit,
  toRational,
  viewOf,
} from "../../quantity/internal";
import { guard } from "../argument";
import { cite } from "../data/sources";
import type { FormulaErrorCode, FormulaErrorDetails } from "../error";
import { asFormula, Formula, parseFormula } from "../formula";
import type { MolarMassOptions } from "./options";
import { needMassOptions } from "./options";

const MONOISOTOPIC = { electronMass: true } as const satisfies Fields<
  NonNullable<Parameters<typeof monoisotopicMass>[1]>
>;

/** One term of a molar mass: an exact count and the mass of one mole of the atoms. */
interface MassTerm {
  readonly symbol: string;
  readonly coefficient: Rational;
  readonly quantity: Quantity;
}

let electron: Quantity | undefined;

/** @internal Molar mass of the electron, one shared constant. */
function electronMass(): Quantity {
  electron ??= quantity(
    // Relative atomic mass 5.485 799 090 441(97) x 10^-4
    { value: "0.0005485799090441", unit: "g/mol", standardUncertainty: "0.0000000000000097" },
    { symbol: "M(e)", label: "molar mass of the electron", source: cite("codata2022") },
  );
  return electron;
}

function massOfAtoms(index: number, options: MolarMassOptions): Quantity {
  if (index >= ELEMENT_COUNT) return nuclideMass(Math.floor(index / 1000), index % 1000);
  const own = options.weights?.[symbolAt(index)];
  if (own !== undefined) return atomicWeight(symbolAt(index), { value: own });
  const fact = ownRow<Quantity>("weights", () => symbolAt(index));
  if (fact !== undefined) return fact;
  return weightConstant(index, options.convention ?? "conventional", options.massNumberIfNone === true);
}

/** @internal The terms of a molar mass, electrons last. */
export function massTerms(formula: Formula, options: MolarMassOptions): MassTerm[] {
  const terms: MassTerm[] = [];
  const denominator = BigInt(formula.denominator);
  for (let i = 0; i < formula.size; i += 1) {
    const index = formula.elementIndexAt(i);
    terms.push({
      symbol: symbolAt(index),
      coefficient: rational(BigInt(formula.numeratorAt(i)), denominator),
      quantity: massOfAtoms(index, options),
    });
  }
  // A lone electron has no other mass than its own.
  if (formula.charge !== 0 && (options.electronMass === true || formula.size === 0)) {
    terms.push({ symbol: "e", coefficient: rational(BigInt(-formula.charge)), quantity: electronMass() });
  }
  return terms;
}

const NANO = 1_000_000_000n;

/** The mass of one mole on the default weights; value, name and terms are made only when somebody looks. */
class StandardMass extends Combination {
  declare private readonly formula: Formula;

  constructor(formula: Formula) {
    super(readUnit("g/mol"));
    this.formula = formula;
  }
  sum(): Rational {
    return rational(this.formula.exactNano!, NANO * BigInt(this.formula.denominator));
  }
  named(): Naming {
    return massNaming(this.formula, "molar mass", "M");
  }
  terms(): MassTerm[] {
    return under(undefined, () => massTerms(this.formula, NO_OPTIONS));
  }
}

function massNaming(formula: Formula, kind: string, symbol: string): Naming {
  const name = formula.toUnicode();
  return { symbol: `${symbol}(${name})`, label: `${kind} of ${name}`, rule: `${kind} = sum of count × atomic mass` };
}

/** The sum of terms in g/mol as one quantity. */
function total(formula: Formula, terms: readonly MassTerm[], kind: string, symbol: string): Quantity {
  const source = {
    sum: () => sumOf(terms),
    named: () => massNaming(formula, kind, symbol),
    terms: () => terms,
  };
  return combinationOf(source, "g/mol");
}

function sumOf(terms: readonly MassTerm[]): Rational {
  return terms.reduce<Rational>(
    (sum, term) => add(sum, multiply(term.coefficient, toRational(term.quantity.in("g/mol")))),
    { n: 0n, d: 1n },
  );
}

const NO_OPTIONS: MolarMassOptions = {};

/**
 * Molar mass of a formula: what one mole of it weighs.
 *
 * The value is the exact sum of the atomic weights; the standard uncertainty follows from theirs, each element counted
 * once however often it occurs. Labelled nuclides count with their AME2020 mass.
 *
 * @param formula - formula text or `Formula`
 * @param options - convention of the atomic weights, the caller's own weights, electron mass of ions
 * @returns molar mass in g/mol
 * @throws {FormulaError} all codes of {@link parseFormula}, `formula.bad-option`
 * @throws {ElementError} `element.no-atomic-weight`, `element.unknown-nuclide`, `element.not-a-weight`
 * @source CIAAW standard atomic weights 2021 with the 2024 revision; AME2020; electron: CODATA 2022
 * @category Formulas
 * @example
 * molarMass("CuSO4·5H2O").value // => 249.677
 * molarMass("D2O").format({ decimals: 4 }) // => "20.0272 g/mol"
 */
export function molarMass(formula: string | Formula, options: MolarMassOptions = NO_OPTIONS): Quantity<"molar mass"> {
  const f = typeof formula === "string" ? parseFormula(formula) : formula;
  if (
    options === NO_OPTIONS &&
    f instanceof Formula &&
    f.size > 0 &&
    f.hasStandardMass &&
    ownRows("weights").length === 0
  ) {
    return viewOf(new StandardMass(f));
  }
  const checked = asFormula(f, "formula");
  needMassOptions(options);
  if (options.facts !== undefined) {
    const { facts, ...others } = options;
    return lookingIn(facts, guard, () => molarMass(checked, others));
  }
  return total(checked, massTerms(checked, options), "molar mass", "M");
}

/**
 * {@link molarMass}, with the outcome as data.
 *
 * @category Formulas
 * @example
 * tryMolarMass("Tc2O7").ok // => false
 */
export function tryMolarMass(
  formula: string | Formula,
  options?: MolarMassOptions,
): Result<
  Quantity<"molar mass">,
  ErrorWithCode<FormulaErrorCode | ElementErrorCode | QuantityErrorCode, FormulaErrorDetails>
> {
  return attempt(() => molarMass(formula, options));
}

/**
 * Monoisotopic mass: the molar mass of molecules made of the most abundant nuclide of each element, and of the labelled
 * nuclides as written.
 *
 * @param formula - formula text or `Formula`
 * @param options - `electronMass: true` counts the electrons that an ion lacks or has in excess
 * @returns molar mass in g/mol (numerically the mass of one molecule in Da)
 * @throws {FormulaError} all codes of {@link parseFormula}, `formula.bad-option`
 * @throws {ElementError} `element.no-natural-nuclide`, `element.unknown-nuclide`
 * @source AME2020 masses; most abundant nuclides by TICE 2013
 * @category Formulas
 * @example
 * monoisotopicMass("C6H12O6").format({ decimals: 5 }) // => "180.06339 g/mol"
 */
export function monoisotopicMass(
  formula: string | Formula,
  options: { readonly electronMass?: boolean | undefined } = {},
): Quantity<"molar mass"> {
  const f = asFormula(formula, "formula");
  needMonoisotopicOptions(options);
  const terms: MassTerm[] = [];
  for (let i = 0; i < f.size; i += 1) {
    const index = f.elementIndexAt(i);
    const labelled = index >= ELEMENT_COUNT;
    const massNumber = labelled ? index % 1000 : mostAbundant(index);
    if (massNumber === undefined) {
      throw new ElementError("element.no-natural-nuclide", `${symbolAt(index)} has no nuclide that occurs in nature`, {
        hint: "label the nuclide you mean, as in [98Tc]",
        details: { symbol: symbolAt(index) },
      });
    }
    terms.push({
      symbol: symbolAt(index),
      coefficient: rational(BigInt(f.numeratorAt(i)), BigInt(f.denominator)),
      quantity: nuclideMass(elementOf(index) + 1, massNumber),
    });
  }
  if (f.charge !== 0 && (options.electronMass === true || f.size === 0)) {
    terms.push({ symbol: "e", coefficient: rational(BigInt(-f.charge)), quantity: electronMass() });
  }
  return total(f, terms, "monoisotopic mass", "M_mono");
}

function needMonoisotopicOptions(options: { readonly electronMass?: boolean | undefined }): void {
  guard.fields(options, MONOISOTOPIC);
  if (options.electronMass !== undefined) guard.boolean(options.electronMass, "electronMass");
}

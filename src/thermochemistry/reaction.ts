// Heat of a reaction from enthalpies of formation, and the heat of dissolving and diluting. At 25 °C, 1 bar, dissolved
// species at infinite dilution: a planning figure for the bench, good to some kilojoules for a real, strong solution.

import { BalancedEquation, balance } from "../equation";
import { asWritten } from "../equation/internal";
import { Formula, parseFormula } from "../formula";
import { isWater, withoutPhase } from "../formula/internal";
import type { Fields } from "../foundation/argument";
import { bringsFacts, type LookupOptions, lookingWith, withItsFacts } from "../foundation/facts";
import type { Fraction } from "../foundation/fraction";
import { withPlainJSON } from "../foundation/plain-json";
import { readable } from "../foundation/readable";
import { applyFunction, isQuantity, type NumberLike, type Quantity, quantity, sum } from "../quantity";
import { expectDimension } from "../quantity/internal";
import { guard, needTextOption } from "./argument";
import type { SubstanceState } from "./data/enthalpies";
import { cite } from "./data/sources";
import { ThermochemistryError } from "./error";
import { type FormationEnthalpy, findFormation, formationEnthalpy, noData, stateOf } from "./formation";

const ENTHALPY = { states: true, forms: true, facts: true } as const satisfies Fields<EnthalpyOptions>;

/** One species of a reaction with its enthalpy. */
export interface EnthalpyTerm extends FormationEnthalpy {
  /** Signed: negative for a reactant. */
  readonly stoichiometricNumber: Fraction;
}

/** Heat of a reaction. */
export interface ReactionEnthalpy {
  /** Per mole of reaction, which is a mole of `equation`; negative when heat is given off. */
  readonly enthalpy: Quantity<"molar energy">;
  /** With the coefficients as they were written; balanced where there were none. */
  readonly equation: string;
  /** Is the enthalpy below zero? */
  readonly givesOffHeat: boolean;
  /** What each species contributes. */
  readonly terms: readonly EnthalpyTerm[];
  /** What to know before relying on it. */
  readonly warnings: readonly string[];
}

/** How to read the species of a reaction. */
export interface EnthalpyOptions extends LookupOptions {
  /** State of a species by its formula, where the equation names none. */
  readonly states?: Readonly<Record<string, SubstanceState>>;
  /** Polymorph by formula, as part of its name. */
  readonly forms?: Readonly<Record<string, string>>;
}

/** Formula without its phase, as the keys of the options are written. */
const bare = (formula: Formula): string => withoutPhase(formula).toString();

/** A value from a table kept per formula by the caller, however the formula is written. */
function lookUp<T>(table: Readonly<Record<string, T>> | undefined, formula: Formula): T | undefined {
  if (table === undefined) return undefined;
  const name = bare(formula);
  const direct = table[name];
  if (direct !== undefined) return direct;
  const key = Object.keys(table).find((candidate) => bare(parseFormula(candidate)) === name);
  return key === undefined ? undefined : table[key];
}

/**
 * Heat of a reaction per mole of reaction, from enthalpies of formation.
 *
 * @param equation - equation (balanced for you; coefficients that are written stay, `"H2 + 1/2 O2 -> H2O"`); phases are read, `"CuSO4(aq)"`; a species without one is taken as the
 *   solid, liquid or gas it is at 25 °C, or as `states` says
 * @param options - states and polymorphs by formula
 * @returns kJ/mol of reaction with standard uncertainty, negative when heat is given off, and each term with its source
 * @throws {ThermochemistryError} `thermochemistry.no-data` listing every species without a figure,
 *   `thermochemistry.not-an-equation`, `thermochemistry.bad-option`
 * @throws {EquationError} when the equation cannot be read or balanced
 * @source Hess's law over the tables named by each term
 * @category Heat
 * @example
 * reactionEnthalpy("HCl(aq) + NaOH(aq) -> NaCl(aq) + H2O(l)").enthalpy.format({ decimals: 1 }) // => "-55.8 kJ/mol"
 * reactionEnthalpy("H2(g) + 1/2 O2(g) -> H2O(l)").enthalpy.format({ decimals: 1, uncertainty: "none" }) // => "-285.8 kJ/mol"
 */
export function reactionEnthalpy(equation: string | BalancedEquation, options: EnthalpyOptions = {}): ReactionEnthalpy {
  if (bringsFacts(options)) return withItsFacts(options, guard, (others) => reactionEnthalpy(equation, others));
  if (typeof equation !== "string" && !(equation instanceof BalancedEquation)) {
    throw new ThermochemistryError("thermochemistry.not-an-equation", "give the equation as text, or balanced");
  }
  guard.fields(options, ENTHALPY);
  for (const name of ["states", "forms"] as const) {
    const table = options[name];
    if (table === undefined) continue;
    guard.record(table, name);
    for (const [formula, value] of Object.entries(table)) needTextOption(value, `${name}[${formula}]`);
  }
  const balanced = typeof equation === "string" ? balance(equation) : equation;
  const written = asWritten(equation, balanced);
  const species = balanced.formulas.map((formula, at) => {
    const coefficient = written.coefficients[at]!;
    return { formula, number: at < balanced.reactantCount ? coefficient.neg() : coefficient };
  });
  const found = species.map(({ formula }) =>
    findFormation(formula, stateOf(formula) ?? lookUp(options.states, formula), lookUp(options.forms, formula)),
  );
  const missing = species.filter((_, i) => found[i] === undefined).map(({ formula }) => formula.toString());
  if (missing.length > 0) throw noData([...new Set(missing)]);
  const terms = species.map(
    ({ number }, i): EnthalpyTerm => withPlainJSON({ ...found[i]!, stoichiometricNumber: number }),
  );
  const enthalpy = sum(
    terms.map(({ enthalpy: each, stoichiometricNumber }) => each.times(stoichiometricNumber)),
    { symbol: "ΔrH", label: `enthalpy of ${written.text}`, rule: "products − reactants, each times its coefficient" },
  );
  return readable({
    enthalpy,
    equation: written.text,
    givesOffHeat: enthalpy.compare("0 kJ/mol") < 0,
    terms,
    warnings: [...new Set(terms.flatMap(({ warnings }) => warnings))],
  });
}

/**
 * Heat of dissolving a salt, acid or base in much water: its ions and crystal water minus the solid.
 *
 * @param formula - the substance as it is dissolved, hydrate included; `"(s)"` is taken unless a phase is written
 * @param options - `facts`: facts of the caller's own, looked up before the tables
 * @returns kJ/mol at infinite dilution; negative when the solution warms up
 * @throws {ThermochemistryError} `thermochemistry.no-data`
 * @source enthalpies of formation of the tables
 * @category Heat
 * @example
 * solutionEnthalpy("NH4NO3").format({ decimals: 1 }) // => "25.7 kJ/mol"
 */
export function solutionEnthalpy(formula: string | Formula, options?: LookupOptions): Quantity<"molar energy"> {
  if (options !== undefined) return lookingWith(options, guard, () => solutionEnthalpy(formula));
  const read = formula instanceof Formula ? formula : parseFormula(formula);
  const undissolved = formationEnthalpy(read, stateOf(read) === undefined ? {} : { state: stateOf(read)! });
  const terms = withoutPhase(read).parts.map((part) => {
    const inner = part.formula;
    const dissolved = findFormation(inner, isWater(inner) ? "l" : "aq", undefined);
    if (dissolved === undefined) throw noData([`${inner}(aq)`]);
    const { n, d } = part.multiplier;
    return n === 1n && d === 1n ? dissolved.enthalpy : dissolved.enthalpy.times(`${n}/${d}`);
  });
  return sum(terms)
    .minus(undissolved.enthalpy)
    .named({
      symbol: `ΔsolH(${read})`,
      label: `heat of dissolving ${read} in much water`,
      rule: "dissolved ions and crystal water − substance",
    });
}

/** Thomsen's equation for sulfuric acid with n mol of water per mol of acid: heat = A n / (n + B). */
const THOMSEN = { kilojoules: 74.73, half: 1.7983, relative: 0.05 } as const;
/** It serves to about 50 mol of water; over that range the NBS figures are 2 % smaller to 6 % larger, hence 5 %. */
const THOMSEN_LIMIT = 50;

/**
 * Heat of mixing pure sulfuric acid with water.
 *
 * @param waterPerAcid - mol of water for each mol of H2SO4, 0 to 50
 * @returns kJ per mol of acid, negative: the mixture gets hot; standard uncertainty 5 %
 * @throws {ThermochemistryError} `thermochemistry.outside-range`
 * @source Thomsen's equation 17 860 n/(n + 1.7983) cal/mol, recalled from memory; checked against the NBS figure for
 *   H2SO4·H2O
 * @category Heat
 * @example
 * sulfuricAcidDilution("10").format({ significant: 2 }) // => "-63 kJ/mol"
 */
export function sulfuricAcidDilution(waterPerAcid: NumberLike | Quantity): Quantity<"molar energy"> {
  const n = expectDimension(
    isQuantity(waterPerAcid) ? waterPerAcid : { value: waterPerAcid, unit: "" },
    "number",
    "waterPerAcid",
  ).named({ symbol: "n", label: "mol of water per mol of sulfuric acid" });
  const plain = n.toNumber();
  if (plain < 0 || plain > THOMSEN_LIMIT) {
    throw new ThermochemistryError(
      "thermochemistry.outside-range",
      `the equation serves 0 to ${THOMSEN_LIMIT} mol of water per mol of acid, not ${plain}`,
      { details: { waterPerAcid: plain } },
    );
  }
  const most = quantity(
    {
      value: String(THOMSEN.kilojoules),
      unit: "kJ/mol",
      standardUncertainty: (THOMSEN.kilojoules * THOMSEN.relative).toFixed(2),
    },
    { symbol: "q∞", label: "heat at great dilution in Thomsen's equation", source: cite("memory") },
  );
  return applyFunction(
    [most, n],
    {
      name: "−q∞ n / (n + 1.7983)",
      unit: "kJ/mol",
      value: ([q, x]) => ((-q!.toNumber() * x!.toNumber()) / (x!.toNumber() + THOMSEN.half)).toPrecision(10),
      partials: ([q, x]) => {
        const [a, b] = [q!.toNumber(), x!.toNumber() + THOMSEN.half];
        return [-x!.toNumber() / b, (-a * THOMSEN.half) / (b * b)].map((p) => p.toPrecision(10));
      },
    },
    { symbol: "ΔdilH", label: "heat of diluting sulfuric acid", rule: "Thomsen's equation" },
  );
}

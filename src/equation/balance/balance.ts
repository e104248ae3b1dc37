// Balancing: one exact nullspace, then the question whether its vectors make a unique positive answer.

import type { Fields } from "../../foundation/argument";
import { attempt, type Result } from "../../foundation/error";
import { wholeNumbers } from "../../foundation/rational";
import { Equation, givenOrOne } from "../equation";
import { EquationError, type EquationRefusal } from "../error";
import { isInNullspace, nullspaceInBigInts, primitive } from "../kernel/bareiss";
import type { IntegerVector } from "../kernel/nullspace";
import { EQUATION, type EquationOptions, NO_OPTIONS, needOptions } from "../options";
import { type EquationInput, readEquation } from "../read/parse";
import { BalancedEquation } from "./balanced";
import { CONDITION, type Condition, conditionRows } from "./condition";
import { impossible, underdetermined, wrongCoefficients } from "./explain";
import { exactSystem, solutionsOf } from "./system";

export const BALANCE = { ...EQUATION, conditions: [CONDITION] } as const satisfies Fields<BalanceOptions>;

/** How an equation is read, and what else is known about it. */
export interface BalanceOptions extends EquationOptions {
  /** Fixed ratios between species, for an equation that several reactions together could follow. */
  readonly conditions?: readonly Condition[] | undefined;
}

/**
 * The smallest whole-number coefficients that conserve every element and the charge.
 *
 * Coefficients already written are checked: where they balance, they are the answer (in lowest terms), also for an
 * equation with more than one solution; where they do not, they are refused. A balanced equation keeps its own unless
 * conditions decide otherwise. `{ coefficients: "ignore" }` drops them.
 *
 * @param input - text, `{ reactants, products }`, an equation, or a balanced equation
 * @param options - reading options, and `conditions` such as `{ species: ["NO", "NO2"], ratio: "3:1" }`
 * @returns coprime coefficients, all positive
 * @throws {EquationError} `equation.underdetermined`: several independent reactions fit, listed in
 * `details.elementary`; `equation.impossible`: none does, with `details` naming what blocks and what would mend it;
 * `equation.wrong-coefficients`; `equation.unknown-species`, `equation.bad-ratio` for conditions; all codes of
 * {@link parseEquation}
 * @source exact integer nullspace of the element-and-charge matrix
 * @category Balancing
 * @example
 * balance("ZnSO4 + Na2CO3 + H2O -> Zn5(CO3)2(OH)6 + Na2SO4 + CO2").coefficients // => [5n, 5n, 3n, 1n, 5n, 3n]
 * balance("Cr2O7^2- + H+ + e- -> Cr^3+ + H2O").toString() // => "Cr2O7^2- + 14 H+ + 6 e- -> 2 Cr^3+ + 7 H2O"
 * const burning = { conditions: [{ species: ["CO", "CO2"], ratio: "1:3" }] } as const;
 * balance("C + O2 -> CO + CO2", burning).toString() // => "8 C + 7 O2 -> 2 CO + 6 CO2"
 */
export function balance(
  input: EquationInput | BalancedEquation,
  options: BalanceOptions = NO_OPTIONS,
): BalancedEquation {
  if (options !== NO_OPTIONS) needOptions(options, BALANCE);
  return balancedBy(input, options);
}

/** @internal An equation that may be balanced already, and options to look through in any case. */
export function balancedOf(input: EquationInput | BalancedEquation, options: BalanceOptions): BalancedEquation {
  if (options !== NO_OPTIONS) needOptions(options, BALANCE);
  return input instanceof BalancedEquation ? input : balancedBy(input, options);
}

/** @internal As `balance`, with options that were looked through already. */
export function balancedBy(input: EquationInput | BalancedEquation, options: BalanceOptions): BalancedEquation {
  if (typeof input !== "string" && input instanceof BalancedEquation) return again(input, options);
  const equation = readEquation(input, options);
  if (equation.given !== undefined) return withGivenCoefficients(equation, options);
  if (options.conditions !== undefined && options.conditions.length > 0) return underConditions(equation, options);
  const vectors = solutionsOf(equation.formulas, equation.reactantCount);
  const only = vectors[0];
  if (vectors.length === 1 && only !== undefined && isPositive(only)) return new BalancedEquation(equation, only);
  throw vectors.length > 1
    ? (impossible(equation, vectors) ?? underdetermined(equation))
    : impossible(equation, vectors)!;
}

/**
 * {@link balance}, with the outcome as data.
 *
 * @category Balancing
 * @example
 * tryBalance("NaCl -> Na2O + Cl2").ok // => false
 */
export function tryBalance(
  input: EquationInput | BalancedEquation,
  options?: BalanceOptions,
): Result<BalancedEquation, EquationRefusal> {
  return attempt(() => balance(input, options));
}

/**
 * A balanced equation once more: its coefficients stand where nothing new is asked. Conditions and `"ignore"` start from
 * the bare species; spectators that go out take their share of the coefficients with them.
 */
function again(balanced: BalancedEquation, options: BalanceOptions): BalancedEquation {
  const { conditions, coefficients, spectators } = options;
  if (coefficients === "ignore" || (conditions !== undefined && conditions.length > 0)) {
    return balancedBy(balanced.equation, options);
  }
  if (spectators !== "cancel") return balanced;
  const { formulas, reactantCount, arrow, notes } = balanced.equation;
  const given = balanced.coefficients.map((n) => ({ n, d: 1n }));
  return balancedBy(new Equation(formulas, reactantCount, arrow, given, notes), options);
}

/** Two loops, so that each compares one kind of number: mixed comparisons are several times slower. */
function isPositive(vector: IntegerVector): boolean {
  if (typeof vector[0] === "bigint") return (vector as bigint[]).every((value) => value > 0n);
  const numbers = vector as number[];
  for (let at = 0; at < numbers.length; at++) if (numbers[at]! <= 0) return false;
  return true;
}

/** Written coefficients that balance are the answer, in lowest terms. */
function withGivenCoefficients(equation: Equation, options: BalanceOptions): BalancedEquation {
  const { matrix, scales } = exactSystem(equation.formulas, equation.reactantCount);
  const given = givenOrOne(equation);
  const scaled = wholeNumbers(given.map(({ n, d }, at) => ({ n, d: d * scales[at]! })));
  if (!isInNullspace(matrix, scaled)) throw wrongCoefficients(equation, balance);
  const rows = conditionRows(equation, options.conditions ?? []);
  const numbers = primitive(wholeNumbers(given));
  if (!isInNullspace(rows, numbers)) {
    throw new EquationError("equation.wrong-coefficients", "the given coefficients contradict the conditions", {
      hint: 'drop the coefficients, or pass { coefficients: "ignore" }',
    });
  }
  return new BalancedEquation(equation.withoutCoefficients(), numbers);
}

/** With a row more for each condition. */
function underConditions(equation: Equation, options: BalanceOptions): BalancedEquation {
  const { matrix, scales } = exactSystem(equation.formulas, equation.reactantCount);
  const rows = conditionRows(equation, options.conditions ?? []).map((row) =>
    row.map((value, column) => value * scales[column]!),
  );
  const all = [...matrix, ...rows];
  const vectors = nullspaceInBigInts(all, equation.formulas.length);
  const only = vectors[0];
  if (vectors.length > 1) {
    throw impossible(equation, solutionsOf(equation.formulas, equation.reactantCount)) ?? underdetermined(equation);
  }
  if (only === undefined || !isPositive(only) || !isInNullspace(all, only)) {
    throw (
      impossible(equation, solutionsOf(equation.formulas, equation.reactantCount)) ??
      new EquationError("equation.impossible", "no positive coefficients meet the conditions", {
        details: { conditions: options.conditions },
        hint: "each condition fixes the ratio of two coefficients; they may contradict each other or the balances",
      })
    );
  }
  return new BalancedEquation(equation, primitive(only.map((value, column) => value * scales[column]!)));
}

// The overall equation of several steps: each step taken so often that what one forms and another uses up cancels.

import type { Formula } from "../../formula";
import { type Fields, shown } from "../../foundation/argument";
import { frozen } from "../../foundation/frozen";
import { bigGcd } from "../../foundation/gcd";
import { recordHead } from "../../foundation/record";
import { BALANCE, type BalanceOptions, balancedBy } from "../balance/balance";
import {
  BalancedEquation,
  type BalancedEquationRecord,
  balancedEquationFromJSON,
  readBalanced,
} from "../balance/balanced";
import { Equation, notARecord, SCHEMA, sealed } from "../equation";
import { EquationError } from "../error";
import { nullspaceInBigInts } from "../kernel/bareiss";
import { guard, needOptions } from "../options";
import type { EquationInput } from "../read/parse";
import { speciesMeant } from "../species-meant";

const OVERALL = { ...BALANCE, intermediates: true, multipliers: true } as const satisfies Fields<OverallOptions>;

/** Options of `overallEquation`. */
export interface OverallOptions extends BalanceOptions {
  /** Species to cancel completely, as formulas; found by themselves if not given. */
  readonly intermediates?: readonly string[] | undefined;
  /** How often each step is taken; negative runs a step backwards. Found by themselves if not given. */
  readonly multipliers?: readonly (bigint | number)[] | undefined;
}

/** An overall equation as plain data: its steps and how often each is taken. */
export interface OverallEquationRecord extends BalancedEquationRecord {
  /** Kind of the record, which the reader checks. */
  readonly type: "overall equation";
  /** The equations that are added up, in order. */
  readonly steps: readonly BalancedEquationRecord[];
  /** How often each step is taken, as text, in the order of the steps. */
  readonly multipliers: readonly string[];
}

/**
 * The sum of several steps. Made by `overallEquation`.
 *
 * @category Balancing
 * @example
 * overallEquation(["S + O2 -> SO2", "SO2 + O2 -> SO3", "SO3 + H2O -> H2SO4"]).multipliers // => [2n, 1n, 2n]
 */
export class OverallEquation extends BalancedEquation {
  /** @internal */
  static override get name(): string {
    return "OverallEquation";
  }

  /** The balanced steps. */
  readonly steps: readonly BalancedEquation[];
  /** How often each step is taken. */
  readonly multipliers: readonly bigint[];
  /** What is formed in one step and used up in another, completely. */
  readonly intermediates: readonly Formula[];

  /** @internal Use `overallEquation`. */
  constructor(
    equation: Equation,
    numbers: bigint[],
    steps: readonly BalancedEquation[],
    multipliers: readonly bigint[],
    intermediates: readonly Formula[],
  ) {
    super(sealed(equation), numbers);
    this.steps = frozen(steps);
    this.multipliers = frozen(multipliers);
    this.intermediates = frozen(intermediates);
    Object.freeze(this);
  }

  /** Plain data that survives `JSON.stringify`; `overallEquationFromJSON` brings it back. */
  override toJSON(): OverallEquationRecord {
    return {
      ...recordHead("overall equation", SCHEMA),
      ...this.fields(),
      steps: this.steps.map((step) => ({ ...recordHead("balanced equation", SCHEMA), ...step.fields() })),
      multipliers: this.multipliers.map(String),
    };
  }
}

/** Signed coefficient of each species in each step: negative where it is used up. */
type Table = Map<string, { readonly formula: Formula; readonly perStep: bigint[] }>;

function tableOf(steps: readonly BalancedEquation[]): Table {
  const table: Table = new Map();
  steps.forEach((step, at) => {
    const { coefficients, reactantCount } = step;
    step.formulas.forEach((formula, place) => {
      const text = String(formula);
      const row = table.get(text) ?? { formula, perStep: steps.map(() => 0n) };
      table.set(text, row);
      row.perStep[at]! += place < reactantCount ? -coefficients[place]! : coefficients[place]!;
    });
  });
  return table;
}

/**
 * The overall equation of several steps in sequence (Hess-type sum): steps are multiplied by the smallest whole numbers
 * for which the intermediates cancel.
 *
 * @param steps - equations, balanced here if they are not yet
 * @param options - `intermediates` to cancel, or the `multipliers` themselves
 * @throws {EquationError} `equation.steps-do-not-chain` if no positive multipliers cancel the intermediates, or more than
 * one set does; `equation.nothing-left`, `equation.bad-option`; all codes of {@link balance}
 * @category Balancing
 * @example
 * overallEquation(["CaCO3 -> CaO + CO2", "CaO + H2O -> Ca(OH)2"]).toString() // => "CaCO3 + H2O -> CO2 + Ca(OH)2"
 */
export function overallEquation(
  steps: readonly (EquationInput | BalancedEquation)[],
  options: OverallOptions = {},
): OverallEquation {
  needOptions(options, OVERALL);
  if (!Array.isArray(steps)) {
    throw new EquationError("equation.steps-do-not-chain", "steps are a list of equations");
  }
  for (const list of ["intermediates", "multipliers"] as const) {
    if (options[list] !== undefined) guard.list(options[list], list);
  }
  guard.list(steps, "steps");
  const balanced = steps.map((step: EquationInput | BalancedEquation) =>
    step instanceof BalancedEquation ? step : balancedBy(step, options),
  );
  if (balanced.length === 0) {
    throw new EquationError("equation.steps-do-not-chain", "no steps were given");
  }
  const table = tableOf(balanced);
  const multipliers = options.multipliers?.map(wholeNumber) ?? multipliersFor(balanced, table, options.intermediates);
  if (multipliers.length !== balanced.length) {
    throw new EquationError("equation.steps-do-not-chain", "there is one multiplier for each step", {
      details: { steps: balanced.length, multipliers: multipliers.length },
    });
  }
  const rows = [...table.values()].map(({ formula, perStep }) => {
    const amount = perStep.reduce((sum, value, at) => sum + value * multipliers[at]!, 0n);
    return { formula, amount, touched: perStep.some((value, at) => value * multipliers[at]! !== 0n) };
  });
  const left = rows.filter(({ amount }) => amount < 0n);
  const right = rows.filter(({ amount }) => amount > 0n);
  if (left.length === 0 || right.length === 0) {
    throw new EquationError("equation.nothing-left", "the steps cancel each other completely");
  }
  const all = [...left, ...right];
  const common = all.reduce((gcd, { amount }) => bigGcd(gcd, amount), 0n);
  const numbers = all.map(({ amount }) => (amount < 0n ? -amount : amount) / common);
  const formulas = all.map(({ formula }) => formula);
  const equation = new Equation(formulas, left.length, balanced[0]!.arrow, undefined, []);
  const gone = rows.filter(({ amount, touched }) => amount === 0n && touched).map(({ formula }) => formula);
  return new OverallEquation(equation, numbers, balanced, multipliers, gone);
}

function wholeNumber(value: bigint | number): bigint {
  if (typeof value === "bigint" || Number.isSafeInteger(value)) return BigInt(value);
  const is = typeof value === "number" ? String(value) : shown(value);
  throw new EquationError("equation.bad-option", `a multiplier is a whole number, not ${is}`);
}

/** Smallest positive multipliers that cancel what one step forms and another uses up. */
function multipliersFor(
  steps: readonly BalancedEquation[],
  table: Table,
  named: readonly string[] | undefined,
): bigint[] {
  const common = new Set(["H2O", "H+", "OH-", "O2", "CO2", "H3O+"]);
  const passedOn = [...table].filter(([, { perStep }]) => perStep.some((v) => v > 0n) && perStep.some((v) => v < 0n));
  const wanted = named?.map((name) => {
    const rows = [...table];
    const [at] = speciesMeant(
      rows.map(([, { formula }]) => formula),
      name,
    );
    const row = at === undefined ? undefined : rows[at];
    if (row === undefined) {
      throw new EquationError("equation.unknown-species", `${name} is in none of the steps`, {
        details: { species: name },
      });
    }
    return row;
  });
  // water and the like may be formed and used up without being intermediates: try with all, then without them
  const choices = wanted === undefined ? [passedOn, passedOn.filter(([text]) => !common.has(text))] : [wanted];
  for (const choice of choices) {
    const vectors = nullspaceInBigInts(
      choice.map(([, { perStep }]) => perStep),
      steps.length,
    );
    const only = vectors[0];
    if (vectors.length === 1 && only!.every((value) => value > 0n)) return only!;
  }
  throw new EquationError("equation.steps-do-not-chain", "no single set of multipliers cancels the intermediates", {
    details: { steps: steps.map(String), intermediates: (wanted ?? passedOn).map(([text]) => text) },
    hint: "name the { intermediates }, or give the { multipliers }",
  });
}

/**
 * An overall equation from the plain data that its `toJSON` gave: its steps are counted and summed again.
 *
 * @throws {EquationError} `equation.not-a-record`, `equation.wrong-coefficients`; errors of {@link overallEquation}
 * @category Balancing
 * @example
 * const original = overallEquation(["CaCO3 -> CaO + CO2", "CaO + H2O -> Ca(OH)2"]);
 * overallEquationFromJSON(JSON.parse(JSON.stringify(original))).intermediates.join() // => "CaO"
 */
export function overallEquationFromJSON(record: OverallEquationRecord): OverallEquation {
  const { equation, numbers } = readBalanced(record, "overall equation");
  const { steps, multipliers } = record;
  const areNumbers = (list: readonly unknown[]) =>
    list.every((one) => typeof one === "string" && /^-?\d{1,1000}$/.test(one));
  if (!Array.isArray(steps) || !Array.isArray(multipliers) || !areNumbers(multipliers))
    throw notARecord("overall equation", "steps are records, multipliers whole numbers as text");
  const made = overallEquation(steps.map(balancedEquationFromJSON), { multipliers: multipliers.map(BigInt) });
  if (made.equals(new BalancedEquation(equation, numbers))) return made;
  throw new EquationError("equation.wrong-coefficients", "the steps of the record do not add up to its equation");
}

// Ionic equations: what is in the water taken apart, and without the ions that only look on.

import { type Formula, parseFormula } from "../../formula";
import { frozen } from "../../foundation/frozen";
import { bigGcd } from "../../foundation/gcd";
import { recordHead } from "../../foundation/record";
import { type BalanceOptions, balancedOf } from "../balance/balance";
import { BalancedEquation, type BalancedEquationRecord, type BalancedTerm, readBalanced } from "../balance/balanced";
import { Equation, notARecord, SCHEMA, sealed } from "../equation";
import { EquationError } from "../error";
import type { EquationInput } from "../read/parse";
import { dissociated } from "./ions";

/** An ionic equation as plain data. */
export interface IonicEquationRecord extends BalancedEquationRecord {
  /** Kind of the record, which the reader checks. */
  readonly type: "ionic equation";
  /** Ions that stand on both sides and were left out; coefficients are whole numbers as text. */
  readonly spectators: readonly { readonly formula: string; readonly coefficient: string }[];
  /** What had to be assumed about dissolving, in words. */
  readonly assumptions: readonly string[];
}

/**
 * A balanced ionic equation, with the ions that stand on both sides of the complete one. Made by `netIonic` and
 * `completeIonic`.
 *
 * @category Ionic equations
 * @example
 * netIonic("AgNO3 + NaCl -> AgCl + NaNO3").spectators.map(({ formula }) => formula.toString()) // => ["NO3-", "Na+"]
 */
export class IonicEquation extends BalancedEquation {
  /** @internal */
  static override get name(): string {
    return "IonicEquation";
  }

  /** Ions that are on both sides, with the smaller of their two coefficients in the complete equation. */
  readonly spectators: readonly BalancedTerm[];
  /** What had to be assumed about dissolving, in words; mostly none. */
  readonly assumptions: readonly string[];

  /** @internal Use `netIonic` or `completeIonic`. */
  constructor(
    equation: Equation,
    numbers: bigint[],
    spectators: readonly BalancedTerm[],
    assumptions: readonly string[],
  ) {
    super(sealed(equation), numbers);
    this.spectators = frozen(spectators);
    this.assumptions = frozen(assumptions);
    Object.freeze(this);
  }

  /** Plain data that survives `JSON.stringify`; `ionicEquationFromJSON` brings it back. */
  override toJSON(): IonicEquationRecord {
    return {
      ...recordHead("ionic equation", SCHEMA),
      ...this.fields(),
      spectators: this.spectators.map(({ formula, coefficient }) => ({
        formula: String(formula),
        coefficient: String(coefficient),
      })),
      assumptions: [...this.assumptions],
    };
  }
}

/** Amounts by canonical text, in the order first met. */
type Side = Map<string, { formula: Formula; amount: bigint }>;

interface Sides {
  readonly left: Side;
  readonly right: Side;
  readonly balanced: BalancedEquation;
  readonly assumptions: string[];
}

function add(side: Side, formula: Formula, amount: bigint): void {
  const text = String(formula);
  const before = side.get(text);
  if (before === undefined) side.set(text, { formula, amount });
  else before.amount += amount;
}

/** Both sides taken apart. Ions carry the phase (aq) if the species they come from did. */
function takenApart(input: EquationInput | BalancedEquation, options: BalanceOptions): Sides {
  const balanced = balancedOf(input, options);
  const assumptions: string[] = [];
  const fill = (terms: readonly BalancedTerm[]): Side => {
    const side: Side = new Map();
    for (const { formula, coefficient } of terms) {
      const { ions, assumption } = dissociated(formula);
      if (assumption !== undefined) assumptions.push(assumption);
      if (ions === undefined) add(side, formula, coefficient);
      for (const { text, charge, count } of ions ?? []) {
        const phase = formula.phase === undefined ? "" : charge === 0 ? "(l)" : "(aq)";
        add(side, parseFormula(text + phase), count * coefficient);
      }
    }
    return side;
  };
  return { left: fill(balanced.reactants), right: fill(balanced.products), balanced, assumptions };
}

function spectatorsOf(left: Side, right: Side): BalancedTerm[] {
  const found: BalancedTerm[] = [];
  for (const [text, { formula, amount }] of left) {
    const other = right.get(text)?.amount;
    if (other === undefined) continue;
    let coefficient = amount;
    if (other < coefficient) coefficient = other;
    found.push({ formula, coefficient });
  }
  return found;
}

function equationOf(
  left: Side,
  right: Side,
  { equation }: BalancedEquation,
): { equation: Equation; numbers: bigint[] } {
  const all = [...left.values(), ...right.values()];
  return {
    equation: new Equation(
      all.map(({ formula }) => formula),
      left.size,
      equation.arrow,
      undefined,
      [],
    ),
    numbers: all.map(({ amount }) => amount),
  };
}

/**
 * The complete ionic equation: every strong electrolyte in the water written as its ions.
 *
 * Strong acids, strong bases and soluble salts are taken apart, by the classroom solubility rules; weak acids and bases,
 * solids, gases and molecules stay whole. A phase in the equation outweighs the rules: `(aq)` takes a salt apart, `(s)`,
 * `(l)` and `(g)` keep it whole.
 *
 * @param input - equation, balanced here if it is not yet
 * @throws {EquationError} all codes of {@link balance}
 * @category Ionic equations
 * @example
 * completeIonic("AgNO3 + NaCl -> AgCl + NaNO3").toString() // => "Ag+ + NO3- + Na+ + Cl- -> AgCl + Na+ + NO3-"
 */
export function completeIonic(input: EquationInput | BalancedEquation, options: BalanceOptions = {}): IonicEquation {
  const { left, right, balanced, assumptions } = takenApart(input, options);
  const { equation, numbers } = equationOf(left, right, balanced);
  return new IonicEquation(equation, numbers, spectatorsOf(left, right), assumptions);
}

/**
 * The net ionic equation: the complete one without what stands on both sides, in smallest whole numbers.
 *
 * @param input - equation, balanced here if it is not yet
 * @throws {EquationError} `equation.no-net-reaction` if nothing is left; all codes of {@link balance}
 * @category Ionic equations
 * @example
 * netIonic("AgNO3 + NaCl -> AgCl + NaNO3").toString() // => "Ag+ + Cl- -> AgCl"
 * netIonic("CaCO3(s) + HCl(aq) -> CaCl2(aq) + CO2(g) + H2O(l)").toString() // => "CaCO3(s) + 2 H+(aq) -> Ca^2+(aq) + CO2(g) + H2O(l)"
 */
export function netIonic(input: EquationInput | BalancedEquation, options: BalanceOptions = {}): IonicEquation {
  const { left, right, balanced, assumptions } = takenApart(input, options);
  const spectators = spectatorsOf(left, right);
  for (const { formula, coefficient } of spectators) {
    for (const side of [left, right]) {
      const entry = side.get(String(formula))!;
      entry.amount -= coefficient;
      if (entry.amount === 0n) side.delete(String(formula));
    }
  }
  if (left.size === 0 || right.size === 0) {
    throw new EquationError("equation.no-net-reaction", `nothing reacts in ${balanced}: every ion is on both sides`, {
      details: { equation: String(balanced), spectators: spectators.map(({ formula }) => String(formula)) },
      hint: "if something precipitates or escapes, write its phase: AgCl(s), CO2(g)",
    });
  }
  const { equation, numbers } = equationOf(left, right, balanced);
  const common = numbers.reduce(bigGcd, 0n);
  return new IonicEquation(
    equation,
    numbers.map((value) => value / common),
    spectators,
    assumptions,
  );
}

/**
 * An ionic equation from the plain data that its `toJSON` gave; counted again, so that nothing unbalanced comes in this way.
 *
 * @throws {EquationError} `equation.not-a-record`, `equation.wrong-coefficients`; errors of `parseFormula`
 * @category Ionic equations
 * @example
 * const original = netIonic("AgNO3 + NaCl -> AgCl + NaNO3");
 * ionicEquationFromJSON(JSON.parse(JSON.stringify(original))).spectators.length // => 2
 */
export function ionicEquationFromJSON(record: IonicEquationRecord): IonicEquation {
  const { equation, numbers } = readBalanced(record, "ionic equation");
  const { spectators, assumptions } = record;
  if (!Array.isArray(spectators) || !Array.isArray(assumptions) || !assumptions.every((one) => typeof one === "string"))
    throw notARecord("ionic equation", "spectators and assumptions are lists");
  const terms = spectators.map((term: unknown) => {
    const { formula, coefficient } = (term ?? {}) as { readonly formula?: unknown; readonly coefficient?: unknown };
    if (typeof formula === "string" && typeof coefficient === "string" && /^[1-9]\d{0,999}$/.test(coefficient))
      return { formula: parseFormula(formula), coefficient: BigInt(coefficient) };
    throw notARecord("ionic equation", "a spectator is { formula: text, coefficient: whole number as text }");
  });
  return new IonicEquation(equation, numbers, terms, [...assumptions]);
}

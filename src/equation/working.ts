// The working of a balanced equation, as a teacher writes it on a board: a letter for each coefficient, one condition for
// each element and the charge, the letters one after another, and the count on both sides at the end.
import { isRecord, shown } from "../foundation/argument";
import { Fraction } from "../foundation/fraction";
import { BalancedEquation } from "./balance/balanced";
import { solutionsOf } from "./balance/system";
import { needEquation } from "./equation";
import { EquationError } from "./error";
import type { HalfReactions } from "./redox/half";

/** One element, or the charge, counted on both sides. */
export interface BalanceCount {
  /** Symbol of the element, or `charge`. */
  readonly of: string;
  /** Terms of the reactants, coefficient × count: "5 × 1 + 3 × 2". */
  readonly left: string;
  /** Terms of the products, coefficient × count. */
  readonly right: string;
  /** Total of either side; they are equal. */
  readonly total: Fraction;
}

/** How the coefficients of an equation follow; `toString()` prints it. */
export interface BalanceWorking {
  /** The balanced equation. */
  readonly equation: BalancedEquation;
  /** The equation with a letter before each species: "a H2 + b O2 -> c H2O". */
  readonly withLetters: string;
  /** One condition for each element and the charge: "O: 2 b = c". */
  readonly conditions: readonly string[];
  /** The letters one after another, in words. */
  readonly steps: readonly string[];
  /** Every element and the charge on both sides. */
  readonly counts: readonly BalanceCount[];
  /** All of it, line by line. */
  toString(): string;
}

/** How two halves are added up; `toString()` prints it. */
export interface HalfReactionsWorking {
  /** Each half with its own working. */
  readonly halves: readonly { readonly kind: "oxidation" | "reduction"; readonly half: BalanceWorking }[];
  /** How often each half is taken, and why, in words. */
  readonly multipliers: readonly string[];
  /** Working of the sum of the halves. */
  readonly overall: BalanceWorking;
  /** All of it, line by line. */
  toString(): string;
}

interface Row {
  readonly of: string;
  /** Count in one unit of each species; negative for a product. */
  readonly perUnit: readonly Fraction[];
}

const ZERO = /* @__PURE__ */ new Fraction(0);

const letterAt = (at: number, species: number): string =>
  species <= 26 ? String.fromCharCode("a".charCodeAt(0) + at) : `x${at + 1}`;

/** The elements in the order they are met, the charge last. */
function rowsOf(equation: BalancedEquation): Row[] {
  const table = equation.table();
  const names = [...new Set(table.flatMap(({ brings }) => Object.keys(brings)))];
  return [...names.filter((name) => name !== "charge"), ...names.filter((name) => name === "charge")].map((of) => ({
    of,
    perUnit: table.map(({ brings, stoichiometricNumber }) => (brings[of] ?? ZERO).div(-stoichiometricNumber)),
  }));
}

/** Terms with a plus or minus between them: "5 a + 2 b - c". */
function termsOf(terms: readonly { readonly count: Fraction; readonly name: string }[], joint: string): string {
  const text = terms
    .map(({ count, name }, at) => {
      const size = count.abs();
      const sign = count.s < 0n ? (at === 0 ? "-" : " - ") : at === 0 ? "" : " + ";
      // a letter with a count of one stands alone; a number shows the count it is taken with
      const alone = size.equals(1) && /^[a-z]/.test(name);
      return `${sign}${alone ? name : `${size.toFraction()}${/^[a-z]/.test(name) ? " " : joint}${name}`}`;
    })
    .join("");
  return text === "" ? "0" : text;
}

/** Both sides of one condition, with any name for each species. */
function sidesOf({ perUnit }: Row, reactants: number, name: (at: number) => string, joint: string) {
  const terms = perUnit.map((count, at) => ({ count: at < reactants ? count : count.neg(), name: name(at), at }));
  const there = terms.filter(({ count }) => !count.equals(0));
  const left = there.filter(({ at }) => at < reactants);
  const right = there.filter(({ at }) => at >= reactants);
  return { left: termsOf(left, joint), right: termsOf(right, joint) };
}

/** Start where most conditions meet: the species with most elements; the first of these. */
function startOf(rows: readonly Row[], species: number): number {
  let best = 0;
  let most = -1;
  for (let at = 0; at < species; at++) {
    const meets = rows.filter(({ perUnit }) => !perUnit[at]!.equals(0)).length;
    if (meets > most) [best, most] = [at, meets];
  }
  return best;
}

/** One letter after another, as far as each condition leaves one open; then what the rest give together. */
function deduced(equation: BalancedEquation, rows: readonly Row[], letter: (at: number) => string): string[] {
  const { coefficients, formulas, reactantCount } = equation;
  const start = startOf(rows, formulas.length);
  const values = new Map<number, Fraction>([[start, new Fraction(1)]]);
  const steps = [`Take ${letter(start)} = 1 for ${formulas[start]}, which most conditions contain.`];
  const open = new Set(rows);
  const scale = new Fraction(1).div(coefficients[start]!);
  const unique = solutionsOf(formulas, reactantCount).length === 1;
  while (values.size < formulas.length) {
    let found = false;
    for (const row of unique ? open : []) {
      const unknown = row.perUnit.flatMap((count, at) => (count.equals(0) || values.has(at) ? [] : [at]));
      if (unknown.length > 1) continue;
      open.delete(row);
      const only = unknown[0];
      if (only === undefined) continue;
      const { left, right } = sidesOf(row, reactantCount, (at) => values.get(at)?.toFraction() ?? letter(at), " × ");
      const value = scale.mul(coefficients[only]!);
      values.set(only, value);
      steps.push(`${row.of}: ${left} = ${right}, so ${letter(only)} = ${value.toFraction()}.`);
      found = true;
      break;
    }
    if (found) continue;
    const rest = formulas.flatMap((_, at) => (values.has(at) ? [] : [at]));
    for (const at of rest) values.set(at, scale.mul(coefficients[at]!));
    const answers = rest.map((at) => `${letter(at)} = ${values.get(at)!.toFraction()}`).join(", ");
    steps.push(
      unique
        ? `The conditions that are left, solved together, give ${answers}.`
        : `The conditions allow several answers; the one that was chosen has ${answers}.`,
    );
  }
  const whole = coefficients[start]!;
  if (whole !== 1n) steps.push(`Times ${whole}, so that all are whole numbers without a common divisor.`);
  const result = formulas.map((_, at) => `${letter(at)} = ${coefficients[at]}`).join(", ");
  return [...steps, `${result}.`];
}

/**
 * How the coefficients of a balanced equation follow, and every element and the charge counted on both sides.
 *
 * @param equation - what `balance` gave
 * @returns conditions, steps and counts as data; `.toString()` prints the working
 * @throws {EquationError} `equation.not-an-equation` for anything else
 * @source algebraic method of balancing, general chemistry (common practice)
 * @category Balancing
 * @example
 * const working = workingOfEquation(balance("H2 + O2 -> H2O"));
 * working.conditions // => ["H: 2 a = 2 c", "O: 2 b = c"]
 * working.steps[1] // => "H: 2 a = 2 × 1, so a = 1."
 * working.counts[1].left // => "1 × 2"
 */
export function workingOfEquation(equation: BalancedEquation): BalanceWorking {
  needEquation(equation, BalancedEquation);
  const { coefficients, formulas, reactantCount } = equation;
  const rows = rowsOf(equation);
  const letter = (at: number): string => letterAt(at, formulas.length);
  const side = (from: number, to: number): string =>
    formulas
      .slice(from, to)
      .map((formula, at) => `${letter(from + at)} ${formula}`)
      .join(" + ");
  const withLetters = `${side(0, reactantCount)} -> ${side(reactantCount, formulas.length)}`;
  const conditions = rows.map((row) => {
    const { left, right } = sidesOf(row, reactantCount, letter, " ");
    return `${row.of}: ${left} = ${right}`;
  });
  const counts = rows.map((row): BalanceCount => {
    // the coefficient first, as it stands in the equation
    const turned = (from: number, to: number): string => {
      const terms = row.perUnit.slice(from, to).flatMap((count, at) => {
        const own = from === 0 ? count : count.neg();
        return own.equals(0)
          ? []
          : [`${coefficients[from + at]} × ${own.s < 0n ? `(${own.toFraction()})` : own.toFraction()}`];
      });
      return terms.length === 0 ? "0" : terms.join(" + ");
    };
    const total = row.perUnit
      .slice(0, reactantCount)
      .reduce((sum, count, at) => sum.add(count.mul(coefficients[at]!)), ZERO);
    return { of: row.of, left: turned(0, reactantCount), right: turned(reactantCount, formulas.length), total };
  });
  const steps = deduced(equation, rows, letter);
  const working = { equation, withLetters, conditions, steps, counts };
  return { ...working, toString: () => printedWorking(working) };
}

function printedWorking({
  equation,
  withLetters,
  conditions,
  steps,
  counts,
}: Omit<BalanceWorking, "toString">): string {
  const widest = Math.max(...counts.map(({ of }) => of.length));
  return [
    withLetters,
    "Conditions",
    ...conditions.map((line) => `  ${line}`),
    "Steps",
    ...steps.map((line, at) => `  ${at + 1}. ${line}`),
    "Check",
    ...counts.map(({ of, left, right, total }) => `  ${of.padEnd(widest)}  ${left} = ${right} = ${total.toFraction()}`),
    String(equation),
  ].join("\n");
}

/** @internal Is this what `halfReactions` gave? */
export const isHalfReactions = (value: unknown): value is HalfReactions =>
  isRecord(value) &&
  isRecord(value["overall"]) &&
  Array.isArray(value["oxidations"]) &&
  Array.isArray(value["multipliers"]);

/**
 * How two halves are balanced and added up.
 *
 * @param halves - what `halfReactions` gave
 * @returns the working of each half, the multipliers in words and the working of the sum; `.toString()` prints it
 * @throws {EquationError} `equation.not-an-equation` for anything else
 * @category Redox
 * @example
 * const working = workingOfHalfReactions(halfReactions("MnO4- + Fe^2+ -> Mn^2+ + Fe^3+"));
 * working.multipliers // => ["5 × (Fe^2+ -> Fe^3+ + e-) gives off 5 electrons", "1 × (MnO4- + 8 H+ + 5 e- -> Mn^2+ + 4 H2O) accepts 5 electrons"]
 */
export function workingOfHalfReactions(halves: HalfReactions): HalfReactionsWorking {
  if (!isHalfReactions(halves)) {
    throw new EquationError("equation.not-an-equation", `${shown(halves)} is not what halfReactions gives`);
  }
  const { oxidations, reductions, multipliers, overall } = halves;
  const all = [
    ...oxidations.map((half) => ({ kind: "oxidation" as const, half })),
    ...reductions.map((half) => ({ kind: "reduction" as const, half })),
  ];
  const electronsIn = (half: BalancedEquation): bigint => {
    const number = half.stoichiometricNumber("e-") ?? 0n;
    return number < 0n ? -number : number;
  };
  const working = {
    halves: all.map(({ kind, half }) => ({ kind, half: workingOfEquation(half) })),
    multipliers: all.map(({ kind, half }, at) => {
      const times = multipliers[at]!;
      const verb = kind === "oxidation" ? "gives off" : "accepts";
      return `${times} × (${half}) ${verb} ${times * electronsIn(half)} electrons`;
    }),
    overall: workingOfEquation(overall),
  };
  const print = (): string =>
    [
      ...working.halves.flatMap(({ kind, half }) => [`${kind[0]!.toUpperCase()}${kind.slice(1)}`, String(half)]),
      "Electrons",
      ...working.multipliers.map((line) => `  ${line}`),
      "Sum",
      String(working.overall),
    ].join("\n");
  return { ...working, toString: print };
}

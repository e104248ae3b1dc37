// Extra conditions that make an equation of several dimensions unique: the ratio of two coefficients, known or measured.
import { type Formula, parseFormula } from "../../formula";
import { type Fields, shown } from "../../foundation/argument";
import type { Equation } from "../equation";
import { EquationError } from "../error";
import { formulaGiven } from "../read/parse";

export const CONDITION = { species: true, ratio: true } as const satisfies Fields<Condition>;

/** The coefficients of two species stand in a fixed ratio, as amounts of substance (moles), not masses. */
export interface Condition {
  /** The two species, in the order of the ratio. */
  readonly species: readonly [string | Formula, string | Formula];
  /** `"3:1"`, `"1.37 : 1"`, or two amounts in one unit as measured: `"42 mmol : 17 mmol"`. */
  readonly ratio: string;
}

const RATIO = /^\s*(\d+)(?:\.(\d+))?\s*([a-zA-Zµμ%]*)\s*[:/]\s*(\d+)(?:\.(\d+))?\s*([a-zA-Zµμ%]*)\s*$/;

function readRatio(text: string): [bigint, bigint] {
  const match = typeof text === "string" ? RATIO.exec(text) : null;
  if (match === null || match[3] !== match[6]) {
    throw new EquationError("equation.bad-ratio", `${shown(text)} is not a ratio of two numbers`, {
      ...(typeof text === "string" ? { input: text, position: 0 } : {}),
      hint: 'write "3:1", "1.37:1", or two amounts in the same unit',
    });
  }
  const places = Math.max(match[2]?.length ?? 0, match[5]?.length ?? 0);
  const whole = (digits: string, decimals = "") => BigInt(digits + decimals.padEnd(places, "0"));
  const a = whole(match[1]!, match[2]);
  const b = whole(match[4]!, match[5]);
  if (a === 0n || b === 0n) {
    throw new EquationError("equation.bad-ratio", "a ratio with zero leaves a species out", {
      input: text,
      position: 0,
      hint: "take the species out of the equation instead",
    });
  }
  return [a, b];
}

/** Where a species stands in the equation, by notation or else by composition. */
function placeOf(equation: Equation, wanted: string | Formula): number {
  const formula = typeof wanted === "string" ? parseFormula(wanted) : formulaGiven(wanted);
  const text = String(formula);
  const { formulas } = equation;
  let places = [...formulas.keys()].filter((at) => String(formulas[at]) === text);
  if (places.length === 0) places = [...formulas.keys()].filter((at) => formulas[at]!.hasSameComposition(formula));
  if (places.length === 1) return places[0]!;
  if (places.length === 0) {
    throw new EquationError("equation.unknown-species", `${text} is not in the equation`, {
      details: { species: text, equation: String(equation) },
    });
  }
  throw new EquationError("equation.ambiguous-species", `${text} stands in the equation more than once`, {
    details: { species: text, equation: String(equation) },
    hint: 'take spectators out with { spectators: "cancel" }',
  });
}

/** One row of the system for each condition: a x_b - b x_a = 0. */
export function conditionRows(equation: Equation, conditions: readonly Condition[]): bigint[][] {
  return conditions.map(({ species, ratio }) => {
    if (!Array.isArray(species) || species.length !== 2) {
      throw new EquationError("equation.bad-ratio", "a condition names two species", {
        hint: '{ species: ["NO", "NO2"], ratio: "3:1" }',
      });
    }
    const [a, b] = readRatio(ratio);
    const row = new Array<bigint>(equation.formulas.length).fill(0n);
    row[placeOf(equation, species[0])] = -b;
    row[placeOf(equation, species[1])]! += a;
    return row;
  });
}

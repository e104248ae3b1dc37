// What would mend an equation that cannot be balanced: water, its ions, oxygen, carbon dioxide or electrons, on whichever
// side they fit.

import { type Formula, parseFormula } from "../../formula";
import { hasDigitsBeforeSign } from "../../formula/internal";
import { Equation } from "../equation";
import type { Mending } from "../error-details";
import { printEquation } from "../print";
import { withDigitsAsCharge } from "../read/parse";
import { BalancedEquation } from "./balanced";
import { solutionsOf } from "./system";

/** Species that may be added to mend an equation, one alone or two together, in this order. */
const MENDERS = ["H2O", "H+", "OH-", "O2", "CO2", "e-"];
const PAIRS: readonly (readonly [string, string])[] = [
  ["H2O", "H+"],
  ["H2O", "OH-"],
  ["H2O", "CO2"],
  ["H2O", "O2"],
  ["CO2", "O2"],
];

const range = (length: number) => [...Array(length).keys()];

/** What could be added, on whichever side, so that everything takes part in one unique equation. */
export function mendings(equation: Equation): Mending[] {
  const present = new Set(equation.formulas.map(String));
  const menders = new Map(MENDERS.map((text) => [text, parseFormula(text)]));
  // acid and base do not stand together in one equation
  const excluded = present.has("OH-") ? "H+" : present.has("H+") || present.has("H3O+") ? "OH-" : "";
  const usable = (text: string) => text !== excluded && !present.has(String(menders.get(text)));
  const found: Mending[] = [];
  const tryAdding = (add: readonly string[]) => {
    if (!add.every(usable)) return;
    const text = withAdded(
      equation,
      add.map((name) => menders.get(name)!),
    );
    if (text !== undefined) found.push({ add, equation: text });
  };
  for (const text of MENDERS) tryAdding([text]);
  if (found.length === 0) for (const pair of PAIRS) tryAdding(pair);
  return found;
}

function withAdded(equation: Equation, added: readonly Formula[]): string | undefined {
  const { formulas, reactantCount } = equation;
  const own = formulas.length;
  const all = [...formulas, ...added];
  // the added species stand on the right for now; a negative coefficient moves them to the left
  const vectors = solutionsOf(all, reactantCount);
  if (vectors.length !== 1) return undefined;
  const vector = vectors[0]!;
  const sign = vector[0]! < 0 ? -1 : 1;
  const signed = (at: number) =>
    typeof vector[at] === "bigint" ? BigInt(sign) * (vector[at] as bigint) : sign * (vector[at] as number);
  if (range(own).some((at) => signed(at) <= 0) || range(added.length).some((at) => !vector[own + at])) return undefined;
  const left = range(added.length).filter((at) => signed(own + at) < 0);
  const right = range(added.length).filter((at) => signed(own + at) > 0);
  const order = [
    ...range(reactantCount),
    ...left.map((at) => own + at),
    ...range(own - reactantCount).map((at) => reactantCount + at),
    ...right.map((at) => own + at),
  ];
  const mended = new Equation(
    order.map((at) => all[at]!),
    reactantCount + left.length,
    equation.arrow,
    undefined,
    [],
  );
  const numbers = order.map((at) => {
    const value = signed(at);
    return value < 0 ? -value : value;
  });
  return printEquation(
    mended,
    numbers.map((value) => (String(value) === "1" ? "" : String(value))),
    "ascii",
  );
}

/** Balanced text of an equation with one positive solution, else undefined. */
export function balancedText(equation: Equation | undefined): string | undefined {
  if (equation === undefined) return undefined;
  const vectors = solutionsOf(equation.formulas, equation.reactantCount);
  if (vectors.length !== 1 || vectors[0]!.some((value) => value <= 0)) return undefined;
  return String(new BalancedEquation(equation, vectors[0]!));
}

/**
 * The equation with digits before a bare sign read as charges (`Fe3+` as one iron with three charges), balanced;
 * undefined where no formula is written so, or it does not balance either.
 */
export function withDigitsAsCharges(equation: Equation): string | undefined {
  if (!equation.formulas.some(({ text }) => hasDigitsBeforeSign(text))) return undefined;
  const formulas = equation.formulas.map(withDigitsAsCharge);
  return balancedText(new Equation(formulas, equation.reactantCount, equation.arrow, undefined, []));
}

// Why an equation cannot be balanced, or not uniquely, and what would mend it. Only reached on the way to an error, so
// plain and exact rather than fast.

import { list } from "../../foundation/wording";
import { Equation } from "../equation";
import { EquationError } from "../error";
import type { ImpossibleDetails, UnderdeterminedDetails, WrongCoefficientsDetails } from "../error-details";
import type { IntegerVector } from "../kernel/nullspace";
import { takingPart } from "../kernel/support";
import { DEFAULT_REACTION_LIMIT, MAX_SPECIES_EXPLAINED } from "../read/limits";
import { type BalancedEquation, balanceName } from "./balanced";
import { imbalanceOf } from "./imbalance";
import { balancedText, mendings, withDigitsAsCharges } from "./mend";
import { elementaryReaction, raysOf } from "./space";
import { CHARGE, exactSystem, solutionsOf } from "./system";

const range = (length: number) => [...Array(length).keys()];

/** The error for an equation without a positive solution; undefined when there is one after all. */
export function impossible(equation: Equation, vectors: readonly IntegerVector[]): EquationError | undefined {
  const { formulas, reactantCount } = equation;
  const columns = formulas.length;
  const system = exactSystem(formulas, reactantCount);
  const takesPart = takingPart(system.matrix, columns);
  if (takesPart === undefined || takesPart.every(Boolean)) return undefined;
  const small = columns <= MAX_SPECIES_EXPLAINED;
  const some = takesPart.some(Boolean);
  const names = (places: readonly number[]) => places.map((at) => String(formulas[at]));
  const zero = some
    ? range(columns).filter((at) => !takesPart[at])
    : vectors.length === 0
      ? []
      : range(columns).filter((at) => vectors.every((vector) => !vector[at]));
  const wrong = !some || vectors.length > 1 ? wrongSide(equation, vectors, small) : [];
  const details: ImpossibleDetails = {
    equation: String(equation),
    dimension: vectors.length,
    elementsOnOneSideOnly: elementsOnOneSide(equation),
    balancesThatBlock: small ? blocking(system, columns) : [],
    forcedZero: names(zero),
    onTheWrongSide: names(wrong),
    ...optional("moved", wrong.length > 0 ? moved(equation, wrong) : undefined),
    ...optional("withoutForcedZero", some ? without(equation, zero) : undefined),
    mending: small && wrong.length === 0 ? mendings(equation) : [],
  };
  return new EquationError("equation.impossible", `no coefficients balance ${equation}: ${reason(details)}`, {
    details: { ...details },
    hint: hintFor(details, equation),
  });
}

function optional<Name extends string, T>(name: Name, value: T | undefined): { [N in Name]?: T } {
  return (value === undefined ? {} : { [name]: value }) as { [N in Name]?: T };
}

/** The error for an equation with more than one independent solution. */
export function underdetermined(equation: Equation): EquationError {
  const vectors = solutionsOf(equation.formulas, equation.reactantCount);
  let texts: string[] = [];
  try {
    texts = raysOf(vectors, DEFAULT_REACTION_LIMIT).map((ray) => String(elementaryReaction(equation, ray)));
  } catch (error) {
    // too many to list: the equation is underdetermined all the same
    if (!(error instanceof EquationError)) throw error;
  }
  const shown = texts.length > 6 ? [...texts.slice(0, 6), `... ${texts.length - 6} more`] : texts;
  const spectators = equation.spectators.map(String);
  const mixes = texts.length === 0 ? "more reactions than can be listed" : shown.join("; ");
  return new EquationError(
    "equation.underdetermined",
    `${equation} has ${vectors.length} independent solutions, so no single set of coefficients`,
    {
      details: {
        equation: String(equation),
        dimension: vectors.length,
        elementary: texts,
        ...(spectators.length > 0 && { spectators }),
      } satisfies UnderdeterminedDetails,
      hint:
        spectators.length > 0
          ? `${[...new Set(spectators)].join(", ")} on both sides; take spectators out with { spectators: "cancel" }, or write the coefficients into the equation, which then decide`
          : `it mixes ${mixes}. Balance one of these, write the coefficients into the equation, which then decide, or fix the ratio of two species in { conditions }`,
    },
  );
}

/** The error for written coefficients that do not balance. */
export function wrongCoefficients(
  equation: Equation,
  balance: (equation: Equation) => BalancedEquation,
): EquationError {
  let right: string | undefined;
  try {
    right = String(balance(equation.withoutCoefficients()));
  } catch (error) {
    if (!(error instanceof EquationError)) throw error;
  }
  const imbalance = imbalanceOf(equation);
  const list = Object.entries(imbalance).map(
    ([name, value]) => `${name} ${value.s > 0n ? "+" : ""}${value.toFraction()}`,
  );
  return new EquationError(
    "equation.wrong-coefficients",
    `the given coefficients do not balance (right minus left: ${list.join(", ")})`,
    {
      details: {
        equation: String(equation),
        imbalance: Object.fromEntries(Object.entries(imbalance).map(([name, value]) => [name, value.toFraction()])),
        ...(right !== undefined && { balanced: right }),
      } satisfies WrongCoefficientsDetails,
      hint:
        withDigitsAsCharges(equation) ??
        (right === undefined
          ? 'pass { coefficients: "ignore" } to see why it cannot be balanced'
          : `${right}; { coefficients: "ignore" } gives this`),
    },
  );
}

/** Elements among the reactants only or the products only, in alphabetical order. */
function elementsOnOneSide({ formulas, reactantCount }: Equation): string[] {
  const left = new Set(formulas.slice(0, reactantCount).flatMap((formula) => formula.elementIndices));
  const right = new Set(formulas.slice(reactantCount).flatMap((formula) => formula.elementIndices));
  return [...new Set([...left, ...right])]
    .filter((element) => !left.has(element) || !right.has(element))
    .map(balanceName)
    .sort();
}

/** Balances that alone stand in the way: without one of them every species can take part. Charge last. */
function blocking(
  { elements, matrix }: { elements: readonly number[]; matrix: readonly (readonly bigint[])[] },
  columns: number,
): string[] {
  const found = elements.filter((_, row) => {
    const rest = matrix.filter((__, at) => at !== row);
    return takingPart(rest, columns)?.every(Boolean) === true;
  });
  const names = found.filter((element) => element !== CHARGE).map(balanceName);
  return [...names.sort(), ...(found.includes(CHARGE) ? ["charge"] : [])];
}

/** The fewest species that have to change sides so that all (or, of one relation, all in it) can take part. */
function wrongSide(equation: Equation, vectors: readonly IntegerVector[], small: boolean): number[] {
  const columns = equation.formulas.length;
  if (vectors.length === 1) {
    const vector = vectors[0]!;
    const negative = range(columns).filter((at) => vector[at]! < 0);
    const positive = range(columns).filter((at) => vector[at]! > 0);
    if (negative.length === 0 || positive.length === 0) return [];
    // the relation has no direction of its own: move the smaller part, of two equal ones that without the first species
    if (negative.length !== positive.length) return negative.length < positive.length ? negative : positive;
    return negative[0]! < positive[0]! ? positive : negative;
  }
  if (vectors.length === 0 || !small) return [];
  const { matrix } = exactSystem(equation.formulas, equation.reactantCount);
  const works = (places: readonly number[]) => {
    const flipped = matrix.map((row) => row.map((value, at) => (places.includes(at) ? -value : value)));
    return takingPart(flipped, columns)?.every(Boolean) === true;
  };
  for (const one of range(columns)) if (works([one])) return [one];
  if (columns > 16) return [];
  for (const one of range(columns)) {
    for (let other = one + 1; other < columns; other++) if (works([one, other])) return [one, other];
  }
  return [];
}

/** Some of the species on the other side; those left out are dropped. */
function rearranged(equation: Equation, flipped: readonly number[], dropped: readonly number[]): Equation | undefined {
  const { formulas, reactantCount } = equation;
  const places = range(formulas.length).filter((at) => !dropped.includes(at));
  const isLeft = (at: number) => at < reactantCount !== flipped.includes(at);
  const ownFirst = [...places.filter((at) => !flipped.includes(at)), ...places.filter((at) => flipped.includes(at))];
  const left = ownFirst.filter(isLeft);
  const right = ownFirst.filter((at) => !isLeft(at));
  if (left.length === 0 || right.length === 0) return undefined;
  return new Equation(
    [...left, ...right].map((at) => formulas[at]!),
    left.length,
    equation.arrow,
    undefined,
    [],
  );
}

/** The equation after moving, balanced where that is unique. */
function moved(equation: Equation, wrong: readonly number[]): string | undefined {
  const vectors = solutionsOf(equation.formulas, equation.reactantCount);
  const idle = range(equation.formulas.length).filter((at) => vectors.every((vector) => !vector[at]));
  return balancedText(rearranged(equation, wrong, idle));
}

function without(equation: Equation, zero: readonly number[]): string | undefined {
  return balancedText(rearranged(equation, [], zero));
}

/** The reason in words, from the details. */
function reason(details: ImpossibleDetails): string {
  const parts: string[] = [];
  const { elementsOnOneSideOnly, forcedZero, onTheWrongSide, balancesThatBlock } = details;
  if (elementsOnOneSideOnly.length > 0) parts.push(`${elementsOnOneSideOnly.join(", ")} on one side only`);
  if (onTheWrongSide.length > 0) parts.push(`${onTheWrongSide.join(", ")} on the wrong side`);
  if (forcedZero.length > 0) parts.push(`${forcedZero.join(", ")} could only have the coefficient zero`);
  if (parts.length === 0 && balancesThatBlock.length > 0) {
    parts.push(`the balance of ${balancesThatBlock.join(" or of ")} cannot be met`);
  }
  if (parts.length === 0) parts.push("its balances contradict each other");
  return parts.join("; ");
}

function hintFor(details: ImpossibleDetails, equation: Equation): string | undefined {
  const hints: string[] = [];
  if (details.moved !== undefined) hints.push(`after moving: ${details.moved}`);
  if (details.withoutForcedZero !== undefined)
    hints.push(`without ${details.forcedZero.join(", ")}: ${details.withoutForcedZero}`);
  for (const { add, equation: mended } of details.mending) hints.push(`with ${list(add)}: ${mended}`);
  const charged = withDigitsAsCharges(equation);
  if (charged !== undefined) hints.push(`with { digitsBeforeSign: "charge" }: ${charged}`);
  hints.push(...equation.remarks);
  return hints.length > 0 ? hints.join("; ") : undefined;
}

// Every way an equation can be balanced: the dimension of its solutions, a basis, and all elementary reactions.

import type { Fields } from "../../foundation/argument";
import { attempt, type Result } from "../../foundation/error";
import { withPlainJSON } from "../../foundation/plain-json";
import { readable } from "../../foundation/readable";
import { Equation } from "../equation";
import { EquationError, type EquationRefusal } from "../error";
import { type IntegerVector, toBigInts } from "../kernel/nullspace";
import { extremeRays } from "../kernel/rays";
import { EQUATION, type EquationOptions, needOptions } from "../options";
import { DEFAULT_REACTION_LIMIT } from "../read/limits";
import { type EquationInput, readEquation } from "../read/parse";
import { BalancedEquation } from "./balanced";
import { solutionsOf } from "./system";

const SPACE = { ...EQUATION, limit: true } as const satisfies Fields<SpaceOptions>;

/** Options of `reactionSpace`. */
export interface SpaceOptions extends EquationOptions {
  /** Elementary reactions to list at most; 2000 unless given. */
  readonly limit?: number | undefined;
}

/** All solutions of an equation. */
export interface ReactionSpace {
  /** The equation without coefficients; its `formulas` are the order of the vectors below. */
  readonly equation: Equation;
  /** How many coefficients can be chosen freely: 0 none fits, 1 unique up to a factor. */
  readonly dimension: number;
  /** Primitive integer vectors that span all solutions, signs free; one entry per species. */
  readonly basis: bigint[][];
  /**
   * All minimal reactions, each with coprime positive coefficients; every reaction that the equation allows is a sum of
   * multiples of these. Species that sit out are left out.
   */
  readonly elementary: BalancedEquation[];
  /** The same reactions as vectors, one entry per species, zero where it sits out. */
  readonly vectors: bigint[][];
}

/**
 * All the ways to balance an equation: the dimension of the solutions, an integer basis, and every elementary reaction
 * (extreme ray of the cone of non-negative solutions).
 *
 * @param input - text, `{ reactants, products }` or an equation; given coefficients do not matter here
 * @throws {EquationError} `equation.too-many-reactions` past the limit, `equation.bad-option`; all codes of {@link parseEquation}
 * @source double description method, Motzkin, Raiffa, Thompson and Thrall 1953 (memory)
 * @category Balancing
 * @example
 * const space = reactionSpace("C + O2 -> CO + CO2");
 * space.dimension // => 2
 * space.elementary.map(String) // => ["2 C + O2 -> 2 CO", "C + O2 -> CO2"]
 */
export function reactionSpace(input: EquationInput | BalancedEquation, options: SpaceOptions = {}): ReactionSpace {
  needOptions(options, SPACE);
  const read = input instanceof BalancedEquation ? input.equation : readEquation(input, options);
  const equation = read.given === undefined ? read : read.withoutCoefficients();
  const { limit = DEFAULT_REACTION_LIMIT } = options;
  if (!Number.isSafeInteger(limit) || limit < 1) {
    throw new EquationError("equation.bad-option", "a limit is a whole number of at least one");
  }
  const vectors = solutionsOf(equation.formulas, equation.reactantCount);
  const rays = raysOf(vectors, limit);
  return withPlainJSON(
    readable({
      equation,
      dimension: vectors.length,
      basis: vectors.map((vector) => [...toBigInts(vector)]),
      elementary: rays.map((ray) => elementaryReaction(equation, ray)),
      vectors: rays.map((ray) => [...toBigInts(ray)]),
    }),
  );
}

/**
 * {@link reactionSpace}, with the outcome as data.
 *
 * @category Balancing
 * @example
 * tryReactionSpace("C + O2 -> CO + CO2").ok // => true
 */
export function tryReactionSpace(
  input: EquationInput | BalancedEquation,
  options: SpaceOptions = {},
): Result<ReactionSpace, EquationRefusal> {
  return attempt(() => reactionSpace(input, options));
}

/** The rays, or a refusal. */
export function raysOf(vectors: readonly IntegerVector[], limit: number): IntegerVector[] {
  const result = extremeRays(vectors, limit);
  if (result.complete) return result.rays;
  throw new EquationError(
    "equation.too-many-reactions",
    `more elementary reactions than can be listed (limit ${limit}, ${result.found} so far)`,
    {
      details: { dimension: vectors.length, limit, found: result.found },
      hint: "leave out species, or raise { limit }",
    },
  );
}

/** The reaction that a ray stands for, without the species that sit out. */
export function elementaryReaction(equation: Equation, ray: IntegerVector): BalancedEquation {
  const places = [...equation.formulas.keys()].filter((at) => ray[at]! > 0);
  const part = new Equation(
    places.map((at) => equation.formulas[at]!),
    places.filter((at) => at < equation.reactantCount).length,
    equation.arrow,
    undefined,
    [],
  );
  return new BalancedEquation(part, places.map((at) => ray[at]!) as IntegerVector);
}

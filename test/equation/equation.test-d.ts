import { expectTypeOf, test } from "vitest";
import {
  type BalancedEquation,
  balance,
  type EquationError,
  type ImpossibleDetails,
  oxidationStates,
  reactionSpace,
  tryBalance,
} from "../../src/equation";
import type { Formula } from "../../src/formula";
import type { PreparativeError } from "../../src/foundation";

test("balanced equations have the fixed shape", () => {
  expectTypeOf(balance("H2 + O2 -> H2O").coefficients).toEqualTypeOf<bigint[]>();
  expectTypeOf(balance("H2 + O2 -> H2O").reactants[0]!.formula).toEqualTypeOf<Formula>();
  expectTypeOf(balance("H2 + O2 -> H2O").products[0]!.coefficient).toEqualTypeOf<bigint>();
  expectTypeOf(reactionSpace("C + O2 -> CO").elementary).toEqualTypeOf<BalancedEquation[]>();
  expectTypeOf(reactionSpace("C + O2 -> CO").dimension).toEqualTypeOf<number>();
  expectTypeOf(oxidationStates("H2O").toJSON()).toEqualTypeOf<Record<string, string>>();
});

test("the outcome of a try function narrows", () => {
  const outcome = tryBalance("H2 + O2 -> H2O");
  if (outcome.ok) expectTypeOf(outcome.value).toEqualTypeOf<BalancedEquation>();
  else expectTypeOf(outcome.error).toExtend<PreparativeError>();
  expectTypeOf<EquationError>().toExtend<PreparativeError>();
});

test("the code of a refusal tells its details", () => {
  const outcome = tryBalance("C + O2 -> CO + CO2");
  if (outcome.ok) return;
  if (outcome.error.code === "equation.impossible") {
    expectTypeOf(outcome.error.details).toExtend<ImpossibleDetails>();
  }
  // @ts-expect-error a code that does not exist
  expectTypeOf(outcome.error.code === "equation.underdetermind").toBeBoolean();
});

test("a condition names two species", () => {
  // @ts-expect-error one species is no ratio
  balance("C + O2 -> CO + CO2", { conditions: [{ species: ["CO"], ratio: "1:1" }] });
});

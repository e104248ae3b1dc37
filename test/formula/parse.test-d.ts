// The shapes other rooms and programs rely on.
import { describe, expectTypeOf, it } from "vitest";
import { atomicWeight } from "../../src/element";
import {
  empiricalFormula,
  type Formula,
  type FormulaPart,
  massFractionOf,
  molarMass,
  parseFormula,
  tryParseFormula,
} from "../../src/formula";
import type { PreparativeError } from "../../src/foundation";
import type { Fraction } from "../../src/foundation/fraction";
import type { Quantity } from "../../src/quantity";

describe("types of the formula room", () => {
  it("keeps the contract", () => {
    expectTypeOf(parseFormula).parameter(0).toEqualTypeOf<string>();
    expectTypeOf(parseFormula("H2O")).toEqualTypeOf<Formula>();
    expectTypeOf<Formula["symbols"]>().toEqualTypeOf<string[]>();
    expectTypeOf<Formula["charge"]>().toEqualTypeOf<number>();
    expectTypeOf<ReturnType<Formula["count"]>>().toEqualTypeOf<Fraction>();
    expectTypeOf<Formula["parts"]>().toEqualTypeOf<FormulaPart[]>();
    expectTypeOf(molarMass).parameter(0).toEqualTypeOf<string | Formula>();
    expectTypeOf(molarMass("H2O")).toEqualTypeOf<Quantity<"molar mass">>();
    expectTypeOf(massFractionOf("H", "H2O")).toEqualTypeOf<Quantity<"number">>();
    expectTypeOf(atomicWeight("H")).toEqualTypeOf<Quantity<"molar mass">>();
    expectTypeOf(empiricalFormula({ C: "40 %" }).formula).toEqualTypeOf<Formula>();
  });

  it("narrows the outcome of a try", () => {
    const outcome = tryParseFormula("H2O");
    if (outcome.ok) expectTypeOf(outcome.value).toEqualTypeOf<Formula>();
    else expectTypeOf(outcome.error).toExtend<PreparativeError>();
  });

  it("cannot be changed", () => {
    const formula = parseFormula("H2O");
    // @ts-expect-error a formula is immutable
    formula.charge = 1;
  });
});

import { describe, expect, it } from "vitest";
import {
  balance,
  balancedEquationFromJSON,
  completeIonic,
  equationFromJSON,
  halfReactions,
  imbalance,
  integerNullspace,
  isBalanced,
  netIonic,
  overallEquation,
  oxidationStates,
  parseEquation,
  reactionSpace,
  redoxAnalysis,
  tryBalance,
} from "../../src/equation";
import { isPreparativeError } from "../../src/foundation";

/** Values that are not what a function takes, and texts that are no equations. */
const HOSTILE: readonly unknown[] = [
  undefined,
  null,
  0,
  Number.NaN,
  Number.POSITIVE_INFINITY,
  1n,
  true,
  "",
  " ",
  "\0",
  "->",
  "a".repeat(1000),
  "H2 -> __proto__",
  "\uD800 -> H2",
  [],
  {},
  [null],
  { reactants: null, products: null },
  { reactants: [null], products: [1] },
  { reactants: [], products: [] },
  { reactants: ["H2"], products: [{}] },
  { reactants: [{ formula: 1 }], products: [{ formula: "H2" }], arrow: "x" },
  () => 1,
  Symbol("x"),
  new Date(0),
];

const ENTRIES: Readonly<Record<string, (value: never) => unknown>> = {
  parseEquation,
  balance,
  reactionSpace,
  isBalanced,
  imbalance,
  oxidationStates,
  redoxAnalysis,
  halfReactions,
  netIonic,
  completeIonic,
  overallEquation,
  equationFromJSON,
  balancedEquationFromJSON,
};

describe("hostile values", () => {
  it.each(Object.entries(ENTRIES))("%s refuses them with an error of the library, never another", (name, entry) => {
    for (const value of HOSTILE) {
      let thrown: unknown;
      try {
        entry(value as never);
      } catch (error) {
        thrown = error;
      }
      expect(
        isPreparativeError(thrown),
        `${name}(${typeof value === "symbol" ? "symbol" : JSON.stringify(value, (_, v) => (typeof v === "bigint" ? `${v}n` : v))})`,
      ).toBe(true);
    }
  });

  it("leaves the scratch space clean: a valid equation right after each refusal is answered rightly", () => {
    let tested = 0;
    for (const value of HOSTILE) {
      tryBalance(value as string);
      expect(balance("C3H8 + O2 -> CO2 + H2O").coefficients).toEqual([1n, 5n, 3n, 4n]);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(25);
  });

  it.each([
    [() => balance("C + O2 -> CO + CO2", null as never), "equation.bad-option"],
    [() => halfReactions("Zn + H+ -> Zn^2+ + H2", { medium: "salty" as never }), "equation.bad-option"],
    [() => reactionSpace("C + O2 -> CO + CO2", { limit: 0 }), "equation.bad-option"],
    [() => overallEquation(["C + O2 -> CO2", "CO + O2 -> CO2"], { multipliers: [1.5, 1] }), "equation.bad-option"],
    [
      () => balance("C + O2 -> CO + CO2", { conditions: [{ species: ["CO", "CO2"], ratio: 3 as never }] }),
      "equation.bad-ratio",
    ],
    [
      () => balance("C + O2 -> CO + CO2", { conditions: [{ species: null as never, ratio: "1:1" }] }),
      "equation.bad-ratio",
    ],
    [() => integerNullspace([null] as never), "equation.bad-matrix"],
  ])("refuses bad options by code (%#)", (run, code) => {
    expect(run).toThrow(expect.objectContaining({ code }));
  });
});

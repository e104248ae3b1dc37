import { describe, expect, it } from "vitest";
import { balance, type ImpossibleDetails, reactionSpace, tryBalance } from "../../src/equation";
import { IMPOSSIBLE, SEVERAL, UNIQUE } from "../data/equations";
import { gcd, residue, speciesOf } from "../equation/composition";

// Tolerance: none, coefficients are whole numbers. Sources stand on the rows of test/data/equations.ts.

describe("worked examples with one answer", () => {
  it.each(UNIQUE)("$equation", ({ equation, coefficients }) => {
    const balanced = balance(equation);
    expect(balanced.coefficients).toEqual(coefficients.map(BigInt));
    const [reactants, products] = speciesOf(equation);
    expect(balance({ reactants, products }).coefficients).toEqual(balanced.coefficients);
    // the rows themselves, by arithmetic of the tests' own
    expect([...residue(equation, coefficients.map(BigInt)).values()].every((value) => value === 0n)).toBe(true);
    expect(gcd(coefficients.map(BigInt))).toBe(1n);
  });
});

describe("worked examples with several answers", () => {
  it.each(SEVERAL)("$equation", ({ equation, dimension, elementary }) => {
    const space = reactionSpace(equation);
    expect(space.dimension).toBe(dimension);
    expect(space.vectors.map(String).sort()).toEqual(elementary.map(({ vector }) => String(vector)).sort());
    expect(space.elementary.map(String).sort()).toEqual(elementary.map(({ text }) => text).sort());
    const outcome = tryBalance(equation);
    expect(outcome).toMatchObject({ ok: false, error: { code: "equation.underdetermined", details: { dimension } } });
    if (!outcome.ok) {
      expect((outcome.error.details as { elementary: string[] }).elementary.sort()).toEqual(
        elementary.map(({ text }) => text).sort(),
      );
    }
  });
});

describe("worked examples without an answer", () => {
  it.each(IMPOSSIBLE)("$equation", ({ equation, source: _, ...expected }) => {
    const outcome = tryBalance(equation);
    if (outcome.ok) throw new Error(`balanced as ${outcome.value}`);
    expect(outcome.error.code).toBe("equation.impossible");
    expect(outcome.error.details as unknown as ImpossibleDetails).toMatchObject(expected);
  });

  // remarks of the same worked examples
  it("says where the misplaced species belongs", () => {
    const moved = (equation: string) => {
      const outcome = tryBalance(equation);
      return outcome.ok ? "" : (outcome.error.details as unknown as ImpossibleDetails).moved;
    };
    expect(moved("MnO4- + N2H4 + OH- -> MnO2 + N2 + H2O")).toBe("4 MnO4- + 3 N2H4 -> 4 MnO2 + 3 N2 + 4 H2O + 4 OH-");
    expect(moved("GeS2 + HNO3 + H2O -> GeO2 + H2SO4 + NO")).toBe(
      "3 GeS2 + 16 HNO3 -> 3 GeO2 + 6 H2SO4 + 16 NO + 2 H2O",
    );
    expect(moved("CaCO3 + CO2 -> CaO")).toBe("CaCO3 -> CaO + CO2");
  });

  it("says what would mend it", () => {
    const mending = (equation: string) => {
      const outcome = tryBalance(equation);
      return outcome.ok ? [] : (outcome.error.details as unknown as ImpossibleDetails).mending;
    };
    // remark of the worked example: the full equation is 2,16,2,2,5,8
    expect(mending("KMnO4 + HCl -> KCl + MnCl2 + Cl2")).toEqual([
      { add: ["H2O"], equation: "2 KMnO4 + 16 HCl -> 2 KCl + 2 MnCl2 + 5 Cl2 + 8 H2O" },
    ]);
    expect(mending("C3H8 + O2 -> CO2")).toEqual([{ add: ["H2O"], equation: "C3H8 + 5 O2 -> 3 CO2 + 4 H2O" }]);
    expect(mending("CaCO3 + HCl -> CaCl2 + H2O")).toContainEqual({
      add: ["CO2"],
      equation: "CaCO3 + 2 HCl -> CaCl2 + H2O + CO2",
    });
    expect(mending("I- + H2O2 -> I2 + H2O")).toContainEqual({
      add: ["H+"],
      equation: "2 I- + H2O2 + 2 H+ -> I2 + 2 H2O",
    });
    expect(mending("P4 + OH- -> H2PO2- + PH3").map(({ add }) => add)).toEqual([["H2O"]]);
    expect(mending("MnO4- + Fe^2+ -> Mn^2+ + Fe^3+")).toContainEqual({
      add: ["H2O", "H+"],
      equation: "MnO4- + 5 Fe^2+ + 8 H+ -> Mn^2+ + 5 Fe^3+ + 4 H2O",
    });
  });
});

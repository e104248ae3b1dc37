// Compositions in components of the beaker, by counting ions.
import { describe, expect, it } from "vitest";
import { parseFormula } from "../../../src/formula";
import { componentsOf, isKnown, ratio } from "../../../src/preparation/feasibility/beaker";

const of = (formula: string) => componentsOf(parseFormula(formula))!;

describe("a composition", () => {
  it("goes into another so many times, or not", () => {
    expect(ratio(of("Na2SO4"), of("Na2SO4"))).toBe(1);
    expect(ratio(new Map([...of("CaCO3")].map(([key, n]) => [key, 2 * n])), of("CaCO3"))).toBe(2);
    expect(ratio(of("NaCl"), of("KCl"))).toBeUndefined();
    expect(ratio(of("Na2SO4"), of("NaCl"))).toBeUndefined();
    // sodium and hydrogencarbonate: 1 to 1, and 2 to 1 in soda
    expect(ratio(of("Na2CO3"), of("NaHCO3"))).toBeUndefined();
    expect(ratio(new Map(), of("NaCl"))).toBeUndefined();
    expect(ratio(new Map(), new Map())).toBeUndefined();
    expect(ratio(new Map([...of("NaCl")].map(([key, n]) => [key, -n])), of("NaCl"))).toBeUndefined();
  });

  it("does not ask for its crystal water", () => {
    expect(ratio(of("CuSO4·5H2O"), of("CuSO4"))).toBe(1);
  });

  it.each([
    ["NaCl", true],
    ["[Co(NH3)6]Cl3", true],
    ["KMnO4", true],
    ["C6H12O6", false],
    ["Zn", false],
    ["He", false],
  ])("of %s is one of the tables: %s", (formula, is) => {
    expect(isKnown(parseFormula(formula))).toBe(is);
  });
});

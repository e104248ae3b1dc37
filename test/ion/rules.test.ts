// The solubility rules, pair by pair, as general chemistry prints them (OpenStax Chemistry 2e, Table 4.1); what dissolves slightly
// is common practice.
import { describe, expect, it } from "vitest";
import { ruleFor } from "../../src/ion/internal";
import { readNotation, textOf } from "../../src/ion/notation";

describe("what the rules say", () => {
  it.each([
    ["Na+", "Cl-", "soluble"],
    ["Ag+", "Cl-", "insoluble"],
    ["Hg2^2+", "Cl-", "insoluble"],
    ["Pb^2+", "Cl-", "slightly soluble"],
    ["Ag+", "I-", "insoluble"],
    ["Ag+", "NO3-", "soluble"],
    ["Cu^2+", "SO4^2-", "soluble"],
    ["Ba^2+", "SO4^2-", "insoluble"],
    ["Sr^2+", "SO4^2-", "insoluble"],
    ["Pb^2+", "SO4^2-", "insoluble"],
    ["Ca^2+", "SO4^2-", "slightly soluble"],
    ["Ag+", "SO4^2-", "slightly soluble"],
    ["Na+", "CO3^2-", "soluble"],
    ["NH4+", "CO3^2-", "soluble"],
    ["Ca^2+", "CO3^2-", "insoluble"],
    ["K+", "CrO4^2-", "soluble"],
    ["Ba^2+", "CrO4^2-", "insoluble"],
    ["NH4+", "PO4^3-", "soluble"],
    ["Ca^2+", "PO4^3-", "insoluble"],
    ["K+", "S^2-", "soluble"],
    ["Fe^2+", "S^2-", "insoluble"],
    ["Na+", "OH-", "soluble"],
    ["Ba^2+", "OH-", "soluble"],
    ["Ca^2+", "OH-", "slightly soluble"],
    ["Cu^2+", "OH-", "insoluble"],
    // the salts of alkali metals that do not dissolve well (general chemistry, from memory)
    ["K+", "[PtCl6]^2-", "slightly soluble"],
    ["Cs+", "[PtCl6]^2-", "insoluble"],
    ["Na+", "[PtCl6]^2-", "soluble"],
    ["K+", "HC4H4O6-", "slightly soluble"],
    ["NH4+", "VO3-", "slightly soluble"],
  ])("of %s with %s: %s", (cation, anion, expected) => {
    expect(ruleFor([cation], [anion])?.class).toBe(expected);
  });

  it("of several ions is what they say of the worst pair, in any order", () => {
    for (const [cations, anions, expected] of [
      [["K+", "Al^3+"], ["SO4^2-"], "soluble"],
      [["Na+", "Ag+"], ["Cl-"], "insoluble"],
      [["Pb^2+"], ["OH-", "CO3^2-"], "insoluble"],
      [["Na+", "Ca^2+"], ["SO4^2-"], "slightly soluble"],
    ] as const) {
      expect(ruleFor(cations, anions)?.class).toBe(expected);
      expect(ruleFor([...cations].reverse(), [...anions].reverse())).toEqual(ruleFor(cations, anions));
    }
  });

  it("is nothing of ions that no rule speaks of, unless another pair is insoluble", () => {
    expect(ruleFor(["Xe+"], ["Zz-"])).toBeUndefined();
    expect(ruleFor(["Cu^2+"], ["SO4^2-", "Zz-"])).toBeUndefined();
    expect(ruleFor(["Ba^2+"], ["SO4^2-", "Zz-"])?.class).toBe("insoluble");
  });
});

describe("the parts of a formula as text", () => {
  it.each(["CuSO4", "CuSO4.H2O", "ZnCO3.Zn(OH)2.H2O"])("of %s give it again", (formula) => {
    expect(textOf(readNotation(formula))).toBe(formula);
  });
});

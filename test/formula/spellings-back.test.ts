// Spellings that were printed so that they read back as something else, or were read although they make no sense.
import { describe, expect, it } from "vitest";
import { balance, parseEquation } from "../../src/equation";
import { parseFormula, tryParseFormula } from "../../src/formula";
import { quantity } from "../../src/quantity";

describe("what is printed", () => {
  it("reads back with a nuclide alone in square brackets", () => {
    for (const text of ["[[13C]]2", "[[13C]]2O", "[[18O]]", "[[13C]H4]2", "[13C]O2"]) {
      const formula = parseFormula(text);
      const unicode = formula.toUnicode();
      expect(parseFormula(unicode).toString(), unicode).toBe(formula.toString());
      expect(parseFormula(unicode).toUnicode()).toBe(unicode);
    }
  });

  it("is no longer than what is read, for a value that towers over its uncertainty", () => {
    for (const text of ["1e299 mol/L ± 5%", "1e70 ± 5 g", "1e299 ± 1e-3 g"] as const) {
      const printed = quantity(text as "1e70 ± 5 g").toString();
      expect(printed.length, text).toBeLessThan(80);
      expect(quantity(printed as "1 g").toString(), text).toBe(printed);
    }
    expect(quantity("1e40 ± 5 g").toString()).toContain("± 5.0");
  });
});

describe("what is read", () => {
  it("has one charge", () => {
    for (const text of ["F1/2⁺(2+)", "Fe⁺(2+)", "SO4²⁻[2-]"]) {
      const outcome = tryParseFormula(text);
      expect(outcome.ok ? text : outcome.error.code).toBe("formula.misplaced-charge");
    }
  });

  it("takes a decimal without its zero in front of a formula for a coefficient", () => {
    expect(parseEquation(".5 P4 + 2.5 O2 -> P2O5").toString()).toBe(
      parseEquation("0.5 P4 + 2.5 O2 -> P2O5").toString(),
    );
    expect(balance("H2 + .5 O2 -> H2O").toString()).toBe("2 H2 + O2 -> 2 H2O");
  });
});

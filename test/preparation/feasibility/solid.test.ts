// Solids that do not react as written: coats and fired oxides (common practice).
import { doesItGo } from "preparative";
import { describe, expect, it } from "vitest";

const codes = (equation: string, product: string): string[] =>
  doesItGo({ equation, product }).reasons.map(({ code }) => code);

describe("a coat", () => {
  it("grows where base and salt are both insoluble", () => {
    expect(codes("CaCO3 + H2SO4 + H2O -> CaSO4·2H2O + CO2", "CaSO4·2H2O")).toContain("coats");
    expect(codes("BaCO3 + H2SO4 -> BaSO4 + H2O + CO2", "BaSO4")).toContain("coats");
    expect(codes("CaCO3 + H2C2O4 -> CaC2O4 + H2O + CO2", "CaC2O4")).toContain("coats");
  });

  it("does not where the salt dissolves, or the base does", () => {
    expect(codes("CaCO3 + HCl -> CaCl2 + H2O + CO2", "CaCl2")).not.toContain("coats");
    expect(codes("ZnO + H2SO4 -> ZnSO4 + H2O", "ZnSO4")).not.toContain("coats");
    expect(codes("NaOH + H2SO4 -> Na2SO4 + H2O", "Na2SO4")).not.toContain("coats");
  });
});

describe("a fired oxide", () => {
  it("stays in acids that do not take it, dissolves slowly in those that do", () => {
    expect(doesItGo({ equation: "Fe2O3 + CH3COOH -> Fe(CH3COO)3 + H2O", product: "Fe(CH3COO)3" }).verdict).toBe(
      "does not go",
    );
    const strong = doesItGo({ equation: "Fe2O3 + HCl -> FeCl3 + H2O", product: "FeCl3" });
    expect(strong.verdict).toBe("goes");
    expect(strong.reasons.map(({ code }) => code)).toContain("fired-oxide");
  });

  it("is no hydroxide: that dissolves", () => {
    expect(codes("Fe(OH)3 + HCl -> FeCl3 + H2O", "FeCl3")).not.toContain("fired-oxide");
  });
});

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
  it("stays in lye as well; of silica it depends on the form", () => {
    // water glass is boiled from silica gel or under pressure from sand (from memory); calcined alumina stays in lye
    const silica = doesItGo({ equation: "SiO2 + NaOH -> Na2SiO3 + H2O", product: "Na2SiO3" });
    expect(silica.verdict).toBe("unknown");
    expect(silica.reasons[0]!.text).toMatch(/^missing: which form/);
    const alumina = doesItGo({ equation: "Al2O3 + NaOH + H2O -> Na[Al(OH)4]", product: "Na[Al(OH)4]" });
    expect(alumina.verdict).toBe("does not go");
    expect(codes("Al(OH)3 + NaOH -> Na[Al(OH)4]", "Na[Al(OH)4]")).not.toContain("fired-oxide");
  });

  it("stays in acids that do not take it, dissolves slowly in those that do", () => {
    expect(doesItGo({ equation: "Fe2O3 + CH3COOH -> Fe(CH3COO)3 + H2O", product: "Fe(CH3COO)3" }).verdict).toBe(
      "does not go",
    );
    const strong = doesItGo({ equation: "Fe2O3 + HCl -> FeCl3 + H2O", product: "FeCl3" });
    expect(strong.verdict).toBe("goes");
    // what the equilibrium says of the salt comes after it
    expect(strong.reasons.map(({ code }) => code)).toEqual(["fired-oxide", "equilibrium"]);
  });

  it("is no hydroxide: that dissolves", () => {
    expect(codes("Fe(OH)3 + HCl -> FeCl3 + H2O", "FeCl3")).not.toContain("fired-oxide");
  });
});

import { describe, expect, it } from "vitest";
import { shopMaterial, tryShopMaterial } from "../../src/substance";

describe("shop names", () => {
  // Trap 1 of the trade: one shop name, several hydrates (common practice, no source).
  it.each([
    ["washing soda", ["Na2CO3·10H2O", "Na2CO3·H2O", "Na2CO3"]],
    ["Epsom salts", ["MgSO4·7H2O", "MgSO4·H2O"]],
    ["garden zinc sulfate", ["ZnSO4·H2O", "ZnSO4·7H2O"]],
    ["Glauber's salt", ["Na2SO4", "Na2SO4·10H2O"]],
    ["borax", ["Na2B4O7·10H2O", "Na2B4O7·5H2O"]],
    ["citric acid", ["C6H8O7", "C6H8O7·H2O"]],
  ])("gives every form sold as %s", (name, formulas) => {
    expect(shopMaterial(name).candidates.map((one) => one.formula)).toEqual(formulas);
    expect(shopMaterial(name).ambiguous).toBe(true);
  });

  it("gives both metals that are sold as moss killer", () => {
    const formulas = shopMaterial("moss killer").candidates.map((one) => one.formula);
    for (const formula of ["FeSO4·7H2O", "FeSO4·H2O", "ZnSO4·H2O", "ZnSO4·7H2O"]) expect(formulas).toContain(formula);
  });

  it("turns grams per 100 mL into g/L and leaves percent by mass alone", () => {
    expect(shopMaterial("white vinegar").candidates[0]?.assay).toEqual({ lower: "40 g/L", upper: "60 g/L" });
    expect(shopMaterial("muriatic acid").candidates[0]?.assay).toEqual({ lower: "28 %", upper: "33 %" });
  });

  it("reads a capital, a dash or an apostrophe alike", () => {
    expect(shopMaterial("EPSOM SALT").candidates).toEqual(shopMaterial("epsom-salt").candidates);
    expect(shopMaterial("Glauber’s salt").candidates).toEqual(shopMaterial("glaubers salt").candidates);
  });

  it("refuses an unknown name and gives the nearest ones", () => {
    const outcome = tryShopMaterial("wasing soda");
    expect(outcome.ok).toBe(false);
    if (outcome.ok) return;
    expect(outcome.error.code).toBe("substance.unknown-name");
    expect(outcome.error.hint).toContain("washing soda");
  });
});

// Products that stay dissolved: the solid must go, the acid must let go of its hydrogen.
import { doesItGo } from "preparative";
import { describe, expect, it } from "vitest";

const ask = (equation: string, product: string) => doesItGo({ equation, product });

describe("a product in solution", () => {
  it("comes from a carbonate and an acid stronger than carbonic, pKa 6.35", () => {
    for (const [acid, salt] of [
      ["HCl", "CaCl2"],
      ["CH3COOH", "Ca(CH3COO)2"],
      ["HCOOH", "Ca(HCOO)2"],
    ])
      expect(ask(`CaCO3 + ${acid} -> ${salt} + CO2 + H2O`, salt!).verdict, acid).toBe("goes");
  });

  it("does not come from chalk and boric acid, pKa 9.24", () => {
    const f = ask("CaCO3 + H3BO3 -> Ca(BO2)2 + CO2 + H2O", "Ca(BO2)2");
    expect(f.verdict).not.toBe("goes");
  });

  it("does not come from an insoluble salt and an acid as strong as its own", () => {
    // pKsp of barium sulfate 9.97, pKa of hydrogensulfate 1.99: in 2 mol/kg of acid some 1e-4 mol/kg
    const f = ask("BaSO4 + HNO3 -> Ba(NO3)2 + H2SO4", "Ba(NO3)2");
    expect(f.verdict).toBe("does not go");
    expect(f.share!.value.toNumber()).toBeLessThan(0.002);
    expect(f.reasons.map(({ code }) => code)).toContain("stays");
  });

  it("needs an acid that gives its hydrogen up: acetic acid frees no hydrochloric", () => {
    const f = ask("NaCl + CH3COOH -> CH3COONa + HCl", "CH3COONa");
    expect(f.reasons[0]!.code).toBe("acid-strength");
    // 1 mol/kg of acetic acid, pKa 4.76: 0.4 % of it are acetate
    expect(f.reasons[0]!.numbers[0]!.value.toNumber()).toBeLessThan(0.01);
    expect(ask("CH3COONa + HCl -> CH3COOH + NaCl", "CH3COOH").verdict).not.toBe("does not go");
  });

  it("need not crystallise where it is distilled: ammonia from lime, acetic acid from sulfuric", () => {
    expect(ask("NH4Cl + Ca(OH)2 -> NH3 + CaCl2 + H2O", "NH3").verdict).toBe("goes");
    expect(ask("CH3COONa + H2SO4 -> CH3COOH + Na2SO4", "CH3COOH").verdict).toBe("goes");
  });

  it("comes from sulfuric acid where the weaker volatile one is boiled off", () => {
    expect(ask("CuCl2 + H2SO4 -> CuSO4 + HCl", "CuSO4").verdict).not.toBe("does not go");
    // of an alkali chloride the acid sulfate is left: what it still has of hydrogen goes at red heat (the salt cake process)
    expect(ask("NaCl + H2SO4 -> NaHSO4 + HCl", "NaHSO4").verdict).not.toBe("does not go");
    expect(ask("NaCl + H2SO4 -> Na2SO4 + HCl", "Na2SO4").reasons[0]!.code).toBe("acid-strength");
  });

  it("is asked after the equation where electrons move", () => {
    const materials = [
      { name: "copperas", form: "FeSO4·7H2O" },
      { name: "peroxide", form: "H2O2", strength: "3 %" },
      { name: "acid", form: "H2SO4", strength: "20 %" },
    ] as const;
    const [equation, product] = ["FeSO4 + H2O2 + H2SO4 -> Fe2(SO4)3 + H2O", "Fe2(SO4)3"];
    expect(doesItGo({ equation, product, materials }).verdict).toBe("goes");
  });
});

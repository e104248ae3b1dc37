// Silica from water glass: a gel that stiffens, not grains that settle.
import { describe, expect, it } from "vitest";
import { aqueousComposition } from "../../src/aqueous";
import { doesItGo, planPreparation } from "../../src/preparation";
import { benchSheet } from "../../src/sheet";

describe("silica in water", () => {
  it("dissolves by 10^-2.71 mol/kg in neutral water, and much more in lye", () => {
    // USGS: SiO2(a) + 2 H2O = H4SiO4, log K -2.71, that is 1.95 mmol/kg or 117 mg; 100 to 140 mg/L is the figure of water treatment (from memory)
    const water = aqueousComposition({ water: "1 kg", dissolved: [{ formula: "SiO2", amount: "10 mmol" }] });
    const left = water.solids.find(({ formula }) => formula === "SiO2")!;
    expect(10 - left.amount.toNumber("mmol")).toBeCloseTo(1.95, 1);
    const lye = aqueousComposition({
      water: "1 kg",
      dissolved: [
        { formula: "SiO2", amount: "10 mmol" },
        { formula: "NaOH", amount: "30 mmol" },
      ],
    });
    expect(lye.solids).toEqual([]);
  });

  it.each([
    ["SiO2", "Na2SiO3 + HCl -> SiO2 + NaCl + H2O"],
    ["H2SiO3", "Na2SiO3 + HCl -> H2SiO3 + NaCl"],
    ["H4SiO4", "Na2SiO3 + HCl + H2O -> H4SiO4 + NaCl"],
  ])("%s precipitates where water glass meets acid", (product, equation) => {
    const { verdict } = doesItGo({ equation, product });
    expect(verdict).toBe("goes");
  });

  it("sets to a jelly, which is broken up and dried warm (common practice, no source)", () => {
    const plan = planPreparation({
      equation: "Na2SiO3 + HCl -> SiO2 + NaCl + H2O",
      product: "SiO2",
      materials: [
        { name: "water glass", form: "Na2SiO3", strength: "10 %" },
        { name: "acid", form: "HCl", strength: "10 %" },
      ],
      scale: { material: "water glass", portion: "200 g" },
    });
    const sheet = benchSheet(plan, { format: "text" }).replace(/\s+/g, " ");
    expect(sheet).toContain("sets to a jelly");
    expect(sheet).not.toContain("the grains grow");
    // 20.0 g of Na2SiO3 / 122.06 g/mol × 60.08 g/mol
    expect(plan.product.theoreticalYield.toNumber("g")).toBeCloseTo(9.84, 2);
    expect(plan.drying.upTo!.toNumber("°C")).toBe(110);
  });
});

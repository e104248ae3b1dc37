// Both sides of a doubtful constant are told, in the verdict and in the step that looks at the liquor.
import { describe, expect, it } from "vitest";
import { doesItGo, planPreparation } from "../../../src/preparation";

describe("the doubt of a constant", () => {
  it("gives the share with the constant to either side: magnesium hydroxide by ammonia", () => {
    const { share, reasons } = doesItGo({ equation: "MgCl2 + NH3 + H2O -> Mg(OH)2 + NH4Cl", product: "Mg(OH)2" });
    const doubt = reasons.find(({ code }) => code === "doubt")!;
    const [least, most] = doubt.numbers.map((one) => one.value.toNumber());
    expect(least).toBeLessThan(share!.value.toNumber());
    expect(most).toBeGreaterThan(share!.value.toNumber());
    expect(doubt.text).toMatch(/within the uncertainty of its constant/);
  });

  it("is silent where nearly all stands anyhow: barium sulfate", () => {
    const { reasons } = doesItGo({ equation: "BaCl2 + Na2SO4 -> BaSO4 + NaCl", product: "BaSO4" });
    expect(reasons.map(({ code }) => code)).not.toContain("doubt");
  });

  // Ammonia precipitates the less of it the thinner the solutions are. Equal volumes of 0.001 mol/L:
  // [OH-] of 0.0005 mol/L ammonia is less than (1.8e-5 × 0.0005)^½ = 9.5e-5, the product less than 0.0005 × 9e-9 = 4.5e-12, below
  // any constant of it (5.6e-12 aged, 10 times more fresh: handbooks); of 0.02 mol/L 0.01 × 1.8e-7 = 1.8e-9, above.
  it("leaves the verdict open where either side of the constant decides, and not where both refuse", () => {
    const thin = (strength: "1 mol/L" | "0.02 mol/L" | "0.001 mol/L") =>
      doesItGo({
        equation: "MgCl2 + NH3 + H2O -> Mg(OH)2 + NH4Cl",
        product: "Mg(OH)2",
        materials: [
          { name: "magnesium chloride", form: "MgCl2", strength },
          { name: "ammonia", form: "NH3", strength },
        ],
      });
    const open = thin("0.02 mol/L");
    expect(open.verdict).toBe("unknown");
    expect(open.reasons.at(-1)!.text).toMatch(/^missing: a surer solubility product of Mg\(OH\)₂/);
    expect(thin("1 mol/L").verdict).toBe("goes in part");
    const none = thin("0.001 mol/L");
    expect(none.verdict).toBe("does not go");
    expect(none.reasons.map(({ code }) => code)).not.toContain("missing");
  });

  it("stands in the step that tests the liquor, where a balance shows it: lead iodide", () => {
    const plan = planPreparation({
      equation: "Pb(NO3)2 + KI -> PbI2 + KNO3",
      product: "PbI2",
      materials: [
        { name: "iodide", form: "KI" },
        { name: "lead nitrate", form: "Pb(NO3)2" },
      ],
      scale: { material: "lead nitrate", portion: "165.6 g" },
    });
    const found = /keeps ([\d.]+) g of the product \(([\d.]+) g to ([\d.]+) g by/.exec(
      plan.steps.find(({ text }) => /keeps .* of the product/.test(text))!.text,
    )!;
    const [kept, least, most] = found.slice(1).map(Number);
    expect(least!).toBeLessThan(kept!);
    expect(most!).toBeGreaterThan(kept!);
  });
});

// What the fire does to the books: how hot the vessel is, and what leaves it.
import { type PlanRequest, planPreparation } from "preparative";
import { describe, expect, it } from "vitest";

const fired = (equation: string, product: string, form: string, more: Partial<PlanRequest> = {}) => {
  const plan = planPreparation({
    equation,
    product,
    materials: [{ name: "powder", form }],
    scale: { material: "powder", portion: "100.0 g" },
    ...more,
  });
  const at = plan.steps.findIndex(({ operation }) => operation === "fire");
  return { plan, step: plan.steps[at]!, next: plan.steps[at + 1]! };
};

describe("a firing", () => {
  // 100.0 g / 100.09 g/mol: 0.9991 mol of lime, 56.03 g, and of carbon dioxide, 43.97 g
  it("is as hot in the books as the step says, and cools", () => {
    const { step, next } = fired("CaCO3 -> CaO + CO2", "CaO", "CaCO3");
    expect(step.text).toContain("Heat slowly to 900 °C");
    expect([step.before, step.after, next.after].map(({ temperature }) => temperature.in("°C").toNumber())).toEqual([
      20, 900, 20,
    ]);
    expect(step.after.mass.in("g").toNumber()).toBeCloseTo(56.03, 1);
    expect(step.after.solids.map(({ formula, origin }) => [formula, origin])).toEqual([["CaO", "left by heat"]]);
  });

  // 100.0 g / 58.32 g/mol × 18.015 g/mol: 30.89 g of steam, 69.11 g of magnesia
  it("leaves no water that the heat drives out", () => {
    const { step } = fired("Mg(OH)2 -> MgO + H2O", "MgO", "Mg(OH)2");
    expect(step.after.water.in("g").toNumber()).toBe(0);
    expect(step.after.mass.in("g").toNumber()).toBeCloseTo(69.11, 1);
  });

  // neither book nor table here tells how hot lanthanum carbonate must be
  it("says that it is not known how hot, and books no heat", () => {
    const { plan, step } = fired("La2(CO3)3 -> La2O3 + CO2", "La2O3", "La2(CO3)3");
    expect(plan.unknown).toContain("firing temperature of La₂O₃");
    expect(step.text).toMatch(/^Heat slowly \(how hot is not known/);
    expect(step.target).toBeUndefined();
    expect(step.after.temperature.in("°C").toNumber()).toBe(20);
  });
});

const checksOf = (request: PlanRequest): string[] => planPreparation(request).checks.map(({ text }) => text);

describe("what is watched", () => {
  // 100.0 g / 100.09 g/mol × 56.08 g/mol = 56.0 g
  it("in the fire is the mass that is left", () => {
    expect(fired("CaCO3 -> CaO + CO2", "CaO", "CaCO3").plan.checks.map(({ text }) => text)).toEqual([
      "it is done when 100 g has fallen to 56.0 g of CaO (loses 44.0 %) and stays there",
    ]);
  });

  // 50 g / 159.6 × 249.68 = 78.2 g; blue vitriol is dry from 200 °C on (handbooks)
  it("of a form that water does not give is where it is had", () => {
    const checks = checksOf({
      equation: "CuO + H2SO4 -> CuSO4 + H2O",
      product: "CuSO4",
      materials: [
        { name: "oxide", form: "CuO" },
        { name: "acid", form: "H2SO4", strength: "20 %" },
      ],
      scale: { product: "50 g" },
    });
    expect(checks[0]).toBe(
      "at 20 °C water gives CuSO₄·5H₂O, not CuSO₄: all masses here are of that, 78.2 g at 100 % yield; CuSO₄ is what heat leaves of it from 200 °C on",
    );
  });

  // 17.048 g / 170.48 = 0.1000 mol takes 6.355 g of copper; 7.6 or 7.7 g are weighed. What is not in excess is not named.
  it("of a redox reaction is the metal that is left, and nothing where none is", () => {
    const copper = (excess: "20 %" | "0 %") =>
      checksOf({
        equation: "Cu + CuCl2 -> CuCl",
        product: "CuCl",
        materials: [
          { name: "copper", form: "Cu", excess },
          { name: "chloride", form: "CuCl2·2H2O" },
        ],
        scale: { material: "chloride", portion: "17.048 g" },
        readability: { mass: "0.001 g" },
      });
    expect(copper("20 %")).toEqual(["1.27 g of copper is left over: it is filtered or lifted off"]);
    expect(copper("0 %")).toEqual([]);
  });
});

// Salts that no bench gets as a solid: hydrogencarbonates and hydrogensulfites of two-valued metals are solutions, and a solution of
// sodium hydrogensulfite crystallises as the disulfite (common practice, no source).
import { doesItGo, type PlanRequest, planPreparation } from "preparative";
import { describe, expect, it } from "vitest";

const request = (equation: string, product: string, base: string, gas: string): PlanRequest => ({
  equation,
  product,
  materials: [
    { name: "base", form: base },
    { name: "gas", form: gas },
  ],
  scale: { material: "base", portion: "10.0 g" },
});

const CASES = [
  ["NaOH + SO2 -> NaHSO3", "NaHSO3", "NaOH", "SO2", "the disulfite"],
  ["Mg(OH)2 + CO2 -> Mg(HCO3)2", "Mg(HCO3)2", "Mg(OH)2", "CO2", "the carbonate precipitates"],
  ["Ca(OH)2 + SO2 -> Ca(HSO3)2", "Ca(HSO3)2", "Ca(OH)2", "SO2", "the sulfite precipitates"],
] as const;

describe("a salt that is known as a solution only", () => {
  it.each(CASES)(
    "is kept as its liquor, and neither boiled down nor dried: %s",
    (equation, product, base, gas, why) => {
      const asked = request(equation, product, base, gas);
      const { steps } = planPreparation(asked);
      expect(steps.map(({ operation }) => operation)).not.toContain("concentrate");
      expect(steps.map(({ operation }) => operation)).not.toContain("dry");
      expect(steps.at(-1)!.text).toContain(why);
      expect(doesItGo(asked).reasons.find(({ code }) => code === "only-in-solution")?.text).toContain(why);
    },
  );

  it("is not what an alkali metal makes of carbon dioxide: baking soda crystallises", () => {
    const asked = request("NaOH + CO2 -> NaHCO3", "NaHCO3", "NaOH", "CO2");
    expect(planPreparation(asked).steps.map(({ operation }) => operation)).toContain("dry");
    expect(doesItGo(asked).reasons.map(({ code }) => code)).not.toContain("only-in-solution");
  });
});

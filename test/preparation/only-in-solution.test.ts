// Salts that no bench gets as a solid, or only as a syrup: hydrogencarbonates and hydrogensulfites of two-valued metals are solutions, and a solution of
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

  // Syrups and gums: common practice, no source
  it.each([
    ["Zn + HCl -> ZnCl2 + H2", "ZnCl2", "Zn", "thickens to a syrup"],
    ["Fe2O3 + HNO3 -> Fe(NO3)3 + H2O", "Fe(NO3)3", "Fe2O3", undefined],
    ["KOH + CH3COOH -> KCH3COO + H2O", "KCH3COO", "KOH", "thickens to a syrup"],
    ["Al + HCl -> AlCl3 + H2", "AlCl3", "Al", "turns basic"],
  ] as const)("is kept as its liquor where it gives a syrup: %s", (equation, product, base, why) => {
    const acid = /(HCl|HNO3|CH3COOH)/.exec(equation)![0];
    const asked = {
      equation,
      product,
      materials: [
        { name: "base", form: base },
        { name: "acid", form: acid, strength: "20 %" as const },
      ],
      scale: { material: "base", portion: "10.0 g" as const },
    };
    const last = planPreparation(asked).steps.at(-1)!.text;
    if (why === undefined) expect(last).toMatch(/^Weigh the dry/);
    else expect(last).toContain(why);
    // crystals of it may be asked for
    expect(planPreparation({ ...asked, isolate: true }).steps.at(-1)!.text).toMatch(/^Weigh the dry/);
  });

  it.each([
    ["Al + NaOH + H2O -> Na[Al(OH)4] + H2", "Na[Al(OH)4]", "Al"],
    ["ZnO + NaOH + H2O -> Na2[Zn(OH)4]", "Na2[Zn(OH)4]", "ZnO"],
  ])("is kept in its lye: %s", (equation, product, form) => {
    const materials = [form, "NaOH"].map((one) => ({ name: one, form: one }));
    const { steps } = planPreparation({ equation, product, materials, scale: { material: form, portion: "5.0 g" } });
    expect(steps.at(-1)!.text).toMatch(/used as it is: nothing is boiled down .*used in its lye/);
  });

  it("is not what an alkali metal makes of carbon dioxide: baking soda crystallises", () => {
    const asked = request("NaOH + CO2 -> NaHCO3", "NaHCO3", "NaOH", "CO2");
    expect(planPreparation(asked).steps.map(({ operation }) => operation)).toContain("dry");
    expect(doesItGo(asked).reasons.map(({ code }) => code)).not.toContain("only-in-solution");
  });
});

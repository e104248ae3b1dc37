// What heat does, by the table of thermal steps.
import { doesItGo, tryPlanPreparation } from "preparative";
import { describe, expect, it } from "vitest";

describe("a dry solid", () => {
  it("gives what its steps give, with the heat from which it does", () => {
    const lime = doesItGo({ equation: "CaCO3 -> CaO + CO2", product: "CaO" });
    expect(lime.verdict).toBe("goes");
    expect(lime.reasons[0]!.code).toBe("thermal");
    // lime burns from some 700 to 900 °C
    expect(lime.reasons[0]!.numbers[0]!.in("°C").toNumber()).toBeGreaterThan(600);
    expect(doesItGo({ equation: "NaHCO3 -> Na2CO3 + CO2 + H2O", product: "Na2CO3" }).verdict).toBe("goes");
    expect(doesItGo({ equation: "Cu2(OH)2CO3 -> CuO + CO2 + H2O", product: "CuO" }).verdict).toBe("goes");
  });

  it("is a hydrate on the way only until it has lost its water: the heat is that of the step that ends in the salt", () => {
    const from = (equation: string, product: string) =>
      doesItGo({ equation, product }).reasons[0]!.numbers[0]!.in("°C").toNumber();
    // blue vitriol: trihydrate from 63, monohydrate from 109, anhydrous from some 200 °C (Handbook, from memory)
    expect(from("CuSO4·5H2O -> CuSO4·3H2O + H2O", "CuSO4·3H2O")).toBe(63);
    expect(from("CuSO4·5H2O -> CuSO4 + H2O", "CuSO4")).toBeGreaterThanOrEqual(200);
    expect(from("CaSO4·2H2O -> CaSO4·0.5H2O + H2O", "CaSO4·0.5H2O")).toBeLessThan(
      from("CaSO4·2H2O -> CaSO4 + H2O", "CaSO4"),
    );
  });

  it("does not go where the last water leaves with the acid", () => {
    // magnesium chloride hydrolyses before it is dry: every textbook, from memory
    const bischofite = doesItGo({ equation: "MgCl2·6H2O -> MgCl2 + H2O", product: "MgCl2" });
    expect(bischofite.verdict).toBe("does not go");
    expect(bischofite.reasons[0]!.text).toMatch(/never gives MgCl₂.*MgO.*HCl/);
    expect(doesItGo({ equation: "CaCl2·6H2O -> CaCl2 + H2O", product: "CaCl2" }).verdict).toBe("goes");
  });

  it("does not go where no kiln is hot enough, by the heat that a mole of gas asks for", () => {
    // NBS: Na2SO4 -1387, Na2O -414, SO3 -396 kJ/mol: 577 kJ to the gas; the rule of Le Chatelier and Forcrand
    for (const [equation, product] of [
      ["Na2SO4 -> Na2O + SO3", "Na2O"],
      ["NaCl -> Na + Cl2", "Na"],
      ["Fe2O3 -> Fe + O2", "Fe"],
    ] as const) {
      const f = doesItGo({ equation, product, acknowledge: ["poison-gas"] });
      expect(f.verdict, equation).toBe("does not go");
      expect(f.reasons[0]!.numbers[1]!.in("°C").toNumber()).toBeGreaterThan(1500);
    }
    // limestone and blue vitriol are burnt in every kiln
    expect(doesItGo({ equation: "CaCO3 -> CaO + CO2", product: "CaO" }).verdict).toBe("goes");
    expect(doesItGo({ equation: "CuSO4 -> CuO + SO3", product: "CuO" }).verdict).toBe("goes");
  });

  it("is burnt, not stirred, with charcoal; metals that burn and hydrogen have no procedure", () => {
    const plan = (equation: string, product: string, ...forms: readonly string[]) =>
      tryPlanPreparation({
        equation,
        product,
        materials: forms.map((form) => ({ name: `${form} jar`, form })),
        scale: { product: "10 g" },
        acknowledge: ["poison-gas"],
      });
    const smelted = plan("CuO + C -> Cu + CO2", "Cu", "CuO", "C");
    expect(smelted.ok && smelted.value.steps.some(({ operation }) => operation === "fire")).toBe(true);
    for (const refused of [
      plan("CuO + H2 -> Cu + H2O", "Cu", "CuO"),
      plan("CuO + H2 -> Cu + H2O", "Cu", "CuO", "H2"),
      plan("Mg + O2 -> MgO", "MgO", "Mg"),
      plan("Cu + O2 -> CuO", "CuO", "Cu", "O2"),
    ])
      expect(refused.ok ? undefined : refused.error.code).toBe("plan.no-procedure");
    const roasted = plan("Cu + O2 -> CuO", "CuO", "Cu");
    expect(roasted.ok && roasted.value.steps.map(({ text }) => text).join(" ")).toMatch(/open to the air/);
  });

  it("and silica or alumina with an alkali carbonate are melted, not stirred in water", () => {
    for (const [equation, product] of [
      ["K2CO3 + SiO2 -> K2SiO3 + CO2", "K2SiO3"],
      ["Na2CO3 + Al2O3 -> NaAlO2 + CO2", "NaAlO2"],
    ] as const)
      expect(doesItGo({ equation, product }).reasons.map(({ code }) => code)).not.toContain("equilibrium");
    expect(
      doesItGo({ equation: "Na2CO3 + V2O5 -> NaVO3 + CO2", product: "NaVO3" }).reasons.map(({ code }) => code),
    ).toContain("equilibrium");
  });

  it("is unknown without a step, and says so", () => {
    const siderite = doesItGo({ equation: "FeCO3 -> FeO + CO2", product: "FeO" });
    expect(siderite.verdict).toBe("unknown");
    expect(siderite.reasons[0]!.text).toMatch(/^missing: /);
    // soda asks for 321 kJ to the mole of gas: no kiln
    expect(doesItGo({ equation: "Na2CO3 -> Na2O + CO2", product: "Na2O" }).verdict).toBe("does not go");
  });
});

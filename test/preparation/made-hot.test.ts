// Precipitates that the table of solids knows only above or below a temperature: hydromagnesite from 50 °C on, weddellite below
// 40 °C (trade experience, as the table says). The rest is arithmetic.
import { describe, expect, it } from "vitest";
import { type PlanRequest, planPreparation } from "../../src/preparation";
import { benchSheet } from "../../src/sheet";

const magnesia = (epsom: object = {}, soda: object = { name: "washing soda", form: "Na2CO3·10H2O", excess: "5 %" }) =>
  planPreparation({
    equation: "MgSO4 + Na2CO3 + H2O -> Mg5(CO3)4(OH)2·4H2O + Na2SO4 + CO2",
    product: "Mg5(CO3)4(OH)2·4H2O",
    materials: [{ name: "Epsom salt", form: "MgSO4·7H2O", ...epsom }, soda],
    scale: { material: "Epsom salt", portion: "100.0 g" },
  } as PlanRequest);

describe("hydromagnesite", () => {
  const plan = magnesia();
  const texts = plan.steps.map(({ text }) => text);

  it("is mixed of two hot solutions, and kept hot until it is filtered", () => {
    const order = [
      /^Dissolve the Epsom salt in \d+ mL of water at 90 °C/,
      /^Dissolve the washing soda .* at 90 °C/,
      /^Pour the washing soda solution into the vessel/,
      /^Keep it at 90 °C.*30 minutes to an hour, and filter it hot: it forms from 50 °C on/,
      /^Filter the Mg₅\(CO₃\)₄\(OH\)₂·4H₂O off/,
    ].map((find) => texts.findIndex((text) => find.test(text)));
    expect(order).not.toContain(-1);
    expect(order).toEqual([...order].sort((one, other) => one - other));
    expect(plan.steps[order[3]!]!.operation).toBe("heat");
  });

  it("counts its gas: 100.0 g / 246.47 g/mol = 0.4057 mol, a fifth of it CO2, 0.0811 mol × 24.06 L/mol = 1.95 L at 20 °C", () => {
    expect(plan.gas[0]!.volume.toNumber("L")).toBeCloseTo(1.95, 2);
  });

  it("has label, yield and range of one compound: 0.0811 mol × 467.64 g/mol = 37.9 g", () => {
    expect(plan.product.theoreticalYield.toNumber("g")).toBeCloseTo(37.9, 1);
    const sheet = benchSheet(plan, { parts: ["bench"] });
    expect(sheet).toMatch(/Expected dry product {2}34\.\d to 37\.9 g, white \(100 % = 37\.9 g\)/);
    expect(texts.at(-1)).not.toMatch(/not Mg₅/);
    expect(plan.feasibility.verdict).toBe("goes");
  });

  it("is warmed before the last comes where the feeds are cold", () => {
    const cold = magnesia(
      { dissolve: { water: "400 mL", temperature: "20 °C" } },
      { name: "soda solution", form: "Na2CO3", strength: "10 %" },
    ).steps.map(({ text }) => text);
    const warmed = cold.findIndex((text) => text.startsWith("Warm the contents to 90 °C"));
    expect(cold[warmed + 1]).toMatch(/soda solution into the vessel/);
  });
});

describe("what stands only in the cold", () => {
  const digestion = (equation: string, product: string, ...forms: string[]): string | undefined =>
    planPreparation({
      equation,
      product,
      materials: forms.map((form) => ({ name: form, form })),
      scale: { product: "20 g" },
    }).procedure.digestion;

  it.each([
    ["MgSO4 + Na2CO3 + 3 H2O -> MgCO3·3H2O + Na2SO4", "MgCO3·3H2O", /do not warm it/, ["MgSO4·7H2O", "Na2CO3·10H2O"]],
    ["CaCl2 + Na2C2O4 + 2 H2O -> CaC2O4·2H2O + 2 NaCl", "CaC2O4·2H2O", /below 40 °C/, ["CaCl2·2H2O", "Na2C2O4"]],
  ])("is not warmed: %s", (equation, product, cold, forms) => {
    const text = digestion(equation, product, ...forms);
    expect(text).toMatch(cold);
    expect(text).not.toMatch(/60 to 90/);
  });

  it("a form of it that needs no warmth is digested as before", () => {
    // aragonite stands from 60 °C on, calcite at any temperature
    expect(digestion("CaCl2 + Na2CO3 -> CaCO3 + 2 NaCl", "CaCO3", "CaCl2·2H2O", "Na2CO3")).toMatch(/60 to 90 °C/);
  });
});

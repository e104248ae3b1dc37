// Acid gases led into a base: where to stop, and how warm a hydrate may be dried that turns into another solid. Common practice, no
// source, unless a line names another.
import { type PlanRequest, planPreparation } from "preparative";
import { describe, expect, it } from "vitest";

const led = (equation: string, product: string, base: string, gas: string): PlanRequest => ({
  equation,
  product,
  materials: [
    { name: "base", form: base },
    { name: "gas", form: gas },
  ],
  scale: { product: "50 g" },
});
const leadingOf = (request: PlanRequest): string =>
  planPreparation(request).steps.find(({ text }) => text.startsWith("Lead the gas"))!.text;

const doneOf = (request: PlanRequest): string => {
  const { steps } = planPreparation(request);
  return steps[steps.findIndex(({ text }) => text.startsWith("Lead the gas")) + 1]!.text;
};

const SULFITE = led("Na2CO3 + SO2 + H2O -> Na2SO3·7H2O + CO2", "Na2SO3·7H2O", "Na2CO3", "SO2");
const SODA = led("NaOH + CO2 -> Na2CO3·10H2O", "Na2CO3·10H2O", "NaOH", "CO2");

describe("an acid gas led into a base", () => {
  // 50 / 252.15 = 0.1983 mol: 12.70 g of SO2 come and 8.73 g of CO2 go, a gain of 3.97 g
  it("ends where the vessel has gained what comes less what goes, for more of it makes the acid salt", () => {
    const text = leadingOf(SULFITE);
    expect(text).toContain("4.77 L of it (12.7 g) and no more");
    expect(text).toContain("warmed in between until no more CO₂ rises, has gained 4.0 g");
    expect(text).toContain("more of it makes NaHSO₃");
    expect(text).not.toContain("until no more is absorbed");
  });

  // 0.15 mol/kg of sulfite: pH = 7 + ½ (7.17 + log 0.15) = 10.2 ideal, lower in salt; of 0.18 mol/kg of carbonate 11.7
  it("ends at a pH that a drop in water shows, where no model reaches the liquor itself", () => {
    expect(leadingOf(SULFITE)).toMatch(/a drop of it in nine drops of water shows about pH 10:/);
    expect(leadingOf(SODA)).toMatch(/a drop of it in nine drops of water shows about pH 12:/);
  });

  it("names the acid salt of its own cation and gas, and counts no gas that passes through", () => {
    expect(leadingOf(SODA)).toMatch(/has gained 7\.\d g, .*more of it makes NaHCO₃/);
    expect(leadingOf(SODA)).not.toContain("passes through");
    expect(leadingOf(led("NaOH + H2S -> Na2S·9H2O", "Na2S·9H2O", "NaOH", "H2S"))).toContain("more of it makes NaHS");
    expect(leadingOf(led("KOH + SO2 -> K2SO3", "K2SO3", "KOH", "SO2"))).toContain("more of it makes KHSO₃");
  });

  it("goes on until no more is absorbed where the acid salt is what is wanted, or nothing more forms", () => {
    const request = led("Na2CO3 + CO2 + H2O -> NaHCO3", "NaHCO3", "Na2CO3", "CO2");
    expect(doneOf(request)).toMatch(/^It is done when no more is absorbed \(.*\) or the vessel has gained/);
    expect(leadingOf(request)).not.toContain("more of it makes");
    expect(doneOf(led("CuCl2 + H2S -> CuS + HCl", "CuS", "CuCl2", "H2S"))).toContain("when no more is absorbed");
  });

  it("goes through an empty bottle, so that nothing is sucked back", () => {
    expect(leadingOf(SULFITE)).toContain("through the wash bottle (count its bubbles) and the empty bottle");
  });
});

describe("a hydrate that turns into a solid with less water", () => {
  // brushite turns at 36 °C by the change of the table: 3 K below is lower than the 40 °C of hydrates that hardly dissolve
  it("is dried below that, not at the usual limit of hydrates", () => {
    const { drying } = planPreparation({
      equation: "CaCl2 + Na2HPO4 + H2O -> CaHPO4·2H2O + NaCl",
      product: "CaHPO4·2H2O",
      materials: [
        { name: "calcium chloride", form: "CaCl2" },
        { name: "disodium phosphate", form: "Na2HPO4" },
      ],
      scale: { product: "20 g" },
    });
    expect(drying.upTo!.toNumber("°C")).toBe(33);
    expect(drying.why).toBe("damp it turns into CaHPO₄ at 36 °C");
    expect(drying.changesAbove).toBe(true);
  });

  // crystals of hydrates dry in the air of a room (common practice, no source): sodium sulfite turns at 33.4 °C, Epsom salt at 48 °C
  it("keeps a lower limit that it has", () => {
    expect(planPreparation(SULFITE).drying.upTo!.toNumber("°C")).toBe(25);
    const plan = planPreparation({
      equation: "MgSO4·7H2O -> MgSO4·7H2O",
      product: "MgSO4·7H2O",
      materials: [{ name: "bitter salt", form: "MgSO4·7H2O" }],
      scale: { material: "bitter salt", portion: "100 g" },
    });
    expect(plan.drying.upTo!.toNumber("°C")).toBe(25);
    expect(plan.drying.why).toMatch(/dry in air/);
  });
});

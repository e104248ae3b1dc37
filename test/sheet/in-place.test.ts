// Where another solid stands wholly in place of the product, every part of the sheet names and uses that one.

import { describe, expect, it } from "vitest";
import { evaluateRun, type Observations, planPreparation } from "../../src/preparation";
import { benchSheet, bottleLabel } from "../../src/sheet";

const nickel = planPreparation({
  equation: "NiSO4 + Na2CO3 -> NiCO3 + Na2SO4",
  product: "NiCO3",
  materials: [
    { name: "nickel sulfate", form: "NiSO4·6H2O" },
    { name: "soda", form: "Na2CO3" },
  ],
  scale: { product: "10 g" },
});
const flat = (text: string): string => text.replace(/\s+/g, " ");
const sheet = flat(benchSheet(nickel));

describe("a sheet of another solid than the one asked for", () => {
  // by hand: 10.0 g of NiCO3 (118.70 g/mol) hold as much nickel as 10.0 * 92.71 / 118.70 = 7.81 g of Ni(OH)2
  it("has the theory of the solid that is weighed, in its head and in the line of the yield", () => {
    expect(sheet).toContain("Weigh the dry Ni(OH)₂ (not NiCO₃)");
    expect(sheet).toMatch(/Expected dry product 6\.9 to 7\.7 g \(100 % = 7\.8 g of Ni\(OH\)₂\)/);
    expect(sheet).toContain("yield of Ni(OH)₂ = dry mass / 7.8 g =");
    expect(sheet).not.toContain("100 % = 10.0 g");
  });

  it("has its name on the label, and its mass and water in what the mass says", () => {
    expect(sheet).toContain("Label ----- Ni(OH)₂, mass, date, batch");
    // a gel of 7.7 g that keeps 20 % of water weighs 7.7 / 0.8 = 9.6 g
    expect(sheet).toMatch(/more than 9\.6 g wet, unwashed/);
    expect(sheet).toMatch(/(\(|constant mass \()9\.6 g then\)/);
    // Ni(OH)2 to NiO: 74.69 / 92.71 = 80.6 %; NiCO3 to NiO: 74.69 / 118.70 = 62.9 %
    expect(sheet).toMatch(
      /6\.9 to 7\.7 g as expected, allowing for handling; a sample heated to constant mass leaves 80\.6 %/,
    );
    expect(sheet).toMatch(/about 10\.0 g NiCO₃; a sample heated to constant mass leaves 62\.9 %/);
  });

  it("and so has the label of the bottle, planned and made", () => {
    expect(bottleLabel(nickel)).toMatch(/^Ni\(OH\)₂\n[\s\S]*planned: 7\.8 g/);
    const made = bottleLabel(evaluateRun(nickel, { dried: "7.5 g" }));
    expect(made).toMatch(/^Ni\(OH\)₂\n/);
    // 7.5 / 7.81 = 96 %, not 75 %
    expect(made).toMatch(/yield 96/);
  });

  it("is that of the product where that stands", () => {
    const chalk = planPreparation({
      equation: "CaCl2 + Na2CO3 -> CaCO3 + 2 NaCl",
      product: "CaCO3",
      materials: [
        { name: "calcium chloride", form: "CaCl2·2H2O" },
        { name: "soda", form: "Na2CO3" },
      ],
      scale: { product: "10 g" },
    });
    expect(flat(benchSheet(chalk))).toMatch(/\(100 % = 10\.0 g\).*yield = dry mass \/ 10\.0 g = .*CaCO₃, mass, date/);
  });
});

describe("the verdict of such a run", () => {
  const first = (dried: "7.5 g" | "4.0 g", more: Partial<Observations> = {}): string =>
    evaluateRun(nickel, { dried, ...more }).verdict[0]!.text;

  it("goes by the solid that the sheet expects", () => {
    expect(first("7.5 g")).toBe("7.5 g is what Ni(OH)₂ should give where NiCO₃ was asked for, allowing for handling");
    const run = evaluateRun(nickel, { dried: "7.5 g" });
    expect(run.expected.toNumber("g")).toBeCloseTo(7.8, 1);
    expect(run.percentYield?.toNumber("%")).toBeCloseTo((100 * 7.5) / 7.81, 0);
    // 90 % of 7.73 g is 7.0 g
    expect(first("4.0 g")).toMatch(/at least 7\.0 g expected/);
  });

  it("takes what is too heavy for it for another formula or for water, and never calls the carbonate a hydrate", () => {
    const { verdict } = evaluateRun(nickel, { dried: "10.0 g" });
    expect(verdict.some(({ code }) => code === "consistent")).toBe(false);
    expect(verdict.find(({ text }) => text.includes("of the theory for NiCO₃"))?.code).toBe("other-formula-fits");
    const wet = evaluateRun(nickel, { dried: "9.0 g" }).verdict.find(({ code }) => code === "wet");
    expect(wet?.text).toMatch(/a gel keeps so much/);
  });

  it("lets ignition say that it is the carbonate after all", () => {
    // NiCO3 to NiO leaves 62.9 %, Ni(OH)2 80.6 %
    const text = first("7.5 g", { ignition: { before: "1.000 g", after: "0.629 g" } });
    expect(text).toMatch(/NiCO₃/);
    const agrees = first("7.5 g", { ignition: { before: "1.000 g", after: "0.806 g" } });
    expect(agrees).toMatch(/what Ni\(OH\)₂ should give/);
  });
});

describe("two other solids in place of the product", () => {
  // three tenths more of the copper than of the soda: what carbonate does not take comes out as the basic sulfate, Cu4(OH)6SO4
  const copper = planPreparation({
    equation: "CuSO4 + Na2CO3 -> CuCO3 + Na2SO4",
    product: "CuCO3",
    materials: [
      { name: "vitriol", form: "CuSO4·5H2O", excess: "30 %" },
      { name: "soda", form: "Na2CO3" },
    ],
    scale: { product: "20 g" },
  });
  const text = flat(benchSheet(copper));

  it("no yield is stated of a mixture, in the head and where it would be written", () => {
    const solids = copper.steps.at(-1)!.before.solids.map(({ formula }) => formula);
    expect(solids).toEqual(expect.arrayContaining(["Cu₂(OH)₂CO₃", "Cu₄(OH)₆SO₄"]));
    expect(solids).not.toContain("CuCO₃");
    expect(text).toMatch(/\(no yield is stated: Cu₂\(OH\)₂CO₃ stands with another solid in place of CuCO₃\)/);
    expect(text).toMatch(/g No yield is stated: Cu₂\(OH\)₂CO₃ stands with another solid/);
    expect(text).not.toMatch(/yield = dry mass|100 % = /);
  });

  it("both are named with their masses where the mixture is weighed", () => {
    expect(text).toMatch(/Weigh the dry Cu₂\(OH\)₂CO₃ \(not CuCO₃\): about [\d.]+ g expected, by the equilibrium/);
    expect(text).toMatch(/and with it [\d.]+ g of Cu₄\(OH\)₆SO₄, [\d.]+ g in all/);
  });
});

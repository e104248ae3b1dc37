// What a pack has beside its salt and water does not dissolve: it lies in the solution, and must not end up in a precipitate.
import { describe, expect, it } from "vitest";
import { evaluateRun, type PlanRequest, planPreparation } from "../../src/preparation";
import { benchSheet } from "../../src/sheet";

const request = (form: string, share: `${number} %`): PlanRequest => ({
  equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
  product: "CaCO3",
  materials: [
    { name: "de-icer", form: "CaCl2·2H2O", also: [{ form, share }] },
    { name: "soda", form: "Na2CO3", excess: "5 %" },
  ],
  scale: { material: "de-icer", portion: "50.0 g" },
});

describe("two hundredths of chalk in a de-icer", () => {
  const plan = planPreparation(request("CaCO3", "2 %"));

  it("are filtered off before the precipitation, and are not counted as dissolved", () => {
    const operations = plan.steps.map(({ operation }) => operation);
    expect(operations.indexOf("filter")).toBe(operations.indexOf("dissolve") + 1);
    const residue = plan.waste.vessels.find(({ vessel }) => vessel === "residue")!;
    // 2 % of 50.0 g
    expect(residue.contents.solids.map(({ formula, mass }) => [formula, mass.toNumber("g")])).toEqual([["CaCO₃", 1]]);
    const filtrate = plan.waste.vessels.find(({ vessel }) => vessel === "filtrate")!;
    // 0.013 g in a litre is what water dissolves of chalk (OpenStax Chemistry 2e, Ksp 8.7e-9, without the air's carbon dioxide); soda lowers it
    const chalk = filtrate.contents.dissolved.find(({ formula }) => formula === "CaCO₃");
    expect((chalk?.amount.toNumber("mol") ?? 0) * 100.09).toBeLessThan(0.05);
  });

  it("are stated by the step that filters them", () => {
    const sheet = benchSheet(plan, { format: "text" }).replace(/\s+/g, " ");
    expect(sheet).toContain("stirring until no more dissolves");
    expect(sheet).toContain("1.0 g of CaCO₃ that the pack has beside it does not dissolve");
  });

  it("leave the theory what it is without them", () => {
    // 50.0 g / 147.01 g/mol × 100.09 g/mol
    expect(plan.product.theoreticalYield.toNumber("g")).toBeCloseTo(34.0, 1);
  });
});

it("what dissolves beside the salt, and a speck below the step of the balance, need no filter", () => {
  for (const [form, share] of [
    ["NaCl", "2 %"],
    ["CaCO3", "0.1 %"],
  ] as const) {
    const { steps } = planPreparation(request(form, share));
    expect(steps.filter(({ operation }) => operation === "filter")).toHaveLength(1);
  }
});

describe("lime of 95 % that carbon dioxide is led into", () => {
  const plan = planPreparation({
    equation: "Ca(OH)2 + CO2 -> CaCO3 + H2O",
    product: "CaCO3",
    materials: [
      { name: "slaked lime", form: "Ca(OH)2", assay: "95 %" },
      { name: "carbon dioxide", form: "CO2" },
    ],
    scale: { material: "slaked lime", portion: "20.0 g" },
  });

  // 5 % of 20.0 g; theory 19.0 g / 74.093 g/mol × 100.087 g/mol = 25.67 g
  it("may leave what it has besides in the cake, as the sheet says", () => {
    const sheet = benchSheet(plan, { format: "text" }).replace(/\s+/g, " ");
    expect(sheet).toContain("more than 26.7 g");
    expect(sheet).toContain(
      "25.7 to 26.7 g as expected, if of the 1.0 g that the packs stirred in have besides some did not dissolve",
    );
  });

  it("explains a heavy cake with it, up to all of it", () => {
    const found = (dry: `${number} g`) => evaluateRun(plan, { dried: dry }).verdict;
    const impure = (dry: `${number} g`) => found(dry).find(({ code }) => code === "impure");
    // (26.2 - 25.67) / 1.00
    expect(impure("26.2 g")!.figure!.toNumber("%")).toBeCloseTo(53, 0);
    expect(found("26.2 g")[0]!.code).toBe("impure");
    expect(impure("29.0 g")!.text).toContain("even all of it");
    expect(impure("29.0 g")!.weight).toBeLessThan(0.01);
  });

  it("is nothing of a pack that goes in dissolved", () => {
    const soda = planPreparation({
      equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
      product: "CaCO3",
      materials: [
        { name: "de-icer", form: "CaCl2·2H2O", assay: "95 %" },
        { name: "soda", form: "Na2CO3", excess: "5 %" },
      ],
      scale: { material: "de-icer", portion: "50.0 g" },
    });
    expect(benchSheet(soda, { format: "text" })).not.toContain("stirred in have");
  });
});

// A gas led into lime, copper(I) oxide, a white charge fired hot, and a refusal: ends, tests and cautions of the sheet.
// Amounts by hand from molar masses (IUPAC 2021); the rest is common practice, no source.
import { describe, expect, it } from "vitest";
import { type PlanRequest, planPreparation, tryPlanPreparation } from "../../src/preparation";
import { benchSheet } from "../../src/sheet";

const sheet = (request: PlanRequest): string => benchSheet(planPreparation(request)).toString().replace(/\s+/g, " ");

describe("carbon dioxide led into lime", () => {
  const plan = planPreparation({
    equation: "Ca(OH)2 + CO2 -> CaCO3 + H2O",
    product: "CaCO3",
    materials: [
      { name: "hydrated lime", form: "Ca(OH)2", assay: "95 %" },
      { name: "carbon dioxide", form: "CO2", excess: "100 %" },
    ],
    scale: { product: "20.02 g" },
  });
  const printed = benchSheet(plan).toString().replace(/\s+/g, " ");

  it("is done at a pH under the gas, which grains of lime must not bring up again", () => {
    // pH 10 is that of chalk in water without the gas
    expect(printed).toContain("paper shows pH 9 or less then, and still does after five minutes");
    expect(printed).not.toContain("about pH 10");
  });

  it("says of the excess that it passes through, and of its mass that lime is lighter", () => {
    expect(plan.checks.map(({ text }) => text).join()).not.toMatch(/no excess is planned|times the need/);
    // 0.2000 mol × 74.09 g/mol / 95 % = 15.6 g; half of it left unchanged would make the batch 17.4 g
    expect(printed).toContain("Ca(OH)₂ that is left in it weighs less (15.6 g for all of it)");
  });

  it("assumes no portions, and no cold water for what a slow stream warms", () => {
    expect(plan.assumptions.map(({ what }) => what).join()).not.toMatch(
      /portions for anything|one portion of what foams/,
    );
    expect(printed).not.toContain("Mixing gives heat");
  });
});

describe("copper(I) oxide by ascorbic acid in lye", () => {
  const printed = sheet({
    equation: "2 CuSO4.5H2O + C6H8O6 + 4 NaOH -> Cu2O + C6H6O6 + 2 Na2SO4 + 13 H2O",
    product: "Cu2O",
    materials: [
      { name: "copper sulfate", form: "CuSO4.5H2O", assay: "98 %" },
      { name: "vitamin C", form: "C6H8O6", assay: "99 %", excess: "20 %" },
      { name: "caustic soda", form: "NaOH", assay: "97 %", excess: "30 %" },
    ],
    scale: { product: "7.155 g" },
  });

  it("is kept alkaline to the end, and its waste is made neutral by paper", () => {
    expect(printed).toMatch(
      /Paper shows pH 9 or more all the time: where it does not, a little more of the caustic soda/,
    );
    expect(printed).toMatch(/Up to 61 mL of 5 % vinegar, by paper,/);
  });

  it("is told from copper and copper(II) oxide by acid", () => {
    // Cu2O + H2SO4 -> Cu + CuSO4 + H2O: 63.546 / 143.091 = 44.4 %
    expect(printed).toContain("leaves 44 % Cu₂O: a pinch in cold dilute sulfuric acid");
    expect(printed).toContain("nothing: CuO; all of it: Cu");
  });

  it("dries fast, in no air that would turn it", () => {
    expect(printed).toMatch(/Wash the last time with 11 mL of alcohol/);
    expect(printed).toMatch(/only then dry it at no more than 60 °C .* fine and damp it turns to copper\(II\) in air/);
  });
});

describe("a charge of white powders fired at 1300 °C", () => {
  const printed = sheet({
    equation: "CaCO3 + TiO2 -> CaTiO3 + CO2",
    product: "CaTiO3",
    materials: [
      { name: "whiting", form: "CaCO3", assay: "98 %" },
      { name: "titanium dioxide", form: "TiO2", assay: "98 %" },
    ],
    scale: { product: "13.594 g" },
  });

  it("is not judged by its colour, and lime burnt that hot is given ten minutes in water", () => {
    expect(printed).toContain("the look does not tell what has not reacted, for TiO₂ and CaO are white as well");
    expect(printed).toContain("ground fine and ten minutes in a little warm boiled water");
    // whiting is gone by 900 °C
    expect(printed).not.toContain("fizzes");
  });

  it("has the card of the lime that may be left", () => {
    expect(printed).toMatch(/CaO Pictogram: GHS05 GHS07 Hazard: DANGER: Causes skin irritation \(H315\)/);
    expect(printed).toContain("[ ] gloves");
  });
});

describe("a refusal of a deadly gas", () => {
  it("names the packs that never come together, and what is known to come of it", () => {
    const refused = tryPlanPreparation({
      equation: "NaOCl + NH3 -> NH2Cl + NaOH",
      product: "NH2Cl",
      materials: [
        { name: "pool chlorine", form: "NaOCl", strength: "12.5 %" },
        { name: "household ammonia", form: "NH3", strength: "9.5 %", excess: "50 %" },
      ],
      scale: { product: "5 g" },
    });
    expect(refused.ok).toBe(false);
    if (refused.ok) return;
    expect(refused.error.code).toBe("plan.dangerous-product");
    // NFPA on household chemicals: chloramines and nitrogen trichloride
    expect(refused.error.hint).toContain(
      "never bring pool chlorine and household ammonia together, in any proportion (chlorinates ammonia: NH2Cl, NHCl2 and NCl3)",
    );
  });
});

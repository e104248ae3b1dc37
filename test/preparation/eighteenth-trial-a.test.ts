// What independent readers objected to in printed sheets, as rules; the preparations are theirs. Facts of the bench are common
// practice, no source.
import { type PlanRequest, parseFormula, planPreparation } from "preparative";
import { benchSheet } from "preparative/sheet";
import { describe, expect, it } from "vitest";
import { bearsLastAlcohol } from "../../src/preparation/procedure/alcohol";

const texts = (request: PlanRequest): string[] => planPreparation(request).steps.map(({ text }) => text);
const sheet = (request: PlanRequest): string => benchSheet(planPreparation(request)).replace(/\s+/g, " ");

describe("an ammine that alcohol brings out of its liquor", () => {
  const request: PlanRequest = {
    equation: "CuSO4·5H2O + 4 NH3 -> [Cu(NH3)4]SO4·H2O + 4 H2O",
    product: "[Cu(NH3)4]SO4·H2O",
    materials: [
      { name: "blue vitriol", form: "CuSO4·5H2O", assay: "99 %" },
      { name: "ammonia water", form: "NH3", strength: "25 %", excess: "50 %" },
      { name: "ethanol", form: "C2H5OH", strength: "94 %", aside: true, portion: "30 mL" },
    ],
    scale: { material: "blue vitriol", portion: "10.0 g" },
  };

  it("is made in little water: its salt dissolves warm, and cools before the ammonia comes", () => {
    const step = planPreparation(request).steps.find(({ text }) => text.startsWith("Dissolve the blue vitriol"))!;
    // 9.9 g / 249.68 × 159.60 = 6.33 g of CuSO4, 40.4 g in 100 g of water at 60 °C: 15.7 g, 1.2 times that is 18.8 g, of which
    // 9.9 g × 5 × 18.015 / 249.68 = 3.6 g is crystal water; 10 to 15 mL are usual
    expect(step.text).toMatch(/in 15 mL of water at 60 °C/);
    expect(step.text).toMatch(/let it cool to 40 °C: hotter it would drive off the ammonia/);
    expect(step.after.temperature.toNumber("°C")).toBe(40);
  });

  it("has the alcohol once it is cold, stands in ice after it, and is filtered there", () => {
    const all = texts(request);
    const at = all.findIndex((text) => text.startsWith("Add the 30 mL of ethanol slowly, stirring, once it is cold"));
    expect(at).toBeGreaterThan(0);
    expect(all[at + 1]).toMatch(/^Let it stand in ice and water at 5 °C, covered, for half an hour/);
    expect(all[at + 2]).toMatch(/^Filter the crystals off at 5 °C/);
    expect(sheet(request)).toContain("[ ] ice");
  });

  it("is rinsed with alcohol alone at the end, where it is no oxidiser", () => {
    const rinse = planPreparation(request).steps.find(({ operation }) => operation === "rinse")!;
    expect(rinse.text).toMatch(/half and half.*; then once, briefly, with 4\.9 mL of alcohol alone/);
    // half of the first 9.7 g, and as much again
    expect(rinse.alcohol!.toNumber("mL")).toBeCloseTo(9.7, 0);
    for (const [formula, bears] of [
      ["[Cu(NH3)4]SO4·H2O", true],
      ["[Ni(NH3)6](ClO4)2", false],
    ] as const)
      expect(bearsLastAlcohol(parseFormula(formula))).toBe(bears);
  });

  it("leaves a liquor that is collected as it is: one instruction, and none to precipitate or to neutralise", () => {
    const { waste } = planPreparation(request);
    expect(waste.isLeftAsItIs).toBe(true);
    expect(waste.treatment).toEqual([]);
    const printed = sheet(request);
    expect(printed).toMatch(
      /keeps the Cu of the complex in solution, and soda precipitates none of it: put nothing to it/,
    );
    expect(printed).not.toMatch(/precipitate (the metal|them)|neutralises what is left/);
  });

  it("is treated where acid is in it: the chloroammine of cobalt, which strong hydrochloric acid is put to", () => {
    const { waste } = planPreparation({
      equation: "2 CoCl2·6H2O + 2 NH4Cl + 8 NH3 + H2O2 -> 2 [Co(NH3)5Cl]Cl2 + 14 H2O",
      product: "[Co(NH3)5Cl]Cl2",
      materials: [
        { name: "cobalt chloride", form: "CoCl2·6H2O" },
        { name: "sal ammoniac", form: "NH4Cl" },
        { name: "ammonia", form: "NH3", strength: "25 %", excess: "50 %" },
        { name: "peroxide", form: "H2O2", strength: "30 %", excess: "20 %" },
      ],
      scale: { material: "cobalt chloride", portion: "5 g" },
    });
    expect(waste.isLeftAsItIs).toBe(false);
  });
});

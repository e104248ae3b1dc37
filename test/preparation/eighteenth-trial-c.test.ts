// Metals from a base in acid by another metal: the acid dissolves the base before the metal comes, and what is over of it takes metal.
// Amounts by hand from molar masses (IUPAC 2021); a mole of gas is 24.055 L at 20 °C and 101.325 kPa.
import { describe, expect, it } from "vitest";
import { type Plan, type PlanRequest, planPreparation } from "../../src/preparation";

const texts = (plan: Plan): string[] => plan.steps.map(({ text }) => text);
const at = (plan: Plan, words: RegExp): number => texts(plan).findIndex((text) => words.test(text));

const bismuth: PlanRequest = {
  equation: "2 BiOCl + 3 Fe + 4 HCl -> 2 Bi + 3 FeCl2 + 2 H2O",
  product: "Bi",
  materials: [
    { name: "pearl pigment", form: "BiOCl", assay: "99 %" },
    { name: "steel strip", form: "Fe", assay: "99 %", excess: "100 %" },
    { name: "muriatic acid", form: "HCl", strength: "31 %", excess: "137 %" },
  ],
  scale: { material: "pearl pigment", portion: "20 g" },
};

const copper: PlanRequest = {
  equation: "CuO + H2SO4 + Zn -> Cu + ZnSO4 + H2O",
  product: "Cu",
  materials: [
    { name: "copper oxide", form: "CuO", assay: "98 %" },
    { name: "dilute sulfuric acid", form: "H2SO4", strength: "20 %", excess: "50 %" },
    { name: "zinc granules", form: "Zn", assay: "99 %", excess: "20 %" },
  ],
  scale: { product: "10 g" },
};

describe("a metal from its base in acid", () => {
  const plan = planPreparation(bismuth);

  it("has the base dissolved before the metal comes", () => {
    expect(at(plan, /Pour the muriatic acid/)).toBeLessThan(at(plan, /Add the .* pearl pigment in small portions/));
    expect(at(plan, /until the pearl pigment has dissolved/)).toBeLessThan(at(plan, /^Hang the .* steel strip/));
    const oxide = planPreparation(copper);
    // it was the other way round: the zinc took the acid, and the oxide stayed
    expect(at(oxide, /copper oxide in small portions/)).toBeLessThan(at(oxide, /^Add the .* zinc granules/));
    expect(at(oxide, /Warm the contents to 60 °C/)).toBeLessThan(at(oxide, /copper oxide in small portions/));
  });

  it("gives the hydrogen of the acid that is over", () => {
    // 42.4 g × 31 % / 36.458 = 0.3605 mol; two for each of 19.8 / 260.43 = 0.07603 mol leave 0.2085 mol, half of it as H2
    expect(plan.gas.map(({ key }) => key)).toEqual(["H2"]);
    expect(plan.gas[0]!.volume.toNumber("L")).toBeCloseTo(2.51, 2);
    // 0.1042 mol × 55.845 g/mol
    expect(plan.checks.map(({ text }) => text).join()).toContain("takes as much as 5.8 g of the steel strip");
    // zinc that is over: 12.5 g × 99 % / 65.38 - 0.1573 = 0.0320 mol; free acid 116 × 20 % / 98.07 - 0.1573 = 0.0793 mol
    const [hydrogen] = planPreparation(copper).gas;
    expect(hydrogen!.amount.toNumber("mol")).toBeCloseTo(0.032, 3);
  });

  it("lifts a whole strip out, with no second acid, and washes sour first", () => {
    const words = texts(plan).join("\n");
    expect(words).toContain("Lift out what is left of the steel strip, 0.6 g or more");
    expect(words).not.toContain("sulfuric acid");
    expect(words).toContain("the first of 1 % hydrochloric acid");
    expect(words).toContain("gives no white cloud in a glass of water");
    expect(words).not.toContain("its liquor tells nothing");
  });

  it("hangs in volatile acid that hardly fumes, in a vessel that it covers", () => {
    // common practice, no source: 12 %
    const diluted = plan.steps.find(({ operation }) => operation === "dilute")!;
    expect(diluted.target!.toNumber("%")).toBeCloseTo(12, 0);
    expect(plan.vessel!.smallest!.toNumber("mL")).toBe(250);
    const hung = plan.steps[at(plan, /^Hang/)]!;
    expect(hung.cautions.map(({ text }) => text).join()).toContain("lift the metal out");
    expect(hung.cautions.map(({ text }) => text).join()).not.toContain("add slowly");
  });

  it("has the carbon dioxide of a carbonate leave as that dissolves", () => {
    const green = planPreparation({
      equation: "CuCO3.Cu(OH)2 + 2 H2SO4 + 2 Fe -> 2 Cu + 2 FeSO4 + CO2 + 3 H2O",
      product: "Cu",
      materials: [
        { name: "copper carbonate", form: "CuCO3.Cu(OH)2", assay: "96 %" },
        { name: "dilute sulfuric acid", form: "H2SO4", strength: "20 %" },
        { name: "iron filings", form: "Fe", assay: "99 %", excess: "5 %" },
      ],
      scale: { product: "10 g" },
    });
    // 10 / 63.546 / 2 = 0.0787 mol, 1.89 L
    const step = green.steps[at(green, /copper carbonate in small portions/)]!;
    expect(step.text).toMatch(/1\.(89|9) L of CO₂ in all/);
    expect(step.left.some(({ what }) => what === "gas")).toBe(true);
    const metal = green.steps[at(green, /^Add the .* iron filings/)]!;
    expect(metal.text).not.toContain("CO₂");
  });
});

describe("no base in acid", () => {
  it("is an oxide whose salt with the acid does not dissolve", () => {
    const silver = planPreparation({
      equation: "Ag2O + 2 HCl + Zn -> 2 Ag + ZnCl2 + H2O",
      product: "Ag",
      materials: [
        { name: "silver oxide", form: "Ag2O", assay: "99 %" },
        { name: "hydrochloric acid", form: "HCl", strength: "10 %" },
        { name: "zinc granules", form: "Zn", assay: "99 %", excess: "50 %" },
      ],
      scale: { product: "5 g" },
    });
    expect(texts(silver).join("\n")).not.toContain("until the silver oxide has dissolved");
  });
});

// What a seventeenth round of independent readings found of hot liquors, acid salts, fires and complexes, as rules; the preparations
// are the readers', chosen before any sheet was printed. Facts of the bench are common practice, no source.
import { type PlanRequest, planPreparation } from "preparative";
import { benchSheet } from "preparative/sheet";
import { describe, expect, it } from "vitest";

const texts = (request: PlanRequest): string[] => planPreparation(request).steps.map(({ text }) => text);
const stepWith = (request: PlanRequest, part: string | RegExp): string =>
  texts(request).find((text) => (typeof part === "string" ? text.includes(part) : part.test(text))) ?? "";
const sheet = (request: PlanRequest): string => benchSheet(planPreparation(request)).replace(/\s+/g, " ");
const checks = (request: PlanRequest): string =>
  planPreparation(request)
    .checks.map(({ text }) => text)
    .join("\n");

describe("an acid salt from a carbonate that is over", () => {
  const phosphate: PlanRequest = {
    equation: "H3PO4 + Na2CO3.10H2O + H2O -> Na2HPO4.12H2O + CO2",
    product: "Na2HPO4.12H2O",
    materials: [
      { name: "phosphoric acid", form: "H3PO4", strength: "85 %" },
      { name: "washing soda", form: "Na2CO3.10H2O", assay: "99 %", excess: "3 %" },
    ],
    scale: { product: "100 g" },
  };

  // pKa of HPO4^2- 12.38, of HCO3- 10.33 (table of acid steps): carbonate does not take the last hydrogen of a phosphate
  it("leaves the carbonate what it is, where the salt is the weaker acid of the two", () => {
    expect(checks(phosphate)).toContain("it takes no more hydrogen from the Na₂HPO₄·12H₂O, and stays in the liquor");
    expect(checks(phosphate)).not.toContain("another salt of the product");
  });

  // pKa of H2PO4- 7.20: carbonate takes that hydrogen
  it("makes another salt of it where the salt is the stronger acid", () => {
    const dihydrogen: PlanRequest = {
      ...phosphate,
      equation: "2 H3PO4 + Na2CO3.10H2O -> 2 NaH2PO4.2H2O + CO2 + 7 H2O",
      product: "NaH2PO4.2H2O",
    };
    expect(checks(dihydrogen)).toContain("it makes another salt of the product");
  });

  it("is tested once carbon dioxide has left the sample, with the last portion held back", () => {
    const test = stepWith(phosphate, "indicator paper");
    expect(test).toContain("a little of it that has boiled for a minute");
    expect(test).toContain("where it is acid a little of what was held back is needed");
    expect(test).toContain("where it is more than 1 higher a little more of the phosphoric acid");
    expect(stepWith(phosphate, /^Add the/)).toContain("hold the last portion back until paper shows the pH");
  });
});

describe("an ammonium phosphate of a metal", () => {
  const struvite: PlanRequest = {
    equation: "MgSO4.7H2O + NH4H2PO4 + 2 NH3 -> MgNH4PO4.6H2O + (NH4)2SO4 + H2O",
    product: "MgNH4PO4.6H2O",
    materials: [
      { name: "Epsom salt", form: "MgSO4.7H2O", assay: "99.5 %" },
      { name: "monoammonium phosphate", form: "NH4H2PO4", assay: "99 %" },
      { name: "ammonia water", form: "NH3", strength: "25 %", excess: "50 %" },
    ],
    scale: { product: "25 g" },
  };

  // 222.55 / (2 × 155.33) = 71.6 % of the monohydrate is Mg2P2O7: ammonia goes with the water
  it("leaves the pyrophosphate of every hydrate: ammonia goes as well", () => {
    const text = sheet(struvite);
    expect(text).toContain("leaves 71.6 %, Mg₂P₂O₇");
    expect(text).not.toContain("88.4 %");
  });

  it("warns of the vapour where strong ammonia is poured, and makes the better wash of it", () => {
    const { steps } = planPreparation(struvite);
    const poured = steps.find(({ text }) => text.startsWith("Pour the ammonia water"));
    expect(poured?.text).toContain("goggles on, under a hood or in moving air: its vapour chokes");
    // a tenth of what is 25 % makes 2.5 %: no other ammonia is asked for
    const wash = steps.find(({ text }) => text.startsWith("Wash"))!;
    expect(wash.text).toMatch(/2\.5 % ammonia, cold: [\d.]+ g of the ammonia water in \d+ mL of water, under a hood/);
    expect(wash.more!.portion!.toNumber("g")).toBeCloseTo(
      0.1 * wash.put.reduce((all, { water }) => all + water.toNumber("g"), 0),
      6,
    );
    expect(sheet(struvite)).toMatch(/\[ \] [\d.]+ g more of the ammonia water/);
  });
});

describe("a charge of white oxides that gives a white one", () => {
  const silicate: PlanRequest = {
    equation: "2 ZnO + SiO2 -> Zn2SiO4",
    product: "Zn2SiO4",
    materials: [
      { name: "zinc oxide", form: "ZnO", assay: "99 %" },
      { name: "quartz flour", form: "SiO2", assay: "98.5 %", excess: "3 %" },
    ],
    scale: { product: "100 g" },
  };

  // ZnO + C -> Zn + CO: zinc boils at 907 °C and leaves as vapour
  it("is fired with air to spare, never with carbon, and dried through before", () => {
    const { steps } = planPreparation(silicate);
    const fire = steps.find(({ operation }) => operation === "fire");
    expect(fire?.cautions.map(({ text }) => text).join(" ")).toContain("never in reduction or with carbon");
    expect(stepWith(silicate, "slip")).toContain("at 105 °C until two weighings show the same");
    expect(sheet(silicate)).toContain("drying oven, 105 °C");
  });

  it("is not looked at for white in white, and too much of it is damp: nothing leaves such a charge", () => {
    expect(stepWith(silicate, "Crush it")).toContain(
      "the look does not tell what has not reacted, for ZnO and SiO₂ are white",
    );
    expect(sheet(silicate)).toContain("damp, or something fell in");
    expect(sheet(silicate)).not.toContain("not heated through");
  });

  it("of another colour still is", () => {
    const blue: PlanRequest = {
      equation: "CoO + Al2O3 -> CoAl2O4",
      product: "CoAl2O4",
      materials: [
        { name: "cobalt oxide", form: "CoO" },
        { name: "alumina", form: "Al2O3" },
      ],
      scale: { product: "20 g" },
    };
    expect(texts(blue).join(" ")).toContain("look for what has not reacted");
  });
});

describe("baking soda from salt and ammonium hydrogencarbonate", () => {
  const soda: PlanRequest = {
    equation: "NaCl + NH4HCO3 -> NaHCO3 + NH4Cl",
    product: "NaHCO3",
    materials: [
      { name: "common salt", form: "NaCl", assay: "99 %", excess: "10 %" },
      { name: "ammonium bicarbonate", form: "NH4HCO3", assay: "99 %" },
    ],
    scale: { product: "40 g" },
  };

  // ammonium hydrogencarbonate decomposes from about 36 °C on (from memory); it cools the liquor by 17 K
  it("is stirred at 20 to 25 °C, with the ammonium salt ground, in moving air, from a clear brine", () => {
    expect(stepWith(soda, "Do not warm it")).toMatch(/at 20 to 25 °C, in tepid water .*never above 35 °C/);
    expect(stepWith(soda, /^Dissolve the common salt/)).toContain("if it stays cloudy, let it settle and filter it");
    const add = planPreparation(soda).steps.find(({ text }) => text.startsWith("Add the"));
    expect(add?.text).toContain("ground fine just before");
    expect(add?.cautions.map(({ text }) => text).join(" ")).toContain("window open or fan on");
  });
});

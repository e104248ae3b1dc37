// What independent readers objected to in printed sheets of salts that crystallise, and of gases led in, as rules. Facts of the
// bench are common practice, no source.
import { type PlanRequest, planPreparation } from "preparative";
import { benchSheet } from "preparative/sheet";
import { describe, expect, it } from "vitest";

const texts = (request: PlanRequest): string[] => planPreparation(request).steps.map(({ text }) => text);
const sheet = (request: PlanRequest): string => benchSheet(planPreparation(request)).replace(/\s+/g, " ");

const BORAX: PlanRequest = {
  equation: "Na2B4O7·10H2O -> Na2B4O7·10H2O",
  product: "Na2B4O7·10H2O",
  materials: [{ name: "technical borax", form: "Na2B4O7·10H2O", assay: "95 %" }],
  scale: { material: "technical borax", portion: "100 g" },
};

describe("the water of a hydrate that another one comes before", () => {
  // the curve of the table (CRC Handbook) changes at 58.2 °C; 50.1 g in 269 + 45 g of water are 16.0 in 100 g, and at 57.2 °C
  // 100 g of water keep that much
  it("is told by what less of it would bring, where the salt is dissolved", () => {
    const step = texts(BORAX).find((text) => /^Dissolve the technical borax/.test(text));
    expect(step).toMatch(/boil none of it off: with less water Na₂B₄O₇·4H₂O would crystallise first, above 58 °C/);
  });

  it("or where its liquor is boiled down", () => {
    const text = texts({
      equation: "H3PO4 + Na2CO3·10H2O + H2O -> Na2HPO4·12H2O + CO2",
      product: "Na2HPO4·12H2O",
      materials: [
        { name: "phosphoric acid", form: "H3PO4", strength: "85 %" },
        { name: "washing soda", form: "Na2CO3·10H2O", assay: "99 %", excess: "3 %" },
      ],
      scale: { product: "100 g" },
    }).find((one) => /^Boil the liquor down/.test(one));
    expect(text).toMatch(
      /of water left; less is made up with hot water\): with less water Na₂HPO₄·7H₂O would crystallise first, above 35 °C\.$/,
    );
  });

  it("is not said of one that stays what it is, and no factor is assumed that the water does not come from", () => {
    const plan = planPreparation({
      equation: "KNO3 -> KNO3",
      product: "KNO3",
      materials: [{ name: "saltpetre", form: "KNO3", assay: "95 %" }],
      scale: { material: "saltpetre", portion: "100 g" },
    });
    expect(plan.steps.map(({ text }) => text).join("\n")).not.toMatch(/with less water/);
    const assumed = (request: PlanRequest) => planPreparation(request).assumptions.map(({ what }) => what);
    expect(assumed(BORAX).some((what) => /^times the water that just dissolves a feed/.test(what))).toBe(false);
  });
});

describe("a hydrate that puffs up", () => {
  it("has its sample heated in a crucible that is a third full at most", () => {
    expect(sheet(BORAX)).toMatch(/Ignition test: it puffs up: no more than a third of the crucible, slowly/);
    expect(
      sheet({
        equation: "CuO + H2SO4 + 4 H2O -> CuSO4·5H2O",
        product: "CuSO4·5H2O",
        materials: [
          { name: "copper oxide", form: "CuO" },
          { name: "acid", form: "H2SO4", strength: "20 %", excess: "5 %" },
        ],
        scale: { product: "50 g" },
      }),
    ).not.toMatch(/puffs up/);
  });

  // 100 g at 0.7 g/mL lie as 143 mL, and fill a third of 433 mL
  it("fills a third of the crucible that it is dehydrated in", () => {
    const text = texts({
      equation: "KAl(SO4)2·12H2O -> KAl(SO4)2 + 12 H2O",
      product: "KAl(SO4)2",
      materials: [{ name: "alum", form: "KAl(SO4)2·12H2O" }],
      scale: { material: "alum", portion: "100 g" },
    }).join("\n");
    expect(text).toMatch(/no more than a third full, for the alum puffs up \(at least 433 mL/);
  });
});

describe("a gas led into a base", () => {
  const led = (gas: string): PlanRequest => ({
    equation: gas === "CO2" ? "K2CO3 + CO2 + H2O -> 2 KHCO3" : "CuSO4·5H2O + NH3 -> Cu(OH)2 + (NH4)2SO4",
    product: gas === "CO2" ? "KHCO3" : "Cu(OH)2",
    materials: [
      { name: "salt", form: gas === "CO2" ? "K2CO3" : "CuSO4·5H2O" },
      { name: "gas", form: gas, excess: "50 %" },
    ],
    scale: { material: "salt", portion: "100 g" },
  });
  const steps = (gas: string) => planPreparation(led(gas)).steps.filter(({ text }) => /^(Lead|It is done)/.test(text));

  it("shows its bubbles on the way, where water lets it through", () => {
    expect(steps("CO2")[0]!.text).toContain("through the wash bottle (count its bubbles), the empty bottle");
    expect(steps("NH3")[0]!.text).not.toContain("wash bottle (count");
  });

  // 100 g / 138.2 g/mol × 44.01 g/mol = 31.8 g
  it("is told to be enough in a step of its own, where carbonate that is left clouds magnesium sulfate in the cold", () => {
    const [leading, end] = steps("CO2");
    expect(leading!.text).not.toMatch(/absorbed|has gained/);
    expect(end!.text).toMatch(
      /^It is done when no more is absorbed \(its bubbles rise undiminished\) or the vessel has gained 31\.8 g\. Test it: put some magnesium sulfate solution to a few drops of the clear liquor.*cold water: a cloud is carbonate/,
    );
    expect(end!.atHand).toContain("magnesium sulfate solution");
    expect(steps("NH3")[1]!.text).not.toContain("magnesium");
  });
});

describe("rinsed crystals of a salt pair", () => {
  const PAIR: PlanRequest = {
    equation: "BaCl2·2H2O + 2 NaNO3 -> Ba(NO3)2 + 2 NaCl + 2 H2O",
    product: "Ba(NO3)2",
    materials: [
      { name: "barium chloride", form: "BaCl2·2H2O", assay: "99 %" },
      { name: "sodium nitrate", form: "NaNO3", assay: "98 %", excess: "10 %" },
    ],
    scale: { product: "50 g" },
  };

  // 0.6 % of NaCl in 1 g are 5.9 mg, 0.101 mmol in 100 mL; silver nitrate shows 0.05 mmol/L (table of wash tests): 1.01 / 0.05 = 20 times
  // as much water (0.52 % where the liquor that clings was counted as water)
  it("have a sample tested for the other anion, so thin that what the rinse leaves does not show", () => {
    const step = planPreparation(PAIR).steps.find(({ text }) => /^Test 1 g of the crystals/.test(text))!;
    expect(step.text).toMatch(
      /in 100 mL of distilled water, 10 mL of that diluted with more of it to 200 mL, for Cl⁻, against a dark ground \(silver nitrate with dilute nitric acid:.*more than 0\.59 % of NaCl/,
    );
    expect(step.blank).toBe("tests.lastWash");
    expect(sheet(PAIR)).toMatch(/reagents for step \d+: silver nitrate, dilute nitric acid/);
    expect(sheet(PAIR)).toContain("test of the crystals [ ] no cloud [ ] cloud");
  });

  it("are not tested where the product itself answers, or nothing else is dissolved", () => {
    const potassium = texts({
      equation: "KCl + NaIO3 -> KIO3 + NaCl",
      product: "KIO3",
      materials: [
        { name: "potassium chloride", form: "KCl" },
        { name: "sodium iodate", form: "NaIO3" },
      ],
      scale: { product: "50 g" },
    });
    expect([...potassium, ...texts(BORAX)].join("\n")).not.toMatch(/Test 1 g of the crystals/);
  });
});

describe("crystals that would hold all of their liquor", () => {
  // 60 % of what is in the vessel as crystals is the most (table of planning values); by the curve alone they were 79 %
  it("are given more water, and so is their second crop", () => {
    const { steps } = planPreparation({
      equation: "Na2SO3 + S + 5 H2O -> Na2S2O3·5H2O",
      product: "Na2S2O3·5H2O",
      materials: [
        { name: "sodium sulfite", form: "Na2SO3", assay: "96 %" },
        { name: "flowers of sulfur", form: "S", assay: "99.5 %", excess: "25 %" },
      ],
      scale: { material: "sodium sulfite", portion: "50.0 g" },
    });
    const boiled = steps.find(({ text }) => /^Boil the liquor down/.test(text))!;
    expect(boiled.text).toMatch(
      /of water left; less is made up with hot water\): with less water the crystals would hold all the liquor\.$/,
    );
    const cooled = steps.filter(({ text }) => /crystallises, \d+ % of it|about [\d.]+ g more/.test(text));
    expect(cooled).toHaveLength(2);
    for (const { after } of cooled) {
      const crystals = after.solids.reduce((sum, { mass }) => sum + mass.in("g").toNumber(), 0);
      expect(crystals / after.mass.in("g").toNumber()).toBeLessThanOrEqual(0.6);
    }
  });
});

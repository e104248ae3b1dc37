// Liquors that hold more of their product below the boil than at it. ZnSO4 in 100 g of water, as our table has it (CRC Handbook, 98th
// ed.): 75.4 g at 50 °C, 66.4 g at 80 °C, 60.3 g at 100 °C, where the monohydrate stands; Na2SO4 48.2 g at 40 °C, 42.2 g at 100 °C.
import { type Plan, planPreparation } from "preparative";
import { describe, expect, it } from "vitest";

const inPot = ({ steps }: Plan, of: string) =>
  steps.find(({ operation, vessel }) => operation === of && vessel === "pot")!;
const said = ({ steps }: Plan): string => steps.map(({ text }) => text).join("\n");

describe("a liquor that is to hold more than the boil does", () => {
  const zinc = planPreparation({
    equation: "Zn + H2SO4 + 7 H2O -> ZnSO4·7H2O + H2",
    product: "ZnSO4·7H2O",
    materials: [
      { name: "zinc granules", form: "Zn", excess: "5 %" },
      { name: "battery acid", form: "H2SO4", strength: "37 %" },
    ],
    scale: { product: "60 g" },
  });

  // 0.2087 mol are 33.7 g dry, in 44.7 g of water: 75.4 g in 100 g; the boil would hold 27.0 g of it
  it("is evaporated where it is dissolved, and nothing has to dissolve again", () => {
    const { after, apparatus, text } = inPot(zinc, "concentrate");
    expect(text).toMatch(/^Evaporate the liquor in a wide dish on a water bath at 50 °C, not boiling, stirring, until/);
    expect(text).not.toMatch(/boiled off|dissolves again/);
    expect(apparatus).toBe("wide dish");
    expect(after.water.toNumber("g")).toBeCloseTo(33.7 / 0.754, 1);
    expect(after.solids).toEqual([]);
  });

  it("has a second crop the same way", () => {
    expect(said(zinc)).toMatch(
      /For a second crop evaporate the mother liquor on a water bath at 50 °C, not boiling, to/,
    );
  });

  // common practice, no source: a dish on a bath takes hours for what a flame drives off in minutes
  it("is boiled first where most of the water leaves before anything could come at the boil", () => {
    const thin = planPreparation({
      equation: "Zn + H2SO4 + 7 H2O -> ZnSO4·7H2O + H2",
      product: "ZnSO4·7H2O",
      materials: [
        { name: "zinc granules", form: "Zn", excess: "5 %" },
        { name: "dilute acid", form: "H2SO4", strength: "10 %" },
      ],
      scale: { product: "60 g" },
    });
    const { after, text } = inPot(thin, "concentrate");
    const [, first, last] =
      /^Boil the liquor down to ([\d.]+) g, stirring, then evaporate it .* at 50 °C, not boiling, .* weigh ([\d.]+) g/.exec(
        text,
      )!;
    // 33.7 g of ZnSO4 ask for 55.9 g of water at the boil; 1.15 times that is clear for certain
    expect(Number(first)).toBeGreaterThan(33.7 + 1.14 * 55.9);
    expect(Number(first)).toBeLessThan(33.7 + 1.17 * 55.9);
    expect(Number(last)).toBeCloseTo(after.mass.toNumber("g"), 0);
  });

  it("is only boiled where crystals that can be stirred leave what the boil dissolves", () => {
    const glauber = planPreparation({
      equation: "Na2CO3 + H2SO4 + 9 H2O -> Na2SO4·10H2O + CO2",
      product: "Na2SO4·10H2O",
      materials: [
        { name: "soda", form: "Na2CO3" },
        { name: "battery acid", form: "H2SO4", strength: "10 %" },
      ],
      scale: { material: "soda", portion: "53 g" },
    });
    // 71.0 g of Na2SO4 ask for 168 g of water at the boil; at 60 % crystals (148 g, common practice) more than that is left
    const { after, text } = inPot(glauber, "concentrate");
    expect(text).toMatch(/^Boil the liquor down, .*with less water the crystals would hold all the liquor/);
    expect(after.water.toNumber("g")).toBeGreaterThan(168);
    expect(148 / after.mass.toNumber("g")).toBeCloseTo(0.6, 1);
  });

  // 60 °C dissolves 55 g of FeSO4 in 100 g, the boil less; common practice, no source: air oxidises it
  it("stays in its vessel where air is kept from it", () => {
    const vitriol = planPreparation({
      equation: "Fe + H2SO4 + 7 H2O -> FeSO4·7H2O + H2",
      product: "FeSO4·7H2O",
      materials: [
        { name: "iron filings", form: "Fe", excess: "5 %" },
        { name: "battery acid", form: "H2SO4", strength: "20 %" },
      ],
      scale: { product: "50 g" },
    });
    const { apparatus, text } = inPot(vitriol, "concentrate");
    expect(text).toMatch(
      /in its vessel, where less air comes to it than in a dish, on a water bath at 60 °C, not boiling/,
    );
    expect(text).not.toMatch(/boiled off|wide dish/);
    expect(apparatus).toBeUndefined();
  });

  it("is boiled where the boil holds it", () => {
    const nitre = planPreparation({
      equation: "K2CO3 + 2 HNO3 -> 2 KNO3 + CO2 + H2O",
      product: "KNO3",
      materials: [
        { name: "potash", form: "K2CO3" },
        { name: "nitric acid", form: "HNO3", strength: "10 %" },
      ],
      scale: { material: "potash", portion: "20 g" },
    });
    expect(inPot(nitre, "concentrate").text).toMatch(/^Boil the liquor down, stirring, until/);
  });
});

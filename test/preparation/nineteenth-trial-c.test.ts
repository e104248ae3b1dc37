// What independent readers objected to in printed sheets, as rules; the preparations are theirs. Facts of the bench are common
// practice, no source.
import { type PlanRequest, planPreparation } from "preparative";
import { benchSheet } from "preparative/sheet";
import { describe, expect, it } from "vitest";

const texts = (request: PlanRequest): string[] => planPreparation(request).steps.map(({ text }) => text);
const sheet = (request: PlanRequest): string => benchSheet(planPreparation(request)).replace(/\s+/g, " ");
const waterOf = (request: PlanRequest): number =>
  planPreparation(request).feeds.reduce(
    (all, feed) => all + (feed.how === "dissolve" ? feed.dissolving.water.toNumber("g") : 0),
    0,
  );

describe("the water of a double salt whose solubility no table has", () => {
  const copper: PlanRequest = {
    equation: "CuSO4·5H2O + (NH4)2SO4 + H2O -> (NH4)2Cu(SO4)2·6H2O",
    product: "(NH4)2Cu(SO4)2·6H2O",
    materials: [
      { name: "copper sulfate", form: "CuSO4·5H2O", assay: "98 %" },
      { name: "sulfate of ammonia", form: "(NH4)2SO4", assay: "99 %", excess: "5 %" },
    ],
    scale: { product: "39.98 g" },
  };

  // Of iron, zinc and nickel zinc stands in the middle: 37.8 g in 100 g at 75 °C and 46.2 g at 85 °C, 41.7 g between; 0.1 mol of
  // (NH4)2Zn(SO4)2 is 29.36 g and takes 70.4 g, of which the pentahydrate brings 9.0 g. Printed for 0.1 mol: 60 and 66 mL
  it("is that of the salt built alike that is in the middle", () => {
    expect(waterOf(copper)).toBeCloseTo(70.4 - 9.2, 0);
    expect(texts(copper)[3]).toMatch(
      /with more hot water if it needs that \(the water is what \(NH₄\)₂Zn\(SO₄\)₂ takes/,
    );
    expect(sheet(copper)).toContain("100 g of water dissolves 41.7 g of (NH₄)₂Zn(SO₄)₂ at 80 °C: Ladenburg");
  });

  it("sets the vessel and how far it is boiled down", () => {
    // 61 + 25.5 + 14.1 = 101 g; 40.0 g of crystals are 60 % of 67 g
    expect(texts(copper)[5]).toMatch(/no more than 34 mL of water boiled off in all, or the crystals can no longer/);
    expect(sheet(copper)).toMatch(/Vessel 250 mL/);
  });

  it("lets nothing that may be product go on the hot filter", () => {
    expect(texts(copper)[4]).toMatch(
      /grains that more hot water dissolves are product, and get it; if it is cloudy even/,
    );
  });

  // Of the potassium salts nickel alone has figures, 39.8 g in 100 g at 80 °C, 329.0 g/mol anhydrous: 0.1 mol takes 82.7 g, of which
  // the heptahydrate brings 12.6 g; 17.4 g of K2SO4, 21.5 g in 100 g, takes 81 g alone
  it("is more than either salt takes alone", () => {
    const cobalt: PlanRequest = {
      equation: "CoSO4·7H2O + K2SO4 -> K2Co(SO4)2·6H2O + H2O",
      product: "K2Co(SO4)2·6H2O",
      materials: [
        { name: "cobalt sulfate", form: "CoSO4·7H2O" },
        { name: "potassium sulfate", form: "K2SO4" },
      ],
      scale: { product: "43.73 g" },
    };
    expect(waterOf(cobalt)).toBeCloseTo(82.7 - 12.6, 0);
  });

  // no salt built alike has a figure: what each chloride takes hot, one beside the other
  it("is that of the feeds together where none is built alike", () => {
    const chloride: PlanRequest = {
      equation: "CuCl2·2H2O + 2 KCl -> K2CuCl4·2H2O",
      product: "K2CuCl4·2H2O",
      materials: [
        { name: "copper chloride", form: "CuCl2·2H2O" },
        { name: "potassium chloride", form: "KCl" },
      ],
      scale: { product: "31.96 g" },
    };
    // 14.9 g of KCl, 51.3 g in 100 g at 80 °C: 29.1 g; 13.4 g of CuCl2, 98 to 104 g in 100 g: 13.3 g; the dihydrate brings 3.6 g
    expect(waterOf(chloride)).toBeGreaterThan(29.1 + 12.5 - 3.6);
    expect(waterOf(chloride)).toBeLessThan(29.1 + 14 - 3.6);
  });

  it("is its own where the tables have it", () => {
    const mohr: PlanRequest = {
      equation: "FeSO4·7H2O + (NH4)2SO4 -> (NH4)2Fe(SO4)2·6H2O + H2O",
      product: "(NH4)2Fe(SO4)2·6H2O",
      materials: [
        { name: "green vitriol", form: "FeSO4·7H2O" },
        { name: "sulfate of ammonia", form: "(NH4)2SO4" },
      ],
      scale: { product: "39.2 g" },
    };
    expect(planPreparation(mohr).isolation.how).toBe("crystallise");
    expect(texts(mohr).join(" ")).not.toMatch(/built alike|are product/);
  });
});

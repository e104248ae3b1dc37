// What independent readers objected to in printed sheets, as rules; the preparations are theirs. Facts of the bench are common
// practice, no source.
import { type PlanRequest, planPreparation, solubilityOf } from "preparative";
import { describe, expect, it } from "vitest";

const texts = (request: PlanRequest): string[] => planPreparation(request).steps.map(({ text }) => text);

describe("a liquor whose crystals would hold all of it", () => {
  const rochelle: PlanRequest = {
    equation: "2 KHC4H4O6 + Na2CO3 + 7 H2O -> 2 KNaC4H4O6·4H2O + CO2",
    product: "KNaC4H4O6·4H2O",
    materials: [
      { name: "cream of tartar", form: "KHC4H4O6", assay: "99 %" },
      { name: "washing soda", form: "Na2CO3·10H2O", excess: "2 %" },
    ],
    scale: { product: "100 g" },
  };
  const { steps } = planPreparation(rochelle);
  const cooled = steps.find(({ operation }) => operation === "cool")!;

  it("is boiled down no further than leaves it two fifths of liquor, which can be stirred and drained", () => {
    const [crystals] = cooled.after.solids;
    const share = crystals!.mass.toNumber("g") / cooled.after.mass.toNumber("g");
    // it was 75 %: 85 g of crystals in 114 g
    expect(share).toBeLessThan(0.605);
    expect(share).toBeGreaterThan(0.55);
    // by hand: 100 g are 74.5 g of dry salt (210.2 of 282.2 g/mol). w g of water in all and x g of crystals, of which 25.5 % is water,
    // leave 74.5 - 0.745 x dissolved in w - 0.255 x, s g in a gram; x = 0.6 (74.5 + w)
    const s = solubilityOf("KNaC4H4O6", "20 °C").perHundredGramsWater.toNumber("g") / 100;
    const dissolvedIs = (w: number): number => {
      const x = 0.6 * (74.5 + w);
      return 74.5 - 0.745 * x - s * (w - 0.255 * x);
    };
    let [low, high] = [30, 80];
    for (let i = 0; i < 60; i += 1) {
      const middle = (low + high) / 2;
      if (dissolvedIs(middle) > 0) low = middle;
      else high = middle;
    }
    expect(crystals!.mass.toNumber("g")).toBeCloseTo(0.6 * (74.5 + low), -0.5);
  });

  it("is seeded where the salt stays supersaturated, and gives a second crop of what it keeps", () => {
    const all = steps.map(({ text }) => text);
    const seeded = all.findIndex((text) => /put in a few crystals of KNaC₄H₄O₆·4H₂O/.test(text));
    expect(seeded).toBeGreaterThan(0);
    expect(all[seeded + 1]).toMatch(/^Let it cool, stirring now and then/);
    expect(all.join(" ")).toMatch(/For a second crop .* about 1\d\.\d g more, less pure/);
  });
});

describe("a liquor that is filtered from what is over, and boiled down after", () => {
  const acetate: PlanRequest = {
    equation: "Cu2(OH)2CO3 + 4 CH3COOH -> 2 Cu(CH3COO)2·H2O + CO2 + H2O",
    product: "Cu(CH3COO)2·H2O",
    materials: [
      { name: "basic carbonate", form: "Cu2(OH)2CO3", assay: "95 %", excess: "5 %" },
      { name: "vinegar essence", form: "CH3COOH", strength: "25 %" },
    ],
    scale: { product: "50 g" },
  };
  const nickel: PlanRequest = {
    equation: "NiCO3 + H2SO4 + 6 H2O -> NiSO4·7H2O + CO2",
    product: "NiSO4·7H2O",
    materials: [
      { name: "nickel carbonate", form: "NiCO3", excess: "5 %" },
      { name: "sulfuric acid", form: "H2SO4", strength: "25 %" },
    ],
    acknowledge: ["does-not-go"],
    scale: { product: "50 g" },
  };

  it.each([
    ["copper acetate over its carbonate", acetate, "Cu(CH3COO)2", 45.48],
    [
      "copper acetate whose carbonate just meets the acid, which leaves some of it",
      {
        ...acetate,
        materials: [
          { name: "basic carbonate", form: "Cu2(OH)2CO3" },
          { name: "vinegar essence", form: "CH3COOH", strength: "25 %" },
        ],
      },
      "Cu(CH3COO)2",
      45.48,
    ],
    ["nickel sulfate over its carbonate", nickel, "NiSO4", 27.55],
  ] as const)("is saturated 15 K below its filter: %s", (_, request, salt, dry) => {
    const { steps } = planPreparation(request);
    const filter = steps.find(({ operation }) => operation === "filter")!;
    const at = filter.before.temperature.toNumber("°C");
    const below = solubilityOf(salt, `${at - 15} °C`).perHundredGramsWater.toNumber("g");
    // g of dry salt in the theory: 45.48 of 50 g (181.63 of 199.65 g/mol), 27.55 of 50 g (154.75 of 280.86 g/mol)
    const strength = (100 * dry) / filter.before.water.toNumber("g");
    expect(strength).toBeLessThan(below * 1.03);
  });

  it("of copper acetate is boiled down to what it was before", () => {
    const boiled = planPreparation(acetate).steps.find(({ operation }) => operation === "concentrate")!;
    expect(boiled.after.water.toNumber("g")).toBeCloseTo(156, -0.5);
    expect(texts(acetate).join(" ")).not.toMatch(/Make up what has steamed off .* from the Cu/);
  });
});

// What independent readers objected to in printed sheets, as rules; the preparations are theirs. Facts of the bench are common
// practice, no source.
import { type PlanRequest, planPreparation } from "preparative";
import { benchSheet } from "preparative/sheet";
import { describe, expect, it } from "vitest";

const texts = (request: PlanRequest): string[] => planPreparation(request).steps.map(({ text }) => text);
const sheet = (request: PlanRequest): string => benchSheet(planPreparation(request)).replace(/\s+/g, " ");

const glycinate: PlanRequest = {
  equation: "Cu(CH3COO)2.H2O + 2 NH2CH2COOH -> Cu(NH2CH2COO)2.H2O + 2 CH3COOH",
  product: "Cu(NH2CH2COO)2.H2O",
  materials: [
    { name: "copper acetate", form: "Cu(CH3COO)2.H2O", assay: "98 %" },
    { name: "glycine", form: "NH2CH2COOH", assay: "98.5 %", excess: "5 %" },
    { name: "spirit", form: "C2H5OH", strength: "94 %", aside: true, portion: "60 mL" },
  ],
  scale: { product: "6.890 g" },
};

describe("crystals of unknown solubility that come as two solutions are mixed", () => {
  const nickel: PlanRequest = {
    equation: "Ni(CH3COO)2.4H2O + 2 NH2CH2COOH -> Ni(NH2CH2COO)2.2H2O + 2 CH3COOH + 2 H2O",
    product: "Ni(NH2CH2COO)2.2H2O",
    materials: [
      { name: "nickel acetate", form: "Ni(CH3COO)2.4H2O", assay: "98 %" },
      { name: "glycine", form: "NH2CH2COOH", assay: "98.5 %", excess: "5 %" },
    ],
    acknowledge: ["does-not-go"],
    scale: { product: "10 g" },
  };

  it("have each solution filtered before the mixing, and none of it after", () => {
    const all = texts(nickel);
    const mixed = all.findIndex((text) => text.startsWith("Pour the glycine solution"));
    expect(all[mixed - 1]).toContain("if it is not clear, filter it now: mixed, it may give crystals at once");
    expect(all.slice(mixed).join(" ")).not.toContain("Look through");
    expect(all[mixed + 1]).toContain("(crystals that came as it was mixed are the product)");
  });

  it("take a feed in the water of its figure at 25 °C, where none is known hotter", () => {
    // 10 g / 247.9 g/mol × 2 × 1.05 / 0.985 × 75.07 g/mol = 6.5 g as weighed, 25 g in 100 g of water at 25 °C: 1.2 × 26 mL less
    // what is no glycine
    expect(texts(nickel).join(" ")).toMatch(/Dissolve the glycine in a jug of its own in 3[12] mL of water at 25 °C/);
  });
});

describe("copper glycinate", () => {
  it("precipitates cold from two clear solutions, and the liquor keeps what its figure says", () => {
    // 0.17 g of the dry salt in 100 g of water at 0 °C and 0.48 g at 25 °C: 0.42 g at 20 °C, 0.45 g with its water; 163 mL: 0.73 g
    const printed = sheet(glycinate);
    expect(printed).toContain("As much pure water keeps 0.7 g of the product");
    expect(printed).not.toContain("Look through");
    expect(printed).not.toContain("is too far from it");
    expect(printed).toMatch(/Expected dry product 5\.\d to 6\.\d g, light blue/);
  });
});

describe("a hot feed in just the water that dissolves it", () => {
  it("may have a little more", () => {
    const all = texts({
      equation: "Cu(CH3COO)2.H2O + 2 C6H5COOH -> Cu(C6H5COO)2 + 2 CH3COOH + H2O",
      product: "Cu(C6H5COO)2",
      materials: [
        { name: "copper acetate", form: "Cu(CH3COO)2.H2O", assay: "98 %" },
        { name: "benzoic acid", form: "C6H5COOH", assay: "98.5 %", excess: "5 %" },
      ],
      acknowledge: ["does-not-go"],
      scale: { product: "10 g" },
    });
    expect(all.join(" ")).toContain("until it is clear, with a little more hot water if it needs that");
  });
});

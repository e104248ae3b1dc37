// What independent readers objected to in printed sheets, as rules; the preparations are theirs. Facts of the bench are common
// practice, no source.
import { type PlanRequest, planPreparation } from "preparative";
import { describe, expect, it } from "vitest";

const texts = (request: PlanRequest): string[] => planPreparation(request).steps.map(({ text }) => text);

const BLEACHED: PlanRequest = {
  equation: "MnSO4·H2O + NaOCl + 2 NaOH -> MnO2 + NaCl + Na2SO4 + 2 H2O",
  product: "MnO2",
  materials: [
    { name: "manganese sulfate", form: "MnSO4·H2O", assay: "98 %" },
    { name: "bleach", form: "NaOCl", strength: "6.0 %", excess: "15 %" },
    { name: "caustic soda", form: "NaOH", assay: "98 %", excess: "5 %" },
  ],
  scale: { product: "10.00 g" },
};

describe("the salt against a slime that goes colloidal in its wash", () => {
  const washOf = (request: PlanRequest): string => texts(request).find((text) => text.startsWith("Wash"))!;

  it("is no ammonium salt beside hypochlorite, which makes chloramines of it", () => {
    expect(washOf(BLEACHED)).toMatch(
      /put 1 g of sodium sulfate into each 100 mL of the water, and wash once more without it before the test\.$/,
    );
    expect(washOf(BLEACHED)).not.toContain("ammonium");
  });

  it("is none beside silver, which ammonia makes explosive deposits of", () => {
    const silver = washOf({
      equation: "4 AgNO3 + K4[Fe(CN)6]·3H2O -> Ag4[Fe(CN)6] + 4 KNO3 + 3 H2O",
      product: "Ag4[Fe(CN)6]",
      materials: [
        { name: "silver nitrate", form: "AgNO3" },
        { name: "yellow prussiate", form: "K4[Fe(CN)6]·3H2O", excess: "5 %" },
      ],
      scale: { product: "5 g" },
    });
    expect(silver).toContain("sodium sulfate");
  });

  it("is ammonium acetate, which leaves with the drying, where permanganate made the slime", () => {
    const purple = washOf({
      equation: "KMnO4 + MnSO4 + H2O -> MnO2 + K2SO4 + H2SO4",
      product: "MnO2",
      materials: [
        { name: "potassium permanganate", form: "KMnO4" },
        { name: "manganese sulfate", form: "MnSO4·H2O", excess: "5 %" },
      ],
      scale: { product: "20 g" },
    });
    expect(purple).toMatch(/put 1 g of ammonium acetate into each 100 mL of the water\.$/);
  });
});

// What independent readers of the sixteenth trial objected to in liquors of unknown solubility, wastes, labels and what is put in
// beside; the preparations are theirs. Facts of the bench are common practice, no source.
import { type PlanRequest, planPreparation } from "preparative";
import { benchSheet } from "preparative/sheet";
import { describe, expect, it } from "vitest";

const texts = (request: PlanRequest): string =>
  planPreparation(request)
    .steps.map(({ text }) => text)
    .join("\n");
const sheet = (request: PlanRequest): string => benchSheet(planPreparation(request)).replace(/\s+/g, " ");

const tutton: PlanRequest = {
  equation: "ZnSO4·7H2O + K2SO4 -> K2Zn(SO4)2·6H2O + H2O",
  product: "K2Zn(SO4)2·6H2O",
  materials: [
    { name: "zinc sulfate heptahydrate", form: "ZnSO4·7H2O", assay: "98 %", excess: "5 %" },
    { name: "potassium sulfate", form: "K2SO4", assay: "99 %" },
  ],
  scale: { product: "80 g" },
};

const manganese: PlanRequest = {
  equation: "Mn + 2 CH3COOH + 4 H2O -> Mn(CH3COO)2·4H2O + H2",
  product: "Mn(CH3COO)2·4H2O",
  materials: [
    { name: "manganese flakes", form: "Mn", assay: "99.7 %" },
    { name: "acetic acid 60 %", form: "CH3COOH", strength: "60 %", excess: "10 %" },
  ],
  scale: { material: "manganese flakes", portion: "20.0 g" },
};

describe("a liquor of crystals of unknown solubility", () => {
  // 122 mL + 55.5 g + 31.7 g = 209 g in the vessel; 79.9 g of crystals are 60 % of 133 g: 76 mL may go, of the 146 mL there are;
  // by the 2.7 mL that keep 1.5 g of ZnSO4 and the 19.5 g that the crystals bind it would be 124 mL
  it("is boiled down no further than its crystals can be stirred", () => {
    expect(texts(tutton)).toMatch(/no more than 7[67] mL of water boiled off in all, or the crystals can no longer be/);
  });

  it("is cooled in ice, where what is beside the product stays dissolved at 5 °C by figures", () => {
    expect(texts(tutton)).toMatch(/^Let it cool to 20 °C, then in ice and water to 5 °C, and stand/m);
    expect(texts(tutton)).toMatch(/^Filter the crystals off at 5 °C, before the liquor warms/m);
  });

  // 80 % of 79.9 g
  it("gives a second crop where its crystals turn out to be few, and no small mass is called right", () => {
    expect(texts(tutton)).toMatch(/less than 63\.9 g \(80 % of the theory\), boil it down to about half/);
    expect(texts(manganese)).toMatch(/less than 71\.[12] g \(80 % of the theory\), boil it down/);
    expect(sheet(tutton)).toMatch(/less than 63\.9 g much is still in the liquor: take a second crop/);
    expect(sheet(tutton)).not.toMatch(/no mass is too small/);
  });
});

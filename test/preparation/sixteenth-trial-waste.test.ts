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
  // as much of K2Ni(SO4)2, built alike, takes 125 mL (122 mL dissolve the potassium sulfate alone): 125 mL + 55.5 g + 31.7 g = 212 g in
  // the vessel; 79.9 g of crystals are 60 % of 133 g: 79 mL may go, of the 149 mL there are; by the 2.7 mL that keep 1.5 g of ZnSO4 and the 19.5 g that the crystals bind it would be 124 mL
  it("is boiled down no further than its crystals can be stirred", () => {
    expect(texts(tutton)).toMatch(/no more than 79 mL of water boiled off in all, or the crystals can no longer be/);
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

describe("the waste of a product whose solubility is not known", () => {
  // 2.6 g of heptahydrate in excess of 287.6 g/mol are 0.6 g of zinc; 0.180 mol of double salt have 11.8 g more
  it("has the metal of the product up to all of it, and soda up to as much", () => {
    const { metals, vessels } = planPreparation(tutton).waste;
    const zinc = metals.find(({ symbol }) => symbol === "Zn")!;
    expect(zinc.mass.toNumber("g")).toBeCloseTo(0.6, 1);
    expect(zinc.most!.toNumber("g")).toBeCloseTo(0.59 + (79.9 / 443.8) * 65.38, 1);
    const soda = vessels.find(({ vessel }) => vessel === "mother liquor")!.treatment[0]!;
    // 105.99 g/mol for each Zn, 10 % over; what the crystals keep of the excess is not counted to this vessel
    expect(soda.most!.toNumber("g")).toBeCloseTo(1.1 * 105.99 * (79.9 / 443.8 + (0.8 * 2.6) / 287.6), 0);
    expect(sheet(tutton)).toMatch(/Zn dissolved: at least 0\.6 g, up to 12\.[34] g/);
    expect(sheet(tutton)).toMatch(/up to 2[12]\.[0-9] g, in portions until no more precipitates/);
  });

  // 20.0 g of flakes, all of which is in the product
  it("is said to hold metal where only the product brings it", () => {
    expect(sheet(manganese)).toMatch(/Mn dissolved: up to 19\.9 g/);
    expect(sheet(manganese)).toMatch(/metals are dissolved in it/);
  });
});

describe("strontium in a waste", () => {
  // its carbonate is hardly dissolved at any pH above that of hydrogencarbonate; from memory
  it("is precipitated by soda", () => {
    const text = sheet({
      equation: "SrCO3 + 2 HCOOH + H2O -> Sr(HCOO)2·2H2O + CO2",
      product: "Sr(HCOO)2·2H2O",
      materials: [
        { name: "strontium carbonate, pottery grade", form: "SrCO3", assay: "98 %", excess: "3 %" },
        { name: "formic acid 85 %", form: "HCOOH", strength: "85 %" },
      ],
      scale: { product: "60 g" },
    });
    expect(text).toMatch(/Sr dissolved: .* g; pH at which it precipitates: 8 and above, as carbonate with soda/);
  });
});

const recrystallised: PlanRequest = {
  equation: "CuSO4·5H2O -> CuSO4·5H2O",
  product: "CuSO4·5H2O",
  materials: [
    {
      name: "agricultural copper sulfate",
      form: "CuSO4·5H2O",
      assay: "98 %",
      also: [{ form: "FeSO4·7H2O", share: "2 %" }],
    },
    { name: "hydrogen peroxide 3 %", form: "H2O2", strength: "3 %", aside: true, portion: "8 g" },
    { name: "basic copper carbonate", form: "CuCO3·Cu(OH)2", assay: "95 %", aside: true, portion: "1 g" },
  ],
  scale: { material: "agricultural copper sulfate", portion: "100 g" },
};

describe("what is put in and takes no part in the equation", () => {
  // below 5 % hydrogen peroxide has no statement (concentration limits of its harmonised entry)
  it("is judged at its own strength, and stands among what is handled", () => {
    const peroxide = planPreparation(recrystallised).cautions.substances.find(({ material }) => material === "H2O2")!;
    expect(peroxide.statements).toEqual([]);
    expect(sheet(recrystallised)).toMatch(/hydrogen peroxide 3 %, H₂O₂, 3 % Hazard: too dilute/);
    expect(sheet(recrystallised)).toMatch(/basic copper carbonate, CuCO₃·Cu\(OH\)₂ /);
  });
});

describe("the label line of a sheet", () => {
  // harmonised: H272, H301, H332 for barium nitrate as a barium salt and an oxidiser
  it("has the signal word and what the product does", () => {
    const text = sheet({
      equation: "BaCl2·2H2O + 2 NaNO3 -> Ba(NO3)2 + 2 NaCl + 2 H2O",
      product: "Ba(NO3)2",
      materials: [
        { name: "barium chloride dihydrate", form: "BaCl2·2H2O", assay: "99 %" },
        { name: "sodium nitrate", form: "NaNO3", assay: "98 %", excess: "10 %" },
      ],
      scale: { product: "50 g" },
    });
    expect(text).toMatch(/Ba\(NO₃\)₂, mass, date, batch, DANGER: oxidiser: makes fires worse; poisonous if swallowed/);
  });
});

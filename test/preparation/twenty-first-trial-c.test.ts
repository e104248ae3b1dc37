// What a reader of six printed sheets found: figures worked out by hand here, with how they come, and never by the code.

import { benchSheet, type PlanRequest, planPreparation, solubilityOf } from "preparative";
import { describe, expect, it } from "vitest";

const onOneLine = (text: string): string => text.replace(/\s+/g, " ");
const printed = (request: PlanRequest): string => onOneLine(benchSheet(planPreparation(request), { format: "text" }));

const STRUVITE: PlanRequest = {
  title: "struvite for slow plant food",
  equation: "MgSO4·7H2O + (NH4)2HPO4 + NH3 -> MgNH4PO4·6H2O + (NH4)2SO4 + H2O",
  product: "MgNH4PO4·6H2O",
  materials: [
    { name: "Epsom salt", form: "MgSO4·7H2O", assay: "99.0 %" },
    { name: "diammonium phosphate fertiliser", form: "(NH4)2HPO4", assay: "97.0 %", excess: "5 %" },
    { name: "household ammonia", form: "NH3", strength: "9.5 %", excess: "20 %" },
  ],
  scale: { material: "Epsom salt", portion: "10.00 g" },
};

describe("struvite, for a class", () => {
  const sheet = printed(STRUVITE);
  const all = onOneLine(benchSheet(planPreparation(STRUVITE), { format: "text", groups: 8 }));

  it("counts the water of every wash for the shopping list", () => {
    // 35 mL and 43 mL to dissolve, two washes of 40 mL: 158 mL; eight times that is 1264 mL
    expect(all).toMatch(/water, washing included H₂O 158 mL 1\.26 L/);
  });

  it("tests with a fresh drop: what was weighed is in the vessel by then", () => {
    expect(sheet).toMatch(/a drop of fresh diammonium phosphate fertiliser solution: a cloud/);
    expect(sheet).toMatch(/a pinch more of the diammonium phosphate fertiliser, in a little water \(step 7\)/);
  });

  it("asks for the pH that shows whether the ammonia was enough", () => {
    // 0.0084 mol NH3 and 0.0845 mol NH4+ are left in the liquor: pKa 9.25 (CRC Handbook) + log(0.0084/0.0845) = 8.2; the books
    // keep the second ammonium of the excess phosphate apart, and paper shows whole steps: 8 or 9
    expect(sheet).toMatch(
      /Paper shows about pH [89]: lower by more than 1, stir in a little more of the household ammonia/,
    );
  });

  it("washes with the ammonia of the batch, thinned", () => {
    // 40 mL at 2.5 % is 1.0 g of NH3; of 9.5 % that is 10.5 g, of both washes 21.05 g, to 0.1 g more for the weighing
    expect(sheet).toMatch(/2\.5 % ammonia, cold: 10\.5 g of the household ammonia in 29 mL of water/);
    expect(sheet).toMatch(/21\.1 g more of the household ammonia \(step 9\)/);
    expect(sheet).not.toMatch(/strong ammonia/);
    // 8.7 g weighed with it: 29.8 g a group
    expect(all).toMatch(/household ammonia NH₃ 29\.[78] g/);
  });

  it("ignites to the pyrophosphate hot enough", () => {
    // Wiley, Principles and Practice of Agricultural Analysis, vol. 2, 1895, 64: the muffle shows white-red heat.
    // Mg2P2O7 222.55 g/mol from two of 245.41 g/mol: 45.3 %
    expect(sheet).toMatch(
      /\(at bright red heat, 900 to 1000 °C: cooler, some hydrogen stays in it\) leaves 45\.3 %, Mg₂P₂O₇/,
    );
  });
});

describe("a rinse that costs more than it takes out", () => {
  const sheet = printed({
    title: "sodium acetate trihydrate for hand warmers",
    equation: "CH3COOH + NaHCO3 + 2 H2O -> CH3COONa·3H2O + CO2",
    product: "CH3COONa·3H2O",
    materials: [
      { name: "vinegar essence", form: "CH3COOH", strength: "25 %", excess: "3 %" },
      { name: "baking soda", form: "NaHCO3", assay: "99.0 %" },
    ],
    scale: { product: "200 g" },
  });

  it("is left out, and nothing of the crop is thrown away", () => {
    // 124.7 g of soda has 1.25 g besides; of some 216 mL with the crystals' liquor of 97 g (77 mL, 30 of them held) that is 0.5 g, 0.3 % of the crop; 30 mL of ice water takes 36.2 g in 100 g (CRC Handbook, 98th ed., 0 °C) and its water of crystallisation:
    // 23.7 g, 16 % of it
    expect(sheet).toMatch(
      /Do not rinse: 30 mL of ice-cold water would dissolve up to 23\.[67] g of them to take 0\.5 g out/,
    );
    expect(sheet).not.toMatch(/Wash water, about/);
    // 151 g crystallise; the liquor they keep has some 15 g more
    expect(sheet).toMatch(/the first alone 15[0-2] to 16\d g/);
  });
});

const VITRIOL: PlanRequest = {
  title: "green vitriol from steel wool and battery acid",
  equation: "Fe + H2SO4 + 7 H2O -> FeSO4·7H2O + H2",
  product: "FeSO4·7H2O",
  materials: [
    { name: "battery acid", form: "H2SO4", strength: "37 %", density: "1.28 g/mL" },
    { name: "degreased steel wool", form: "Fe", assay: "98.5 %", excess: "10 %" },
  ],
  scale: { material: "battery acid", portion: "100 g" },
};

describe("green vitriol heated in air", () => {
  const sheet = printed(VITRIOL);

  it("leaves iron(III) oxide, and no iron(II) sulfate", () => {
    // Thermochim. Acta 274, 273 (1996): FeOHSO4 and Fe2O(SO4)2 form on the way. Fe2O3 159.69 of two FeSO4·7H2O of 278.01: 28.7 %
    expect(sheet).toMatch(/in air at red heat, under a hood: sulfur oxides leave; [^)]*\) leaves 28\.7 %, Fe₂O₃/);
    expect(sheet).not.toMatch(/54\.6 %/);
  });
});

describe("potassium copper sulfate", () => {
  const sheet = printed({
    title: "potassium copper sulfate",
    equation: "CuSO4·5H2O + K2SO4 + H2O -> K2Cu(SO4)2·6H2O",
    product: "K2Cu(SO4)2·6H2O",
    materials: [
      { name: "root killer", form: "CuSO4·5H2O", assay: "99.0 %" },
      {
        name: "sulfate of potash",
        form: "K2SO4",
        assay: "96.0 %",
        excess: "0 %",
        also: [
          { form: "KCl", share: "1.5 %" },
          { form: "CaSO4", share: "0.8 %" },
        ],
      },
    ],
    scale: { material: "root killer", portion: "50.0 g" },
  });

  it("is in the table with what a printed preparation says", () => {
    // Blanchard, Phelan and Davis, Synthetic Inorganic Chemistry, preparation 4: 11 g of the anhydrous salt in 100 g of water at 25 °C
    expect(solubilityOf("K2Cu(SO4)2", "25 °C").perHundredGramsWater.toNumber("g")).toBe(11);
  });

  it("tells how much to expect, and what heat takes of it", () => {
    // theory 0.19825 mol x 441.95 = 87.6 g; x g left dissolved with 11/100 of the free water: of 108 g in all 18 g is bound in 74.5 g of
    // crystals, 90 g keep 9.9 g anhydrous = 13.1 g crystals: 74.5 g
    expect(sheet).toMatch(/7[45]\.\d g of K₂Cu\(SO₄\)₂·6H₂O crystallises, 85 %/);
    expect(sheet).not.toMatch(/usually about half/);
    // six waters of 18.015 in 441.95: 24.5 %
    expect(sheet).toMatch(/a sample loses 24\.5 %/);
  });

  it("does not chase gypsum with hot water", () => {
    expect(sheet).toMatch(/until only CaSO₄ is left, a trace that more water does not dissolve/);
  });
});

describe("a vessel that is kept warm as metal comes into its acid", () => {
  it("has one window, between saturation and the temperature at which another hydrate comes", () => {
    const sheet = printed(VITRIOL);
    // 57.3 g of FeSO4 in 117 g of water: 49 g in 100 g. CRC Handbook, 98th ed.: 48.8 g at 50 °C and 55.0 g at 60 °C, above which the
    // liquor keeps less: 55 to 60 °C
    expect(sheet).toMatch(/it is below 60 °C again.*keep it no colder than 55 °C/);
    expect(sheet).toMatch(/warming it at the end, to no more than 60 °C/);
    expect(sheet).not.toMatch(/65 °C/);
  });
});

describe("what decides how much metal is weighed", () => {
  const sheet = printed({
    title: "copper powder from spent etchant",
    equation: "CuCl2 + Fe -> Cu + FeCl2",
    product: "Cu",
    materials: [
      {
        name: "spent etchant",
        form: "CuCl2",
        strength: "1.20 mol/L",
        density: "1.16 g/mL",
        also: [{ form: "HCl", share: "2.83 %" }],
      },
      { name: "iron wire coil", form: "Fe", assay: "98.5 %", excess: "10 %" },
    ],
    scale: { material: "spent etchant", portion: "500 mL" },
  });
  const [weighing = "", after = ""] = sheet.split(" Procedure ---------");

  it("is said at the weighing, and not after the work", () => {
    // 0.600 mol Cu takes 33.5 g of iron, twice that 67.0 g; 580 g x 2.83 % / 36.46 g/mol = 0.450 mol HCl takes 12.6 g: 79.6 g in all
    expect(weighing).toMatch(/crumbs are left in the product; whoever has about (79|80|81) g takes that/);
    expect(after).not.toMatch(/crumbs are left/);
  });

  it("names the acid that a pack brings, and what it does to the metal", () => {
    expect(weighing).toMatch(/spent etchant: 1\.20 mol\/L; with 2\.83 % of HCl in it/);
    expect(weighing).toMatch(/13 g of iron wire coil is weighed for the HCl that the spent etchant brings along/);
    expect(weighing).toMatch(/\(Fe \+ 2 HCl → FeCl₂ \+ H₂\)/);
  });
});

describe("alcohol beside crystals that are made purer", () => {
  const fertiliser: PlanRequest = {
    title: "monopotassium phosphate from fertiliser",
    equation: "KH2PO4 -> KH2PO4",
    product: "KH2PO4",
    materials: [
      { name: "0-52-34 fertiliser", form: "KH2PO4", assay: "98.0 %", also: [{ form: "K2SO4", share: "1.2 %" }] },
      { name: "spirit", form: "C2H5OH", strength: "94 %", aside: true, portion: "30 mL" },
    ],
    scale: { material: "0-52-34 fertiliser", portion: "100.0 g" },
  };

  it("rinses them, thinned, and brings nothing out of their liquor", () => {
    const { steps } = planPreparation(fertiliser);
    const rinse = steps.find(({ operation }) => operation === "rinse")!;
    expect(rinse.text).toMatch(/^Rinse the crystals with the 30 mL of spirit in 30 mL of water, ice-cold/);
    // no alcohol in what runs off before: it may be boiled down
    const filtered = steps.find(({ left }) => left.some(({ what }) => what === "filtrate"))!;
    expect(filtered.left[0]!.contents.dissolved.map(({ formula }) => formula)).not.toContain("C2H5OH");
  });

  it("where it does come into a liquor, is counted against its water and not its crystals, and what it brings is said not to be counted", () => {
    const sheet = printed({
      ...VITRIOL,
      materials: [
        ...VITRIOL.materials,
        { name: "spirit", form: "C2H5OH", strength: "94 %", aside: true, portion: "30 mL" },
      ],
    });
    expect(sheet).toMatch(/How much it brings is in no table, and comes on top of what is expected below/);
    expect(sheet).toMatch(/or brought out by the alcohol, which the steps do not count/);
    // 57.3 g of FeSO4 in 117 g of water, 174 g; less 77.9 g of crystals 96 g: some 80 mL if it is as dense as 1.2 g/mL, 96 mL as water
    expect(sheet).toMatch(/It is less than there is liquor \([89]\d mL\)/);
  });
});

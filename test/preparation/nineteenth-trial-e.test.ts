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
  it("precipitates cold from two clear solutions, and the liquor keeps what its equilibrium says", () => {
    // it said 0.7 g, what pure water keeps (0.42 g of the dry salt in 100 g at 20 °C); the acetic acid that is set free keeps three
    // times as much (worked out in twentieth-trial-a), and the spirit brings some of that out again
    const printed = sheet(glycinate);
    // in ice 0.212 g of the dry salt in 100 g of water for 0.396 g at 20 °C (between the figures of the table at 0 and 25 °C): 1.2 g
    // of the 2.3 g (was 2.3 g, filtered at the warmth of the room)
    expect(printed).toContain("Without the alcohol this liquor would keep 1.2 g of the product at equilibrium");
    expect(printed).not.toContain("Look through");
    expect(printed).not.toContain("is too far from it");
    // 6.9 g less the 1.2 g and a tenth of the theory for handling, up to all of it for the spirit (was 3.7 g at the least)
    expect(printed).toMatch(/Expected dry product 4\.9 to 6\.9 g, light blue/);
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

describe("a waste", () => {
  const nickel: PlanRequest = {
    equation: "Ni(CH3COO)2.4H2O + 2 NH2CH2COOH -> Ni(NH2CH2COO)2.2H2O + 2 CH3COOH + 2 H2O",
    product: "Ni(NH2CH2COO)2.2H2O",
    materials: [
      { name: "nickel acetate", form: "Ni(CH3COO)2.4H2O", assay: "98 %" },
      { name: "glycine", form: "NH2CH2COOH", assay: "98.5 %", excess: "5 %" },
      { name: "spirit", form: "C2H5OH", strength: "94 %", aside: true, portion: "60 mL" },
    ],
    acknowledge: ["does-not-go"],
    scale: { product: "10 g" },
  };

  it("in which an amino acid holds the metal is collected as it is: no soda precipitates that", () => {
    for (const request of [nickel, glycinate]) {
      const printed = sheet(request);
      expect(planPreparation(request).waste.treatment).toEqual([]);
      expect(printed).toMatch(/Glycinate keeps the (Ni|Cu) in solution, and soda precipitates hardly any of it/);
      expect(printed).not.toMatch(/Na₂CO₃|precipitate (the metal|them)|pH at which it precipitates/);
    }
  });

  it("with more than a tenth of alcohol burns, whoever put it in", () => {
    // 60 mL of spirit, 94 %, in some 170 mL
    expect(sheet(nickel)).toContain("the liquor burns: closed, labelled as flammable, away from flames and hot plates");
  });

  it("does not list what is missing in the data", () => {
    expect(sheet(nickel).match(/no solubility of Ni\(CH3COO\)2 in the table/g)).toHaveLength(1);
  });

  it("foams where soda goes to an acid or to a salt as sour as one, and only there", () => {
    const foams = /soda foams in it: in portions, in a large open vessel/;
    const oxalic: PlanRequest = {
      equation: "H2C2O4.2H2O -> H2C2O4.2H2O",
      product: "H2C2O4.2H2O",
      materials: [{ name: "old wood bleach", form: "H2C2O4.2H2O", assay: "95 %" }],
      scale: { material: "old wood bleach", portion: "50.0 g" },
    };
    expect(sheet(oxalic)).toMatch(foams);
    // 52 mmol of lye is over, and no soda goes in
    expect(
      sheet({
        equation: "2 CuSO4.5H2O + C6H8O6 + 4 NaOH -> Cu2O + C6H6O6 + 2 Na2SO4 + 13 H2O",
        product: "Cu2O",
        materials: [
          { name: "copper sulfate", form: "CuSO4.5H2O", assay: "98 %" },
          { name: "vitamin C", form: "C6H8O6", assay: "99 %", excess: "20 %" },
          { name: "caustic soda", form: "NaOH", assay: "97 %", excess: "30 %" },
        ],
        scale: { product: "7.155 g" },
      }),
    ).not.toMatch(foams);
    expect(
      sheet({
        equation: "Sn + 2 HCl + 2 H2O -> SnCl2.2H2O + H2",
        product: "SnCl2.2H2O",
        materials: [
          { name: "tin granules", form: "Sn", assay: "99 %", excess: "10 %" },
          { name: "hydrochloric acid", form: "HCl", strength: "32 %" },
        ],
        scale: { product: "50 g" },
      }),
    ).toMatch(foams);
  });
});

describe("crystals that dilute alcohol hardly dissolves", () => {
  it("are rinsed with no less than covers them", () => {
    const rinse = planPreparation({
      ...glycinate,
      equation: "Ni(CH3COO)2.4H2O + 2 NH2CH2COOH -> Ni(NH2CH2COO)2.2H2O + 2 CH3COOH + 2 H2O",
      product: "Ni(NH2CH2COO)2.2H2O",
      materials: [
        { name: "nickel acetate", form: "Ni(CH3COO)2.4H2O", assay: "98 %" },
        { name: "glycine", form: "NH2CH2COOH", assay: "98.5 %", excess: "5 %" },
        { name: "spirit", form: "C2H5OH", strength: "94 %", aside: true, portion: "60 mL" },
      ],
      acknowledge: ["does-not-go"],
    }).steps.find(({ operation }) => operation === "rinse")!;
    // 6.9 g keep 1.4 mL, which no cylinder parts in two
    expect(rinse.text).toContain("with 10 mL of 50 % alcohol, in two portions");
  });
});

describe("a salt pair that is boiled down", () => {
  const saltpetre: PlanRequest = {
    equation: "NaNO3 + KCl -> KNO3 + NaCl",
    product: "KNO3",
    materials: [
      { name: "soda saltpetre", form: "NaNO3", assay: "98 %" },
      { name: "potassium chloride", form: "KCl", assay: "98 %" },
    ],
    scale: { product: "30.33 g" },
  };
  const { steps } = planPreparation(saltpetre);

  it("has its second crop rinsed with as much less as that is smaller", () => {
    const [rinse] = steps.filter(({ operation }) => operation === "rinse");
    const all = rinse!.amounts![0]!.toNumber("g");
    const cooled = steps.filter(({ operation }) => operation === "cool");
    const last = cooled.at(-1)!;
    const [, rinsed, second] = /rinse as before, but with (\d\.\d) mL: about (\d\.\d) g more/.exec(last.text)!;
    const [one, other] = [cooled[0]!, last].map(({ after }) =>
      after.solids.find(({ formula }) => formula === "KNO₃")!.mass.toNumber("g"),
    ) as [number, number];
    // 10 mL for some 24 g: 0.86 mL for 2.1 g; by the masses themselves, for 2.1 as printed is known to 2 %
    expect(Number(second)).toBeCloseTo(other, 1);
    expect(Number(rinsed)).toBeCloseTo((all * other) / one, 1);
    expect(last.text).toContain("keep and dry it apart");
  });

  it("is made up with hot water where it has boiled too far", () => {
    for (const { text } of steps.filter(({ operation }) => operation === "concentrate"))
      expect(text).toContain("less is made up with hot water");
  });

  it("is tested in steps of 10 mL, which a cylinder shows", () => {
    const test = steps.find(({ text }) => text.startsWith("Test 1 g of the crystals"))!;
    // 1.8 mg of chloride in a litre is seen: 200 times thinner, ten by ten and twenty
    expect(test.text).toMatch(
      /10 mL of that diluted with more of it to 100 mL, 10 mL of that diluted with more of it to 200 mL, for Cl⁻, against a dark ground/,
    );
  });

  it("says of no other salt what no table has", () => {
    expect(sheet(saltpetre)).not.toContain("no table has");
  });
});

describe("oxalic acid", () => {
  const oxalic: PlanRequest = {
    equation: "H2C2O4.2H2O -> H2C2O4.2H2O",
    product: "H2C2O4.2H2O",
    materials: [{ name: "old wood bleach", form: "H2C2O4.2H2O", assay: "95 %" }],
    scale: { material: "old wood bleach", portion: "50.0 g" },
  };
  const printed = sheet(oxalic);

  it("damages eyes by what suppliers notify, and says where that is from", () => {
    const { substances } = planPreparation(oxalic).cautions;
    const [own] = substances;
    expect(own!.statements.map(({ code, source }) => [code, source])).toEqual([
      ["H318", "oxalicAcidSheets"],
      ["H312", "clpAnnexVI"],
      ["H302", "clpAnnexVI"],
    ]);
    expect(own!.notes.join()).toContain("suppliers notify H318, which the entry has not");
    expect(printed).toMatch(/DANGER: Causes serious eye damage \(H318\)/);
    expect(printed).toMatch(/First aid: in the eyes: rinse at once with running water for 15 minutes/);
    expect(printed).toContain("cautions: safety data sheet of a supplier of oxalic acid dihydrate, 2018");
  });

  it("leaves a waste that calcium takes the oxalate out of", () => {
    // after the second crop that its water for the filter is worth 2.1 g and 0.5 g of H2C2O4 are left, 29 mmol: 1.1 × 0.029 mol ×
    // 110.98 g/mol = 3.5 g, 3.6 g before rounding
    expect(printed).toMatch(/Soda leaves its oxalate dissolved.*calcium chloride \(3\.6 g of it dry\)/);
  });

  it("is not boiled down, and not cautioned as if it were", () => {
    // with an assay it is filtered, in so much water that a second crop is worth it
    const clear = sheet({
      ...oxalic,
      materials: [{ name: "wood bleach", form: "H2C2O4.2H2O" }],
      scale: { material: "wood bleach", portion: "50.0 g" },
    });
    expect(clear).not.toContain("never boil it dry");
    expect(printed).toContain("Dry at no more than 40 °C");
  });
});

describe("a liquor that is boiled down", () => {
  it("has its caution at that step", () => {
    const { steps } = planPreparation({
      equation: "NaNO3 + KCl -> KNO3 + NaCl",
      product: "KNO3",
      materials: [
        { name: "soda saltpetre", form: "NaNO3", assay: "98 %" },
        { name: "potassium chloride", form: "KCl", assay: "98 %" },
      ],
      scale: { product: "30.33 g" },
    });
    const cautioned = steps.filter(({ cautions }) => cautions.some(({ text }) => /never boil it dry/.test(text)));
    expect(cautioned.map(({ operation }) => operation)).toEqual(["concentrate"]);
  });
});

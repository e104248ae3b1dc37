// What a fourth independent reader objected to, of twelve sheets, as rules; the preparations are theirs, chosen before any sheet was
// printed. Facts of the bench are common practice, no source.
import { type PlanRequest, planPreparation } from "preparative";
import { benchSheet } from "preparative/sheet";
import { describe, expect, it } from "vitest";
import { cautions } from "../../src/substance";

const texts = (request: PlanRequest): string[] => planPreparation(request).steps.map(({ text }) => text);
const sheet = (request: PlanRequest): string => benchSheet(planPreparation(request)).replace(/\s+/g, " ");

describe("a hexaammine of cobalt(III)", () => {
  const luteo = (charcoal: boolean): PlanRequest => ({
    equation: "2 CoCl2·6H2O + 2 NH4Cl + 10 NH3 + H2O2 -> 2 [Co(NH3)6]Cl3 + 14 H2O",
    product: "[Co(NH3)6]Cl3",
    materials: [
      { name: "cobalt chloride", form: "CoCl2·6H2O", assay: "98 %" },
      { name: "sal ammoniac", form: "NH4Cl", excess: "20 %" },
      { name: "ammonia solution", form: "NH3", strength: "25 %", excess: "50 %" },
      { name: "hydrogen peroxide", form: "H2O2", strength: "6 %", excess: "20 %" },
      ...(charcoal ? [{ name: "bone char", form: "C", portion: "1.0 g" as const, aside: true as const }] : []),
    ],
    scale: { material: "cobalt chloride", portion: "12.0 g" },
  });

  // 12.0 g × 0.98 / 237.93 g/mol × 267.48 g/mol = 13.22 g; 8 % of that
  it("is made over charcoal, which is there before the oxidiser and leaves on a hot filter", () => {
    const steps = texts(luteo(false));
    const at = (start: RegExp): number => steps.findIndex((text) => start.test(text));
    const stirred = at(/^Stir in 1\.1 g of activated charcoal/);
    expect(stirred).toBeGreaterThan(0);
    expect(stirred).toBeLessThan(at(/hydrogen peroxide into the vessel/));
    expect(at(/^Filter hot .* from the activated charcoal/)).toBeGreaterThan(at(/^Warm it to 60 °C/));
    expect(steps.join("\n")).toMatch(/red or violet is the pentaammine/);
    expect(sheet(luteo(false))).toContain("activated charcoal");
  });

  it("takes the charcoal of the table where there is some, and none for a pentaammine", () => {
    expect(texts(luteo(true)).join("\n")).not.toMatch(/activated charcoal/);
    expect(texts(luteo(true)).join("\n")).toMatch(/Stir in the 1\.0 g of bone char/);
    const purple = texts({
      equation: "2 CoCl2·6H2O + 2 NH4Cl + 8 NH3 + H2O2 -> 2 [Co(NH3)5Cl]Cl2 + 14 H2O",
      product: "[Co(NH3)5Cl]Cl2",
      materials: [
        { name: "cobalt chloride", form: "CoCl2·6H2O" },
        { name: "sal ammoniac", form: "NH4Cl" },
        { name: "ammonia solution", form: "NH3", strength: "25 %" },
        { name: "hydrogen peroxide", form: "H2O2", strength: "6 %" },
      ],
      scale: { material: "cobalt chloride", portion: "12.0 g" },
    });
    expect(purple.join("\n")).not.toMatch(/charcoal/);
  });
});

describe("an iron(II) chloride from the metal", () => {
  const request: PlanRequest = {
    equation: "Fe + 2 HCl + 4 H2O -> FeCl2·4H2O + H2",
    product: "FeCl2·4H2O",
    materials: [
      { name: "iron filings", form: "Fe", assay: "98 %", excess: "10 %" },
      { name: "muriatic acid", form: "HCl", strength: "31 %" },
    ],
    scale: { product: "30 g" },
  };

  it("is boiled down with iron in it, filtered after, and gives no second crop", () => {
    const steps = texts(request);
    const boiled = steps.findIndex((text) => text.startsWith("Boil the liquor down"));
    // nearly saturated it is made up to its mass before the filter
    const filtered = steps.findIndex((text) => text.includes("filter it hot"));
    expect(boiled).toBeGreaterThan(0);
    expect(filtered).toBe(boiled + 1);
    expect(steps[boiled - 1]).toMatch(/leave what is left of the Fe in it/);
    expect(steps.join("\n")).not.toMatch(/second crop/);
    expect(steps.join("\n")).toMatch(/Dry in a desiccator/);
  });
});

describe("a hot filter", () => {
  it("is rinsed with water enough where what is on it stays, and with a little boiling water where it is a salt for want of water", () => {
    const magnesia = texts({
      equation: "MgO + H2SO4 + H2O -> MgSO4·7H2O",
      product: "MgSO4·7H2O",
      materials: [
        { name: "magnesia", form: "MgO", excess: "3 %" },
        { name: "acid", form: "H2SO4", strength: "20 %" },
      ],
      scale: { product: "100 g" },
    }).join("\n");
    expect(magnesia).toMatch(/from the MgO that is not dissolved, and rinse it with a little hot water/);
    const saltpetre = texts({
      equation: "NaNO3 + KCl -> KNO3 + NaCl",
      product: "KNO3",
      materials: [
        { name: "Chile saltpetre", form: "NaNO3" },
        { name: "potash chloride", form: "KCl" },
      ],
      scale: { material: "Chile saltpetre", portion: "85 g" },
    }).join("\n");
    expect(saltpetre).toMatch(
      /from the NaCl that is not dissolved, press it, and rinse it with 9 mL of boiling water into the liquor: it keeps about [\d.]+ g of that with/,
    );
  });
});

describe("a metal", () => {
  const lead = (excess: "20 %" | "150 %"): PlanRequest => ({
    equation: "Pb(CH3COO)2·3H2O + Zn -> Pb + Zn(CH3COO)2 + 3 H2O",
    product: "Pb",
    materials: [
      { name: "sugar of lead", form: "Pb(CH3COO)2·3H2O" },
      { name: "zinc strip", form: "Zn", excess },
    ],
    scale: { material: "sugar of lead", portion: "15 g" },
  });
  const checks = (request: PlanRequest): string =>
    planPreparation(request)
      .checks.map(({ text }) => text)
      .join("\n");

  it("is not ground, and crumbs of a strip that is nearly used up are told of", () => {
    expect(sheet(lead("20 %"))).not.toMatch(/[Cc]rush/);
    expect(checks(lead("20 %"))).toMatch(/twice the need and more stays whole/);
    expect(checks(lead("150 %"))).not.toMatch(/stays whole/);
    expect(sheet(lead("20 %"))).toContain("a bright piece of the same metal");
    expect(sheet(lead("20 %"))).toContain("no test tells CH₃COO⁻.");
  });
});

describe("a fired carbonate", () => {
  // 50.0 g × 0.97 / 125.4 g/mol × 81.38 g/mol = 31.47 g; of Zn5(CO3)2(OH)6, 548.96 / 5 = 109.79 for each Zn: 35.95 g; the 1.5 g
  // besides usually are water in a carbonate that is sold basic (common practice), and leave
  it("says at what mass it stands still if the pack was the basic one", () => {
    const plan = planPreparation({
      equation: "ZnCO3 -> ZnO + CO2",
      product: "ZnO",
      materials: [{ name: "zinc carbonate", form: "ZnCO3", assay: "97 %" }],
      scale: { material: "zinc carbonate", portion: "50.0 g" },
    });
    expect(plan.checks.map(({ text }) => text).join("\n")).toMatch(
      /if it stands still at 35\.9\d? g instead, the pack was Zn₅\(OH\)₆\(CO₃\)₂, which is sold by the same name, and the ZnO is right/,
    );
  });
});

describe("iodine", () => {
  const request: PlanRequest = {
    equation: "2 KI + H2O2 + H2SO4 -> I2 + K2SO4 + 2 H2O",
    product: "I2",
    materials: [
      { name: "potassium iodide", form: "KI" },
      { name: "hydrogen peroxide", form: "H2O2", strength: "3 %", excess: "20 %" },
      { name: "battery acid", form: "H2SO4", strength: "37 %", excess: "20 %" },
    ],
    scale: { material: "potassium iodide", portion: "10 g" },
  };

  it("has a hood for its vapour, a closed vessel to dry in, and a reducer for the waste", () => {
    expect(sheet(request)).toContain("[ ] fume hood");
    expect(sheet(request)).toMatch(/Its vapour is poisonous, and stains/);
    expect(sheet(request)).toContain("desiccator, or jar that closes");
    expect(sheet(request)).toMatch(/sodium thiosulfate or sulfite by pinches/);
    expect(sheet(request)).not.toMatch(/HBr|HCl/);
  });

  it("is what strong sulfuric acid sets free of an iodide, and of a bromide hydrogen bromide", () => {
    const gases = (salt: string): readonly string[] =>
      cautions([{ material: "H2SO4", strength: "96 %" }, salt]).incompatibilities.flatMap(({ products }) => products);
    expect(gases("KI")).toEqual(["I2"]);
    expect(gases("NaCl")).toEqual(["HCl"]);
    expect(gases("KBr")).toEqual(["HBr"]);
  });
});

describe("barium sulfate", () => {
  it("is mixed hot, and caught on fine paper", () => {
    const steps = texts({
      equation: "BaCl2·2H2O + Na2SO4 -> BaSO4 + 2 NaCl + 2 H2O",
      product: "BaSO4",
      materials: [
        { name: "barium chloride", form: "BaCl2·2H2O" },
        { name: "sodium sulfate", form: "Na2SO4", excess: "10 %" },
      ],
      scale: { material: "barium chloride", portion: "20 g" },
    }).join("\n");
    expect(steps).toMatch(/Dissolve the barium chloride in .* at 60 °C/);
    expect(steps).toMatch(/paper of a fine grade/);
  });
});

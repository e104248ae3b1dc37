// What a seventh independent reader objected to, of eleven sheets and three refusals, as rules; the preparations are theirs, chosen
// before any sheet was printed. Facts of the bench are common practice, no source; solubilities: the library's own tables.
import { type PlanRequest, planPreparation, solubilityOf, tryPlanPreparation } from "preparative";
import { benchSheet } from "preparative/sheet";
import { describe, expect, it } from "vitest";

const texts = (request: PlanRequest): string[] => planPreparation(request).steps.map(({ text }) => text);
const words = (request: PlanRequest): string => texts(request).join("\n");
const sheet = (request: PlanRequest): string => benchSheet(planPreparation(request)).replace(/\s+/g, " ");
const again = (form: string): PlanRequest => ({
  equation: `${form} -> ${form}`,
  product: form,
  materials: [{ name: "crude salt", form, assay: "96 %" }],
  scale: { product: "28.8 g" },
});

describe("a sparing salt that is recrystallised", () => {
  it("is dissolved hot, looked through and cooled: cream of tartar, nine times as soluble at 95 °C as at 20 °C", () => {
    // near the boil, where hot water keeps so little of it that it would take many litres at 80 °C
    const [hot, cold] = ["95 °C", "20 °C"].map((at) =>
      solubilityOf("KHC4H4O6", at as "20 °C").perHundredGramsWater.toNumber("g"),
    );
    const { steps } = planPreparation(again("KHC4H4O6"));
    const dissolved = steps.find(({ operation }) => operation === "dissolve")!;
    expect(dissolved.text).toMatch(/at 95 °C or a little above, stirring until it is clear/);
    // no less than what dissolves 28.8 g of it hot
    expect(dissolved.after.water.toNumber("g")).toBeGreaterThan((28.8 / hot!) * 100);
    expect(steps.some(({ text }) => /Look through the hot liquor/.test(text))).toBe(true);
    const cooled = steps.find(({ operation }) => operation === "cool")!;
    const crop = cooled.after.solids[0]!.mass.toNumber("g");
    expect(crop).toBeCloseTo(28.8 - (cold! / 100) * cooled.after.water.toNumber("g"), 0);
  });

  it("gives no second crop for half a litre boiled off", () => {
    expect(words(again("KHC4H4O6"))).not.toMatch(/second crop/);
  });

  it("has no sheet where hot water dissolves hardly more, or where no figure tells", () => {
    for (const form of ["CaSO4·2H2O", "AgCl"]) {
      const outcome = tryPlanPreparation(again(form));
      expect(outcome.ok, form).toBe(false);
      if (!outcome.ok) expect(outcome.error.code).toBe("plan.no-procedure");
    }
    expect(tryPlanPreparation(again("PbCl2")).ok).toBe(true);
  });
});

describe("what is poured away", () => {
  const brown: PlanRequest = {
    equation: "Pb(CH3COO)2·3H2O + NaClO + 2 NaOH -> PbO2 + NaCl + 2 NaCH3COO + 4 H2O",
    product: "PbO2",
    materials: [
      { name: "lead acetate", form: "Pb(CH3COO)2·3H2O" },
      { name: "bleach", form: "NaClO", strength: "10 %", excess: "20 %" },
      { name: "caustic soda", form: "NaOH", excess: "3 %" },
    ],
    scale: { material: "lead acetate", portion: "24.0 g" },
  };

  it("gets no acid while bleach is left in it", () => {
    const { notes, treatment, vessels } = planPreparation(brown).waste;
    expect(notes.join("\n")).toMatch(/acid frees Cl2 from the NaClO in it/);
    const own = vessels.find(({ vessel }) => vessel === "filtrate")!;
    expect([...treatment, ...own.treatment].map(({ reagent }) => reagent)).not.toContain("H+");
  });

  it("gets none for a hydrogencarbonate, which is as mild as a waste is to be", () => {
    const { treatment } = planPreparation({
      equation: "NaCl + NH4HCO3 -> NaHCO3 + NH4Cl",
      product: "NaHCO3",
      materials: [
        { name: "table salt", form: "NaCl" },
        { name: "ammonium hydrogencarbonate", form: "NH4HCO3" },
      ],
      scale: { material: "table salt", portion: "50.0 g" },
    }).waste;
    expect(treatment.map(({ reagent }) => reagent)).not.toContain("H+");
  });

  it("of lead dioxide comes after warmth, a colour, and a test of the oxidiser, not of the lye", () => {
    expect(words(brown)).toMatch(
      /^Warm it to 85 °C.*dark brown all through.*\(if it stays light, a little more of the bleach/m,
    );
    expect(words(brown)).toMatch(/a drop of the liquor still turns iodide starch paper blue/);
    expect(words(brown)).not.toMatch(/a drop of caustic soda solution: a cloud/);
  });
});

describe("bismuth nitrate", () => {
  const request: PlanRequest = {
    equation: "Bi + 4 HNO3 + 3 H2O -> Bi(NO3)3·5H2O + NO",
    product: "Bi(NO3)3·5H2O",
    materials: [
      { name: "crushed bismuth", form: "Bi" },
      { name: "nitric acid", form: "HNO3", strength: "50 %", excess: "50 %" },
    ],
    scale: { material: "crushed bismuth", portion: "20.0 g" },
  };

  it("is never rinsed with water, is kept strongly acid, and evaporated to a skin on a water bath", () => {
    expect(words(request)).toMatch(/Do not rinse, water would turn them basic/);
    expect(words(request)).toMatch(/until a skin forms or a drop of it crystallises on cold glass/);
    expect(words(request)).toMatch(/keep it strongly acid with dilute nitric acid to the end, under a hood/);
  });

  it("warns of what nitrous gases do hours later", () => {
    expect(sheet(request)).toMatch(
      /lung damage hours later, so who breathed it is watched for a day, also without symptoms/,
    );
  });
});

describe("a nitrite complex of cobalt(III)", () => {
  it("is not refused for the nitrate of its salt: what is reduced may be the nitrite", () => {
    const outcome = tryPlanPreparation({
      equation: "Co(NO3)2·6H2O + 7 NaNO2 + 2 CH3COOH -> Na3[Co(NO2)6] + 2 NaNO3 + 2 NaCH3COO + NO + 7 H2O",
      product: "Na3[Co(NO2)6]",
      materials: [
        { name: "cobalt nitrate", form: "Co(NO3)2·6H2O" },
        { name: "sodium nitrite", form: "NaNO2", excess: "60 %" },
        { name: "acetic acid", form: "CH3COOH", strength: "50 %", excess: "20 %" },
      ],
      scale: { material: "cobalt nitrate", portion: "10 g" },
    });
    expect(outcome.ok).toBe(true);
  });
});

describe("lead in the kiln", () => {
  it("is fired under a hood at a stated temperature", () => {
    const yellow: PlanRequest = {
      equation: "2 PbO + SnO2 -> Pb2SnO4",
      product: "Pb2SnO4",
      materials: [
        { name: "litharge", form: "PbO" },
        { name: "tin(IV) oxide", form: "SnO2" },
      ],
      scale: { product: "30 g" },
    };
    expect(words(yellow)).toMatch(/Heat slowly to 700 °C/);
    expect(sheet(yellow)).toMatch(/poisonous fume of its metal, which no dust mask holds/);
    expect(sheet(yellow)).toContain("[ ] fume hood");
    const white: PlanRequest = {
      equation: "CaCO3 -> CaO + CO2",
      product: "CaO",
      materials: [{ name: "whiting", form: "CaCO3" }],
      scale: { product: "30 g" },
    };
    expect(sheet(white)).not.toMatch(/fume of its metal/);
  });
});

describe("an acid that precipitates", () => {
  it("is not washed until the water is neutral: it is sour itself", () => {
    const benzoic: PlanRequest = {
      equation: "NaC7H5O2 + HCl -> C6H5COOH + NaCl",
      product: "C6H5COOH",
      materials: [
        { name: "sodium benzoate", form: "NaC7H5O2" },
        { name: "dilute acid", form: "HCl", strength: "10 %", excess: "10 %" },
      ],
      scale: { material: "sodium benzoate", portion: "20.0 g" },
    };
    const test = texts(benzoic).find((text) => text.startsWith("Test the last wash"))!;
    expect(test).toMatch(/Cl⁻/);
    expect(test).not.toMatch(/litmus|H⁺/);
  });
});

describe("a salt pair that gives its product in the cold", () => {
  // both dissolved first: 376 g and 166 g of water keep 51.8 g of 71.2 g; in 166 g alone 15.8 g stays
  it("has the salt that needs most water stirred in as a solid: three times the crop", () => {
    const { steps } = planPreparation({
      equation: "NaCl + NH4HCO3 -> NaHCO3 + NH4Cl",
      product: "NaHCO3",
      materials: [
        { name: "table salt", form: "NaCl", assay: "99 %" },
        { name: "ammonium hydrogencarbonate", form: "NH4HCO3", assay: "99 %" },
      ],
      scale: { material: "table salt", portion: "50.0 g" },
    });
    expect(steps.map(({ text }) => text).join("\n")).toMatch(
      /^Add the [\d.]+ g of ammonium hydrogencarbonate, ground fine just before, in small portions/m,
    );
    const cooled = steps.find(({ operation }) => operation === "cool")!;
    expect(cooled.text).toMatch(/^Do not warm it.*Stir it for an hour/);
    expect(cooled.after.solids[0]!.mass.toNumber("g")).toBeGreaterThan(50);
  });
});

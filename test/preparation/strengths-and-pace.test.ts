// Dilution as it is asked for, what stands on the bottle of a liquor, portions as they are asked for, and the pace of adding. Sums by
// hand; what is common practice of the bench has no source and says so.
import { benchSheet, bottleLabel, type PlanRequest, planPreparation, type ShelfMaterial } from "preparative";
import { describe, expect, it } from "vitest";
import { COPPER_NITRATE } from "../data/common-requests";

const vitriol = (dissolve?: ShelfMaterial["dissolve"]): PlanRequest => ({
  equation: "H2SO4 -> H2SO4",
  product: "H2SO4",
  isolate: false,
  materials: [
    { name: "oil of vitriol", form: "H2SO4", strength: "96 %", ...(dissolve === undefined ? {} : { dissolve }) },
  ],
  scale: { material: "oil of vitriol", portion: "100 g" },
});
const grams = (q: { in(unit: "g"): { toNumber(): number } }): number => q.in("g").toNumber();
const refusal = (request: PlanRequest): string => {
  try {
    planPreparation(request);
    return "planned";
  } catch (error) {
    const { code, message } = error as { code: string; message: string };
    return `${code}: ${message}`;
  }
};

describe("a solution that is diluted", () => {
  it("is made as strong as was asked for: 96.0 g / 20 % = 480 g, 380 g of water", () => {
    const plan = planPreparation(vitriol({ concentration: "20 %" }));
    expect(grams(plan.keptLiquor!.mass)).toBeCloseTo(480, 1);
    expect(plan.keptLiquor!.strength.in("%").toNumber()).toBeCloseTo(20, 6);
    expect(plan.steps.find(({ operation }) => operation === "dilute")!.text).toMatch(
      /into 380 mL of water.*it is then 20 %/,
    );
  });

  it("goes into the water that was asked for: 96.0 / 1100 = 8.7 %", () => {
    const plan = planPreparation(vitriol({ water: "1000 mL" }));
    expect(grams(plan.keptLiquor!.mass)).toBeCloseTo(1100, 1);
    expect(plan.keptLiquor!.strength.in("%").toNumber()).toBeCloseTo(8.727, 3);
  });

  it("is made up by moles in a litre through the density of the table: 2 mol/L is 17.5 % at 1.12 g/mL", () => {
    // CRC Handbook, concentrative properties: 18 % H2SO4 is 2.064 mol/L at 1.1243 g/mL (from memory)
    const plan = planPreparation(vitriol({ concentration: "2 mol/L" }));
    expect(plan.keptLiquor!.strength.in("%").toNumber()).toBeCloseTo(17.5, 0);
  });

  it("is refused what water cannot do, or what has no use", () => {
    expect(refusal(vitriol({ concentration: "98 %" }))).toMatch(/^plan\.strength: oil of vitriol is 96\.0 %/);
    expect(refusal(vitriol({ water: "1 L", concentration: "20 %" }))).toMatch(
      /^plan\.request: .*both water and concentration/,
    );
    expect(refusal(vitriol({ temperature: "50 °C" }))).toMatch(/^plan\.request: .*a solution is not dissolved/);
    expect(
      refusal({
        equation: "CaCO3 + HCl -> CaCl2 + CO2 + H2O",
        product: "CaCl2",
        isolate: false,
        materials: [
          { name: "chalk", form: "CaCO3", dissolve: { water: "100 mL" } },
          { name: "acid", form: "HCl", strength: "10 %" },
        ],
        scale: { material: "chalk", portion: "10 g" },
      }),
    ).toMatch(/^plan\.request: dissolve of chalk has no use/);
  });

  it("says at the head what the step says: Thomsen's 17860 n / (n + 1.7983) cal/mol (from memory), 35 K for 100 g in 380 g", () => {
    // n from 0.227 to 21.8 mol of water: 69.0 - 8.4 = 60.7 kJ/mol × 0.979 mol / (480 g × 3.53 J/(g K)) = 35 K; acid of 20 % has 0.844 cal/(g K)
    // (Perry)
    const sheet = benchSheet(planPreparation(vitriol({ concentration: "20 %" })), { format: "markdown" });
    expect(sheet).toMatch(/\b35 K\b.*as the oil of vitriol goes into water/);
    expect(sheet).toContain("it warms by about 35 K");
    expect(sheet).not.toContain("Rinse vessel");
  });
});

describe("the bottle of a liquor", () => {
  it("says how strong it is, and what else is in it", () => {
    const zincate = planPreparation({
      equation: "Zn + NaOH + H2O -> Na2[Zn(OH)4] + H2",
      product: "Na2[Zn(OH)4]",
      materials: [
        { name: "zinc dust", form: "Zn" },
        { name: "lye", form: "NaOH", excess: "50 %" },
      ],
      scale: { material: "zinc dust", portion: "6.5 g" },
    });
    // 0.0994 mol of zinc takes 7.95 g of lye; half of that over is 11.93 g, 12.0 g on the balance: 4.05 g is left
    const lye = zincate.keptLiquor!.also.find(({ formula }) => formula === "NaOH")!;
    expect(grams(lye.share.times(zincate.keptLiquor!.mass).to("g"))).toBeCloseTo(4.05, 1);
    const label = /^Na₂\[Zn\(OH\)₄\], \d+ % with [\d.]+ % NaOH/m;
    expect(benchSheet(zincate)).toMatch(label);
    expect(bottleLabel(zincate)).toMatch(/Na₂\[Zn\(OH\)₄\], \d+ % with [\d.]+ % NaOH/);
    // CLP, Annex VI: sodium hydroxide from 2 % corrodes skin
    expect(bottleLabel(zincate)).toContain("H314");
  });

  it("has the hazards of its strength: sulfuric acid of 20 % burns, of 4 % it does not", () => {
    // CLP, Annex VI, 016-020-00-8: Skin Corr. from 15 %, irritant from 5 %
    expect(bottleLabel(planPreparation(vitriol({ concentration: "20 %" })))).toContain("H314");
    const thin = bottleLabel(planPreparation(vitriol({ concentration: "4 %" })));
    expect(thin).toContain("H₂SO₄, 4.0 %");
    expect(thin).not.toContain("H314");
  });
});

it("acid that is set free is named by the strength it has: 1.96 g in a litre and more of wash, in 60 g of liquor at first", () => {
  const plan = planPreparation({
    equation: "(NH4)2Fe(SO4)2 + H2C2O4 -> FeC2O4 + (NH4)2SO4 + H2SO4",
    product: "FeC2O4·2H2O",
    materials: [
      { name: "Mohr's salt", form: "(NH4)2Fe(SO4)2·6H2O" },
      { name: "oxalic acid", form: "H2C2O4·2H2O", excess: "10 %" },
    ],
    scale: { material: "Mohr's salt", portion: "39.2 g" },
  });
  // 0.1 mol, of which 61 % forms; the liquor is all that is put together less the solid, some 280 g: 9.8 g / 285 g = 3.4 %
  const acid = plan.cautions.substances.find(({ material }) => material === "H2SO4")!;
  expect(acid.strength).toMatch(/^3\.[3-5] %$/);
});

describe("what the scale asks for", () => {
  it("is what is taken: 50.0 g of limestone with a tenth over", () => {
    const { weighings } = planPreparation({
      equation: "CaCO3 + HCl -> CaCl2 + CO2 + H2O",
      product: "CaCl2",
      isolate: false,
      materials: [
        { name: "limestone", form: "CaCO3", assay: "92 %", excess: "10 %" },
        { name: "muriatic acid", form: "HCl", strength: "10 %" },
      ],
      scale: { material: "limestone", portion: "50.0 g" },
    });
    // 46.0 / 100.09 / 1.1 × 2 × 36.46 / 0.10 = 304.7 g
    expect(weighings.map(({ portion }) => portion.format({ decimals: 1, uncertainty: "none" }))).toEqual([
      "50.0 g",
      "304.7 g",
    ]);
  });
});

describe("the next portion", () => {
  const adding = (request: PlanRequest): string =>
    planPreparation(request).steps.find(({ text }) => text.includes("portions"))!.text;

  it("of permanganate goes into warm oxalate once the purple is gone (common practice of its titration)", () => {
    const request: PlanRequest = {
      equation: "KMnO4 + H2C2O4 -> MnC2O4·2H2O + K2C2O4 + CO2 + H2O",
      product: "MnC2O4·2H2O",
      materials: [
        { name: "permanganate", form: "KMnO4" },
        { name: "oxalic acid", form: "H2C2O4·2H2O", excess: "10 %" },
      ],
      scale: { material: "permanganate", portion: "3.16 g" },
    };
    const warm = planPreparation(request).steps.find(({ operation }) => operation === "heat")!;
    expect(warm.target!.in("°C").toNumber()).toBe(45);
    expect(adding(request)).toContain("wait until the purple is gone");
  });

  it("of copper goes into nitric acid once the gas of the last has come and gone (common practice)", () => {
    expect(adding(COPPER_NITRATE)).toMatch(/wait until its gas has come and gone/);
  });

  it("of chalk waits for the foam, half a minute at the least (common practice)", () => {
    const text = adding({
      equation: "CaCO3 + HCl -> CaCl2 + CO2 + H2O",
      product: "CaCl2",
      isolate: false,
      materials: [
        { name: "chalk", form: "CaCO3", excess: "10 %" },
        { name: "acid", form: "HCl", strength: "10 %" },
      ],
      scale: { material: "chalk", portion: "50.0 g" },
    });
    const [, portions, minutes] = /at least (\d+) portions.*over at least (\d+) min/.exec(text)!;
    expect(Number(minutes)).toBeGreaterThanOrEqual(Number(portions) / 2);
    expect(text).toContain("wait until the foam has subsided");
  });
});

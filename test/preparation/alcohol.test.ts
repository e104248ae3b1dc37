// Alcohol that no pack brings: to a liquor from which nothing crystallises, and over a last wash. What it does to a salt is held
// against the figures of Turner and Bissett (1913), g in 100 g of ethanol at 25 °C, as a public copy of a book prints them, and
// against what other books print; the rest of the trade is common practice, no source.
import { describe, expect, it } from "vitest";
import { parseFormula } from "../../src/formula";
import { type PlanRequest, planPreparation } from "../../src/preparation";
import { antisolventRow, withAlcohol } from "../../src/preparation/reaction/with-alcohol";
import { benchSheet } from "../../src/sheet";
import { AMMINE, BLUE_COMPLEX, TIN_SALT } from "../data/common-requests";

const MANGANESE: PlanRequest = {
  equation: "MnSO4 + NaHCO3 -> MnCO3 + Na2SO4 + CO2 + H2O",
  product: "MnCO3",
  materials: [
    { name: "manganese sulfate", form: "MnSO4·H2O" },
    { name: "baking soda", form: "NaHCO3", excess: "10 %" },
  ],
  scale: { product: "25 g" },
};

const said = (request: PlanRequest): string =>
  planPreparation(request)
    .steps.map(({ text }) => text)
    .join("\n");

describe("what alcohol does to a salt", () => {
  // Turner and Bissett; a gram and more is dissolved, less is brought out; potassium iodide (2.16) stands between
  it.each([
    ["LiCl", 25.83],
    ["LiI", 250.8],
    ["NaI", 46.02],
    ["NaCl", 0.065],
    ["KCl", 0.022],
    ["KBr", 0.142],
    ["RbCl", 0.078],
  ])("%s: %d g in 100 g", (formula, grams) => {
    expect(withAlcohol(parseFormula(formula))).toBe(grams > 1 ? "dissolves it" : "brings it out");
    expect(antisolventRow(parseFormula(formula))?.source).toBe("simmondsAlcohol");
  });

  // the Ph. Eur., Brunton and an encyclopedia of 1879 print it of the first three; the others from memory
  it.each([
    ..."SnCl2·2H2O ZnCl2 Cu(NO3)2·3H2O CaCl2·6H2O FeCl3·6H2O CuCl2·2H2O CoCl2·6H2O NiCl2".split(" "),
    ..."Ca(NO3)2·4H2O Zn(NO3)2·6H2O Mg(NO3)2 Ni(NO3)2 Co(NO3)2 KOH NaOH HCl NH3 CH3COOH".split(" "),
  ])("%s dissolves in it", (formula) => {
    expect(withAlcohol(parseFormula(formula))).toBe("dissolves it");
  });

  it.each(["[Ni(NH3)6]Cl2", "[Cu(NH3)4]SO4·H2O", "K3[Fe(C2O4)3]·3H2O", "K2SO4", "FeSO4·7H2O", "Na2CO3"])(
    "%s comes out",
    (formula) => {
      expect(withAlcohol(parseFormula(formula))).toBe("brings it out");
    },
  );

  it.each(["KSCN·C6H12O6", "K2S2O8", "KI", "C6H12O6"])("of %s nothing is said", (formula) => {
    expect(withAlcohol(parseFormula(formula))).not.toBe("brings it out");
  });
});

describe("to a liquor from which nothing crystallises", () => {
  const plan = planPreparation(AMMINE);
  const offered = plan.steps.find(({ alcohol, operation }) => alcohol !== undefined && operation === "cool")!;

  it("is as much as there is liquor, and vessel and waste have room for both", () => {
    const alcohol = offered.alcohol!.toNumber("mL");
    // it was as much as all that is in the vessel: the crystals are no liquor
    const crystals = plan.product.theoreticalYield.toNumber("g");
    // a gram of liquor for a millilitre
    expect(alcohol).toBeCloseTo(offered.before.mass.toNumber("g") - crystals, 6);
    expect(plan.vessel!.liquid.toNumber("mL")).toBeGreaterThan(1.98 * alcohol);
    expect(plan.vessel!.smallest!.toNumber("mL")).toBeGreaterThan(2 * alcohol);
    // the product takes less than a millilitre a gram with it
    const product = plan.product.theoreticalYield.toNumber("g");
    expect(plan.waste.volume!.toNumber("mL")).toBeGreaterThan(1.98 * alcohol - product);
  });

  it("stands ready with its amount and its hazard, and each step that takes some says: no flame", () => {
    const sheet = benchSheet(plan).replace(/\s+/g, " ");
    // 10 mL in the half-and-half rinse, and as much alone after it
    expect(sheet).toMatch(/\[ \] up to 6\d mL of alcohol \(step 5\) \[ \] 20 mL of alcohol \(step 7\)/);
    expect(sheet).toMatch(
      /alcohol, C₂H₅OH Pictogram: GHS02 Hazard: DANGER: Highly flammable liquid and vapour \(H225\)/,
    );
    expect(sheet).toContain("[ ] no flame or spark near");
    for (const { alcohol, cautions } of plan.steps)
      expect(cautions.some(({ text }) => text.includes("no flame"))).toBe(alcohol !== undefined);
  });

  it("is not offered where another salt would come out with the product, which is named with its mass", () => {
    const text = said(BLUE_COMPLEX);
    // 0.0424 mol of the complex (353.8 g/mol) leaves as much potassium sulfate (174.3 g/mol): 7.4 g
    expect(text).toContain("no alcohol: it would bring out the 7.4 g of K₂SO₄ as well");
    // 100 g of water keeps 11.0 g of it at 20 °C (CRC): 7.4 g alone needs 67 mL. The complex brings as much K+ again: twice the K+ is four
    // times the product of the ions, and the cube root of 4 times the water, 107 mL, of some 87 mL
    expect(text).toMatch(
      /K₂SO₄ may crystallise with it: .* takes 10[67] mL of water to stay dissolved for certain, and there is 8\d mL of water/,
    );
    expect(text).not.toMatch(/boiled off, or/);
    expect(planPreparation(BLUE_COMPLEX).alcohol).toBeUndefined();
    expect(benchSheet(planPreparation(BLUE_COMPLEX))).not.toMatch(/mL of alcohol|As much alcohol/);
  });

  it("is not offered for what it dissolves, nor over its crystals", () => {
    const text = said(TIN_SALT);
    expect(text).toContain("no alcohol: it dissolves SnCl₂·2H₂O as well");
    expect(text).not.toMatch(/with alcohol|of alcohol/);
    expect(planPreparation(TIN_SALT).alcohol).toBeUndefined();
  });
});

describe("over a last wash", () => {
  const plan = planPreparation(MANGANESE);
  const at = plan.steps.findIndex(({ alcohol }) => alcohol !== undefined);
  const wash = plan.steps[at]!;

  it("is twice the water of the cake, and the salts in that stay", () => {
    expect(wash.alcohol!.toNumber("mL") / wash.before.water.toNumber("g")).toBeCloseTo(2, 6);
    expect(wash.after.water.isZero()).toBe(true);
    const salt = (contents: typeof wash.before): number =>
      contents.dissolved.find(({ formula }) => formula === "Na₂SO₄")!.amount.toNumber("mol");
    expect(salt(wash.after)).toBe(salt(wash.before));
    expect(wash.cautions.map(({ text }) => text).join()).toContain("no flame");
  });

  it("leaves in open air before a closed jar dries what air turns, and no step sucks air through it", () => {
    const drying = plan.steps[at + 1]!;
    expect(drying.text).toMatch(/^Let the alcohol leave it.*only then dry it in a desiccator, or in a closed jar/);
    expect(drying.limit).toBeUndefined();
    const sheet = benchSheet(plan).replace(/\s+/g, " ");
    expect(sheet).toMatch(/\[ \] 3\d mL of alcohol \(step 9\)/);
    expect(sheet).toContain("[ ] desiccator, or jar that closes, with dried calcium chloride");
    expect(sheet).not.toMatch(/oven or warm place|105 °C/);
    for (const { text } of plan.steps)
      if (text.includes("sucking off")) expect(text).toContain("no air is sucked through it");
  });

  it("is that on the table, where some stands there", () => {
    const spirit = { name: "spirit", form: "C2H5OH", strength: "96 %", aside: true, portion: "20 g" } as const;
    const own = planPreparation({ ...MANGANESE, materials: [...MANGANESE.materials, spirit] });
    expect(own.alcohol).toBeUndefined();
    expect(own.steps.filter(({ text }) => /alcohol,|the spirit \(/.test(text))).toHaveLength(1);
  });
});

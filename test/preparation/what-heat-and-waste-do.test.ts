// Fire, drying and waste are judged by what a formula is made of, not by its letters.
import { describe, expect, it } from "vitest";
import { parseFormula } from "../../src/formula";
import { type Plan, type PlanRequest, planPreparation } from "../../src/preparation";
import { dryingOf } from "../../src/preparation/procedure/drying";
import { benchSheet } from "../../src/sheet";
import { madeOf } from "../../src/substance/internal";

const planOf = (equation: string, product: string, forms: readonly string[], more: Partial<PlanRequest> = {}): Plan =>
  planPreparation({
    equation,
    product,
    materials: forms.map((form, i) => ({ name: `material ${i + 1}`, form })),
    scale: { material: "material 1", portion: "50 g" },
    ...more,
  });
const ignition = (plan: Plan): string =>
  plan.stepCautions
    .filter((one) => one.step === "ignition test")
    .flatMap((one) => one.cautions.map((c) => c.text))
    .join(" | ");

describe("what a formula is made of", () => {
  it("does not hang on its letters", () => {
    expect(madeOf(parseFormula("SrCO3")).groups.has("carbonate")).toBe(true);
    for (const text of ["ZnCO3", "Zn5(CO3)2(OH)6", "KCN", "K4[Fe(CN)6]", "KSCN", "CaC2"])
      expect(madeOf(parseFormula(text)).organic, text).toBe(false);
    for (const text of ["Zn(CH3COO)2·2H2O", "C4H6O4Zn", "CaC2O4·H2O", "K3[Fe(C2O4)3]·3H2O", "C6H8O7", "CuC4H4O6"])
      expect(madeOf(parseFormula(text)).organic, text).toBe(true);
    for (const text of ["MgNH4PO4·6H2O", "ClH4N"]) expect(madeOf(parseFormula(text)).ammonium, text).toBe(true);
    expect(madeOf(parseFormula("[Co(NH3)6]Cl3")).ammonia).toBe(true);
    expect(madeOf(parseFormula("C6FeK4N6")).cyanide).toBe("fast");
    expect(madeOf(parseFormula("K2Zn(CN)4")).cyanide).toBe("free");
  });
});

describe("the ignition test", () => {
  it("of strontium carbonate gives carbon dioxide and no sulfur oxides", () => {
    const plan = planOf("SrCl2 + Na2CO3 -> SrCO3 + NaCl", "SrCO3", ["SrCl2·6H2O", "Na2CO3"]);
    expect(ignition(plan)).toMatch(/carbon dioxide/);
    expect(ignition(plan)).not.toMatch(/sulfur/);
  });

  it("of an oxalate gives carbon monoxide, however it is written", () => {
    for (const oxalate of ["CaC2O4", "C2CaO4"])
      expect(ignition(planOf(`CaCl2 + Na2C2O4 -> ${oxalate} + NaCl`, oxalate, ["CaCl2", "Na2C2O4"]))).not.toMatch(
        /sulfur|ammonia|nitrogen/,
      );
    const zinc = planOf("ZnSO4 + Na2C2O4 -> ZnC2O4 + Na2SO4", "ZnC2O4", ["ZnSO4·7H2O", "Na2C2O4"]);
    expect(ignition(zinc)).toMatch(/carbon monoxide/);
  });

  it("goes no higher than a burner: barium sulfate stays what it is", () => {
    // it decomposes near 1580 °C (our table of thermal steps, from memory)
    const plan = planOf("BaCl2 + Na2SO4 -> BaSO4 + NaCl", "BaSO4", ["BaCl2·2H2O", "Na2SO4"]);
    expect(ignition(plan)).toBe("");
  });
});

describe("drying", () => {
  const upTo = (text: string): number => dryingOf(parseFormula(text)).upTo!.in("°C").toNumber();

  it("goes no higher than an oven, however stable the product (common practice)", () => {
    expect(upTo("MnCO3")).toBe(105);
    expect(upTo("Mg(OH)2")).toBe(105);
    expect(upTo("CuO")).toBe(105);
    for (const text of ["BaSO4", "Na2CO3", "CaCO3", "CoCO3", "KNO3"]) expect(upTo(text), text).toBeLessThanOrEqual(110);
  });

  it("of a hydrate stays below its first loss", () => {
    for (const text of ["CaHPO4·2H2O", "MgNH4PO4·6H2O", "CuSO4·5H2O", "CoCl2·6H2O", "CaSO4·2H2O"])
      expect(upTo(text), text).toBeLessThanOrEqual(40);
  });

  it("and digestion agree: what dries cool is not digested hot", () => {
    // brushite and struvite change in warm liquor (from memory)
    const brushite = planOf("CaCl2 + Na2HPO4 + 2 H2O -> CaHPO4·2H2O + 2 NaCl", "CaHPO4·2H2O", [
      "CaCl2·2H2O",
      "Na2HPO4·12H2O",
    ]);
    const struvite = planOf("MgSO4 + (NH4)2HPO4 + NH3 + 6 H2O -> MgNH4PO4·6H2O + (NH4)2SO4", "MgNH4PO4·6H2O", [
      "MgSO4·7H2O",
      "(NH4)2HPO4",
    ]);
    for (const plan of [brushite, struvite]) {
      expect(plan.procedure.digestion).toMatch(/do not warm/);
      expect(plan.procedure.digestion).not.toMatch(/60 to 90/);
    }
    const chalk = planOf("CaCl2 + Na2CO3 -> CaCO3 + NaCl", "CaCO3", ["CaCl2", "Na2CO3"]);
    expect(chalk.procedure.digestion).toMatch(/60 to 90 °C/);
  });
});

describe("a liquor with a cyanide in it", () => {
  const blue = planOf(
    "FeCl3 + K4[Fe(CN)6] -> Fe4[Fe(CN)6]3 + KCl",
    "Fe4[Fe(CN)6]3",
    ["FeCl3·6H2O", "K4[Fe(CN)6]·3H2O"],
    {
      scale: { material: "material 2", portion: "50 g" },
    },
  );
  const over = planOf(
    "CuSO4 + K4[Fe(CN)6] -> Cu2[Fe(CN)6] + K2SO4",
    "Cu2[Fe(CN)6]",
    ["CuSO4·5H2O", "K4[Fe(CN)6]·3H2O"],
    {
      materials: [
        { name: "vitriol", form: "CuSO4·5H2O" },
        { name: "prussiate", form: "K4[Fe(CN)6]·3H2O", excess: "20 %" },
      ],
      scale: { material: "vitriol", portion: "50 g" },
    },
  );

  it("is never made sour, boiled down or taken apart", () => {
    for (const plan of [blue, over]) {
      expect(plan.waste.notes.join(" ")).toMatch(/contains a cyanide: keep it alkaline.*never acid/);
      expect(plan.waste.notes.join(" ")).not.toMatch(/destroyed|boiled off/);
      expect(plan.waste.treatment.map((one) => one.reagent)).not.toContain("H+");
      expect(plan.byProducts.map((one) => one.worthKeeping)).not.toContain(true);
      expect(benchSheet(plan)).not.toMatch(/boiled down gives|destroyed|boiled off/);
    }
  });

  it("keeps the iron that holds the cyanide: soda brings none of it down", () => {
    expect(over.waste.metals.map((one) => one.symbol)).not.toContain("Fe");
  });

  it("is no other liquor: ammonia and oxalate are reported as before", () => {
    const oxalate = planOf("FeCl3 + 3 K2C2O4 + 3 H2O -> K3[Fe(C2O4)3]·3H2O + 3 KCl", "K3[Fe(C2O4)3]·3H2O", [
      "FeCl3·6H2O",
      "K2C2O4·H2O",
    ]);
    expect(oxalate.waste.notes.join(" ")).not.toMatch(/cyanide/);
  });
});

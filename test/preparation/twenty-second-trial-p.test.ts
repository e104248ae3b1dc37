// What a sweep of questions about sixty reactions with known outcomes brought up (outcomes from memory of any textbook of
// inorganic chemistry, where no source is named).
import { benchSheet, doesItGo, tryPlanPreparation } from "preparative";
import { describe, expect, it } from "vitest";

describe("thiosulfate", () => {
  it("is taken apart by acid, and oxidised by iodine", () => {
    const acid = doesItGo({ equation: "Na2S2O3 + HCl -> S + SO2 + H2O + NaCl", product: "S" });
    expect(acid.verdict).toBe("goes");
    expect(acid.reasons[0]!.code).toBe("apart-in-acid");
    // 0.54 V of iodine against 0.08 V of tetrathionate
    const iodine = doesItGo({ equation: "I2 + Na2S2O3 -> NaI + Na2S4O6", product: "NaI" });
    expect(iodine.verdict).toBe("goes");
    expect(iodine.reasons[0]!.numbers[2]!.toNumber("V")).toBeCloseTo(0.46, 2);
  });
});

describe("alumina in acid", () => {
  it("is asked what it is: calcined it stays, and the hydroxide dissolves", () => {
    const fired = doesItGo({ equation: "Al2O3 + HCl -> AlCl3 + H2O", product: "AlCl3" });
    expect(fired.verdict).toBe("unknown");
    expect(fired.reasons[0]!.text).toMatch(/^missing: which form of Al₂O₃/);
    expect(doesItGo({ equation: "Al(OH)3 + HCl -> AlCl3 + H2O", product: "AlCl3" }).verdict).toBe("goes");
    const plan = tryPlanPreparation({
      equation: "Al2O3 + HCl -> AlCl3 + H2O",
      product: "AlCl3",
      materials: [
        { name: "alumina", form: "Al2O3" },
        { name: "brick cleaner", form: "HCl", strength: "31 %" },
      ],
      scale: { product: "20 g" },
    });
    expect(plan.ok && benchSheet(plan.value).replace(/\s+/g, " ")).toMatch(/not known here.*which form of Al₂O₃/);
  });
});

describe("a metal that comes with an insoluble salt", () => {
  it("is one powder with it: 303 g of lead sulfate beside 63.5 g of copper", () => {
    const { verdict, solids, reasons } = doesItGo({ equation: "Pb + CuSO4 -> PbSO4 + Cu", product: "Cu" });
    expect(verdict).toBe("another solid forms");
    expect(solids.map(({ formula }) => formula)).toEqual(["PbSO₄", "Cu"]);
    expect(reasons[0]!.numbers[0]!.toNumber("g")).toBeCloseTo(207.2 + 32.06 + 4 * 15.999, 0);
  });
});

describe("an empty list of materials", () => {
  it("is each reactant by itself where only this is asked, and refused by a plan", () => {
    const equation = "NaCl + AgNO3 -> AgCl + NaNO3";
    const [empty, none] = [
      doesItGo({ equation, product: "AgCl", materials: [] }),
      doesItGo({ equation, product: "AgCl" }),
    ];
    expect(empty.verdict).toBe("goes");
    expect(empty.reasons).toEqual(none.reasons);
    const plan = tryPlanPreparation({ equation, product: "AgCl", materials: [], scale: { product: "1 g" } });
    expect(!plan.ok && plan.error.code).toBe("plan.no-such-material");
  });
});

describe("bleach", () => {
  it("is kept in its solution: boiled down it turns into chlorate", () => {
    const { reasons } = doesItGo({ equation: "Cl2 + NaOH -> NaCl + NaClO + H2O", product: "NaClO" });
    expect(reasons.map(({ code }) => code)).toContain("only-in-solution");
    const plan = tryPlanPreparation({
      equation: "3 NaClO -> 2 NaCl + NaClO3",
      product: "NaClO3",
      materials: [{ name: "bleach", form: "NaClO" }],
      scale: { product: "10 g" },
    });
    expect(!plan.ok && [plan.error.code, plan.error.message]).toEqual([
      "plan.no-procedure",
      expect.stringMatching(/a solution only.*\n.*strength/),
    ]);
  });
});

describe("a salt of two metals", () => {
  it("that nobody has named is not said to form", () => {
    const asked = (equation: string, product: string) => doesItGo({ equation, product });
    // copper and magnesium sulfate mix in crystals and form no double salt of their own; nor do common salt and sylvite
    const mixed = asked("CuSO4 + MgSO4 + H2O -> CuMg(SO4)2·6H2O", "CuMg(SO4)2·6H2O");
    expect(mixed.verdict).toBe("unknown");
    expect(mixed.reasons.at(-1)!.text).toContain("no table of double salts");
    expect(asked("NaCl + KCl -> NaKCl2", "NaKCl2").verdict).toBe("unknown");
    // Mohr's salt and ammonium copper chloride are
    expect(asked("FeSO4 + (NH4)2SO4 + H2O -> (NH4)2Fe(SO4)2·6H2O", "(NH4)2Fe(SO4)2·6H2O").verdict).toBe("goes");
    expect(asked("CuCl2 + NH4Cl + H2O -> (NH4)2CuCl4·2H2O", "(NH4)2CuCl4·2H2O").verdict).toBe("goes");
  });
});

describe("two salts in one liquor", () => {
  const plan = (equation: string, product: string, forms: readonly string[]) =>
    tryPlanPreparation({
      equation,
      product,
      materials: forms.map((form) => ({ name: form, form })),
      scale: { product: "0.1 mol" },
    });

  it("that no cooling parts have no procedure: evaporated they would be what was put in", () => {
    // schoenite comes of potassium, magnesium and sulfate in the cold (the potash trade)
    const schoenite = plan("MgSO4 + 2 KCl -> K2SO4 + MgCl2", "K2SO4", ["MgSO4·7H2O", "KCl"]);
    expect(!schoenite.ok && [schoenite.error.code, schoenite.error.message]).toEqual([
      "plan.no-procedure",
      expect.stringMatching(/not parted from MgCl₂: K2Mg\(SO4\)2·6H2O precipitates/),
    ]);
    const table = plan("NH4Cl + NaNO3 -> NH4NO3 + NaCl", "NH4NO3", ["NH4Cl", "NaNO3"]);
    expect(!table.ok && table.error.code).toBe("plan.no-procedure");
  });

  it("part in more water where a third would come hot in the least", () => {
    // potassium nitrate: 31.6 g in 100 g of water at 20 °C (CRC Handbook), taken as if it were alone; 10.11 g are the theory
    const saltpetre = plan("KCl + LiNO3·3H2O -> KNO3 + LiCl + 3 H2O", "KNO3", ["KCl", "LiNO3·3H2O"]);
    expect(saltpetre.ok).toBe(true);
    if (!saltpetre.ok) return;
    const cooled = saltpetre.value.steps.find(({ operation }) => operation === "cool")!;
    const crop = cooled.after.solids.find(({ formula }) => formula === "KNO₃" || formula === "KNO3");
    expect(crop).toBeDefined();
    const water = cooled.after.water.toNumber("g");
    expect(crop!.mass.toNumber("g")).toBeCloseTo(10.11 - 0.316 * water, 0);
  });
});

describe("chalk and vinegar", () => {
  it("are warmed before paper is believed: carbon dioxide in the liquor is an acid (pH 5.6 of water under air, pKa 6.35)", () => {
    const plan = tryPlanPreparation({
      equation: "CaCO3 + 2 CH3COOH -> Ca(CH3COO)2·H2O + CO2",
      product: "Ca(CH3COO)2·H2O",
      materials: [
        { name: "chalk", form: "CaCO3", assay: "94 %", excess: "10 %" },
        { name: "vinegar essence", form: "CH3COOH", strength: "25 %" },
      ],
      scale: { material: "vinegar essence", portion: "200 g" },
    });
    expect(plan.ok && plan.value.steps.map(({ text }) => text).join(" ")).toMatch(
      /where it is lower, warm it until no more bubbles rise.*more of the chalk only where none of it is left undissolved/,
    );
  });
});

describe("a salt that is only dissolved and crystallised", () => {
  it("has the heat of its dissolving on the head of the sheet", () => {
    // 196 g of Na2CO3, 1.849 mol at -26.7 kJ/mol (NBS 1982), into 757 g of liquor: 49.4 kJ / (757 g x 3.82 to 4.18 J/(g K)) = 15.6 to 17.1 K
    const soda = tryPlanPreparation({
      equation: "Na2CO3 + 10 H2O -> Na2CO3·10H2O",
      product: "Na2CO3·10H2O",
      materials: [{ name: "soda ash", form: "Na2CO3", assay: "98 %" }],
      scale: { material: "soda ash", portion: "200 g" },
    });
    expect(soda.ok && benchSheet(soda.value)).toMatch(/Heat +1[67] K \(warmer, as the soda ash goes into/);
  });
});

describe("a wash that no funnel holds", () => {
  const zinc = (product: "10 g" | "100 g") =>
    tryPlanPreparation({
      equation: "5 ZnSO4·7H2O + 5 Na2CO3 -> Zn5(CO3)2(OH)6 + 5 Na2SO4 + 3 CO2 + 32 H2O",
      product: "Zn5(CO3)2(OH)6",
      materials: [
        { name: "zinc sulfate", form: "ZnSO4·7H2O" },
        { name: "soda ash", form: "Na2CO3", excess: "8 %" },
      ],
      scale: { product },
    });
  const washOf = (plan: ReturnType<typeof zinc>): string =>
    (plan.ok &&
      plan.value.steps.find(({ operation, text }) => operation === "wash" && text.startsWith("Wash"))?.text) ||
    "";

  it("is stirred up in the vessel: five times what 100 g of cake keeps is 1.4 L, of 10 g 0.14 L", () => {
    expect(washOf(zinc("100 g"))).toMatch(/with 1\.4 L of water each, stirring it up in the vessel and filtering:/);
    expect(washOf(zinc("10 g"))).toMatch(/stirring it up on the filter and sucking off/);
  });
});

describe("silver on copper wire", () => {
  it("gives no gas, and is not warned of any", () => {
    const silver = tryPlanPreparation({
      equation: "2 AgNO3 + Cu -> 2 Ag + Cu(NO3)2",
      product: "Ag",
      materials: [
        { name: "silver nitrate solution", form: "AgNO3", strength: "0.1 mol/L", portion: "500 mL" },
        { name: "copper wire", form: "Cu", excess: "50 %" },
      ],
      scale: { material: "silver nitrate solution", portion: "500 mL" },
    });
    expect(
      silver.ok && silver.value.steps.flatMap(({ cautions }) => cautions.map(({ text }) => text)).join(" "),
    ).not.toMatch(/gas is given off/);
  });
});

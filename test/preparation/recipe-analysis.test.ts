// What was found in the product of a recipe, forms and amounts it leaves open, and copies that differ. Molar masses by IUPAC weights.
import { checkRecipe, type Recipe } from "preparative";
import { describe, expect, it } from "vitest";

const found = (recipe: Recipe, code: string) => checkRecipe(recipe).findings.filter((one) => one.code === code);

// 7.95 g / 79.545 g/mol × 213.65 g/mol = 21.35 g, of which 20.0 g is 93.7 %.
const vitriol = (analysis: Recipe["analysis"]): Recipe => ({
  equation: "CuO + H2SO4 + H2O -> CuSO4·3H2O",
  product: "CuSO4·3H2O",
  materials: [
    { form: "CuO", amount: "7.95 g" },
    { form: "H2SO4", amount: "20 g", inExcess: true },
  ],
  found: "20.0 g",
  analysis,
});

describe("water that was found", () => {
  // 213.65 / 249.68 = 0.8557: 17.1 g and 80.1 %
  it("beyond the formula makes the yield less", () => {
    const [damp] = found(vitriol({ waters: "5" }), "recipe.damp");
    expect(damp!.text).toBe(
      "5 waters were found where CuSO₄·3H₂O has 3: weighed damp: 20.00 g contains 17.1 g of CuSO₄·3H₂O, 80 % instead of 94 %",
    );
    expect(damp!.figure!.in("%").toNumber()).toBeCloseTo(80.1, 1);
  });

  it("is no finding up to a quarter, nor where it is less", () => {
    for (const waters of ["3", "3.2", "3.25", "2"]) expect(found(vitriol({ waters }), "recipe.damp")).toEqual([]);
    expect(found(vitriol({ waters: "3.3" }), "recipe.damp")).toHaveLength(1);
  });
});

describe("parts that were found", () => {
  // Cu 63.546 / 213.65 = 29.74 %, S 32.06 / 213.65 = 15.01 %, SO4 96.06 / 213.65 = 44.96 %; one part in fifty is let pass
  it("are held against the formula, elements and groups", () => {
    const text = (parts: Record<string, "1 %">) =>
      found(vitriol({ parts }), "recipe.analysis-misfit").map((one) => one.text);
    const percent = (n: number) => `${n} %` as "1 %";
    expect(text({ Cu: percent(29.8), S: percent(14.9), SO4: percent(45.5) })).toEqual([]);
    expect(text({ Cu: percent(29.8), SO4: percent(50) })).toEqual([
      "the analysis is not that of CuSO₄·3H₂O: SO4 50 % where 44.96 % is due; the yield of 93.7 % by mass means nothing",
    ]);
    expect(text({ Cu: percent(33), S: percent(13) })[0]).toMatch(/: Cu 33 % where 29.74 % is due, S 13 % where 15.0/);
  });

  // two of the three groups that the oxygen of K2SO4 would do for: 2 K and one S
  it("count a group as often as its scarcest element allows", () => {
    const salt: Recipe = {
      equation: "KOH + H2SO4 -> K2SO4 + H2O",
      product: "K2SO4",
      materials: [
        { form: "KOH", amount: "11.2 g" },
        { form: "H2SO4", amount: "9.8 g" },
      ],
      // 96.06 / 174.25 = 55.13 %, SO2 64.06 / 174.25 = 36.76 %
      analysis: { parts: { SO4: "55.1 %", SO2: "36.8 %" } },
    };
    expect(found(salt, "recipe.analysis-misfit")).toEqual([]);
  });
});

describe("what ignition left", () => {
  // 40.304 / 84.313 = 47.80 % of magnesia from the carbonate, 40.304 / 58.319 = 69.1 % from the hydroxide
  const magnesia = (after: "0.44 g" | "0.48 g" | "0.478 g", residue = "MgO") =>
    found(
      {
        equation: "MgSO4 + Na2CO3 -> MgCO3 + Na2SO4",
        product: "MgCO3",
        materials: [
          { form: "MgSO4·7H2O", amount: "24.65 g" },
          { form: "Na2CO3", amount: "10.60 g" },
        ],
        analysis: { ignition: { before: "1.00 g", after, residue } },
      },
      "recipe.ignition-misfit",
    );

  it("is that of the formula within the last digit, or of another", () => {
    expect([...magnesia("0.48 g"), ...magnesia("0.478 g")]).toEqual([]);
    const [misfit] = magnesia("0.44 g");
    expect(misfit!.text).toMatch(/^44.0 % was left, MgCO₃ leaves 47.8 % of MgO; .*Mg\(OH\)₂ 69.1 %/);
    expect(misfit!.figure!.in("%").toNumber()).toBeCloseTo(44, 6);
  });

  it("says nothing where the residue has none of the metal", () => {
    expect(magnesia("0.44 g", "CaO")).toEqual([]);
  });
});

// 14.70 g is 0.1000 mol of CaCl2·2H2O (147.01), 0.1325 of CaCl2 (110.98), 0.0671 of the hexahydrate (219.08); soda 0.1000 mol
const chalk = (form: string | string[], amount: string | string[], water?: Recipe["water"]): Recipe => ({
  equation: "CaCl2 + Na2CO3 -> CaCO3 + NaCl",
  product: "CaCO3",
  materials: [
    { name: "calcium", form, amount } as Recipe["materials"][number],
    { name: "soda", form: "Na2CO3", amount: "10.60 g" },
  ],
  ...(water === undefined ? {} : { water }),
});

describe("a form that is not stated", () => {
  it("is the one that fits the rest, where that is clear", () => {
    const [open] = found(chalk(["CaCl2", "CaCl2·2H2O", "CaCl2·6H2O"], "14.70 g"), "recipe.form-not-stated");
    expect(open!.text).toBe(
      "calcium: the form is not stated; as CaCl₂ 0.132 mol, with soda 1.00 and itself 1.32 times the need; as CaCl₂·2H₂O 0.100 mol, with soda 1.00 and itself 1.00 times the need; as CaCl₂·6H₂O 0.0671 mol, with soda 1.49 and itself 1.00 times the need: CaCl₂·2H₂O fits",
    );
    // of the first reading
    expect(open!.figure!.in("").toNumber()).toBeCloseTo(1.325, 2);
  });

  // 14.70 / 128.99 = 0.1140: less than a quarter apart
  it("stays open where two are near, and is no question where one is given", () => {
    const [open] = found(chalk(["CaCl2·2H2O", "CaCl2·H2O"], "14.70 g"), "recipe.form-not-stated");
    expect(open!.text).toMatch(/itself 1.14 times the need: the amounts do not show which$/);
    expect(found(chalk("CaCl2·2H2O", "14.70 g"), "recipe.form-not-stated")).toEqual([]);
  });
});

describe("copies that differ", () => {
  // 16 g / 14.70 g = 1.088
  it("are told with what the other amount would be", () => {
    const [water, amount] = found(
      chalk("CaCl2·2H2O", ["14.70 g", "16 g"], ["100 mL", "200 mL"]),
      "recipe.readings-differ",
    );
    expect(water!.text).toBe("copies differ in the water: 100 mL, 200 mL");
    expect(water!.figure!.in("").toNumber()).toBeCloseTo(2, 9);
    expect(amount!.text).toBe(
      "calcium: another reading is 16 g, 1.09 instead of 1.00 times what the rest of the recipe uses",
    );
    expect(amount!.figure!.in("").toNumber()).toBeCloseTo(1.088, 3);
    expect(found(chalk("CaCl2·2H2O", "14.70 g", ["100 mL"]), "recipe.readings-differ")).toEqual([]);
  });

  // 12 g / 10.60 g = 1.132, with soda for 1.00 of the calcium
  it("are told of the material that they are of", () => {
    const recipe = chalk("CaCl2·2H2O", "14.70 g");
    const [, soda] = recipe.materials;
    const [other, ...more] = found(
      { ...recipe, materials: [recipe.materials[0]!, { ...soda!, amount: ["10.60 g", "12 g"] }] },
      "recipe.readings-differ",
    );
    expect(other!.text).toBe(
      "soda: another reading is 12 g, 1.13 instead of 1.00 times what the rest of the recipe uses",
    );
    expect(other!.material).toBe("soda");
    expect(more).toEqual([]);
  });
});

// CuSO4 159.6, CuSO4·5H2O 249.7; alum written double, K2Al2(SO4)4·24H2O: 516.4 + 24 × 18.015 = 948.7 (sums of atomic weights)
describe("a stated molar mass", () => {
  const blue = (of: string, value: `${number} g/mol`) =>
    found(
      {
        equation: "CuSO4 + NaOH -> Cu(OH)2 + Na2SO4",
        product: "Cu(OH)2",
        materials: [
          { form: "CuSO4·5H2O", amount: "25.0 g" },
          { form: "NaOH", amount: "12 g" },
        ],
        stated: { molarMasses: [{ of, value }] },
      },
      of === "K2Al2(SO4)4" ? "recipe.molar-mass" : "recipe.hydrate-mix-up",
    );

  it("that is right is no finding", () => {
    expect([...blue("CuSO4", "159.6 g/mol"), ...blue("CuSO4·5H2O", "250 g/mol")]).toEqual([]);
  });

  it.each([
    ["CuSO4", "249.7 g/mol", /^CuSO₄ weighs 159\.60 g\/mol, not the 249\.7 g\/mol stated, which is CuSO₄·5H₂O:/],
    ["CuSO4·5H2O", "159.6 g/mol", /not the 159\.6 g\/mol stated, which is CuSO₄:/],
    ["K2Al2(SO4)4", "948.8 g/mol", /which is K₂Al₂\(SO₄\)₄·24H₂O$/],
  ] as const)("of %s that belongs to another hydrate is named with it: %s", (of, value, words) => {
    const [finding, ...others] = blue(of, value);
    expect(finding!.text).toMatch(words);
    expect(others).toEqual([]);
  });
});

// 31.9 g of KNO3 stay in 100 g of water at 20 °C: 500 g keep 159.5 g, more than the 101 g of a mole
describe("what the water keeps", () => {
  const saltpetre = (water: "500 g" | "500 mL" | "50 g"): Recipe => ({
    equation: "NaNO3 + KCl -> KNO3 + NaCl",
    product: "KNO3",
    materials: [
      { form: "NaNO3", amount: "85.0 g" },
      { form: "KCl", amount: "74.6 g" },
    ],
    water: [water],
  });

  it("is told whether the water is weighed or measured", () => {
    for (const water of ["500 g", "500 mL"] as const) {
      const [kept] = found(saltpetre(water), "recipe.stays-dissolved");
      expect(kept!.figure!.in("g").toNumber(), water).toBeCloseTo(159.5, 0);
    }
    expect(found(saltpetre("50 g"), "recipe.stays-dissolved")).toEqual([]);
  });
});

// Where an answer turns into another: a case on each side of the border. The sums stand beside the figures; what is asked of the
// bench is common practice, no source.
import {
  doesItGo,
  evaluateRun,
  openStock,
  type Plan,
  type PlanRequest,
  planPreparation,
  type Run,
  receive,
  shoppingList,
} from "preparative";
import { describe, expect, it } from "vitest";

const words = ({ steps }: Plan): string => steps.map(({ text }) => text).join("\n");
const found = ({ verdict }: Run, code: string): string[] =>
  verdict.filter((one) => one.code === code).map(({ text }) => text);

describe("acid that was used up", () => {
  const plan = (equation: string, product: string, base: string, acid: string, excess: "0 %" | "5 %"): Plan =>
    planPreparation({
      equation,
      product,
      materials: [
        { name: "base", form: base },
        { name: "acid", form: acid, strength: "20 %", ...(excess === "0 %" ? {} : { excess }) },
      ],
      scale: { product: "50 g" },
    });
  const epsom = plan("MgCO3 + H2SO4 + 6 H2O -> MgSO4·7H2O + CO2", "MgSO4·7H2O", "MgCO3", "H2SO4", "5 %");
  const zinc = plan("ZnCO3 + 2 CH3COOH + H2O -> Zn(CH3COO)2·2H2O + CO2", "Zn(CH3COO)2·2H2O", "ZnCO3", "CH3COOH", "0 %");
  const isGone = (of: Plan, pH: number): boolean =>
    evaluateRun(of, { dried: "24 g", pH }).verdict.some(({ text }) => /the liquor has no acid left/.test(text));
  const expected = ({ steps }: Plan): number => steps.find(({ blank }) => blank === "pH")!.after.pH!.toNumber("");

  it("is known by a liquor above pH 6, where more acid than that was to be left", () => {
    expect(expected(epsom)).toBeLessThan(2.5);
    expect([1, 2.2, 5.9, 6, 6.1, 7, 9].filter((pH) => isGone(epsom, pH))).toEqual([6.1, 7, 9]);
  });

  it("not by less than paper tells: zinc acetate alone is some pH 5.6", () => {
    expect(expected(zinc)).toBeGreaterThan(5.1);
    expect(expected(zinc)).toBeLessThan(6);
    expect([6.1, 6.5, 7.6].filter((pH) => isGone(zinc, pH))).toEqual([7.6]);
  });

  it("says how much of the acid would give this mass, and what to do", () => {
    const finding = evaluateRun(epsom, { dried: "24 g", pH: 7 }).verdict.find(({ text }) => /no acid left/.test(text))!;
    expect(finding.code).toBe("reagent-short");
    expect(finding.figure!.toNumber("%")).toBeCloseTo((100 * 24) / 50 / 1.05, 0);
    expect(finding.next).toMatch(/add more of it while anything still dissolves, and titrate the acid/);
  });
});

describe("what fire leaves as it is", () => {
  const marble = planPreparation({
    equation: "CaCO3 -> CaO + CO2",
    product: "CaO",
    materials: [{ name: "marble", form: "CaCO3" }],
    scale: { material: "marble", portion: "100 g" },
  });

  it("explains a mass with up to 40 % of the pack: each gram of it weighs 1/0.44 of what is too much", () => {
    // 100 g give 56.0 g; 70 g is 14.0 g more: 14.0 / 0.44 = 31.8 g of inert matter
    expect(found(evaluateRun(marble, { dried: "70 g" }), "impure")).toEqual([
      "31.8 g of what fire leaves as it is would explain the mass: 32 % of the marble",
    ]);
    expect(found(evaluateRun(marble, { dried: "73.5 g" }), "impure")).toHaveLength(1);
    expect(found(evaluateRun(marble, { dried: "74.0 g" }), "impure")).toEqual([]);
  });

  it("explains nothing that was never fired", () => {
    const bismuth = planPreparation({
      equation: "BiCl3 + H2O -> BiOCl + 2 HCl",
      product: "BiOCl",
      materials: [{ name: "bismuth chloride", form: "BiCl3" }],
      scale: { product: "26.0 g" },
    });
    const { verdict } = evaluateRun(bismuth, { dried: "28.0 g" });
    expect(verdict.map(({ text }) => text).join()).not.toMatch(/fire leaves/);
    expect(verdict.length).toBeGreaterThan(0);
  });
});

describe("one sparingly soluble solid into another", () => {
  const told = (equation: string, product: string): string | undefined =>
    doesItGo({ equation, product }).reasons.find(({ code }) => code === "solid-to-solid")?.text;

  it("asks for many times the need, or fresh liquor, where the constant is small: barite, Ksp 1.1e-10 and 2.6e-9", () => {
    expect(told("BaSO4 + Na2CO3 -> BaCO3 + Na2SO4", "BaCO3")).toMatch(
      /stops at 0\.0\d+, so all of it asks for some 2\d times the need, or fresh liquor again and again$/,
    );
  });

  it("and for no more where it is large: gypsum and chalk", () => {
    expect(told("CaSO4 + Na2CO3 -> CaCO3 + Na2SO4", "CaCO3")).toMatch(/stops at \d+$/);
  });
});

describe("ammonium in a liquor that is acid", () => {
  it("holds no copper: of its ammonia a millionth is free (pKa 9.2 against pH 3)", () => {
    const phosphate = planPreparation({
      equation: "3 CuSO4 + 2 (NH4)2HPO4 + 3 H2O -> Cu3(PO4)2·3H2O + 2 (NH4)2SO4 + H2SO4",
      product: "Cu3(PO4)2·3H2O",
      materials: [
        { name: "blue vitriol", form: "CuSO4·5H2O", excess: "20 %" },
        { name: "diammonium phosphate", form: "(NH4)2HPO4" },
      ],
      scale: { product: "20 g" },
    });
    const { dissolved, pH, complexes } = phosphate.steps.find(({ operation }) => operation === "add")!.after;
    expect(pH!.toNumber("")).toBeLessThan(3.5);
    expect(dissolved.map(({ formula }) => formula)).toEqual(expect.arrayContaining(["CuSO₄", "(NH₄)₂SO₄"]));
    expect(complexes).toEqual([]);
  });
});

describe("what is put in", () => {
  it("is water and then the oxide that reacts with it, each with its amount", () => {
    const slaked = planPreparation({
      equation: "CaO + H2O -> Ca(OH)2",
      product: "Ca(OH)2",
      materials: [{ name: "quicklime", form: "CaO" }],
      scale: { material: "quicklime", portion: "56.0 g" },
    });
    const put = slaked.steps.find(({ text }) => text.startsWith("Put "))!;
    expect(put.amounts.map((amount) => amount.dimension)).toEqual(["mass"]);
    expect(put.amounts[0]!.toNumber("g")).toBeCloseTo(put.after.water.toNumber("g"), 6);
  });
});

describe("water that an equation lacks", () => {
  const request = (equation: string): PlanRequest => ({
    equation,
    product: "Na2SO4·10H2O",
    materials: [
      { name: "baking soda", form: "NaHCO3" },
      { name: "battery acid", form: "H2SO4", strength: "20 %" },
    ],
    scale: { product: "50 g" },
  });

  it("is put in on the right as well, coefficients as they were written", () => {
    const plan = planPreparation(request("2 NaHCO3 + H2SO4 -> Na2SO4 + 2 CO2"));
    expect(plan.assumptions.map(({ what }) => what)).toContain(
      "stands in the equation although the request leaves it out: nothing else was missing",
    );
  });

  it("does not mend coefficients that are wrong besides", () => {
    expect(() => planPreparation(request("4 NaHCO3 + H2SO4 -> Na2SO4 + 2 CO2"))).toThrow(/do not balance/);
  });
});

describe("a shopping list", () => {
  it("counts packs by the last one that was bought in a form that serves, and by no other of that name", () => {
    const silver = planPreparation({
      equation: "NaCl + AgNO3 -> AgCl + NaNO3",
      product: "AgCl",
      materials: [
        { name: "salt", form: "NaCl" },
        { name: "silver nitrate", form: "AgNO3" },
      ],
      scale: { product: "100 g" },
    });
    const table = receive(openStock(), { name: "salt", form: "NaCl", amount: "10 g", cost: "1 EUR" });
    const stock = receive(table, { name: "salt", form: "KCl", amount: "500 g", cost: "9 EUR" });
    const [salt] = shoppingList(stock, [silver]);
    // 100 g of 143.3 g/mol need 0.698 mol of 58.44 g/mol, 40.8 g; 10 g are there, and three packs do not do
    expect([salt!.name, salt!.packs, String(salt!.cost)]).toEqual(["salt", 4, "4 EUR"]);
  });
});

describe("a reaction that is kept hot to its end", () => {
  it("is not kept warm a second time: copper(I) oxide by glucose", () => {
    const oxide = planPreparation({
      equation: "2 CuSO4·5H2O + 4 NaOH + C6H12O6 -> Cu2O + C6H12O7 + 2 Na2SO4 + 12 H2O",
      product: "Cu2O",
      materials: [
        { name: "blue vitriol", form: "CuSO4·5H2O" },
        { name: "lye", form: "NaOH", excess: "10 %" },
        { name: "glucose", form: "C6H12O6", excess: "20 %" },
      ],
      scale: { material: "blue vitriol", portion: "25.0 g" },
    });
    expect(words(oxide)).toMatch(/Keep it at 80 °C or a little above/);
    expect(words(oxide)).not.toMatch(/55 °C/);
  });
});

describe("a salt without a hot figure that no hydrate is known of", () => {
  it("is evaporated to crystals, and nothing is made up of its cooling", () => {
    const plan = planPreparation({
      equation: "NH3 + H2SO4 -> NH4HSO4",
      product: "NH4HSO4",
      materials: [
        { name: "ammonia", form: "NH3", strength: "10 %" },
        { name: "acid", form: "H2SO4", strength: "20 %" },
      ],
      scale: { product: "50 g" },
    });
    expect(words(plan)).toMatch(/until it sets to crystals .*; how much of it crystallises on cooling is not known/);
  });
});

describe("lithium carbonate, 1.35 g in 100 g of water at 20 °C and 0.86 g at 80 °C", () => {
  const plan = planPreparation({
    equation: "2 LiCl + Na2CO3 -> Li2CO3 + 2 NaCl",
    product: "Li2CO3",
    materials: [
      { name: "lithium chloride", form: "LiCl" },
      { name: "soda", form: "Na2CO3" },
    ],
    scale: { material: "lithium chloride", portion: "4.24 g" },
  });

  it("is mixed, filtered and washed hot, and never boiled down", () => {
    const said = words(plan);
    expect(said).toMatch(/Dissolve the soda in a jug of its own in 14 mL of water.* warm it to 90 °C/);
    expect(said).toMatch(/filter it hot: cold its liquor keeps more of it/);
    expect(said).toMatch(/Wash .* of hot water/);
    expect(said).not.toMatch(/Evaporate|ice-cold|is not known/);
  });

  it("above its theory is not explained by a liquor that keeps less than nothing", () => {
    // 4.24 g are 0.100 mol: 3.69 g of 73.9 g/mol
    const { verdict } = evaluateRun(plan, { dried: "3.9 g" });
    expect(verdict.map(({ text }) => text).join()).not.toMatch(/-\d/);
    expect(verdict.map(({ code }) => code)).not.toContain("boiled-further");
    expect(found(evaluateRun(plan, { dried: "3.6 g" }), "boiled-further")).toHaveLength(1);
  });
});

describe("ammonium metavanadate, fired", () => {
  it("is kept hot enough for the last of its ammonia (450 to 500 °C: common practice, from memory)", () => {
    const plan = planPreparation({
      equation: "2 NH4VO3 -> V2O5 + 2 NH3 + H2O",
      product: "V2O5",
      materials: [{ name: "ammonium vanadate", form: "NH4VO3" }],
      scale: { material: "ammonium vanadate", portion: "10.0 g" },
      acknowledge: [],
    });
    expect(words(plan)).toMatch(/Heat slowly to 450 °C/);
  });
});

describe("red nickel from dimethylglyoxime", () => {
  it("is filtered off, the best known precipitate of nickel (common practice, no source)", () => {
    const plan = planPreparation({
      equation: "NiSO4 + 2 C4H8N2O2 + 2 NH3 -> Ni(C4H7N2O2)2 + (NH4)2SO4",
      product: "Ni(C4H7N2O2)2",
      materials: [
        { name: "nickel sulfate", form: "NiSO4·6H2O" },
        { name: "glyoxime", form: "C4H8N2O2" },
        { name: "ammonia", form: "NH3", strength: "10 %", excess: "10 %" },
      ],
      scale: { material: "nickel sulfate", portion: "2.0 g" },
    });
    expect(plan.isolation.how).toBe("precipitate");
    expect(words(plan)).not.toMatch(/boil it down/);
  });
});

describe("cobalt carbonate, roasted", () => {
  it("is Co3O4 at 700 °C, below 900 °C where that gives oxygen back (from memory)", () => {
    const plan = planPreparation({
      equation: "6 CoCO3 + O2 -> 2 Co3O4 + 6 CO2",
      product: "Co3O4",
      materials: [{ name: "cobalt carbonate", form: "CoCO3" }],
      scale: { material: "cobalt carbonate", portion: "12.0 g" },
    });
    expect(words(plan)).toMatch(/Heat slowly to 700 °C, and not to 900 °C, where it changes again/);
  });
});

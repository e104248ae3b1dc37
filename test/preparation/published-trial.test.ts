// Twelve preparations as others printed them - a university manual, a textbook of 1936, a laboratory book of 1928, web pages of
// people who made them - that stand in no other list here. Amounts are theirs; theory by hand from rounded molar masses. Each sheet
// was read line by line, and what nobody could have followed as printed is a reading below.
import { type Plan, type PlanRequest, planPreparation } from "preparative";
import { describe, expect, it } from "vitest";

interface Printed extends PlanRequest {
  readonly id: string;
  /** g, at 100 %. */
  readonly theory: number;
}

const PRINTED: readonly Printed[] = [
  {
    // a university manual, experiment 4: 0.50 g of foil, 15 mL of 4.0 M KOH, 8.0 g of oxalic acid, 20 mL of ethanol
    id: "trioxalatoaluminate",
    equation: "Al + KOH + H2C2O4 -> K3[Al(C2O4)3]·3H2O + H2",
    product: "K3[Al(C2O4)3]·3H2O",
    materials: [
      { name: "foil", form: "Al" },
      { name: "potash lye", form: "KOH", strength: "4.0 mol/L", excess: "8 %" },
      { name: "oxalic acid", form: "H2C2O4·2H2O", excess: "14 %" },
      { name: "alcohol", form: "C2H5OH", strength: "95 %", aside: true, portion: "20 mL" },
    ],
    scale: { material: "foil", portion: "0.50 g" },
    readability: { mass: "0.01 g" },
    // 0.50 / 26.98 × 462.3
    theory: 8.57,
  },
  {
    // a web page: 3 g of sulfite and 1 g of sulfur in 30 mL of water, two hours under reflux
    id: "thiosulfate",
    equation: "Na2SO3 + S + H2O -> Na2S2O3·5H2O",
    product: "Na2S2O3·5H2O",
    materials: [
      { name: "sulfite", form: "Na2SO3", dissolve: { water: "30 mL" } },
      { name: "sulfur", form: "S", excess: "31 %" },
    ],
    scale: { material: "sulfite", portion: "3.00 g" },
    readability: { mass: "0.01 g" },
    // 3.00 / 126.04 × 248.2
    theory: 5.91,
  },
  {
    // a web page: 5.9 g of dichromate in 50 mL, 5 mL of sulfuric acid, 10 mL of ethanol drop by drop, never above 60 °C; other pages
    // say below 40 °C, and green from 50 °C on: the lower is safe
    id: "chrome alum",
    equation: "K2Cr2O7 + H2SO4 + C2H5OH + H2O -> KCr(SO4)2·12H2O + CH3CHO",
    product: "KCr(SO4)2·12H2O",
    materials: [
      { name: "dichromate", form: "K2Cr2O7", dissolve: { water: "50 mL" } },
      { name: "oil of vitriol", form: "H2SO4", strength: "96 %", excess: "12 %" },
      { name: "spirit", form: "C2H5OH", strength: "95 %", excess: "170 %" },
    ],
    scale: { material: "dichromate", portion: "5.9 g" },
    acknowledge: ["chromate-organic"],
    // 5.9 / 294.18 × 2 × 499.4
    theory: 20.03,
  },
  {
    // a web page: 52 g of bluestone and 13.5 g of salt in 167 mL, 11 g of bisulfite with 7.3 g of lye in 84 mL
    id: "cuprous chloride by bisulfite",
    equation: "CuSO4 + NaCl + NaHSO3 + NaOH -> CuCl + Na2SO4 + H2O",
    product: "CuCl",
    materials: [
      { name: "bluestone", form: "CuSO4·5H2O" },
      { name: "salt", form: "NaCl", excess: "11 %" },
      { name: "bisulfite", form: "NaHSO3", excess: "2 %" },
      { name: "caustic soda", form: "NaOH" },
    ],
    scale: { material: "bluestone", portion: "52.0 g" },
    // 52.0 / 249.68 × 99.00
    theory: 20.62,
  },
  {
    // a web page: 5 g of copper chloride in 5 mL, 3.5 g of sulfite in 25 mL
    id: "cuprous chloride by sulfite",
    equation: "CuCl2 + Na2SO3 + H2O -> CuCl + Na2SO4 + HCl",
    product: "CuCl",
    materials: [
      { name: "copper chloride", form: "CuCl2·2H2O", dissolve: { water: "5 mL" } },
      { name: "sulfite", form: "Na2SO3", dissolve: { water: "25 mL" }, excess: "89 %" },
    ],
    scale: { material: "copper chloride", portion: "5.0 g" },
    // 5.0 / 170.48 × 99.00
    theory: 2.9,
  },
  {
    // a university manual, experiment 4: 6.1 g and 3.2 g in 30 mL of hot water, washed with 50 % ethanol, not with water
    id: "nickel ammonium sulfate",
    equation: "NiSO4·6H2O + (NH4)2SO4 -> (NH4)2Ni(SO4)2·6H2O",
    product: "(NH4)2Ni(SO4)2·6H2O",
    materials: [
      { name: "nickel sulfate", form: "NiSO4·6H2O" },
      { name: "ammonium sulfate", form: "(NH4)2SO4", excess: "4 %" },
    ],
    scale: { material: "nickel sulfate", portion: "6.1 g" },
    washing: { rinse: "alcohol" },
    // 6.1 / 262.85 × 394.99
    theory: 9.17,
  },
  {
    // a web page: 20 mL of 0.1 M silver nitrate and 20 mL of 0.5 M sodium hydroxide
    id: "silver oxide",
    equation: "AgNO3 + NaOH -> Ag2O + NaNO3 + H2O",
    product: "Ag2O",
    materials: [
      { name: "silver nitrate", form: "AgNO3", strength: "0.1 mol/L" },
      { name: "lye", form: "NaOH", strength: "0.5 mol/L", excess: "400 %" },
    ],
    scale: { material: "silver nitrate", portion: "20 mL" },
    readability: { mass: "0.001 g" },
    // 0.002 / 2 × 231.74
    theory: 0.232,
  },
  {
    // a web page: 410 g of thiosulfate in 180 mL, 200 g of iodine with ice, two litres of alcohol
    id: "tetrathionate",
    equation: "Na2S2O3 + I2 + H2O -> Na2S4O6·2H2O + NaI",
    product: "Na2S4O6·2H2O",
    materials: [
      { name: "hypo", form: "Na2S2O3·5H2O", dissolve: { water: "180 mL" } },
      { name: "iodine", form: "I2" },
      { name: "alcohol", form: "C2H5OH", strength: "95 %", aside: true, portion: "2 L" },
    ],
    scale: { material: "hypo", portion: "410 g" },
    // 410 / 248.18 / 2 × 306.27
    theory: 252.97,
  },
  {
    // a textbook of 1936, preparation 4: 35 g of potassium sulfate and 50 g of copper sulfate
    id: "potassium copper sulfate",
    equation: "CuSO4 + K2SO4 + H2O -> K2Cu(SO4)2·6H2O",
    product: "K2Cu(SO4)2·6H2O",
    materials: [
      { name: "bluestone", form: "CuSO4·5H2O" },
      { name: "sulfate of potash", form: "K2SO4" },
    ],
    scale: { material: "bluestone", portion: "50 g" },
    // 50 / 249.68 × 441.96
    theory: 88.5,
  },
  {
    // a laboratory book of 1928: 50 g of cobalt nitrate, 150 g of nitrite in 150 mL, 50 mL of 50 % acetic acid, air drawn through
    id: "sodium cobaltinitrite",
    equation: "4 Co(NO3)2 + 24 NaNO2 + 4 CH3COOH + O2 -> 4 Na3[Co(NO2)6] + 8 NaNO3 + 4 CH3COONa + 2 H2O",
    product: "Na3[Co(NO2)6]",
    materials: [
      { name: "cobalt nitrate", form: "Co(NO3)2·6H2O" },
      { name: "nitrite", form: "NaNO2", excess: "110 %" },
      { name: "acetic acid", form: "CH3COOH", strength: "50 %", excess: "140 %" },
    ],
    scale: { material: "cobalt nitrate", portion: "50 g" },
    // 50 / 291.03 × 403.93
    theory: 69.4,
  },
  {
    // a web page: 213.6 g of bluestone and 100 g of salt in 500 mL, "copper chloride crystallises"
    id: "copper chloride by salt",
    equation: "CuSO4 + NaCl + H2O -> CuCl2·2H2O + Na2SO4",
    product: "CuCl2·2H2O",
    materials: [
      { name: "bluestone", form: "CuSO4·5H2O" },
      { name: "table salt", form: "NaCl" },
    ],
    scale: { material: "bluestone", portion: "213.6 g" },
    // 213.6 / 249.68 × 170.48
    theory: 145.84,
  },
  {
    // an encyclopedia: dichromate is reduced in sulfuric acid with sulfur dioxide, below 40 °C
    id: "chrome alum by sulfur dioxide",
    equation: "K2Cr2O7 + H2SO4 + SO2 + H2O -> KCr(SO4)2·12H2O",
    product: "KCr(SO4)2·12H2O",
    materials: [
      { name: "dichromate", form: "K2Cr2O7" },
      { name: "acid", form: "H2SO4", strength: "20 %" },
    ],
    scale: { material: "dichromate", portion: "10 g" },
    // 10 / 294.18 × 2 × 499.4
    theory: 33.95,
  },
];

const made = new Map<string, Plan>();
const planOf = (id: string): Plan => {
  const { id: _id, theory: _theory, ...request } = PRINTED.find((one) => one.id === id)!;
  const plan = made.get(id) ?? planPreparation(request);
  made.set(id, plan);
  return plan;
};
const stepOf = (id: string, words: RegExp) => {
  const found = planOf(id).steps.find(({ text }) => words.test(text));
  if (found === undefined)
    throw new Error(
      `no ${words} in:\n${planOf(id)
        .steps.map(({ text }) => text)
        .join("\n")}`,
    );
  return found;
};
/** Where sentences stand in the work, in the order asked for. */
const inTurn = (id: string, ...words: readonly RegExp[]): boolean => {
  const texts = planOf(id).steps.map(({ text }) => text);
  const at = words.map((one) => texts.findIndex((text) => one.test(text)));
  return at.every((n, i) => n >= 0 && (i === 0 || n > at[i - 1]!));
};

describe.each(PRINTED)("$id", ({ id, theory, materials }) => {
  it("gives what the hand calculates, uses every material once, and ends in a bottle", () => {
    const { product, steps } = planOf(id);
    expect(Math.abs(product.theoreticalYield.in("g").toNumber() - theory)).toBeLessThan(0.01 + theory * 1e-3);
    for (const { name } of materials) {
      const used = steps.filter((one) => one.materials.includes(name)).map(({ operation }) => operation);
      expect([name, used[0], used.length]).toEqual([name, "weigh", 2]);
    }
    expect(steps.at(-1)!.operation).toBe("collect");
  });
});

describe("read as a bench worker", () => {
  it("dissolves the foil in the lye before oxalic acid comes, as the manual has it", () => {
    expect(inTurn("trioxalatoaluminate", /potash lye into the vessel/, /of foil/, /Pour the oxalic acid/)).toBe(true);
    expect(stepOf("trioxalatoaluminate", /of foil/).left[0]!.what).toBe("gas");
    expect(planOf("trioxalatoaluminate").checks[0]!.text).toMatch(/times the oxalic acid that the formula contains/);
  });

  it("keeps sulfur and sulfite near the boil for an hour or two, and lets nothing cool in between", () => {
    const boiled = stepOf("thiosulfate", /for an hour or two/);
    expect(boiled.after.temperature.in("°C").toNumber()).toBe(95);
    expect(planOf("thiosulfate").steps.some(({ text }) => /stand until it has cooled/.test(text))).toBe(false);
    expect(
      planOf("thiosulfate")
        .checks.map(({ text }) => text)
        .join(),
    ).toMatch(/sulfur is left over: it is filtered/);
  });

  it("adds spirit last to dichromate and acid, cooled and never above 40 °C, and dries no acid into the alum", () => {
    expect(
      inTurn("chrome alum", /Dissolve the dichromate/, /Pour the oil of vitriol/, /of spirit .*never above 40 °C/),
    ).toBe(true);
    const { solids } = planOf("chrome alum").steps.at(-1)!.after;
    expect(solids[0]!.formula).toBe("KCr(SO₄)₂·12H₂O");
    // 15 % stays in the liquor, and of the acid over only what clings to the crystals
    expect(solids[0]!.mass.in("g").toNumber()).toBeCloseTo(0.85 * 20.03, 0);
    for (const other of solids.slice(1)) expect(other.mass.in("g").toNumber()).toBeLessThan(0.2);
    expect(stepOf("chrome alum", /^Evaporate the liquor/).text).toMatch(/at no more than 40 °C/);
  });

  it("puts the lye to the bisulfite, not to the copper", () => {
    expect(stepOf("cuprous chloride by bisulfite", /caustic soda in the bisulfite solution/).vessel).toBe(
      "bisulfite solution",
    );
    expect(
      planOf("cuprous chloride by bisulfite").checks.some(({ text }) => /of salt is left over and must/.test(text)),
    ).toBe(false);
  });

  it("has one hot water for the double salt: 5.7 g of ammonium salt and nickel sulfate in some 21 mL, the manual takes 30", () => {
    expect(
      stepOf("nickel ammonium sulfate", /^Stir the ammonium sulfate/)
        .amounts[0]!.in("g")
        .toNumber(),
    ).toBeCloseTo(21, 0);
    expect(stepOf("nickel ammonium sulfate", /^Rinse/).text).toMatch(/50 % alcohol/);
  });

  it("puts iodine into nothing hot", () => {
    const added = stepOf("tetrathionate", /of iodine/);
    expect(added.before.temperature.in("°C").toNumber()).toBeLessThanOrEqual(30);
    expect(stepOf("tetrathionate", /^Rinse/).text).toMatch(/alcohol/);
  });

  it("adds acid to the nitrite last, and then draws the air through that it needs", () => {
    expect(inTurn("sodium cobaltinitrite", /Pour the nitrite/, /Pour the acetic acid solution/, /^Draw air/)).toBe(
      true,
    );
    // 0.1718 / 4 mol of oxygen: 1.03 L, of air 4.9 L
    expect(stepOf("sodium cobaltinitrite", /^Draw air/).text).toMatch(/1\.03 L of oxygen, which is in 4\.9\d L of air/);
    // 2.17 mol of nitrite in half a litre, not in two
    expect(
      stepOf("sodium cobaltinitrite", /^Dissolve the nitrite/)
        .amounts[0]!.in("g")
        .toNumber(),
    ).toBeLessThan(600);
  });

  it("leads in the sulfur dioxide that no bottle brings, and lets none into the room", () => {
    const led = stepOf("chrome alum by sulfur dioxide", /^Lead in/);
    // 10 / 294.18 × 3 = 0.102 mol, 2.45 L
    expect(led.text).toMatch(/2\.45 L of SO₂ .*wash bottle with sodium hydroxide solution \(10 %\), under a hood/);
    expect(led.after.dissolved.map(({ formula }) => formula)).toContain("KCr(SO₄)₂");
  });

  it("says that salt does not make copper chloride of bluestone: the vitriol crystallises", () => {
    expect(planOf("copper chloride by salt").feasibility.verdict).toBe("another solid forms");
  });
});

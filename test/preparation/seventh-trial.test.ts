// What a fourth independent reading found; the practice of the trade, no source where none is named.
import { type Plan, planPreparation } from "preparative";
import { benchSheet } from "preparative/sheet";
import { describe, expect, it } from "vitest";

const words = ({ steps }: Plan): string => steps.map(({ text }) => text).join("\n");
const saying = ({ steps }: Plan, what: RegExp): string => steps.find(({ text }) => what.test(text))!.text;

describe("a complex whose metal takes its ligands slowly", () => {
  // 24 g of the chloride in some 25 mL, warmed to 60 °C over charcoal for half an hour: textbooks of preparations, from memory
  const cobalt = planPreparation({
    equation: "2 CoCl2 + 2 NH4Cl + 10 NH3 + H2O2 -> 2 [Co(NH3)6]Cl3 + 2 H2O",
    product: "[Co(NH3)6]Cl3",
    materials: [
      { name: "cobalt chloride", form: "CoCl2·6H2O" },
      { name: "sal ammoniac", form: "NH4Cl" },
      { name: "ammonia", form: "NH3", strength: "25 %", excess: "50 %" },
      { name: "peroxide", form: "H2O2", strength: "30 %", excess: "20 %" },
      { name: "charcoal", form: "C", aside: true, portion: "4 g" },
    ],
    scale: { material: "cobalt chloride", portion: "24 g" },
  });
  const chromium = planPreparation({
    equation: "K2Cr2O7 + 7 H2C2O4 + 2 K2C2O4 -> 2 K3[Cr(C2O4)3]·3H2O + 6 CO2 + H2O",
    product: "K3[Cr(C2O4)3]·3H2O",
    materials: [
      { name: "dichromate", form: "K2Cr2O7" },
      { name: "oxalic acid", form: "H2C2O4·2H2O" },
      { name: "potassium oxalate", form: "K2C2O4·H2O" },
    ],
    scale: { material: "dichromate", portion: "10 g" },
  });

  it("is kept warm, for that it is clear tells nothing", () => {
    expect(words(cobalt)).toMatch(/Warm it to 60 °C .* for half an hour: cobalt\(III\) takes its ligands slowly/);
    expect(words(chromium)).toMatch(
      /until no more gas rises and a drop of it, diluted with water on a white plate, shows neither orange nor yellow, and for half an hour/,
    );
    for (const plan of [cobalt, chromium])
      expect(words(plan)).not.toMatch(/until it is clear: the|is left undissolved: the/);
  });

  it("is made in little water: no more is boiled off or outweighed by alcohol", () => {
    const water = cobalt.steps
      .filter(({ operation }) => operation === "dissolve")
      .reduce((all, { amounts }) => all + amounts[0]!.toNumber("g"), 0);
    expect(water).toBeLessThan(60);
  });

  it("gets its dichromate last, in portions: the gas comes from it and the oxalic acid", () => {
    expect(saying(chromium, /portions/)).toMatch(/^Pour the dichromate solution .* L of CO₂ in all/);
  });

  it("of cobalt(III) keeps its ammonia in a warm oven", () => {
    expect(words(cobalt)).not.toMatch(/ammonia that warm air may remove/);
  });
});

describe("aluminium sulfate, of which a formula has two atoms of the metal", () => {
  it("is dissolved in water for both, or the hydroxide sets to a jelly", () => {
    const gel = planPreparation({
      equation: "Al2(SO4)3 + 6 NH3 + 6 H2O -> 2 Al(OH)3 + 3 (NH4)2SO4",
      product: "Al(OH)3",
      materials: [
        { name: "aluminium sulfate", form: "Al2(SO4)3·18H2O" },
        { name: "ammonia", form: "NH3", strength: "10 %", excess: "5 %" },
      ],
      scale: { product: "10 g" },
    });
    // 10 g are 0.128 mol of aluminium: 1 mol in each kg of water, 21 g of it from the crystals
    const water = gel.steps.find(({ operation }) => operation === "dissolve")!.amounts[0]!.toNumber("g");
    expect(water).toBeGreaterThan(0.128 * 1000 - 25);
  });
});

describe("a rinse", () => {
  const acetate = planPreparation({
    equation: "NaHCO3 + CH3COOH + 2 H2O -> CH3COONa·3H2O + CO2",
    product: "CH3COONa·3H2O",
    materials: [
      { name: "baking soda", form: "NaHCO3" },
      { name: "vinegar essence", form: "CH3COOH", strength: "25 %", excess: "2 %" },
    ],
    scale: { material: "baking soda", portion: "50 g" },
  });
  const epsom = (excess: string): Plan =>
    planPreparation({
      equation: "MgO + H2SO4 -> MgSO4 + H2O",
      product: "MgSO4·7H2O",
      materials: [
        { name: "magnesia", form: "MgO" },
        { name: "acid", form: "H2SO4", strength: "20 %", excess: excess as "1 %" },
      ],
      scale: { product: "100 g" },
    });

  it("is left out where it would take much of the crystals and nothing else", () => {
    expect(words(acetate)).toMatch(/Do not rinse, nothing but the product is in their liquor/);
    expect(acetate.steps.map(({ operation }) => operation)).not.toContain("rinse");
    expect(words(epsom("0 %"))).toMatch(/Do not rinse/);
  });

  it("is done where acid is left that does not dry off", () => {
    expect(words(epsom("3 %"))).toMatch(/Rinse the crystals/);
  });

  it("is done of nitrates wet with nitric acid", () => {
    const silver = planPreparation({
      equation: "3 Ag + 4 HNO3 -> 3 AgNO3 + NO + 2 H2O",
      product: "AgNO3",
      materials: [
        { name: "silver", form: "Ag" },
        { name: "nitric acid", form: "HNO3", strength: "30 %", excess: "10 %" },
      ],
      scale: { material: "silver", portion: "20 g" },
    });
    expect(words(silver)).toMatch(/Rinse the crystals in two portions with their own solution/);
  });
});

describe("a pack with more in it than its salt", () => {
  const manganese = (assay: string): Plan =>
    planPreparation({
      equation: "MnSO4 + 2 NaHCO3 -> MnCO3 + Na2SO4 + CO2 + H2O",
      product: "MnCO3",
      materials: [
        { name: "garden manganese", form: "MnSO4·H2O", assay: assay as "90 %" },
        { name: "baking soda", form: "NaHCO3", excess: "10 %" },
      ],
      scale: { material: "garden manganese", portion: "40 g" },
    });

  it("is filtered before anything precipitates from its solution", () => {
    expect(words(manganese("96 %"))).toMatch(/if it stays cloudy, let it settle and filter it/);
    expect(words(manganese("100 %"))).not.toMatch(/stays cloudy/);
  });
});

describe("sugar of lead", () => {
  it("is dissolved with a few drops of its acid, and the acid is on the list", () => {
    const plan = planPreparation({
      equation: "Pb(CH3COO)2 + 2 KI -> PbI2 + 2 CH3COOK",
      product: "PbI2",
      materials: [
        { name: "sugar of lead", form: "Pb(CH3COO)2·3H2O" },
        { name: "potassium iodide", form: "KI" },
      ],
      scale: { product: "10 g" },
    });
    expect(words(plan)).toMatch(/with a few drops of dilute acetic acid in it, or it stays cloudy/);
    expect(benchSheet(plan).replace(/\s+/g, " ")).toMatch(/\[ \] a little dilute acetic acid/);
  });
});

describe("alcohol on the table", () => {
  const nickel = (portion: string): Plan =>
    planPreparation({
      equation: "NiCl2 + 6 NH3 -> [Ni(NH3)6]Cl2",
      product: "[Ni(NH3)6]Cl2",
      materials: [
        { name: "nickel chloride", form: "NiCl2·6H2O" },
        { name: "ammonia", form: "NH3", strength: "25 %", excess: "50 %" },
        { name: "spirit", form: "C2H5OH", strength: "92.4 %", aside: true, portion: portion as "50 g" },
      ],
      scale: { material: "nickel chloride", portion: "20 g" },
    });

  // some 90 mL of liquor
  it("that is less than the liquor is said to be too little, in its step", () => {
    expect(saying(nickel("20 g"), /of spirit slowly/)).toMatch(
      /less than there is liquor .*: more of it, up to as much as that/,
    );
    expect(saying(nickel("90 g"), /of spirit slowly/)).not.toMatch(/less than there is liquor/);
  });

  it("has its hazard once", () => {
    const row = /spirit, C₂H₅OH(.*?)What to do/.exec(benchSheet(nickel("50 g")).replace(/\s+/g, " "))![1]!;
    expect(row.match(/H225/g)).toHaveLength(1);
  });
});

describe("a gas that is led in", () => {
  it("has its pace and its time, and a wide tube where a solid comes", () => {
    const bicarbonate = planPreparation({
      equation: "NaCl + NH3 + CO2 + H2O -> NaHCO3 + NH4Cl",
      product: "NaHCO3",
      materials: [
        { name: "table salt", form: "NaCl" },
        { name: "ammonia", form: "NH3", strength: "25 %", excess: "10 %" },
        { name: "carbon dioxide", form: "CO2" },
      ],
      scale: { material: "table salt", portion: "30 g" },
    });
    // 12.4 L by 0.1 L a minute
    expect(saying(bicarbonate, /^Lead/)).toMatch(
      /about 100 mL a minute \(2\.1 h\), through the wash bottle \(count its bubbles\), the empty bottle and a wide tube/,
    );
  });
});

describe("a pH that is expected", () => {
  const phosphate = (excess: string): string =>
    saying(
      planPreparation({
        equation: "K2CO3 + 2 H3PO4 -> 2 KH2PO4 + CO2 + H2O",
        product: "KH2PO4",
        materials: [
          { name: "potash", form: "K2CO3" },
          { name: "phosphoric acid", form: "H3PO4", strength: "85 %", excess: excess as "1 %" },
        ],
        scale: { material: "potash", portion: "20 g" },
      }),
      /note the pH/,
    );

  it("says what brings the liquor to it, or to the side of the one that is in excess", () => {
    expect(phosphate("0 %")).toMatch(
      /more than 1 higher a little more of the phosphoric acid is needed, where it is more than 1 lower of the potash/,
    );
    // of what was to be in excess there may be too little all the same
    expect(phosphate("10 %")).toMatch(/where it is alkaline a little more of the phosphoric acid is needed/);
    expect(phosphate("10 %")).not.toMatch(/more than 1/);
  });
});

describe("a kiln", () => {
  it("is not opened while it glows, and nothing is weighed that does", () => {
    const blue = planPreparation({
      equation: "2 Co3O4 + 6 Al2O3 -> 6 CoAl2O4 + O2",
      product: "CoAl2O4",
      materials: [
        { name: "black cobalt oxide", form: "Co3O4" },
        { name: "calcined alumina", form: "Al2O3" },
      ],
      scale: { product: "50 g" },
    });
    expect(words(blue)).toMatch(/for one to three hours; it is done when, cold, the mass stands still/);
    expect(words(blue)).toMatch(/Let it cool in the closed kiln/);
  });

  it("makes no chromate where no alkali is fired", () => {
    const green = (equation: string, forms: readonly string[]): string[] =>
      planPreparation({
        equation,
        product: "Cr2O3",
        materials: forms.map((form) => ({ name: form, form })),
        scale: { material: forms[0]!, portion: "10 g" },
      }).cautions.incompatibilities.map(({ code }) => code);
    expect(green("(NH4)2Cr2O7 -> Cr2O3 + N2 + 4 H2O", ["(NH4)2Cr2O7"])).not.toContain("chromium-fired");
  });
});

describe("chromium(VI) in a waste", () => {
  it("has its reducer by name and mass: 1.5 of hydrogensulfite for each chromium, 0.75 of disulfite", () => {
    const { waste } = planPreparation({
      equation: "Na2Cr2O7 + 2 KCl -> K2Cr2O7 + 2 NaCl",
      product: "K2Cr2O7",
      materials: [
        { name: "sodium dichromate", form: "Na2Cr2O7·2H2O" },
        { name: "potassium chloride", form: "KCl" },
      ],
      scale: { material: "sodium dichromate", portion: "30 g" },
    });
    const said = waste.notes.find((note) => note.includes("chromium(VI)"))!;
    expect(said).toMatch(/stir in sodium disulfite by pinches until all of it is green: about \d+ g/);
    const chromium = waste.metals.find(({ symbol }) => symbol === "Cr")!.amount.toNumber("mol");
    // 190.1 g/mol
    expect(Math.abs(Number(/about (\d+) g/.exec(said)![1]) - chromium * 0.75 * 190.1)).toBeLessThan(0.51);
  });
});

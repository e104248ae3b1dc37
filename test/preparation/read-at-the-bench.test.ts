// Faults that a bench chemist found who wrote fifty-seven requests down before he saw a sheet, and read every sheet line by line.
// Grounds beside each: plain sums, solubilities of the tables, and common practice, no source, where nothing else is named.
import { describe, expect, it } from "vitest";
import { parseFormula } from "../../src/formula";
import { type Plan, type PlanRequest, planPreparation } from "../../src/preparation";
import { fateInRoom } from "../../src/preparation/reaction/fate";
import { benchSheet } from "../../src/sheet";
import { cautionsForFormulas } from "../../src/substance";
import { HAZARDS } from "../../src/substance/data/hazards";
import { FOIL_ALUM, PRUSSIAN_BLUE } from "../data/common-requests";

const sheetOf = (plan: Plan): string => benchSheet(plan, { format: "text" }).replace(/\s+/g, " ");
const gramsOf = (plan: Plan, material: string): number =>
  plan.weighings.find((one) => one.material === material)!.exact.toNumber("g");

describe("acid that comes after lye", () => {
  it("is enough for the lye over the need as well", () => {
    const plan = planPreparation(FOIL_ALUM);
    // 5.00 g / 26.982 = 0.18531 mol of Al; acid 2 × 0.18531 mol for the salt, 0.2 × 0.18531 / 2 for the lye that is over
    const moles = 5 / 26.9815;
    expect(gramsOf(plan, "sulfuric acid")).toBeCloseTo(((2 + 0.1) * moles * 98.08) / 0.96, 1);
    expect(plan.feasibility.verdict).toBe("goes");
    expect(plan.product.theoreticalYield.toNumber("g")).toBeCloseTo(moles * 474.38, 0);
    const left = plan.waste.vessels.flatMap(({ contents }) => contents.dissolved.map(({ formula }) => formula));
    expect(left).not.toContain("KOH");
    expect(left).toContain("K₂SO₄");
  });

  it("leaves product out where it is short of that", () => {
    const short = planPreparation({
      ...FOIL_ALUM,
      materials: FOIL_ALUM.materials.map((one) => ({
        ...one,
        ...(one.form === "H2SO4" ? { available: "37.9 g" } : { available: "100 g" }),
        excess: undefined,
      })),
      scale: "all",
    });
    expect(short.materialBalance.limiting).toBe("sulfuric acid");
  });

  it("says nothing of a film in acid, and filters before the acid", () => {
    const sheet = sheetOf(planPreparation(FOIL_ALUM));
    expect(sheet).not.toMatch(/oxide film|The solid goes into the acid/);
    // through paper, as it said, lye does not go
    expect(sheet).toMatch(/if it is not clear, filter it through glass wool .* Only then comes the acid/);
  });

  it("brings aluminium hydroxide out whole, by the drop of acid", () => {
    const plan = planPreparation({
      equation: "Al + NaOH + H2SO4 -> Al(OH)3 + Na2SO4 + H2",
      product: "Al(OH)3",
      materials: [
        { name: "foil", form: "Al" },
        { name: "lye", form: "NaOH", excess: "30 %" },
        { name: "battery acid", form: "H2SO4", strength: "20 %" },
      ],
      scale: { material: "foil", portion: "2.7 g" },
    });
    const sheet = sheetOf(plan);
    expect(sheet).not.toContain("has dissolved again");
    expect(sheet).toContain("a drop of battery acid: a cloud means");
    // a gel at constant mass: 7.8 g / 0.8
    expect(sheet).toMatch(/a gel keeps up to 20 % of water at constant mass \(9\.\d g then\)/);
  });
});

describe("the drop that tests a liquor", () => {
  const plan = (equation: string, product: string, materials: PlanRequest["materials"]): Plan =>
    planPreparation({ equation, product, materials, scale: { material: materials[0]!.name, portion: "20.0 g" } });

  it("is of what is there over the need", () => {
    const sheet = sheetOf(
      plan("BaCl2 + Na2SO4 -> BaSO4 + NaCl", "BaSO4", [
        { name: "sulfate", form: "Na2SO4" },
        { name: "barium chloride", form: "BaCl2·2H2O", excess: "5 %" },
      ]),
    );
    expect(sheet).toContain("a drop of fresh barium chloride solution: a cloud means that more is needed");
  });

  // g in 100 g of water at 20 °C: PbCl2 0.98, Ca(IO3)2 0.24, KHC4H4O6 0.53, C6H5COOH 0.29: each gives a cloud with any drop that
  // shares its ion, and warm liquor keeps two to five times as much
  it.each([
    ["Pb(NO3)2 + NaCl -> PbCl2 + NaNO3", "PbCl2", "Pb(NO3)2", "NaCl"],
    ["CaCl2 + KIO3 -> Ca(IO3)2 + KCl", "Ca(IO3)2", "KIO3", "CaCl2·2H2O"],
    ["KCl + NaHC4H4O6 -> KHC4H4O6 + NaCl", "KHC4H4O6", "NaHC4H4O6·H2O", "KCl"],
  ])("%s has none, and is not digested warm", (equation, product, limiting, over) => {
    const made = plan(equation, product, [
      { name: "first", form: limiting },
      { name: "second", form: over, excess: "10 %" },
    ]);
    const sheet = sheetOf(made);
    expect(sheet).toContain("No drop shows the end");
    expect(made.steps.map(({ blank }) => blank)).not.toContain("tests.filtrate");
    expect(sheet).toContain("no warmer than the room: warm liquor would keep more of it");
    expect(sheet).not.toContain("60 to 90 °C");
  });

  it("is left out where gas tells, and nobody is told to put more chalk into what is to be clean", () => {
    const sheet = sheetOf(
      plan("CaCO3 + C6H8O7 -> Ca3(C6H5O7)2·4H2O + CO2", "Ca3(C6H5O7)2·4H2O", [
        { name: "chalk", form: "CaCO3" },
        { name: "citric acid", form: "C6H8O7·H2O", excess: "3 %" },
      ]),
    );
    expect(sheet).not.toContain("chalk solution");
    expect(sheet).not.toContain("plan an excess of chalk");
    expect(sheet).toContain("when no more gas rises");
  });
});

describe("what a table has no figure for", () => {
  it("soaps of other metals precipitate, from a soap that is dissolved hot in a vessel of its own", () => {
    const plan = planPreparation({
      equation: "C17H35COONa + CaCl2 -> Ca(C17H35COO)2 + NaCl",
      product: "Ca(C17H35COO)2",
      materials: [
        { name: "soap", form: "C17H35COONa" },
        { name: "calcium chloride", form: "CaCl2·2H2O", excess: "5 %" },
      ],
      scale: { material: "soap", portion: "30.6 g" },
    });
    expect(plan.isolation.how).toBe("precipitate");
    const sheet = sheetOf(plan);
    expect(sheet).toMatch(
      /Dissolve the soap in [\d.]+ m?L of water \(vessel: .*\), stirring; in hot soft or distilled water \(75 to 85 °C\), and keep it hot/,
    );
    expect(sheet).not.toContain("rinse the crystals");
  });

  it("fat and stearic acid do not dissolve in water", () => {
    const plan = planPreparation({
      equation: "C17H35COONa + HCl -> C17H35COOH + NaCl",
      product: "C17H35COOH",
      materials: [
        { name: "soap", form: "C17H35COONa" },
        { name: "acid", form: "HCl", strength: "10 %", excess: "5 %" },
      ],
      scale: { material: "soap", portion: "30.6 g" },
    });
    expect(plan.isolation.how).toBe("precipitate");
  });
});

// g in 100 g of water: phenol 8.3, benzyl alcohol 4, both from memory; paraffin, lauric acid and fat next to nothing
it.each([
  ["C6H5OH", false],
  ["C7H8O", false],
  ["C57H110O6", true],
  ["C15H31COOH", true],
  ["C20H42", true],
])("of %s oil or fat is %s", (formula, isOily) => {
  const { precipitated, why } = fateInRoom(parseFormula(formula));
  expect(precipitated === true && /oil or a fat/.test(why)).toBe(isOily);
});

describe("water that no formula fixes", () => {
  it("a gel with cyanide is not to be ignited for it, others are", () => {
    const ofCopper = (equation: string, product: string, other: string): string =>
      sheetOf(
        planPreparation({
          equation,
          product,
          materials: [
            { name: "blue vitriol", form: "CuSO4·5H2O" },
            { name: "other", form: other },
          ],
          scale: { material: "blue vitriol", portion: "25.0 g" },
        }),
      );
    const cyanide = ofCopper("CuSO4 + K4[Fe(CN)6] -> Cu2[Fe(CN)6] + K2SO4", "Cu2[Fe(CN)6]", "K4[Fe(CN)6]·3H2O");
    expect(cyanide).toContain("a gel keeps up to 20 % of water");
    expect(cyanide).not.toMatch(/ignit/);
    expect(ofCopper("CuSO4 + NaOH -> Cu(OH)2 + Na2SO4", "Cu(OH)2", "NaOH")).toContain("the ignition of a sample tells");
  });

  it("Prussian blue: the sheet expects it, and calls no mass with it wet", () => {
    const plan = planPreparation(PRUSSIAN_BLUE);
    // 859.23 g/mol, and 16 × 18.015 more: 17.2 g × 1.335 = 22.9 g
    // what the liquor keeps is left out
    const comes = plan.steps.at(-1)!.target!.toNumber("g");
    const most = (comes * (1 + (16 * 18.015) / 859.23)).toFixed(1);
    expect(sheetOf(plan)).toContain(`and weighs ${(comes * (1 + (10 * 18.015) / 859.23)).toFixed(1)} g to ${most} g`);
    expect(sheetOf(plan)).toContain(`more than ${most} g`);
  });
});

describe("a product of which only a part comes", () => {
  it("has the range of that part at the head", () => {
    // iron(II) oxalate is held by the acid that the reaction sets free: Mohr's salt and oxalic acid alone (common practice: ammonia helps)
    const plan = planPreparation({
      equation: "(NH4)2Fe(SO4)2 + H2C2O4 -> FeC2O4 + (NH4)2SO4 + H2SO4",
      product: "FeC2O4·2H2O",
      materials: [
        { name: "Mohr's salt", form: "(NH4)2Fe(SO4)2·6H2O" },
        { name: "oxalic acid", form: "H2C2O4·2H2O", excess: "10 %" },
      ],
      scale: { material: "Mohr's salt", portion: "39.2 g" },
    });
    const comes = plan.steps.at(-1)!.target!.toNumber("g");
    expect(comes).toBeLessThan(0.8 * plan.product.theoreticalYield.toNumber("g"));
    // a constant alone was the doubt before: all constants of a sour liquor say much less surely what it keeps
    const { dissolved, range } = plan.completeness as Extract<typeof plan.completeness, { dissolved: unknown }>;
    const [kept, least, most] = [dissolved, range!.least, range!.most].map((one) => one.toNumber("g"));
    expect(sheetOf(plan)).toContain(
      `Expected dry product ${(0.9 * (comes + kept! - most!)).toFixed(1)} to ${(comes + kept! - least!).toFixed(1)} g`,
    );
  });
});

describe("how to get rid of it", () => {
  it("a sulfide is never reduced, and never meets acid", () => {
    const [entry] = cautionsForFormulas(["Na2S"]).substances;
    expect(entry!.disposal).toMatch(/^Never acid/);
    expect(entry!.disposal).not.toMatch(/thiosulfate|neutralise/);
  });

  it("a reducer for the waste is asked for by oxidisers alone", () => {
    const oxidisers = /ClO|BrO|IO|S2O8|SO5|Br2|I2|^C3N3O3Cl|^CaCl2O|HIO3|KIO3/;
    const rows = HAZARDS().filter(({ disposal }) => disposal === "reduceOxidiser");
    expect(rows.length).toBeGreaterThan(10);
    // one row speaks for a group, "salts of acids that feed a fire"
    const formulas = rows.flatMap(({ formula }) => formula ?? []);
    expect(formulas).toHaveLength(rows.length - 1);
    for (const formula of formulas) expect(formula).toMatch(oxidisers);
  });
});

it("silver is kept in the dark while it stands, and copper powder is dried at once with alcohol (common practice)", () => {
  const silver = planPreparation({
    equation: "AgNO3 + NaCl -> AgCl + NaNO3",
    product: "AgCl",
    materials: [
      { name: "silver nitrate", form: "AgNO3" },
      { name: "salt", form: "NaCl", excess: "5 %" },
    ],
    scale: { material: "silver nitrate", portion: "5.0 g" },
  });
  expect(silver.steps.find(({ operation }) => operation === "hold")!.text).toContain("in the dark");
  const copper = planPreparation({
    equation: "CuSO4 + Fe -> FeSO4 + Cu",
    product: "Cu",
    materials: [
      { name: "blue vitriol", form: "CuSO4·5H2O" },
      { name: "iron powder", form: "Fe" },
    ],
    scale: { material: "blue vitriol", portion: "25.0 g" },
  });
  const texts = copper.steps.map(({ text }) => text);
  const at = texts.findIndex((text) => /^Wash the last time with \d+ mL of alcohol/.test(text));
  expect(texts[at + 1]).toMatch(/^Let the alcohol leave it, spread thin.*do not leave it damp/);
});

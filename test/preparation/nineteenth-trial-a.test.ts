// What independent readers objected to in printed sheets, as rules; the preparations are theirs. Facts of the bench are common
// practice, no source.
import { type Plan, type PlanRequest, parseFormula, planPreparation } from "preparative";
import { benchSheet } from "preparative/sheet";
import { describe, expect, it } from "vitest";
import { dryingOf } from "../../src/preparation/procedure/drying";
import { colourInAir } from "../../src/preparation/procedure/protection";

const sheet = (request: PlanRequest): string => benchSheet(planPreparation(request)).replace(/\s+/g, " ");

const stepOf = (request: PlanRequest, operation: string) =>
  planPreparation(request).steps.find((step) => step.operation === operation)!;

describe("crystals of what dissolves less hot than cold", () => {
  const lithium: PlanRequest = {
    equation: "Li2CO3 + H2SO4 -> Li2SO4.H2O + CO2",
    product: "Li2SO4.H2O",
    materials: [
      { name: "lithium carbonate", form: "Li2CO3", assay: "99 %", excess: "3 %" },
      { name: "battery acid", form: "H2SO4", strength: "37 %" },
    ],
    scale: { product: "80 g" },
  };

  it("are rinsed hot, where water takes less of them", () => {
    // 13.3 mL of water, a fifth of 66.7 g of crystals (14 mL while the liquor was boiled down to a block); 31.4 g of Li2SO4 in 100 g of
    // it at 80 °C, 35.7 g at 0 °C. x g of the monohydrate bring 0.141 x of water: 0.859 x = 0.314 (13.3 + 0.141 x)
    const taken = (0.314 * 13.3) / (0.859 - 0.314 * 0.141);
    expect(taken).toBeCloseTo(5.1, 1);
    // what the pack has besides would leave less than 0.5 % in them, and 5.1 of 66.7 g is 7.6 %: water is used only where it is asked for
    expect(stepOf(lithium, "rinse")).toBeUndefined();
    const asked: PlanRequest = { ...lithium, washing: { rinse: "water" } };
    const { text } = stepOf(asked, "rinse");
    expect(text).toMatch(/with 13 mL of water of 80 °C.*\(it dissolves at most 5\.[12] g of them, cold water more\)/);
    // made ready up to the next mark
    expect(sheet(asked)).toContain("[ ] 14 mL of rinse at 80 °C");
    expect(stepOf(lithium, "cool").text).toContain("(it came as the water went: no need to wait)");
  });

  it("that have one water are dried warm below the loss that is known, and the label bans no warmth far below it", () => {
    const drying = dryingOf(parseFormula("Li2SO4·H2O"));
    expect(drying.upTo!.toNumber("°C")).toBe(40);
    expect(drying.changesAbove).toBe(false);
    // it was followed at 80 °C (Solid State Ionics 101-103, 1299, 1997); 130 °C was recalled
    expect(stepOf(lithium, "dry").text).toContain("no more than 40 °C (its water goes only from 80 °C on)");
    expect(sheet(lithium)).not.toContain("do not warm above");
    // of several waters the first may go below the loss that a table has
    expect(dryingOf(parseFormula("Na2SO3·7H2O")).upTo!.toNumber("°C")).toBe(25);
  });

  it("that are kept above a change of hydrate meet no colder water, which would make the other", () => {
    const nitrate: PlanRequest = {
      equation: "Cu + 4 HNO3 + 0.5 H2O -> Cu(NO3)2·2.5H2O + 2 NO2",
      product: "Cu(NO3)2·2.5H2O",
      materials: [
        { name: "copper", form: "Cu" },
        { name: "acid", form: "HNO3", strength: "60 %" },
      ],
      scale: { material: "copper", portion: "6.4 g" },
      washing: { rinse: "water" },
    };
    expect(stepOf(nitrate, "rinse").text).toMatch(/of water of 30 °C.*colder it would make another hydrate of them/);
  });
});

describe("crystals of which water takes a fifth", () => {
  const thiosulfate: PlanRequest = {
    equation: "Na2SO3 + S + 5 H2O -> Na2S2O3.5H2O",
    product: "Na2S2O3.5H2O",
    materials: [
      { name: "sodium sulfite", form: "Na2SO3", assay: "97 %" },
      { name: "dusting sulfur", form: "S", assay: "99 %", excess: "25 %" },
    ],
    scale: { material: "sodium sulfite", portion: "50 g" },
  };

  it("are rinsed with alcohol where that brings them out, and need no earlier batch", () => {
    const { text, ofAnotherBatch, alcohol } = stepOf(thiosulfate, "rinse");
    expect(text).toMatch(/with 13 mL of 50 % alcohol, in two portions.*plain water would dissolve too much of them/);
    expect(text).toMatch(/then once, briefly, with 7 mL of alcohol alone/);
    expect(ofAnotherBatch).toBeUndefined();
    // half of 13.4 mL twice
    expect(alcohol!.toNumber("mL")).toBeCloseTo(13.4, 0);
    expect(stepOf(thiosulfate, "dry").text).toMatch(
      /in moving air at room temperature, 2 h at least and no flame near/,
    );
  });

  it("are rinsed with their own solution where alcohol dissolves them", () => {
    const iron: PlanRequest = {
      equation: "Fe + 2 HCl + 4 H2O -> FeCl2·4H2O + H2",
      product: "FeCl2·4H2O",
      materials: [
        { name: "iron", form: "Fe", excess: "5 %" },
        { name: "acid", form: "HCl", strength: "20 %" },
      ],
      scale: { material: "iron", portion: "10 g" },
    };
    expect(stepOf(iron, "rinse").text).toContain("their own solution");
  });
});

describe("a pair of salts", () => {
  const salAmmoniac: PlanRequest = {
    equation: "(NH4)2SO4 + 2 NaCl -> 2 NH4Cl + Na2SO4",
    product: "NH4Cl",
    materials: [
      { name: "sulfate of ammonia", form: "(NH4)2SO4", assay: "99 %" },
      { name: "pickling salt", form: "NaCl", assay: "99.5 %" },
    ],
    scale: { product: "53.5 g" },
  };
  const text = sheet(salAmmoniac);

  it("has the salt that comes hot rinsed into the liquor, which is boiled down by so much further before", () => {
    const plan = planPreparation(salAmmoniac);
    const [filter] = plan.steps.filter(({ text }) => text.startsWith("Filter at once"));
    expect(filter!.text).toMatch(/press it, and rinse it with 8 mL of boiling water into the liquor/);
    const boiled = plan.steps.find(({ operation }) => operation === "concentrate")!;
    // 1.06 times the 82.3 g that dissolve 53.5 g at 80 °C (65.0 g in 100 g), less 8.4 g
    expect(boiled.after.water.toNumber("g")).toBeCloseTo(1.06 * (53.5 / 0.65) - 8.4, 0);
    // near the boil the rest keeps the product, with a little to spare: 73.3 g in 100 g at 95 °C
    expect((boiled.after.water.toNumber("g") * 0.733) / 1.05).toBeGreaterThan(53.5);
    expect(text).toMatch(/water for step 5 H₂O 8 mL/);
  });

  it("is purified by dissolving it again where the test shows the other salt after a second rinse", () => {
    // 15.5 g of rinsed crystals, 65.0 g in 100 g at 80 °C and 37.2 g at 20 °C: 1.05 × 23.8 = 25 mL, which keep 9.3 g
    expect(text).toMatch(
      /if it shows after that, dissolve them again in 25 mL of water at 80 °C and let that crystallise at 20 °C: 6\.[0-3] g comes back/,
    );
  });

  it("says that each is taken as if it were alone in the water, and a single salt does not", () => {
    expect(text).toContain("NH₄Cl crystallises, 31.6 % of it (each taken as if it were alone in the water)");
    const alone = sheet({
      equation: "KNO3 -> KNO3",
      product: "KNO3",
      materials: [{ name: "saltpetre", form: "KNO3", assay: "98 %" }],
      scale: { material: "saltpetre", portion: "50 g" },
    });
    expect(alone).not.toContain("as if it were alone");
  });
});

describe("stannous chloride", () => {
  const request: PlanRequest = {
    equation: "Sn + 2 HCl + 2 H2O -> SnCl2.2H2O + H2",
    product: "SnCl2.2H2O",
    materials: [
      { name: "lead-free tin", form: "Sn", assay: "99.9 %", excess: "15 %" },
      { name: "muriatic acid", form: "HCl", strength: "31 %" },
    ],
    scale: { product: "50 g" },
  };
  const text = sheet(request);

  it("has the acid that its liquor takes later where the acid is weighed: 5 % of 52.1 g", () => {
    expect(text).toContain("2.6 g more of the muriatic acid first");
    expect(text).toContain("muriatic acid: 31 % by mass; 52.1 g is 45 mL; 2.6 g more in step 5");
    const step = planPreparation(request).steps.find(({ operation }) => operation === "filter")!;
    expect(step.materials).toEqual(["muriatic acid"]);
  });

  it("dries beside what takes its acid, for calcium chloride does not", () => {
    expect(stepOf(request, "dry").text).toContain("with dried calcium chloride and a dish of soda lime beside it");
    expect(text).toContain("[ ] soda lime, or sodium hydroxide in pellets, in a dish");
  });
});

describe("a cake that air oxidises", () => {
  it("is washed with water free of air, and its colour then is said", () => {
    const carbonate: PlanRequest = {
      equation: "MnSO4.H2O + 2 NaHCO3 -> MnCO3 + Na2SO4 + CO2 + 2 H2O",
      product: "MnCO3",
      materials: [
        { name: "manganese sulfate fertiliser", form: "MnSO4.H2O", assay: "98 %" },
        { name: "baking soda", form: "NaHCO3", assay: "99.5 %", excess: "10 %" },
      ],
      scale: { product: "40 g" },
    };
    expect(stepOf(carbonate, "wash").text).toContain(
      "with 150 mL of water each, boiled and cooled (brown the cake is oxidised, by air)",
    );
    const chalk: PlanRequest = {
      equation: "CaCl2 + Na2CO3 -> CaCO3 + 2 NaCl",
      product: "CaCO3",
      materials: [
        { name: "calcium chloride", form: "CaCl2" },
        { name: "soda", form: "Na2CO3" },
      ],
      scale: { product: "20 g" },
    };
    expect(stepOf(chalk, "wash").text).not.toContain("boiled and cooled");
  });

  it("of tin shows nothing: it stays white", () => {
    expect(colourInAir(parseFormula("Sn(OH)2"))).toBeUndefined();
    expect(colourInAir(parseFormula("Fe(OH)2"))).toBe("brown");
  });
});

describe("the waste at the head of a sheet", () => {
  const poured = ({ waste }: Plan) => waste.vessels.filter(({ vessel }) => vessel !== "residue");

  it("is a volume by density where each vessel has one: ferrous sulfate beside copper", () => {
    const plan = planPreparation({
      equation: "CuSO4 + Fe -> Cu + FeSO4",
      product: "Cu",
      materials: [
        { name: "bluestone", form: "CuSO4·5H2O", excess: "5 %" },
        { name: "iron filings", form: "Fe" },
      ],
      scale: { material: "iron filings", portion: "10.0 g" },
    });
    const volumes = poured(plan).map(({ volume }) => volume!.toNumber("mL"));
    expect(plan.waste.volume!.toNumber("mL")).toBeCloseTo(
      volumes.reduce((all, one) => all + one, 0),
      3,
    );
    // 12 to 14 % of ferrous sulfate weighs 1.12 to 1.15 g/mL (handbooks)
    const liquor = plan.waste.vessels.find(({ vessel }) => vessel === "filtrate")!;
    const density = liquor.contents.mass.toNumber("g") / liquor.volume!.toNumber("mL");
    expect(density).toBeGreaterThan(1.1);
    expect(density).toBeLessThan(1.17);
    expect(plan.waste.mass!.toNumber("g")).toBeGreaterThan(plan.waste.volume!.toNumber("mL"));
    expect(benchSheet(plan)).toMatch(/Waste +[\d.]+ mL/);
  });

  it("is a volume by the density of several salts, each by its share, and leaves out the crops that came from it", () => {
    const plan = planPreparation({
      equation: "(NH4)2SO4 + 2 NaCl -> 2 NH4Cl + Na2SO4",
      product: "NH4Cl",
      materials: [
        { name: "sulfate of ammonia", form: "(NH4)2SO4", assay: "99 %" },
        { name: "pickling salt", form: "NaCl", assay: "99.5 %" },
      ],
      scale: { product: "53.5 g" },
    });
    const masses = poured(plan).map(({ contents }) => contents.mass.toNumber("g"));
    expect(plan.waste.mass!.toNumber("g")).toBeCloseTo(
      masses.reduce((all, one) => all + one, 0),
      3,
    );
    // mother liquor 98.8 g and wash water 3.8 g; 23 g each of NH4Cl and Na2SO4 take some 0.7 and 0.2 mL/g in 53 g of
    // water (apparent volumes, from memory): 74 mL and 3.4 mL
    expect(benchSheet(plan)).toMatch(/Waste +7[6-9] mL \(collect\)/);
  });
});

// What independent readers objected to in printed sheets, as rules; the preparations are theirs. Facts of the bench are common
// practice, no source.
import { cautionsForFormulas, type PlanRequest, parseFormula, planPreparation } from "preparative";
import { benchSheet } from "preparative/sheet";
import { describe, expect, it } from "vitest";
import { bearsLastAlcohol } from "../../src/preparation/procedure/alcohol";

const texts = (request: PlanRequest): string[] => planPreparation(request).steps.map(({ text }) => text);
const sheet = (request: PlanRequest): string => benchSheet(planPreparation(request)).replace(/\s+/g, " ");

describe("an ammine that alcohol brings out of its liquor", () => {
  const request: PlanRequest = {
    equation: "CuSO4·5H2O + 4 NH3 -> [Cu(NH3)4]SO4·H2O + 4 H2O",
    product: "[Cu(NH3)4]SO4·H2O",
    materials: [
      { name: "blue vitriol", form: "CuSO4·5H2O", assay: "99 %" },
      { name: "ammonia water", form: "NH3", strength: "25 %", excess: "50 %" },
      { name: "ethanol", form: "C2H5OH", strength: "94 %", aside: true, portion: "30 mL" },
    ],
    scale: { material: "blue vitriol", portion: "10.0 g" },
  };

  it("is made in little water: its salt dissolves warm, and cools before the ammonia comes", () => {
    const step = planPreparation(request).steps.find(({ text }) => text.startsWith("Dissolve the blue vitriol"))!;
    // 9.9 g / 249.68 × 159.60 = 6.33 g of CuSO4, 40.4 g in 100 g of water at 60 °C: 15.7 g, 1.2 times that is 18.8 g, of which
    // 9.9 g × 5 × 18.015 / 249.68 = 3.6 g is crystal water; 10 to 15 mL are usual
    expect(step.text).toMatch(/in 15 mL of water at 60 °C/);
    // begun at 40 °C, as it was, the ammonia of 92 kJ/mol would bring it past 60 °C, and it boils at 38 °C
    expect(step.text).toMatch(/let it cool to 25 °C: it gets warm with the ammonia, and hot it drives it off/);
    expect(step.after.temperature.toNumber("°C")).toBe(25);
  });

  it("has the alcohol once it is cold, stands in ice after it, and is filtered there", () => {
    const all = texts(request);
    const at = all.findIndex((text) => text.startsWith("Add the 30 mL of ethanol slowly, stirring, once it is cold"));
    expect(at).toBeGreaterThan(0);
    expect(all[at + 1]).toMatch(/^Let it stand in ice and water at 5 °C, covered, for half an hour/);
    expect(all[at + 2]).toMatch(/^Filter the crystals off at 5 °C/);
    expect(sheet(request)).toContain("[ ] ice");
  });

  it("is rinsed with alcohol alone at the end, where it is no oxidiser", () => {
    const rinse = planPreparation(request).steps.find(({ operation }) => operation === "rinse")!;
    expect(rinse.text).toMatch(/half and half.*; then once, briefly, with 5 mL of alcohol alone/);
    // half of the first 10 mL, which no rinse of a complex is below (9.7 mL by 1 mL/g), and as much again
    expect(rinse.alcohol!.toNumber("mL")).toBeCloseTo(10, 0);
    for (const [formula, bears] of [
      ["[Cu(NH3)4]SO4·H2O", true],
      ["[Ni(NH3)6](ClO4)2", false],
    ] as const)
      expect(bearsLastAlcohol(parseFormula(formula))).toBe(bears);
  });

  it("leaves a liquor that is collected as it is: one instruction, and none to precipitate or to neutralise", () => {
    const { waste } = planPreparation(request);
    expect(waste.isLeftAsItIs).toBe(true);
    expect(waste.treatment).toEqual([]);
    const printed = sheet(request);
    expect(printed).toMatch(
      /keeps the Cu of the complex in solution, and soda precipitates none of it: put nothing to it/,
    );
    expect(printed).not.toMatch(/precipitate (the metal|them)|neutralises what is left/);
  });

  it("is treated where acid is in it: the chloroammine of cobalt, which strong hydrochloric acid is put to", () => {
    const { waste } = planPreparation({
      equation: "2 CoCl2·6H2O + 2 NH4Cl + 8 NH3 + H2O2 -> 2 [Co(NH3)5Cl]Cl2 + 14 H2O",
      product: "[Co(NH3)5Cl]Cl2",
      materials: [
        { name: "cobalt chloride", form: "CoCl2·6H2O" },
        { name: "sal ammoniac", form: "NH4Cl" },
        { name: "ammonia", form: "NH3", strength: "25 %", excess: "50 %" },
        { name: "peroxide", form: "H2O2", strength: "30 %", excess: "20 %" },
      ],
      scale: { material: "cobalt chloride", portion: "5 g" },
    });
    expect(waste.isLeftAsItIs).toBe(false);
  });
});

describe("Mohr's salt in one pot", () => {
  const request: PlanRequest = {
    equation: "Fe + H2SO4 + (NH4)2SO4 + 6 H2O -> (NH4)2Fe(SO4)2·6H2O + H2",
    product: "(NH4)2Fe(SO4)2·6H2O",
    materials: [
      { name: "iron filings", form: "Fe", assay: "98 %" },
      { name: "dilute sulfuric acid", form: "H2SO4", strength: "20 %", excess: "10 %" },
      { name: "ammonium sulfate", form: "(NH4)2SO4", assay: "99 %" },
    ],
    scale: { product: "50 g" },
  };
  const all = texts(request);

  it("has its acid warm before the first iron, not boiling, and no flame under the hydrogen", () => {
    const at = all.findIndex((text) =>
      /^Warm the contents to 60 to 70 °C, in a bath of hot water with no flame/.test(text),
    );
    expect(all[at]).toMatch(/never to the boil: cold acid hardly takes it/);
    expect(all[at + 1]).toMatch(/^Add the 7\.3 g of iron filings/);
    expect(all[at + 2]).toMatch(
      /^Mark on the vessel where the liquor stands, and keep it at 60 to 70 °C, loosely covered, an hour or two/,
    );
  });

  it("leaves an acid alone that the reaction warms by more than 40 K: 53 K from strong hydrochloric acid", () => {
    const chloride = texts({
      equation: "Fe + 2 HCl + 4 H2O -> FeCl2·4H2O + H2",
      product: "FeCl2·4H2O",
      materials: [
        { name: "iron", form: "Fe", excess: "5 %" },
        { name: "acid", form: "HCl", strength: "20 %" },
      ],
      scale: { material: "iron", portion: "10 g" },
    }).join("\n");
    expect(chloride).not.toMatch(/60 to 70 °C/);
  });

  it("crystallises in ice, in one crop: air changes a liquor that is boiled down once more", () => {
    expect(all.join("\n")).toMatch(/in ice and water to 5 °C: 39\.\d g/);
    expect(all.join("\n")).not.toMatch(/second crop/);
    // 36.4 g of the salt without its water in 49.8 g of water; 20.1 g in 100 g at 5 °C between 17.8 g at 0 °C and 26.9 g at 20 °C.
    // x g of crystals take 284.05/392.14 of the salt and 108.09/392.14 of water: 36.4 - 0.7244 x = 0.201 (49.8 - 0.2756 x)
    expect((36.4 - 0.201 * 49.8) / (0.7244 - 0.201 * 0.2756)).toBeCloseTo(39.5, 0);
  });

  it("is rinsed with slightly acid water first, and with alcohol after", () => {
    const rinse = planPreparation(request).steps.find(({ operation }) => operation === "rinse")!;
    expect(rinse.text).toMatch(
      /ice-cold water with a drop of dilute sulfuric acid, in two portions.*, then with 15 mL of alcohol, in two portions/,
    );
    expect(rinse.alcohol!.toNumber("mL")).toBeGreaterThan(10);
    expect(sheet(request).match(/a little dilute sulfuric acid/g)).toHaveLength(1);
    expect(all.join("\n")).toMatch(/Let the alcohol leave it, covered with filter paper/);
  });
});

describe("the heat of an acid that a pack has besides, on the metal", () => {
  const heatWith = (acid: string) =>
    planPreparation({
      equation: "CuSO4 + Zn -> Cu + ZnSO4",
      product: "Cu",
      materials: [
        { name: "vitriol", form: "CuSO4·5H2O", also: [{ form: acid, share: "5 %" }], excess: "5 %" },
        { name: "zinc", form: "Zn" },
      ],
      scale: { material: "vitriol", portion: "20 g" },
    });

  it("counts where it is known, and is said where it is not: no enthalpy of a sulfamate is in the tables", () => {
    expect("rise" in heatWith("H2SO4").heat).toBe(true);
    const unknown = heatWith("HSO3NH2");
    const said = /HSO3NH2 takes some of the zinc: no enthalpy of formation/;
    expect("missing" in unknown.heat && unknown.heat.missing).toMatch(said);
    expect(unknown.unknown.join("\n")).toMatch(said);
    const adding = unknown.steps.find(({ text }) => /^Add the .* of zinc/.test(text))!;
    expect(adding.cautions.map(({ text }) => text).join("\n")).toMatch(/how warm it gets is not known/i);
    expect(adding.text).not.toMatch(/it warms by/);
  });
});

describe("hazards that are those of kin", () => {
  const spinel: PlanRequest = {
    equation: "CoCO3 + Al2O3 -> CoAl2O4 + CO2",
    product: "CoAl2O4",
    materials: [
      { name: "cobalt carbonate", form: "CoCO3" },
      { name: "alumina", form: "Al2O3" },
    ],
    scale: { product: "20 g" },
  };

  it("are said to be so, where they stand: a spinel has no entry, and cobalt carbonate its own", () => {
    expect(sheet(spinel).match(/Taken as for the group: cobalt compounds\./g)).toHaveLength(1);
    expect(sheet(spinel)).toMatch(/CoAl₂O₄ Pictogram.*H410\)\. Taken as for the group: cobalt compounds/);
  });

  it("names what the firing is done in among what protects", () => {
    expect(sheet(spinel)).toMatch(/\[ \] goggles .*\[ \] kiln vented outdoors .*First aid/);
    const lead = sheet({
      equation: "2 PbO + SnO2 -> Pb2SnO4",
      product: "Pb2SnO4",
      materials: [
        { name: "litharge", form: "PbO" },
        { name: "tin dioxide", form: "SnO2" },
      ],
      scale: { product: "20 g" },
    });
    expect(lead).toMatch(/\[ \] fume hood .*First aid/);
  });
});

describe("peroxide and what makes it decay", () => {
  const found = (massPercent: number) =>
    cautionsForFormulas([{ formula: "H2O2", massPercent }, "MnO2"]).incompatibilities.map(({ code }) => code);

  // 98.2 kJ/mol / 34.01 g/mol: 3 % gives 87 J/g, 21 K in water of 4.18 J/(g·K); 12 % gives 346 J/g, 83 K, to the boil from 20 °C
  it("decays hot where it is strong, and foams where it is weak", () => {
    expect(found(30)).toEqual(["peroxide-catalyst"]);
    expect(found(12)).toEqual(["peroxide-catalyst"]);
    expect(found(3)).toEqual(["peroxide-catalyst-weak"]);
    const [weak] = cautionsForFormulas([{ formula: "H2O2", massPercent: 3 }, "MnO2"]).incompatibilities;
    expect([weak!.what, weak!.condition, weak!.state]).toEqual([
      "foams: open vessel, in portions",
      "weak peroxide",
      "met",
    ]);
    // nobody said how strong: the stronger of the two, and that it is not stated
    const unstated = cautionsForFormulas(["H2O2", "MnO2"]).incompatibilities;
    expect(unstated.map(({ code, state }) => [code, state])).toEqual([["peroxide-catalyst", "not stated"]]);
  });
});

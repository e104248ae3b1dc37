// What an independent reading of sheets asked for: reagents and their harm where a wash is tested, fumes where a sample is ignited, and
// liquors by their density.
import { benchSheet, densityOfSolution, type PlanRequest, planPreparation, washAdvice } from "preparative";
import { describe, expect, it } from "vitest";

const CARBONATE: PlanRequest = {
  equation: "5 ZnSO4 + 5 Na2CO3 + 3 H2O -> Zn5(CO3)2(OH)6 + 5 Na2SO4 + 3 CO2",
  product: "Zn5(CO3)2(OH)6",
  materials: [
    { name: "zinc sulfate", form: "ZnSO4·7H2O" },
    { name: "soda", form: "Na2CO3", excess: "5 %" },
  ],
  scale: { product: "50 g" },
};

describe("the test of a last wash", () => {
  const plan = planPreparation(CARBONATE);
  const test = plan.steps.find(({ reagents }) => reagents.length > 0)!;

  // common practice, no source; barium chloride is classified as toxic if swallowed (Regulation (EC) No 1272/2008, Annex VI, 056-004-00-8)
  it("names what it is done with, and what of that is poisonous", () => {
    expect(test.reagents).toEqual(["barium chloride", "dilute hydrochloric acid", "indicator paper"]);
    expect(test.cautions.map(({ text }) => text)).toContain("barium chloride is poisonous; what was tested is waste");
    const sheet = benchSheet(plan);
    expect(sheet).toMatch(/\[ \] reagents for step \d+: barium chloride, dilute hydrochloric acid,\s+indicator paper/);
    for (const line of sheet.split("\n")) expect([...line].length).toBeLessThanOrEqual(78);
  });

  it("takes nothing where an eye tells, and is one test in two rows of the brown ring", () => {
    const [pink] = washAdvice({ product: "MnO2", washedOut: ["KMnO4"] }).endTests;
    expect([pink!.takes, pink!.harm]).toEqual([[], undefined]);
    const [ring] = washAdvice({ product: "CaCO3", washedOut: ["NaNO3"] }).endTests;
    expect(ring!.takes).toEqual(["iron(II) sulfate", "strong sulfuric acid"]);
  });
});

describe("an ignition test that the sheet offers", () => {
  it("says what comes off", () => {
    const vitriol = benchSheet(
      planPreparation({
        equation: "Fe + H2SO4 + 7 H2O -> FeSO4·7H2O + H2",
        product: "FeSO4·7H2O",
        materials: [
          { name: "steel wool", form: "Fe", excess: "5 %" },
          { name: "acid", form: "H2SO4", strength: "37 %" },
        ],
        scale: { material: "steel wool", portion: "20 g" },
      }),
    ).replace(/\s+/g, " ");
    expect(vitriol).toContain("Ignition test: sulfur oxides are given off: under a hood or outdoors");
  });
});

describe("a liquor", () => {
  const plan = planPreparation(CARBONATE);
  const filter = plan.steps.find(({ operation }) => operation === "filter")!;
  const [filtrate] = filter.left;

  it("is as large as its density makes it, and the solids are no part of it", () => {
    const vessel = plan.waste.vessels.find((one) => one.vessel === "filtrate")!;
    const salts = filtrate!.contents.dissolved.filter(({ formula }) => formula.startsWith("Na"));
    expect(salts.map(({ formula }) => formula).sort()).toEqual(["Na₂CO₃", "Na₂SO₄"]);
    const mass = filtrate!.contents.mass.toNumber("g");
    const sulfate = salts.find(({ formula }) => formula === "Na₂SO₄")!.amount.toNumber("mol") * 142.04;
    // nearly all of it is sulfate: as a solution of that alone to half a percent
    const alone = mass / densityOfSolution("Na2SO4", `${(100 * sulfate) / mass} %`).toNumber("g/mL");
    expect(vessel.volume!.toNumber("mL") / alone).toBeCloseTo(1, 2);
    expect(vessel.volume!.toNumber("mL")).toBeLessThan(0.95 * mass);
  });

  // apparent volumes of salts are positive: strong hot liquors are beyond every table of room temperature
  it("is never less than its water, however strong it is", () => {
    for (const [form, name] of [
      ["KNO3", "saltpetre"],
      ["CuSO4·5H2O", "blue vitriol"],
      ["Na2SO4·10H2O", "glauber salt"],
      ["K2Cr2O7", "dichromate"],
    ] as const) {
      const { waste, steps } = planPreparation({
        equation: `${form} -> ${form}`,
        product: form,
        materials: [{ name, form, assay: "96 %", also: [{ form: "NaCl", share: "4 %" }] }],
        scale: { material: name, portion: "100 g" },
      });
      expect(steps.length).toBeGreaterThan(4);
      for (const { volume, contents } of waste.vessels)
        if (volume !== undefined) {
          expect(volume.toNumber("mL"), form).toBeGreaterThanOrEqual(contents.water.toNumber("g"));
          expect(volume.toNumber("mL"), form).toBeLessThan(1.01 * contents.mass.toNumber("g"));
        }
    }
  });

  it("goes with a cake by its volume: the share of the salts is that of the liquor", () => {
    const kept = filter.target?.toNumber("mL") ?? Number(/keeps about (\d+) mL/.exec(filter.text)![1]);
    const moles = (of: typeof filter.before): number =>
      of.dissolved.find(({ formula }) => formula === "Na₂SO₄")!.amount.toNumber("mol");
    const volume = plan.waste.vessels.find((one) => one.vessel === "filtrate")!.volume!.toNumber("mL");
    expect(moles(filter.after) / moles(filter.before)).toBeCloseTo(kept / (kept + volume), 2);
  });
});

// common practice, no source: in the liquor alcohol brings out every salt that it does not dissolve, and nobody boils a liquor with it
describe("alcohol on the table of crystals that cooling brings", () => {
  const spirit = { name: "spirit", form: "C2H5OH", strength: "94 %", aside: true, portion: "30 mL" } as const;
  const texts = (request: PlanRequest): string[] => planPreparation(request).steps.map(({ text }) => text);

  it("rinses them where other salts stay in their liquor, and leaves that for a second crop", () => {
    const said = texts({
      equation: "ZnSO4·7H2O + (NH4)2SO4 -> (NH4)2Zn(SO4)2·6H2O + H2O",
      product: "(NH4)2Zn(SO4)2·6H2O",
      materials: [
        { name: "zinc sulfate", form: "ZnSO4·7H2O" },
        { name: "sulfate of ammonia", form: "(NH4)2SO4", excess: "20 %" },
        spirit,
      ],
      scale: { material: "zinc sulfate", portion: "50 g" },
    }).join("\n");
    expect(said).toContain("Rinse the crystals with the 30 mL of spirit in 30 mL of water, ice-cold");
    expect(said).toContain("For a second crop boil the mother liquor down");
    expect(said).not.toContain("Add the 30 mL of spirit");
  });

  it("rinses them where another salt crystallises with them", () => {
    const said = texts({
      equation: "Na2SO3 + S + 5 H2O -> Na2S2O3·5H2O",
      product: "Na2S2O3·5H2O",
      materials: [
        { name: "sulfite", form: "Na2SO3", assay: "95 %", also: [{ form: "Na2SO4", share: "4 %" }] },
        { name: "sulfur", form: "S", excess: "20 %" },
        spirit,
      ],
      scale: { material: "sulfite", portion: "63 g" },
    }).join("\n");
    expect(said).toContain("Rinse the crystals with the 30 mL of spirit");
    expect(said).not.toContain("Add the 30 mL of spirit");
  });

  it("that did go into a liquor is in none that is boiled down", () => {
    const { steps } = planPreparation({
      equation: "CuO + H2SO4 + 4 H2O -> CuSO4·5H2O",
      product: "CuSO4·5H2O",
      materials: [{ name: "copper oxide", form: "CuO" }, { name: "acid", form: "H2SO4", strength: "25 %" }, spirit],
      scale: { material: "copper oxide", portion: "20 g" },
    });
    const put = steps.findIndex(({ text }) => text.startsWith("Add the 30 mL of spirit"));
    expect(put).toBeGreaterThan(0);
    expect(steps.slice(put).some(({ operation }) => operation === "concentrate")).toBe(false);
  });
});

// ammonium acetate leaves with the water of a drying at 100 °C and more (from memory)
describe("ammonium acetate in the wash of a slime", () => {
  const washOf = (equation: string, product: string, forms: readonly string[]): string =>
    planPreparation({
      equation,
      product,
      materials: forms.map((form) => ({ name: form, form })),
      scale: { product: "10 g" },
    }).steps.find(({ operation }) => operation === "wash")!.text;

  it("is washed out again where the product is dried cooler than it leaves", () => {
    const cool = washOf("2 CuSO4 + K4[Fe(CN)6] -> Cu2[Fe(CN)6] + 2 K2SO4", "Cu2[Fe(CN)6]", [
      "CuSO4·5H2O",
      "K4[Fe(CN)6]·3H2O",
    ]);
    expect(cool).toMatch(
      /ammonium acetate into each 100 mL of the water, and wash once more without it before the test/,
    );
  });

  it("stays in where the drying drives it out", () => {
    const hot = washOf("2 KMnO4 + 3 MnSO4 + 2 H2O -> 5 MnO2 + K2SO4 + 2 H2SO4", "MnO2", ["KMnO4", "MnSO4·H2O"]);
    expect(hot).toMatch(/ammonium acetate into each 100 mL of the water\.$/);
  });
});

// common practice, no source
describe("a metal over a salt that hardly dissolves", () => {
  const said = (aside: boolean): string =>
    planPreparation({
      equation: "2 AgCl + Zn -> 2 Ag + ZnCl2",
      product: "Ag",
      materials: [
        { name: "silver chloride", form: "AgCl" },
        { name: "zinc granules", form: "Zn", excess: "100 %" },
        ...(aside ? [{ name: "acid", form: "HCl", strength: "10 %", aside: true, portion: "30 mL" } as const] : []),
      ],
      scale: { material: "silver chloride", portion: "14.3 g" },
    })
      .steps.map(({ text }) => text)
      .join("\n");

  it("needs no spoonful of acid where acid is in the vessel", () => {
    expect(said(false)).toContain("a spoonful of the acid that takes the rest of it");
    expect(said(true)).not.toContain("a spoonful");
  });
});

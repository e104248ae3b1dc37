// What independent readers objected to in printed sheets, as rules; the preparations are theirs. Facts of the bench are common
// practice, no source.
import { type PlanRequest, planPreparation, type Quantity, tryPlanPreparation } from "preparative";
import { benchSheet } from "preparative/sheet";
import { describe, expect, it } from "vitest";

type Mass = Quantity<"mass">;
const texts = (request: PlanRequest): string[] => planPreparation(request).steps.map(({ text }) => text);
const sheet = (request: PlanRequest): string => benchSheet(planPreparation(request)).replace(/\s+/g, " ");
const waterOf = (request: PlanRequest): number =>
  planPreparation(request).feeds.reduce(
    (all, feed) => all + (feed.how === "dissolve" ? feed.dissolving.water.toNumber("g") : 0),
    0,
  );

describe("the water of a double salt whose solubility no table has", () => {
  const copper: PlanRequest = {
    equation: "CuSO4·5H2O + (NH4)2SO4 + H2O -> (NH4)2Cu(SO4)2·6H2O",
    product: "(NH4)2Cu(SO4)2·6H2O",
    materials: [
      { name: "copper sulfate", form: "CuSO4·5H2O", assay: "98 %" },
      { name: "sulfate of ammonia", form: "(NH4)2SO4", assay: "99 %", excess: "5 %" },
    ],
    scale: { product: "39.98 g" },
  };

  // Of iron, zinc and nickel zinc stands in the middle: 37.8 g in 100 g at 75 °C and 46.2 g at 85 °C, 41.7 g between; 0.1 mol of
  // (NH4)2Zn(SO4)2 is 29.36 g and takes 70.4 g, of which the pentahydrate brings 9.0 g. Printed for 0.1 mol: 60 and 66 mL
  it("is that of the salt built alike that is in the middle", () => {
    expect(waterOf(copper)).toBeCloseTo(70.4 - 9.2, 0);
    expect(texts(copper)[3]).toMatch(
      /with more hot water if it needs that \(the water is what \(NH₄\)₂Zn\(SO₄\)₂ takes/,
    );
    expect(sheet(copper)).toContain("100 g of water dissolves 41.7 g of (NH₄)₂Zn(SO₄)₂ at 80 °C: Ladenburg");
  });

  it("sets the vessel and how far it is boiled down", () => {
    // 61 + 25.5 + 14.1 = 101 g; 40.0 g of crystals are 60 % of 67 g
    expect(texts(copper)[5]).toMatch(/no more than 34 mL of water boiled off in all, or the crystals can no longer/);
    expect(sheet(copper)).toMatch(/Vessel 250 mL/);
  });

  it("has the words of its metal on the label, where no list has the salt", () => {
    expect(sheet(copper)).toMatch(
      /do not warm above 25 °C, copper compounds that are listed harm water life and are not to be swallowed/,
    );
  });

  it("lets nothing that may be product go on the hot filter", () => {
    expect(texts(copper)[4]).toMatch(
      /grains that more hot water dissolves are product, and get it; if it is cloudy even/,
    );
  });

  // Of the potassium salts nickel alone has figures, 39.8 g in 100 g at 80 °C, 329.0 g/mol anhydrous: 0.1 mol takes 82.7 g, of which
  // the heptahydrate brings 12.6 g; 17.4 g of K2SO4, 21.5 g in 100 g, takes 81 g alone
  it("is more than either salt takes alone", () => {
    const cobalt: PlanRequest = {
      equation: "CoSO4·7H2O + K2SO4 -> K2Co(SO4)2·6H2O + H2O",
      product: "K2Co(SO4)2·6H2O",
      materials: [
        { name: "cobalt sulfate", form: "CoSO4·7H2O" },
        { name: "potassium sulfate", form: "K2SO4" },
      ],
      scale: { product: "43.73 g" },
    };
    expect(waterOf(cobalt)).toBeCloseTo(82.7 - 12.6, 0);
  });

  // no salt built alike has a figure: what each chloride takes hot, one beside the other
  it("is that of the feeds together where none is built alike", () => {
    const chloride: PlanRequest = {
      equation: "CuCl2·2H2O + 2 KCl -> K2CuCl4·2H2O",
      product: "K2CuCl4·2H2O",
      materials: [
        { name: "copper chloride", form: "CuCl2·2H2O" },
        { name: "potassium chloride", form: "KCl" },
      ],
      scale: { product: "31.96 g" },
    };
    // 14.9 g of KCl, 51.3 g in 100 g at 80 °C: 29.1 g; 13.4 g of CuCl2, 98 to 104 g in 100 g: 13.3 g; the dihydrate brings 3.6 g
    expect(waterOf(chloride)).toBeGreaterThan(29.1 + 12.5 - 3.6);
    expect(waterOf(chloride)).toBeLessThan(29.1 + 14 - 3.6);
  });

  it("is its own where the tables have it", () => {
    const mohr: PlanRequest = {
      equation: "FeSO4·7H2O + (NH4)2SO4 -> (NH4)2Fe(SO4)2·6H2O + H2O",
      product: "(NH4)2Fe(SO4)2·6H2O",
      materials: [
        { name: "green vitriol", form: "FeSO4·7H2O" },
        { name: "sulfate of ammonia", form: "(NH4)2SO4" },
      ],
      scale: { product: "39.2 g" },
    };
    expect(planPreparation(mohr).isolation.how).toBe("crystallise");
    expect(texts(mohr).join(" ")).not.toMatch(/built alike|are product/);
  });
});

describe("iron(II) oxalate from its sulfate and oxalic acid", () => {
  const oxalate: PlanRequest = {
    equation: "FeSO4·7H2O + H2C2O4·2H2O -> FeC2O4·2H2O + H2SO4 + 7 H2O",
    product: "FeC2O4·2H2O",
    materials: [
      { name: "moss killer", form: "FeSO4·7H2O", assay: "98 %" },
      { name: "wood bleach", form: "H2C2O4·2H2O", assay: "99 %", excess: "10 %" },
    ],
    scale: { product: "17.99 g" },
  };

  // neutralised, its liquor gives the salt itself; the sour liquor gives hydrogen sulfide with a sulfide
  it("has a waste that soda precipitates, and no sulfide", () => {
    const { notes, metals } = planPreparation(oxalate).waste;
    expect(notes.join(" ")).not.toMatch(/sulfide|count it by the ligand/);
    expect(metals.find(({ symbol }) => symbol === "Fe")!.held).toEqual([]);
  });

  it("still has the note where a ligand holds more than its own salt does", () => {
    const { notes } = planPreparation({
      equation: "FeCl3·6H2O + 3 K2C2O4·H2O -> K3[Fe(C2O4)3]·3H2O + 3 KCl + 6 H2O",
      product: "K3[Fe(C2O4)3]·3H2O",
      materials: [
        { name: "iron chloride", form: "FeCl3·6H2O" },
        { name: "potassium oxalate", form: "K2C2O4·H2O" },
      ],
      scale: { product: "10 g" },
    }).waste;
    expect(notes.join(" ")).toMatch(/oxalate keeps .*Fe\(C₂O₄\)₃.* in solution: count it by the ligand/);
  });

  // The constant alone (0.1 in pKsp) gave 7.2 to 8.5 g kept; a run of 5 g of Mohr's salt in such a liquor kept 8 to 14 %
  it("has a yield as wide as all constants of its liquor", () => {
    const { completeness } = planPreparation(oxalate);
    const { least, most } = (completeness as { range: { least: Mass; most: Mass } }).range;
    expect(least.toNumber("g")).toBeLessThan(6.5);
    expect(most.toNumber("g")).toBeGreaterThan(9);
    expect(sheet(oxalate)).toMatch(/Expected dry product 7\.\d to 12\.\d g, yellow/);
    expect(sheet(oxalate)).toMatch(/to 18\.0 g wet: dry on first; dry, a liquor that keeps less than the one planned/);
  });

  it("is heated as a step, and not where it can be", () => {
    expect(texts(oxalate).join("\n")).toMatch(/^Heat it in its liquor to 80 to 90 °C, stirring, for it bumps/m);
    expect(texts(oxalate).join(" ")).not.toMatch(/if it can be warmed/);
  });

  it("warns of what heating it dry gives", () => {
    expect(sheet(oxalate)).toMatch(/Heated dry it gives carbon monoxide and a powder that takes fire in air/);
  });

  it("says once how much precipitates", () => {
    expect(sheet(oxalate)).toMatch(/stands at pH 0\.7; H₂SO₄ that is set free/);
  });
});

describe("a sample that is heated until its water is gone", () => {
  const zinc: PlanRequest = {
    equation: "Zn + H2SO4 + 7 H2O -> ZnSO4·7H2O + H2",
    product: "ZnSO4·7H2O",
    materials: [
      { name: "zinc granules", form: "Zn", assay: "99 %", excess: "15 %" },
      { name: "battery acid", form: "H2SO4", strength: "37 %" },
    ],
    scale: { product: "57.51 g" },
  };

  // the last water goes by 280 °C, sulfur trioxide from 680 °C on; ZnSO4·H2O 179.5 g/mol of 287.6 is 62.4 %
  it("says between what temperatures, and at which hydrate a cooler oven stops", () => {
    expect(sheet(zinc)).toMatch(
      /heated to constant mass \(280 to 580 °C: only water is driven off; cooler it stops at ZnSO₄·H₂O, 62\.4 %\) leaves 56\.1 %/,
    );
  });

  // at 200 °C kieserite keeps its last water: 6 of 7 × 18.015 g of 246.47 g are 43.9 %
  it("is compared with what else loses as hot as that", () => {
    const schoenite: PlanRequest = {
      equation: "K2SO4 + MgSO4·7H2O -> K2Mg(SO4)2·6H2O + H2O",
      product: "K2Mg(SO4)2·6H2O",
      materials: [
        { name: "potassium sulfate", form: "K2SO4" },
        { name: "Epsom salt", form: "MgSO4·7H2O" },
      ],
      scale: { product: "40 g" },
    };
    expect(sheet(schoenite)).toMatch(/more: MgSO₄·7H₂O \(43\.9 %\) in it/);
  });

  it("is no test of an ammonium double salt, which lye tells from a salt without ammonium", () => {
    const copper: PlanRequest = {
      equation: "CuSO4·5H2O + (NH4)2SO4 + H2O -> (NH4)2Cu(SO4)2·6H2O",
      product: "(NH4)2Cu(SO4)2·6H2O",
      materials: [
        { name: "copper sulfate", form: "CuSO4·5H2O" },
        { name: "sulfate of ammonia", form: "(NH4)2SO4" },
      ],
      scale: { product: "39.98 g" },
    };
    expect(sheet(copper)).toMatch(
      /caustic soda solution gives ammonia, which turns damp red litmus blue; CuSO₄·5H₂O gives none/,
    );
    expect(sheet(copper)).not.toMatch(/a sample loses/);
  });
});

describe("zinc over the need in sulfuric acid", () => {
  const zinc = (excess: string): PlanRequest => ({
    equation: "Zn + H2SO4 + 7 H2O -> ZnSO4·7H2O + H2",
    product: "ZnSO4·7H2O",
    materials: [
      { name: "zinc granules", form: "Zn", assay: "99 %", ...(excess === "" ? {} : { excess: excess as "15 %" }) },
      { name: "battery acid", form: "H2SO4", strength: "37 %", ...(excess === "" ? { excess: "10 %" } : {}) },
    ],
    scale: { product: "57.51 g" },
  });

  it("does not wait for a portion that never stops, and is started where it is pure", () => {
    const step = texts(zinc("15 %")).find((text) => text.startsWith("Add the"))!;
    expect(step).toMatch(/wait until the gas has become slow and the foam has subsided and it is below 40 °C again/);
    expect(step).toMatch(/\(pure metal that hardly gives gas is started with a crystal of copper sulfate\)/);
    const all = texts(zinc("")).find((text) => text.startsWith("Add the"))!;
    expect(all).toMatch(/wait until this portion has stopped giving gas/);
    expect(all).not.toMatch(/copper sulfate/);
  });

  it("has its liquor made acid once the metal is out, and only then", () => {
    const steps = texts(zinc("15 %")).filter((text) => text.includes("pH 3 to 4"));
    expect(steps).toHaveLength(1);
    expect(steps[0]).toMatch(
      /^Filter hot .* from the Zn .*; bring it to pH 3 to 4 with a few drops of dilute sulfuric acid/,
    );
    expect(sheet(zinc("15 %"))).toMatch(/\[ \] a little dilute sulfuric acid/);
    expect(texts(zinc("")).join(" ")).not.toMatch(/pH 3 to 4/);
  });
});

describe("a displacement that is far uphill", () => {
  const hintOf = (request: PlanRequest): string => {
    const outcome = tryPlanPreparation(request);
    if (outcome.ok) throw new Error("planned");
    expect(outcome.error.code).toBe("plan.does-not-go");
    return outcome.error.hint!;
  };
  const byCopper = (salt: string, metal: string): PlanRequest => ({
    equation: `${salt} + Cu -> ${metal} + CuSO4${salt.includes("6H2O") ? " + 6 H2O" : ""}`,
    product: metal,
    materials: [
      { name: "salt", form: salt },
      { name: "copper turnings", form: "Cu" },
    ],
    scale: { product: "5 g" },
  });

  // -0.26 V and +0.34 V: 0.60 V for two electrons are K = 10^(-2 × 0.60 / 0.0592) = 10^-20
  it("is offered no code: nothing that is known changes it", () => {
    const hint = hintOf(byCopper("NiSO4·6H2O", "Ni"));
    expect(hint).not.toMatch(/acknowledge/);
    expect(hint).toMatch(/it goes the other way round, and no strength or warmth of plain salts in water changes that/);
  });

  // copper and hydrogen are 0.34 V apart
  it("is offered one where it is closer", () => {
    expect(
      hintOf({
        equation: "Cu + 2 HCl -> CuCl2 + H2",
        product: "CuCl2",
        materials: [
          { name: "copper", form: "Cu" },
          { name: "acid", form: "HCl", strength: "20 %" },
        ],
        scale: { product: "10 g" },
      }),
    ).toMatch(/acknowledge: \["does-not-go"\]/);
  });
});

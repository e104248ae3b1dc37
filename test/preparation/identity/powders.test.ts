// Telling powders apart. What each does is qualitative analysis as taught (from memory): carbonates fizz in acid, zinc and aluminium
// hydroxide dissolve in an excess of lye and magnesium hydroxide does not, ammonium smells of ammonia in lye, barium sulfate clouds in
// any sulfate, silver chloride in any chloride. Losses by hand from the formulas.
import { distinguishMaterials, distinguishPowders } from "preparative";
import { describe, expect, it } from "vitest";

const outcome = (formula: string, test: string): string | undefined => {
  // A candidate nothing is like makes every test useful.
  const others = ["SiO2", "NaCl", "Na2CO3", "NH4Cl", "MgSO4·7H2O", "K2SO4", "CaCO3", "NaHCO3"].filter(
    (f) => f !== formula,
  );
  const found = distinguishPowders({ candidates: [formula, ...others] }).tests.find((one) => one.test === test);
  const [name] = distinguishPowders({ candidates: [formula] }).remaining;
  return found?.unknown.includes(name!)
    ? undefined
    : found?.outcomes.find(({ leaves }) => leaves.includes(name!))?.shows;
};

describe("the tests of several powders", () => {
  it("leave a powder of which nothing is known in every outcome, and make none of it an outcome", () => {
    const candidates = ["SiO2", "NaCl", "Na2CO3", "CaCO3", "ZnO", "Y2(CO3)3", "RbCl", "CuSO4·5H2O"];
    const { tests, remaining } = distinguishPowders({ candidates });
    expect(remaining).toHaveLength(candidates.length);
    const open = tests.filter(({ unknown }) => unknown.length > 0);
    expect(open.length).toBeGreaterThan(0);
    for (const { test, outcomes, unknown } of tests) {
      const leaves = outcomes.flatMap((one) => one.leaves.filter((name) => !unknown.includes(name)));
      expect([...leaves, ...unknown].sort(), test).toEqual([...remaining].sort());
      for (const one of outcomes) {
        expect(typeof one.shows, test).toBe("string");
        expect(one.leaves, test).toEqual(expect.arrayContaining([...unknown]));
      }
    }
  });
});

describe("what a powder does", () => {
  it.each([
    ["CaCO3", "acid", "fizzes, dissolves"],
    ["Na2CO3", "acid", "fizzes, dissolves"],
    ["Zn5(CO3)2(OH)6", "acid", "fizzes, dissolves"],
    ["ZnO", "acid", "dissolves"],
    ["BaSO4", "acid", "stays"],
    ["SiO2", "acid", "stays"],
    ["Na2S·9H2O", "acid", "dissolves, smells of rotten eggs"],
    ["ZnSO4·7H2O", "lye", "dissolves"],
    ["MgSO4·7H2O", "lye", "clouds"],
    ["CuSO4·5H2O", "lye", "clouds"],
    ["(NH4)2SO4", "lye", "dissolves, smells of ammonia"],
    ["ZnSO4·7H2O", "lye by drops", "a precipitate that excess dissolves"],
    ["MgSO4·7H2O", "lye by drops", "a precipitate that stays"],
    ["NaCl", "silver nitrate", "a precipitate that stays"],
    ["NaNO3", "silver nitrate", "clear"],
    ["Na2SO4·10H2O", "barium chloride", "a precipitate that stays"],
    ["NaCl", "barium chloride", "clear"],
    ["CaCl2·2H2O", "oxalate", "a precipitate that stays"],
    ["CaCl2·2H2O", "soda", "a precipitate that stays"],
    ["CuSO4·5H2O", "ammonia", "a precipitate that excess dissolves"],
    // Metals, elements and higher oxides: an equilibrium of ions knows nothing of them, and said that all dissolve.
    ["Cu", "acid", "stays"],
    ["Zn", "acid", "bubbles, dissolves"],
    ["Al", "lye", "bubbles, dissolves"],
    ["Fe", "lye", "stays"],
    ["S", "acid", "stays"],
    ["MnO2", "acid", "stays"],
    ["V2O5", "acid", undefined],
    ["Mn3O4", "acid", undefined],
    // What stays in acid gives off nothing.
    ["CuS", "acid", "stays"],
    ["ZnS", "acid", "dissolves, smells of rotten eggs"],
    ["Na2S2O3·5H2O", "acid", "clouds, smells of burnt sulfur"],
    ["CaCO3", "water", "stays"],
    ["NaCl", "water", "dissolves"],
    // Colours: The Columbia Encyclopedia, flame test; crimson and scarlet are red.
    ["NaCl", "flame", "yellow"],
    ["KNaC4H4O6·4H2O", "flame", "yellow"],
    ["K2SO4", "flame", "violet"],
    ["CaCO3", "flame", "orange-red"],
    ["SrCl2·6H2O", "flame", "red"],
    ["Li2CO3", "flame", "red"],
    ["BaCl2·2H2O", "flame", "yellow-green"],
    ["CuSO4·5H2O", "flame", "green to blue-green"],
    ["MgSO4·7H2O", "flame", undefined],
  ])("%s, %s: %s", (formula, test, shows) => {
    expect(outcome(formula, test)).toBe(shows);
  });
});

describe("telling powders apart", () => {
  it("takes pH paper to the four white powders of a kitchen", () => {
    const jar = distinguishPowders({ candidates: ["Na2CO3", "NaHCO3", "CaCO3", "CaSO4·2H2O"] });
    expect(jar.next!.test).toBe("pH");
    expect(jar.next!.bits).toBeCloseTo(2, 9);
    // Soda in water 11 to 11.5, bicarbonate 8.3, chalk 9.9, gypsum 7 (textbook values)
    expect(jar.next!.outcomes.map(({ shows }) => shows)).toEqual(["about 11", "about 8.1", "about 9.9", "about 7.1"]);
    expect(
      distinguishPowders({ candidates: ["Na2CO3", "NaHCO3", "CaCO3", "CaSO4·2H2O"], found: { pH: 11 } }).remaining,
    ).toEqual(["Na₂CO₃"]);
  });

  it("excludes by name of the test, and stops where one is left", () => {
    const jar = distinguishPowders({
      candidates: ["ZnO", "CaCO3", "BaSO4", "MgO"],
      found: { acid: "dissolves", lye: "stays" },
    });
    expect(jar.remaining).toEqual(["MgO"]);
    expect(jar.excluded).toEqual([
      { formula: "CaCO₃", by: "acid" },
      { formula: "BaSO₄", by: "acid" },
      { formula: "ZnO", by: "lye" },
    ]);
    expect(jar.next).toBeUndefined();
    expect(jar.text).toMatch(/it is MgO/);
  });

  // 36.10 % of FeSO4·7H2O is no zinc: ZnSO4·H2O loses 10.04 % (18.02/179.5), the heptahydrate 43.86 % (126.1/287.6).
  it("weighs the loss of hydrates, which nothing wet tells apart", () => {
    const hydrates = { candidates: ["ZnSO4·H2O", "ZnSO4·7H2O"] };
    expect(
      distinguishPowders(hydrates)
        .tests.map(({ test }) => test)
        .sort(),
    ).toEqual(["density", "loss"]);
    expect(distinguishPowders({ ...hydrates, found: { loss: "10 %" } }).remaining).toEqual(["ZnSO₄·H₂O"]);
    expect(distinguishPowders({ ...hydrates, found: { loss: "43.5 %" } }).remaining).toEqual(["ZnSO₄·7H₂O"]);
    expect(distinguishPowders({ ...hydrates, found: { loss: "25 %" } }).text).toMatch(/none of the candidates/);
  });

  it("tells chalk from its kin by flame, which acid and water leave alike", () => {
    const jar = distinguishPowders({ candidates: ["CaCO3", "SrCO3", "BaCO3"], found: { flame: "yellow-green" } });
    expect(jar.remaining).toEqual(["BaCO₃"]);
    expect(() => distinguishPowders({ candidates: ["CaCO3", "SrCO3"], found: { flame: "blue" } })).toThrow(
      expect.objectContaining({ code: "plan.observation", hint: "orange-red; red" }),
    );
  });

  // Densities: 2.71 and 4.5 g/cm3 for calcite and barite (minerals, from memory).
  it("takes a density as found", () => {
    const jar = distinguishPowders({ candidates: ["CaCO3", "BaSO4"], found: { density: "4.4 g/cm3" } });
    expect(jar.remaining).toEqual(["BaSO₄"]);
  });

  // 3.8 and 3.9 g/cm3 (handbook values, from memory): a tenth is what the flask resolves
  it("tells two apart that differ by just what a test resolves", () => {
    const pair = { candidates: ["ZnSO4", "Zn5(CO3)2(OH)6"] };
    const density = distinguishPowders(pair).tests.find(({ test }) => test === "density")!;
    expect(density.outcomes.map(({ shows }) => shows)).toEqual(["about 3.8 g/cm3", "about 3.9 g/cm3"]);
    expect(density.bits).toBeCloseTo(1, 9);
    expect(distinguishPowders({ ...pair, found: { density: "3.9 g/cm3" } }).remaining).toEqual(["Zn₅(CO₃)₂(OH)₆"]);
    expect(distinguishPowders({ ...pair, found: { density: "3.85 g/cm3" } }).remaining).toHaveLength(2);
  });

  it("takes the name of a good of the shop, as distinguishMaterials does", () => {
    const jar = distinguishPowders({ candidates: "moss killer" });
    expect(jar.remaining).toHaveLength(distinguishMaterials("moss killer").length);
    expect(jar.next!.test).toBe("lye");
    // zinc dissolves in lye, iron(II) does not
    const iron = distinguishPowders({ candidates: "moss killer", found: { lye: "clouds" } });
    expect(iron.remaining.every((name) => name.startsWith("Fe"))).toBe(true);
  });

  it("never excludes a candidate by a test of which nothing is known for it", () => {
    const jar = distinguishPowders({ candidates: ["CaCO3", "C6H12O6"], found: { loss: "44 %" } });
    expect(jar.remaining).toContain("C₆H₁₂O₆");
  });

  it("gives the same answer whatever the order of the findings, and no test more bits than there are", () => {
    const candidates = ["ZnSO4·7H2O", "MgSO4·7H2O", "Na2SO4·10H2O", "NaCl", "CaCO3"];
    const one = distinguishPowders({ candidates, found: { water: "dissolves", lye: "dissolves" } });
    const other = distinguishPowders({ candidates, found: { lye: "dissolves", water: "dissolves" } });
    expect(one.remaining).toEqual(other.remaining);
    let tested = 0;
    for (const { bits } of distinguishPowders({ candidates }).tests) {
      expect(bits).toBeLessThanOrEqual(Math.log2(5) + 1e-9);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(10);
  });

  it.each([
    [{ candidates: [] }, "plan.request"],
    [{ candidates: ["NaCl"], found: { taste: "salty" } }, "plan.unknown-option"],
    [{ candidates: ["NaCl"], found: { water: "floats" } }, "plan.observation"],
    [{ candidates: ["NaCl"], foound: {} }, "plan.unknown-option"],
  ])("refuses %j with %s", (request, code) => {
    expect(() => distinguishPowders(request as never)).toThrow(expect.objectContaining({ code }));
  });
});

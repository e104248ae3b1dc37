// Every refusal of the layer with what it says in data, washes by hand, and own constants in every question that rests on one.
import {
  attempt,
  crystallise,
  facts,
  fractionalCrystallization,
  hydroxidePrecipitationRange,
  molarSolubility,
  precipitatedCarbonate,
  precipitationOrder,
  quantity,
  remainsInSolution,
  saltConversion,
  solubilityOf,
  solubilityProduct,
  washAdvice,
  washPlan,
  waterForSolution,
  waterToDissolve,
  willPrecipitate,
} from "preparative";
import { describe, expect, it } from "vitest";
import { everyProduct, findRows } from "../../src/solubility/precipitating/product";

const refusal = (run: () => unknown) => {
  const outcome = attempt(run);
  if (outcome.ok) throw new Error("nothing was refused");
  return outcome.error;
};

describe("a refusal", () => {
  it.each<[string, () => unknown, string, object]>([
    [
      "of a salt that nobody knows",
      () => solubilityOf("CaSO3Ba", "20 °C"),
      "no-data",
      { formula: "CaSO3Ba", anhydrous: "CaSO3Ba" },
    ],
    [
      "of a salt without figure",
      () => solubilityOf("LiClO2", "20 °C"),
      "no-data",
      { formula: "LiClO2", anhydrous: "LiClO2" },
    ],
    [
      "of a temperature beyond the table",
      () => solubilityOf("KNO3", "150 °C"),
      "outside-range",
      { formula: "KNO3", celsius: 150, from: 0, to: 100, nearest: [{ celsius: 100 }] },
    ],
    [
      "of a substance by neither mass nor amount",
      () => remainsInSolution({ substances: [{ formula: "NaCl" }], water: "100 g", temperature: "20 °C" }),
      "missing-option",
      { formula: "NaCl" },
    ],
    [
      "of a substance by both",
      () =>
        remainsInSolution({
          substances: [{ formula: "NaCl", mass: "1 g", amount: "1 mol" }],
          water: "100 g",
          temperature: "20 °C",
        }),
      "conflicting-options",
      { formula: "NaCl" },
    ],
    [
      "of a crop that the liquor keeps",
      () => crystallise({ formula: "NaCl", mass: "1 g", hot: "20 °C", cold: "19 °C", water: "100 g" }),
      "no-crop",
      { formula: "NaCl", cold: 19 },
    ],
    ["of an unknown product", () => solubilityProduct("KNO3"), "no-data", { solid: "KNO3", form: undefined }],
    ["of an unknown form", () => solubilityProduct("CaCO3", "blue"), "no-data", { solid: "CaCO3", form: "blue" }],
    [
      "of ions that do not add up",
      () => molarSolubility({ solid: "Ag2S", ksp: "1e-49", ions: ["Ag+", "S^2-"] }),
      "bad-option",
      { ions: ["Ag+", "S^2-"], charge: -1, wrong: ["Ag"] },
    ],
    [
      "of ions of other elements",
      () => molarSolubility({ solid: "AgCl", ksp: "1e-10", ions: ["Ag+", "Br-"] }),
      "bad-option",
      { charge: 0, wrong: ["Cl", "Br"] },
    ],
    ["of a pKsp for a Ksp", () => molarSolubility({ solid: "AgCl", ksp: "9.75" }), "bad-option", { ksp: "9.75" }],
    [
      "of an ion named twice",
      () =>
        molarSolubility({
          solid: "AgCl",
          commonIons: [{ ion: "Cl-", concentration: "1 mol/L" }],
          freeLigands: [{ ligand: "Cl-", concentration: "2 mol/L" }],
        }),
      "conflicting-options",
      { ion: "Cl-" },
    ],
    [
      "of two salts of no common cation",
      () => saltConversion({ from: "BaSO4", to: "CaCO3" }),
      "other-solute",
      { from: "BaSO4", to: "CaCO3" },
    ],
    [
      "of a pair that lacks an ion",
      () =>
        fractionalCrystallization({
          wanted: "KNO3",
          other: "NaCl",
          from: [
            { formula: "NaNO3", mass: "100 g" },
            { formula: "NaCl", mass: "100 g" },
          ],
          water: "200 g",
          hot: "100 °C",
          cold: "10 °C",
        }),
      "other-solute",
      { ion: "K+" },
    ],
  ])("%s has its data", (_, run, code, details) => {
    expect(refusal(run)).toMatchObject({ code: `solubility.${code}`, details });
  });

  it.each<[string, () => unknown, string]>([
    ["a list", () => waterForSolution({ salts: [], temperature: "20 °C" }), "missing-option"],
    [
      "a water factor of one or more",
      () => waterToDissolve({ formula: "NaCl", mass: "1 g", temperature: "20 °C", waterFactor: "0.99" }),
      "out-of-reach",
    ],
    ["a positive Ksp", () => molarSolubility({ solid: "AgCl", ksp: "0" }), "not-positive"],
    ["ions with a Ksp only", () => molarSolubility({ solid: "AgCl", ions: ["Ag+", "Cl-"] }), "bad-option"],
    ["ions as texts", () => molarSolubility({ solid: "AgCl", ksp: "1e-10", ions: [] }), "bad-option"],
    ["a salt for the solute", () => solubilityOf("Na+", "20 °C"), "not-a-salt"],
    ["more than water for it", () => solubilityOf("H2O", "20 °C"), "not-a-salt"],
    ["a solution at least", () => willPrecipitate({ solid: "AgCl", solutions: [] }), "missing-option"],
    ["a pH that there is", () => willPrecipitate({ solid: "Mg(OH)2", pH: "20", solutions: [] }), "out-of-reach"],
  ])("asks for %s", (_, run, code) => {
    expect(refusal(run).code).toBe(`solubility.${code}`);
  });

  it("takes a water factor of one", () => {
    const water = (waterFactor?: string) =>
      waterToDissolve({
        formula: "NaCl",
        mass: "10 g",
        temperature: "20 °C",
        ...(waterFactor === undefined ? {} : { waterFactor }),
      } as Parameters<typeof waterToDissolve>[0]).water.toNumber("g");
    expect(water("1")).toBe(water());
    expect(water("1.3") / water()).toBeCloseTo(1.3, 9);
  });
});

describe("own constants", () => {
  // all more soluble than those of the table
  const own = facts({
    source: "studio",
    constants: [
      { kind: "pKsp", of: "AgCl", value: "7.74" },
      { kind: "pKsp", of: "CaCO3", value: "6.00" },
      { kind: "pKsp", of: "Mg(OH)2", value: "8.00" },
      { kind: "pKsp", of: "BaCO3", value: "5.00" },
    ],
  });

  it("are taken by every question that rests on one", () => {
    expect(solubilityProduct("AgCl", undefined, { facts: own }).pKsp.toNumber("")).toBe(7.74);
    expect(solubilityProduct("AgCl").pKsp.toNumber("")).not.toBe(7.74);
    const silver = (given: object) =>
      molarSolubility({ solid: "AgCl", ...given }).byHand!.concentration.toNumber("mol/L");
    // 10^(-7.74/2)
    expect(silver({ facts: own }) / 10 ** -3.87).toBeCloseTo(1, 6);
    expect(silver({})).toBeLessThan(10 ** -4.5);
    const clouds = (given: object) =>
      willPrecipitate({
        solid: "AgCl",
        solutions: [
          { volume: "1 L", ions: [{ ion: "Ag+", concentration: "0.0001 mol/L" }] },
          { volume: "1 L", ions: [{ ion: "Cl-", concentration: "0.0001 mol/L" }] },
        ],
        ...given,
      }).precipitates;
    // 0.00005² = 2.5e-9 lies between 1.8e-10 and 1.8e-8
    expect([clouds({}), clouds({ facts: own })]).toEqual([true, false]);
    const begins = (given: object) =>
      hydroxidePrecipitationRange({ metal: "Mg^2+", concentration: "0.1 mol/L", ...given }).byHand.startsAt!.toNumber(
        "",
      );
    // √(10^-8/0.1) = 10^-3.5: pH 10.5 of a pKw of 14
    expect(begins({ facts: own })).toBeCloseTo(10.5, 1);
    expect(begins({})).toBeLessThan(10);
    const order = (given: object) =>
      precipitationOrder({
        precipitant: "CO3^2-",
        solids: [
          { solid: "BaCO3", concentration: "0.01 mol/L" },
          { solid: "CaCO3", concentration: "0.01 mol/L" },
        ],
        ...given,
      }).map(({ solid }) => solid);
    expect(order({ facts: own })).toEqual(["CaCO3", "BaCO3"]);
    // 10^-5 over 10^-6
    expect(saltConversion({ from: "BaCO3", to: "BaSO4", facts: own }).equilibriumRatio.toNumber("")).toBeGreaterThan(
      1e4,
    );
    const index = (given: object) =>
      precipitatedCarbonate({ metal: "Mg^2+", precipitant: "soda", ...given }).index!.toNumber("");
    expect(index({ facts: own })).not.toBeCloseTo(index({}), 6);
  });

  it("stand alone for their solid among all products", () => {
    expect(findRows("CaCO3", undefined).length).toBeGreaterThan(1);
    expect(everyProduct().filter(({ solid }) => solid === "CaCO3").length).toBeGreaterThan(1);
  });
});

describe("washes by hand", () => {
  const base = {
    dryCakeMass: "25 g",
    retainedLiquorPerGram: "2 mL/g",
    saltConcentration: "117 g/L",
    washVolume: "250 mL",
    targetResidue: "0.2 %",
  } as const;
  const plan = (more: object = {}) => washPlan({ ...base, ...more } as Parameters<typeof washPlan>[0]);

  it("dilute what the cake keeps", () => {
    // 50 mL of 117 g/L are 5.85 g; each wash leaves 50/300; 0.2 % of 25 g are 0.05 g: 0.975, 0.1625, 0.02708 g
    const made = plan();
    expect(made.retainedVolume.toNumber("mL")).toBe(50);
    expect(made.residueUnwashed.toNumber("g")).toBeCloseTo(5.85, 9);
    expect(made.leftByOneWash.toNumber("")).toBeCloseTo(1 / 6, 12);
    expect(made.residueAfter.map((left) => left.toNumber("g").toFixed(5))).toEqual(["0.97500", "0.16250", "0.02708"]);
    expect(made.target.toNumber("g")).toBeCloseTo(0.05, 12);
    expect(made.totalWater.toNumber("mL")).toBe(750);
    expect([made.washes, made.productLost, made.warnings]).toEqual([3, undefined, []]);
  });

  it("push it out: 5 to 10 % are left", () => {
    // 5.85 × 0.075 = 0.43875, 0.0329 g
    const made = plan({ method: "displacement", washVolume: "50 mL" });
    expect(made.leftByOneWash.toNumber("")).toBe(0.075);
    expect(made.washes).toBe(2);
    expect(refusal(() => plan({ method: "displacement", washVolume: "49.9 mL" }))).toMatchObject({
      code: "solubility.out-of-reach",
      hint: "use a larger wash volume, or decantation",
    });
  });

  it("are none where the target is met unwashed", () => {
    const made = plan({ targetResidue: "6 g", product: { formula: "CaCO3", temperature: "20 °C" } });
    expect([made.washes, made.residueAfter, made.productLost, made.warnings]).toEqual([0, [], undefined, []]);
    expect(made.totalWater.isZero()).toBe(true);
  });

  it("cost product: of gypsum what 750 mL dissolve, of a salt that dissolves well the whole cake", () => {
    const gypsum = plan({ product: { formula: "CaSO4·2H2O", temperature: "20 °C" } });
    // 750 mL at 0.9982 g/mL; the share of CaSO4 in gypsum is 136.13/172.16
    const s = solubilityOf("CaSO4", "20 °C").perHundredGramsWater.toNumber("g");
    expect(gypsum.productLost!.toNumber("g")).toBeCloseTo(((s * 7.5 * 0.9982) / 136.13) * 172.16, 2);
    const salt = plan({ product: { formula: "KCl", temperature: "20 °C" } });
    expect(salt.productLost!.toNumber("g")).toBe(25);
    expect(salt.warnings.at(-1)).toContain("the whole cake: wash with less, colder, or with another liquid");
    expect(gypsum.warnings.join()).not.toContain("the whole cake");
  });

  it("take the salt by mass and volume, and the cake by its kind", () => {
    const { saltConcentration: _, ...others } = base;
    const byMass = washPlan({ ...others, saltMassInLiquor: "11.7 g", liquorVolume: "100 mL" });
    expect(byMass.residueUnwashed.toNumber("g")).toBeCloseTo(5.85, 9);
    const { retainedLiquorPerGram: __, ...rest } = base;
    // a dense precipitate keeps 0.75 mL/g on suction, twice that by gravity
    expect(washPlan({ ...rest, kindOfSolid: "dense precipitate" }).retainedVolume.toNumber("mL")).toBe(18.75);
    expect(
      washPlan({ ...rest, kindOfSolid: "dense precipitate", filter: "gravity" }).retainedVolume.toNumber("mL"),
    ).toBe(37.5);
  });

  it.each([
    [{ kindOfSolid: "dense precipitate" }, "conflicting-options"],
    [{ retainedLiquorPerGram: undefined }, "missing-option"],
    [{ saltConcentration: undefined }, "missing-option"],
    [{ saltConcentration: undefined, liquorVolume: "1 L" }, "missing-option"],
    [{ saltConcentration: undefined, saltMassInLiquor: "1 g" }, "missing-option"],
    [{ saltMassInLiquor: "1 g" }, "conflicting-options"],
    [{ liquorVolume: "1 L" }, "conflicting-options"],
    [{ targetResidue: "100 %" }, "out-of-reach"],
    [{ targetResidue: "0 g" }, "not-positive"],
    [{ washVolume: "0 mL" }, "not-positive"],
    [{ dryCakeMass: "0 g" }, "not-positive"],
    [{ method: "shaking" }, "bad-option"],
  ])("with %j are refused: %s", (more, code) => {
    expect(refusal(() => plan(more)).code).toBe(`solubility.${code}`);
  });

  it("may leave all but all of it", () => {
    expect(plan({ targetResidue: "99 %" }).washes).toBe(0);
  });
});

describe("what to wash with", () => {
  const liquid = (product: string, temperature?: "20 °C" | "60 °C") =>
    washAdvice({ product, washedOut: ["NaCl"], ...(temperature === undefined ? {} : { temperature }) }).liquid;
  const tests = (product: string, ...washedOut: string[]) =>
    washAdvice({ product, washedOut }).endTests.map(({ ion, test }) => `${ion}: ${test}`);

  it("goes by what water dissolves of the product: below 0.1, 1 and 10 g in 100 g", () => {
    // BaSO4 0.0002, CaSO4 0.2, Ag2SO4 0.8, K2Cr2O7 12, KClO4 1.7, NaCl 36 g in 100 g at 20 °C
    expect(liquid("BaSO4")).toBe("water");
    expect(liquid("Ag2SO4")).toBe("a little cold water");
    expect(liquid("KClO4")).toBe("ice water in small portions, or its own saturated solution");
    expect(liquid("KNO3")).toBe("50 % alcohol, or its own saturated solution");
    expect(liquid("PbCl2")).toBe("a little ice water");
    expect(liquid("FeC2O4·2H2O")).toBe("hot water");
  });

  it("goes by the rules where no figure is known", () => {
    expect(washAdvice({ product: "CuB4O7", washedOut: ["NaCl"] })).toMatchObject({
      liquid: "water",
      because: "the rules call the product insoluble",
      solubility: undefined,
    });
    expect(washAdvice({ product: "ZnHPO3", washedOut: ["NaCl"] })).toMatchObject({
      liquid: "a little cold water",
      because: expect.stringContaining("not known"),
    });
    expect(washAdvice({ product: "Zn(ClO2)2", washedOut: ["NaCl"] }).because).toBe(
      "the rules call the product soluble",
    );
  });

  it("is known to be done by the anion first, by each ion once, and by none of the alkalis", () => {
    expect(tests("CaCO3", "NaCl", "KCl").map((one) => one.split(":")[0])).toEqual(["Cl-"]);
    expect(tests("AgCl", "CuSO4").map((one) => one.split(":")[0])).toEqual(["SO4^2-", "Cu^2+"]);
    expect(tests("BaSO4", "HCl").map((one) => one.split(":")[0])).toEqual(["H+", "Cl-"]);
    expect(tests("BaSO4", "HNO3").map((one) => one.split(":")[0])).toEqual(["H+"]);
    // boric acid is too weak for paper
    expect(tests("BaSO4", "H3BO3")).toEqual([]);
    expect(tests("BaSO4", "Pb(NO3)2")[0]).toContain("dilute sulfuric acid");
    expect(tests("BaSO4", "Na2HPO4")[0]).toContain("ammonium molybdate");
  });

  it("is no test where the product gives the ion too, unless it hardly dissolves", () => {
    expect(washAdvice({ product: "CaSO4·2H2O", washedOut: ["Na2SO4"] })).toMatchObject({
      endTests: [],
      untested: ["SO4^2-"],
    });
    expect(tests("BaSO4", "Na2SO4")[0]).toContain("barium chloride");
    // calcium hydroxide is basic itself, 0.02 mol/L, far above 1e-5
    expect(tests("Ca(OH)2", "NaOH")[0]).toContain("the product gives this ion too: indicator paper");
    expect(tests("Fe(OH)3", "NaOH")[0]).toContain("indicator paper neutral");
  });
});

describe("quantities of the answers", () => {
  it("are named by their symbols", () => {
    expect(waterToDissolve({ formula: "NaCl", mass: "10 g", temperature: "20 °C" }).water.symbol).toBe("m(H2O)");
    const own = quantity("10 g", { symbol: "m(salt)", label: "the salt" });
    const { alone } = waterForSolution({ salts: [{ formula: "NaCl", mass: own }], temperature: "20 °C" });
    expect(alone[0]!.anhydrousMass.symbol).toBe("m(salt)");
  });
});

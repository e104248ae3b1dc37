// Own facts through every function of the layer, crops and liquors at their ends, and what is said beside an answer. The arithmetic
// stands beside each check.
import {
  attempt,
  crystallise,
  explain,
  facts,
  fractionalCrystallization,
  gasSolubility,
  hydroxidePrecipitationRange,
  lossToLiquor,
  molarSolubility,
  precipitationOrder,
  quantity,
  remainsInSolution,
  saltConversion,
  saturatedSolution,
  solubilityOf,
  solubilityProduct,
  washAdvice,
  waterForSolution,
  waterToDissolve,
} from "preparative";
import { describe, expect, it } from "vitest";
import { cropFrom, saturatedBy, settleSalts } from "../../src/solubility/crystallising/crop-balance";
import { sourcesOf } from "../../src/solubility/curves/reading";
import { soluteOf } from "../../src/solubility/curves/solute";
import { SOLUBILITY } from "../../src/solubility/data/curves";
import { solveResidue } from "../../src/solubility/precipitating/pair-balance";

describe("own solubilities", () => {
  const own = facts({
    source: "studio",
    solubilities: [
      {
        formula: "KNO3",
        points: [
          ["10 °C", "40 g"],
          ["100 °C", "240 g"],
        ],
      },
    ],
  });
  const at = { formula: "KNO3", temperature: "10 °C", facts: own } as const;

  it("are read by every function in place of the table's 21 g at 10 °C", () => {
    // 40 of 140 g are 28.571 %; 40 g stay in 100 g of water, and dissolve in it; of 100 g in 100/2.4 g of water 16.667 g stay
    expect(saturatedSolution(at).massFraction.toNumber("%")).toBeCloseTo(28.571, 2);
    expect(lossToLiquor({ ...at, water: "100 g" }).mass.toNumber("g")).toBeCloseTo(40, 9);
    expect(waterToDissolve({ ...at, mass: "40 g" }).water.toNumber("g")).toBeCloseTo(100, 9);
    const both = waterForSolution({ salts: [{ formula: "KNO3", mass: "40 g" }], temperature: "10 °C", facts: own });
    expect(both.water.toNumber("g")).toBeCloseTo(100, 9);
    const { solubility } = washAdvice({ product: "KNO3", washedOut: ["NaCl"], temperature: "10 °C", facts: own });
    expect(solubility!.perHundredGramsWater.toNumber("g")).toBe(40);
    const { crop } = crystallise({ formula: "KNO3", mass: "100 g", hot: "100 °C", cold: "10 °C", facts: own });
    expect(crop.mass.toNumber("g")).toBeCloseTo(100 - 16.667, 2);
    const stays = (given: object) =>
      remainsInSolution({
        substances: [{ formula: "KNO3", mass: "30 g" }],
        water: "100 g",
        temperature: "10 °C",
        ...given,
      }).remainsInSolution;
    expect([stays({ facts: own }), stays({})]).toEqual(["yes", "no"]);
  });

  it("given in the request are taken before any table", () => {
    const loss = lossToLiquor({ formula: "KNO3", temperature: "10 °C", water: "200 g", solubility: "30 g" });
    expect(loss.mass.toNumber("g")).toBe(60);
    expect(loss.solubility).toBeUndefined();
    expect(
      waterToDissolve({ formula: "KNO3", mass: "30 g", temperature: "10 °C", solubility: "60 g" }).water.toNumber("g"),
    ).toBe(50);
  });
});

describe("an own solubility product", () => {
  it("is what the precipitant is asked of: by hand Ksp over the metal", () => {
    const own = facts({ source: "studio", constants: [{ kind: "pKsp", of: "CoWO4·2H2O", value: "8.2" }] });
    const [start] = precipitationOrder({
      precipitant: "WO4^2-",
      solids: [{ solid: "CoWO4·2H2O", concentration: "0.001 mol/L" }],
      facts: own,
    });
    // 10^-8.2 / 0.001
    expect(start!.byHand.startsAt!.toNumber("mol/L") / 10 ** -5.2).toBeCloseTo(1, 6);
    expect(start).toMatchObject({ solid: "CoWO4·2H2O", metal: "Co^2+", leftWhenNextStarts: undefined });
  });

  it("answers for a solubility within ten kelvin of 25 °C, with a warning", () => {
    const own = facts({ source: "studio", constants: [{ kind: "pKsp", of: "CoWO4", value: "8.2" }] });
    const loss = (temperature: "14.9 °C" | "15 °C" | "25 °C" | "35 °C" | "35.1 °C") =>
      attempt(() => lossToLiquor({ formula: "CoWO4", water: "100 g", temperature, facts: own }));
    for (const temperature of ["15 °C", "25 °C", "35 °C"] as const)
      expect(loss(temperature)).toMatchObject({
        ok: true,
        value: { solubility: undefined, warnings: [expect.stringContaining("an order of magnitude only")] },
      });
    for (const temperature of ["14.9 °C", "35.1 °C"] as const)
      expect(loss(temperature)).toMatchObject({ ok: false, error: { code: "solubility.no-data" } });
  });

  it("is the ratio of a conversion, or its root", () => {
    const rule = (from: string, to: string) => String(explain(saltConversion({ from, to }).equilibriumRatio));
    expect(rule("SrSO4", "SrCO3")).toContain("K = Ksp(from) / Ksp(to)");
    expect(rule("SrSO4", "SrCO3")).not.toContain("^(1/");
    expect(rule("PbCl2", "PbI2")).toContain("K = (Ksp(from) / Ksp(to))^(1/2)");
  });

  it("of the table is one and the same quantity, so that its uncertainty counts once", () => {
    const [one, other] = [solubilityProduct("AgCl"), solubilityProduct("AgCl")];
    expect(one.value.minus(other.value).standardUncertainty!.toNumber()).toBe(0);
    expect(one.value.standardUncertainty!.toNumber()).toBeGreaterThan(0);
    // Ksp falls as pKsp rises: dK/K + ln 10 dpK = 0
    const relative = one.value.times(quantity({ value: 1 / one.value.toNumber(""), unit: "" }));
    const still = relative.plus(one.pKsp.times("2.302585092994"));
    expect(still.standardUncertainty!.toNumber() / one.pKsp.standardUncertainty!.toNumber()).toBeLessThan(1e-9);
  });
});

describe("a crystallisation", () => {
  const of = (more: object) =>
    crystallise({ formula: "KNO3", mass: "100 g", hot: "80 °C", cold: "10 °C", ...more } as Parameters<
      typeof crystallise
    >[0]);

  it("takes so many times the water that it needs", () => {
    expect(of({ waterFactor: "1.2" }).water.toNumber("g") / of({}).water.toNumber("g")).toBeCloseTo(1.2, 9);
    expect(attempt(() => of({ waterFactor: "1.2", water: "80 g" }))).toMatchObject({
      error: { code: "solubility.conflicting-options" },
    });
  });

  it("leaves undissolved what stands in contact with the hot solution", () => {
    // at 30 °C that is the decahydrate: in 150 g of water not all of 100 g of the anhydrous salt dissolves
    const glauber = of({ formula: "Na2SO4", hot: "30 °C", water: "150 g" });
    expect(glauber.undissolvedHot!.formula).toBe("Na2SO4·10H2O");
    expect(glauber.warnings.join()).toContain("not all dissolves hot");
    // with a figure of one's own it is the salt as named: 100 g less 1.5 × 40 g
    const own = of({ water: "40 g", hotSolubility: "150 g" });
    expect(own.undissolvedHot!.formula).toBe("KNO3");
    expect(own.undissolvedHot!.mass.toNumber("g")).toBeCloseTo(40, 9);
    expect(own.undissolvedHot!.share.toNumber("%")).toBeCloseTo(40, 9);
    expect(of({ water: "80 g" }).undissolvedHot).toBeUndefined();
  });

  it("has no second crop where the hydrate would bind all the water that is left, and says so", () => {
    const hydrate = { formula: "Na2SO4·10H2O", hot: "30 °C" };
    const dry = of({ ...hydrate, evaporateTo: "0.01" });
    expect(dry.secondCrop).toBeUndefined();
    expect(dry.warnings.join("\n")).toMatch(/^no second crop: evaporated so far, Na2SO4\.10H2O binds all the water/m);
    const wet = of({ ...hydrate, evaporateTo: "0.5" });
    expect(wet.warnings.join("\n")).not.toContain("no second crop");
    // half of the water is boiled away
    expect(wet.secondCrop!.waterToEvaporate.toNumber("g")).toBeCloseTo(wet.liquorWater.toNumber("g") / 2, 9);
    for (const evaporateTo of ["0", "1", "1.5"])
      expect(attempt(() => of({ ...hydrate, evaporateTo }))).toMatchObject({
        error: { code: "solubility.out-of-reach", problem: expect.stringContaining("between 0 and 1") },
      });
  });

  it("has no crop of a hydrate that melts in its own water: 90 g in 100 g of water are more than 78.8 g in the decahydrate", () => {
    const melts = () =>
      cropFrom(quantity("200 g"), quantity("100 g"), quantity("90 g"), soluteOf("Na2SO4·10H2O"), "crystals");
    expect(attempt(melts)).toMatchObject({
      ok: false,
      error: { code: "solubility.any-proportion", details: { formula: "Na2SO4.10H2O" } },
    });
  });

  it("keeps the water as it was given where no hydrate precipitates", () => {
    const water = quantity("100 g");
    const salt = {
      dry: quantity("60 g"),
      saturated: saturatedBy(solubilityOf("KNO3", "20 °C").perHundredGramsWater, "KNO3"),
    };
    expect(settleSalts([salt], water).water).toBe(water);
  });
});

describe("a pair of salts of which one was put in to excess", () => {
  const swap = (sodium: string, potassium: string, cold = "0 °C") =>
    attempt(() =>
      fractionalCrystallization({
        wanted: "KNO3",
        other: "NaCl",
        from: [
          { formula: "NaNO3", mass: sodium },
          { formula: "KCl", mass: potassium },
        ],
        water: "200 g",
        hot: "100 °C",
        cold,
      } as Parameters<typeof fractionalCrystallization>[0]),
    );

  // Of 60 g NaNO3 (0.706 mol) and KCl (74.55 g/mol) in 200 g of water, 13.3 g of KNO3 stay in 100 g at 0 °C, 0.263 mol in all: 0.443
  // mol crystallise. KCl has 28 g in 100 g there, 3.76 mol/kg. Of 100 g KCl, 1.341 mol, √(4.49 × 6.71) = 5.49 mol/kg are left, 1.46
  // times that: the swap stands, and it stays. Of 150 g, 2.012 mol, √(7.85 × 10.06) = 8.89 mol/kg, 2.4 times: it precipitates.
  it("parts them up to twice the saturation of that one", () => {
    expect(swap("60 g", "100 g").ok).toBe(true);
    expect(swap("60 g", "150 g")).toMatchObject({
      ok: false,
      error: {
        code: "solubility.other-solid",
        details: { solid: "KCl", stays: "no", saturation: expect.closeTo(2.4, 1), wanted: "KNO3" },
      },
    });
    // sodium nitrate likewise: 73 g in 100 g at 0 °C are 8.59 mol/kg; of 260 g, 3.059 mol, with 50 g KCl (0.671 mol, of which 0.408
    // crystallise as KNO3): √(15.3 × 13.26) = 14.2 mol/kg, 1.66 times
    expect(swap("260 g", "50 g").ok).toBe(true);
  });
});

describe("water for several salts", () => {
  const of = (...formulas: readonly string[]) =>
    waterForSolution({
      salts: formulas.map((formula) => ({ formula, mass: "5 g" }) as const),
      temperature: "20 °C",
    });

  it("is added where they share an ion, which an acid does not tell", () => {
    expect(of("NaCl", "NaNO3").sharesIon).toBe(true);
    expect(of("NaCl", "KNO3").sharesIon).toBe(false);
    expect(of("H2C2O4", "NaCl").sharesIon).toBe(false);
    expect(of("NaCl", "H2C2O4", "KCl").sharesIon).toBe(true);
  });

  it("comes with what is to be known of each", () => {
    const known = solubilityOf("CuSO4", "20 °C").warnings;
    expect(known.length).toBeGreaterThan(0);
    expect(waterToDissolve({ formula: "CuSO4", mass: "5 g", temperature: "20 °C" }).warnings).toEqual(known);
    expect(of("NaCl", "CuSO4").warnings).toEqual(known);
    const { warnings } = remainsInSolution({
      substances: [
        { formula: "CuSO4", mass: "5 g" },
        { formula: "LiClO2", mass: "1 g" },
      ],
      water: "100 g",
      temperature: "20 °C",
    });
    expect(warnings.filter((one) => one.startsWith("CuSO4: "))).toEqual(known.map((one) => `CuSO4: ${one}`));
  });
});

describe("what is said beside an answer", () => {
  it("is the figure by hand where it lies a tenth off, and nothing where it does not", () => {
    // Ksp of calcite 3.3e-9: its root is 5.8e-5; carbonate takes up water's hydrons, so that twice as much dissolves
    expect(molarSolubility({ solid: "CaCO3" }).warnings).toEqual([
      "a calculation by hand, without side reactions and activities, says 0.000058 mol/L",
    ]);
    expect(molarSolubility({ solid: "AgCl" }).warnings).toEqual([]);
  });

  it("is that a figure is weak, where the table has it so", () => {
    expect(solubilityOf("NaCl", "20 °C").weak).toBe(false);
    const weak = SOLUBILITY().find((row) => row.weak === true)!;
    expect(solubilityOf(weak.formula, `${weak.points[0]![0]} °C`).weak).toBe(true);
  });

  it("is nothing of a hydroxide without complexes in doubt and basic salts", () => {
    expect(hydroxidePrecipitationRange({ metal: "Ca^2+", concentration: "0.1 mol/L" }).warnings).toEqual([]);
  });

  it("is where a gas is tabulated", () => {
    expect(attempt(() => gasSolubility("CO2", "99 °C"))).toMatchObject({
      error: { code: "solubility.outside-range", details: { gas: "CO2", celsius: 99, from: 0, to: 40 } },
    });
  });

  it("is each source of the figures on both sides once, the nearer one's first", () => {
    const row = {
      points: [
        [0, "1"],
        [10, "2"],
        [20, "3"],
      ],
      source: "a",
      alsoFrom: { source: "b", at: [20] },
    };
    const sources = (celsius: number) => sourcesOf({ row, celsius } as never);
    expect([0, 5, 10, 14, 16, 20].map(sources)).toEqual([["a"], ["a"], ["a"], ["a", "b"], ["b", "a"], ["b"]]);
    expect(sourcesOf({ row: { ...row, alsoFrom: undefined }, celsius: 16 } as never)).toEqual(["a"]);
  });
});

describe("a hydroxide too dilute to precipitate", () => {
  it("begins nowhere: 1e-12 mol/L of magnesium with the 1 mol/L of hydroxide at pH 14 are below 10^-11", () => {
    const none = hydroxidePrecipitationRange({ metal: "Mg^2+", concentration: "1e-12 mol/L", residual: "1e-13 mol/L" });
    expect([none.startsAt, none.completeFrom, none.redissolvesFrom, none.allDissolvedFrom]).toEqual([
      undefined,
      undefined,
      undefined,
      undefined,
    ]);
  });
});

describe("what stays of the scarcest ion", () => {
  // x (1 + x) = 2: x = 1; x² = 4: x = 2; x (3 + 2x)² = 25: x = 1
  it.each([
    [
      [
        { count: 1, over: 0, perScarce: 1 },
        { count: 1, over: 1, perScarce: 1 },
      ],
      2,
      1,
    ],
    [
      [
        { count: 1, over: 0, perScarce: 1 },
        { count: 1, over: 0, perScarce: 1 },
      ],
      4,
      2,
    ],
    [
      [
        { count: 1, over: 0, perScarce: 1 },
        { count: 2, over: 3, perScarce: 2 },
      ],
      25,
      1,
    ],
    [
      [
        { count: 1, over: 0, perScarce: 1 },
        { count: 1, over: 1, perScarce: 1 },
      ],
      1e-20,
      1e-20,
    ],
  ])("solves the balance of %j for K = %d: %d", (ions, k, expected) => {
    for (const start of [Math.log(10), 20])
      expect(Math.exp(solveResidue(ions, Math.log(k), start)) / expected).toBeCloseTo(1, 12);
  });
});

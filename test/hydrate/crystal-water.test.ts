import { describe, expect, test } from "vitest";
import { molarMass, parseFormula } from "../../src/formula";
import { attempt } from "../../src/foundation/error";
import { anhydrousOf, crystalWater, crystalWaterIn, HydrateError, hydrateOf, waterContent } from "../../src/hydrate";
import { explain } from "../../src/quantity";

describe("crystal water", () => {
  test.each([
    ["CuSO4·5H2O", "CuSO4", "5"],
    ["CaSO4·½H2O", "CaSO4", "1/2"],
    ["3CdSO4·8H2O", "CdSO4", "8/3"],
    ["K2CO3·1.5H2O", "K2CO3", "3/2"],
    ["ZnCO3·2Zn(OH)2·H2O", "ZnCO3.2Zn(OH)2", "1"],
    ["(NH4)2SO4·FeSO4·6H2O", "(NH4)2SO4.FeSO4", "6"],
    ["NaCl", "NaCl", "0"],
    ["2Na2CO3·3H2O2", "2Na2CO3.3H2O2", "0"],
  ])("%s is %s with %s waters", (formula, salt, waters) => {
    const split = crystalWater(formula);
    expect(split.anhydrous.toString()).toBe(salt);
    expect(split.waters.toFraction()).toBe(waters);
  });

  test("keeps water that is bound inside a complex", () => {
    expect(anhydrousOf("[Cu(H2O)4]SO4·H2O").toString()).toBe("[Cu(H2O)4]SO4");
  });

  test("keeps the charge of an ion", () => {
    expect(anhydrousOf("Na+").charge).toBe(1);
  });

  test("does not take hydrogen peroxide or heavy water for water", () => {
    expect(crystalWater("CuSO4·5D2O").waters.toFraction()).toBe("0");
  });

  test.each(["H2O", "5H2O", "2H2O·H2O"])("refuses %s, which is nothing but water", (formula) => {
    const outcome = attempt(() => anhydrousOf(formula));
    expect(outcome.ok ? "" : outcome.error.code).toBe("hydrate.only-water");
  });
});

describe("adding water", () => {
  test("replaces the water that is already there", () => {
    expect(hydrateOf("ZnSO4·7H2O", 1).toString()).toBe("ZnSO4.H2O");
    expect(hydrateOf("ZnSO4·7H2O", 0).toString()).toBe("ZnSO4");
  });

  test.each([
    [0.5, "CaSO4.0.5H2O"],
    ["1/2", "CaSO4.0.5H2O"],
    ["8/3", "3CaSO4.8H2O"],
    [2n, "CaSO4.2H2O"],
  ] as const)("takes %s waters", (waters, written) => {
    expect(hydrateOf("CaSO4", waters).toString()).toBe(written);
  });

  test.each([-1, Number.NaN, Number.POSITIVE_INFINITY, 1001, "five", "", "1/0", "1e3"])(
    "refuses %s waters",
    (waters) => {
      const outcome = attempt(() => hydrateOf("CaSO4", waters));
      expect(outcome.ok ? "" : outcome.error.code).toBe("hydrate.water-count");
      expect(outcome.ok ? undefined : outcome.error).toBeInstanceOf(HydrateError);
    },
  );

  test("undoes what taking the water away did", () => {
    for (const formula of ["CuSO4·5H2O", "3CdSO4·8H2O", "Na2CO3·10H2O", "KAl(SO4)2·12H2O"]) {
      const { anhydrous, waters } = crystalWater(formula);
      expect(hydrateOf(anhydrous, waters).hasSameComposition(parseFormula(formula))).toBe(true);
    }
  });
});

test("water content and dry salt make the whole", () => {
  const dry = molarMass("CuSO4").dividedBy(molarMass("CuSO4·5H2O"));
  expect(waterContent("CuSO4·5H2O").plus(dry).in("").toNumber()).toBeCloseTo(1, 12);
  expect(waterContent("NaCl").isZero()).toBe(true);
});

describe("a number of waters", () => {
  // 7/5 = 1.4 and 1/20 = 0.05 end as decimals; 2/3, 7/6 and 8/3 do not, so they are written for 3 or 6 units
  test.each([
    ["7/5", "CaSO4.1.4H2O"],
    ["1.40", "CaSO4.1.4H2O"],
    ["3/10", "CaSO4.0.3H2O"],
    ["1/20", "CaSO4.0.05H2O"],
    ["13/16", "CaSO4.0.8125H2O"],
    ["2/3", "3CaSO4.2H2O"],
    ["7/6", "6CaSO4.7H2O"],
    ["1/3", "3CaSO4.H2O"],
    [" 5 ", "CaSO4.5H2O"],
    [1000, "CaSO4.1000H2O"],
  ])("of %s is written %s", (waters, written) => {
    const hydrate = hydrateOf("CaSO4", waters);
    expect(hydrate.toString()).toBe(written);
    const [top, bottom = "1"] = String(waters).split("/");
    expect(crystalWater(hydrate).waters.valueOf()).toBeCloseTo(Number(top) / Number(bottom), 12);
  });

  test("goes on every part of a double salt", () => {
    expect(hydrateOf("ZnCO3·2Zn(OH)2", "1/3").toString()).toBe("3ZnCO3.6Zn(OH)2.H2O");
  });

  test("that is none is refused with what it may be", () => {
    for (const waters of ["1001", "1/0", "five", "1e3", `1.${"0".repeat(40)}`]) {
      const outcome = attempt(() => hydrateOf("CaSO4", waters));
      const error = outcome.ok ? undefined : outcome.error;
      expect(error?.message).toContain(`'${waters}' is not a number of waters`);
      expect(error?.hint).toBe('give a number from 0 to 1000, such as 5, "0.5" or "8/3"');
      expect(error?.details).toEqual({ waters });
    }
  });

  test("is not looked for in water alone", () => {
    const outcome = attempt(() => anhydrousOf("5H2O"));
    const error = outcome.ok ? undefined : outcome.error;
    expect(error?.message).toContain("5H2O contains nothing but water");
    expect(error?.hint).toBe("give the salt with its water, such as CuSO4·5H2O");
    expect(error?.details).toEqual({ formula: "5H2O" });
  });
});

describe("the working of crystal water", () => {
  // 8 × 18.015 / (3 × 208.471 + 8 × 18.015) = 144.12 / 769.53, with Cd 112.414, S 32.06, O 15.999, H 1.008 (IUPAC 2021)
  test("counts the water of all units that the formula is written for", () => {
    const w = waterContent("3CdSO4·8H2O");
    expect(w.in("").toNumber()).toBeCloseTo(144.12 / 769.53, 12);
    const step = explain(w).steps.at(-1)!;
    expect([step.symbol, step.rule]).toEqual([
      "w(H₂O in 3CdSO₄·8H₂O)",
      "mass fraction of water = waters × M(H₂O) / molar mass of the hydrate",
    ]);
  });

  test("names mass, content and water by their formula", () => {
    const m = crystalWaterIn("100.0 g", "KAl(SO4)2·12H2O");
    // 12 × 18.015 / 474.372 of the alum
    expect(m.in("g").toNumber()).toBeCloseTo((100 * 216.18) / 474.37184, 4);
    const working = explain(m).toString();
    expect(working).toContain("m(KAl(SO₄)₂·12H₂O) = 100.0 g   mass of KAl(SO₄)₂·12H₂O");
    expect(working).toContain("mass of crystal water = mass × mass fraction of water");
    expect(working).toContain("m(H₂O) = m(KAl(SO₄)₂·12H₂O) × w(H₂O in KAl(SO₄)₂·12H₂O)");
  });

  test("is refused for a mass of nothing", () => {
    const outcome = attempt(() => crystalWaterIn("0 g", "KAl(SO4)2·12H2O"));
    expect(outcome.ok ? "" : outcome.error.code).toBe("amount.not-positive");
  });
});

import { describe, expect, test } from "vitest";
import { molarMass, parseFormula } from "../../src/formula";
import { attempt } from "../../src/foundation/error";
import { anhydrousOf, crystalWater, HydrateError, hydrateOf, waterContent } from "../../src/hydrate";

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

import { describe, expect, test } from "vitest";
import { attempt } from "../../src/foundation/error";
import { equivalenceOptions, equivalentMass } from "../../src/hydrate";
import { explain } from "../../src/quantity";

const ratios = (from: string, to: string): string[] =>
  equivalenceOptions({ from, to }).map(({ per, ratio }) => `${ratio.toFraction()} per ${per}`);

describe("one form for another", () => {
  test("goes by the anhydrous salt when only the water differs", () => {
    expect(ratios("ZnSO4·7H2O", "ZnSO4·H2O")).toEqual(["1 per ZnSO4"]);
    expect(ratios("3CdSO4·8H2O", "CdSO4·H2O")).toEqual(["3 per CdSO4"]);
  });

  test("goes by the metal for oxides and basic salts", () => {
    expect(ratios("Cu2(OH)2CO3", "CuO")).toEqual(["2 per Cu"]);
    expect(ratios("ZnSO4·7H2O", "Zn5(OH)6(CO3)2")).toEqual(["1/5 per Zn"]);
  });

  test("knows the same salt however its formula is grouped", () => {
    expect(ratios("ZnCO3·2Zn(OH)2·H2O", "Zn3(OH)4CO3")).toEqual(["1 per ZnCO3.2Zn(OH)2"]);
  });

  test("refuses to choose between carbonate and sodium, and says how to", () => {
    const outcome = attempt(() => equivalentMass("1 g", { from: "Na2CO3", to: "NaHCO3" }));
    expect(outcome.ok ? "" : outcome.error.code).toBe("hydrate.several-readings");
    expect(outcome.ok ? "" : outcome.error.hint).toContain('per: "Na" (2 : 1)');
    const perSodium = equivalentMass("1 g", { from: "Na2CO3", to: "NaHCO3", per: "Na" });
    const perCarbon = equivalentMass("1 g", { from: "Na2CO3", to: "NaHCO3", per: "C" });
    expect(perSodium.dividedBy(perCarbon).in("").toString()).toBe("2");
  });

  test("takes shared elements in one proportion as one reading", () => {
    expect(() => equivalentMass("1 g", { from: "ZnSO4·7H2O", to: "ZnS" })).not.toThrow();
  });

  test.each([
    [{ from: "NaCl", to: "H2O2" }, "hydrate.no-common-part"],
    [{ from: "NaCl", to: "KNO3", per: "Na" }, "hydrate.not-in-both"],
    [{ from: "H2O", to: "NaCl" }, "hydrate.only-water"],
  ])("refuses %o", (forms, code) => {
    const outcome = attempt(() => equivalentMass("1 g", forms));
    expect(outcome.ok ? "" : outcome.error.code).toBe(code);
  });

  test("names the elements two forms do share", () => {
    const outcome = attempt(() => equivalentMass("1 g", { from: "Na2CO3", to: "NaHCO3", per: "sodium" }));
    expect(outcome.ok ? "" : outcome.error.hint).toBe('give the symbol of an element they share: "C", "Na" or "O"');
  });

  test("refuses a mass of nothing", () => {
    const outcome = attempt(() => equivalentMass("0 g", { from: "MgSO4", to: "MgSO4·7H2O" }));
    expect(outcome.ok ? "" : outcome.error.code).toBe("amount.not-positive");
  });

  test("counts the purity of both forms", () => {
    const pure = equivalentMass("100 g", { from: "MgSO4·7H2O", to: "MgSO4" });
    const real = equivalentMass("100 g", {
      from: "MgSO4·7H2O",
      to: "MgSO4",
      fromPurity: { assay: "98 %" },
      toPurity: { assay: "96 %", moisture: "2 %" },
    });
    expect(real.dividedBy(pure).in("").toNumber()).toBeCloseTo(0.98 / (0.96 * 0.98), 12);
  });

  test("explains each step once, by name", () => {
    const steps = explain(equivalentMass("30.0 g", { from: "FeSO4·7H2O", to: "FeSO4·H2O" })).steps;
    const symbols = steps.map((step) => step.symbol);
    expect(new Set(symbols).size).toBe(symbols.length);
    expect(steps.some((step) => step.rule?.includes("the same amount of FeSO₄"))).toBe(true);
  });
});

describe("a form that is left out", () => {
  test.each([
    [{ to: "CuSO4" }, "from must be text or a Formula, not undefined"],
    [{ from: "CuSO4·5H2O" }, "to must be text or a Formula, not undefined"],
  ])("%j is named", (forms, message) => {
    const outcome = attempt(() => equivalentMass("1 g", forms as never));
    expect(outcome.ok ? "" : outcome.error.message).toContain(message);
  });
});

describe("what is kept equal", () => {
  // counted in the formulas: two Mn of one kind of ion each; half a sulfate for one sodium ion
  test.each([
    ["FeSO4", "Fe2S2O8", ["1/2 per FeSO4"]],
    ["Fe2S2O8", "FeSO4·7H2O", ["2 per Fe2S2O8"]],
    ["Na+", "Na2SO4", ["1/2 per Na"]],
    ["SO4^2-", "SO4^2-", ["1 per SO4^2-"]],
    ["MnO4^2-", "MnO4-", ["1 per Mn"]],
    ["Na2SO4", "Na2S", ["1 per Na", "1 per S"]],
    ["Na2SO4", "NaHSO4", ["2 per Na", "1 per S"]],
    ["Fe3O4", "Fe2O3", ["3/2 per Fe"]],
    ["NaCl", "H2O2", []],
    ["NaCl", "MgO", []],
  ])("between %s and %s", (from, to, expected) => {
    expect(ratios(from, to).sort()).toEqual(expected.sort());
  });

  test("stands in the working, with every element where all give one ratio", () => {
    const rules = (from: string, to: string) =>
      explain(equivalentMass("10 g", { from, to })).steps.map((step) => `${step.symbol}: ${step.rule}`);
    expect(rules("ZnSO4·7H2O", "ZnS")).toContain("n(ZnS): 1 mol ZnS for 1 mol ZnSO₄·7H₂O: the same amount of S and Zn");
    expect(rules("3CdSO4·8H2O", "CdSO4·H2O")).toContain(
      "n(CdSO₄·H₂O): 3 mol CdSO₄·H₂O for 1 mol 3CdSO₄·8H₂O: the same amount of CdSO₄",
    );
    expect(rules("Fe3O4", "Fe2O3")).toContain("n(Fe₂O₃): 3/2 mol Fe₂O₃ for 1 mol Fe₃O₄: the same amount of Fe");
  });

  // M(ZnS)/M(ZnSO4·7H2O) = 97.44/287.541; 3 M(CdSO4·H2O)/M(3CdSO4·8H2O) = 679.455/769.53; 3/2 M(Fe2O3)/M(Fe3O4)
  test.each([
    ["ZnSO4·7H2O", "ZnS", 97.44 / 287.541],
    ["3CdSO4·8H2O", "CdSO4·H2O", 679.455 / 769.53],
    ["Fe3O4", "Fe2O3", (1.5 * 159.687) / 231.531],
  ])("makes the mass of %s as %s", (from, to, factor) => {
    expect(equivalentMass("10 g", { from, to }).in("g").toNumber()).toBeCloseTo(10 * factor, 4);
  });

  test("is asked for where the formulas do not say, with the formulas in the details", () => {
    const refused = (forms: Parameters<typeof equivalentMass>[1]) => {
      const outcome = attempt(() => equivalentMass("1 g", forms));
      return outcome.ok ? undefined : outcome.error;
    };
    const several = refused({ from: "Na2CO3", to: "NaHCO3" });
    expect(several?.message).toContain("Na₂CO₃ and NaHCO₃ can stand for each other in 2 ways");
    expect(several?.hint).toBe('say what shall be equal: per: "C" (1 : 1) or per: "Na" (2 : 1)');
    expect(several?.details).toEqual({
      from: "Na2CO3",
      to: "NaHCO3",
      readings: [
        { per: "C", ratio: "1" },
        { per: "Na", ratio: "2" },
      ],
    });
    const none = refused({ from: "NaCl", to: "MgO" });
    expect(none?.message).toContain("NaCl and MgO share no element besides hydrogen and oxygen");
    expect(none?.hint).toBe("check the two formulas; one cannot stand for the other");
    expect(none?.details).toEqual({ from: "NaCl", to: "MgO" });
    // sodium is in one of them only, whichever way round
    for (const [from, to] of [
      ["NaCl", "KNO3"],
      ["KNO3", "NaCl"],
    ] as const) {
      const strange = refused({ from, to, per: "Na" });
      expect(strange?.message).toContain("'Na' is not an element of both");
      expect(strange?.hint).toBe("they share none: one cannot stand for the other");
      expect(strange?.details).toEqual({ from, to, per: "Na" });
    }
  });
});

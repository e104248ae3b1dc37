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
    expect(outcome.ok ? "" : outcome.error.hint).toBe('give the symbol of an element they share: "C" or "Na" or "O"');
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

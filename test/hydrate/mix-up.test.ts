import { describe, expect, test } from "vitest";
import { percentYield, theoreticalYield } from "../../src/amount";
import { attempt } from "../../src/foundation/error";
import { hydrateMixUps } from "../../src/hydrate";

const named = (question: Parameters<typeof hydrateMixUps>[0]): string[] =>
  hydrateMixUps(question).map((m) => `${m.heavier} / ${m.lighter}`);

describe("the hydrate guard", () => {
  // Factors of the trade (bench practice compilation, section 9, and common practice): 1.56 CuSO4, 2.70 Na2CO3, 1.17 lead
  // acetate, 1.60 ZnSO4.
  test.each([
    ["1.56", "CuSO4·5H2O", "CuSO4.5H2O / CuSO4"],
    ["2.70", "Na2CO3", "Na2CO3.10H2O / Na2CO3"],
    ["1.17", "Pb(CH3COO)2", "Pb(CH3COO)2.3H2O / Pb(CH3COO)2"],
    ["1.60", "ZnSO4", "ZnSO4.7H2O / ZnSO4.H2O"],
  ])("a factor of %s in %s is %s", (ratio, of, expected) => {
    expect(named({ ratio, of })).toContain(expected);
  });

  test("knows the factor when it is upside down", () => {
    const [first] = hydrateMixUps({ yield: "64 %", of: "CuSO4" });
    expect(first!.lighter.toString()).toBe("CuSO4");
    expect(first!.ratio.in("").toNumber()).toBeCloseTo(0.6392, 4);
    expect(first!.explanations[1]).toBe("CuSO₄·5H₂O was put in where the recipe counts on CuSO₄");
  });

  test("takes two masses, or two molar masses", () => {
    expect(named({ observed: "15.6 g", expected: "10.0 g", of: "CuSO4" })).toEqual(["CuSO4.5H2O / CuSO4"]);
    expect(named({ observed: "249.7 g/mol", expected: "159.6 g/mol", of: "CuSO4" })).toEqual(["CuSO4.5H2O / CuSO4"]);
  });

  test("narrows with the uncertainty that the ratio carries", () => {
    const wide = hydrateMixUps({ ratio: "1.58 ± 0.10" });
    const narrow = hydrateMixUps({ ratio: "1.564 ± 0.001" });
    expect(narrow.length).toBeLessThan(wide.length);
    expect(narrow.every((m) => Math.abs(m.deviation) < 0.0015)).toBe(true);
  });

  test("does not take the small uncertainty of a computed yield for that of the yield itself", () => {
    const theory = theoreticalYield("CuSO4 + Zn -> Cu + ZnSO4", "ZnSO4", { CuSO4: "10.00 g" });
    const percent = percentYield("17.9 g", theory);
    expect(percent.standardUncertainty!.div(percent.value).toNumber()).toBeLessThan(0.001);
    expect(named({ yield: percent, of: "ZnSO4" })).toContain("ZnSO4.7H2O / ZnSO4");
  });

  test("ranks packs that can be confused before forms nobody sells", () => {
    const all = hydrateMixUps({ ratio: "1.60" });
    const firstUnsold = all.findIndex((m) => !m.bothSold);
    expect(all.slice(firstUnsold).every((m) => !m.bothSold)).toBe(true);
    expect(all.slice(0, firstUnsold).map((m) => m.salt.toString())).toContain("ZnSO4");
  });

  test("names where the two forms are listed", () => {
    expect(hydrateMixUps({ yield: "156 %", of: "CuSO4" })[0]!.sources.length).toBeGreaterThan(0);
  });

  test("says nothing of a yield that is merely low", () => {
    expect(hydrateMixUps({ yield: "3 %", of: "CuSO4" })).toEqual([]);
  });

  test("says nothing when nothing is off", () => {
    expect(hydrateMixUps({ yield: "99 %", of: "CuSO4" })).toEqual([]);
    expect(hydrateMixUps({ yield: "95 %", of: "CuSO4" })).toEqual([]);
  });

  test.each([
    [{}, "hydrate.missing-input"],
    [{ ratio: "0" }, "hydrate.not-positive"],
    [{ ratio: "-1" }, "hydrate.not-positive"],
    [{ yield: "156" }, "hydrate.outside-range"],
    [{ ratio: "1.5", yield: "150 %" }, "hydrate.too-many-inputs"],
    [{ ratio: "1.5 g" }, "hydrate.not-positive"],
    [{ ratio: "1.5", of: "KCl" }, "hydrate.unknown-salt"],
    [{ ratio: "1.5", relativeUncertainty: 0 }, "hydrate.not-positive"],
    [{ observed: "1 g", expected: "0 g" }, "quantity.division-by-zero"],
  ])("%o is refused with %s", (question, code) => {
    const outcome = attempt(() => hydrateMixUps(question));
    expect(outcome.ok ? "" : outcome.error.code).toBe(code);
  });
});

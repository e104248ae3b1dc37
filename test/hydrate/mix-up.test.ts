import { describe, expect, test } from "vitest";
import { percentYield, theoreticalYield } from "../../src/amount";
import { attempt } from "../../src/foundation/error";
import { hydrateMixUps } from "../../src/hydrate";
import { explain, type QuantityLike, quantity } from "../../src/quantity";

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

describe("a mix-up", () => {
  test("is told in both ways it can have happened, with its ratio as a rule", () => {
    // M(CuSO4·5H2O) / M(CuSO4) = 249.677 / 159.602 = 1.5644; 1.56 is 0.28 % below
    const [high] = hydrateMixUps({ yield: "156 %", of: "CuSO4·5H2O" });
    expect([high!.salt, high!.heavier, high!.lighter].map(String)).toEqual(["CuSO4", "CuSO4.5H2O", "CuSO4"]);
    expect(high!.ratio.toNumber("")).toBeCloseTo(249.677 / 159.602, 6);
    expect(high!.deviation).toBeCloseTo(1.56 / (249.677 / 159.602) - 1, 6);
    expect(high!.inUncertainties).toBeCloseTo(high!.deviation / 0.02, 9);
    expect(explain(high!.ratio).steps.at(-1)!.rule).toBe("ratio = M(CuSO₄·5H₂O) / M(CuSO₄)");
    expect(high!.explanations).toEqual([
      "what was weighed is CuSO₄·5H₂O, the expectation was calculated for CuSO₄",
      "CuSO₄ was put in where the recipe counts on CuSO₄·5H₂O",
    ]);
    const [low] = hydrateMixUps({ ratio: "0.64", of: "CuSO4" });
    expect(low!.deviation).toBeCloseTo(0.64 / (159.602 / 249.677) - 1, 6);
    expect(explain(low!.ratio).steps.at(-1)!.rule).toBe("ratio = M(CuSO₄) / M(CuSO₄·5H₂O)");
    expect(low!.explanations).toEqual([
      "what was weighed is CuSO₄, the expectation was calculated for CuSO₄·5H₂O",
      "CuSO₄·5H₂O was put in where the recipe counts on CuSO₄",
    ]);
  });

  test("of a salt written for several units counts one of them", () => {
    // M(3CdSO4·8H2O) / 3 / M(CdSO4) = 256.51 / 208.471
    const [first] = hydrateMixUps({ ratio: "1.23", of: "CdSO4" });
    expect(first!.heavier.toString()).toBe("3CdSO4.8H2O");
    expect(first!.ratio.toNumber("")).toBeCloseTo(256.51 / 208.471, 4);
  });

  test("comes in order: both sold first, then the nearest, whichever side of the figure it is on", () => {
    for (const ratio of ["1.60", "0.62", "1.33", "0.88", "2.2"]) {
      const all = hydrateMixUps({ ratio });
      const rank = all.map((m) => (m.bothSold ? 0 : 1000) + Math.abs(m.inUncertainties));
      expect(rank, ratio).toEqual([...rank].sort((a, b) => a - b));
      expect(all.some((m) => m.inUncertainties > 0) && all.some((m) => m.inUncertainties < 0), ratio).toBe(true);
      expect(all.every((m) => Math.abs(m.inUncertainties) <= 2)).toBe(true);
    }
  });

  test("is looked for among the salts given, each once in whatever form", () => {
    const question = { ratio: "1.60", of: ["ZnSO4", "ZnSO4·7H2O", "KCl"] };
    expect(named(question)).toEqual(["ZnSO4.7H2O / ZnSO4.H2O"]);
    expect(named({ ratio: "1.60" })).toContain("FeSO4.7H2O / FeSO4.H2O");
    expect(named({ ratio: "1.60", of: "ZnSO4", relativeUncertainty: 0.0005 })).toEqual([]);
    expect(named({ ratio: "1.60", of: "ZnSO4", relativeUncertainty: 0.001 })).toHaveLength(1);
  });

  test("begins two hundredths away from one", () => {
    // plaster beside anhydrite: 145.15 / 136.13 = 1.066; within two standard uncertainties of 2 % of 1.0204 and more
    expect(named({ ratio: "1.019", of: "CaSO4", relativeUncertainty: 0.03 })).toEqual([]);
    expect(named({ ratio: "1.021", of: "CaSO4", relativeUncertainty: 0.03 })).toEqual(["CaSO4.0.5H2O / CaSO4"]);
    expect(named({ ratio: "0.979", of: "CaSO4", relativeUncertainty: 0.03 })).toEqual(["CaSO4.0.5H2O / CaSO4"]);
  });

  test("needs both forms in trade to be called sold, and says where each is listed, once", () => {
    const all = hydrateMixUps({ ratio: "1.60" });
    expect(all.some((m) => m.bothSold) && all.some((m) => !m.bothSold)).toBe(true);
    for (const { sources } of all) {
      expect(new Set(sources).size).toBe(sources.length);
      expect(sources.every((source) => typeof source === "string")).toBe(true);
    }
    // nobody sells anhydrous sodium sulfide: it stands there because theory starts from it
    const [sulfide] = hydrateMixUps({ ratio: "3.08", of: "Na2S" });
    expect([String(sulfide!.heavier), String(sulfide!.lighter), sulfide!.bothSold]).toEqual([
      "Na2S.9H2O",
      "Na2S",
      false,
    ]);
  });

  test("keeps the words of a ratio that has some, and names one that has none", () => {
    const steps = (ratio: QuantityLike) => explain(hydrateMixUps({ ratio, of: "CuSO4" })[0]!.ratio).result;
    expect(steps("1.56")).toBe(steps(quantity("1.56", { symbol: "q" })));
    // a ratio of exactly twenty is let through, and fits nothing
    expect(hydrateMixUps({ ratio: "20", of: "CuSO4" })).toEqual([]);
    expect(attempt(() => hydrateMixUps({ ratio: "20.01" }))).toMatchObject({
      ok: false,
      error: { code: "hydrate.outside-range", details: { ratio: "20.01" } },
    });
    expect(attempt(() => hydrateMixUps({ ratio: "-1" }))).toMatchObject({ error: { details: { ratio: "-1" } } });
    expect(attempt(() => hydrateMixUps({ ratio: "1.5", relativeUncertainty: "x" as never }))).toMatchObject({
      error: { details: { argument: "relativeUncertainty" } },
    });
  });

  test.each([
    [{}, "a mix-up is looked for by ratio, yield, or observed and expected", 'give yield: "156 %", or'],
    [
      { expected: "1 g" },
      "a mix-up is looked for by ratio, yield, or observed and expected",
      'give yield: "156 %", or',
    ],
    [
      { observed: "1 g" },
      "a mix-up is looked for by ratio, yield, or observed and expected",
      'give yield: "156 %", or',
    ],
    [{ ratio: "1.2", expected: "1 g" }, "give one of ratio, yield, and observed with expected", undefined],
    [{ yield: "120 %", observed: "1 g" }, "give one of ratio, yield, and observed with expected", undefined],
    [{ ratio: "0" }, "a ratio must be a number above zero, not 0", undefined],
    [{ yield: "156" }, "no two forms of a salt differ by a factor of 156", 'its sign: "156 %"'],
    [{ ratio: "1.5", of: ["KCl", "NaNO3"] }, "no hydrates of KCl, NaNO₃ are tabulated", "leave out of"],
    [{ ratio: "1.5", relativeUncertainty: -1 }, "a relative uncertainty must be above zero, not -1", undefined],
  ])("cannot be looked for with %o", (question, message, hint) => {
    const outcome = attempt(() => hydrateMixUps(question as Parameters<typeof hydrateMixUps>[0]));
    const error = outcome.ok ? undefined : outcome.error;
    expect(error?.message).toContain(message);
    if (hint === undefined) expect(error?.hint).toBeUndefined();
    else expect(error?.hint).toContain(hint);
  });
});

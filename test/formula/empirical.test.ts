// Empirical formulas: the judgement, its limits and its refusals; oxide equivalents.

import { describe, expect, it } from "vitest";
import {
  empiricalFormula,
  FormulaError,
  massAs,
  oxideEquivalents,
  parseFormula,
  percentComposition,
} from "../../src/formula";
import { attempt } from "../../src/foundation/error";
import { quantity } from "../../src/quantity";
import { REGISTRY } from "../../src/substance/data/registry";

describe("empiricalFormula", () => {
  it.each([
    "H2O",
    "C10H8",
    "Fe3O4",
    "Fe2O3",
    "C7H8",
    "Al2O3",
    "Ca3P2O8",
    "C9H8O4",
    "K2Cr2O7",
    "C10H21",
    "Zn5C2H6O12",
    "Na2S2O3",
  ])("recovers %s from its own percentages to two decimals", (text) => {
    const found = Object.fromEntries(
      percentComposition(text).map(({ symbol, massFraction }) => [symbol, massFraction.format({ decimals: 2 })]),
    );
    const result = empiricalFormula(found);
    expect(result.formula.toHill(), result.judgement.join("; ")).toBe(reduced(text));
    expect(result.residual).toBeLessThan(0.2);
  });

  // Sucrose by hand: 144.13, 22.18 and 175.99 of 342.30 g/mol are 42.11, 6.48 and 51.41 %.
  it("takes the formula whose shares, rounded, are the printed ones", () => {
    const sucrose = empiricalFormula({ C: "42.11 %", H: "6.48 %", O: "51.41 %" });
    expect(sucrose.formula.toString()).toBe("C12H22O11");
    expect(sucrose.alternatives).toEqual([]);
    expect(sucrose.runnerUp!.formula.toString()).toBe("C11H20O10");
    expect(sucrose.judgement.join("\n")).toContain("its shares, rounded, are the figures given");
  });

  it("recovers every compound of the registry from shares with one decimal, refuses, or offers it beside another", () => {
    const compounds = [
      ...new Set(
        REGISTRY()
          .map(({ formula }) => parseFormula(formula))
          .filter((f) => f.charge === 0 && f.symbols.length > 1 && f.denominator === 1)
          .map((f) => reduced(f.toString())),
      ),
    ];
    expect(compounds.length).toBeGreaterThan(500);
    const outcomes = compounds.map((hill) => {
      const shares = percentComposition(hill).map(({ symbol, massFraction }) => [
        symbol,
        massFraction.format({ unit: "%", decimals: 1 }),
      ]);
      const outcome = attempt(() => empiricalFormula(Object.fromEntries(shares)));
      if (!outcome.ok) return "refused";
      const { formula, alternatives } = outcome.value;
      if (formula.toHill() === hill) return "right";
      return alternatives.some((other) => other.formula.toHill() === hill)
        ? "open"
        : `wrong: ${hill}, read as ${formula}`;
    });
    expect(outcomes.filter((outcome) => outcome.startsWith("wrong"))).toEqual([]);
    expect(outcomes.filter((outcome) => outcome === "right").length / compounds.length).toBeGreaterThan(0.97);
  });

  // Figures of an analysis, a few tenths off: acetone has 62.04, 10.41 and 27.55 %; C27H53O9 has these digits by chance.
  it.each([
    [{ C: "62.2 %", H: "10.3 %", O: "27.5 %" }, "C3H6O"],
    [{ C: "83.5 %", H: "16.5 %" }, "C3H7"],
    [{ CuSO4: "64.3 %", H2O: "35.7 %" }, "CuSO4.5H2O"],
    [{ C: "40.3 %", H: "6.6 %", O: "53.1 %" }, "CH2O"],
    [{ C: "52 %", H: "13 %", O: "35 %" }, "C2H6O"],
  ])("takes measured %j for the simple formula and not for one that fits by chance", (found, formula) => {
    expect(empiricalFormula(found).formula.toString()).toBe(formula);
  });

  it("lets a molar mass decide between formulas that the figures allow", () => {
    // 5Ca(NO3)2·NH4NO3·10H2O is Ca5H24N12O43, 1080.6 g/mol; one decimal does not tell its hydrogens from 23 or 25
    const norge = { Ca: "18.5 %", H: "2.2 %", N: "15.6 %", O: "63.7 %" };
    const open = attempt(() => empiricalFormula(norge));
    expect(open.ok ? "" : open.error.code).toBe("formula.no-simple-ratio");
    expect(empiricalFormula(norge, { molarMass: "1080.6 g/mol" }).formula.toHill()).toBe("Ca5H24N12O43");
    // C10H21 has 85.02 % C, C11H24 84.53; twice C5H10.5 is 142.3 g/mol
    const rich = empiricalFormula({ C: "85.0 %", H: "15.0 %" }, { molarMass: "142.3 g/mol" });
    expect(rich.formula.toString()).toBe("C10H21");
    const sugar = empiricalFormula({ C: "42 %", H: "6 %", O: "51 %" }, { molarMass: "342 g/mol" });
    expect(sugar.molecularFormula!.toString()).toBe("C12H22O11");
  });

  it("writes down the judgement and the runner-up", () => {
    const result = empiricalFormula({ Mg: "28.03 %", Si: "21.60 %", H: "1.16 %", O: "49.21 %" });
    expect(result.multiplier).toBe(2);
    expect(result.deviation).toBeLessThan(0.01);
    expect(result.ratios.map(({ count }) => count)).toEqual([3, 2, 3, 8]);
    expect(result.judgement.join("\n")).toContain("times 2: Mg 2.999");
    // A hydrocarbon too rich to be sure: the next reading is offered with its own residual.
    const wax = empiricalFormula({ C: "84.99 %", H: "15.01 %" });
    expect(wax.formula.toString()).toBe("C9H19");
    expect(wax.runnerUp!.formula.toString()).toBe("C10H21");
    expect(wax.runnerUp!.residual).toBeLessThan(0.1);
  });

  it("takes masses, amounts, a remainder, and compounds", () => {
    expect(empiricalFormula({ Mg: "0.486 g", O: "320 mg" }).formula.toString()).toBe("MgO");
    expect(empiricalFormula({ Cu: "1.27 g", O: "10 mmol" }).formula.toString()).toBe("Cu2O");
    const magnetite = empiricalFormula({ Fe: "72.36 %" }, { remainder: "O" });
    expect(magnetite.formula.toString()).toBe("Fe3O4");
    expect(magnetite.judgement[0]).toContain("remainder");
    const hydrate = empiricalFormula({ CuSO4: "63.9 %", H2O: "36.1 %" });
    expect(hydrate.formula.toString()).toBe("CuSO4.5H2O");
    expect(empiricalFormula({ C: "0.4", H: "0.0671", O: "0.5328" }).formula.toString()).toBe("CH2O");
  });

  it("widens its allowance for figures that say they are uncertain", () => {
    const vague = { C: "80(3) %", H: "20(3) %" };
    expect(empiricalFormula(vague).formula.toString()).toBe("CH3");
    expect(empiricalFormula({ C: "80.0 %", H: "20.0 %" }).formula.toString()).toBe("CH3");
    // 1 : 1.86 is no simple ratio unless the figures leave room
    expect(empiricalFormula({ Fe: "1.000(80) g", S: "1.068(80) g" }).multiplier).toBe(1);
    expect(empiricalFormula({ Fe: "1.000 g", S: "1.068 g" }).multiplier).toBeGreaterThan(1);
  });

  it("warns of what is missing", () => {
    expect(empiricalFormula({ C: "40.0 %", H: "6.7 %" }).judgement[0]).toContain("may be missing");
  });

  it.each([
    [{}, {}, "formula.no-composition"],
    [{ C: "40 %", H: "6.7 g" }, {}, "formula.mixed-composition"],
    [{ C: "40 mL" }, {}, "formula.mixed-composition"],
    [{ C: "40 %", H: "0 %" }, {}, "formula.not-positive"],
    [{ C: "80 %", H: "30 %" }, {}, "formula.over-hundred"],
    [{ C: "80 %", H: "20 %" }, { remainder: "O" }, "formula.over-hundred"],
    [{ C: "8 g" }, { remainder: "O" }, "formula.mixed-composition"],
    [{ C: "92.3 %", H: "7.7 %" }, { molarMass: "85 g/mol" }, "formula.molar-mass-mismatch"],
    [{ C: "92.3 %", H: "7.7 %" }, { molarMass: "85 g" }, "formula.molar-mass-mismatch"],
    [{ Fe: "1.000 g", S: "0.7000 g", O: "0.1234 g", Zn: "0.4321 g" }, { maxMultiplier: 3 }, "formula.no-simple-ratio"],
    [{ Xx: "40 %" }, {}, "formula.unknown-symbol"],
    [{ Tc: "40 %" }, {}, "element.no-atomic-weight"],
  ])("refuses %j %j as %s", (found, options, code) => {
    expect(() => empiricalFormula(found as never, options)).toThrow(expect.objectContaining({ code }));
  });
});

describe("the judgement of an analysis, line by line", () => {
  // CH2O: 40.0 / 12.011 = 3.3303, 6.71 / 1.008 = 6.657, 53.28 / 15.999 = 3.3302; glucose 6 × 30.026 = 180.156 g/mol
  it("divides by the smallest amount, reads whole numbers, counts the units of a molar mass", () => {
    const found = { C: "40.0 %", H: "6.71 %", O: "53.28 %" };
    const lines = [
      "amounts divided by the smallest: C 1.000, H 1.999, O 1.000",
      "read as C 1, H 2, O 1: CH2O; farthest from whole 0.001, shares within 0.00 % of the whole",
      "its shares, rounded, are the figures given",
      "no other reading comes near",
    ];
    const alone = empiricalFormula(found);
    expect(alone.judgement).toEqual(lines);
    expect([alone.molecularFormula, alone.units, alone.runnerUp]).toEqual([undefined, undefined, undefined]);
    const glucose = empiricalFormula(found, { molarMass: "180.2 g/mol" });
    expect(glucose.judgement).toEqual([...lines, "180.2 g/mol / 30.026 g/mol = 6.001: 6 units, C6H12O6"]);
    expect(glucose.units).toBe(6);
    expect(glucose.molecularFormula!.toString()).toBe("C6H12O6");
  });

  // 72.36 / 55.845 = 1.29573, 27.64 / 15.999 = 1.72761, the ratio is 1.33331
  it("writes down the multiplier and the remainder", () => {
    expect(empiricalFormula({ Fe: "72.36 %" }, { remainder: "O" }).judgement).toEqual([
      "O is taken as the remainder to 100 %: 27.64 %",
      "amounts divided by the smallest: Fe 1.000, O 1.333",
      "times 3: Fe 3.000, O 4.000",
      "read as Fe 3, O 4: Fe3O4; farthest from whole 0.000, shares within 0.00 % of the whole",
      "its shares, rounded, are the figures given",
      "no other reading comes near",
    ]);
  });

  // 84.99 / 12.011 = 7.0760, 15.01 / 1.008 = 14.891: 2.1044, times 9 is 18.940, times 10 is 21.044
  it("counts the other formulas that fit, one or several", () => {
    expect(empiricalFormula({ C: "84.99 %", H: "15.01 %" }).judgement).toEqual([
      "amounts divided by the smallest: C 1.000, H 2.104",
      "times 9: C 9.000, H 18.940",
      "read as C 9, H 19: C9H19; farthest from whole 0.060, shares within 0.04 % of the whole",
      "its shares are not the given figures to their last digit: they are taken as measured",
      "1 more formula fits these figures as well",
      "runner-up C10H21 (times 10): shares within 0.03 %",
    ]);
    const acetone = empiricalFormula({ C: "62.2 %", H: "10.3 %", O: "27.5 %" });
    expect(acetone.judgement).toContain("4 more formulas fit these figures as well");
    expect(acetone.alternatives.map(({ formula }) => formula.toString())).toEqual([
      "C27H53O9",
      "C30H59O10",
      "C33H65O11",
      "C36H71O12",
    ]);
  });

  // C9H19 has 84.95 % C, C10H21 85.02 %: of the figure with two hundredths of uncertainty both lie within twice that
  it("takes two standard uncertainties for the room of a figure", () => {
    const vague = empiricalFormula({ C: "84.99(2) %", H: "15.01(2) %" });
    expect(vague.formula.toString()).toBe("C9H19");
    expect(vague.alternatives.map(({ formula }) => formula.toString())).toEqual(["C10H21"]);
    expect(vague.judgement).toContain("its shares, rounded, are the figures given");
    expect(empiricalFormula({ C: "84.99(1) %", H: "15.01(1) %" }).formula.toString()).toBe("C10H21");
  });

  // Hill order is for carbon compounds
  it("writes carbon and hydrogen first, and elements without carbon in the order given", () => {
    expect(empiricalFormula({ O: "53.28 %", H: "6.71 %", C: "40.0 %" }).formula.toString()).toBe("CH2O");
    expect(empiricalFormula({ O: "30.06 %", Fe: "69.94 %" }).formula.toString()).toBe("O3Fe2");
    expect(empiricalFormula({ Fe: "69.94 %", O: "30.06 %" }).formula.toString()).toBe("Fe2O3");
  });

  it("gives at most ten others", () => {
    // without digits of a percentage 40 % and 53.28 % leave room for many
    const found = empiricalFormula({ C: 0.4, H: 0.0671, O: 0.5328 });
    expect(found.alternatives).toHaveLength(10);
    expect(found.judgement).toContain("10 more formulas fit these figures as well");
  });

  it("gives each formula once, in its smallest whole numbers", () => {
    for (const found of [
      { C: 0.4, H: 0.0671, O: 0.5328 },
      { C: "62.2 %", H: "10.3 %", O: "27.5 %" },
      { C: "84.99 %", H: "15.01 %" },
    ]) {
      const { formula, alternatives } = empiricalFormula(found);
      const texts = [formula, ...alternatives.map((other) => other.formula)].map(String);
      expect(new Set(texts).size).toBe(texts.length);
      for (const text of texts) expect(parseFormula(text).toHill()).toBe(reduced(text));
    }
  });

  // 249.677 g/mol twice is 499.35
  it("multiplies the parts of a hydrate", () => {
    const twice = empiricalFormula({ CuSO4: "63.9 %", H2O: "36.1 %" }, { molarMass: "499.4 g/mol" });
    expect(twice.molecularFormula!.toString()).toBe("2CuSO4.10H2O");
    expect(twice.units).toBe(2);
    expect(twice.ratios.map(({ constituent, count }) => `${constituent} ${count}`)).toEqual(["CuSO4 1", "H2O 5"]);
  });
});

describe("the bounds of an analysis", () => {
  const sums = (Mg: string, O: string) => empiricalFormula({ Mg: `${Mg} %`, O: `${O} %` } as never).judgement[0];

  // MgO has 60.30 % Mg: the same ratio, and sums of 97.9, 98.0, 102.0 and 102.1 %
  it("speaks of what is missing below 98 %, and refuses above 102 %", () => {
    expect(sums("59.0", "38.9")).toBe("the percentages sum to 97.90 % only: a constituent may be missing");
    expect(sums("59.1", "38.9")).toContain("amounts divided");
    expect(sums("61.5", "40.5")).toContain("amounts divided");
    expect(attempt(() => sums("61.5", "40.6"))).toMatchObject({
      ok: false,
      error: { code: "formula.over-hundred", details: { sum: 102.1 } },
    });
  });

  // CH has 13.019 g/mol: 5 % of one unit, 0.1 of two; 85 is 6.53 units, seven within twice 5/13 of a unit
  it.each([
    ["13.6 g/mol", 1],
    ["12.4 g/mol", 1],
    ["27.3 g/mol", 2],
    ["24.8 g/mol", 2],
    ["85(5) g/mol", 7],
  ] as const)("takes %s for %d units", (molarMass, units) => {
    expect(empiricalFormula({ C: "92.3 %", H: "7.7 %" }, { molarMass }).units).toBe(units);
  });

  it.each([
    ["13.7 g/mol", 13.7 / 13.019],
    ["12.3 g/mol", 12.3 / 13.019],
    ["27.4 g/mol", 27.4 / 13.019],
    ["24.7 g/mol", 24.7 / 13.019],
    ["85 g/mol", 85 / 13.019],
    ["0.3 g/mol", 0.3 / 13.019],
  ] as const)("takes %s for no whole number of units", (molarMass, ratio) => {
    const outcome = attempt(() => empiricalFormula({ C: "92.3 %", H: "7.7 %" }, { molarMass }));
    expect(outcome).toMatchObject({
      ok: false,
      error: { code: "formula.molar-mass-mismatch", details: { ratio: expect.closeTo(ratio, 3), empirical: "CH" } },
    });
  });

  // Fe2O3 has 69.94 % Fe, the ratio 1.5: it takes the multiplier two
  it.each([
    [0, 1, "no-simple-ratio"],
    [1, 1, "no-simple-ratio"],
    [1.9, 1, "no-simple-ratio"],
    [2, 2, "Fe2O3"],
    [2.9, 2, "Fe2O3"],
    [1000, 2, "Fe2O3"],
  ])("tries multipliers up to %d", (maxMultiplier, most, expected) => {
    const outcome = attempt(() => empiricalFormula({ Fe: "69.94 %", O: "30.06 %" }, { maxMultiplier }));
    if (outcome.ok) {
      expect(outcome.value.formula.toString()).toBe(expected);
      expect(outcome.value.multiplier).toBe(most);
    } else {
      expect(outcome.error.code).toBe(`formula.${expected}`);
      expect(outcome.error.problem).toContain(`no multiplier up to ${most} `);
    }
    expect(outcome.ok).toBe(!expected.startsWith("no"));
  });

  it("lists ratios and the three best candidates of what it refuses", () => {
    // 60.3 / 24.305 = 2.48097 and 37.6 / 15.999 = 2.35014: 1.05567
    const outcome = attempt(() => empiricalFormula({ Mg: "60.3 %", O: "37.6 %" }));
    expect(outcome).toMatchObject({
      ok: false,
      error: {
        code: "formula.no-simple-ratio",
        details: {
          ratios: { Mg: expect.closeTo(1.05567, 4), O: 1 },
          candidates: [
            { formula: "MgO", multiplier: 1, deviation: expect.closeTo(0.05567, 4), residual: expect.any(Number) },
            { formula: "Mg13O12", multiplier: 12 },
            { formula: "Mg12O11", multiplier: 11 },
          ],
        },
      },
    });
  });

  it("takes thirty constituents and no more", () => {
    const symbols = "H He Li Be B C N O F Ne Na Mg Al Si P S Cl Ar K Ca Sc Ti V Cr Mn Fe Co Ni Cu Zn Ga".split(" ");
    const equal = (count: number) => Object.fromEntries(symbols.slice(0, count).map((symbol) => [symbol, "1 mol"]));
    expect(empiricalFormula(equal(30) as never).formula.symbols).toHaveLength(30);
    expect(attempt(() => empiricalFormula(equal(31) as never))).toMatchObject({
      error: { code: "formula.no-composition", problem: "more than 30 constituents" },
    });
  });

  it.each([[5], [null], [undefined], [[]], ["CH2O"]])("refuses what is no record: %j", (found) => {
    expect(attempt(() => empiricalFormula(found as never))).toMatchObject({
      error: { code: "formula.no-composition", hint: expect.stringContaining("40.0 %") },
    });
  });

  it.each([[{ maxMultiplier: "3" }], [{ remainder: 5 }], [{ weights: 5 }], [{ rest: "O" }], [5]])(
    "refuses the options %j",
    (options) => {
      expect(() => empiricalFormula({ C: "40 %", H: "6.7 %" }, options as never)).toThrow(FormulaError);
    },
  );

  it("refuses what is wrong in the options before the analysis is read", () => {
    expect(attempt(() => empiricalFormula({ Q: "40 %" }, { weights: { convention: "best" } } as never))).toMatchObject({
      error: { details: { argument: "convention" } },
    });
  });
});

describe("oxide equivalents", () => {
  it("sum to one for a salt made of oxides", () => {
    for (const formula of ["KAlSi3O8", "ZnCO3", "CaMg(CO3)2", "Na2B4O7·10H2O", "Al2Si2O5(OH)4", "Zn5(CO3)2(OH)6"]) {
      const total = oxideEquivalents(formula).reduce(
        (sum, { massFraction }) => sum + massFraction.in("").toNumber(),
        0,
      );
      expect(total, formula).toBeCloseTo(1, 12);
    }
  });

  it("state feldspar as potters do", () => {
    // Ideal potash feldspar: 16.9 % K2O, 18.3 % Al2O3, 64.8 % SiO2 (memory: ceramic textbooks)
    expect(
      oxideEquivalents("KAlSi3O8").map(
        (e) => `${e.oxide} ${e.amount.toFraction()} ${e.massFraction.in("%").toFixed(1)}`,
      ),
    ).toEqual(["K2O 1/2 16.9", "Al2O3 1/2 18.3", "SiO2 3 64.8"]);
    expect(oxideEquivalents("Fe3O4", { oxides: ["FeO"] })[0]!.oxide.toString()).toBe("FeO");
    expect(oxideEquivalents("NaCl").map(({ oxide }) => oxide.toString())).toEqual(["Na2O"]);
  });

  it("turn a mass of one into a mass of the other", () => {
    expect(massAs("100.0 g", "ZnCO3", "ZnO").in("g").toFixed(2)).toBe("64.90");
    expect(massAs("1 kg", "Ca3(PO4)2", "P2O5").in("kg").toFixed(4)).toBe("0.4576");
    expect(massAs(quantity("1 g"), "KNO3", "N").in("g").toFixed(4)).toBe("0.1385");
    expect(massAs("1 g", "ZnSO4·7H2O", "ZnSO4", { element: "Zn" }).in("g").toFixed(4)).toBe("0.5614");
  });

  it("know that an oxide is all of itself, whatever its atoms weigh", () => {
    // the same molar mass above and below: no uncertainty is left of it
    for (const oxide of ["CaO", "SiO2", "Fe2O3", "H2O"]) {
      const { massFraction } = oxideEquivalents(oxide)[0]!;
      expect(massFraction.in("").toNumber()).toBe(1);
      expect(massFraction.standardUncertainty?.toNumber()).toBe(0);
    }
  });

  it("refuse a basis that says nothing or too much", () => {
    expect(() => massAs("1 g", "NaCl", "ZnO")).toThrow(expect.objectContaining({ code: "formula.no-common-element" }));
    expect(() => massAs("1 g", "ZnSO4", "ZnS")).toThrow(
      expect.objectContaining({ code: "formula.ambiguous-basis", details: { shared: ["Zn", "S"] } }),
    );
    expect(() => massAs("1 mL", "ZnCO3", "ZnO")).toThrow(expect.objectContaining({ code: "quantity.wrong-dimension" }));
  });
});

/** Hill form of the empirical formula: counts over their common divisor. */
function reduced(text: string): string {
  const formula = parseFormula(text);
  const divisor = formula.numerators.reduce((a, b) => {
    let [x, y] = [a, b];
    while (y !== 0) [x, y] = [y, x % y];
    return x;
  });
  return formula.times(`1/${divisor}`).toHill();
}

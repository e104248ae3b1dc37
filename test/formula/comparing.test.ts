// Formulas held against one another, the plain figures they answer with, and the parts they are printed in: by hand.
import {
  facts,
  formulaFromJSON,
  massFractionOf,
  molarMass,
  monoisotopicMass,
  parseFormula,
  percentComposition,
} from "preparative";
import { describe, expect, it } from "vitest";
import { byDryRatio } from "../../src/formula/by-elements";
import { parseFormulaAt } from "../../src/formula/formula";
import { plainAtoms } from "../../src/formula/read/plain";
import { ratioText } from "../../src/formula/read/ratio";
import { attempt } from "../../src/foundation/error";

const f = parseFormula;

describe("the same composition", () => {
  it.each([
    // all of the second is in the first, with the same numbers
    ["H2SO4", "H2S"],
    ["NaCl·KCl", "NaCl"],
    ["Na", "Na+"],
    ["Fe^2+", "Fe^3+"],
    ["H0.5Cl", "HCl0.5"],
  ])("is not that of %s and %s", (one, other) => {
    for (const [a, b] of [
      [f(one), f(other)],
      [f(other), f(one)],
    ] as const) {
      expect(a.hasSameComposition(b)).toBe(false);
      expect(a.equals(b)).toBe(false);
    }
  });

  it("is that of a formula and itself", () => {
    for (const text of ["CuSO4·5H2O", "Fe0.95O", "e-", "[13C]O2(g)"]) {
      const one = f(text);
      expect(one.equals(one)).toBe(true);
      expect(one.equals(f(text))).toBe(true);
    }
  });

  it.each(["NaCl", undefined, null, 7, {}])("is asked of another formula, not of %j", (other) => {
    for (const run of [
      () => f("NaCl").equals(other as never),
      () => f("NaCl").hasSameComposition(other as never),
      () => f("NaCl").hasSameParts(other as never),
    ])
      expect(attempt(run)).toMatchObject({
        ok: false,
        error: { code: "formula.not-text", problem: expect.stringContaining("the other formula") },
      });
  });
});

describe("counts beyond what is exact", () => {
  // 999999999 × 9007198 = 9007197990992802 atoms, below 2^53 - 1 = 9007199254740991; twice as many are not
  const many = "(H999999999)9007198";

  it.each([
    ["a sum", () => f(many).plus(many)],
    ["a multiple", () => f("999999999999H2O").times("999999999999")],
    // 999999999999 and 999999999998 share no divisor: their product is about 10^24
    ["a sum of fractions", () => f("H_{1/999999999999}").plus("O_{1/999999999998}")],
    ["a sum over a larger denominator", () => f(many).plus("O_{1/2}")],
  ])("are refused in %s", (_, run) => {
    expect(attempt(run)).toMatchObject({
      ok: false,
      error: { code: "formula.count-too-large", details: { limit: 9007199254740991 } },
    });
  });

  it.each(["H_{1/999999999999}O_{1/999999999998}", "((H999999999999)999999999999)", "(H999999999)9007199O0.5"])(
    "are refused in %s",
    (text) => {
      expect(attempt(() => f(text))).toMatchObject({
        ok: false,
        error: { code: "formula.count-too-large", position: 0, details: { limit: 9007199254740991 } },
      });
    },
  );

  it("begin beyond 2^53 - 1, which is 6361 × 69431 × 20394401", () => {
    const edge = f("H_{1/6361}O_{1/69431}S_{1/20394401}");
    expect(edge.denominator).toBe(9007199254740991);
    expect(edge.count("O").toFraction()).toBe("1/69431");
    expect(f("H_{1/6361}O_{1/69431}").plus("S_{1/20394401}").denominator).toBe(9007199254740991);
    expect(attempt(() => f("H_{1/6361}O_{1/69431}S_{1/20394401}N½")).ok).toBe(false);
  });
});

describe("a multiple", () => {
  it.each([
    // one part, however many stand inside its brackets
    ["[Fe·2H2O]Cl", 3, "3[Fe.2H2O]Cl"],
    ["(CuSO4·5H2O)2", 3, "3(CuSO4.5H2O)2"],
    ["(CuSO4)2·3H2O", 2, "2(CuSO4)2.6H2O"],
    ["K4[Fe(CN)6]·3H2O(s)", 2, "2K4[Fe(CN)6].6H2O(s)"],
    ["2Na+", 2, "4Na+"],
  ])("of %s by %d is %s", (text, factor, expected) => {
    expect(f(text).times(factor).toString()).toBe(expected);
  });

  it("keeps the parts inside brackets together", () => {
    expect(f("[Fe·2H2O]Cl").parts.map(String)).toHaveLength(1);
    expect(f("K·[Fe·2H2O]Cl·3H2O").parts.map(({ formula, multiplier }) => `${multiplier} ${formula}`)).toEqual([
      "1 K",
      "1 [Fe.2H2O]Cl",
      "3 H2O",
    ]);
  });

  it.each([Symbol("n"), {}, [], true, ""])("by %s is refused for what it is", (factor) => {
    expect(attempt(() => f("H2O").times(factor as never))).toMatchObject({
      ok: false,
      error: { code: "formula.bad-factor" },
    });
  });
});

describe("the plain mass", () => {
  // 2 × 1.008 + 15.999 = 18.015
  it("is a sum of whole nano-dalton, at any size", () => {
    expect(f("H2O").nano).toBe(18_015_000_000);
    expect(f("H2O").exactNano).toBe(18_015_000_000n);
    // 16384 × 12.011 + 4 × 1.008 = 196788.224 + 4.032
    expect(f("C16384H4").nano).toBe(196_792_256_000_000);
    // 14027000 g/mol, beyond 2^53 nano-dalton
    expect(f("C1000000H2000000").exactNano).toBe(14_027_000_000_000_000n);
  });

  it.each(["D2O", "[13C]H4", "Tc2O7", "O2Tc"])("of %s is not known from standard weights", (text) => {
    expect(f(text).nano).toBeNaN();
    expect(f(text).exactNano).toBeUndefined();
    expect(f(text).hasStandardMass).toBe(false);
  });

  it("is known of the rest, the first and the last element of the table with a weight too", () => {
    for (const text of ["H2O", "UO2", "H", "U"]) expect(f(text).hasStandardMass, text).toBe(true);
  });

  it("says of which formula it is not known", () => {
    for (const text of ["D2O", "Tc2O7", "e-"])
      expect(attempt(() => f(text).gramsPerMole)).toMatchObject({
        error: {
          code: "formula.no-standard-mass",
          details: { formula: text },
          hint: expect.stringContaining("molarMass"),
        },
      });
  });
});

describe("facts of one's own", () => {
  // 207.19 of 207.19 + 15.999 = 223.189 is 92.8316 %, 2 × 1.1 of 2.2 + 15.999 = 18.199 is 12.0886 %
  const lead = { facts: facts({ weights: [{ element: "Pb", weight: "207.19(1) g/mol", source: "a label" }] }) };
  const percentOf = (shares: ReturnType<typeof percentComposition>, symbol: string): number =>
    shares
      .find((share) => share.symbol === symbol)!
      .massFraction.in("%")
      .toNumber();

  it("are taken for molar masses and shares", () => {
    expect(molarMass("PbO", lead).toNumber("g/mol")).toBeCloseTo(223.189, 9);
    expect(massFractionOf("Pb", "PbO", lead).in("%").toNumber()).toBeCloseTo(92.8316, 4);
    expect(percentOf(percentComposition("PbO", lead), "Pb")).toBeCloseTo(92.8316, 4);
    // 207.2 of 223.199 is 92.8320 %
    expect(massFractionOf("Pb", "PbO").in("%").toNumber()).toBeCloseTo(92.832, 4);
    expect(percentOf(percentComposition("PbO"), "Pb")).toBeCloseTo(92.832, 4);
  });

  it("give way to a weight in the same request", () => {
    expect(molarMass("PbO", { ...lead, weights: { Pb: "210 g/mol" } }).toNumber("g/mol")).toBeCloseTo(225.999, 9);
  });
});

describe("options of a mass", () => {
  it.each([
    [() => monoisotopicMass("Na+", { electronMass: "yes" as never }), "electronMass"],
    [() => monoisotopicMass("Na+", { electrons: true } as never), "electrons"],
    [() => molarMass("Na+", { electronMass: "yes" as never }), "electronMass"],
    [() => molarMass("Na+", { massNumberIfNone: 1 as never }), "massNumberIfNone"],
  ])("are checked: %s", (run, argument) => {
    expect(attempt(run)).toMatchObject({ ok: false, error: { message: expect.stringContaining(argument) } });
  });

  it("count the electron of a bare nuclide's ion in the monoisotopic mass", () => {
    // 1.007825031898 (AME2020) less 0.000548579909 (CODATA 2022)
    expect(monoisotopicMass("[1H]+", { electronMass: true }).toNumber("g/mol")).toBeCloseTo(1.007276451989, 9);
    expect(monoisotopicMass("[1H]+").toNumber("g/mol")).toBeCloseTo(1.007825031898, 9);
  });
});

describe("a group in a formula", () => {
  const share = (what: string, formula: string): string => massFractionOf(what, formula).in("%").toFixed(2);

  it("is found whatever charge or oxidation number is written with it", () => {
    // 3 × 96.056 = 288.168 of 2 × 26.9815 + 288.168 = 342.131: 84.23 %
    expect(share("SO4^2-", "Al2(SO4)3")).toBe("84.23");
    expect(share("S^{VI}O4", "Al2(SO4)3")).toBe("84.23");
    expect(share("SO4", "Al2(S^{VI}O4)3")).toBe("84.23");
    expect(share("SO4", "(Al^{3+})2(SO4^2-)3")).toBe("84.23");
  });

  it("that does not occur is named", () => {
    expect(attempt(() => massFractionOf("OH", "H2O"))).toMatchObject({
      error: { code: "formula.group-not-found", details: { group: "OH", formula: "H2O" } },
    });
  });

  it.each([5, undefined, null, f("H2O")])("is text, not %s", (what) => {
    expect(attempt(() => massFractionOf(what as never, "H2O"))).toMatchObject({
      error: { code: "formula.not-text", problem: expect.stringContaining("what must be") },
    });
  });
});

describe("rows of one dry ratio", () => {
  const rows = ["NaOH", "Na2O", "NaCl", "LiCl", "Na2CO3", "CuSO4·5H2O", "H2O"];
  const find = byDryRatio(
    () => rows,
    (row) => row,
  );

  it.each([
    // hydroxide is oxide with water, in any hydrogen
    ["NaOH", ["NaOH", "Na2O"]],
    ["NaOD", ["NaOH", "Na2O"]],
    ["NaOT", ["NaOH", "Na2O"]],
    ["NaOH·H2O", ["NaOH", "Na2O"]],
    ["NaO2", []],
    ["CuSO4", ["CuSO4·5H2O"]],
    ["CuSO4·D2O", ["CuSO4·5H2O"]],
    ["CuSO4·T2O", ["CuSO4·5H2O"]],
    ["Cu2SO4", []],
    ["H2O", ["H2O"]],
    ["KCl", []],
  ])("%s finds %j", (text, found) => {
    expect(find(f(text))).toEqual(found);
  });
});

describe("rows without an element besides those of water", () => {
  it("differ by their hydrogen", () => {
    const find = byDryRatio(
      () => ["H2O2", "O3", "H2O", "H2"],
      (row) => row,
    );
    for (const row of ["H2O2", "O3", "H2O", "H2"]) expect(find(f(row))).toEqual([row]);
    expect(find(f("D2O"))).toEqual(["H2O"]);
  });
});

describe("a record", () => {
  it.each([7, undefined, null, {}])("with the formula %j is none", (formula) => {
    const record = { ...f("NaCl").toJSON(), formula };
    expect(attempt(() => formulaFromJSON(record as never))).toMatchObject({
      error: {
        code: "formula.not-text",
        problem: "not a formula record: no formula",
        hint: "pass what toJSON gave, parsed",
      },
    });
  });
});

describe("a decimal", () => {
  // 1/32768 = 2^-15 has fifteen places, 2^-16 sixteen
  it("is written with fifteen places at most", () => {
    expect(ratioText({ n: 1, d: 32768 })).toBe("0.000030517578125");
    expect(ratioText({ n: 1, d: 65536 })).toBe("1/65536");
    expect(ratioText({ n: 8, d: 3 })).toBe("8/3");
    expect(ratioText({ n: -5, d: 4 })).toBe("-1.25");
  });
});

describe("the plain reader and a piece of a text", () => {
  const plain = (text: string) => {
    const atoms = plainAtoms(text);
    return atoms && Object.fromEntries(atoms);
  };

  it("reads decimals where a middle dot rules out the full stop as one", () => {
    expect(plain("Fe0.95O·5H2O")).toEqual({ Fe: 0.95, O: 6, H: 10 });
    expect(plain("(Fe0.5)2O·0.5H2O")).toEqual({ Fe: 1, O: 1.5, H: 1 });
    expect(plain("Fe12.25O·H2O")).toEqual({ Fe: 12.25, O: 2, H: 2 });
    for (const text of ["Fe2.O·H2O", "Fe.5O·H2O", "Fe2.·H2O"]) expect(plain(text), text).toBeUndefined();
  });

  it.each([
    ["(OH)2", { O: 2, H: 2 }],
    ["Ca10(PO4)6(OH)2", { Ca: 10, P: 6, O: 26, H: 2 }],
    ["[Co(NH3)6]Cl3", { Co: 1, N: 6, H: 18, Cl: 3 }],
    ["{Cu}2", { Cu: 2 }],
    ["Fe^3+", { Fe: 1, e: 3 }],
    ["Fe^12-", { Fe: 1, e: -12 }],
    ["Na+", { Na: 1, e: 1 }],
    ["3CdSO4·8H2O", { Cd: 3, S: 3, O: 20, H: 16 }],
  ])("reads %s", (text, expected) => {
    expect(plain(text)).toEqual(expected);
  });

  it.each(["2(H)(", "(H", "H)", "(2H)", "H2(3)4", "Na·", "·Na", "H22 2", "Na^+2"])("leaves %s", (text) => {
    expect(plain(text)).toBeUndefined();
  });

  it.each([
    ["12H2O", 1, 5, "H", 4],
    ["3.2NaCl", 2, 7, "Na", 2],
    ["CuSO4.5H2O", 7, 10, "O", 1],
    ["CuSO4.5H2O", 0, 5, "O", 4],
    ["12[13C]O2", 1, 9, "O", 4],
  ])("of %s the piece from %d to %d alone is read: %s %d", (text, start, end, symbol, count) => {
    expect(Number(parseFormulaAt(text, start, end).count(symbol))).toBe(count);
  });
});

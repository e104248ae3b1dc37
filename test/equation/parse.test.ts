import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  balance,
  equationFromJSON,
  imbalance,
  isBalanced,
  parseEquation,
  tryBalance,
  tryParseEquation,
} from "../../src/equation";
import { isPreparativeError } from "../../src/foundation";
import { CORPUS } from "../data/equation-corpus";

const read = (text: string) => String(parseEquation(text));
const code = (text: string) => {
  const outcome = tryParseEquation(text);
  return outcome.ok ? "read" : outcome.error.code;
};

describe("reading equations", () => {
  it.each(["->", "=>", "→", "⟶", "⇒", "-->", "==>", "—>", "–>", "−>"])("takes %s as a reaction", (arrow) => {
    expect(parseEquation(`H2 + O2 ${arrow} H2O`).arrow).toBe("forward");
    expect(read(`H2 + O2 ${arrow} H2O`)).toBe("H2 + O2 -> H2O");
  });

  it.each(["<=>", "<->", "⇌", "⇄", "↔", "<-->", "⇋"])("takes %s as an equilibrium", (arrow) => {
    expect(read(`N2O4 ${arrow} NO2`)).toBe("N2O4 <=> NO2");
  });

  it("takes = as an arrow only where no other arrow stands", () => {
    expect(read("H2 + O2 = H2O")).toBe("H2 + O2 = H2O");
    // the double bond is then the formula reader's to refuse, at its own place
    const outcome = tryParseEquation("CH2=CH2 + H2 -> C2H6");
    expect(outcome).toMatchObject({ ok: false, error: { code: "formula.unexpected-character", position: 3 } });
  });

  it.each([
    ["Na+ + Cl- -> NaCl", "Na+ + Cl- -> NaCl"],
    ["Na++Cl-->NaCl", "Na+ + Cl- -> NaCl"],
    ["H2+O2->H2O", "H2 + O2 -> H2O"],
    ["H2 +O2 -> H2O", "H2 + O2 -> H2O"],
    ["Fe+3 + 3 OH- -> Fe(OH)3", "Fe^3+ + 3 OH- -> Fe(OH)3"],
    ["Fe+3 + e- -> Fe+2", "Fe^3+ + e- -> Fe^2+"],
    ["Cu+2H2SO4->CuSO4+SO2+2H2O", "Cu + 2 H2SO4 -> CuSO4 + SO2 + 2 H2O"],
    ["SO4 2- + Ba 2+ -> BaSO4", "SO4^2- + Ba^2+ -> BaSO4"],
    ["MnO4-+8H++5e-->Mn^2++4H2O", "MnO4- + 8 H+ + 5 e- -> Mn^2+ + 4 H2O"],
    ["H3O+(aq) + OH-(aq) -> 2H2O(l)", "H3O+(aq) + OH-(aq) -> 2 H2O(l)"],
    ["Ag⁺ + Cl⁻ → AgCl", "Ag+ + Cl- -> AgCl"],
  ])("tells plus from charge in %s", (text, expected) => {
    expect(read(text)).toBe(expected);
  });

  it("refuses a plus that could be either, and says how to write it", () => {
    const outcome = tryParseEquation("2 H2+ O2 -> 2 H2O");
    expect(outcome).toMatchObject({ ok: false, error: { code: "equation.doubtful-plus", position: 4 } });
    expect(!outcome.ok && outcome.error.hint).toContain("white space on both sides");
  });

  it("keeps a remark where a plus without white space was read as separating", () => {
    expect(parseEquation("H2+O2->H2O").remarks).toHaveLength(1);
    expect(parseEquation("H2 + O2 -> H2O").remarks).toEqual([]);
  });

  it.each([
    ["1/2 O2", "1/2"],
    ["½ O2", "1/2"],
    ["½O2", "1/2"],
    ["0.5 O2", "1/2"],
    ["1.5O2", "3/2"],
    ["1½ O2", "3/2"],
    ["3O2", "3"],
    ["12 O2", "12"],
  ])("reads the coefficient of %s", (term, expected) => {
    expect(parseEquation(`${term} -> O3`).reactants[0]!.coefficient?.toFraction()).toBe(expected);
  });

  it("leaves a coefficient that is not written absent", () => {
    expect(parseEquation("2 H2 + O2 -> H2O").reactants.map(({ coefficient }) => coefficient?.toFraction())).toEqual([
      "2",
      undefined,
    ]);
  });

  it("gives a number stuck to an adduct to the formula, unless the other coefficients say otherwise", () => {
    // 3CdSO4·8H2O and white lead are written with a leading number of their own (Red Book 2005, IR-5.5, from memory)
    expect(read("3CdSO4.8H2O -> CdSO4 + H2O")).toBe("3CdSO4.8H2O -> CdSO4 + H2O");
    expect(balance("2PbCO3.Pb(OH)2 + 3 H2S -> 3 PbS + 2 CO2 + 4 H2O").coefficients).toEqual([1n, 3n, 3n, 2n, 4n]);
    const hydrate = parseEquation("2CuSO4.5H2O + 4KI -> 2CuI + I2 + 2K2SO4 + 10H2O");
    expect(String(hydrate)).toBe("2 CuSO4.5H2O + 4 KI -> 2 CuI + I2 + 2 K2SO4 + 10 H2O");
    expect(hydrate.remarks).toHaveLength(1);
  });

  it("takes arrows for gas and precipitate as phases", () => {
    expect(read("Na2CO3 + HCl -> NaCl + H2O + CO2↑")).toBe("Na2CO3 + HCl -> NaCl + H2O + CO2(g)");
    expect(read("AgNO3 + NaCl -> AgCl↓ + NaNO3")).toBe("AgNO3 + NaCl -> AgCl(s) + NaNO3");
  });

  it("reads lists of reactants and products", () => {
    expect(String(parseEquation({ reactants: ["2 H2", "O2"], products: ["2 H2O"] }))).toBe("2 H2 + O2 -> 2 H2O");
  });

  it.each([
    ["H2O", "equation.no-arrow"],
    ["", "equation.no-arrow"],
    ["-> H2O", "equation.empty-term"],
    ["H2 + -> H2O", "equation.empty-term"],
    ["H2 + O2 ->", "equation.empty-term"],
    ["H2 + + O2 -> H2O", "equation.empty-term"],
    ["A -> B -> C", "equation.several-arrows"],
    ["H2O <- H2 + O2", "equation.backward-arrow"],
    ["H2O ← H2 + O2", "equation.backward-arrow"],
    ["0 H2 + O2 -> H2O", "equation.bad-coefficient"],
    ["1/0 H2 + O2 -> H2O", "equation.bad-coefficient"],
    ["1234567890123456 H2 + O2 -> H2O", "equation.bad-coefficient"],
    ["NACL -> Na + Cl2", "formula.unknown-symbol"],
    ["Ca(OH2 + HCl -> CaCl2", "formula.unclosed-bracket"],
    ["Ca(OH2 + HCl => CaCl2", "formula.unclosed-bracket"],
    [`H2${" + O2".repeat(500)} -> H2O`, "equation.too-many-species"],
    ["H".repeat(200_001), "equation.too-long"],
  ])("refuses %s", (text, expected) => {
    expect(code(text)).toBe(expected);
  });

  it("tells what is wrong in a formula before the arrow is typed, once a plus ends it", () => {
    const refusal = (text: string) => {
      const outcome = tryParseEquation(text);
      return outcome.ok ? undefined : [outcome.error.code, outcome.error.position, outcome.error.incomplete];
    };
    expect(refusal("CaX + O2")).toEqual(["formula.unknown-symbol", 2, false]);
    expect(refusal("2 CaX +")).toEqual(["formula.unknown-symbol", 4, false]);
    // X may become Xe, and a bracket may be closed yet
    expect(refusal("Ca + X")).toEqual(["equation.no-arrow", 6, true]);
    expect(refusal("2 Ca + O2")).toEqual(["equation.no-arrow", 9, true]);
    // half an arrow was typed: that is what is wrong
    expect(refusal("H2 + O2 > H2O")?.[0]).toBe("equation.no-arrow");
  });

  it("points into the whole equation when a formula in it is wrong", () => {
    const text = "Fe + HxO -> FeO + H2";
    const outcome = tryParseEquation(text);
    if (outcome.ok) throw new Error("read");
    expect(outcome.error.input).toBe(text);
    expect(outcome.error.position).toBe(6);
    expect(outcome.error.message).toContain(`${" ".repeat(2 + 6)}^`);
  });

  it("passes the options of the formula reader on", () => {
    expect(balance("Zn + Cu2+ -> Zn2+ + Cu", { digitsBeforeSign: "charge" }).coefficients).toEqual([1n, 1n, 1n, 1n]);
    expect(balance("CuSO4.nH2O -> CuSO4 + H2O", { n: 3 }).coefficients).toEqual([1n, 1n, 3n]);
  });

  it("cancels what stands on both sides when asked", () => {
    const text = "Cu + HNO3 + H2O -> Cu(NO3)2 + NO + H2O";
    expect(parseEquation(text).spectators.map(String)).toEqual(["H2O"]);
    expect(tryBalance(text)).toMatchObject({ ok: false, error: { code: "equation.underdetermined" } });
    expect(tryBalance("Ag+ + NO3- + Na+ + Cl- -> AgCl + Na+ + NO3-", { spectators: "cancel" })).toMatchObject({
      ok: true,
    });
    expect(String(parseEquation("2 H2O + Na -> NaOH + H2 + H2O", { spectators: "cancel" }))).toBe(
      "H2O + Na -> NaOH + H2",
    );
  });

  it("survives a round trip through JSON, its own text and its Unicode text", () => {
    for (const text of [
      "1/2 O2 + H2 -> H2O",
      "CuSO4.5H2O = CuSO4 + 5 H2O",
      "[Fe(CN)6]^4- + Fe^3+ -> Fe4[Fe(CN)6]3",
      "N2O4(g) <=> 2 NO2(g)",
      "2 2PbCO3.Pb(OH)2 -> 6 PbO + 4 CO2 + 2 H2O",
    ]) {
      const equation = parseEquation(text);
      expect(equationFromJSON(JSON.parse(JSON.stringify(equation))).equals(equation)).toBe(true);
      expect(parseEquation(equation.toString()).equals(equation)).toBe(true);
      expect(parseEquation(equation.toUnicode()).equals(equation)).toBe(true);
    }
  });

  it("refuses a record that is none", () => {
    expect(() => equationFromJSON({} as never)).toThrow(expect.objectContaining({ code: "equation.not-a-record" }));
  });

  it("reads a long text in time that grows with its length", () => {
    const sides = (n: number) => `${"(".repeat(n)}H${")".repeat(n)} + O2 -> H2O`;
    expect(isPreparativeError((tryParseEquation(sides(20_000)) as { error?: unknown }).error)).toBe(true);
    expect(code(`${"+".repeat(100_000)} -> H2O`)).not.toBe("read");
    expect(code(`H ${"-".repeat(100_000)}> H2O`)).toBe("read");
    expect(code(`H${"1".repeat(100_000)}+2 -> H2O`)).toMatch(/^(formula|equation)\./);
  });
});

describe("the quick reader and the careful one", () => {
  // a second blank before the arrow sends a text to the careful reader
  const careful = (text: string) => code(text.replace(/ (->|→) /, "  $1 "));

  it("read the whole corpus alike", () => {
    let tested = 0;
    for (const text of CORPUS) {
      expect(read(text.replace(" -> ", "  -> ")), text).toBe(read(text));
      expect(parseEquation(text.replace(" -> ", "  -> ")).remarks).toEqual(parseEquation(text).remarks);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(690);
  });

  it("accept and refuse alike when a character is put in, taken out or doubled", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...CORPUS.filter((_, at) => at % 7 === 0)),
        fc.nat(80),
        fc.constantFrom("", " ", "+", "-", "(", ")", "[", "2", ".", "·", "e", "H", ">", "="),
        fc.nat(1),
        (text, at, character, cut) => {
          const place = at % text.length;
          const changed = text.slice(0, place) + character + text.slice(place + cut);
          expect(careful(changed), changed).toBe(code(changed));
        },
      ),
      { numRuns: 1500 },
    );
  });
});

describe("imbalance of an equation as written", () => {
  it("counts right less left for each element and the charge", () => {
    const text = (equation: string) =>
      Object.fromEntries(Object.entries(imbalance(equation)).map(([name, value]) => [name, value.toFraction()]));
    expect(text("2 H2 + O2 -> H2O")).toEqual({ H: "-2", O: "-1" });
    expect(text("MnO4- + 8 H+ -> Mn^2+ + 4 H2O")).toEqual({ charge: "-5" });
    expect(text("H2 + 1/2 O2 -> H2O")).toEqual({});
    expect(text("Fe0.95O -> Fe + O2")).toEqual({ Fe: "1/20", O: "1" });
  });

  it("says whether it balances", () => {
    expect(isBalanced("2 H2 + O2 -> 2 H2O")).toBe(true);
    expect(isBalanced("H2 + O2 -> H2O")).toBe(false);
    expect(isBalanced(balance("H2 + O2 -> H2O"))).toBe(true);
  });
});

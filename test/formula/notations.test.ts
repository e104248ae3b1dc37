// Every way to write charges, labels, oxidation numbers and subscripts, one row each: what it is read as, and where it is refused.
// Notations of IUPAC, Nomenclature of Inorganic Chemistry, Recommendations 2005, IR-2.2 to IR-2.5 and IR-4.6, and their
// usual stand-ins in plain text; atomic numbers of the periodic table.
import { FormulaError, massAs, massFractionOf, molarMass, parseFormula } from "preparative";
import { describe, expect, it } from "vitest";
import { attempt } from "../../src/foundation/error";

describe("a formula in any notation", () => {
  it.each<[string, string, number, string]>([
    ["SO₄2-", "SO4^2-", -2, "O4S^2-"],
    ["SO_42-", "SO4^2-", -2, "O4S^2-"],
    ["SO_{4}2-", "SO4^2-", -2, "O4S^2-"],
    ["SO4(2-)", "SO4^2-", -2, "O4S^2-"],
    ["SO4{2-}", "SO4^2-", -2, "O4S^2-"],
    ["SO4[2-]", "SO4^2-", -2, "O4S^2-"],
    ["SO4^(2-)", "SO4^2-", -2, "O4S^2-"],
    ["SO4^{-2}", "SO4^2-", -2, "O4S^2-"],
    ["SO4²⁻", "SO4^2-", -2, "O4S^2-"],
    ["SO4⁻²", "SO4^2-", -2, "O4S^2-"],
    ["PO₄3−", "PO4^3-", -3, "O4P^3-"],
    ["Na₂SO₄2-", "Na2SO4^2-", -2, "Na2O4S^2-"],
    ["(NH₄)2+", "(NH4)2+", 1, "H8N2+"],
    ["Fe(+3)", "Fe^3+", 3, "Fe^3+"],
    ["Fe^+++", "Fe^3+", 3, "Fe^3+"],
    ["Fe^--", "Fe^2-", -2, "Fe^2-"],
    ["SO\\textsubscript{4}\\textsuperscript{2-}", "SO4^2-", -2, "O4S^2-"],
    ["Na(+)Cl(-)", "Na^{+}Cl-", 0, "ClNa"],
    // after a caret the digits belong to the charge, raised ones after a raised sign to the element that follows
    ["Na^+1Cl^-1", "Na^{+}Cl-", 0, "ClNa"],
    ["Na⁺³⁵Cl⁻", "Na^{+}[35Cl]-", 0, "[35Cl]Na"],
    ["Fe(2+)SO4", "Fe^{2+}SO4", 2, "FeO4S^2+"],
    ["NaCl_(s)", "NaCl(s)", 0, "ClNa(s)"],
    ["CaSO4·(½)H2O", "CaSO4.0.5H2O", 0, "CaHO4.5S"],
    ["D2O", "D2O", 0, "D2O"],
    ["T2O", "T2O", 0, "T2O"],
    ["HDO", "HDO", 0, "HDO"],
    ["[2H]2O", "[2H]2O", 0, "D2O"],
    ["[3H]2O", "[3H]2O", 0, "T2O"],
    ["C^{14}C", "C[14C]", 0, "C[14C]"],
    ["¹⁸OH₂", "[18O]H2", 0, "H2[18O]"],
    ["^{235}_{92}U", "[235U]", 0, "[235U]"],
    ["^235_92U", "[235U]", 0, "[235U]"],
    ["²³⁵₉₂U", "[235U]", 0, "[235U]"],
    ["^{2}_{1}H2", "[2H]2", 0, "D2"],
    ["Pb^II", "Pb^{II}", 0, "Pb"],
    ["Pb^{IV}O2", "Pb^{IV}O2", 0, "O2Pb"],
    ["Na2Fe^{-II}(CO)4", "Na2Fe^{-II}(CO)4", 0, "C4FeNa2O4"],
    ["Fe^−II(CO)4", "Fe^{-II}(CO)4", 0, "C4FeO4"],
    ["Fe(III)2", "Fe(III)2", 0, "FeI6"],
  ])("%s is %s, charge %d, in Hill's order %s", (text, ascii, charge, hill) => {
    const formula = parseFormula(text);
    expect([formula.toString(), formula.charge, formula.toHill()]).toEqual([ascii, charge, hill]);
    expect(parseFormula(ascii).equals(formula)).toBe(true);
  });

  it.each<[string, string, number, string | undefined]>([
    ["Na+¹³C", "misplaced-charge", 3, "put the ion in brackets or mark its charge"],
    ["H^13", "misplaced-charge", 1, "a charge needs its sign (²⁺), a mass number its element (¹³C)"],
    ["^14^2C", "misplaced-charge", 0, "a charge needs its sign (²⁺), a mass number its element (¹³C)"],
    ["Pb^{IV", "misplaced-charge", 2, "charges are written ^2+, ^{2-} or ²⁺"],
    ["Fe^{3-2}", "misplaced-charge", 2, undefined],
    ["O^2-3", "misplaced-charge", 1, undefined],
    ["Fe³⁺²", "misplaced-charge", 2, undefined],
    ["Fe^0+", "leading-zero", 2, undefined],
    ["Fe++++++++++++", "misplaced-charge", 12, undefined],
    ["SO42-", "ambiguous-charge", 4, undefined],
    ["SO₄2", "misplaced-number", 3, undefined],
    ["CaSO4·(999999999999.999999999999)H2O", "count-too-large", 6, undefined],
    ["CaSO4·(0)H2O", "zero-count", 6, undefined],
    ["NaCl()", "empty-group", 4, undefined],
    ["NaCl(solid)", "unknown-phase", 4, "phases are (s) (l) (g) (aq) (cr)"],
    ["^{235}_{91}U", "wrong-atomic-number", 11, "write ^{235}U; the atomic number may be left out"],
    ["Fe(III)", "roman-numeral", 2, undefined],
  ])("%s is refused: %s at %d", (text, code, position, hint) => {
    const outcome = attempt(() => parseFormula(text));
    const error = outcome.ok ? undefined : outcome.error;
    expect([error?.code, error?.position]).toEqual([`formula.${code}`, position]);
    if (hint !== undefined) expect(error?.hint).toContain(hint);
  });
});

describe("the composition of two formulas", () => {
  it.each([
    ["CH3COOH", "C2H4O2", true],
    ["Fe0.95O", "Fe1.9O2", false],
    ["(Fe0.95O)2", "Fe1.9O2", true],
    ["Fe0.5O0.5", "FeO", false],
    ["CO", "CO2", false],
    ["H2O", "HO2", false],
    ["NaCl", "KCl", false],
    ["Fe^2+", "Fe^3+", false],
    ["Fe", "Fe^2+", false],
    ["D2O", "H2O", false],
    ["H2O(s)", "H2O(l)", true],
  ])("%s and %s: the same is %s", (one, other, same) => {
    expect(parseFormula(one).hasSameComposition(parseFormula(other))).toBe(same);
    expect(parseFormula(other).hasSameComposition(parseFormula(one))).toBe(same);
    if (!same) expect(parseFormula(one).equals(parseFormula(other))).toBe(false);
  });
});

describe("a group in a formula", () => {
  // counted by hand; the part of the mass is that number times M(group)/M(formula)
  it.each([
    ["H2O", "CuSO4·5H2O", 5],
    ["SO4", "Al2(SO4)3", 3],
    ["NH4", "(NH4)2SO4", 2],
    ["NO3", "Ca(NO3)2·4H2O", 2],
    ["CO3", "Ca(HCO3)2", 2],
    ["OH", "Zn5(OH)6(CO3)2", 6],
    ["SO4", "3CdSO4·8H2O", 3],
    ["H2O", "3CdSO4·8H2O", 8],
    ["SO4", "K2SO4·Al2(SO4)3·24H2O", 4],
    ["H2O", "CaSO4·½H2O", 0.5],
    ["H2O", "CaSO4·½H2O·1½H2O", 2],
    ["H2O", "CaSO4·½H2O·2H2O", 2.5],
    // a group with brackets of its own, in square brackets or round ones; each of its groups as often as it says
    ["Fe(CN)6", "K3[Fe(CN)6]", 1],
    ["CN", "K3[Fe(CN)6]", 6],
    ["Fe[CN]6", "Fe4{Fe(CN)6}3", 3],
    ["Co(NH3)6", "[Co(NH3)6]Cl3", 1],
  ])("%s in %s: %d", (group, formula, count) => {
    const part = massFractionOf(group, formula).times(molarMass(formula)).dividedBy(molarMass(group));
    expect(part.toNumber("")).toBeCloseTo(count, 9);
  });

  it.each([
    ["SO4", "Na2S2O3"],
    ["CO3", "CO2"],
    ["NO3", "NaNO2"],
    ["OH", "H2O"],
    ["H2O", "HO2"],
    ["Fe(CN)6", "K4[Fe(CN)5]"],
    ["NH3", "(NH4)2SO4"],
  ])("%s is not found in %s, which has its elements otherwise", (group, formula) => {
    expect(attempt(() => massFractionOf(group, formula))).toMatchObject({ error: { code: "formula.group-not-found" } });
  });

  it("is text", () => {
    expect(attempt(() => massFractionOf(5 as never, "NaCl"))).toMatchObject({
      error: { code: "formula.not-text", problem: "what must be text or a Formula, not number" },
    });
  });
});

describe("letters that are no formula", () => {
  it("are respelt up to forty at a run", () => {
    const hint = (text: string) => {
      const outcome = attempt(() => parseFormula(text));
      return outcome.ok ? "read" : outcome.error.hint;
    };
    expect(hint("nacl".repeat(10))).toBe(`did you mean ${"NaCl".repeat(10)}?`);
    expect(hint(`${"nacl".repeat(10)}na`)).toBeUndefined();
    expect(attempt(() => parseFormula("x"))).toMatchObject({ ok: false, error: { constructor: FormulaError } });
  });
});

describe("a mass stated as an oxide", () => {
  // 100 g × (207.19 + 15.999) / (207.19 + 60.008) = 83.5295 g; with the 207.2(1.1) of the tables 83.530 g
  it("goes by the atomic weights that are given", () => {
    const stated = massAs("100 g", "PbCO3", "PbO", { weights: { Pb: "207.19(1) g/mol" } } as never);
    expect(stated.toNumber("g")).toBeCloseTo(83.5295, 3);
    expect(stated.standardUncertainty!.toNumber()).toBeLessThan(0.006);
    expect(massAs("100 g", "PbCO3", "PbO").standardUncertainty!.toNumber()).toBeGreaterThan(0.02);
    expect(massAs("100 g", "PbCO3", "PbO", { element: "Pb" }).toString()).toBe(
      massAs("100 g", "PbCO3", "PbO").toString(),
    );
  });
});

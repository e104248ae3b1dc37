// What each way of writing means. Chemistry of general knowledge unless a source stands beside it.
import { describe, expect, it } from "vitest";
import { Formula, formulaFromJSON, parseFormula } from "../../src/formula";

const held = (text: string, options?: Parameters<typeof parseFormula>[1]): string => {
  const formula = parseFormula(text, options);
  const atoms = formula.composition.map(({ symbol, count }) => `${symbol}${count.toFraction()}`).join(" ");
  const charge = formula.charge === 0 ? "" : ` ${formula.charge > 0 ? "+" : ""}${formula.charge}`;
  return atoms + charge + (formula.phase === undefined ? "" : ` (${formula.phase})`);
};

describe("parseFormula", () => {
  it.each([
    ["H2O", "H2 O1"],
    ["CH3COOH", "C2 H4 O2"],
    ["(CH3)2CO", "C3 H6 O1"],
    ["C2H5OH", "C2 H6 O1"],
    ["NH4CH3CO2", "C2 H7 N1 O2"],
    ["Co", "Co1"],
    ["CO", "C1 O1"],
    ["K4[Fe(CN)6]", "C6 Fe1 K4 N6"],
    ["{[Cu(NH3)4]}SO4", "Cu1 H12 N4 O4 S1"],
    ["Ca10(PO4)6(OH)2", "Ca10 H2 O26 P6"],
    ["Fe0.95O", "Fe19/20 O1"],
    ["H_2O", "H2 O1"],
    ["C_{12}H_{22}O_{11}", "C12 H22 O11"],
    ["Fe_{8/3}O_4", "Fe8/3 O4"],
    ["Ca(OH)₂", "Ca1 H2 O2"],
    ["Fe₀.₉₅O", "Fe19/20 O1"],
  ])("reads elements, groups and counts: %s", (text, expected) => {
    expect(held(text)).toBe(expected);
  });

  it.each([
    ["CuSO4·5H2O", "Cu1 H10 O9 S1"],
    ["CuSO4.5H2O", "Cu1 H10 O9 S1"],
    ["CuSO4*5H2O", "Cu1 H10 O9 S1"],
    ["CuSO4•5H2O", "Cu1 H10 O9 S1"],
    ["CuSO4⋅5H2O", "Cu1 H10 O9 S1"],
    ["CuSO4 × 5 H2O", "Cu1 H10 O9 S1"],
    ["CuSO4 x 5H2O", "Cu1 H10 O9 S1"],
    ["CuSO4x5H2O", "Cu1 H10 O9 S1"],
    ["CuSO4 · 5 H2O", "Cu1 H10 O9 S1"],
    ["CaSO4·½H2O", "Ca1 H1 O9/2 S1"],
    ["CaSO4·0.5H2O", "Ca1 H1 O9/2 S1"],
    ["CaSO4.0.5H2O", "Ca1 H1 O9/2 S1"],
    ["CaSO4·1/2H2O", "Ca1 H1 O9/2 S1"],
    ["CaSO4.1/2H2O", "Ca1 H1 O9/2 S1"],
    ["K2CO3·1½H2O", "C1 H3 K2 O9/2"],
    ["3CdSO4·8H2O", "Cd3 H16 O20 S3"],
    ["2CaSO4·H2O", "Ca2 H2 O9 S2"],
    ["CdSO4·8/3H2O", "Cd1 H16/3 O20/3 S1"],
    ["KAl(SO4)2·12H2O", "Al1 H24 K1 O20 S2"],
    ["ZnCO3·2Zn(OH)2·H2O", "C1 H6 O8 Zn3"],
    ["[Fe(H2O)6·2H2O]Cl3", "Cl3 Fe1 H16 O8"],
    ["MgSO4(7H2O)", "H14 Mg1 O11 S1"],
    ["CuSO4·D2O", "Cu1 D2 O5 S1"],
  ])("reads adducts: %s", (text, expected) => {
    expect(held(text)).toBe(expected);
  });

  it.each([
    ["SO4^2-", "O4 S1 -2"],
    ["SO4^{2-}", "O4 S1 -2"],
    ["SO4²⁻", "O4 S1 -2"],
    ["SO₄²⁻", "O4 S1 -2"],
    ["SO4 2-", "O4 S1 -2"],
    ["SO4-2", "O4 S1 -2"],
    ["Fe+3", "Fe1 +3"],
    ["Fe^+3", "Fe1 +3"],
    ["Fe 3+", "Fe1 +3"],
    ["Fe(3+)", "Fe1 +3"],
    ["SO4(2-)", "O4 S1 -2"],
    ["SO42^-", "O42 S1 -1"],
    ["C27H29O16-", "C27 H29 O16 -1"],
    ["C60-", "C60 -1"],
    ["Ca++", "Ca1 +2"],
    ["Na+", "Na1 +1"],
    ["Cl−", "Cl1 -1"],
    ["Cl⁻", "Cl1 -1"],
    ["NH4+", "H4 N1 +1"],
    ["NO3-", "N1 O3 -1"],
    ["I3-", "I3 -1"],
    ["O2-", "O2 -1"],
    ["Hg2+", "Hg2 +1"],
    ["Hg2^2+", "Hg2 +2"],
    ["Hg^2+", "Hg1 +2"],
    ["Au25^-", "Au25 -1"],
    ["[Fe(CN)6]4-", "C6 Fe1 N6 -4"],
    ["[Fe(CN)6]^4-", "C6 Fe1 N6 -4"],
    ["[Cu(NH3)4]^2+", "Cu1 H12 N4 +2"],
    ["[Cu(NH3)4] 2+", "Cu1 H12 N4 +2"],
    ["(CH3)4N+", "C4 H12 N1 +1"],
    ["Al(H2O)6^3+", "Al1 H12 O6 +3"],
    ["[Ag(NH3)2]+", "Ag1 H6 N2 +1"],
    ["Na^+Cl^-", "Cl1 Na1"],
    ["Na⁺Cl⁻", "Cl1 Na1"],
    ["(NH4^+)2(SO4^2-)", "H8 N2 O4 S1"],
    ["H3O+·3H2O", "H9 O4 +1"],
    ["2SO4^2-", "O8 S2 -4"],
  ])("reads charges: %s", (text, expected) => {
    expect(held(text)).toBe(expected);
  });

  it("takes digits before a bare sign as charge only when the request gives it", () => {
    expect(held("Hg2+", { digitsBeforeSign: "charge" })).toBe("Hg1 +2");
    expect(held("Fe3+(aq)", { digitsBeforeSign: "charge" })).toBe("Fe1 +3 (aq)");
    expect(parseFormula("Fe3+", { digitsBeforeSign: "charge" }).toString()).toBe("Fe^3+");
    // Polyatomic ions keep their subscripts: nobody writes NO3- for a triply charged nitrogen monoxide.
    expect(held("NO3-", { digitsBeforeSign: "charge" })).toBe("N1 O3 -1");
  });

  it.each([
    ["[13C]O2", "13C1 O2"],
    ["¹³CO2", "13C1 O2"],
    ["^{13}CO2", "13C1 O2"],
    ["^13CO2", "13C1 O2"],
    ["[13C]6H12O6", "13C6 H12 O6"],
    ["[18O2]", "18O2"],
    ["H2[18O]", "H2 18O1"],
    ["D2O", "D2 O1"],
    ["[2H]2O", "D2 O1"],
    ["T2", "T2"],
    ["CHD3", "C1 H1 D3"],
    ["Na⁺³⁵Cl⁻", "35Cl1 Na1"],
    ["[235U]O2", "O2 235U1"],
  ])("reads labelled nuclides: %s", (text, expected) => {
    expect(held(text)).toBe(expected);
  });

  it.each(["e-", "e⁻", "e^-", "e^{-}", "e−"])("reads the electron as %s", (text) => {
    const electron = parseFormula(text);
    expect(electron.symbols).toEqual([]);
    expect(electron.charge).toBe(-1);
    expect(electron.toString()).toBe("e-");
    expect(parseFormula("2e-").charge).toBe(-2);
  });

  it.each(["s", "l", "g", "aq", "cr"])("reads the phase (%s)", (phase) => {
    expect(parseFormula(`Na2CO3·10H2O(${phase})`).phase).toBe(phase);
    expect(parseFormula(`Na+ (${phase})`).charge).toBe(1);
    expect(parseFormula(`Na+(${phase})`).phase).toBe(phase);
  });

  it("needs the caller's number for n and x", () => {
    expect(held("CuSO4·nH2O", { n: 3 })).toBe("Cu1 H6 O7 S1");
    expect(held("CuSO4·xH2O", { x: "2.5" })).toBe("Cu1 H5 O13/2 S1");
    expect(held("MgCO3·n H2O", { n: 3n })).toBe("C1 H6 Mg1 O6");
    expect(held("(C2H4)n", { n: 100 })).toBe("C200 H400");
    expect(held("CuxS", { x: "1.8" })).toBe("Cu9/5 S1");
    expect(held("TiO_{x}", { x: "5/3" })).toBe("O5/3 Ti1");
    // The number is part of the formula from then on.
    expect(parseFormula("CuSO4·nH2O", { n: 3 }).toString()).toBe("CuSO4.3H2O");
  });

  it("lists symbols in Hill order", () => {
    expect(parseFormula("CH3COONa").symbols).toEqual(["C", "H", "Na", "O"]);
    expect(parseFormula("Na2SO4").symbols).toEqual(["Na", "O", "S"]);
    expect(parseFormula("H2SO4").symbols).toEqual(["H", "O", "S"]);
    expect(parseFormula("C[2H]3OH").symbols).toEqual(["C", "H", "D", "O"]);
  });

  it("counts exactly, and nothing as zero", () => {
    expect(parseFormula("(Fe0.1)0.1O").count("Fe").toFraction()).toBe("1/100");
    expect(parseFormula("(Fe_{1/3}O)2").count("Fe").toFraction()).toBe("2/3");
    expect(parseFormula("H2O").count("Na").toFraction()).toBe("0");
    expect(parseFormula("C123456789").count("C").toFraction()).toBe("123456789");
    expect(parseFormula("(((H1000)1000)1000)1000").count("H").toFraction()).toBe("1000000000000");
  });

  it("keeps the parts of an adduct", () => {
    const parts = parseFormula("4MgCO3·Mg(OH)2·5H2O(s)").parts;
    expect(parts.map(({ formula, multiplier }) => `${multiplier.toFraction()} ${formula}`)).toEqual([
      "4 MgCO3",
      "1 Mg(OH)2",
      "5 H2O",
    ]);
    expect(parseFormula("MgCO3").parts).toHaveLength(1);
  });

  it("tells three kinds of equality apart", () => {
    const [acid, hill] = [parseFormula("CH3COOH"), parseFormula("C2H4O2")];
    expect(acid.equals(hill)).toBe(false);
    expect(acid.hasSameComposition(hill)).toBe(true);
    expect(acid.hasSameComposition(parseFormula("CH3COO-"))).toBe(false);
    expect(parseFormula("2Zn(OH)2·ZnCO3").hasSameParts(parseFormula("ZnCO3·2Zn(OH)2"))).toBe(true);
    expect(parseFormula("Zn3C1O7H4").hasSameParts(parseFormula("ZnCO3·2Zn(OH)2"))).toBe(false);
    expect(parseFormula("Fe0.5O0.5").hasSameComposition(parseFormula("Fe_{1/2}O_{1/2}"))).toBe(true);
    expect(parseFormula("NaCl(s)").equals(parseFormula("NaCl"))).toBe(false);
  });

  it("survives JSON", () => {
    for (const text of ["CaSO4·½H2O", "[Fe(CN)6]4-", "[13C]O2(g)", "Fe_{8/3}O4", "e-", "Al2O3·2SiO2"]) {
      const formula = parseFormula(text);
      const back = formulaFromJSON(JSON.parse(JSON.stringify(formula)));
      expect(back).toBeInstanceOf(Formula);
      expect(back.equals(formula), text).toBe(true);
    }
  });
});

describe("formula algebra", () => {
  it("adds and takes away atoms and charges", () => {
    expect(parseFormula("CaO").plus(parseFormula("CO2")).hasSameComposition(parseFormula("CaCO3"))).toBe(true);
    expect(parseFormula("HSO4-").minus(parseFormula("H+")).toString()).toBe("O4S^2-");
    expect(parseFormula("Fe^2+").minus(parseFormula("e-")).charge).toBe(3);
    expect(parseFormula("H+").plus(parseFormula("e-")).toString()).toBe("H");
  });

  it("multiplies every part, charges with it", () => {
    expect(parseFormula("CaSO4·½H2O").times(2).toString()).toBe("2CaSO4.H2O");
    expect(parseFormula("SO4^2-").times("3").charge).toBe(-6);
    expect(parseFormula("Fe2O3").times("1/2").count("Fe").toFraction()).toBe("1");
  });

  it("strips adduct parts and nothing else", () => {
    expect(parseFormula("CuSO4·5H2O").without("H2O").toString()).toBe("CuSO4");
    expect(parseFormula("ZnCO3·2Zn(OH)2·H2O(s)").without("H2O").toString()).toBe("ZnCO3.2Zn(OH)2(s)");
    expect(parseFormula("[Cr(H2O)6]Cl3").without("H2O").toString()).toBe("[Cr(H2O)6]Cl3");
    expect(parseFormula("[Cr(H2O)4Cl2]Cl·2H2O").without("H2O").toString()).toBe("[Cr(H2O)4Cl2]Cl");
    expect(parseFormula("3CdSO4·8H2O").without("H2O").toString()).toBe("3CdSO4");
    const bare = parseFormula("NaCl");
    expect(bare.without("H2O")).toBe(bare);
  });
});

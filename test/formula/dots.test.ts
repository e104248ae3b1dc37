// Decimal point or adduct dot? The doubtful cases, one by one. (General knowledge of the compounds; no source.)
import { describe, expect, it } from "vitest";
import { parseFormula } from "../../src/formula";

const parts = (text: string): string =>
  parseFormula(text)
    .parts.map(({ formula, multiplier }) => `${multiplier.equals(1) ? "" : `${multiplier.toFraction()} `}${formula}`)
    .join(" + ");

describe("the full stop between digits", () => {
  it.each([
    ["CuSO4.5H2O", "CuSO4 + 5 H2O"],
    ["CaO2.8H2O", "CaO2 + 8 H2O"],
    // langbeinite with its subscript as LaTeX writes it: a whole number makes no decimals likelier
    ["K_2SO4.2MgSO4", "K2SO4 + 2 MgSO4"],
    ["MgSO4.7(H2O)", "MgSO4 + 7 (H2O)"],
    ["Na2SO4.10D2O", "Na2SO4 + 10 D2O"],
    ["ZnCl2.1.5H2O", "ZnCl2 + 3/2 H2O"],
    ["CdCl2.2.5H2O", "CdCl2 + 5/2 H2O"],
    ["CaSO4.0.5H2O", "CaSO4 + 1/2 H2O"],
    ["CH4.5.75H2O", "CH4 + 23/4 H2O"],
    ["CdSO4.8/3H2O", "CdSO4 + 8/3 H2O"],
    ["CaSO4.½H2O", "CaSO4 + 1/2 H2O"],
    ["Al2O3.2SiO2.2H2O", "Al2O3 + 2 SiO2 + 2 H2O"],
    ["K2O.Al2O3.6SiO2", "K2O + Al2O3 + 6 SiO2"],
    ["2Na2CO3.3H2O2", "2 Na2CO3 + 3 H2O2"],
    ["NiCO3.2Ni(OH)2.4H2O", "NiCO3 + 2 Ni(OH)2 + 4 H2O"],
    ["PbSO4.3PbO", "PbSO4 + 3 PbO"],
    ["2ZnCO3.3Zn(OH)2", "2 ZnCO3 + 3 Zn(OH)2"],
    // up to thirty of what is added are counted, in the groups of a mercury(I) salt as well
    ["Al2O3.30SiO2", "Al2O3 + 30 SiO2"],
    ["HgSO4.2(Hg2)Cl2", "HgSO4 + 2 (Hg2)Cl2"],
    ["HgSO4.2[Hg2]Cl2", "HgSO4 + 2 [Hg2]Cl2"],
    ["HgSO4.2{Hg2}Cl2", "HgSO4 + 2 {Hg2}Cl2"],
    // an ammoniate of a hexacyanidoferrate(III): a group in square brackets ends a compound as one in round ones does
    ["Cu3[Fe(CN)6]2.4NH3", "Cu3[Fe(CN)6]2 + 4 NH3"],
    ["Cu3{Fe(CN)6}2.4NH3", "Cu3{Fe(CN)6}2 + 4 NH3"],
    ["CaCl2.8NH3", "CaCl2 + 8 NH3"],
    ["(NH4)3PO4.12MoO3", "(NH4)3PO4 + 12 MoO3"],
    ["CuSO4.3(NH4)2SO4", "CuSO4 + 3 (NH4)2SO4"],
    ["MgBr2.6C2H5OH", "MgBr2 + 6 C2H5OH"],
    ["3Ca3(PO4)2.CaF2", "3 Ca3(PO4)2 + CaF2"],
    ["Fe0.95O.H2O", "Fe0.95O + H2O"],
    ["Ca5Si6O16.5(OH).10H2O", "Ca5Si6O16.5(OH) + 10 H2O"],
    ["Na0.33Al2(OH)2.4H2O", "Na0.33Al2(OH)2 + 4 H2O"],
    ["Co(OH)2.CoCO3", "Co(OH)2 + CoCO3"],
  ])("is an adduct dot in %s", (text, expected) => {
    expect(parts(text)).toBe(expected);
  });

  it.each([
    "YBa2Cu3O6.93",
    "Fe0.947O",
    "LiNi0.8Mn0.1Co0.1O2",
    "Fe7.016S8",
    "Mg2.964Fe1.927Al1.116Ca0.011",
    "Cu1.75S",
    "UO2.25",
    "(UO2.3333)2",
    "UO2.25^2+",
    "UO2.25(s)",
    "Na0.3Al2.3Si3.7O10(OH)2",
    "Ca9.316Na0.36Mg0.144(PO4)4.8(CO3)1.2F2.48",
    "Fe(OH)2.7Cl0.3",
    "Mg0.82SiO2.385(OH)0.87",
    "K0.75Mg3.00Si3.14Al0.86O10",
    "Bi2Sr2CaCu2O8.2",
    "H2.5PMo12O40",
    "Fe2.5S4",
    "Al2.5Si3.5O10(OH)2",
    "YBa2Cu3O6.5F2",
    "MgSiO3.31SiO2",
    // what stands outside of the bracket is no part of what would be added in it
    "(YBa2Cu3O6.5N)O",
  ])("is a decimal point in %s", (text) => {
    expect(parseFormula(text).parts).toHaveLength(1);
  });

  it.each([
    ["CuSO4.5H2O", "CuSO4·5H2O"],
    ["Al2O3.2SiO2", "Al2O3·2SiO2"],
  ])("gives way to a middle dot, which is never in doubt: %s = %s", (stop, dot) => {
    expect(parseFormula(stop).equals(parseFormula(dot))).toBe(true);
  });

  it("lets a subscript be written beyond doubt", () => {
    expect(parts("Al2O_{3.2}SiO2")).toBe("Al2O_{3.2}SiO2");
    expect(parts("Al₂O₃.₂SiO₂")).toBe("Al2O_{3.2}SiO2");
  });

  it("never prints what would be read back otherwise", () => {
    expect(parseFormula("CaSO4·½H2O").toString()).toBe("CaSO4.0.5H2O");
    expect(parseFormula("Fe·2C").toString()).toBe("Fe.2C");
    expect(parseFormula("Fe2·2C").toString()).toBe("Fe2*2C");
    expect(parseFormula("UO2·25C").toString()).toBe("UO2*25C");
  });
});

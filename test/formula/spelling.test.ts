// Ways of writing that an outsider's list of 700 formulas brought up: handbooks, the web, LaTeX sources, mineral tables.
// What each means is general chemistry (memory); sums were made by hand.
import { describe, expect, it } from "vitest";
import { parseFormula, tryParseFormula } from "../../src/formula";

const held = (text: string, options?: Parameters<typeof parseFormula>[1]): string => {
  const formula = parseFormula(text, options);
  return `${formula.toHill()}${formula.charge === 0 ? "" : ` ${formula.charge}`}`;
};

describe("one hydrate, written many ways", () => {
  it.each([
    "Na2SO4.10 H2O",
    "Na2SO4 . 10 H2O",
    "Na2SO4・10H2O",
    "Na2SO4●10H2O",
    "Na2SO4˙10H2O",
    "Na2SO4\u038710H2O",
    "Na2SO4∗10H2O",
    "Na2SO4 X 10H2O",
    "Na2SO4·(10)H2O",
    "\\ce{Na2SO4 * 10H2O}",
    "\\rm Na_2SO_4 \\cdot 10 H_2O",
    "Na$_2$SO$_4$\\times10H$_2$O",
    "Na\\textsubscript{2}SO\\textsubscript{4}·10H\\textsubscript{2}O",
    "Na<sub>2</sub>SO<sub>4</sub>&#183;10H<sub>2</sub>O",
    "Na<sub>2</sub>SO<sub>4</sub>&#xb7;10&thinsp;H<sub>2</sub>O",
  ])("%s", (text) => {
    expect(parseFormula(text).equals(parseFormula("Na2SO4·10H2O"))).toBe(true);
  });

  it.each(["CaSO4·(1/2)H2O", "CaSO4·(½)H2O", "CaSO4·(0.5)H2O", "CaSO4·.5H2O", "CaSO4.(1/2) H2O"])("%s", (text) => {
    expect(parseFormula(text).equals(parseFormula("CaSO4·½H2O"))).toBe(true);
  });

  it("keeps a decimal subscript apart from a multiplier with a space", () => {
    expect(parseFormula("CdCl2.2.5 H2O").parts.map(({ multiplier }) => multiplier.toFraction())).toEqual(["1", "5/2"]);
    expect(tryParseFormula("Fe0.95 O").ok).toBe(false);
  });
});

describe("charges as the web writes them", () => {
  it.each(["SO4²-", "SO₄2-", "SO_42-", "SO4{2-}", "SO4[2-]", "SO4(-2)", "SO4 -2", "SO4^(2-)", "SO₄²−"])(
    "%s",
    (text) => {
      expect(parseFormula(text).equals(parseFormula("SO4^2-"))).toBe(true);
    },
  );

  it.each([
    ["Fe³+", "Fe^3+ 3"],
    ["Fe{3+}", "Fe^3+ 3"],
    ["[PCl4]+[PCl6]-", "Cl10P2"],
    ["[Co(NH3)6]3+[Fe(CN)6]3-", "C6H18CoFeN12"],
    ["NH₄+", "H4N+ 1"],
  ])("%s", (text, expected) => {
    expect(held(text)).toBe(expected);
  });

  it("takes no mass number for a charge", () => {
    const outcome = tryParseFormula("C-14");
    expect(!outcome.ok && outcome.error.code).toBe("formula.ambiguous-charge");
    expect(!outcome.ok && outcome.error.hint).toBe("write [14C] for the nuclide");
    expect(parseFormula("N-3").charge).toBe(-3);
  });
});

describe("nuclides with their atomic number", () => {
  it.each(["^{235}_{92}UF6", "²³⁵₉₂UF6", "^{235}UF6"])("%s", (text) => {
    expect(parseFormula(text).equals(parseFormula("[235U]F6"))).toBe(true);
  });

  it("checks it", () => {
    const outcome = tryParseFormula("^{235}_{91}U");
    expect(!outcome.ok && outcome.error.code).toBe("formula.wrong-atomic-number");
  });
});

describe("counts with the caller's number, and fractions", () => {
  it.each([
    ["Fe1-xO", "0.05", "Fe0.95O"],
    ["Fe_{1-x}O", "0.05", "Fe0.95O"],
    ["UO2+x", "0.25", "O2.25U"],
    ["YBa2Cu3O7−x", "0.07", "Ba2Cu3O6.93Y"],
    ["La2-xSrxCuO4", "0.15", "CuLa1.85O4Sr0.15"],
    ["Cu(OH)2-xClx", "0.5", "ClCu2H3O3"],
  ])("%s with x = %s", (text, x, expected) => {
    const whole = held(text, { x });
    expect(whole === expected || parseFormula(text, { x }).times(2).hasSameComposition(parseFormula(expected))).toBe(
      true,
    );
  });

  it("says what is missing", () => {
    const x = tryParseFormula("Fe1-xO");
    expect(!x.ok && x.error.details["variable"]).toBe("x");
    const delta = tryParseFormula("YBa2Cu3O7-δ");
    expect(!delta.ok && delta.error.hint).toContain("call it x");
    const over = tryParseFormula("Fe1-xO", { x: 2 });
    expect(!over.ok && over.error.code).toBe("formula.unknown-number");
  });

  it("reads fractions below", () => {
    expect(parseFormula("LiNi1/3Mn1/3Co1/3O2").count("Mn").toFraction()).toBe("1/3");
  });
});

describe("minerals and phases", () => {
  it.each([
    ["Cu2[(OH)2|CO3]", "Cu2(OH)2CO3"],
    ["KAl2[(OH)2|AlSi3O10]", "KAl3Si3O12H2"],
    ["Mg3[Si4O10|(OH)2]", "Mg3Si4O10(OH)2"],
  ])("the bar of %s parts ions and counts nothing", (text, same) => {
    expect(parseFormula(text).hasSameComposition(parseFormula(same))).toBe(true);
  });

  it.each([
    ["CO2↑", "CO2(g)"],
    ["AgCl ↓", "AgCl(s)"],
    ["Cl^−_(aq)", "Cl-(aq)"],
    ["\\mathrm{NaCl}_{(aq)}", "NaCl(aq)"],
  ])("%s is %s", (text, expected) => {
    expect(parseFormula(text).toString()).toBe(expected);
  });
});

describe("hints", () => {
  it.each([
    ["cis-[PtCl2(NH3)2]", "leave the prefix out: [PtCl2(NH3)2]"],
    ["α-FeOOH", "leave the prefix out: FeOOH"],
    ["FeCl3,6H2O", "write an adduct dot: FeCl3·6H2O"],
    ["Na2SO4, 10H2O", "write an adduct dot: Na2SO4·10H2O"],
    ["CaSO4·0,5H2O", "write a decimal point"],
    ["Na2S2O3-5H2O", "write an adduct dot: CuSO4·5H2O"],
    ["[99mTc]O4-", "metastable states are not distinguished; write [99Tc]"],
    ["ROH", "R is not the symbol of an element; write what is meant"],
    ["NACL", "did you mean NaCl?"],
  ])("%s is advised: %s", (text, hint) => {
    const outcome = tryParseFormula(text);
    expect(!outcome.ok && outcome.error.hint).toBe(hint);
  });
});

describe("remarks on what reads well and was hardly meant", () => {
  it.each([
    ["13CO2", "13"],
    ["(15NH4)2SO4", "[15N]"],
    ["NaCI", "CI"],
    ["CHCI3", "CI"],
    ["NaC1", "C1"],
    ["CaC12", "Cl2"],
    ["CC14", "Cl4"],
    ["CHC13", "Cl3"],
    ["FeC13·6H2O", "Cl3"],
    ["CUSO4", "written Cu"],
    ["CUCl2", "written Cu"],
    ["NI(NO3)2", "written Ni"],
    ["COSO4·7H2O", "written Co"],
    ["PB(NO3)2", "written Pb"],
    ["SNO2", "written Sn"],
    ["TIO2", "written Ti"],
    ["Fe203", "Fe2O3"],
    ["K2Cr207", "Cr2O7"],
    ["H20", "H2O"],
    ["Fe.95O", "Fe0.95"],
    ["Na.33WO3", "Na0.33"],
    ["NaOAc", "acetate"],
    ["Ti(OPr)4", "propyl"],
    ["BH3·THF", "tetrahydrofuran"],
    ["Cu2+", "Cu^2+"],
    // mercury(I) and peroxide are pairs of charge two (Red Book 2005, IR-5.3.2.2, IR-5.3.3.2; section numbers from memory)
    ["Hg22+", "Hg2^2+"],
    ["O22-", "O2^2-"],
  ])("%s", (text, word) => {
    expect(parseFormula(text).remarks.join()).toContain(word);
  });

  it.each([
    "2H2O",
    "K2O.11Al2O3",
    "CuSO4.5H2O",
    "Fe0.95O",
    "12CaO·7Al2O3",
    "CH3I",
    "C2H5I",
    "(CH3)3CI",
    "C60",
    "C10H20",
    "PrCl3",
    "C12H22O11",
    "NaC12H25SO4",
    "H2C12O4",
    "CO",
    "COCl2",
    "CSCl2",
    "CDCl3",
    "NI3",
    "PBr3",
    "POCl3",
    "HOCl",
    "CuSO4",
    "Ac2O3",
    "I3-",
    "C60-",
    "Hg2^2+",
    "O2-",
    "Br3-",
    "Cl2+",
    "UC1.94",
    "H2O",
  ])("none on %s", (text) => {
    expect(parseFormula(text).remarks).toEqual([]);
  });
});

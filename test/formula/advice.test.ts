// What a refused formula is advised, and what is remarked on one that reads well and was hardly meant: the words that help, and
// where they end. The valley of stability by the formula at the head of remarks.ts, worked out by hand.
import { parseFormula } from "preparative";
import { describe, expect, it } from "vitest";
import { attempt } from "../../src/foundation/error";

type Options = Parameters<typeof parseFormula>[1];

const refusal = (text: string, options?: Options) => {
  const outcome = attempt(() => parseFormula(text, options));
  if (outcome.ok) throw new Error(`${text} was read as ${outcome.value}`);
  return outcome.error;
};
const remarks = (text: string): string => parseFormula(text).remarks.join();

describe("a mass number that may have slid down", () => {
  // Z = A / (1.98 + 0.0155 A^(2/3)) within 1 + Z/50: carbon 11 gives 5.35, 14 gives 6.76, 15 gives 7.23 (6 and 1.12); uranium 229
  // gives 89.4, 225 gives 88.1, 238 gives 92.4, 246 gives 95.0 (92 and 2.84); helium 4 gives 1.98, 6 gives 2.95, 7 gives 3.44 (2 and 1.04)
  it.each(["11CO2", "12CO2", "13CO2", "14CO2", "229UO2", "238UO2", "4He", "6He", "(15NH4)2SO4", "[13CO]", "{18OH2}"])(
    "is remarked on in %s",
    (text) => {
      const label = /[1-9]\d*[A-Z][a-z]?/.exec(text)![0];
      // square brackets are of a label already
      if (text.startsWith("[")) expect(refusal(text).code).toBe("formula.ambiguous-label");
      else expect(remarks(text)).toContain(`[${label}]`);
    },
  );

  it.each(["10CO2", "15CO2", "225UO2", "246UO2", "7He", "1He", "2H2O", "3H2", "13CO2·H2O", "4BeO.B2O3", "13CO2*H2O"])(
    "is not in %s",
    (text) => {
      expect(remarks(text)).toBe("");
    },
  );
});

describe("short names of groups", () => {
  const SHORT = {
    actinium: ["NaOAc", "HAc", "NaAc", "KAc", "NH4Ac", "AcOH", "AcO-", "Ac2O", "Zn(OAc)2"],
    praseodymium: ["Ti(OPr)4", "PrOH"],
    tritium: ["BH3·THF", "THF", "THF·BH3", "BH3·2THF"],
  };
  it.each(Object.entries(SHORT).flatMap(([read, texts]) => texts.map((text) => [text, read])))(
    "%s was read as %s",
    (text, read) => {
      expect(remarks(text)).toContain(`read as ${read}`);
    },
  );

  it.each(["Ac2O3", "AcCl3", "THFe", "THF2", "PrOHe", "Pr2O3", "Pr(OH)3", "AcOs", "Ac2(OH)3"])(
    "%s has none",
    (text) => {
      expect(remarks(text)).not.toContain("was read as actinium");
      expect(remarks(text)).not.toContain("propyl");
      expect(remarks(text)).not.toContain("tetrahydrofuran");
    },
  );
});

describe("a letter for another", () => {
  it.each([
    ["NaCI", "CI was read as carbon and iodine"],
    ["MgCI2", "CI was read as carbon and iodine"],
    ["KC1O3", "C1 was read as one carbon atom"],
    ["CaC12", "C12 was read as 12 carbon atoms"],
    ["CC14", "C14 was read as 14 carbon atoms"],
    ["FeC19", "C19 was read as 19 carbon atoms"],
    ["Fe203", "203 was read as a count; with the letter O it is Fe2O3"],
    ["Al209", "209 was read as a count"],
    ["N203", "203 was read as a count; with the letter O it is N2O3"],
    ["H20", "20 was read as a count; with the letter O it is H2O"],
    ["Fe.95O", ".95 was read as a dot and a number"],
    ["Na.33(WO3)", ".33 was read as a dot and a number"],
    ["Fe3+", "3 was read as a subscript; a charge is written Fe^3+"],
    ["Zn2-", "2 was read as a subscript; a charge is written Zn^2-"],
    ["Cu2+(aq)", "a charge is written Cu^2+"],
    ["S22-", "two atoms with two charges are written S2^2-"],
    ["Cd22+(aq)", "two atoms with two charges are written Cd2^2+"],
    ["C22-", "two atoms with two charges are written C2^2-"],
    ["Se22-", "two atoms with two charges are written Se2^2-"],
    ["TIO2", "TI was read as T and I; the metal is written Ti"],
    ["OSO4", "OS was read as O and S; the metal is written Os"],
    ["NIO", "NI was read as N and I; the metal is written Ni"],
    ["BICl3", "BI was read as B and I; the metal is written Bi"],
    ["SBCl3", "SB was read as S and B; the metal is written Sb"],
    ["PDCl2", "PD was read as P and D; the metal is written Pd"],
    ["SNCl2·2H2O", "SN was read as S and N; the metal is written Sn"],
    ["PBO2", "PB was read as P and B; the metal is written Pb"],
    ["CSNO3", "CS was read as C and S; the metal is written Cs"],
  ])("%s: %s", (text, remark) => {
    expect(remarks(text)).toContain(remark);
  });

  it.each([
    "I3-",
    "N3-",
    "F2-",
    "Cl2+",
    "Br3-",
    "Xe2+",
    "Fe1+",
    "CuO2-",
    "Hg2^2+",
    "C20H42",
    "C12O9",
    "Fe20",
    "Fe2030",
    "H20Na",
    "NaH20",
    "Fe200",
    "H2O",
    "CO",
    "NO2",
    "CSCl2",
    "COCl2",
    "NaC12H25SO4",
    "C60",
    "CaC1.2",
    "FeO.95H2O",
  ])("%s has none", (text) => {
    expect(remarks(text)).toBe("");
  });

  it("is looked for in texts of two hundred characters and no longer", () => {
    expect(remarks(`${"H".repeat(196)}NaCI`)).toContain("CI was read");
    expect(remarks(`${"H".repeat(197)}NaCI`)).toBe("");
  });
});

describe("advice", () => {
  it.each(["kJ", "kcal", "cal", "heat", "energy", "Nakcal"])("%s is heat, which is no species", (text) => {
    expect(refusal(text)).toMatchObject({
      code: "formula.unknown-symbol",
      hint: "heat is not a species; leave it out",
    });
  });

  it.each(["heater", "qkJ", "kJx", "calx"])("%s is not", (text) => {
    expect(refusal(text).hint ?? "").not.toContain("heat is not");
  });

  it.each([
    ["MeOH", "Me as CH3"],
    ["EtOH", "Et as C2H5"],
    ["PhOH", "Ph as C6H5"],
    ["BuOH", "Bu as C4H9"],
    ["[Co(en)3]Cl3", "en as C2H8N2"],
    ["[Cu(py)4]SO4", "py as C5H5N"],
    ["Fe(acac)3", "acac as C5H7O2"],
    ["Na2edta", "edta as C10H12N2O8"],
    ["[Fe(phen)3]SO4", "phen as C12H8N2"],
    ["[Ru(bpy)3]Cl2", "bpy as C10H8N2"],
    ["K3[Fe(ox)3]", "ox as C2O4"],
  ])("%s: %s", (text, words) => {
    expect(refusal(text).hint).toBe(`abbreviations of groups are not read; write ${words}`);
  });

  it.each([
    ["alpha-Al2O3", "leave the prefix out: Al2O3"],
    ["n-C4H10", "leave the prefix out: C4H10"],
    ["iso-(C4H10)", "leave the prefix out: (C4H10)"],
    ["α-Al2O3", "leave the prefix out: Al2O3"],
    ["[99mTc]O4^-", "metastable states are not distinguished; write [99Tc]"],
    ["Q", "Q is not the symbol of an element; write what is meant"],
    ["RCl", "R is not the symbol of an element; write what is meant"],
    ["XCl2", "X is not the symbol of an element; write what is meant"],
    ["NaCl:H2O", "write an adduct dot: CuSO4·5H2O"],
    ["CH2=CH2", "bonds are left out: CH2CH2"],
    ["HC≡CH", "bonds are left out: CHCH"],
    ["NaCl;KCl", "one formula at a time, and nothing after it"],
    ["'NaCl'", "leave the quotation marks out"],
    ['"NaCl"', "leave the quotation marks out"],
    ["“NaCl", "leave the quotation marks out"],
    ["Mg/Fe", "a shared site needs its shares"],
  ])("%s: %s", (text, hint) => {
    expect(refusal(text).hint).toContain(hint);
  });

  it("is no prefix in the middle of a text", () => {
    expect(refusal("Qa-Al2O3").hint ?? "").not.toContain("prefix");
  });

  it("is no respelling where the letters stand as they are meant", () => {
    expect(refusal("(s)Na").hint).toBeUndefined();
  });

  it("respells a text of two hundred characters, runs of forty letters, and no longer", () => {
    const many = (length: number) => `nacl${"·H2O".repeat((length - 4) / 4)}`;
    expect(refusal(many(200)).hint).toBe(`did you mean ${many(200).replace("nacl", "NaCl")}?`);
    expect(refusal(many(204)).hint).toBeUndefined();
    expect(refusal(`na${"H".repeat(38)}`).hint).toBe(`did you mean Na${"H".repeat(38)}?`);
    expect(refusal(`na${"H".repeat(39)}`).hint).toBeUndefined();
  });

  it.each([
    ["nacl(aq)", "did you mean NaCl(aq)?"],
    ["nacl(s)", "did you mean NaCl(s)?"],
    ["hcl", "did you mean HCl?"],
    ["nh4no3", "did you mean NH4NO3?"],
    ["fe2o3", "did you mean Fe2O3?"],
  ])("%s: %s", (text, hint) => {
    expect(refusal(text).hint).toBe(hint);
  });

  it("writes the letter for the zero in a text of eighty characters and no longer", () => {
    const zero = (length: number) => `${"C".repeat(length - 5)}CuS04`;
    expect(refusal(zero(80)).hint).toBe(`a zero for the letter O? ${"C".repeat(75)}CuSO4`);
    expect(refusal(zero(81)).hint).toBe("a zero for the letter O?");
  });

  it.each([
    ["Na(abcdefghij)", "unknown-phase", 2],
    ["Na(abcdefghijk)", "unknown-symbol", 3],
    ["CuO(x)", "unknown-symbol", 4],
    ["(C2H4)(n)", "unknown-symbol", 7],
    ["aq)", "unknown-symbol", 0],
    ["(aq)", "empty", 0],
    ["CuSO4·1/H2O", "unexpected-character", 7],
    ["Fe_{1-x2}O", "misplaced-number", 2],
    ["Fe1-x2", "misplaced-number", 5],
    ["Na₂₂2", "misplaced-number", 4],
    ["Na½½", "misplaced-number", 3],
  ])("%s is refused: %s at %d", (text, code, position) => {
    expect(refusal(text, { x: "0.5" })).toMatchObject({ code: `formula.${code}`, position });
  });

  it("says what leaves the exact numbers with x", () => {
    // 999999999999 less 10^-12 has 24 digits
    expect(refusal("Fe999999999999-xO", { x: "1/999999999999" })).toMatchObject({
      code: "formula.count-too-large",
      position: 14,
      details: { limit: 12 },
    });
  });
});

describe("space and phase", () => {
  it.each([" ", "\u00a0", "\u202f", "\u2009", "\t", "\n", "\r"])(
    "reads %j between a number and what it counts",
    (space) => {
      const formula = parseFormula(`${space}CuSO4 ·${space}5${space}H2O${space}(s)${space}`);
      expect(formula.count("H").toFraction()).toBe("10");
      expect(formula.phase).toBe("s");
    },
  );

  it.each([
    ["NaCl_{(aq)}", "aq"],
    ["NaCl_{(aq)} ", "aq"],
    [" NaCl_{(s)}", "s"],
    ["NaCl _{(cr)}", "cr"],
    ["NaCl_(g)", "g"],
    ["CO2↑", "g"],
    ["AgCl ↓ ", "s"],
  ])("%j is in the phase %s", (text, phase) => {
    expect(parseFormula(text).phase).toBe(phase);
    expect(parseFormula(text).parts).toHaveLength(1);
  });

  it.each(["NaCl_{(s)}2", "NaCl_{(x)}", "_{(s)}", "↑"])("%s is refused", (text) => {
    expect(attempt(() => parseFormula(text)).ok).toBe(false);
  });
});

describe("markup", () => {
  it("points into the text as given, and keeps advice and details", () => {
    const error = refusal("Na<sub>2</sub>Qx");
    expect([error.code, error.position, error.input]).toEqual(["formula.unknown-symbol", 14, "Na<sub>2</sub>Qx"]);
    expect(error.details).toMatchObject({ written: "Qx" });
    expect(refusal("$\\mathrm{CuS0_4}$").hint).toContain("a zero for the letter O?");
    // one line of the problem, however many the message has
    expect(error.problem).toBe('"Qx" is not an element');
  });

  it("is no reason to read a text that is too long", () => {
    expect(refusal(`<${"C".repeat(200_000)}`).code).toBe("formula.too-long");
    expect(
      parseFormula(`H<sub>2</sub>${"C".repeat(199_987)}`)
        .count("C")
        .toFraction(),
    ).toBe("199987");
  });
});

describe("decimals and dots once more, for heavy water and what the quick reader leaves", () => {
  const atoms = (text: string): string =>
    parseFormula(text)
      .composition.map(({ symbol, count }) => `${symbol}${count.toFraction()}`)
      .sort()
      .join(" ");

  // rules 1, 3 and 9 at the head of dots.ts
  it.each([
    ["CuSO4.05D2O", "Cu1 D2 O101/20 S1"],
    ["ZnCl2.1.5D2O", "Cl2 D3 O3/2 Zn1"],
    ["ZnCl2.5.0D2O", "Cl2 D10 O5 Zn1"],
    ["O16.5.10D2O", "D20 O53/2"],
    ["O16.12.2D2O", "D122/5 O141/5"],
    ["O16.13.2D2O", "D4 O1813/100"],
    ["O16.05.2D2O", "D4 O361/20"],
    ["O16.125.2D2O", "D4 O145/8"],
    ["Fe2.5.1.5D2O", "D3 Fe5/2 O3/2"],
    ["Fe0.95.2D2O", "D4 Fe19/20 O2"],
    ["Fe2.5.D2O", "D2 Fe5/2 O1"],
    ["Fe1.5.2D2O", "D4 Fe3/2 O2"],
    // a plain decimal further on makes the first one a decimal too
    ["NaSiO2.7Al0.3F", "Al3/10 F1 Na1 O27/10 Si1"],
    ["NaSiO2.7Al1.2F", "Al6/5 F1 Na1 O27/10 Si1"],
    ["NaSiO2.7Al2.05F", "Al41/20 F1 Na1 O27/10 Si1"],
    ["NaSiO2.7Al0.5", "Al1/2 Na1 O27/10 Si1"],
    // a whole number, or a dot with its own decimal, does not: 1 + 2 × 3 O + ½ H2O, and 5 H2O
    ["NaSiO2.7Al2O3", "Al14 Na1 O23 Si1"],
    ["CaSiO3.2Al2O3.0.5H2O", "Al4 Ca1 H1 O19/2 Si1"],
    ["CaSiO3.2Al2O3.5H2O", "Al4 Ca1 H10 O14 Si1"],
    ["CaSiO3.2Al2O3·0.5H2O", "Al4 Ca1 H1 O19/2 Si1"],
    ["CaSiO3.2Al2O3 . 5H2O", "Al4 Ca1 H10 O14 Si1"],
  ])("%s is %s", (text, expected) => {
    expect(atoms(text)).toBe(expected);
  });

  it("writes braces only where a star alone is read otherwise", () => {
    expect(parseFormula("Na0.5Al2O3*2SiO2").toString()).toBe("Na0.5Al2O3*2SiO2");
    expect(parseFormula("Al2O_{3.2}SiO2").toString()).toBe("Al2O_{3.2}SiO2");
    expect(parseFormula("(OH)2^-").toString()).toBe("(OH)2-");
    expect(parseFormula("[OH]2^-").toString()).toBe("[OH]2^-");
    expect(parseFormula("[OH]^-").toString()).toBe("[OH]-");
  });

  it.each([
    ["1/2", "½"],
    ["1/3", "⅓"],
    ["2/3", "⅔"],
    ["1/4", "¼"],
    ["3/4", "¾"],
    ["7/2", "3½"],
    ["11/4", "2¾"],
    ["1/5", "0.2"],
    ["1/6", "1/6"],
  ])("prints %s water as %s", (number, shown) => {
    expect(parseFormula(`CaSO4·${number}H2O`).toUnicode()).toBe(`CaSO₄·${shown}H₂O`);
  });
});

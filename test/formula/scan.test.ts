// The quick reader: what it reads by itself, what it leaves to the full reader, and that both always agree. The counts are
// added up by hand; which full stop is a decimal point goes by the rules at the head of dots.ts.
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { symbolAt } from "../../src/element/internal";
import { parseFormula } from "../../src/formula";
import { evaluate } from "../../src/formula/evaluate";
import { readFormula } from "../../src/formula/read/read";
import { CELL_BITS, CELL_MASK, found, foundCells, scanFormula } from "../../src/formula/read/scan";

/** Atoms by symbol, over the denominator if there is one, then charge and phase; `left` where the full reader has to read. */
function scanned(text: string): string {
  if (!scanFormula(text, 0, text.length)) return "left";
  const { lists, charge, phase } = found;
  const atoms =
    lists === undefined
      ? [...foundCells].filter((cell) => cell !== 0).map((cell) => `${symbolAt(cell & CELL_MASK)}${cell >> CELL_BITS}`)
      : lists.elementIndices.map((index, at) => `${symbolAt(index)}${lists.numerators[at]}`);
  const below = lists === undefined || lists.denominator === 1 ? "" : ` /${lists.denominator}`;
  const sign = charge === 0 ? "" : ` ${charge > 0 ? "+" : ""}${charge}`;
  return atoms.sort().join(" ") + below + sign + (phase === undefined ? "" : ` (${phase})`);
}

describe("the quick reader", () => {
  it.each([
    ["H2O", "H2 O1"],
    ["CO", "C1 O1"],
    ["Co", "Co1"],
    ["CH3COOH", "C2 H4 O2"],
    ["(CH3)2CO", "C3 H6 O1"],
    ["Ca10(PO4)6(OH)2", "Ca10 H2 O26 P6"],
    ["K4[Fe(CN)6]", "C6 Fe1 K4 N6"],
    ["{[Cu(NH3)4]}SO4", "Cu1 H12 N4 O4 S1"],
    ["H10", "H10"],
    ["C16383", "C16383"],
    ["C16384", "C16384"],
    ["C123456789", "C123456789"],
    ["NaAlSiPSClKO", "Al1 Cl1 K1 Na1 O1 P1 S1 Si1"],
    ["NaAlSiPSO", "Al1 Na1 O1 P1 S1 Si1"],
    ["HHHH", "H4"],
    ["VO(F)", "F1 O1 V1"],
    ["K[F]", "F1 K1"],
  ])("reads elements and groups: %s", (text, expected) => {
    expect(scanned(text)).toBe(expected);
  });

  it.each([
    ["H₂O", "H2 O1"],
    ["C₁₂H₂₂O₁₁", "C12 H22 O11"],
    ["C₁₀H₈", "C10 H8"],
    ["Fe₉", "Fe9"],
    ["Ca(OH)₂", "Ca1 H2 O2"],
    ["[Cu]₂O", "Cu2 O1"],
    ["{Cu}₂O", "Cu2 O1"],
    ["C₁₂₃₄₅₆₇₈₉", "C123456789"],
    ["C₁₀₁", "C101"],
    ["C₁₉₁", "C191"],
  ])("reads subscript digits: %s", (text, expected) => {
    expect(scanned(text)).toBe(expected);
  });

  it.each([
    ["CuSO4.5H2O", "Cu1 H10 O9 S1"],
    ["CuSO4·5H2O", "Cu1 H10 O9 S1"],
    ["CuSO4*5H2O", "Cu1 H10 O9 S1"],
    ["CuSO4•5H2O", "Cu1 H10 O9 S1"],
    ["CuSO4⋅5H2O", "Cu1 H10 O9 S1"],
    ["Na2SO4.10H2O", "H20 Na2 O14 S1"],
    ["3CdSO4·8H2O", "Cd3 H16 O20 S3"],
    ["2Na2CO3·3H2O2", "C2 H6 Na4 O12"],
    ["4MgCO3·Mg(OH)2·5H2O", "C4 H12 Mg5 O19"],
    ["Na2SO4.10H2O·NaCl", "Cl1 H20 Na3 O14 S1"],
    ["2NaCl", "Cl2 Na2"],
    ["NaCl·KCl", "Cl2 K1 Na1"],
  ])("reads adducts: %s", (text, expected) => {
    expect(scanned(text)).toBe(expected);
  });

  it.each([
    ["Na+", "Na1 +1"],
    ["Cl-", "Cl1 -1"],
    ["NH4+", "H4 N1 +1"],
    ["NO3-", "N1 O3 -1"],
    ["Fe^+", "Fe1 +1"],
    ["Fe^2+", "Fe1 +2"],
    ["SO4^2-", "O4 S1 -2"],
    ["Fe^12+", "Fe1 +12"],
    ["Fe^123+", "Fe1 +123"],
    ["Fe^1234-", "Fe1 -1234"],
    ["[Fe(CN)6]4-", "C6 Fe1 N6 -4"],
    ["[Fe(CN)6]10-", "C6 Fe1 N6 -10"],
    ["[Ag(NH3)2]+", "Ag1 H6 N2 +1"],
    ["(CH3)4N+", "C4 H12 N1 +1"],
    ["Na⁺", "Na1 +1"],
    ["Cl⁻", "Cl1 -1"],
    ["Ca²⁺", "Ca1 +2"],
    ["Al³⁺", "Al1 +3"],
    ["Fe¹⁺", "Fe1 +1"],
    ["Si⁴⁻", "Si1 -4"],
    ["Fe⁹⁺", "Fe1 +9"],
    ["Fe¹⁰⁺", "Fe1 +10"],
    ["Fe⁵⁶⁷⁺", "Fe1 +567"],
    ["Fe⁴⁸¹²⁻", "Fe1 -4812"],
    ["2SO4^2-", "O8 S2 -4"],
    ["3Na+", "Na3 +3"],
    ["H2O·2Na+", "H2 Na2 O1 +2"],
  ])("reads charges at the end: %s", (text, expected) => {
    expect(scanned(text)).toBe(expected);
  });

  it.each([
    ["NaCl(s)", "Cl1 Na1 (s)"],
    ["H2O(l)", "H2 O1 (l)"],
    ["CO2(g)", "C1 O2 (g)"],
    ["C(s)", "C1 (s)"],
    ["Na+(aq)", "Na1 +1 (aq)"],
    ["SO4^2-(aq)", "O4 S1 -2 (aq)"],
    ["Ca²⁺(aq)", "Ca1 +2 (aq)"],
    ["C(cr)", "C1 (cr)"],
    ["MgSO4·7H2O(cr)", "H14 Mg1 O11 S1 (cr)"],
    ["H2O.Fe(OH)2(s)", "Fe1 H4 O3 (s)"],
  ])("reads phases: %s", (text, expected) => {
    expect(scanned(text)).toBe(expected);
  });

  it.each([
    ["Fe0.95O", "Fe19 O20 /20"],
    ["Fe0.947O", "Fe947 O1000 /1000"],
    ["Fe0.1234O", "Fe617 O5000 /5000"],
    ["Cu1.75S", "Cu7 S4 /4"],
    ["UO2.25", "O9 U4 /4"],
    ["(UO2.25)2", "O9 U4 /2"],
    ["UO2.25^2+", "O9 U4 /4 +2"],
    ["Mg3.00Si4", "Mg3 Si4"],
    ["Fe7.016S8", "Fe877 S1000 /125"],
    ["Fe9.016S8", "Fe1127 S1000 /125"],
    ["Fe10.016S8", "Fe1252 S1000 /125"],
    ["(Fe0.1)0.1O", "Fe1 O100 /100"],
    ["(Fe0.5O)2", "Fe1 O2"],
    ["CaSO4·0.5H2O", "Ca2 H2 O9 S2 /2"],
    ["K2CO3*1.5H2O", "C2 H6 K4 O9 /2"],
    ["K2CO3·1.5H2O", "C2 H6 K4 O9 /2"],
    ["ZnCl2.1.5H2O", "Cl4 H6 O3 Zn2 /2"],
    ["Cu(C2O4).0.5H2O", "C4 Cu2 H2 O9 /2"],
    ["ZnCl2.12.5H2O", "Cl4 H50 O25 Zn2 /2"],
    ["CuSO4.05H2O", "Cu20 H40 O101 S20 /20"],
    ["Al2.5H2O", "Al2 H10 O5"],
    ["Al12.5H2O", "Al12 H10 O5"],
    ["Al1.5H2O", "Al3 H4 O2 /2"],
    ["Si2.633AlO4", "Al1000 O4000 Si2633 /1000"],
    ["O2.633AlO4", "Al1000 O6633 /1000"],
    ["Na0.3Al2.3Si3.7O10", "Al23 Na3 O100 Si37 /10"],
    ["Fe2.5S4", "Fe5 S8 /2"],
    ["2Fe0.5O", "Fe1 O2"],
    ["Fe2.5S2O", "Fe5 O2 S4 /2"],
  ])("reads decimals that are beyond doubt: %s", (text, expected) => {
    expect(scanned(text)).toBe(expected);
  });

  it("takes a full stop after a metal for a decimal point, and leaves it to the full reader after another element", () => {
    for (const metal of "B K U V W Y Fe Na Si Ge Al Sc".split(" "))
      expect(scanned(`${metal}2.5S4`), metal).toBe([`${metal}5`, "S8"].sort().join(" ").concat(" /2"));
    for (const other of "H C N O F P S I Cl Br Se Te As At".split(" "))
      expect(scanned(`${other}2.5Al4`), other).toBe("left");
  });

  it.each([
    ["nothing", ["", " "]],
    ["no symbol", ["Q", "Jo", "q", "aB", "n", "Hx", "Na Cl", "D2O", "[13C]", "1", "23"]],
    ["zero, and a leading zero", ["H0", "H02", "H00", "H₀", "H₀₂", "H2O·0H2O", "0H2O"]],
    ["many digits", ["C1234567890", "C₁₂₃₄₅₆₇₈₉₀", "C12345678.90O", "Fe1234567.123O"]],
    ["two numbers in a row", ["H2₂", "H₂2", "Fe½", "H_2"]],
    ["a subscript of nothing", ["₂H", "CuSO4·₅H2O", "(₂H)", "+₂"]],
    [
      "brackets",
      [
        "Fe()2",
        "Fe[]2",
        "Fe{}",
        "(Na+)",
        "(Cl-)",
        "(",
        ")",
        "H)",
        "(H",
        "[H)",
        "(H]",
        "{H]",
        "{H)",
        "[H}",
        "Fe(2H)",
        "(H)(",
        "]H[",
        ")H(",
      ],
    ],
    ["what may be an oxidation number", ["Fe(III)", "Fe(V)", "Fe(III)2"]],
    ["charges inside", ["(Na+)Cl", "(Cl-)2", "Na+Cl-", "Na+·H2O", "Na⁺Cl⁻"]],
    ["signs without a formula", ["+", "-", "5+", "^2+", "²⁺", "⁺", "^+"]],
    [
      "charges of other spellings",
      ["Ca++", "SO4--", "Fe 3+", "SO4 2-", "SO4 -", "SO42-", "Fe+3", "Fe^02+", "Fe⁰⁺", "Fe⁰²⁺"],
    ],
    ["charges of many digits", ["Fe^12345+", "Fe¹²³⁴⁵⁺", "[Fe]12345-"]],
    ["half a charge", ["0.5Na+", "H2O·0.5Ca^2+"]],
    [
      "phases that are none",
      ["CuO(x)", "NaCl(az)", "NaCl(cq)", "NaCl(ar)", "(aq)", "(s)", "NaCl(foo)", "(C2H4)n", "(cr)"],
    ],
    ["dots", [".H2O", "CuSO4.", "CuSO4..H2O", "(CuSO4.5H2O)", "[Fe·2H2O]", "·", "·H2O"]],
    [
      "a full stop in doubt",
      [
        "O16.5(OH)",
        "CuSO4.5H2O2",
        "CuSO4.5D2O",
        "Na2SO4.10H2O.NaCl",
        "PbSO4.3PbO",
        "Al2O3.2SiO2",
        "ZnCO3.2Zn(OH)2",
        "Ca3(PO4)2.3CaO",
        "Cu3[Fe(CN)6]2.4NH3",
        "Cu3{Fe(CN)6}2.4NH3",
      ],
    ],
    [
      "water in doubt",
      [
        "ZnCl2.13.5H2O",
        "ZnCl2.22.5H2O",
        "ZnCl2.1.0H2O",
        "ZnCl2.1.25H2O",
        "K2CO3*12.5H2O",
        "ZnCl1.2.5H2O",
        "K2.5.5H2O2",
      ],
    ],
    ["decimals that are zero or begin with two zeros", ["Fe0.00O", "Fe00.5O", "Fe0.0000O"]],
    ["decimals too fine", ["((Fe)0.01)0.001", "Fe0.12345O", "((Fe0.01)0.01)0.01", "(Fe0.001)0.01"]],
    ["chains of full stops", ["Fe0.5.5O", "Fe2.5.5O", ".5H2O", "2.5", "0.5"]],
  ])("leaves to the full reader: %s", (_, texts) => {
    expect(texts.length, "rows to test").toBeGreaterThan(0);
    for (const text of texts) {
      expect(scanned(text), text).toBe("left");
      // and nothing of it is left in the next formula
      expect(scanned("CuSO4.H2O"), text).toBe("Cu1 H2 O5 S1");
    }
  });

  it("reads up to the largest count that is exact, and leaves the next", () => {
    // 999999999 × 9007199 = 9007198990992801 is below 2^53 = 9007199254740992, × 9007200 = 9007199990992800 is above
    expect(scanned("(H999999999)9007199")).toBe("H9007198990992801");
    expect(scanned("(H999999999)9007200")).toBe("left");
    expect(scanned("9007200H999999999")).toBe("left");
    expect(scanned("(((H)999999999)9007200)")).toBe("left");
  });

  it("reads a piece of a text", () => {
    const read = (start: number, end: number) => scanFormula("2 NaCl + 3 H2O(l)", start, end) && [...foundCells];
    expect(read(2, 6)).toEqual([(1 << CELL_BITS) | 10, (1 << CELL_BITS) | 16, 0, 0, 0, 0]);
    expect(read(11, 14)).toEqual([(2 << CELL_BITS) | 0, (1 << CELL_BITS) | 7, 0, 0, 0, 0]);
    expect(found.phase).toBeUndefined();
    expect(read(11, 17)).toEqual([(2 << CELL_BITS) | 0, (1 << CELL_BITS) | 7, 0, 0, 0, 0]);
    expect(found.phase).toBe("l");
    expect(read(6, 6)).toBe(false);
  });

  it("agrees with the full reader on characters and pieces of formulas in any order", () => {
    let agreed = 0;
    const agree = (text: string): void => {
      const quick = scanned(text);
      if (quick === "left") return;
      agreed += 1;
      const reading = readFormula(text);
      const full = evaluate(reading.nodes, text);
      const atoms = full.elementIndices.map((index, at) => `${symbolAt(index)}${full.numerators[at]}`).sort();
      const below = full.denominator === 1 ? "" : ` /${full.denominator}`;
      const sign = full.charge === 0 ? "" : ` ${full.charge > 0 ? "+" : ""}${full.charge}`;
      const phase = reading.phase === undefined ? "" : ` (${reading.phase})`;
      expect(quick, text).toBe(atoms.join(" ") + below + sign + phase);
    };
    const soup = fc.string({
      unit: fc.constantFrom(..."HNaClOSCu0123459.·*()[]{}+-^ sgaq₂₀²⁺⁻₁"),
      minLength: 1,
      maxLength: 12,
    });
    fc.assert(fc.property(soup, agree), { numRuns: 6000, seed: 20261128 });
    const pieces =
      "Fe O Cl Si (OH) (SO4) H2O . . . 0 1 2 3 10 25 05 0.5 · * ] [ ₂ ₀ ² ^2- + - ⁺ (aq) (s) / ½ n D".split(" ");
    const mixed = fc.array(fc.constantFrom(...pieces), { minLength: 1, maxLength: 9 }).map((list) => list.join(""));
    fc.assert(fc.property(mixed, agree), { numRuns: 6000, seed: 20261128 });
    expect(agreed).toBeGreaterThan(300);
  });
});

describe("the order of the elements", () => {
  it("is that in which they are first written", () => {
    const order = (text: string) => parseFormula(text).elementIndices.map(symbolAt).join(" ");
    expect(order("NaHCO3")).toBe("Na H C O");
    expect(order("NaAlSiPSClKO")).toBe("Na Al Si P S Cl K O");
  });
});

// The full reader, step by step: electrons, spaces, multipliers, subscripts of every spelling, the values of n and x, and the
// bounds of each. Counts are added up by hand; positions are counted from 0 in the text as given.
import { FormulaError, parseFormula } from "preparative";
import { describe, expect, it } from "vitest";
import { attempt } from "../../src/foundation/error";

type Options = Parameters<typeof parseFormula>[1];

const atoms = (text: string, options?: Options): string => {
  const { composition, charge, phase } = parseFormula(text, options);
  const counts = composition.map(({ symbol, count }) => `${symbol}${count.toFraction()}`).join(" ");
  return `${counts}${charge === 0 ? "" : ` ${charge > 0 ? "+" : ""}${charge}`}${phase === undefined ? "" : ` (${phase})`}`.trim();
};

/** Code without its area, position, and hint. */
const refused = (text: string, options?: Options): readonly [string, number | undefined, string | undefined] => {
  const outcome = attempt(() => parseFormula(text, options));
  if (outcome.ok) throw new Error(`${text} was read as ${outcome.value}`);
  expect(outcome.error).toBeInstanceOf(FormulaError);
  return [outcome.error.code.slice("formula.".length), outcome.error.position, outcome.error.hint];
};

describe("the electron", () => {
  it.each([
    ["e-", "-1"],
    ["e−", "-1"],
    ["e⁻", "-1"],
    ["e^-", "-1"],
    ["e^−", "-1"],
    ["e^⁻", "-1"],
    ["e{-}", "-1"],
    ["e{−}", "-1"],
    ["e^{-}", "-1"],
    ["e^{−}", "-1"],
    ["2e-", "-2"],
    ["2 e^{-}", "-2"],
    ["(e-)", "-1"],
    ["3(e-)2", "-6"],
    ["e-(aq)", "-1 (aq)"],
    ["H2O·e-", "H2 O1 -1"],
    ["2e-·H2O", "H2 O1 -2"],
    ["Na+·e-", "Na1"],
  ])("%s is %s", (text, expected) => {
    expect(atoms(text)).toBe(expected);
  });

  it.each([
    ["e-H", "unexpected-character", 2],
    ["e-2", "unexpected-character", 2],
    ["e--", "unexpected-character", 2],
    ["e- H", "unexpected-character", 2],
    ["e^2-", "unexpected-character", 1],
    ["e^", "unexpected-character", 1],
    ["e^{2-}", "unexpected-character", 1],
    ["He-e-", "unknown-symbol", 3],
    ["e", "unknown-symbol", 0],
    ["e+", "unknown-symbol", 0],
    ["e2-", "unknown-symbol", 0],
    ["e{+}", "unknown-symbol", 0],
  ])("%s is refused: %s at %d", (text, code, position) => {
    expect(refused(text).slice(0, 2)).toEqual([code, position]);
  });

  // what is taken away in `Zn - 2 e-` is given off: it stands on the other side of an equation
  it.each([
    ["Zn -e-", 2],
    ["Zn - e-", 2],
    ["Zn - 2e-", 2],
    ["Zn - 2 e-", 2],
    ["Zn −2e−", 2],
    ["Zn – 2 e–", 2],
    ["Zn - 12 e-", 2],
    ["Zn - 123 e-", 2],
    ["Zn  -2e", 2],
    ["Zn -  e-", 2],
    ["Na2SO4 - 2e-", 6],
    ["Zn -\u00a02\u00a0e-", 2],
  ])("%s is something taken away", (text, position) => {
    const [code, at, hint] = refused(text);
    expect([code, at]).toEqual(["unexpected-space", position]);
    expect(hint).toContain("Zn -> Zn^2+ + 2 e-");
  });

  // where the sign can be a charge, it is the next space that has no meaning
  it.each([
    ["Zn H", 2],
    ["Zn H-e", 2],
    ["Zn -   e-", 4],
    ["Zn - 1234 e-", 4],
    ["Zn + 2e-", 4],
    ["Zn - H", 4],
    ["Zn - 2 H", 4],
    ["Zn - xe", 4],
  ])("%s is a space inside a formula, at %d", (text, position) => {
    const [code, at, hint] = refused(text);
    expect([code, at]).toEqual(["unexpected-space", position]);
    expect(hint).toContain("remove the space");
  });
});

describe("a charge after a space", () => {
  it.each([
    ["Fe 3+", "Fe1 +3"],
    ["Fe +3", "Fe1 +3"],
    ["Fe +", "Fe1 +1"],
    ["Cl -", "Cl1 -1"],
    ["SO4 2−", "O4 S1 -2"],
    ["SO4 2–", "O4 S1 -2"],
    ["SO4 2⁻", "O4 S1 -2"],
    ["Fe 3⁺", "Fe1 +3"],
    ["Fe  12+", "Fe1 +12"],
    ["Fe 9999+", "Fe1 +9999"],
    ["(Fe 3+)2", "Fe2 +6"],
    ["Fe 2+·H2O", "Fe1 H2 O1 +2"],
    ["Fe 2+(aq)", "Fe1 +2 (aq)"],
  ])("%s is %s", (text, expected) => {
    expect(atoms(text)).toBe(expected);
  });

  it.each([
    ["Fe 2+3", "unexpected-space", 2],
    ["Fe 2+Cl", "unexpected-space", 2],
    ["Fe 02+", "leading-zero", 3],
    ["Fe 10000+", "count-too-large", 2],
    ["Fe 123456+", "unexpected-space", 2],
    ["Fe 3", "unexpected-space", 2],
    ["Fe^2+ 3+", "misplaced-charge", 5],
  ])("%s is refused: %s at %d", (text, code, position) => {
    expect(refused(text).slice(0, 2)).toEqual([code, position]);
  });
});

describe("a letter x for the multiplication sign", () => {
  it.each([
    "Na2CO3x10H2O",
    "Na2CO3 x 10 H2O",
    "Na2CO3 X 10 H2O",
    "Na2CO3 x10H2O",
    "Na2CO3 x    10H2O",
    "Na2CO3 X10H2O",
  ])("%s is the decahydrate", (text) => {
    expect(atoms(text)).toBe("C1 H20 Na2 O13");
  });

  it.each([
    ["Na2CO3X10H2O", "unknown-symbol", 6],
    ["Na2CO3 x     10H2O", "unexpected-space", 6],
    ["Na2CO3 xH2O", "unexpected-space", 6],
    ["x10H2O", "unknown-symbol", 0],
  ])("%s is refused: %s at %d", (text, code, position) => {
    expect(refused(text).slice(0, 2)).toEqual([code, position]);
  });
});

describe("a multiplier", () => {
  it.each([
    ["CaSO4·(1/2)H2O", "Ca1 H1 O9/2 S1"],
    ["CaSO4·(½)H2O", "Ca1 H1 O9/2 S1"],
    ["CaSO4·(0.5)H2O", "Ca1 H1 O9/2 S1"],
    ["CaSO4·(2)H2O", "Ca1 H4 O6 S1"],
    ["CaSO4·(1.5/2)H2O", "Ca1 H3/2 O19/4 S1"],
    ["CaSO4·.5H2O", "Ca1 H1 O9/2 S1"],
    ["CaSO4·.5 H2O", "Ca1 H1 O9/2 S1"],
    ["CaSO4·(½) (H2O)", "Ca1 H1 O9/2 S1"],
    ["CaSO4·(⅔)[H2O]", "Ca1 H4/3 O14/3 S1"],
    ["CaSO4·¾H2O", "Ca1 H3/2 O19/4 S1"],
    ["CaSO4·1¾H2O", "Ca1 H7/2 O23/4 S1"],
    ["CaSO4·7/4H2O", "Ca1 H7/2 O23/4 S1"],
    ["CaSO4·2.25H2O", "Ca1 H9/2 O25/4 S1"],
    ["LiNi1/3Mn1/3Co1/3O2", "Co1/3 Li1 Mn1/3 Ni1/3 O2"],
    ["Fe1½O2", "Fe3/2 O2"],
    ["Fe½O", "Fe1/2 O1"],
    ["999999999999H", "H999999999999"],
    ["1/999999999999H", "H1/999999999999"],
  ])("%s is %s", (text, expected) => {
    expect(atoms(text)).toBe(expected);
  });

  it.each([
    ["CaSO4·(0)H2O", "zero-count", 6],
    ["CaSO4·(0/2)H2O", "zero-count", 6],
    ["CaSO4·(1/0)H2O", "count-too-large", 6],
    ["CaSO4·.0H2O", "zero-count", 6],
    ["CaSO4·1/0H2O", "zero-count", 8],
    ["CaSO4·0H2O", "zero-count", 6],
    ["CaSO4·02H2O", "leading-zero", 6],
    ["CaSO4·00.5H2O", "leading-zero", 6],
    ["1234567890123H", "count-too-large", 0],
    ["1/1234567890123H", "count-too-large", 2],
    ["0.1234567890123H", "count-too-large", 0],
    ["CaSO4·½", "misplaced-number", 6],
    ["2", "misplaced-number", 0],
  ])("%s is refused: %s at %d", (text, code, position) => {
    expect(refused(text).slice(0, 2)).toEqual([code, position]);
  });
});

describe("a subscript", () => {
  it.each([
    ["H_2O", "H2 O1"],
    ["C_{12}H_{22}O_{11}", "C12 H22 O11"],
    ["Fe_{0.95}O", "Fe19/20 O1"],
    ["Fe_{8/3}O_4", "Fe8/3 O4"],
    ["(OH)_2", "H2 O2"],
    ["[Cu]_{2}O", "Cu2 O1"],
    ["Fe₀.₉₅O", "Fe19/20 O1"],
    ["Fe₁₀.₂₅O", "Fe41/4 O1"],
    ["C₉₉₉₉₉₉₉₉₉₉₉₉", "C999999999999"],
    ["C_{999999999999}", "C999999999999"],
    // decimals around mean that the full stop of O2.5F is one too (rule 9 of dots.ts)
    ["Ca_{0.5}O2.5SiO3", "Ca1/2 O11/2 Si1"],
    ["O2₂", "refused"],
  ])("%s is %s", (text, expected) => {
    if (expected === "refused") expect(refused(text)[0]).toBe("misplaced-number");
    else expect(atoms(text)).toBe(expected);
  });

  it.each([
    ["_2", "misplaced-number", 0],
    ["H_", "misplaced-number", 1],
    ["H_{}", "misplaced-number", 1],
    ["H_a", "misplaced-number", 1],
    ["H_0", "zero-count", 1],
    ["H_{0}", "zero-count", 1],
    ["H_{1/0}", "count-too-large", 1],
    ["H_{1234567890123}", "count-too-large", 1],
    ["H₀", "zero-count", 1],
    ["H₀₂", "leading-zero", 1],
    ["H₁₂₃₄₅₆₇₈₉₀₁₂₃", "count-too-large", 1],
    ["H00", "leading-zero", 1],
    ["H1234567890123", "count-too-large", 1],
    ["H2/0", "zero-count", 3],
  ])("%s is refused: %s at %d", (text, code, position) => {
    expect(refused(text).slice(0, 2)).toEqual([code, position]);
  });

  it.each([
    ["[Fe]4-", "Fe1 -4"],
    ["[Fe]1234-", "Fe1 -1234"],
    ["[Fe]4−", "Fe1 -4"],
    ["[Fe]4+", "Fe1 +4"],
    ["[Fe]4-2", "Fe4 -2"],
    ["(Fe)4-", "Fe4 -1"],
  ])("digits after a square bracket and before a sign are the charge: %s is %s", (text, expected) => {
    expect(atoms(text)).toBe(expected);
  });

  it.each([
    ["[Fe]12345-", "count-too-large", 4],
    ["[Fe]04-", "leading-zero", 4],
  ])("%s is refused: %s at %d", (text, code, position) => {
    expect(refused(text).slice(0, 2)).toEqual([code, position]);
  });
});

describe("the numbers n and x", () => {
  it.each<[string, Options, string]>([
    ["Fe1-xO", { x: "0.05" }, "Fe19/20 O1"],
    ["Fe1−xO", { x: "0.05" }, "Fe19/20 O1"],
    ["Fe1–xO", { x: "0.05" }, "Fe19/20 O1"],
    ["UO2+x", { x: "0.25" }, "O9/4 U1"],
    ["UO2+x(s)", { x: "0.25" }, "O9/4 U1 (s)"],
    ["YBa2Cu3O7-x", { x: "1/2" }, "Ba2 Cu3 O13/2 Y1"],
    ["Fe1-n[OH]", { n: "0.5" }, "Fe1/2 H1 O1"],
    ["Fe1-x{OH}", { x: "0.5" }, "Fe1/2 H1 O1"],
    ["Fe1-x(OH)", { x: "0.5" }, "Fe1/2 H1 O1"],
    ["(Fe1-x)2", { x: "0.5" }, "Fe1"],
    ["Fe_{1-x}O", { x: "0.05" }, "Fe19/20 O1"],
    ["Fe_{1.5-x}O", { x: "0.5" }, "Fe1 O1"],
    ["Fe_{2+x}O", { x: "0.5" }, "Fe5/2 O1"],
    ["Fe_{x}O", { x: 2 }, "Fe2 O1"],
    ["Fe_{n}O", { n: 3 }, "Fe3 O1"],
    ["Nax", { x: 2 }, "Na2"],
    ["CunS", { n: 2 }, "Cu2 S1"],
    ["CuSO4·n(H2O)", { n: 2 }, "Cu1 H4 O6 S1"],
    ["CuSO4·x[H2O]", { x: 2 }, "Cu1 H4 O6 S1"],
    ["CuSO4·n H2O", { n: " 2 " }, "Cu1 H4 O6 S1"],
  ])("%s with %j is %s", (text, options, expected) => {
    expect(atoms(text, options)).toBe(expected);
  });

  it.each<[string, Options, string, number, object]>([
    ["Fe1-xO", {}, "unknown-number", 4, { variable: "x" }],
    ["Fe1-yO", {}, "unknown-number", 4, { variable: "y" }],
    ["Fe1-zO", {}, "unknown-number", 4, { variable: "z" }],
    ["Fe1-δO", {}, "unknown-number", 4, { variable: "δ" }],
    ["Fe1-xO", { x: 1 }, "unknown-number", 4, { variable: "x" }],
    ["Fe1-xO", { x: 2 }, "unknown-number", 4, { variable: "x" }],
    ["CuSO4·nH2O", { n: 0 }, "unknown-number", 6, { variable: "n" }],
    ["CuSO4·nH2O", { n: "-1" }, "unknown-number", 6, { variable: "n" }],
    ["CuSO4·nH2O", { x: 1 }, "unknown-number", 6, { variable: "n" }],
    ["CuSO4·nH2O", { n: "1e3" }, "unknown-number", 6, { variable: "n" }],
    ["CuSO4·nH2O", { n: "1234567890123" }, "unknown-number", 6, { variable: "n" }],
    ["CuSO4·nH2O", { n: "1/0" }, "unknown-number", 6, { variable: "n" }],
  ])("%s with %j is refused: %s at %d", (text, options, code, position, details) => {
    const outcome = attempt(() => parseFormula(text, options));
    expect(outcome).toMatchObject({ ok: false, error: { code: `formula.${code}`, position, details } });
  });
});

describe("a comma", () => {
  it.each([
    ["CuSO4,5H2O", "decimal-comma", 5, "write an adduct dot: CuSO4·5H2O"],
    ["CuSO4,10H2O", "decimal-comma", 5, "write an adduct dot: CuSO4·10H2O"],
    ["Fe0,95O", "decimal-comma", 3, "write a decimal point"],
    ["NaCl, 2H2O", "unexpected-character", 4, "write an adduct dot: NaCl·2H2O"],
    ["NaCl,H₂O", "unexpected-character", 4, "write an adduct dot: NaCl·H₂O"],
    ["NaCl,", "unexpected-character", 4, "one formula at a time, and nothing after it"],
    ["(Mg,Fe)2SiO4", "unexpected-character", 3, "a shared site needs its shares: (Mg0.9Fe0.1)2SiO4"],
    ["0,5H2O", "decimal-comma", 1, "write a decimal point"],
  ])("%s is refused: %s at %d, %s", (text, code, position, hint) => {
    expect(refused(text)).toEqual([code, position, hint]);
  });
});

describe("brackets and dots", () => {
  it.each([
    ["Cu2[(OH)2|CO3]", "C1 H2 Cu2 O5"],
    ["[PCl4]+[PCl6]-", "Cl10 P2"],
    ["[Fe(H2O)6·2H2O]Cl3", "Cl3 Fe1 H16 O8"],
    ["Fe·(2H2O)", "Fe1 H4 O2"],
    ["[18O2]3", "18O6"],
    ["[¹⁸O₂]", "18O2"],
    ["[13 CH4]", "C13 H52"],
  ])("%s is %s", (text, expected) => {
    expect(atoms(text)).toBe(expected);
  });

  it.each([
    ["|Na", "unexpected-character", 0],
    ["Na|Cl", "unexpected-character", 2],
    ["(Na|Cl)", "unexpected-character", 3],
    ["[|Na]", "unexpected-character", 1],
    ["[Na|", "unexpected-character", 3],
    ["[PCl4]+(PCl6)-", "misplaced-charge", 6],
    ["(PCl4)+[PCl6]-", "misplaced-charge", 6],
    ["[13CH4]", "ambiguous-label", 1],
    ["[13C0]", "zero-count", 4],
    ["[13Qq]", "unknown-symbol", 3],
    ["¹³D", "ambiguous-label", 0],
    ["¹³(C)", "misplaced-charge", 0],
    ["[0H]", "impossible-mass-number", 1],
    ["[7H]", "read", 0],
    ["[8H]", "impossible-mass-number", 1],
    ["[5C]", "impossible-mass-number", 1],
    ["[6C]", "read", 0],
    ["[22C]", "read", 0],
    ["[23C]", "impossible-mass-number", 1],
    ["NaCl·", "empty-part", 4],
    ["·NaCl", "empty-part", 0],
    ["α-Al2O3", "unexpected-character", 0],
  ])("%s is %s at %d", (text, code, position) => {
    if (code === "read") expect(parseFormula(text).size).toBe(1);
    else expect(refused(text).slice(0, 2)).toEqual([code, position]);
  });
});

describe("what the full reader settles by what stands around", () => {
  // rules 5 and 6 of dots.ts, for heavy water, which the quick reader leaves: 0 and 1 before the stop make a decimal
  it.each([
    ["Cu1.75D2O", "Cu7/4 D2 O1"],
    ["Cu0.5D2O", "Cu1/2 D2 O1"],
    ["CuCl2.5D2O", "Cl2 Cu1 D10 O5"],
    ["CuCl2.10D2O", "Cl2 Cu1 D20 O10"],
    // no oxidation number: nothing, or a bracket, stands before it
    ["(OH)(II)", "H1 I2 O1"],
    ["(II)", "I2"],
  ])("%s is %s", (text, expected) => {
    expect(atoms(text)).toBe(expected);
  });

  it.each(["e", "2e", "12e"])("%s is advised to be written e-", (text) => {
    expect(refused(text)[2]).toBe("the electron is written e-");
  });

  it.each(["Ne2e", "2eH", "xe", "2xe"])("%s is not taken for an electron", (text) => {
    expect(refused(text)[2] ?? "").not.toContain("the electron is written");
  });

  it.each([
    [null, "a formula is text, not null"],
    [7, "a formula is text, not number"],
    [undefined, "a formula is text, not undefined"],
  ])("%s is no text", (value, problem) => {
    expect(attempt(() => parseFormula(value as never))).toMatchObject({ ok: false, error: { problem } });
  });

  it.each([["Fe(3+]"], ["Fe[3+)"], ["Fe{3+)"]])("%s is not a charge in brackets", (text) => {
    expect(attempt(() => parseFormula(text)).ok).toBe(false);
  });
});

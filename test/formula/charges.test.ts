// Charges and labels at the edges of what the reader takes: two readings of digits before a sign, labels before what is no
// element, and the spellings of a raised charge. Counts and positions by hand; the rules stand at the head of read.ts.
import { parseFormula } from "preparative";
import { describe, expect, it } from "vitest";
import { attempt } from "../../src/foundation/error";

type Options = Parameters<typeof parseFormula>[1];

const atoms = (text: string, options?: Options): string => {
  const { composition, charge } = parseFormula(text, options);
  const counts = composition.map(({ symbol, count }) => `${symbol}${count.toFraction()}`).join(" ");
  return `${counts} ${charge > 0 ? "+" : ""}${charge}`;
};

const refusal = (text: string, options?: Options) => {
  const outcome = attempt(() => parseFormula(text, options));
  if (outcome.ok) throw new Error(`${text} was read as ${outcome.value}`);
  return outcome.error;
};

describe("two digits before a bare sign", () => {
  // the anions are those of the textbooks: hexafluorophosphate's kin, tetraiodomercurate, thiomolybdate, perrhenate ...
  it.each([
    ["SO42-", 4, "SO4^2-", "SO42^-"],
    ["SiF62-", 5, "SiF6^2-", "SiF62^-"],
    ["PtCl62-", 6, "PtCl6^2-", "PtCl62^-"],
    ["OsBr62-", 6, "OsBr6^2-", "OsBr62^-"],
    ["HgI42-", 5, "HgI4^2-", "HgI42^-"],
    ["MoS42-", 5, "MoS4^2-", "MoS42^-"],
    ["FeN46-", 5, "FeN4^6-", "FeN46^-"],
    ["SO22-", 4, "SO2^2-", "SO22^-"],
    ["SO26-", 4, "SO2^6-", "SO26^-"],
    ["Fe(CN)63-", 8, "Fe(CN)6^3-", "Fe(CN)63^-"],
    ["Co(NH3)63+", 9, "Co(NH3)6^3+", "Co(NH3)63^+"],
  ])("%s is refused at %d: %s, or %s", (text, position, one, other) => {
    expect(refusal(text)).toMatchObject({
      code: "formula.ambiguous-charge",
      position,
      hint: `write ${one}, or ${other}`,
    });
  });

  it.each([
    ["S22-", "S22 -1"],
    ["SO13-", "O13 S1 -1"],
    ["SO19-", "O19 S1 -1"],
    ["SO20-", "O20 S1 -1"],
    ["SO21-", "O21 S1 -1"],
    ["SO27-", "O27 S1 -1"],
    ["C10H22+", "C10 H22 +1"],
    ["C60H2N24+2", "C60 H2 N24 +2"],
    ["FeO5.75-", "Fe1 O23/4 -1"],
    // marked as a subscript, the digits are no charge
    ["SO₄₂-", "O42 S1 -1"],
    ["SO_{42}-", "O42 S1 -1"],
    ["SO42--", "O42 S1 -2"],
  ])("%s is %s", (text, expected) => {
    expect(atoms(text)).toBe(expected);
  });

  it("show the last sixty characters before the sign in their advice", () => {
    // 70 carbon atoms, SO42 and the sign at 74: from 74 - 60 = 14 on, 56 carbon atoms
    const { position, hint } = refusal(`${"C".repeat(70)}SO42-`);
    const front = "C".repeat(56);
    expect([position, hint]).toEqual([74, `write ${front}SO4^2-, or ${front}SO42^-`]);
  });
});

describe("digits before a sign taken for the charge", () => {
  const asked: Options = { digitsBeforeSign: "charge" };

  it.each([
    ["Hg2+", "Hg1 +2"],
    ["Fe1.5+", "Fe3/2 +1"],
    ["Fe^{II}+", "Fe1 +1"],
    ["(Fe)3+", "Fe3 +1"],
    ["(Fe3+)", "Fe3 +1"],
    ["NO3-", "N1 O3 -1"],
    ["Fe3++", "Fe3 +2"],
    ["Fe3+2", "Fe3 +2"],
  ])("%s is %s", (text, expected) => {
    expect(atoms(text, asked)).toBe(expected);
  });
});

describe("a raised charge", () => {
  it.each([
    ["SO4^(2-)", "O4 S1 -2"],
    ["SO4^(-2)", "O4 S1 -2"],
    ["SO4^(−2)", "O4 S1 -2"],
    ["SO4^(2–)", "O4 S1 -2"],
    ["Fe^(+)", "Fe1 +1"],
    ["Fe^(12+)", "Fe1 +12"],
    ["Fe^(+12)", "Fe1 +12"],
    ["Fe^{12+}", "Fe1 +12"],
    ["Fe^{+12}", "Fe1 +12"],
    ["Fe^+12", "Fe1 +12"],
    ["Fe^{+}", "Fe1 +1"],
    ["Fe^++", "Fe1 +2"],
    ["Fe⁺⁺", "Fe1 +2"],
    ["Fe⁺²", "Fe1 +2"],
    ["Fe⁺¹²", "Fe1 +12"],
    ["Fe¹⁰⁺", "Fe1 +10"],
    ["Fe²⁰⁻", "Fe1 -20"],
    ["Fe¹²+", "Fe1 +12"],
    ["SO4²−", "O4 S1 -2"],
    ["Na^+S^(2-)", "Na1 S1 -1"],
    ["Na^+S^{2-}", "Na1 S1 -1"],
    ["Fe(2+)", "Fe1 +2"],
    ["Fe(+2)", "Fe1 +2"],
    ["SO4{2-}", "O4 S1 -2"],
    ["SO4[2−]", "O4 S1 -2"],
    ["Fe(9999+)", "Fe1 +9999"],
    ["[Fe(CN)6]9999-", "C6 Fe1 N6 -9999"],
    ["[Fe(CN)6]4-", "C6 Fe1 N6 -4"],
  ])("%s is %s, with options and without", (text, expected) => {
    expect(atoms(text)).toBe(expected);
    // the quick reader is asked only without options
    expect(atoms(text, {})).toBe(expected);
  });

  it.each([
    ["Fe(2+3)", "misplaced-charge", 4],
    ["Fe(0+)", "leading-zero", 3],
    ["Fe^02+", "leading-zero", 2],
    ["Fe^10000+", "count-too-large", 2],
    ["Fe+10000", "count-too-large", 3],
    ["Fe+12345", "count-too-large", 3],
    ["[Fe]12345-", "count-too-large", 4],
    ["Fe^2+3", "misplaced-charge", 2],
    ["Fe^{2+3}", "misplaced-charge", 2],
    ["[PCl4]+[2-]", "misplaced-charge", 7],
    ["Na^+^+", "misplaced-charge", 4],
    ["Na+Cl", "misplaced-charge", 2],
    ["(+)Na", "misplaced-charge", 1],
    ["SO4^{}", "misplaced-charge", 3],
  ])("%s is refused: %s at %d", (text, code, position) => {
    expect(refusal(text)).toMatchObject({ code: `formula.${code}`, position });
    expect(refusal(text, {})).toMatchObject({ code: `formula.${code}`, position });
  });

  it("says how large it may be", () => {
    expect(refusal("Fe^10000+").details).toEqual({ limit: 9999 });
  });

  it.each([
    ["Na-Cl", "bonds are left out"],
    ["Na+Cl", "put the ion in brackets"],
    ["Na2-H2O", "write an adduct dot: CuSO4·5H2O"],
    ["Na+H2O", "write an adduct dot: CuSO4·5H2O"],
  ])("%s goes on after its charge and is advised: %s", (text, advice) => {
    expect(refusal(text)).toMatchObject({ code: "formula.misplaced-charge", hint: expect.stringContaining(advice) });
  });

  it("is no bond where it is positive", () => {
    expect(refusal("Na+Cl").hint).not.toContain("bonds");
  });
});

describe("digits behind a marked subscript", () => {
  it.each([
    ["SO₄2-", "O4 S1 -2"],
    ["SO_42-", "O4 S1 -2"],
    ["SO_{4}2-", "O4 S1 -2"],
    ["(SO₄2-)2", "O8 S2 -4"],
    ["Fe(CN)₆4-", "C6 Fe1 N6 -4"],
    ["Fe₂12+", "Fe2 +12"],
    ["SO₄2- (aq)", "O4 S1 -2"],
  ])("are the charge: %s is %s", (text, expected) => {
    expect(atoms(text)).toBe(expected);
  });

  it.each([
    ["SO₄2-Na", "misplaced-number", 3],
    ["SO₄2", "misplaced-number", 3],
    ["SO₄02-", "leading-zero", 3],
  ])("%s is refused: %s at %d", (text, code, position) => {
    expect(refusal(text)).toMatchObject({ code: `formula.${code}`, position });
  });
});

describe("a label", () => {
  it.each([
    ["[Fe[18O2]4]", "Fe1 18O8 0"],
    ["[13C12]", "13C12 0"],
    ["[¹³C₁₂]", "13C12 0"],
    ["[¹³C₁₀]", "13C10 0"],
    ["[13C12]2", "13C24 0"],
    ["[235U]", "235U1 0"],
    ["(13CO)2", "C26 O26 0"],
    ["(13C)", "C13 0"],
    ["^{235}_{92}UO2", "O2 235U1 0"],
    ["²³⁵₉₂UO2", "O2 235U1 0"],
    ["^235_92UO2", "O2 235U1 0"],
    ["^{14}_{6}C", "14C1 0"],
    ["^1_1H", "1H1 0"],
    ["¹H", "1H1 0"],
    ["²H", "D1 0"],
  ])("%s is %s", (text, expected) => {
    expect(atoms(text)).toBe(expected);
  });

  it.each([
    ["^{13} CO2", "misplaced-charge", 0],
    ["¹³ CO2", "misplaced-charge", 0],
    ["C^{13}(O)", "misplaced-charge", 1],
    ["^{13}^{14}C", "misplaced-charge", 0],
    ["^{13}·C", "misplaced-charge", 0],
    ["Na+¹³C", "misplaced-charge", 3],
    ["^{235}_{91}UO2", "wrong-atomic-number", 11],
    ["²³⁵₉₁UO2", "wrong-atomic-number", 5],
    ["^{235}_{93}UO2", "wrong-atomic-number", 11],
    ["^{13}_{6}Qq", "unknown-symbol", 9],
  ])("%s is refused: %s at %d", (text, code, position) => {
    expect(refusal(text)).toMatchObject({ code: `formula.${code}`, position });
  });

  // Z to 3 Z + 4 neutrons and protons: hydrogen 1 to 7, carbon 6 to 22, uranium 92 to 280
  it.each([
    ["[8H]", "a mass number of H lies between 1 and 7"],
    ["[23C]", "a mass number of C lies between 6 and 22"],
    ["[91U]", "a mass number of U lies between 92 and 280"],
    ["[281U]", "a mass number of U lies between 92 and 280"],
  ])("%s is told its bounds: %s", (text, hint) => {
    expect(refusal(text)).toMatchObject({ code: "formula.impossible-mass-number", hint });
  });

  it.each([
    ["^{235}_{91}U", "write ^{235}U; the atomic number may be left out"],
    ["C-14", "write [14C] for the nuclide"],
    ["U-235", "write [235U] for the nuclide"],
  ])("%s is advised: %s", (text, hint) => {
    expect(refusal(text).hint).toBe(hint);
  });

  it.each([
    ["C-4", "C1 -4"],
    ["C-9", "C1 -9"],
    ["C+14", "C1 +14"],
    ["C2-14", "C2 -14"],
    ["CO-14", "C1 O1 -14"],
    ["(C-14)", "C1 -14"],
    ["D-14", "D1 -14"],
  ])("%s is no name of a nuclide: %s", (text, expected) => {
    expect(atoms(text)).toBe(expected);
  });

  it("is the name of one from ten on", () => {
    expect(refusal("B-10")).toMatchObject({ code: "formula.ambiguous-charge", position: 1 });
    // a count with a decimal point has no figure to give to a charge
    expect(parseFormula("(SO4)25.0-").charge).toBe(-1);
    expect(refusal("(SO4)25-")).toMatchObject({ code: "formula.ambiguous-charge" });
  });
});

describe("an oxidation number", () => {
  it.each(["I", "II", "III", "IV", "V", "VI", "VII", "VIII", "IX"])("(%s) after an element is refused", (roman) => {
    expect(refusal(`Fe(${roman})`)).toMatchObject({
      code: "formula.roman-numeral",
      position: 2,
      hint: `write Fe^{${roman}} for the oxidation number; for the atoms leave the brackets out`,
    });
  });

  it.each([
    ["Fe^{III}2O3", "Fe2 O3 0", "Fe^{III}2O3"],
    ["Fe^III2O3", "Fe2 O3 0", "Fe^{III}2O3"],
    ["Mn^{VII}O4^-", "Mn1 O4 -1", "Mn^{VII}O4-"],
    ["C^{-IV}H4", "C1 H4 0", "C^{-IV}H4"],
    ["C^−IVH4", "C1 H4 0", "C^{-IV}H4"],
    ["Os^{VIII}O4", "O4 Os1 0", "Os^{VIII}O4"],
    ["Fe(I)2", "Fe1 I2 0", "Fe(I)2"],
    ["Fe(I)₂", "Fe1 I2 0", "Fe(I)₂"],
  ])("%s is %s, written %s", (text, expected, written) => {
    expect(atoms(text)).toBe(expected);
    expect(parseFormula(text).toString()).toBe(written.replace("₂", "2"));
  });

  it.each(["Fe^{III", "Fe^{IIII}", "Fe^{X}", "Fe^Ia"])("%s is none, and refused", (text) => {
    expect(attempt(() => parseFormula(text)).ok).toBe(false);
  });
});

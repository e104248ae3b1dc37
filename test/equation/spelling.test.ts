// Equations as worksheets, LaTeX sources and the web write them. What each means is general chemistry (memory).
import { describe, expect, it } from "vitest";
import { balance, parseEquation, tryBalance } from "../../src/equation";

describe("one equation, written many ways", () => {
  it.each([
    "H2 + O2 \\rightarrow H2O",
    "$2H_2 + O_2 \\to 2H_2O$",
    "\\ce{2H2 + O2 -> 2H2O}",
    "\\mathrm{H_2} + \\mathrm{O_2} \\longrightarrow \\mathrm{H_2O}",
    "H_2 + O_2 \\xrightarrow{\\Delta} H_2O",
    "H<sub>2</sub> + O<sub>2</sub> &rarr; H<sub>2</sub>O",
    "H<sub>2</sub> + O<sub>2</sub> -&gt; H<sub>2</sub>O",
    "2 * H2 + O2 -> 2 * H2O",
    "2·H2 + O2 → 2·H2O",
    "2×H2 + O2 -> 2×H2O",
    "(2) H2 + O2 -> (2) H2O",
    "(2)H2 + O2 -> (2)H2O",
    "H2 + (1/2) O2 -> H2O",
    "H2 + (½)O2 -> H2O",
    "_ H2 + _ O2 -> _ H2O",
    "___H2 + ___O2 -> ___H2O",
    "? H2 + ? O2 -> ? H2O",
    "H2 + O2 ->[heat] H2O",
    "2 H2 + O2 ->[Pt][25 °C] 2 H2O",
  ])("%s", (text) => {
    expect(balance(text).toString()).toBe("2 H2 + O2 -> 2 H2O");
  });

  it.each([
    ["HCl + NaOH ＝ NaCl + H2O", "equality"],
    ["HCl + NaOH ═ NaCl + H2O", "equality"],
    ["N_2 + 3H_2 \\rightleftharpoons 2NH_3", "equilibrium"],
    ["N2 + 3H2 &hArr; 2NH3", "equilibrium"],
  ])("%s is an %s", (text, arrow) => {
    expect(balance(text).arrow).toBe(arrow);
  });

  it("does not take a complex behind the arrow for what stands on it", () => {
    expect(balance("Ag+ + NH3 ->[Ag(NH3)2]+").toString()).toBe("Ag+ + 2 NH3 -> [Ag(NH3)2]+");
    expect(balance("AgCl + NH3 ->[Ag(NH3)2]+ + Cl-").products).toHaveLength(2);
  });

  it("reads its own HTML and LaTeX", () => {
    for (const text of [
      "Cr2O7^2- + H+ + e- -> Cr^3+ + H2O",
      "CuSO4·5H2O <=> CuSO4·H2O + H2O",
      "[Fe(CN)6]^4- + Fe^3+ -> Fe4[Fe(CN)6]3(s)",
    ]) {
      const balanced = balance(text);
      expect(balance(balanced.toHTML()).equals(balanced)).toBe(true);
      expect(balance(balanced.toLaTeX()).equals(balanced)).toBe(true);
    }
  });

  it("points into markup as it was given", () => {
    const outcome = tryBalance("H<sub>2</sub> + Qq &rarr; H<sub>2</sub>O");
    expect(!outcome.ok && outcome.error.position).toBe(16);
    expect(!outcome.ok && outcome.error.input).toContain("&rarr;");
  });
});

describe("what the given coefficients decide", () => {
  it.each([
    ["MnO4- + 5Fe2+ + 8H+ -> Mn2+ + 5Fe3+ + 4H2O", "MnO4- + 5 Fe^2+ + 8 H+ -> Mn^2+ + 5 Fe^3+ + 4 H2O"],
    ["MnO4- + 8H+ + 5e- → Mn2+ + 4H2O", "MnO4- + 8 H+ + 5 e- -> Mn^2+ + 4 H2O"],
    ["Al3+ + 3OH- -> Al(OH)3", "Al^3+ + 3 OH- -> Al(OH)3"],
  ])("digits before a sign as charges: %s", (text, expected) => {
    const balanced = balance(text);
    expect(balanced.toString()).toBe(expected);
    expect(balanced.remarks).toContain(
      "digits before a bare sign were read as charges, because the given coefficients then balance",
    );
  });

  it("but not where the literal reading balances", () => {
    expect(balance("2 Zn + Cu2+ -> Zn2+ + 2 Cu").toString()).toBe("2 Zn + Cu2+ -> Zn2+ + 2 Cu");
  });

  it("numbers stuck to adducts, each by itself", () => {
    // the first is 2CaSO4·H2O, the second two of CaSO4·2H2O
    expect(balance("2CaSO4·H2O + 3H2O -> 2CaSO4·2H2O").coefficients).toEqual([1n, 3n, 2n]);
    expect(balance("2CaSO4·2H2O -> 2CaSO4·½H2O + 3H2O").coefficients).toEqual([2n, 2n, 3n]);
  });
});

describe("labels on the arrow", () => {
  it.each([
    ["CaCO3 --heat--> CaO + CO2", "heat"],
    ["CaCO3 -heat-> CaO + CO2", "heat"],
    ["CaCO3 -- 900 °C --> CaO + CO2", "900 °C"],
    ["CaCO3 ==heat==> CaO + CO2", "heat"],
  ])("are left out, with a remark: %s", (text, label) => {
    const equation = parseEquation(text);
    expect(equation.toString()).toBe("CaCO3 -> CaO + CO2");
    expect(equation.remarks).toEqual([`"${label}" on the arrow was left out; it is not a species`]);
  });

  it("also on a double arrow, and beside charges", () => {
    expect(parseEquation("N2 + 3 H2 <--Fe--> 2 NH3").toString()).toBe("N2 + 3 H2 <=> 2 NH3");
    expect(parseEquation("Na+ + Cl- --H2O--> NaCl").toString()).toBe("Na+ + Cl- -> NaCl");
  });

  it("do not hang on many dashes", () => {
    expect(tryBalance(`H2 ${" -a".repeat(60_000)}`).ok).toBe(false);
    expect(tryBalance(`H2 ${" --".repeat(60_000)}`).ok).toBe(false);
  });

  it("but a long run of dashes is an arrow", () => {
    expect(balance("H2 + O2 ---> H2O").toString()).toBe("2 H2 + O2 -> 2 H2O");
  });
});

describe("hints", () => {
  it.each([
    ["Zn - 2e- -> Zn^2+", "on the other side"],
    ["Ag+ + e -> Ag", "the electron is written e-"],
    ["H2 + 1/2 O2 -> H2O + 286 kJ", "heat is not a species"],
    ["NaOH + NaOH -> NaOH", "NaOH on both sides"],
    ["H2 + O2 >H2O", "> is half an arrow; write ->"],
    ["H2 + O2 --- H2O", "--- is half an arrow; write ->"],
  ])("%s: %s", (text, hint) => {
    const outcome = tryBalance(text);
    expect(!outcome.ok && outcome.error.hint).toContain(hint);
  });

  it("reads the electron in braces", () => {
    expect(parseEquation("Fe{3+} + e{-} -> Fe{2+}").toString()).toBe("Fe^3+ + e- -> Fe^2+");
  });
});

// The printed forms, each by example.
import { describe, expect, it } from "vitest";
import { parseFormula } from "../../src/formula";

describe("printed forms", () => {
  it.each([
    {
      text: "CuSO4·5H2O",
      ascii: "CuSO4.5H2O",
      unicode: "CuSO₄·5H₂O",
      html: "CuSO<sub>4</sub>·5H<sub>2</sub>O",
      latex: "\\mathrm{CuSO_{4}\\cdot 5H_{2}O}",
      hill: "CuH10O9S",
    },
    {
      text: "CaSO4·0.5H2O",
      ascii: "CaSO4.0.5H2O",
      unicode: "CaSO₄·½H₂O",
      html: "CaSO<sub>4</sub>·½H<sub>2</sub>O",
      latex: "\\mathrm{CaSO_{4}\\cdot \\tfrac{1}{2}H_{2}O}",
      hill: "CaHO4.5S",
    },
    {
      text: "[Fe(CN)6]4-",
      ascii: "[Fe(CN)6]^4-",
      unicode: "[Fe(CN)₆]⁴⁻",
      html: "[Fe(CN)<sub>6</sub>]<sup>4−</sup>",
      latex: "\\mathrm{[Fe(CN)_{6}]^{4-}}",
      hill: "C6FeN6^4-",
    },
    {
      text: "NH4⁺(aq)",
      ascii: "NH4+(aq)",
      unicode: "NH₄⁺(aq)",
      html: "NH<sub>4</sub><sup>+</sup>(aq)",
      latex: "\\mathrm{NH_{4}^{+}(aq)}",
      hill: "H4N+(aq)",
    },
    {
      text: "[13C]6H12O6",
      ascii: "[13C]6H12O6",
      unicode: "¹³C₆H₁₂O₆",
      html: "<sup>13</sup>C<sub>6</sub>H<sub>12</sub>O<sub>6</sub>",
      latex: "\\mathrm{{}^{13}C_{6}H_{12}O_{6}}",
      hill: "[13C]6H12O6",
    },
    {
      text: "{[Cu(NH3)4]}SO4",
      ascii: "{[Cu(NH3)4]}SO4",
      unicode: "{[Cu(NH₃)₄]}SO₄",
      html: "{[Cu(NH<sub>3</sub>)<sub>4</sub>]}SO<sub>4</sub>",
      latex: "\\mathrm{\\{[Cu(NH_{3})_{4}]\\}SO_{4}}",
      hill: "CuH12N4O4S",
    },
    {
      text: "CdSO4·8/3H2O",
      ascii: "CdSO4.8/3H2O",
      unicode: "CdSO₄·2⅔H₂O",
      html: "CdSO<sub>4</sub>·2⅔H<sub>2</sub>O",
      latex: "\\mathrm{CdSO_{4}\\cdot \\tfrac{8}{3}H_{2}O}",
      hill: "CdH_{16/3}O_{20/3}S",
    },
    {
      text: "Pb^II2Pb^IVO4",
      ascii: "Pb^{II}2Pb^{IV}O4",
      unicode: "Pb^{II}₂Pb^{IV}O₄",
      html: "Pb<sup>II</sup><sub>2</sub>Pb<sup>IV</sup>O<sub>4</sub>",
      latex: "\\mathrm{Pb^{II}_{2}Pb^{IV}O_{4}}",
      hill: "O4Pb3",
    },
    {
      text: "Na⁺Cl⁻",
      ascii: "Na^{+}Cl-",
      unicode: "Na⁺Cl⁻",
      html: "Na<sup>+</sup>Cl<sup>−</sup>",
      latex: "\\mathrm{Na^{+}Cl^{-}}",
      hill: "ClNa",
    },
    { text: "e-", ascii: "e-", unicode: "e⁻", html: "e<sup>−</sup>", latex: "\\mathrm{e^{-}}", hill: "e-" },
  ])("$text", ({ text, ascii, unicode, html, latex, hill }) => {
    const formula = parseFormula(text);
    expect(formula.toString()).toBe(ascii);
    expect(formula.toUnicode()).toBe(unicode);
    expect(formula.toHTML()).toBe(html);
    expect(formula.toLaTeX()).toBe(latex);
    expect(formula.toHill()).toBe(hill);
    for (const printed of [ascii, unicode, html, latex]) expect(parseFormula(printed).equals(formula)).toBe(true);
    expect(parseFormula(hill).hasSameComposition(formula)).toBe(true);
  });

  it("keeps a single charge apart from a count behind a square bracket", () => {
    const formula = parseFormula("[H]₁₂+");
    expect(formula.toString()).toBe("[H]12^+");
    expect(parseFormula(formula.toString()).charge).toBe(1);
  });

  it("reads the usual ways of writing HTML and LaTeX, not only its own", () => {
    for (const text of [
      "$\\mathrm{SO_4^{2-}}$",
      "\\mathrm{SO_4}^{2-}",
      "SO_4^{2-}",
      "SO<SUB>4</SUB><SUP>2-</SUP>",
      "SO<sub>4</sub><sup>2&minus;</sup>",
    ]) {
      expect(parseFormula(text).toString(), text).toBe("SO4^2-");
    }
    expect(parseFormula("CaSO<sub>4</sub>&middot;&frac12;H<sub>2</sub>O").toString()).toBe("CaSO4.0.5H2O");
    expect(parseFormula("\\text{CuSO}_4 \\cdot 5\\,\\text{H}_2\\text{O}").toString()).toBe("CuSO4.5H2O");
  });
});

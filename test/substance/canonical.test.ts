// One spelling for each substance, whichever way it was written: what keys of maps and rows of databases are joined by.
import { canonicalFormula, identify, parseFormula, sameSubstance, substance } from "preparative";
import { describe, expect, it } from "vitest";
import { registryFormulas } from "../../src/substance/registry/registry-index";

describe("canonicalFormula", () => {
  it("is what the registry, substance and identify write, from every spelling of every listed substance", () => {
    const formulas = registryFormulas();
    expect(formulas.length).toBeGreaterThan(500);
    let compared = 0;
    for (const formula of formulas) {
      const read = parseFormula(formula);
      expect(canonicalFormula(read), formula).toBe(formula);
      expect(substance(formula).formula).toBe(formula);
      for (const spelling of [read.toString(), read.toUnicode(), read.toHill()]) {
        // a bare composition that isomers share is another question
        if (!sameSubstance(spelling, formula)) continue;
        expect(canonicalFormula(spelling), spelling).toBe(formula);
        compared += 1;
      }
    }
    expect(compared).toBeGreaterThan(2.5 * formulas.length);
    for (const text of ["CuSO4 . 5 H2O", "blue vitriol", "CuSO4*5H2O"])
      expect(canonicalFormula(identify(text).formula!)).toBe("CuSO4·5H2O");
  });

  it.each([
    ["Eu2(C2O4)3·10H2O", "Eu2(C2O4)3.10H2O", "C6H20Eu2O22"],
    ["Rb3[Fe(CN)6]", "Rb3Fe(CN)6", "[Fe(CN)6]Rb3"],
    ["[Co(NH3)6]Br3", "Co(NH3)6Br3", "Br3[Co(NH3)6]"],
    ["Li2SO4·RbCl", "RbCl·Li2SO4", "RbCl.Li2SO4"],
    ["(NH4)2Ni(SO4)2·6H2O", "NiSO4.(NH4)2SO4.6H2O", "Ni(NH4)2(SO4)2·6H2O"],
    ["SO4^2-", "O4S^2-", "[SO4]^2-"],
    ["Fe^3+", "Fe³⁺", "Fe^3+"],
  ])("writes %s where no table has it, too", (expected, ...spellings) => {
    for (const spelling of spellings) expect(canonicalFormula(spelling), spelling).toBe(expected);
  });

  it("keeps isomers apart, hydrates apart, and what nobody can tell as it was written", () => {
    for (const apart of [
      ["CO(NH2)2", "NH4OCN", "CH4N2O"],
      ["CH3CH2OH", "CH3OCH3", "C2H6O"],
      ["CuSO4", "CuSO4·H2O", "CuSO4·5H2O"],
      ["FeSO4", "Fe2(SO4)3"],
    ])
      expect(new Set(apart.map(canonicalFormula)).size, apart.join()).toBe(apart.length);
  });
});

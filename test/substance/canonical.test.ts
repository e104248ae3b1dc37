// One spelling for each substance, whichever way it was written: what keys of maps and rows of databases are joined by.
import {
  attempt,
  canonicalFormula,
  evaluateRun,
  identify,
  isQuantity,
  parseFormula,
  planPreparation,
  sameSubstance,
  substance,
} from "preparative";
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
    expect(spellings.length, "rows to test").toBeGreaterThan(0);
    for (const spelling of spellings) expect(canonicalFormula(spelling), spelling).toBe(expected);
  });

  it("joins every formula that a plan and a run write with what was put in", () => {
    const fields = new Set(["formula", "form", "species", "about", "remaining"]);
    const found = new Map<string, string>();
    const seen = new Set<object>();
    const look = (value: unknown, field: string): void => {
      if (typeof value === "string") {
        if (!fields.has(field) || !attempt(() => parseFormula(value)).ok) return;
        const key = canonicalFormula(value);
        expect(canonicalFormula(key), value).toBe(key);
        expect(sameSubstance(key, value), value).toBe(true);
        found.set(value, key);
      } else if (typeof value === "object" && value !== null && !seen.has(value) && !isQuantity(value)) {
        seen.add(value);
        for (const [name, held] of Object.entries(value)) look(held, Array.isArray(value) ? field : name);
      }
    };
    for (const form of ["ZnSO4.7H2O", "ZnSO₄·7H₂O", "ZnSO4 x 7 H2O"]) {
      const plan = planPreparation({
        equation: "ZnSO4 + Na2CO3 + H2O -> Zn5(CO3)2(OH)6 + Na2SO4 + CO2",
        product: "Zn5(CO3)2(OH)6",
        materials: [
          { name: "moss killer", form },
          { name: "washing soda", form: "Na2CO3.10H2O" },
        ],
        scale: { product: "50 g" },
      });
      expect(plan.weighings.map((one) => canonicalFormula(one.form))).toEqual(["ZnSO4·7H2O", "Na2CO3·10H2O"]);
      expect(canonicalFormula(plan.product.formula)).toBe("Zn5(OH)6(CO3)2");
      look(plan, "");
      look(evaluateRun(plan, { dried: "48 g" }), "");
    }
    expect(found.size).toBeGreaterThan(10);
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

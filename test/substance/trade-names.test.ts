// Old and trade names that stand for something else than their words say, or for several things. Meanings: common practice
// and old pharmacopoeias, from memory, unless a source stands beside the case.
import { describe, expect, it } from "vitest";
import { tryParseFormula } from "../../src/formula";
import { formulaOf, readingsOf, tryFormulaOf } from "../../src/substance";
import { REGISTRY } from "../../src/substance/data/registry";

const formulas = (name: string) => readingsOf(name).map((one) => one.formula);

describe("names that must ask", () => {
  it.each([
    ["prussiate of potash", ["K4[Fe(CN)6]·3H2O", "K3[Fe(CN)6]"]],
    ["potassium prussiate", ["K4[Fe(CN)6]·3H2O", "K3[Fe(CN)6]"]],
    ["prussiate of soda", ["Na4[Fe(CN)6]·10H2O", "Na3[Fe(CN)6]"]],
    ["chloride of lime", ["Ca(ClO)2", "CaCl2O", "CaCl2"]],
    ["sodium borate", ["Na2B4O7·10H2O", "Na2B4O7·5H2O", "Na2B4O7", "NaBO2·4H2O", "Na3BO3"]],
    ["magnesium oxychloride", ["Mg3(OH)5Cl·4H2O", "Mg2(OH)3Cl·4H2O"]],
    ["zinc oxychloride", ["Zn5(OH)8Cl2·H2O", "Zn(OH)Cl"]],
    ["persulphate of iron", ["Fe2(SO4)3", "Fe2(S2O8)3"]],
    ["mercury chloride", ["HgCl2", "Hg2Cl2"]],
    ["mercury nitrate", ["Hg(NO3)2", "Hg2(NO3)2"]],
    ["ammonium carbonate", ["NH4HCO3", "NH2COONH4", "(NH4)2CO3"]],
    ["chrome green", ["Cr2O3", "PbCrO4"]],
  ])("%s", (name, expected) => {
    expect(formulas(name)).toEqual(expected);
    const outcome = tryFormulaOf(name);
    expect(!outcome.ok && outcome.error.code).toBe("substance.ambiguous-name");
  });

  it("sodium phosphate stands for salts from acid to strongly alkaline", () => {
    expect(formulas("sodium phosphate")).toEqual(expect.arrayContaining(["Na3PO4", "Na2HPO4·12H2O", "NaH2PO4·H2O"]));
    expect(formulaOf("phosphate of soda").toString()).toBe("Na2HPO4.12H2O");
  });
});

describe("old names read as their time meant them", () => {
  it.each([
    ["yellow prussiate of potash", "K4[Fe(CN)6]·3H2O"],
    ["muriate of lime", "CaCl2"],
    ["muriate of ammonia", "NH4Cl"],
    ["sulphuret of iron", "FeS"],
    ["peroxide of iron", "Fe2O3"],
    ["peroxide of manganese", "MnO2"],
    ["bichloride of mercury", "HgCl2"],
    // Goods of the photographic trade.
    ["potassium ferric oxalate", "K3[Fe(C2O4)3]·3H2O"],
    ["ferric ammonium oxalate", "(NH4)3[Fe(C2O4)3]·3H2O"],
    ["ammonium ferric oxalate", "(NH4)3[Fe(C2O4)3]·3H2O"],
  ])("%s is %s", (name, formula) => {
    expect(formulas(name)).toContain(formula);
  });

  it("no prussiate is ever a simple cyanide", () => {
    for (const base of ["potash", "soda", "potassium", "sodium", "iron", "lime"])
      for (const name of [`prussiate of ${base}`, `${base} prussiate`])
        for (const formula of formulas(name)) expect(formula, name).toContain("[Fe(CN)6]");
  });
});

describe("names of the registry", () => {
  it("are whole words: no cut formulas, no abbreviation that means several dangerous things", () => {
    let tested = 0;
    for (const { formula, otherNames } of REGISTRY()) {
      for (const other of otherNames ?? []) {
        const name = typeof other === "string" ? other : other.name;
        for (const [open, close] of ["()", "[]"])
          expect(name.split(open!).length, `${formula}: ${name}`).toBe(name.split(close!).length);
        if (/^[A-Z][\w·.[\]()]*\d/.test(name) && !name.includes(" "))
          expect(tryParseFormula(name).ok, `${formula}: ${name}`).toBe(true);
      }
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(580);
    expect(formulas("AP")).toEqual([]);
  });
});

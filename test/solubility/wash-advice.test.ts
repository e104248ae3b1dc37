// What to wash with, by how much of the product water dissolves, and the drop tests of the trade (common practice): sulfate by
// barium chloride, halides by silver nitrate, iron(III) by thiocyanate, copper(II) by ammonia, lead and barium by sulfuric acid.
import { facts, solubilityOf, washAdvice } from "preparative";
import { describe, expect, it } from "vitest";

const RESIDUE = "10 mL boiled down on a watch glass leave no more than a faint film, less than 1 mg";

describe("the liquid", () => {
  it.each([
    // g per 100 g of water at 20 °C as the table prints them: 0.0002448, 0.202, 7.23, 31.6
    ["BaSO4", "water", 0, 0.1],
    ["CaSO4", "a little cold water", 0.1, 1],
    ["KClO3", "ice water in small portions, or its own saturated solution", 1, 10],
    ["KNO3", "50 % alcohol, or its own saturated solution", 10, 100],
  ])("for %s is %s", (product, liquid, least, most) => {
    const grams = solubilityOf(product, "20 °C").perHundredGramsWater.in("g").toNumber();
    expect(grams).toBeGreaterThan(least);
    expect(grams).toBeLessThan(most);
    expect(washAdvice({ product, washedOut: [] })).toMatchObject({ liquid, endTests: [] });
  });

  it.each([
    ["a little cold water", "0.1 g", "0.999 g"],
    ["ice water in small portions, or its own saturated solution", "1 g", "9.99 g"],
    ["50 % alcohol, or its own saturated solution", "10 g", "200 g"],
    ["water", "0.000001 g", "0.0999 g"],
  ])("is %s from %s to %s in 100 g of water", (liquid, ...figures) => {
    expect(figures.length, "rows to test").toBeGreaterThan(0);
    for (const figure of figures) {
      const own = facts({ source: "studio", solubilities: [{ formula: "KClO3", points: [["20 °C", figure]] }] });
      expect(washAdvice({ product: "KClO3", washedOut: [], facts: own }).liquid, figure).toBe(liquid);
    }
  });

  it.each([
    ["CuCl", "very dilute hydrochloric acid"],
    ["PbCl2", "a little ice water"],
    ["FeC2O4·2H2O", "hot water"],
  ])("of %s is its own: %s", (product, liquid) => {
    expect(washAdvice({ product, washedOut: ["NaNO3"] }).liquid).toBe(liquid);
  });

  it("follows the rules where there is no figure, and is careful where there is no rule either", () => {
    expect(washAdvice({ product: "Na2SnO3", washedOut: [] })).toMatchObject({
      liquid: "50 % alcohol, or its own saturated solution",
      because: "the rules call the product soluble",
      solubility: undefined,
    });
  });
});

describe("the test for the end", () => {
  const advice = (product: string, ...washedOut: string[]) => washAdvice({ product, washedOut });
  const tests = (product: string, ...washedOut: string[]) =>
    advice(product, ...washedOut).endTests.map(({ ion, test }) => `${ion}: ${test}`);

  // the tests of schools of qualitative analysis (common practice, no source); lists of tests for anions in print name those for
  // the halides, sulfate, carbonate, phosphate, nitrite, oxidising and reducing anions, and the brown ring for nitrate
  it.each([
    [["CuSO4"], ["SO4^2-: barium chloride", "Cu^2+: ammonia: no blue"]],
    [["FeCl3"], ["Cl-: silver nitrate", "Fe^3+: thiocyanate: no red"]],
    [["FeSO4"], ["SO4^2-: barium chloride", "Fe^2+: potassium ferricyanide: no blue"]],
    [["Pb(NO3)2"], ["Pb^2+: a drop of dilute sulfuric acid"]],
    [["NaNO3"], ["NO3-: brown ring"]],
    [["BaBr2"], ["Br-: silver nitrate", "Ba^2+: a drop of dilute sulfuric acid"]],
    [["KI"], ["I-: silver nitrate"]],
    [["KSCN"], ["SCN-: silver nitrate"]],
    [["CH3COONa"], [`CH3COO-: ${RESIDUE}`]],
    [["NaClO4"], [`ClO4-: ${RESIDUE}`]],
    [["MgCl2"], ["Cl-: silver nitrate"]],
    [["Na2S"], ["S^2-: lead acetate paper"]],
    [["Na2S2O3"], ["S2O3^2-: a drop of iodine solution"]],
    [["NaClO"], ["ClO-: potassium iodide with starch"]],
    [["K4[Fe(CN)6]"], ["[Fe(CN)6]^4-: iron(III) chloride"]],
    [["K2C2O4"], ["C2O4^2-: calcium chloride"]],
    [["Na2HPO4"], ["HPO4^2-: ammonium molybdate"]],
    [["MnSO4"], ["SO4^2-: barium chloride", "Mn^2+: lye with a drop of peroxide"]],
  ])("of %s: the anion first, then the metal, never an alkali", (washedOut, expected) => {
    const found = tests("BaSO4", ...washedOut);
    expect(found.length, found.join("; ")).toBe(expected.length);
    for (const [i, start] of expected.entries()) expect(found[i]!.startsWith(start), found[i]).toBe(true);
  });

  it("names an ion once that two salts bring, and no ion whose salt another ion tells", () => {
    expect(tests("BaSO4", "NaCl", "MgCl2", "Na2SO4").map((test) => test.split(":")[0])).toEqual(["Cl-", "SO4^2-"]);
  });

  it("has no brown ring beside what disturbs it: iodide gives its own colour", () => {
    expect(tests("BaSO4", "NaNO3", "KI")).toEqual([
      `NO3-: ${RESIDUE}`,
      "I-: silver nitrate with dilute nitric acid: no more cloud than the wash water gives",
    ]);
  });

  it("is no test where the product gives the ion too, from a milligram in 100 g of water: the washes are counted", () => {
    // gypsum dissolves to 0.2 g, so that barium chloride clouds its clean wash as well; barite gives 0.0002 g, which does not show
    expect(advice("CaSO4·2H2O", "Na2SO4")).toMatchObject({ endTests: [], untested: ["SO4^2-"] });
    expect(tests("BaSO4", "Na2SO4")[0]).toContain("barium chloride");
    const shows = (grams: string) => {
      const own = facts({ source: "studio", solubilities: [{ formula: "AgIO3", points: [["20 °C", grams]] }] });
      return washAdvice({ product: "AgIO3", washedOut: ["KIO3"], facts: own }).untested.length > 0;
    };
    // below 0.01 g in 100 g of water, 10 mL of the last wash leave less than 1 mg, which tells as well
    expect(["0.0009 g", "0.0011 g", "0.009 g", "0.011 g"].map(shows)).toEqual([false, false, false, true]);
  });

  it("counts the washes of what neither drop nor residue tells: lead iodide leaves 7 mg from 10 mL, lead chloride 100 mg", () => {
    // solubilities at 20 °C, CRC Handbook: 0.067 and 1.0 g in 100 g of water
    expect(advice("PbI2", "KI", "KNO3")).toMatchObject({ endTests: [], untested: ["I-", "NO3-"] });
    expect(advice("PbCl2", "NaCl", "NaNO3")).toMatchObject({ endTests: [], untested: ["Cl-", "NO3-"] });
    // silver nitrate clouds with the iodide of the product as with the chloride
    expect(advice("PbI2", "NaCl").untested).toEqual(["Cl-"]);
  });

  it("is of the ions of alum without its potassium", () => {
    expect(tests("BaCO3", "K2SO4", "Al2(SO4)3").map((test) => test.split(":")[0])).toEqual(["SO4^2-"]);
  });

  it("takes paper for an alkaline product, whichever base is washed out", () => {
    // chalk stirred in water shows pH 9.9 to paper, with lye or soda in it or not
    for (const base of ["NaOH", "Na2CO3"]) expect(tests("CaCO3", base)[0]).toContain("the product gives this ion too");
    expect(tests("BaSO4", "NaOH")).toEqual(["OH-: indicator paper neutral"]);
  });
});

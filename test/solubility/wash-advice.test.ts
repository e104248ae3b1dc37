// What to wash with, by how much of the product water dissolves, and the drop tests of the trade (common practice): sulfate by
// barium chloride, halides by silver nitrate, iron(III) by thiocyanate, copper(II) by ammonia, lead and barium by sulfuric acid.
import { facts, solubilityOf, washAdvice } from "preparative";
import { describe, expect, it } from "vitest";

const OWN = "the product gives this ion too";
const NONE = "conductivity near that of the wash water";

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
    for (const figure of figures) {
      const own = facts({ source: "studio", solubilities: [{ formula: "KClO3", points: [["20 °C", figure]] }] });
      expect(washAdvice({ product: "KClO3", washedOut: [], facts: own }).liquid, figure).toBe(liquid);
    }
  });

  it.each([
    ["CuCl", "dilute hydrochloric acid, then alcohol, without sucking air through"],
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
  const tests = (product: string, ...washedOut: string[]) =>
    washAdvice({ product, washedOut }).endTests.map(({ ion, test }) => `${ion}: ${test}`);

  it.each([
    [["CuSO4"], ["SO4^2-: barium chloride", "Cu^2+: ammonia: no blue"]],
    [["FeCl3"], ["Cl-: silver nitrate", "Fe^3+: thiocyanate: no red"]],
    [["Pb(NO3)2"], ["NO3-: no drop test", "Pb^2+: a drop of dilute sulfuric acid"]],
    [["BaBr2"], ["Br-: silver nitrate", "Ba^2+: a drop of dilute sulfuric acid"]],
    [["KI"], ["I-: silver nitrate"]],
    [["KSCN"], ["SCN-: silver nitrate"]],
    [["NaOH"], ["OH-: indicator paper neutral"]],
    [["CH3COONa"], ["CH3COO-: no drop test"]],
    [["NaClO4"], ["ClO4-: no drop test"]],
    [["MgCl2"], ["Cl-: silver nitrate", `Mg^2+: ${NONE}`]],
    [["K3PO4"], [`PO4^3-: ${NONE}`]],
  ])("of %s: the anion first, then the metal, never an alkali", (washedOut, expected) => {
    const found = tests("CaCO3", ...washedOut);
    expect(found.length).toBe(expected.length);
    for (const [i, start] of expected.entries()) expect(found[i]!.startsWith(start), found[i]).toBe(true);
  });

  it("names an ion once that two salts bring", () => {
    expect(tests("CaCO3", "NaCl", "MgCl2", "Na2SO4").map((test) => test.split(":")[0])).toEqual([
      "Cl-",
      "Mg^2+",
      "SO4^2-",
    ]);
  });

  it("is the conductivity where the product gives the ion too, from a milligram in 100 g of water", () => {
    // gypsum dissolves to 0.2 g, so that barium chloride clouds its clean wash as well; barite gives 0.0002 g, which does not show
    expect(tests("CaSO4·2H2O", "Na2SO4")[0]).toContain(OWN);
    expect(tests("BaSO4", "Na2SO4")[0]).toContain("barium chloride");
    const shows = (grams: string) => {
      const own = facts({ source: "studio", solubilities: [{ formula: "BaSO4", points: [["20 °C", grams]] }] });
      return washAdvice({ product: "BaSO4", washedOut: ["Na2SO4"], facts: own }).endTests[0]!.test.includes(OWN);
    };
    expect(["0.0009 g", "0.001 g", "0.0011 g"].map(shows)).toEqual([false, true, true]);
  });

  it("is of the ions of alum without its potassium", () => {
    expect(tests("KAl(SO4)2·12H2O", "K2SO4", "Al2(SO4)3").map((test) => test.split(":")[0])).toEqual([
      "SO4^2-",
      "Al^3+",
    ]);
  });
});

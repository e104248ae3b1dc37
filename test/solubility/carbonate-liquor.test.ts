// What stands and what stays of a metal with soda or bicarbonate, 0.1 mol/L, 5 % excess. Outcomes as the trade knows them (from
// memory): zinc, nickel and lead turn basic once the carbon dioxide has gone; magnesium stays in good part.
import { describe, expect, it } from "vitest";
import { precipitatedCarbonate } from "../../src";

const number = (q: { readonly value: { toNumber(): number } }): number => q.value.toNumber();

describe("the liquor of a carbonate", () => {
  it.each([
    ["Zn^2+", "soda", "ZnCO3·H2O", "Zn5(OH)6(CO3)2"],
    ["Ni^2+", "soda", "NiCO3·5.5H2O", "Ni(OH)2"],
    ["Pb^2+", "soda", "PbCO3", "Pb3(OH)2(CO3)2"],
    ["Ca^2+", "soda", "CaCO3", "CaCO3"],
    ["Cu^2+", "bicarbonate", "Cu2(OH)2CO3", "Cu2(OH)2CO3"],
  ] as const)("%s with %s: %s, aired %s", (metal, precipitant, kept, aired) => {
    const { liquor } = precipitatedCarbonate({ metal, precipitant });
    const same = (a: string, b: string): void => expect([...a].sort().join("")).toBe([...b].sort().join(""));
    same(liquor.kept!.solids[0]!.formula, kept);
    same(liquor.aired!.solids[0]!.formula, aired);
  });

  it("tells the pH and what stays", () => {
    const calcium = precipitatedCarbonate({ metal: "Ca^2+", precipitant: "bicarbonate" }).liquor;
    expect(number(calcium.kept!.pH)).toBeCloseTo(6.1, 1);
    expect(number(calcium.kept!.left)).toBeCloseTo(9.6, 0);
    expect(number(calcium.aired!.left)).toBeLessThan(1);
    const magnesium = precipitatedCarbonate({ metal: "Mg^2+", precipitant: "soda" }).liquor;
    expect(number(magnesium.kept!.left)).toBeGreaterThan(20);
    expect(number(precipitatedCarbonate({ metal: "Cd^2+", precipitant: "soda" }).liquor.kept!.pH)).toBeCloseTo(10.7, 1);
  });

  it.each([
    // common practice, from memory: silver carbonate is made with bicarbonate; lithium stays in dilute liquors
    ["Ag+", "bicarbonate", "normal", "Ag2CO3"],
    ["La^3+", "bicarbonate", "normal", "La2(CO3)3·8H2O"],
    ["Ce^3+", "bicarbonate", "normal", "Ce2(CO3)3·8H2O"],
    ["Li+", "soda", "normal", "Li2CO3"],
    ["Hg^2+", "soda", "basic", "HgCO3·2HgO"],
  ] as const)("of %s with %s is %s", (metal, precipitant, verdict, solid) => {
    const told = precipitatedCarbonate({ metal, precipitant });
    expect([told.verdict, told.expected[0]]).toEqual([verdict, solid]);
  });

  it("tells that lithium stays in a dilute liquor, and that of cerium nothing is known", () => {
    expect(number(precipitatedCarbonate({ metal: "Li+", precipitant: "soda" }).liquor.kept!.left)).toBeCloseTo(100, 6);
    expect(precipitatedCarbonate({ metal: "Ce^3+", precipitant: "soda" }).liquor.kept).toBeUndefined();
    const silver = precipitatedCarbonate({ metal: "Ag+", precipitant: "bicarbonate" });
    expect(number(silver.index!)).toBeGreaterThan(5);
    expect(number(silver.liquor.kept!.left)).toBeCloseTo(7, 0);
  });

  it("gives hydroxides of the metals with three charges", () => {
    const iron = precipitatedCarbonate({ metal: "Fe^3+", precipitant: "soda" }).liquor;
    expect(iron.kept!.solids.map(({ formula }) => formula)).toEqual(["Fe(OH)3"]);
  });
});

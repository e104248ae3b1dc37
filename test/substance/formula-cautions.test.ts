// Cautions for formulas say what cautions for the same formulas say.
import { describe, expect, it } from "vitest";
import { cautions, cautionsForFormulas } from "../../src/substance";
import { REGISTRY } from "../../src/substance/data/registry";
import { strengthsSoldAs } from "../../src/substance/shop/sold-goods";

describe("cautions for formulas", () => {
  it("are those of the general function, for every substance of the registry", () => {
    const formulas = REGISTRY()
      .map((row) => row.formula)
      // a shop sells this formula at a strength, and a name means it: only the function that knows names says so
      .filter((formula) => strengthsSoldAs(formula, formula).length === 0);
    expect(formulas.length).toBeGreaterThan(500);
    for (const formula of formulas) expect(cautionsForFormulas([formula]), formula).toEqual(cautions([formula]));
  });

  it("follow the strength and the cylinder, and meet each other", () => {
    expect(cautionsForFormulas([{ formula: "HNO3", massPercent: 5 }, "KMnO4"])).toEqual(
      cautions([{ material: "HNO3", strength: "5 %" }, "KMnO4"]),
    );
    expect(cautionsForFormulas([{ formula: "NH3", inCylinder: true }])).toEqual(
      cautions([{ material: "NH3", inCylinder: true }]),
    );
    expect(cautionsForFormulas(["NaClO", "HCl"], { circumstances: ["closed vessel"] }).incompatibilities).toEqual(
      cautions(["NaClO", "HCl"], { circumstances: ["closed vessel"] }).incompatibilities,
    );
  });

  it("read no name, and say so", () => {
    const { substances, notRead } = cautionsForFormulas(["vinegar", "NaCl"]);
    expect(substances.map((one) => one.status)).toEqual(["not read", "food"]);
    expect(notRead).toEqual([{ material: "vinegar", nearest: [] }]);
  });

  it.each([Number.NaN, -1, 101, "5 %"])("refuse a mass percent of %s", (massPercent) => {
    expect(() => cautionsForFormulas([{ formula: "HCl", massPercent: massPercent as number }])).toThrow(/massPercent/);
  });
});

// What a text may be. Formulas and names of the registry check themselves; labels were written by hand from packs of the
// kind that shops sell (common practice, no source).
import { describe, expect, it } from "vitest";
import { parseFormula } from "../../src/formula";
import { identify, shopMaterial } from "../../src/substance";
import { REGISTRY } from "../../src/substance/data/registry";
import { SHOP_NAMES } from "../../src/substance/data/shop-materials";

const rows = REGISTRY();

describe("identify", () => {
  it("knows every listed formula, in three spellings, as the same one", () => {
    let checked = 0;
    for (const { formula } of rows) {
      const read = parseFormula(formula);
      for (const text of [formula, read.toString(), read.toUnicode()]) {
        expect(identify(text).formula, text).toBe(formula);
        checked++;
      }
    }
    expect(checked).toBe(3 * rows.length);
  });

  it("has the listed formula among the meanings of every listed name", () => {
    for (const { formula, name } of rows) {
      expect(
        identify(name).meanings.map((one) => one.formula),
        name,
      ).toContain(formula);
    }
    expect(rows.length).toBeGreaterThan(500);
  });

  it("leads every word of the shop to something that is sold under it", () => {
    let words = 0;
    let tested = 0;
    for (const { name } of SHOP_NAMES()) {
      const sold = shopMaterial(name).candidates.map((one) => one.formula);
      const found = identify(name).meanings.map((one) => one.formula);
      expect(
        found.some((formula) => sold.includes(formula)),
        name,
      ).toBe(true);
      words++;
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(180);
    expect(words).toBeGreaterThan(100);
  });

  it.each([
    ["CuSO4 5H2O", "CuSO4·5H2O"],
    ["Na2CO3 10 H2O", "Na2CO3·10H2O"],
    ["CaCO3 (marble)", "CaCO3"],
    ["blue vitriol", "CuSO4·5H2O"],
    ["table salt", "NaCl"],
    ["7758-99-8", "CuSO4·5H2O"],
    ["vinegar", "CH3COOH"],
    ["lead", "Pb"],
    ["SO4^2-", "SO4^2-"],
  ])("takes %s for %s and nothing else", (text, formula) => {
    expect(identify(text).formula).toBe(formula);
    expect(identify(text).meanings).toHaveLength(1);
  });

  it.each(["washing soda", "copper sulfate", "citric acid", "moss killer", "lime", "chalk"])(
    "leaves %s open",
    (text) => {
      const { formula, meanings, hint } = identify(text);
      expect(formula).toBeUndefined();
      expect(meanings.length).toBeGreaterThan(1);
      expect(hint).toMatch(/decides/);
    },
  );

  it.each([
    ["blue vitrol", "did you mean blue vitriol"],
    ["NACL", "did you mean NaCl?"],
    ["7758-99-9", "no listed substance has this number"],
  ])("does not read %s, and says: %s", (text, hint) => {
    expect(identify(text).meanings).toEqual([]);
    expect(identify(text).hint).toBe(hint);
  });

  it("tells the strength of a good that is a solution", () => {
    expect(identify("battery acid").meanings[0]!.strength).toEqual({ lower: "33 %", upper: "38 %" });
    expect(identify("CH3COOH").meanings[0]!.strength).toBeUndefined();
  });

  it("prints itself, and cannot be changed", () => {
    expect(String(identify("blue vitrol"))).toBe("blue vitrol\nnot read\nhint: did you mean blue vitriol");
    expect(String(identify("CaCO3"))).toBe("CaCO3\nCaCO3  calcium carbonate");
    expect(() => (identify("lime").meanings as unknown[]).push(1)).toThrow(TypeError);
  });
});

// What the word on a pack hides, told by names and shop alike. Forms sold: the table of shop materials.
import { describe, expect, it } from "vitest";
import {
  formulaOf,
  readingsOf,
  shopMaterial,
  substance,
  substanceFromJSON,
  tryFormulaOf,
  tryShopMaterial,
  trySubstance,
} from "../../src/substance";
import { AMBIGUOUS } from "../../src/substance/data/ambiguous";
import { SHOP_MATERIALS } from "../../src/substance/data/shop-materials";
import { formulasSoldAs } from "../../src/substance/shop/sold-goods";

const remarks = (name: string) => readingsOf(name)[0]!.remarks.join("; ");

describe("a salt named without its water", () => {
  it("says which hydrates a pack of that name may hold", () => {
    expect(formulaOf("copper sulfate").remarks.join()).toMatch(/CuSO4·5H2O.*leaves the water out/);
    expect(substance("zinc sulfate").remarks.join()).toMatch(/ZnSO4·7H2O or ZnSO4·H2O|ZnSO4·H2O or ZnSO4·7H2O/);
    expect(remarks("barium chloride")).toMatch(/BaCl2·2H2O/);
    expect(remarks("sodium chloride")).toBe("");
    for (const clear of ["copper sulfate pentahydrate", "anhydrous copper sulfate", "copper(II) sulfate monohydrate"])
      expect(remarks(clear), clear).toBe("");
    expect(readingsOf("copper sulfate", { literal: true })[0]!.remarks).toEqual([]);
  });

  it("keeps a solution's strength", () => {
    const vinegar = substance("white vinegar");
    expect(vinegar.strength).toEqual({ lower: "40 g/L", upper: "60 g/L" });
    expect(vinegar.remarks.join()).toMatch(/not the pure substance/);
    expect(substance("battery acid").strength).toEqual({ lower: "33 %", upper: "38 %" });
    expect(substance("CH3COOH").strength).toBeUndefined();
    expect(substance("hydrogen peroxide").strength).toBeUndefined();
    expect(substance("glacial acetic acid").strength).toBeUndefined();
    const back = substanceFromJSON(JSON.parse(JSON.stringify(vinegar)));
    expect([back.strength, back.remarks]).toEqual([vinegar.strength, vinegar.remarks]);
    expect(substance("NaCl").toJSON()).toEqual({
      type: "substance",
      schema: 1,
      library: expect.stringMatching(/^\d+\.\d+\.\d+$/),
      formula: "NaCl",
    });
  });
});

describe("names and shop", () => {
  it("agree: what a shop sells under a name is among its readings or in the remark", () => {
    let checked = 0;
    const names = [
      ...AMBIGUOUS().flatMap((row) => row.names),
      ...SHOP_MATERIALS().flatMap((row) => [row.name, ...(row.alsoCalled ?? [])]),
    ];
    for (const name of new Set(names)) {
      const readings = readingsOf(name);
      // an ion (peroxide), or a name that says itself what the pack does not hold
      if (readings.length === 0 || /\^/.test(readings[0]!.formula) || /anhydrous/.test(name)) continue;
      const told = [...readings.map((one) => one.formula), ...readings.flatMap((one) => one.remarks)].join(" ");
      for (const formula of formulasSoldAs(name)) expect(told, name).toContain(formula);
      checked += 1;
    }
    expect(checked).toBeGreaterThan(100);
  });

  it("list moss killer and magnesium carbonate alike", () => {
    for (const name of ["moss killer", "magnesium carbonate"]) {
      const sold = shopMaterial(name).candidates.map((one) => one.formula);
      expect(
        readingsOf(name).map((one) => one.formula),
        name,
      ).toEqual(expect.arrayContaining(sold));
    }
    expect(readingsOf("moss killer")).toHaveLength(tryShopMaterial("moss killer").ok ? 5 : 0);
  });
});

describe("a formula that cannot be read", () => {
  it("says of a formula that it is no name, and which functions take it", () => {
    for (const formula of ["NaCl", "VO(SO4)", "AgOCN", "CuSO4·5H2O"]) {
      const error = tryFormulaOf(formula);
      expect(error.ok ? "" : `${error.error.message} ${error.error.hint}`, formula).toMatch(
        /is a formula already, not a name.*nameOf gives its name/s,
      );
      expect(substance(formula).name, formula).not.toBe("");
    }
    const word = tryFormulaOf("Blu Vitriol");
    expect(word.ok ? "" : word.error.hint).toContain("blue vitriol");
  });

  it("keeps the hint of the reader of formulas", () => {
    const hint = (outcome: { ok: boolean; error?: unknown }) => (outcome.error as { hint: string }).hint;
    expect(hint(trySubstance("CuSO4 5H2O"))).toMatch(/adduct dot/);
    expect(hint(tryFormulaOf("NACL"))).toMatch(/NaCl/);
    expect(hint(trySubstance("H2S04"))).toMatch(/H2SO4/);
  });
});

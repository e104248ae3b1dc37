// Compounds that water does not let be. Reasons from memory, all in any textbook of inorganic chemistry.
import { doesItGo, sourceKeys } from "preparative";
import { describe, expect, it } from "vitest";
import {
  APART_IN_LYE,
  NEVER_IN_WATER,
  NO_TUTTON_SALT,
  OXIDE_OR_HYDROXIDE,
  TAKEN_APART,
} from "../../../src/solubility/data/never-in-water";

const ask = (equation: string, product: string) => doesItGo({ equation, product });

describe("what does not exist in water", () => {
  it("is said with what stands in its place, in moles of the metal", () => {
    const f = ask("FeCl3 + Na2S -> Fe2S3 + NaCl", "Fe2S3");
    expect(f.verdict).toBe("does not go");
    expect(f.reasons[0]!.text).toContain("sulfur");
    // 0.1 mol of Fe2S3 holds 0.2 mol of iron
    expect(f.solids.map((s) => s.formula)).toEqual(["FeS"]);
    expect(f.solids[0]!.amount.in("mol").toNumber()).toBeCloseTo(0.2, 2);
    // 87.91 g/mol
    expect(f.solids[0]!.mass.in("g").toNumber()).toBeCloseTo(0.2 * 87.91, 0);
  });

  it("names no solid where none precipitates: iron(III) and iodide give iodine and iron(II) iodide", () => {
    expect(ask("FeCl3 + KI -> FeI3 + KCl", "FeI3").solids).toEqual([]);
  });

  it("leaves basic salts, hydroxides and complexes alone", () => {
    for (const [equation, product] of [
      ["CuSO4 + Na2CO3 + H2O -> Cu2(OH)2CO3 + Na2SO4 + CO2", "Cu2(OH)2CO3"],
      ["AlCl3 + NH3 + H2O -> Al(OH)3 + NH4Cl", "Al(OH)3"],
      ["K4[Fe(CN)6] + FeCl3 -> Fe4[Fe(CN)6]3 + KCl", "Fe4[Fe(CN)6]3"],
    ] as const)
      expect(ask(equation, product).reasons.map(({ code }) => code)).not.toContain("not-in-water");
  });

  it("knows that Mohr's salt has no sodium twin, and that bloedite is another type", () => {
    const { verdict, reasons } = ask("ZnSO4 + Na2SO4 + H2O -> Na2Zn(SO4)2·6H2O", "Na2Zn(SO4)2·6H2O");
    expect(verdict).toBe("does not go");
    // 53.8 g and 19.5 g in 100 g of water at 20 °C (CRC)
    expect(reasons[0]!.text).toMatch(/100 g of water dissolves 54 g of ZnSO₄ and (?:19|20) g of Na₂SO₄$/);
    const [zinc, sodium] = reasons[0]!.numbers;
    expect(zinc!.in("g").toNumber()).toBeCloseTo(53.8, 0);
    expect(zinc!.label).toBe("ZnSO₄, anhydrous, in 100 g of water");
    expect(sodium!.in("g").toNumber()).toBeCloseTo(19.5, 0);
    expect(ask("ZnSO4 + K2SO4 + H2O -> K2Zn(SO4)2·6H2O", "K2Zn(SO4)2·6H2O").verdict).not.toBe("does not go");
    expect(ask("MgSO4 + Na2SO4 + H2O -> Na2Mg(SO4)2·4H2O", "Na2Mg(SO4)2·4H2O").verdict).not.toBe("does not go");
  });

  it("takes the neutral acetates of three-valued metals apart: a basic salt is left", () => {
    for (const [equation, product] of [
      ["Al(OH)3 + CH3COOH -> Al(CH3COO)3 + H2O", "Al(CH3COO)3"],
      ["FeCl3 + CH3COONa -> Fe(CH3COO)3 + NaCl", "Fe(CH3COO)3"],
      ["Cr(OH)3 + CH3COOH -> Cr(CH3COO)3 + H2O", "Cr(CH3COO)3"],
    ] as const) {
      const f = ask(equation, product);
      expect(f.verdict, product).toBe("goes in part");
      expect(f.reasons.map(({ code }) => code)).toContain("hydrolysis");
    }
    // two-valued metals keep theirs
    const zinc = ask("ZnO + CH3COOH -> Zn(CH3COO)2 + H2O", "Zn(CH3COO)2");
    expect(zinc.verdict).toBe("goes");
  });

  it("knows the basic carbonate of bismuth", () => {
    const f = ask("Bi(NO3)3 + Na2CO3 -> Bi2(CO3)3 + NaNO3", "Bi2(CO3)3");
    expect(f.verdict).toBe("does not go");
    expect(f.solids[0]!.amount.in("mol").toNumber()).toBeCloseTo(0.1, 2);
  });

  it("knows hydroxides that are oxides as they precipitate", () => {
    // silver, mercury(II) and copper(I): every textbook of inorganic chemistry, from memory
    const f = ask("AgNO3 + NaOH -> AgOH + NaNO3", "AgOH");
    expect(f.verdict).toBe("does not go");
    expect(f.solids.map(({ formula }) => formula)).toEqual(["Ag₂O"]);
    // 0.1 mol of AgOH would be 0.05 mol of the oxide
    expect(f.solids[0]!.amount.in("mol").toNumber()).toBeCloseTo(0.05, 3);
    expect(ask("AgNO3 + NaOH -> Ag2O + NaNO3 + H2O", "Ag2O").verdict).toBe("goes");
    expect(ask("CuSO4 + NaOH -> Cu(OH)2 + Na2SO4", "Cu(OH)2").verdict).toBe("goes");
  });

  it("does not take the alkali metal of a salt for lye while the lime stands untouched", () => {
    // slaked lime dissolves 1.7 g/L, and sodium chloride takes nothing from it
    const f = ask("Ca(OH)2 + NaCl -> CaCl2 + NaOH", "NaOH");
    expect(f.verdict).not.toBe("goes");
    expect(f.share!.toNumber()).toBeLessThan(0.05);
    // with soda the lime goes: the old way to lye
    expect(ask("Ca(OH)2 + Na2CO3 -> CaCO3 + NaOH", "NaOH").share!.toNumber()).toBeGreaterThan(0.98);
  });

  it.each([
    ["KI + NaClO + H2O -> I2 + NaCl + KOH", "I2", "does not go"],
    ["KI + H2O2 -> I2 + KOH", "I2", "does not go"],
    ["KI + KIO3 + H2SO4 -> I2 + K2SO4 + H2O", "I2", "goes"],
    ["KI + FeCl3 -> I2 + FeCl2 + KCl", "I2", "goes"],
  ])("lets a halogen stand in acid and not beside lye: %s", (equation, product, verdict) => {
    const f = ask(equation, product);
    expect(f.verdict).toBe(verdict);
    if (verdict !== "goes") expect(f.reasons[0]!.text).toMatch(/halide and hypohalite.*with acid in place of lye/);
  });

  it("holds each pair of ions once", () => {
    const pairs = [...NEVER_IN_WATER(), ...OXIDE_OR_HYDROXIDE].flatMap(({ cations, anions }) =>
      cations.flatMap((c) => anions.map((a) => `${c} ${a}`)),
    );
    expect(new Set(pairs).size).toBe(pairs.length);
  });

  it("rests on sources that resolve", () => {
    for (const { source } of [...NEVER_IN_WATER(), ...OXIDE_OR_HYDROXIDE, NO_TUTTON_SALT, TAKEN_APART, APART_IN_LYE])
      expect(sourceKeys()).toContain(source);
  });
});

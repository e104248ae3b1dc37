// What dissolves with everything counted, beside the calculation by hand. Outcomes from the literature, as told beside each.
import { describe, expect, it } from "vitest";
import { type MolarSolubilityRequest, molarSolubility } from "../../src";
import { SOLUBILITY_PRODUCTS } from "../../src/aqueous/data/products";

const both = (request: MolarSolubilityRequest) => {
  const { concentration, byHand } = molarSolubility(request);
  return [byHand!.concentration, concentration].map((c) => c.in("mol/L").toNumber()) as [number, number];
};

describe("what dissolves, everything counted", () => {
  it("doubles for calcite, as carbonate takes up protons: 0.12 mmol/L at pH 9.9 (Stumm and Morgan, from memory)", () => {
    const [hand, real] = both({ solid: "CaCO3" });
    expect(hand).toBeCloseTo(10 ** -4.24, 6);
    expect(real / 1.22e-4).toBeCloseTo(1, 1);
    expect(molarSolubility({ solid: "CaCO3" }).pH.value.toNumber()).toBeCloseTo(9.9, 1);
  });

  it("is that of gypsum's curve: 0.0151 mol/L (CRC Handbook, 98th ed.), a third of it by hand", () => {
    const [hand, real] = both({ solid: "CaSO4·2H2O" });
    expect(hand).toBeLessThan(0.006);
    expect(Math.abs(real / 0.0151 - 1)).toBeLessThan(0.1);
  });

  it("counts what a ligand binds once: CaCO3 in 0.01 mol/L EDTA dissolves to 0.0100 mol/L", () => {
    const [hand, real] = both({
      solid: "CaCO3",
      freeLigands: [{ ligand: "C10H12N2O8^4-", concentration: "0.01 mol/L" }],
    });
    expect(hand).toBeCloseTo(0.01, 3);
    expect(real).toBeCloseTo(0.01, 3);
  });

  it("counts complexes that nobody named: silver chloride in strong chloride (AgCl2-, AgCl3^2-)", () => {
    const [hand, real] = both({ solid: "AgCl", commonIons: [{ ion: "Cl-", concentration: "1 mol/L" }] });
    expect(real / hand).toBeGreaterThan(100_000);
  });

  it("is never less than by hand: side reactions and activities only bring more into solution", () => {
    let answered = 0;
    let tested = 0;
    for (const { solid, form, convention } of SOLUBILITY_PRODUCTS()) {
      // radium has no standard atomic weight
      if (convention === "free-sulfide" || solid.includes("Ra")) continue;
      const { concentration, basis, byHand } = molarSolubility({ solid, ...(form === undefined ? {} : { form }) });
      if (basis !== "equilibrium") continue;
      answered += 1;
      const ratio = concentration.value.toNumber() / byHand!.concentration.value.toNumber();
      expect(ratio, solid).toBeGreaterThan(0.99);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(270);
    expect(answered).toBeGreaterThanOrEqual(290);
  });

  it("is left to the hand for an own constant", () => {
    const { basis, concentration, byHand } = molarSolubility({ solid: "PbI2", ksp: "1.4e-8" });
    expect(basis).toBe("hand calculation");
    expect(concentration.compare(byHand!.concentration)).toBe(0);
  });

  it("counts the hydroxide that becomes zincate: less than a half of the lye (Zn(OH)2 + 2 OH- = Zn(OH)4^2-)", () => {
    const lye = { ligand: "OH-", concentration: "1 mol/L" } as const;
    const [hand, real] = both({ solid: "Zn(OH)2", freeLigands: [lye] });
    // x = [OH]: s = Ksp β3 x + Ksp β4 x², and x + Ksp β3 x + 2 Ksp β4 x² = 1 with 0.024 and 0.955: x 0.504, s 0.254
    expect(hand).toBeCloseTo(0.254, 3);
    expect(real).toBeGreaterThan(hand);
    expect(real).toBeLessThan(0.5);
  });
});

// Mixtures at a pH: protons on the anions and hydroxide on the metals are counted in, and nothing is lost in digits.
import { describe, expect, it } from "vitest";
import { stabilityConstants } from "../../src/aqueous";
import { COMPLEXES } from "../../src/aqueous/data/complexes";
import { SOLUBILITY_PRODUCTS } from "../../src/aqueous/data/products";
import { uncertaintyBudget } from "../../src/quantity";
import { hydroxidePrecipitationRange } from "../../src/solubility/precipitating/hydroxide";
import { willPrecipitate } from "../../src/solubility/precipitating/precipitate";
import { ionsOf, solubilityProduct } from "../../src/solubility/precipitating/product";

type Molar = `${number} mol/L`;
const mix = (solid: string, ions: Readonly<Record<string, Molar>>, pH?: number, form?: string) =>
  willPrecipitate({
    solid,
    solutions: [{ volume: "1 L", ions: Object.entries(ions).map(([ion, concentration]) => ({ ion, concentration })) }],
    ...(pH !== undefined && { pH }),
    ...(form !== undefined && { form }),
  }).byHand;

describe("what stays after a precipitation", () => {
  it("leaves something of every ion, over each solid of the table at pH 2, 7 and 12, just saturated", () => {
    let tested = 0;
    for (const { solid, form, convention } of SOLUBILITY_PRODUCTS()) {
      if (convention === "free-sulfide") continue;
      for (const pH of [2, 7, 12]) {
        const product = solubilityProduct(solid, form);
        const named = product.ions
          .filter(({ formula }) => formula !== "OH-" && formula !== "H+")
          .map(({ formula }): [string, Molar] => [formula, "0.1 mol/L"]);
        const { ions, precipitates } = mix(solid, Object.fromEntries(named), pH, form);
        const left = ions.map(({ formula, after }): [string, number] => [formula, after.in("mol/L").toNumber()]);
        expect(Math.min(...left.map(([, c]) => c)), `${solid} ${pH}`).toBeGreaterThan(0);
        if (!precipitates) continue;
        const liquor = Object.fromEntries(left.map(([ion, c]): [string, Molar] => [ion, `${c} mol/L`]));
        const q = mix(solid, liquor, pH, form).saturation.value.toNumber();
        expect(Math.abs(Math.log10(q)), `${solid} ${pH}`).toBeLessThan(1e-8);
      }
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(270);
  });

  it("leaves iron(III) at pH 7 as the product and the hydroxide complexes say, not NaN", () => {
    // free Fe3+ = 10^(-38.8 + 21); all of it is as much as hydroxidePrecipitationRange finds at pH 7, since both rest on one table
    const steps = COMPLEXES().find(({ metal, ligand }) => metal === "Fe^3+" && ligand === "OH-")!.steps;
    const all = steps.reduce((sum, { n, logBeta }) => sum + 10 ** (Number(logBeta) - 7 * n), 1);
    const { ions, precipitates } = mix("Fe(OH)3", { "Fe^3+": "0.1 mol/L" }, 7);
    expect(precipitates).toBe(true);
    expect(Math.abs(ions[0]!.after.in("mol/L").toNumber() / (10 ** (-38.8 + 21) * all) - 1)).toBeLessThan(1e-9);
  });

  it("carries the constants and the pH into the uncertainty of what stays", () => {
    const { after } = mix("Zn(OH)2", { "Zn^2+": "0.1 mol/L" }, 10).ions[0]!;
    const inputs = uncertaintyBudget(after).map(({ quantity }) => quantity.symbol ?? "");
    expect(inputs.some((symbol) => symbol.startsWith("pKsp"))).toBe(true);
    expect(inputs.some((symbol) => symbol.startsWith("log β"))).toBe(true);
  });

  it("weighs the pKa of hydrogencarbonate at pH 7 as a hand derivative does: a tenth of a unit is 23 % of what stays", () => {
    // with calcium in excess what stays of all carbonate is Ksp [H] / (K2 c(Ca)): d ln / d pK2 = ln 10, less the share of CO3
    const { after } = mix("CaCO3", { "Ca^2+": "0.2 mol/L", "CO3^2-": "0.05 mol/L" }, 7).ions[1]!;
    const line = uncertaintyBudget(after).find(({ quantity }) => quantity.symbol === "pKa(HCO3-)")!;
    const relative = line.sensitivity.toNumber() / after.in("mol/L").toNumber();
    expect(Math.abs(relative / Math.LN10 - 1)).toBeLessThan(0.005);
  });
});

describe("a mixture in acid, in alkali or beside ligands", () => {
  // by hand with pKa of textbooks: free share of the anion from K1 K2 / [H]^2 and so on
  it.each([
    [
      "calcium oxalate at pH 0: oxalate share 2.2e-6",
      "CaC2O4·H2O",
      { "Ca^2+": "0.01 mol/L", "C2O4^2-": "0.01 mol/L" },
      0,
    ],
    ["calcium carbonate at pH 5: carbonate share 2e-7", "CaCO3", { "Ca^2+": "0.01 mol/L", "CO3^2-": "0.01 mol/L" }, 5],
    ["barium carbonate at pH 3", "BaCO3", { "Ba^2+": "0.01 mol/L", "CO3^2-": "0.01 mol/L" }, 3],
    [
      "magnesium ammonium phosphate at pH 3: phosphate share 1e-13",
      "MgNH4PO4·6H2O",
      { "Mg^2+": "0.01 mol/L", "NH4+": "0.01 mol/L", "PO4^3-": "0.01 mol/L" },
      3,
    ],
    ["calcium phosphate at pH 2", "Ca3(PO4)2", { "Ca^2+": "0.01 mol/L", "PO4^3-": "0.01 mol/L" }, 2],
    ["zinc hydroxide at pH 14: zincate", "Zn(OH)2", { "Zn^2+": "0.1 mol/L" }, 14],
  ] as const)("stays clear: %s", (_, solid, ions, pH) => {
    expect(mix(solid, ions, pH).precipitates).toBe(false);
  });

  it("still lets struvite fall at pH 9, the pH at which it is thrown down (common practice)", () => {
    const { precipitates, ions } = mix(
      "MgNH4PO4·6H2O",
      { "Mg^2+": "0.01 mol/L", "NH4+": "0.01 mol/L", "PO4^3-": "0.01 mol/L" },
      9,
    );
    expect(precipitates).toBe(true);
    expect(ions[0]!.shareLeft.in("%").toNumber()).toBeLessThan(20);
  });

  // total dissolved metal = Ksp Σ β(n) [OH-]^(n - z), n = 0, 1, 2 …: the sum of a textbook, with the constants that are printed
  it.each([
    ["Zn^2+", true],
    ["Al^3+", true],
    ["Pb^2+", true],
    ["Cu^2+", false],
    ["Ni^2+", false],
    ["Mg^2+", false],
  ] as const)(
    "counts the hydroxide complexes of %s at both ends of its window; redissolves below pH 14: %s",
    (metal, back) => {
      const { byHand, product } = hydroxidePrecipitationRange({ metal, concentration: "0.01 mol/L" });
      const charge = Number(/\d/.exec(metal)![0]);
      // complexes of one metal ion
      const own = stabilityConstants({ metal, ligand: "OH-" }).filter(
        ({ complex }) => !/[A-Z][a-z][2-9]/.test(complex),
      );
      const steps = [{ n: 0, log: 0 }, ...own.map(({ n, logBeta }) => ({ n, log: logBeta.toNumber() }))];
      const dissolved = (pH: number): number =>
        steps.reduce(
          (sum, { n, log }) => sum + 10 ** (log - product.pKsp.toNumber() + (n - charge) * (pH - 13.995)),
          0,
        );
      for (const end of [byHand.startsAt, byHand.allDissolvedFrom])
        if (end !== undefined) expect(dissolved(end.toNumber()) / 0.01).toBeCloseTo(1, 1);
      expect(byHand.startsAt?.toNumber()).toBeLessThan(14);
      expect(byHand.allDissolvedFrom !== undefined).toBe(back);
      expect(dissolved(byHand.least.pH.toNumber()) / byHand.least.concentration.in("mol/L").toNumber()).toBeCloseTo(
        1,
        1,
      );
    },
  );

  it("agrees with the hydroxide window on both sides of each of its ends", () => {
    for (const metal of ["Mg^2+", "Zn^2+", "Al^3+", "Cu^2+", "Ni^2+", "Pb^2+", "Cr^3+"]) {
      const { byHand, solid, form } = hydroxidePrecipitationRange({ metal, concentration: "0.1 mol/L" });
      const falls = (pH: number) => mix(solid, { [metal]: "0.1 mol/L" }, pH, form).precipitates;
      const begins = byHand.startsAt!.value.toNumber();
      expect([falls(begins - 0.02), falls(begins + 0.02)], metal).toEqual([false, true]);
      const ends = byHand.allDissolvedFrom?.value.toNumber();
      if (ends !== undefined) expect([falls(ends - 0.02), falls(ends + 0.02)], metal).toEqual([true, false]);
    }
  });

  it("lets gypsum at 0.01 mol/L each precipitate in the ideal calculation only", () => {
    // gypsum dissolves to 0.0151 mol/L (CRC Handbook 98th ed., 0.205 g CaSO4 in 100 g water at 25 °C)
    const gypsum = (more: { readonly ionicStrength?: Molar }) =>
      willPrecipitate({
        solid: "CaSO4·2H2O",
        solutions: [
          {
            volume: "1 L",
            ions: [
              { ion: "Ca^2+", concentration: "0.01 mol/L" },
              { ion: "SO4^2-", concentration: "0.01 mol/L" },
            ],
          },
        ],
        ...more,
      }).byHand.precipitates;
    expect([gypsum({}), gypsum({ ionicStrength: "0.04 mol/L" })]).toEqual([true, false]);
  });

  it("has every ion of the products with its charge", () => {
    let tested = 0;
    for (const row of SOLUBILITY_PRODUCTS()) {
      expect(
        ionsOf(row).reduce((all, { charge, count }) => all + charge * count, 0),
        row.solid,
      ).toBe(0);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(360);
  });
});

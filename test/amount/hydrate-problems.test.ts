// Problems in which a hydrate goes through several rooms at once, each with its arithmetic by hand beside it. Molar masses used
// by hand: CuSO4 159.602, CuSO4·5H2O 249.677, FeSO4·7H2O 278.01, H2C2O4·2H2O 126.064, Na2CO3·10H2O 286.138 g/mol.
import { describe, expect, test } from "vitest";
import { dilute, feedAmount, mixToStrength, reactionAmounts, stockSolution, titrate } from "../../src/amount";

describe("hydrates by hand", () => {
  test("1 mol/kg of the pentahydrate is 1 mol in 1000 g of water and 159.6 g of salt", () => {
    const feed = { mass: "1159.602 g", strength: "1 mol/kg" } as const;
    expect(feedAmount("CuSO4·5H2O", feed).in("mol").toNumber()).toBeCloseTo(1, 4);
    const zinc = reactionAmounts("CuSO4 + Zn -> ZnSO4 + Cu", { CuSO4·5H2O: feed });
    expect(zinc.extent.in("mol").toNumber()).toBeCloseTo(1, 4);
  });

  test.each(["CuSO4", "CuSO4·5H2O"])("0.1 mol/kg from 1 mol/kg takes as much of it as %s", (of) => {
    // 1000 g of 0.1 mol/kg hold 100/1015.9602 = 0.098429 mol; 1 mol is in 1159.602 g
    const plan = dilute({ from: "1 mol/kg", to: "0.1 mol/kg", makeUpTo: "1000 g", of });
    expect(plan.take.in("g").toNumber()).toBeCloseTo(114.138, 2);
    // 100 g of 0.5 mol/kg hold 0.046303 mol
    const parts = mixToStrength({ of, strong: "1 mol/kg", weak: "0 % w/w", wanted: "0.5 mol/kg", mass: "100 g" });
    expect(parts.strong.in("g").toNumber()).toBeCloseTo(53.695, 2);
  });

  test.each([
    // 0.1 N acid for both protons is 0.05 mol/L; 1 N soda for both steps is 0.5 mol/L
    ["H2C2O4·2H2O", "0.1 N", "H2C2O4 + 2 NaOH -> Na2C2O4 + 2 H2O", 6.3032],
    ["Na2CO3·10H2O", "1 N", "Na2CO3 + 2 HCl -> 2 NaCl + H2O + CO2", 143.069],
  ] as const)("a litre of %s of %s weighs what the equation says", (of, strength, reaction, grams) => {
    const { mass } = stockSolution({ of, strength, volume: "1 L", reaction });
    expect(mass.in("g").toNumber()).toBeCloseTo(grams, 2);
  });

  test("iron sulfate by permanganate, with halves in the equation", () => {
    // 25 mL of 0.02 mol/L are 0.5 mmol, 2.5 mmol of iron, 0.6950 g
    const iron = titrate({
      equation: "5 FeSO4 + KMnO4 + 4 H2SO4 -> 5/2 Fe2(SO4)3 + MnSO4 + 1/2 K2SO4 + 4 H2O",
      titrant: { strength: "0.02 mol/L", of: "KMnO4" },
      titre: "25 mL",
      analyte: "FeSO4·7H2O",
      sample: "1 g",
    });
    expect(iron.massFraction!.in("%").toNumber()).toBeCloseTo(69.5, 1);
  });
});

// Titration and gravimetric analysis against published problems. Chemistry 2e (OpenStax, 2019, web revision), section 4.5;
// tolerance half a unit of the last printed place unless said otherwise.
import { describe, expect, test } from "vitest";
import { backTitrate, replicateStatistics, requiredAmount, titrate } from "../../src/amount";
import { equivalentMass } from "../../src/hydrate";
import { quantity } from "../../src/quantity";
import { checkPrinted, type Printed } from "../tools/printed";

const cases: readonly Printed[] = [
  {
    item: "worked example 4.15",
    question: "MgSO4 in 0.4550 g that gives 0.6168 g BaSO4",
    result: () => equivalentMass("0.6168 g", { from: "BaSO4", to: "MgSO4" }).dividedBy("0.4550 g"),
    unit: "%",
    printed: "69.91",
    within: 0.005,
  },
  {
    item: "worked example 4.15, follow-up (the book rounded a step: one unit of the last place)",
    question: "chloride in 1.1324 g that gives 1.0881 g AgCl",
    result: () => equivalentMass("1.0881 g", { from: "AgCl", to: "Cl" }).dividedBy("1.1324 g"),
    unit: "%",
    printed: "23.76",
    within: 0.01,
  },
  {
    item: "section exercise 2",
    question: "20.0 mL acid rain takes 1.7 mL of 0.0811 mol/L NaOH",
    result: () =>
      titrate({
        equation: "H2SO4 + 2 NaOH -> Na2SO4 + 2 H2O",
        titrant: { strength: "0.0811 mol/L", of: "NaOH" },
        titre: "1.7 mL",
        analyte: "H2SO4",
        sample: "20.0 mL",
      }).concentration!,
    unit: "mol/L",
    printed: "3.4e-3",
    within: 0.00005,
  },
  {
    item: "section exercise 4",
    question: "0.25 mL serum takes 1.46 mL of 8.25e-4 mol/L Hg(NO3)2",
    result: () =>
      titrate({
        equation: "Hg^2+ + 2 Cl- -> HgCl2",
        titrant: { strength: "8.25e-4 mol/L", of: "Hg^2+" },
        titre: "1.46 mL",
        analyte: "Cl-",
        sample: "0.25 mL",
      }).concentration!,
    unit: "mol/L",
    printed: "9.6e-3",
    within: 0.00005,
  },
  {
    item: "section exercise 6",
    question: "gallium in 0.165 g GaBr3 that gives 0.299 g AgBr",
    // three AgBr for each Ga, through the bromide of GaBr3
    result: () =>
      equivalentMass(equivalentMass("0.299 g", { from: "AgBr", to: "GaBr3", per: "Br" }), {
        from: "GaBr3",
        to: "Ga",
      }).dividedBy("0.165 g"),
    unit: "%",
    printed: "22.4",
    within: 0.05,
  },
  {
    item: "section exercise 10",
    question: "0.600 mol/L HCl for 2.50 g NaHCO3",
    result: () =>
      requiredAmount("NaHCO3 + HCl -> NaCl + CO2 + H2O", { NaHCO3: "2.50 g" }, "HCl", { strength: "0.600 mol/L" })
        .volume!,
    unit: "mL",
    printed: "49.6",
    within: 0.05,
  },
  {
    item: "section exercise 12",
    question: "0.3300 mol/L NaOH for 15.00 mL of 0.1500 mol/L oxalic acid",
    result: () =>
      requiredAmount(
        "H2C2O4 + 2 NaOH -> Na2C2O4 + 2 H2O",
        { H2C2O4: { volume: "15.00 mL", strength: "0.1500 mol/L" } },
        "NaOH",
        { strength: "0.3300 mol/L" },
      ).volume!,
    unit: "mL",
    printed: "13.64",
    within: 0.005,
  },
];

describe("published titrations", () => {
  checkPrinted(cases);
});

describe("outliers", () => {
  // Grubbs' critical values, two-sided 5 %: ISO 5725-2:1994, table 5 (upper 2.5 % points: 3 1.155, 5 1.715, 10 2.290, 20 2.709).
  // One unit of the last place: the table goes back to 1969 and rounds 1.1543 and 2.7082 up.
  test.each([
    [3, 1.155],
    [5, 1.715],
    [10, 2.29],
    [20, 2.709],
  ])("the critical value for %i readings is %d", (n, printed) => {
    const list = Array.from({ length: n }, (_, i) => ({ value: 10 + i * i, unit: "mL" }));
    expect(Math.abs(replicateStatistics(list).suspect!.critical - printed)).toBeLessThan(0.001);
  });
});

describe("back titration", () => {
  // Acid taken by a gram of carbonate, common figures of assay by acid (calculated on abridged weights in the compilation):
  // Cu2(OH)2CO3 18.09 mmol/g.
  test("a gram of basic copper carbonate takes 18.09 mmol of acid", () => {
    const taken = backTitrate({
      reagent: { strength: "1.000 mol/L" },
      reagentVolume: "50.00 mL",
      titrant: { strength: "0.5000 mol/L" },
      // 50.00 mmol less 18.09 mmol leaves 31.91 mmol
      titre: "63.82 mL",
      titrantPerReagent: 1,
      reagentPerAnalyte: 4,
      analyte: "Cu2(OH)2CO3",
      sample: quantity("1.000 g"),
    });
    expect(taken.massFraction!.in("%").toNumber()).toBeCloseTo(100, 1);
  });
});

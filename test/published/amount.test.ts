// Amounts in reactions against published problems. Chemistry 2e (OpenStax, 2019, web revision), sections 4.3 and 4.4;
// tolerance half a unit of the last printed place.
import { describe, expect, test } from "vitest";
import {
  amountOf,
  limitingReagents,
  massOf,
  percentYield,
  reactionAmounts,
  requiredAmount,
  theoreticalYield,
} from "../../src/amount";
import { quantity } from "../../src/quantity";
import { checkPrinted, type Printed } from "../tools/printed";

const cases: readonly Printed[] = [
  {
    item: "4.3 worked example 4.10",
    question: "NaOH for 16 g Mg(OH)2",
    result: () => reactionAmounts("MgCl2 + 2 NaOH -> Mg(OH)2 + 2 NaCl", { "Mg(OH)2": "16 g" }).of("NaOH").mass,
    unit: "g",
    printed: "22",
    within: 0.5,
  },
  {
    item: "4.3 worked example 4.10, follow-up",
    question: "Ga2O3 from 29.0 g Ga",
    result: () => theoreticalYield("4 Ga + 3 O2 -> 2 Ga2O3", "Ga2O3", { Ga: "29.0 g" }),
    unit: "g",
    printed: "39.0",
    within: 0.05,
  },
  {
    item: "4.3 worked example 4.11",
    question: "O2 to burn 702 g C8H18",
    result: () => reactionAmounts("C8H18 + O2 -> CO2 + H2O", { C8H18: "702 g" }).of("O2").mass,
    unit: "g",
    printed: "2.46e3",
    within: 5,
  },
  {
    item: "4.3 worked example 4.11, follow-up",
    question: "CO for 25.13 g Fe2O3",
    result: () => requiredAmount("Fe2O3 + 3 CO -> 2 Fe + 3 CO2", { Fe2O3: "25.13 g" }, "CO").mass!,
    unit: "g",
    printed: "13.22",
    within: 0.005,
  },
  {
    item: "4.3 section exercise 12",
    question: "urea from the CO2 of 1.00e3 kg carbon",
    result: () => theoreticalYield("CO2 + 2 NH3 -> CO(NH2)2 + H2O", "CO(NH2)2", { CO2: amountOf("1.00e3 kg", "C") }),
    unit: "kg",
    printed: "5.00e3",
    within: 5,
  },
  {
    item: "4.3 section exercise 8b",
    question: "Zn(CN)2 from 35.27 g K[Ag(CN)2]",
    result: () =>
      theoreticalYield("2 K[Ag(CN)2] + Zn -> 2 Ag + Zn(CN)2 + 2 KCN", "Zn(CN)2", { "K[Ag(CN)2]": "35.27 g" }),
    unit: "g",
    printed: "10.41",
    within: 0.005,
  },
  {
    item: "4.3 section exercise 18",
    question: "TiO2 from 379 g ore with 88.3 % FeTiO3, one for one",
    result: () => massOf(amountOf("379 g", "FeTiO3", { assay: "88.3 %" }), "TiO2"),
    unit: "g",
    printed: "176",
    within: 0.5,
  },
  {
    item: "4.3 section exercise 16",
    question: "0.2089 mol/L KI for 43.88 mL of 0.3842 mol/L Cu(NO3)2",
    result: () =>
      requiredAmount(
        "2 Cu(NO3)2 + 4 KI -> 2 CuI + I2 + 4 KNO3",
        { "Cu(NO3)2": { volume: "43.88 mL", strength: "0.3842 mol/L" } },
        "KI",
        { strength: "0.2089 mol/L" },
      ).volume!,
    unit: "mL",
    printed: "161.4",
    within: 0.05,
  },
  {
    item: "4.4 worked example 4.13",
    question: "percent yield of 0.392 g Cu from 1.274 g CuSO4",
    result: () => percentYield("0.392 g", theoreticalYield("CuSO4 + Zn -> Cu + ZnSO4", "Cu", { CuSO4: "1.274 g" })),
    unit: "%",
    printed: "77.3",
    within: 0.05,
  },
  {
    item: "4.4 worked example 4.13, follow-up",
    question: "percent yield of 12.5 g CF2Cl2 from 32.9 g CCl4",
    result: () =>
      percentYield("12.5 g", theoreticalYield("CCl4 + 2 HF -> CF2Cl2 + 2 HCl", "CF2Cl2", { CCl4: "32.9 g" })),
    unit: "%",
    printed: "48.3",
    within: 0.05,
  },
  {
    item: "4.4 section exercise 8",
    question: "percent yield of 1.21 kg benzoic acid from 1.000 kg toluene",
    result: () =>
      percentYield(
        "1.21 kg",
        theoreticalYield("2 C6H5CH3 + 3 O2 -> 2 C6H5CO2H + 2 H2O", "C6H5CO2H", { C6H5CH3: "1.000 kg" }),
      ),
    unit: "%",
    printed: "91.3",
    within: 0.05,
  },
  {
    item: "4.4 section exercise 10",
    question: "percent yield of 1.17 L ether (0.7134 g/mL) from 1.500 L ethanol (0.7894 g/mL)",
    result: () =>
      percentYield(
        quantity("1.17 L").times("0.7134 g/mL"),
        theoreticalYield("2 C2H5OH -> (C2H5)2O + H2O", "(C2H5)2O", {
          C2H5OH: { volume: "1.500 L", density: "0.7894 g/mL" },
        }),
      ),
    unit: "%",
    printed: "87.6",
    within: 0.05,
  },
];

describe("published stoichiometry", () => {
  checkPrinted(cases);

  // 4.4 section exercises 2 and 14.
  test.each([
    ["2 Na + Cl2 -> 2 NaCl", { Na: "8 g", Cl2: "8 g" }, "Cl2"],
    [
      "Na2C2O4 + UO2(NO3)2 + 3 H2O -> UO2(C2O4).3H2O + 2 NaNO3",
      { Na2C2O4: "0.4031 g", "UO2(NO3)2": "1.481 g" },
      "Na2C2O4",
    ],
  ] as const)("in %s with %o it is %s that runs out", (equation, feeds, limiting) => {
    expect(limitingReagents(equation, feeds).map(String)).toEqual([limiting]);
  });
});

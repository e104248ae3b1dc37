// Solutions, dilution and strengths against published problems and figures of the trade.
// Chemistry 2e (OpenStax, 2019, web revision), sections 3.3 and 3.4, unless the row says otherwise; tolerance half a unit
// of the last printed place.
import { describe } from "vitest";
import {
  amountOf,
  convertStrength,
  dilute,
  feedAmount,
  massOf,
  mixToStrength,
  strengthPrepared,
} from "../../src/amount";
import { type Quantity, quantity } from "../../src/quantity";
import { checkPrinted, type Printed } from "../tools/printed";

const made = (
  mass: Parameters<typeof strengthPrepared>[0],
  of: string,
  volume: "1.00 L" | "0.075 L" | "0.500 L" | "2.50 L" | "2.00 L",
): Quantity => strengthPrepared(mass, { of, volume }).concentration;

const cases: readonly Printed[] = [
  {
    item: "3.3 worked example 3.17",
    question: "NaCl in 0.250 L of 5.30 mol/L",
    result: () => massOf(feedAmount("NaCl", { volume: "0.250 L", strength: "5.30 mol/L" }), "NaCl"),
    unit: "g",
    printed: "77.4",
    within: 0.05,
  },
  {
    item: "3.3 worked example 3.17, follow-up",
    question: "CaCl2 in 250.0 mL of 0.200 mol/L",
    result: () => massOf(feedAmount("CaCl2", { volume: "250.0 mL", strength: "0.200 mol/L" }), "CaCl2"),
    unit: "g",
    printed: "5.55",
    within: 0.005,
  },
  {
    item: "3.3 worked example 3.18, follow-up",
    question: "volume of 1.50 mol/L KBr that holds 66.0 g",
    result: () => amountOf("66.0 g", "KBr").dividedBy("1.50 mol/L"),
    unit: "L",
    printed: "0.370",
    within: 0.0005,
  },
  {
    item: "3.3 section exercise 4b",
    question: "98.0 g H3PO4 in 1.00 L",
    result: () => made("98.0 g", "H3PO4", "1.00 L"),
    unit: "mol/L",
    printed: "1.00",
    within: 0.005,
  },
  {
    item: "3.3 section exercise 4f",
    question: "1.8e4 mg HCl in 0.075 L",
    result: () => made("1.8e4 mg", "HCl", "0.075 L"),
    unit: "mol/L",
    printed: "6.6",
    within: 0.05,
  },
  {
    item: "3.3 section exercise 12b",
    question: "4.25 g NH3 in 0.500 L",
    result: () => made("4.25 g", "NH3", "0.500 L"),
    unit: "mol/L",
    printed: "0.499",
    within: 0.0005,
  },
  {
    item: "3.3 section exercise 12c",
    question: "1.49 kg C3H7OH in 2.50 L",
    result: () => made("1.49 kg", "C3H7OH", "2.50 L"),
    unit: "mol/L",
    printed: "9.92",
    within: 0.005,
  },
  {
    item: "3.3 section exercise 22",
    question: "868.8 g HCl in 2.00 L",
    result: () => made("868.8 g", "HCl", "2.00 L"),
    unit: "mol/L",
    printed: "11.9",
    within: 0.05,
  },
  {
    item: "3.3 section exercise 24",
    question: "volume of 0.20 mol/L K2SO4 that holds 57 g",
    result: () => amountOf("57 g", "K2SO4").dividedBy("0.20 mol/L"),
    unit: "L",
    printed: "1.6",
    within: 0.05,
  },
  {
    item: "3.3 section exercise 6",
    question: "glucose in 0.500 L of 0.30 mol/L",
    result: () => massOf(feedAmount("C6H12O6", { volume: "0.500 L", strength: "0.30 mol/L" }), "C6H12O6"),
    unit: "g",
    printed: "27",
    within: 0.5,
  },
  {
    item: "3.3 section exercise 8a",
    question: "sulfuric acid in 2.00 L of 18.5 mol/L",
    result: () => massOf(feedAmount("H2SO4", { volume: "2.00 L", strength: "18.5 mol/L" }), "H2SO4"),
    unit: "g",
    printed: "3.63e3",
    within: 5,
  },
  {
    item: "3.4 section exercise 5",
    question: "calcium in water of 175 mg CaCO3 per litre",
    result: () => convertStrength("175 mg/L", { of: "CaCO3", to: "mol/L" }),
    unit: "mol/L",
    printed: "1.75e-3",
    within: 0.000005,
  },
  {
    item: "3.4 section exercise 9",
    question: "CuI in 454 g of salt with 0.0100 %",
    result: () => amountOf("454 g", "CuI", { assay: "0.0100 %" }),
    unit: "mol",
    printed: "2.38e-4",
    within: 0.0000005,
  },
  {
    item: "3.3 worked example 3.19",
    question: "0.850 L of 5.00 mol/L made up to 1.80 L",
    result: () => dilute({ from: "5.00 mol/L", take: "0.850 L", makeUpTo: "1.80 L" }).answer,
    unit: "mol/L",
    printed: "2.36",
    within: 0.005,
  },
  {
    item: "3.3 worked example 3.19, follow-up",
    question: "25.0 mL of 2.04 mol/L made up to 500.0 mL",
    result: () => dilute({ from: "2.04 mol/L", take: "25.0 mL", makeUpTo: "500.0 mL" }).answer,
    unit: "mol/L",
    printed: "0.102",
    within: 0.0005,
  },
  {
    item: "3.3 worked example 3.20, follow-up",
    question: "0.125 mol/L from 0.250 L of 1.88 mol/L",
    result: () => dilute({ from: "1.88 mol/L", take: "0.250 L", to: "0.125 mol/L" }).answer,
    unit: "L",
    printed: "3.76",
    within: 0.005,
  },
  {
    item: "3.3 worked example 3.21, follow-up",
    question: "0.575 mol/L from 50.00 mL of 3.00 mol/L",
    result: () => dilute({ from: "3.00 mol/L", take: "50.00 mL", to: "0.575 mol/L" }).answer,
    unit: "L",
    printed: "0.261",
    within: 0.0005,
  },
  {
    item: "3.3 section exercise 20b",
    question: "0.5000 L of 0.1222 mol/L made up to 1.250 L",
    result: () => dilute({ from: "0.1222 mol/L", take: "0.5000 L", makeUpTo: "1.250 L" }).answer,
    unit: "mol/L",
    printed: "0.04888",
    within: 0.000005,
  },
  {
    item: "3.4 worked example 3.23",
    question: "HCl in 0.500 L of 37.2 % acid of 1.19 g/mL",
    result: () => massOf(feedAmount("HCl", { volume: "500 mL", strength: "37.2 % w/w", density: "1.19 g/mL" }), "HCl"),
    unit: "g",
    printed: "221",
    within: 0.5,
  },
  {
    item: "3.4 worked example 3.23, follow-up",
    question: "volume of 37.2 % acid of 1.19 g/mL that holds 125 g HCl",
    result: () => quantity("125 g").dividedBy(convertStrength("37.2 % w/w", { to: "g/L", density: "1.19 g/mL" })),
    unit: "mL",
    printed: "282",
    within: 0.5,
  },
  {
    item: "3.4 section exercise 1",
    question: "68.0 % nitric acid for 400.0 g of 10.0 %",
    result: () =>
      mixToStrength({ strong: "68.0 % w/w", weak: "0 % w/w", wanted: "10.0 % w/w", mass: "400.0 g" }).strong,
    unit: "g",
    printed: "58.8",
    within: 0.05,
  },
  {
    item: "3.4 section exercise 11",
    question: "glucose, 5.0 % by mass, 1.029 g/mL",
    result: () => convertStrength("5.0 % w/w", { of: "C6H12O6", to: "mol/L", density: "1.029 g/mL" }),
    unit: "mol/L",
    printed: "0.29",
    within: 0.005,
  },
];

describe("published solution problems", () => {
  checkPrinted(cases);
});

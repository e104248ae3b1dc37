// Gas laws against published problems: volume, pressure, amount, density and molar mass.
// Chemistry 2e (OpenStax, 2019, web revision), sections 9.2 and 9.3; tolerance half a unit of the last printed place unless
// said otherwise.
import { describe, expect, test } from "vitest";
import {
  amountOf,
  gasAmount,
  gasDensity,
  gasPressure,
  gasVolume,
  gasVolumeAt,
  massOf,
  molarMassOfGas,
  vapourPressureOfWater,
} from "../../src/amount";
import { quantity } from "../../src/quantity";
import { checkPrinted, type Printed } from "../tools/printed";

const cases: readonly Printed[] = [
  {
    item: "9.2 worked example 9.9",
    question: "volume of 655 g CH4 at 25 °C and 745 torr",
    result: () => gasVolume(amountOf("655 g", "CH4"), { temperature: "25 °C", pressure: "745 torr" }),
    unit: "L",
    printed: "1.02e3",
    within: 5,
  },
  {
    item: "9.2 worked example 9.9, follow-up",
    question: "pressure of 2520 mol H2 in 180 L at 27 °C",
    result: () => gasPressure(["2520 mol"], { volume: "180 L", temperature: "27 °C" }),
    unit: "bar",
    printed: "350",
    within: 5,
  },
  {
    item: "9.2 worked example 9.10, follow-up",
    question: "0.250 L NH3 at 27 °C and 0.850 atm, brought to 0 °C and 1.00 atm",
    result: () =>
      gasVolumeAt("0.250 L", {
        from: { temperature: "27 °C", pressure: "0.850 atm" },
        to: { temperature: "0 °C", pressure: "1.00 atm" },
      }),
    unit: "L",
    printed: "0.193",
    within: 0.0005,
  },
  {
    item: "9.2 worked example 9.6",
    question: "0.300 L CO2 at 10 °C, brought to 30 °C",
    result: () => gasVolumeAt("0.300 L", { from: { temperature: "10 °C" }, to: { temperature: "30 °C" } }),
    unit: "L",
    printed: "0.321",
    within: 0.0005,
  },
  {
    item: "9.2 section exercise 14",
    question: "volume of 8.80 mol He at 0.992 atm and 25 °C",
    result: () => gasVolume("8.80 mol", { gas: "He", temperature: "25 °C", pressure: "0.992 atm" }),
    unit: "L",
    printed: "217",
    within: 0.5,
  },
  {
    item: "9.2 section exercise 16",
    question: "amount of BF3 in 4.3410 L at 788.0 K and 1.220 atm",
    result: () => gasAmount("4.3410 L", { gas: "BF3", temperature: "788.0 K", pressure: "1.220 atm" }),
    unit: "mol",
    printed: "8.190e-2",
    within: 0.000005,
  },
  {
    item: "9.2 section exercise 18a",
    question: "mass of CO2 in 0.100 L at 307 torr and 26 °C",
    result: () => massOf(gasAmount("0.100 L", { temperature: "26 °C", pressure: "307 torr" }), "CO2"),
    unit: "g",
    printed: "7.24e-2",
    within: 0.00005,
  },
  {
    item: "9.2 section exercise 18b",
    question: "mass of C2H4 in 8.75 L at 378.3 kPa and 483 K",
    result: () => massOf(gasAmount("8.75 L", { temperature: "483 K", pressure: "378.3 kPa" }), "C2H4"),
    unit: "g",
    printed: "23.1",
    within: 0.05,
  },
  {
    item: "9.3 worked example 9.11",
    question: "density of N2 at 273 K and 1.00 atm",
    result: () => gasDensity("N2", { temperature: "273 K", pressure: "1.00 atm" }),
    unit: "g/L",
    printed: "1.25",
    within: 0.005,
  },
  {
    item: "9.3 worked example 9.13, follow-up",
    question: "molar mass of a vapour, 3.243e-2 g in 56.0 mL at 550 °C and 31.89 kPa",
    result: () =>
      molarMassOfGas(quantity("3.243e-2 g").dividedBy("56.0 mL"), { temperature: "550 °C", pressure: "31.89 kPa" }),
    unit: "g/mol",
    printed: "124",
    within: 0.5,
  },
  {
    item: "9.3 worked example 9.19 (the book rounded a step: one unit of the last place)",
    question: "volume of H2 at 27 °C and 723 torr from 8.88 g Ga, three H2 for two Ga",
    result: () =>
      gasVolume(amountOf("8.88 g", "Ga").times("3/2"), { gas: "H2", temperature: "27 °C", pressure: "723 torr" }),
    unit: "L",
    printed: "4.94",
    within: 0.01,
  },
  {
    item: "9.3 worked example 9.14, follow-up (the book rounded a step: one unit of the last place)",
    question: "total pressure of 0.0388 mol N2, 0.147 mol CO and 0.0803 mol H2 in 5.73 L at 25 °C",
    result: () => gasPressure(["0.0388 mol", "0.147 mol", "0.0803 mol"], { volume: "5.73 L", temperature: "25 °C" }),
    unit: "atm",
    printed: "1.137",
    within: 0.001,
  },
];

describe("published gas problems", () => {
  checkPrinted(cases);
});

describe("vapour pressure of water", () => {
  // CRC Handbook, 73rd ed. (1992), vapour pressure of water 0 to 370 °C, in kPa; temperature scale ITS-90 differs by up to 0.1 %.
  test.each([
    ["0 °C", 0.6113],
    ["20 °C", 2.3388],
    ["25 °C", 3.169],
    ["50 °C", 12.344],
    ["100 °C", 101.325],
  ] as const)("water at %s has a vapour pressure of %d kPa", (temperature, printed) => {
    expect(Math.abs(vapourPressureOfWater(temperature).in("kPa").toNumber() / printed - 1)).toBeLessThan(0.0012);
  });
});

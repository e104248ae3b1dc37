// Hydrates against school problems and figures of the trade; the source stands on each row.
import { describe, expect, test } from "vitest";
import { massOf } from "../../src/amount";
import { crystalWaterIn, equivalentMass, waterContent } from "../../src/hydrate";
import { type Quantity, quantity } from "../../src/quantity";

interface Case {
  readonly source: string;
  readonly question: string;
  readonly result: () => Quantity;
  readonly unit: string;
  readonly answer: string;
  readonly within: number;
}

const SCHOOL = "school exercise composed for the compilation, computed there (memory)";

const cases: readonly Case[] = [
  {
    source: "memory",
    question: "water in blue vitriol, CuSO4·5H2O",
    result: () => waterContent("CuSO4·5H2O"),
    unit: "%",
    answer: "36.08",
    within: 0.005,
  },
  {
    source: "memory",
    question: "water in Epsom salt, MgSO4·7H2O",
    result: () => waterContent("MgSO4·7H2O"),
    unit: "%",
    answer: "51.17",
    within: 0.005,
  },
  {
    source: SCHOOL,
    question: "CuSO4·5H2O for 250.0 mL of 0.1000 mol/L",
    result: () => massOf(quantity("0.1000 mol/L").times("250.0 mL"), "CuSO4·5H2O"),
    unit: "g",
    answer: "6.242",
    within: 0.0005,
  },
  {
    source: SCHOOL,
    question: "MgSO4·7H2O that matches 25.0 g MgSO4",
    result: () => equivalentMass("25.0 g", { from: "MgSO4", to: "MgSO4·7H2O" }),
    unit: "g",
    answer: "51.2",
    within: 0.05,
  },
  {
    source: SCHOOL,
    question: "water that comes with 100.0 g of KAl(SO4)2·12H2O",
    result: () => crystalWaterIn("100.0 g", "KAl(SO4)2·12H2O"),
    unit: "g",
    answer: "45.57",
    within: 0.005,
  },
  {
    source: SCHOOL,
    question: "FeSO4·H2O for 30.0 g FeSO4·7H2O",
    result: () => equivalentMass("30.0 g", { from: "FeSO4·7H2O", to: "FeSO4·H2O" }),
    unit: "g",
    answer: "18.3",
    within: 0.05,
  },
  {
    source: "common practice, no source",
    question: "soda from 100 g washing soda crystals is about 37 g",
    result: () => equivalentMass("100 g", { from: "Na2CO3·10H2O", to: "Na2CO3" }),
    unit: "g",
    answer: "37",
    within: 0.5,
  },
  {
    source: "Regulation (EC) No 2003/2003 on fertilisers, K2O × 0.830 = K (memory)",
    question: "potassium in 1 kg K2O",
    result: () => equivalentMass("1 kg", { from: "K2O", to: "K" }),
    unit: "g",
    answer: "830",
    within: 0.5,
  },
  {
    source: "Regulation (EC) No 2003/2003 on fertilisers, P2O5 × 0.436 = P (memory)",
    question: "phosphorus in 1 kg P2O5",
    result: () => equivalentMass("1 kg", { from: "P2O5", to: "P" }),
    unit: "g",
    answer: "436",
    within: 0.5,
  },
];

describe("published hydrate figures", () => {
  test.each(cases)("$question: $answer $unit ($source)", ({ result, unit, answer, within }) => {
    expect(Math.abs(result().in(unit).minus(answer).toNumber())).toBeLessThanOrEqual(within);
  });
});

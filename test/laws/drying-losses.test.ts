// The steps of heating against the losses on drying and ignition that pharmacopoeias and food codes ask for: what is over at that
// temperature must be the loss in mass that their limits bracket.
import { describe, expect, it } from "vitest";
import { molarMass, parseFormula } from "../../src/formula";
import { THERMAL } from "../../src/substance/data/thermal-steps";

/** Formula, °C of drying or ignition, limits of the loss in percent, where they stand. */
const LOSSES: readonly (readonly [formula: string, at: number, least: number, most: number, where: string])[] = [
  ["Na2HPO4·2H2O", 130, 18.5, 21.5, "USP 29, dibasic sodium phosphate"],
  ["Na2HPO4·12H2O", 130, 55, 64, "USP 29, dibasic sodium phosphate"],
  ["NaCH3COO·3H2O", 130, 39, 40.5, "British Pharmacopoeia, sodium acetate trihydrate"],
  ["Na3C6H5O7·2H2O", 180, 10, 13, "USP 29, sodium citrate"],
  ["K3C6H5O7·H2O", 180, 3, 6, "USP 28, potassium citrate"],
  ["Na2MoO4·2H2O", 140, 14, 16, "British Pharmacopoeia, sodium molybdate dihydrate"],
  ["KNaC4H4O6·4H2O", 150, 21, 26, "food code, potassium sodium tartrate, water"],
  ["Ca3(C6H5O7)2·4H2O", 150, 10, 14, "JECFA, tricalcium citrate"],
  ["Na4P2O7·10H2O", 550, 38, 42, "JECFA, tetrasodium pyrophosphate"],
  ["Na3PO4·12H2O", 800, 45, 58, "Directive 2008/84/EC, E 339(iii)"],
  ["MgHPO4·3H2O", 800, 29, 36.5, "JECFA, magnesium hydrogen phosphate (36, on a scale of whole percent)"],
  ["CaHPO4·2H2O", 825, 24.5, 26.5, "USP 28, dibasic calcium phosphate dihydrate"],
  ["CaSO4·2H2O", 800, 18, 22, "British Pharmacopoeia, calcium sulfate dihydrate"],
  ["KAl(SO4)2·12H2O", 400, 43, 46, "USP 32, potassium alum"],
  ["ZnSO4·7H2O", 100, 37, 38, "USP of 1905, zinc sulfate: the sixth water at 100 °C, 6 × 18.015 of 287.54"],
  [
    "MgSO4·7H2O",
    120,
    43,
    44.5,
    "The Merck Index: 6 of 7 H2O at 120 °C, 6 × 18.015 of 246.47; a book of 1888: nearly 44 %",
  ],
];

const massOf = (formula: string) => Number(molarMass(parseFormula(formula)).value);
const fraction = (text: string) => {
  const [over, under = "1"] = text.split("/");
  return Number(over) / Number(under);
};

describe("the steps of heating", () => {
  it.each(LOSSES)("%s loses by %i °C what its limits ask for", (formula, at, least, most) => {
    const { steps } = THERMAL().find((row) => row.formula === formula)!;
    const gone = steps
      .filter(({ from, to = from }) => Number(to) <= at)
      .flatMap(({ leaves }) => leaves)
      .reduce((sum, one) => sum + fraction(one.coefficient) * massOf(one.formula), 0);
    const loss = (100 * gone) / massOf(formula);
    expect(loss).toBeGreaterThan(least);
    expect(loss).toBeLessThan(most);
  });
});

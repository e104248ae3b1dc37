// Molar masses as reagent bottles print them (memory); half a unit of the last printed place, and the span of two labels of
// zinc sulfate, 287.54 to 287.56.
import { describe, expect, it } from "vitest";
import { molarMass } from "../../src/formula";

describe("molar masses on labels", () => {
  it.each([
    ["KAl(SO4)2.12H2O", "474.37", 0.005],
    ["K4[Fe(CN)6].3H2O", "422.39", 0.005],
    ["(NH4)2Fe(SO4)2.6H2O", "392.13", 0.0051],
    ["Na2B4O7.10H2O", "381.36", 0.005],
    ["KHC8H4O4", "204.22", 0.005],
    ["Na2S2O3.5H2O", "248.17", 0.005],
    ["ZnSO4·7H2O", "287.54", 0.025],
    ["CuSO4·5H2O", "249.68", 0.005],
  ])("%s weighs %s g/mol", (formula, printed, within) => {
    expect(Math.abs(molarMass(formula).in("g/mol").toNumber() - Number(printed))).toBeLessThanOrEqual(within);
  });
});

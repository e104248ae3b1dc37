// Bench salts at the temperatures people ask for, against measurements that are not the table's own.
import { describe, expect, it } from "vitest";
import { solubilityOf, trySolubilityOf } from "../../src/solubility/curves/solubility";
import { SolubilityError } from "../../src/solubility/error";

const at = (celsius: number) => ({ value: celsius, unit: "°C" as const });

describe("bench salts between two figures", () => {
  /**
   * Older measurements as the handbooks of solubility print them, g anhydrous per 100 g water. Memory, of: Dibbits 1874
   * (NaHCO3); Baxter, Boylston and Hubbard 1906 (KMnO4); Horn and van Wagener 1903 (borax, decahydrate).
   */
  const measured: readonly (readonly [formula: string, celsius: number, grams: number])[] = [
    ["NaHCO3", 5, 7.45],
    ["NaHCO3", 15, 8.85],
    ["NaHCO3", 35, 11.9],
    ["NaHCO3", 45, 13.55],
    ["NaHCO3", 55, 15.4],
    ["KMnO4", 34.8, 10.67],
    ["KMnO4", 45, 14.58],
    ["KMnO4", 55, 19.33],
    ["Na2B4O7", 45, 8.1],
    ["Na2B4O7", 55, 14.2],
  ];

  it.each(measured)("reads %s at %d °C within 3 % of %d g", (formula, celsius, grams) => {
    // 3 %: the two sets differ by up to 2.5 % where both have a figure (borax 30 °C: 3.9 and 3.97 g)
    const { value } = solubilityOf(formula, at(celsius)).perHundredGramsWater;
    expect(Math.abs(value.toNumber() / grams - 1)).toBeLessThan(0.03);
  });

  it("knows that hot borax is kernite and the pentahydrate dissolves more", () => {
    // Memory, of a technical encyclopedia: kernite 17.12 and 28.22, pentahydrate 19.49 and 34.63 mass % at 70 and 100 °C
    const per100 = (percent: number) => (100 * percent) / (100 - percent);
    for (const [celsius, kernite, pentahydrate] of [
      [70, 17.12, 19.49],
      [100, 28.22, 34.63],
    ] as const) {
      const hot = solubilityOf("Na2B4O7", at(celsius));
      expect(hot.solidPhase).toBe("Na2B4O7·4H2O");
      expect(Math.abs(hot.perHundredGramsWater.value.toNumber() / per100(kernite) - 1)).toBeLessThan(0.02);
      const other = hot.competing.find((figure) => figure.celsius === celsius)!;
      expect(Math.abs(Number(other.value) / per100(pentahydrate) - 1)).toBeLessThan(0.005);
      expect(hot.warnings.join("; ")).toContain("sources disagree");
    }
  });

  it("says which figure is missing where it refuses", () => {
    const missing = (formula: string, celsius: number) => {
      const outcome = trySolubilityOf(formula, at(celsius));
      if (outcome.ok || !(outcome.error instanceof SolubilityError)) throw new Error(`${formula} answers`);
      return outcome.error.message;
    };
    const gap = missing("CaCl2", 35);
    expect(gap).toContain("a figure of CaCl2 at 35 °C over CaCl2·4H2O is missing");
    expect(gap).toContain("96.54 g at 30 °C over CaCl2·6H2O and 112.1 g at 40 °C over CaCl2·4H2O");
    expect(missing("KMnO4", 65)).toContain("known from 0 to 60 °C; a figure at 65 °C over KMnO4 is missing");
    expect(missing("KAl(SO4)2", 95)).toContain("melts in its own water at 92.5 °C");
    expect(missing("C6H8O7", 2)).toContain("nearest: 117 g at 10 °C over C6H8O7·H2O");
  });
});

// Amounts in reactions against figures of the trade: common practice, no source.
import { describe, expect, test } from "vitest";
import { amountOf, massOf, reactionAmounts, requiredAmount } from "../../src/amount";

describe("figures of the trade", () => {
  // Common practice, no source: the recipe figure for basic copper carbonate, two bicarbonate to one copper.
  test("100 g of copper(II) sulfate pentahydrate needs 67.29 g of sodium hydrogencarbonate at two to one", () => {
    const needed = massOf(amountOf("100 g", "CuSO4·5H2O").times(2), "NaHCO3");
    expect(needed.in("g").toFixed(2)).toBe("67.29");
    const written = requiredAmount(
      "2 CuSO4 + 4 NaHCO3 -> Cu2(OH)2CO3 + 2 Na2SO4 + 3 CO2 + H2O",
      { CuSO4: { mass: "100 g", as: "CuSO4·5H2O" } },
      "NaHCO3",
    );
    expect(written.mass!.in("g").toFixed(2)).toBe("67.29");
  });

  // Bench practice compilation, section 2 (calculated there on abridged weights): bicarbonate gives three times the CO2 of soda.
  test("bicarbonate gives three times the carbon dioxide of soda for the same basic copper carbonate", () => {
    const soda = reactionAmounts("2 CuSO4 + 2 Na2CO3 + H2O -> Cu2(OH)2CO3 + 2 Na2SO4 + CO2", { CuSO4: "1 mol" });
    const bicarbonate = reactionAmounts("2 CuSO4 + 4 NaHCO3 -> Cu2(OH)2CO3 + 2 Na2SO4 + 3 CO2 + H2O", {
      CuSO4: "1 mol",
    });
    expect(soda.of("CO2").amount.in("mol").toString()).toBe("0.5");
    expect(bicarbonate.of("CO2").amount.in("mol").toString()).toBe("1.5");
  });
});

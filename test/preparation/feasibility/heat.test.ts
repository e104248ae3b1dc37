// What heat does, by the table of thermal steps.
import { doesItGo } from "preparative";
import { describe, expect, it } from "vitest";

describe("a dry solid", () => {
  it("gives what its steps give, with the heat from which it does", () => {
    const lime = doesItGo({ equation: "CaCO3 -> CaO + CO2", product: "CaO" });
    expect(lime.verdict).toBe("goes");
    expect(lime.reasons[0]!.code).toBe("thermal");
    // lime burns from some 700 to 900 °C
    expect(lime.reasons[0]!.numbers[0]!.in("°C").toNumber()).toBeGreaterThan(600);
    expect(doesItGo({ equation: "NaHCO3 -> Na2CO3 + CO2 + H2O", product: "Na2CO3" }).verdict).toBe("goes");
    expect(doesItGo({ equation: "Cu2(OH)2CO3 -> CuO + CO2 + H2O", product: "CuO" }).verdict).toBe("goes");
  });

  it("is unknown without a step, and says so", () => {
    const soda = doesItGo({ equation: "Na2CO3 -> Na2O + CO2", product: "Na2O" });
    expect(soda.verdict).toBe("unknown");
    expect(soda.reasons[0]!.text).toMatch(/^missing: /);
  });
});

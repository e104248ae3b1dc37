// A wrong unit in a literal is a compile error; results are typed by what they measure.
import { expectTypeOf, it } from "vitest";
import type { Quantity } from "../../src/quantity";
import { crystallise, solubilityOf, washPlan, waterToDissolve } from "../../src/solubility";
import { temperatureRise } from "../../src/thermochemistry";

it("refuses wrong units at compile time", () => {
  // @ts-expect-error a temperature is not a mass
  solubilityOf("NaCl", "20 g");
  // @ts-expect-error a mass is not an amount of substance
  waterToDissolve({ formula: "NaCl", mass: "1 mol", temperature: "20 °C" });
  // @ts-expect-error a volume is not a mass
  crystallise({ formula: "KNO3", mass: "10 mL", hot: "60 °C", cold: "10 °C" });
  // @ts-expect-error no such kind of solid
  washPlan({ dryCakeMass: "1 g", kindOfSolid: "porridge", washVolume: "10 mL", targetResidue: "0.1 %" });
  // @ts-expect-error the mass is missing
  temperatureRise({ heat: "1 kJ" });
});

it("types results by dimension", () => {
  expectTypeOf(solubilityOf).returns.toHaveProperty("perHundredGramsWater").toEqualTypeOf<Quantity<"mass">>();
  expectTypeOf(waterToDissolve).returns.toHaveProperty("volume").toEqualTypeOf<Quantity<"volume">>();
  expectTypeOf(washPlan).returns.toHaveProperty("washes").toEqualTypeOf<number>();
  expectTypeOf(temperatureRise).returns.toHaveProperty("rise").toEqualTypeOf<Quantity<"temperature difference">>();
});

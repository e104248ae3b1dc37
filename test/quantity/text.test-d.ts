// A wrong unit or dimension in a literal is a compile error.

import {
  applyFunction,
  type DensityText,
  type MassFractionText,
  type MassText,
  meanOfReadings,
  meansOfPairedReadings,
  minimum,
  type Quantity,
  quantity,
  squareRoot,
  sum,
  type TemperatureText,
  tryQuantity,
  type VolumeText,
  withCorrelation,
} from "preparative/quantity";
import { assertType, describe, expectTypeOf, it } from "vitest";

describe("quantities as text types", () => {
  it("accepts every way of writing a mass", () => {
    assertType<MassText>("48.20 g");
    assertType<MassText>("1.5e-3 kg");
    assertType<MassText>("12.5(2) g");
    assertType<MassText>("12.5 ± 0.2 g");
    assertType<MassText>("[1.0, 1.2] g");
    assertType<MassText>("12.5 g ± 2 %");
    assertType<MassText>("12.5 ± 0.2 g (rectangular)");
    assertType<MassText>("3.5 oz av");
  });

  it("knows the small units of water and blood", () => {
    assertType<MassFractionText>("5 ppb w/w");
    assertType<DensityText>("90 mg/dL");
    expectTypeOf(quantity("5 ppb w/w")).toEqualTypeOf<Quantity<"mass fraction">>();
    expectTypeOf(quantity("90 mg/dL")).toEqualTypeOf<Quantity<"density">>();
    // @ts-expect-error a coulomb is no temperature
    assertType<TemperatureText>("25 C");
  });

  it("refuses wrong units, wrong dimensions and commas", () => {
    // @ts-expect-error a volume is no mass
    assertType<MassText>("5 mL");
    // @ts-expect-error no such unit
    assertType<MassText>("5 gramm");
    // @ts-expect-error decimal comma
    assertType<MassText>("5,5 g");
    // @ts-expect-error no value
    assertType<MassText>("g");
    // @ts-expect-error an ounce of what
    assertType<MassText>("5 oz");
    // @ts-expect-error a difference is no temperature
    assertType<TemperatureText>("5 Δ°C");
    // @ts-expect-error which gallon
    assertType<VolumeText>("5 gal");
  });

  it("follows the dimension of what is put in", () => {
    expectTypeOf(sum(["1.0 g", quantity("250 mg")])).toEqualTypeOf<Quantity<"mass">>();
    expectTypeOf(minimum(["2.0 mol", "900 mmol"])).toEqualTypeOf<Quantity<"amount of substance">>();
    expectTypeOf(meanOfReadings(["10.01 mL", "10.03 mL"])).toEqualTypeOf<Quantity<"volume">>();
    expectTypeOf(squareRoot("2")).toEqualTypeOf<Quantity<"number">>();
    expectTypeOf(quantity({ value: 2, unit: "kg" })).toEqualTypeOf<Quantity<"mass">>();
    expectTypeOf(withCorrelation({ a: "10.0(1) mL", b: "2.0(1) g" }, []).b).toEqualTypeOf<Quantity<"mass">>();
    expectTypeOf(meansOfPairedReadings({ a: ["1 g", "2 g"], t: ["20 °C", "21 °C"] }).t).toEqualTypeOf<
      Quantity<"temperature">
    >();
    const one = { name: "one", unit: "g", value: () => 1, partials: () => [0] };
    expectTypeOf(applyFunction(["1 g"], { ...one, unit: "mL" })).toEqualTypeOf<Quantity<"volume">>();
    const read = tryQuantity("5 mL");
    if (read.ok) expectTypeOf(read.value).toEqualTypeOf<Quantity<"volume">>();
    // @ts-expect-error a sum of volumes is no mass
    const mass: Quantity<"mass"> = sum(["1 mL", "2 mL"]);
    assertType<Quantity>(mass);
  });

  it("knows the dimension of a literal", () => {
    expectTypeOf(quantity("48.20 g")).toEqualTypeOf<Quantity<"mass">>();
    expectTypeOf(quantity("25 °C")).toEqualTypeOf<Quantity<"temperature">>();
    expectTypeOf(quantity("0.1 mol/L")).toEqualTypeOf<Quantity<"concentration">>();
    expectTypeOf(quantity("5 % w/w")).toEqualTypeOf<Quantity<"mass fraction">>();
    const needsMass = (_: Quantity<"mass">): void => {};
    needsMass(quantity("48.20 g"));
    // @ts-expect-error a volume is no mass
    needsMass(quantity("48.20 mL"));
    needsMass(quantity("1 g/mL").times("1 mL")); // computed: checked when used
  });
});

import { isPreparativeError, type PreparativeError, quantity, tryQuantity } from "preparative";
import { describe, expect, it } from "vitest";
import { attempt } from "../../src/foundation/error";
import { USUAL } from "../../src/quantity/text/meant";
import { expectDimension } from "../../src/quantity/value/expect";
import { SPELLINGS } from "../../src/quantity/value/unit-table";

const refusal = (text: unknown): PreparativeError => {
  const outcome = tryQuantity(text as string);
  if (outcome.ok) throw new Error(`accepted: ${String(outcome.value)}`);
  return outcome.error;
};

describe("reading quantities", () => {
  it.each([
    // text, value, unit, dimension, standard uncertainty
    ["48.20 g", "48.2", "g", "mass", undefined],
    ["48.20g", "48.2", "g", "mass", undefined],
    ["1.5e-3 mol", "0.0015", "mol", "amount of substance", undefined],
    ["1.5×10^-3 mol", "0.0015", "mol", "amount of substance", undefined],
    ["1.5 × 10⁻³ mol", "0.0015", "mol", "amount of substance", undefined],
    ["25 °C", "25", "°C", "temperature", undefined],
    ["-4 °F", "-4", "°F", "temperature", undefined],
    ["5 Δ°C", "5", "Δ°C", "temperature difference", undefined],
    ["5 % w/w", "5", "% w/w", "mass fraction", undefined],
    ["5 % v/v", "5", "% v/v", "volume fraction", undefined],
    ["5 % w/v", "5", "% w/v", "density", undefined],
    ["0.1 mol/L", "0.1", "mol/L", "concentration", undefined],
    ["4.184 J/(g K)", "4.184", "J/(g K)", "specific heat capacity", undefined],
    ["4.20 EUR/kg", "4.2", "EUR/kg", "price per mass (EUR)", undefined],
    ["12.5(2) g", "12.5", "g", "mass", "0.2"],
    ["12.50(12) g", "12.5", "g", "mass", "0.12"],
    ["12.5(0.3) g", "12.5", "g", "mass", "0.3"],
    ["1.25(2)e-8 mol", "1.25e-8", "mol", "amount of substance", "2e-10"],
    ["12.5 ± 0.2 g", "12.5", "g", "mass", "0.2"],
    ["12.5 +/- 0.2 g", "12.5", "g", "mass", "0.2"],
    ["12.5 g ± 200 mg", "12.5", "g", "mass", "0.2"],
    ["12.5 g ± 2 %", "12.5", "g", "mass", "0.25"],
    ["98 % ± 1 %", "98", "%", "number", "1"],
    ["12.5 ± 0.4 g (k=2)", "12.5", "g", "mass", "0.2"],
    ["25 °C ± 0.5 K", "25", "°C", "temperature", "0.5"],
    ["12", "12", "", "number", undefined],
    ["1\u2009000 mg", "1000", "mg", "mass", undefined],
    ["1 234.567 g", "1234.567", "g", "mass", undefined],
    ["1.5·10⁻³ mol", "0.0015", "mol", "amount of substance", undefined],
    ["1.5*10^-3 mol", "0.0015", "mol", "amount of substance", undefined],
    ["(12.5 ± 0.2) g", "12.5", "g", "mass", "0.2"],
    ["(12.5 +/- 0.4) g (k=2)", "12.5", "g", "mass", "0.2"],
    ["(1.25 ± 0.02)×10^-3 mol", "0.00125", "mol", "amount of substance", "0.00002"],
    ["5 wt.%", "5", "% w/w", "mass fraction", undefined],
    ["5 % (v/v)", "5", "% v/v", "volume fraction", undefined],
    ["5 ‰", "5", "‰", "number", undefined],
    ["760 mm Hg", "760", "mmHg", "pressure", undefined],
    ["5 mcg", "5", "µg", "mass", undefined],
    ["5 cc", "5", "cc", "volume", undefined],
    ["5 ppb w/w", "5", "ppb w/w", "mass fraction", undefined],
    ["5 ppb v/v", "5", "ppb v/v", "volume fraction", undefined],
    ["90 mg/dL", "90", "mg/dL", "density", undefined],
    ["25 C", "25", "C", "electric charge", undefined],
    ["4.18 J/g/K", "4.18", "J/g/K", "specific heat capacity", undefined],
    ["2 L/mol s^-1", "2", "L/mol s^-1", "length^3·time^-1·amount of substance^-1", undefined],
    ["\u22124.5\u00a0\u03bcg", "-4.5", "µg", "mass", undefined],
  ])("reads %s", (text, value, unit, dimension, u) => {
    const q = quantity(text);
    expect([q.value.toString(), q.unit, q.dimension, q.standardUncertainty?.toString()]).toEqual([
      value,
      unit,
      dimension,
      u,
    ]);
  });

  it.each([
    ["4.18 J/g·K", "quantity.ambiguous-unit", "write J/(g K) if below"],
    ["0.0821 L·atm/mol·K", "quantity.ambiguous-unit", "write L·atm/(mol K) if below"],
    ["1.0 to 1.2 g", "quantity.not-a-quantity", "write an interval: [1.0, ...] with the unit after it"],
    ["1.0–1.2 g", "quantity.not-a-quantity", "write an interval: [1.0, ...] with the unit after it"],
    ["1/2 g", "quantity.not-a-number", "write it with a decimal point"],
    ["½ g", "quantity.look-alike", "write it with a decimal point"],
    ["1.234,5 g", "quantity.decimal-comma", "write 1234.5, with a point before the decimals and no other mark"],
    ["5 g/", "quantity.unknown-unit", "write what is below the solidus, as in g/mol"],
    ["[1.0 g, 1.2 g]", "quantity.not-a-quantity", "the unit is written once, after the number: [1.0, 1.2] g"],
  ])("refuses %s with %s", (text, code, hint) => {
    expect(refusal(text)).toMatchObject({ code, hint });
  });

  it("knows every spelling of a unit that the table lists", () => {
    let tested = 0;
    for (const [symbol, spellings] of Object.entries(SPELLINGS))
      for (const spelling of spellings.split(", ")) {
        expect(quantity(`1 ${spelling}`).equals(`1 ${symbol}`), spelling).toBe(true);
        tested += 1;
      }
    expect(tested).toBeGreaterThanOrEqual(86);
  });

  // a comma without a space between two ends is no decimal comma; 2/√12 = 0.577, 0.2 stands in the unit of the value
  it.each([
    ["[1,3] g", "2", 0.57735],
    ["  [1,3] g", "2", 0.57735],
    ["[2.0, 2.0] g", "2", 0],
    ["2 g ± 0.2", "2", 0.2],
    ["2.0(2)e0 g", "2", 0.2],
    ["2.0(2)e+0 g", "2", 0.2],
    ["0.2(1)E1 g", "2", 1],
    ["0.00000000020(2)e10 g", "2", 0.2],
  ])("reads %j as %s g with u = %d g", (text, value, u) => {
    const q = quantity(text as "1 g");
    expect(q.in("g").toString()).toBe(value);
    expect(q.standardUncertainty!.toNumber()).toBeCloseTo(u, 5);
  });

  it("reads the spread of a temperature or a percentage in its own unit", () => {
    expect(quantity("25 °C ± 1 °C").standardUncertainty!.toString()).toBe("1");
    expect(quantity("25 °C ± 1 K").standardUncertainty!.toString()).toBe("1");
    expect(quantity("5 % ± 0.2 %").standardUncertainty!.toString()).toBe("0.2");
  });

  it("takes an interval as a rectangle around its middle", () => {
    const q = quantity("[1.0, 1.2] g");
    expect(q.value.toString()).toBe("1.1");
    expect(q.standardUncertainty!.toFixed(10)).toBe((0.1 / Math.sqrt(3)).toFixed(10));
  });

  it("takes a stated distribution from the text or from the caller", () => {
    const rectangular = 0.2 / Math.sqrt(3);
    const triangular = 0.2 / Math.sqrt(6);
    expect(quantity("12.5 ± 0.2 g (rectangular)").standardUncertainty!.toNumber()).toBeCloseTo(rectangular, 14);
    expect(quantity("12.5 ± 0.2 g (triangular)").standardUncertainty!.toNumber()).toBeCloseTo(triangular, 14);
    expect(quantity("12.5 ± 0.2 g", { distribution: "rectangular" }).standardUncertainty!.toNumber()).toBeCloseTo(
      rectangular,
      14,
    );
    expect(quantity({ value: 12.5, unit: "g", readability: 0.1 }).standardUncertainty!.toNumber()).toBeCloseTo(
      0.1 / Math.sqrt(12),
      14,
    );
  });

  it("reads numbers of every kind exactly", () => {
    const foreign = { toString: () => "0.1" };
    for (const value of [0.1, "0.1", "1/10", foreign]) {
      expect(quantity({ value, unit: "g" }).equals("0.1 g")).toBe(true);
    }
    expect(quantity({ value: 5n, unit: "g" }).equals("5 g")).toBe(true);
  });

  it.each([
    ["12,5 g", "quantity.decimal-comma", 2, "12.5 .* 125"],
    ["1,234.5 g", "quantity.decimal-comma", 1, "write 1234.5, with a point"],
    ["3 cups", "quantity.ambiguous-unit", 2, "US cup"],
    // a percentage in front of the unit was read as a hundredth of it: 0.015 g for 1.5 ± 5 % of a gram
    ["1.5 ± 5 % g", "quantity.ambiguous-unit", 8, "1.5 g ± 5 %"],
    ["5 % g", "quantity.ambiguous-unit", 2, "after the unit"],
    // the clinical mg % is mg in 100 mL; it was read as a hundredth of a milligram
    ["5 mg %", "quantity.ambiguous-unit", 2, "mg/\\(100 mL\\)"],
    ["110 mg%", "quantity.ambiguous-unit", 4, "mg/\\(100 mL\\)"],
    ["5 g %", "quantity.ambiguous-unit", 2, "g/\\(100 mL\\)"],
    ["2 mmol %", "quantity.ambiguous-unit", 2, "mmol/\\(100 mL\\)"],
    ["5 oz", "quantity.ambiguous-unit", 2, "oz av.*fl oz"],
    ["2 gal", "quantity.ambiguous-unit", 2, "US gal.*imp gal"],
    ["20 drops", "quantity.ambiguous-unit", 3, "mL"],
    ["5 $", "quantity.ambiguous-unit", 2, "ISO 4217"],
    ["12 G", "quantity.unknown-unit", 3, "'g'"],
    ["1.5 furlong", "quantity.unknown-unit", 4, "units look like"],
    ["5 g extra", "quantity.unknown-unit", 4, undefined],
    ["5 с", "quantity.look-alike", 2, "ASCII"],
    ["５ g", "quantity.look-alike", 0, "ASCII"],
    ["g", "quantity.not-a-number", 0, "12.5 g"],
    ["", "quantity.not-a-number", 0, undefined],
    ["[2, 1] g", "quantity.empty-interval", 6, "lower end first"],
    ["1e999 g", "quantity.out-of-range", 1, undefined],
    ["5 ± -1 g", "quantity.uncertainty", 6, undefined],
    ["5 g ± 1 mL", "quantity.wrong-dimension", 10, undefined],
  ])("refuses %s with %s", (text, code, position, hint) => {
    const error = refusal(text);
    expect(error.code).toBe(code);
    expect(error.position).toBe(position);
    if (hint !== undefined) expect(error.hint).toMatch(new RegExp(hint));
  });

  it("names the code point of a look-alike", () => {
    expect(refusal("5 сm").details["codePoint"]).toBe("U+0441");
    expect(refusal("5 сm").message).toContain("U+0441");
  });

  it("shows the place with a caret", () => {
    expect(refusal("12.5 gg").message.split("\n").slice(1, 3)).toEqual(["  12.5 gg", "       ^"]);
  });

  it.each([
    [null],
    [undefined],
    [true],
    [Symbol("g")],
    [() => 1],
    [{}],
    [{ value: Number.NaN, unit: "g" }],
    [{ value: Infinity, unit: "g" }],
    [{ value: "1", unit: 5 }],
    [[]],
  ])("refuses the foreign value %s with a code", (value) => {
    const error = refusal(value);
    expect(isPreparativeError(error)).toBe(true);
    expect(error.code).toMatch(/^quantity\./);
  });

  it("refuses long text at once", () => {
    const before = performance.now();
    for (const text of [`${"1".repeat(1e6)} g`, `1 ${"g".repeat(1e6)}`, "(".repeat(1e6), `1 ${"g/".repeat(5e5)}g`]) {
      expect(refusal(text).code).toBe("quantity.too-long");
    }
    expect(performance.now() - before).toBeLessThan(500);
  });
});

describe("a unit that does not fit what is asked", () => {
  const hintOf = (like: unknown, dimension: string, argument = dimension): [string, string | undefined] => {
    const outcome = attempt(() => expectDimension(like as string, dimension, argument));
    if (outcome.ok) throw new Error(`accepted: ${String(outcome.value)}`);
    return [outcome.error.message.split("\n")[0]!, outcome.error.hint];
  };

  it.each([
    ["25 C", "temperature", "C is the coulomb; write °C"],
    [{ value: 25, unit: "C" }, "temperature", "C is the coulomb; write °C"],
    ["5 °C", "temperature difference", "°C is a point on the scale; a difference is written Δ°C or ΔK"],
    ["25", "temperature", "a unit is missing: 25 °C, 25 K or 25 °F?"],
    [25, "temperature", "a unit is missing: 25 °C, 25 K or 25 °F?"],
    ["101", "pressure", "a unit is missing: 101 kPa, 101 bar or 101 mmHg?"],
    ["58.4", "molar mass", "a unit is missing: 58.4 g/mol?"],
    ["2 N", "concentration", "N is the newton; write mol/L"],
  ])("is told of %s as %s", (like, dimension, hint) => {
    expect(hintOf(like, dimension)[1]).toBe(hint);
  });

  it("is told when a charge shall be shown in degrees", () => {
    const outcome = attempt(() => quantity("25 C").in("K" as "C"));
    expect(outcome.ok ? "" : outcome.error.hint).toBe("C is the coulomb; write °C");
  });

  it("is told with the right article", () => {
    expect(hintOf("1 g", "amount of substance", "amount")[0]).toBe(
      "amount must be an amount of substance, not a mass (1 g)",
    );
    expect(hintOf("1 mol", "mass")[0]).toBe("expected a mass, not an amount of substance (1 mol)");
  });

  it("names only units that have the dimension", () => {
    let tested = 0;
    for (const [dimension, list] of Object.entries(USUAL)) {
      for (const unit of list) expect(quantity(`1 ${unit}`).dimension, unit).toBe(dimension);
      tested += 1;
    }
    expect(tested).toBeGreaterThanOrEqual(18);
  });
});

import { quantity, quantityFromJSON } from "preparative";
import { describe, expect, it } from "vitest";

describe("printing", () => {
  it.each([
    ["48.20 g", {}, "48.20 g"],
    ["12.5(2) g", {}, "12.50 ± 0.20 g"],
    ["12.5(2) g", { uncertainty: "concise" }, "12.50(20) g"],
    ["12.5(2) g", { uncertainty: "concise", uncertaintyFigures: 1 }, "12.5(2) g"],
    ["12.5(2) g", { uncertainty: "none" }, "12.5 g"],
    ["12.46(999) g", {}, "12 ± 10 g"],
    ["123456 ± 7890 g", {}, "123500 ± 7900 g"],
    ["0.0996(4) g", { uncertaintyFigures: 1 }, "0.0996 ± 0.0004 g"],
    ["2.5 g", { decimals: 0 }, "2 g"],
    ["3.5 g", { decimals: 0 }, "4 g"],
    ["2.5 g", { decimals: 0, rounding: "half-up" }, "3 g"],
    ["-2.5 g", { decimals: 0, rounding: "half-up" }, "-3 g"],
    ["9.996 g", { significant: 3 }, "10.0 g"],
    ["0.00012345 mol", { significant: 3 }, "0.000123 mol"],
    ["1234.5 g", { decimals: -2 }, "1200 g"],
    ["0.0125 g", { prefix: "engineering" }, "12.5 mg"],
    ["1250 g", { prefix: "engineering", significant: 2 }, "1.2 kg"],
    ["1250 g", { unit: "kg" }, "1.25 kg"],
    ["1234567.5 g", { locale: "de-DE", decimals: 1 }, "1.234.567,5 g"],
    ["1e-12 mol", {}, "1e-12 mol"],
    ["25 °C", { unit: "K" }, "298.15 K"],
  ] as const)("prints %s with %j as %s", (text, options, expected) => {
    expect(quantity(text as string).format(options)).toBe(expected);
  });

  it("prints a third to twelve figures and says nothing more exact than that", () => {
    expect(quantity("1 g").dividedBy(3).toString()).toBe("0.333333333333 g");
  });

  // 1.50(2) and its like at every size: the bracket counts in the last digit shown (JCGM 100:2008, 7.2.2)
  it("is read back as what it was, in every style and at every size", () => {
    let read = 0;
    for (let exponent = -30; exponent <= 30; exponent++)
      for (const figure of ["1.50(2)", "-7.31(99)", "9.996(4)", "2.00(31)"])
        for (const uncertainty of ["concise", "plus-minus"] as const)
          for (const uncertaintyFigures of [2, 3]) {
            const q = quantity(`${figure}e${exponent} g` as "1 g");
            const printed = q.format({ uncertainty, uncertaintyFigures });
            expect(quantity(printed as "1 g").equals(q), `${figure}e${exponent} as ${printed}`).toBe(true);
            read += 1;
          }
    expect(read).toBe(61 * 4 * 2 * 2);
  });

  it.each([
    [{ decimals: 1.5 }],
    [{ significant: 0 }],
    [{ significant: 1e9 }],
    [{ decimals: -1e9 }],
    [{ uncertaintyFigures: 0 }],
  ])("refuses the format %j", (options) => {
    expect(() => quantity("1 g").format(options)).toThrow(expect.objectContaining({ code: "quantity.format" }));
  });

  it("round-trips through JSON with uncertainty, label and source", () => {
    for (const q of [
      quantity("12.5(2) g", { label: "jar", symbol: "m", source: "label" }),
      quantity("[1.0, 1.2] g"),
      quantity("25 °C"),
      quantity("48.20 g"),
      quantity("1.0(1) g").dividedBy(3),
      quantity({ value: "5", unit: "mL", standardUncertainty: "0.1", degreesOfFreedom: 4 }),
    ]) {
      const back = quantityFromJSON(JSON.parse(JSON.stringify(q)));
      expect(back.equals(q)).toBe(true);
      expect([back.toString(), back.label, back.source]).toEqual([q.toString(), q.label, q.source]);
      expect(structuredClone(q.toJSON())).toEqual(q.toJSON());
    }
  });

  it.each([
    [null],
    [{}],
    [{ type: "quantity", schema: 2, value: "1", unit: "g" }],
    [{ type: "quantity", schema: 1, value: 1, unit: "g" }],
  ])("refuses %j as a record", (data) => {
    expect(() => quantityFromJSON(data)).toThrow(expect.objectContaining({ code: "quantity.json" }));
  });
});

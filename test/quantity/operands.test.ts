// What a quantity is multiplied with, compared with and made from; and the exact fractions inside. By hand throughout.

import { inspect } from "node:util";
import { type Quantity, quantity, quantityFromJSON, tryQuantity } from "preparative";
import { describe, expect, it } from "vitest";
import { attempt } from "../../src/foundation/error";
import { Fraction } from "../../src/foundation/fraction";
import { expectDimension } from "../../src/quantity/value/expect";
import {
  add,
  compare,
  decimalText,
  divide,
  exactText,
  leadingExponent,
  multiply,
  power,
  rational,
  reduce,
  scaled,
  significantText,
  subtract,
} from "../../src/quantity/value/rational";
import { readNumber, toRational, writtenDecimals } from "../../src/quantity/value/read-number";
import { fromDecimal, toDecimal } from "../../src/quantity/value/real";

const refusal = (ask: () => unknown) => {
  const outcome = attempt(ask);
  if (outcome.ok) throw new Error(`answered: ${String(outcome.value)}`);
  const { code, problem, hint } = outcome.error;
  return [code.replace("quantity.", ""), problem, hint] as const;
};

describe("a bare number as an operand", () => {
  // 6 g times the number, and over it
  it.each([
    [2, "12", "3"],
    [2n, "12", "3"],
    ["2", "12", "3"],
    ["+2", "12", "3"],
    ["-2", "-12", "-3"],
    [".5", "3", "12"],
    ["2.", "12", "3"],
    ["2e1", "120", "0.3"],
    ["2e+1", "120", "0.3"],
    ["2E-1", "1.2", "30"],
    ["2e10", "120000000000", "3e-10"],
    ["1/2", "3", "12"],
    ["-3 / 2", "-9", "-4"],
    ["1e1/20", "3", "12"],
    ["12/10", "7.2", "5"],
    [new Fraction("3/2"), "9", "4"],
  ])("%s", (factor, product, quotient) => {
    const six = quantity("6 g");
    expect(six.times(factor).in("g").toString()).toBe(product);
    expect(six.dividedBy(factor).in("g").toString()).toBe(quotient);
    expect([six.times(factor).unit, six.dividedBy(factor).unit]).toEqual(["g", "g"]);
  });

  it("is told from a quantity by its unit", () => {
    expect(quantity("6 g").dividedBy("2 g").toString()).toBe("3");
    expect(quantity("6 g").times("2 mL").unit).not.toBe("g");
    expect(quantity("6 g").times("50 %").in("g").toString()).toBe("3");
    expect(quantity("6 g").times({ value: 2, unit: "" }).in("g").toString()).toBe("12");
  });

  it.each([
    [() => quantity("6 g").times("two"), "not-a-number"],
    [() => quantity("6 g").times("x2"), "not-a-number"],
    [() => quantity("6 g").times("2/0"), "division-by-zero"],
    [() => quantity("6 g").times(null as never), "not-a-quantity"],
    [() => quantity("6 g").times(undefined as never), "not-a-quantity"],
    [() => quantity("6 g").times({} as never), "not-a-number"],
    [() => quantity("6 g").dividedBy(0), "division-by-zero"],
    [() => quantity("6 g").dividedBy("0.0"), "division-by-zero"],
    [() => quantity("6 g").toThePower(1.5), "out-of-range"],
    [() => quantity("6 g").toThePower("2" as never), "out-of-range"],
    [() => quantity("6 g").toThePower(13), "out-of-range"],
    [() => quantity("6 g").toThePower(-13), "out-of-range"],
    [() => quantity("0 g").toThePower(-1), "division-by-zero"],
    [() => Number(quantity("6 g")), "not-a-number"],
  ])("is refused: %s", (ask, code) => {
    expect(refusal(ask)[0]).toBe(code);
  });

  it("names what is zero where it has a name", () => {
    const zero = (words: object) => refusal(() => quantity("6 g").dividedBy(quantity("0 g", words)))[1];
    expect(zero({ label: "residue", symbol: "m" })).toBe("division by zero: residue is 0");
    expect(zero({ symbol: "m" })).toBe("division by zero: m is 0");
    expect(zero({})).toBe("division by zero");
  });

  it("may be a power up to twelve", () => {
    expect(quantity("2").toThePower(12).value.toString()).toBe("4096");
    expect(quantity("2").toThePower(-12).value.toString()).toBe("0.000244140625");
    expect(quantity("2 m").toThePower(0).toString()).toBe("1");
    expect(quantity("0 m").toThePower(0).toString()).toBe("1");
    expect(quantity("2 m").toThePower(3).dimension).toBe("volume");
  });
});

describe("units of results", () => {
  it.each<[string, () => Quantity, string]>([
    ["sum in the first unit", () => quantity("1 kg").plus("500 g"), "1.5 kg"],
    ["difference in the first unit", () => quantity("1500 g").minus("1 kg"), "500 g"],
    ["number and fraction", () => quantity("0.5").plus("10 % w/w"), "60 % w/w"],
    ["fraction and number", () => quantity("10 % w/w").plus("0.5"), "60 % w/w"],
    ["temperature and rise", () => quantity("5 ΔK").plus("20 °C"), "25 °C"],
    ["rise of two temperatures", () => quantity("25 °C").minus("20 °C"), "5 ΔK"],
    ["temperature less a rise", () => quantity("25 °C").minus("5 ΔK"), "20 °C"],
    ["negated", () => quantity("5 g").negated(), "-5 g"],
    ["multiple of a temperature", () => quantity("27 °C").times(2), "600.3 K"],
    ["half of a temperature", () => quantity("27 °C").dividedBy(2), "150.075 K"],
    ["number times mass", () => quantity("3").times("5 mg"), "15 mg"],
    ["mass times number", () => quantity("5 mg").times(quantity("3")), "15 mg"],
    ["volume times a ratio", () => quantity("10 mL").times(quantity("2 g").dividedBy("4 g")), "5 mL"],
    ["rate of heat", () => quantity("1 J").dividedBy("2 s"), "0.5 kg m^2 s^-3"],
  ])("%s", (_, make, expected) => {
    expect(make().toString()).toBe(expected);
  });

  it.each([
    [
      () => quantity("25 °C").plus("5 °C"),
      "two temperatures cannot be added",
      "add a temperature difference, such as 5 Δ°C",
    ],
    [() => quantity("5 g").plus("5 mL"), "cannot add mass and volume", undefined],
    [() => quantity("5 g").minus("5 mL"), "cannot subtract mass and volume", undefined],
    [() => quantity("5 g").compare("5 mL"), "cannot compare mass and volume", undefined],
    [() => quantity("5 ΔK").minus("20 °C"), "cannot subtract temperature difference and temperature", undefined],
    [() => quantity("5 g").in("mL"), "mass cannot be given in 'mL' (volume)", undefined],
    [
      () => quantity("5 ΔK").to("°C"),
      "temperature difference cannot be given in '°C' (temperature)",
      "ΔK is a difference of temperatures; write K or °C",
    ],
  ])("that do not fit: %s", (ask, problem, hint) => {
    expect(refusal(ask)).toEqual(["wrong-dimension", problem, hint]);
  });

  it("are the same amount in every unit", () => {
    expect(quantity("1 kg").equals("1000 g")).toBe(true);
    expect(quantity("1.0(1) g").equals("1.0 g")).toBe(false);
    expect(quantity("1.0(1) g").equals("1.0(2) g")).toBe(false);
    expect(quantity("1.0(1) g").equals("1000(100) mg")).toBe(true);
    expect(quantity("1 g").equals("1 mL")).toBe(false);
    // one kilogram and one cubic metre are both 1 in SI units
    expect(quantity("1 kg").equals("1 m3" as never)).toBe(false);
    expect(quantity("1 g").equals("2 g")).toBe(false);
    expect(quantity("1.0(1) g").equals("2.0(1) g")).toBe(false);
    expect([
      quantity("1 g").compare("2 g"),
      quantity("2 g").compare("1 g"),
      quantity("1 g").compare("1000 mg"),
    ]).toEqual([-1, 1, 0]);
    expect([quantity("-1 g").isPositive(), quantity("0 g").isPositive(), quantity("1 g").isPositive()]).toEqual([
      false,
      false,
      true,
    ]);
    expect([quantity("0 g").isZero(), quantity("0 °C").isZero(), quantity("1 g").isZero()]).toEqual([
      true,
      false,
      false,
    ]);
    expect([quantity("1.5 kg").toNumber(), quantity("1.5 kg").toNumber("g")]).toEqual([1.5, 1500]);
  });

  it("say in a console what they are", () => {
    expect(inspect(quantity("12.5(2) g"))).toBe("Quantity { 12.50 ± 0.20 g }");
    expect(Object.prototype.toString.call(quantity("1 g"))).toBe("[object Quantity]");
    expect(quantity("1 g").constructor.name).toBe("Quantity");
  });
});

describe("what was measured, as an object", () => {
  const u = (measured: object) => quantity(measured as never).standardUncertainty?.toNumber();

  // readability d gives d/(2√3), half-width a gives a/√3 or a/√6, all of them add up in squares (GUM 4.3.7, F.2.2.1, 5.1.2)
  it("has the uncertainty that is stated with it", () => {
    const g = { value: "10", unit: "g" };
    expect(u(g)).toBeUndefined();
    expect(u({ ...g, standardUncertainty: "0.3" })).toBe(0.3);
    expect(u({ ...g, halfWidth: "0.3" })).toBeCloseTo(0.3 / Math.sqrt(3), 12);
    expect(u({ ...g, halfWidth: "0.3", distribution: "triangular" })).toBeCloseTo(0.3 / Math.sqrt(6), 12);
    expect(u({ ...g, halfWidth: "0.3", distribution: "normal" })).toBeCloseTo(0.3, 12);
    expect(u({ ...g, readability: "0.1" })).toBeCloseTo(0.1 / Math.sqrt(12), 12);
    expect(u({ ...g, standardUncertainty: "0.3", halfWidth: "0.6", readability: "0.1" })).toBeCloseTo(
      Math.sqrt(0.09 + 0.36 / 3 + 0.01 / 12),
      12,
    );
    expect(u({ value: "10", unit: "kg", standardUncertainty: "0.3" })).toBe(0.3);
    expect(
      quantity({ value: "10", unit: "kg", standardUncertainty: "0.3" }).to("g").standardUncertainty!.toString(),
    ).toBe("300");
  });

  it("keeps the words it is given, and a distribution that is named for a text", () => {
    const q = quantity("12.5 ± 0.6 g", { distribution: "rectangular", symbol: "m", label: "jar", source: "pack" });
    expect(q.standardUncertainty!.toNumber()).toBeCloseTo(0.6 / Math.sqrt(3), 12);
    expect([q.symbol, q.label, q.source]).toEqual(["m", "jar", "pack"]);
    expect([quantity("5 g").symbol, quantity("5 g").label, quantity("5 g").source]).toEqual([
      undefined,
      undefined,
      undefined,
    ]);
    expect(q.named({ label: "other" }).symbol).toBe("m");
    // what is an interval already has its own
    expect(quantity("[1, 2] g", { distribution: "triangular" }).standardUncertainty!.toNumber()).toBeCloseTo(
      0.5 / Math.sqrt(3),
      12,
    );
  });

  it("spreads as it is said to, or as its kind of statement does", () => {
    const spread = (measured: object, naming?: object) => quantity(measured as never, naming).toJSON().distribution;
    const g = { value: "10", unit: "g" };
    expect(spread(g)).toBeUndefined();
    expect(spread({ ...g, standardUncertainty: "0.3" })).toBe("normal");
    expect(spread({ ...g, halfWidth: "0.3" })).toBe("rectangular");
    expect(spread({ ...g, readability: "0.1" })).toBe("rectangular");
    expect(spread({ ...g, halfWidth: "0.3", distribution: "triangular" })).toBe("triangular");
    expect(spread({ ...g, halfWidth: "0.3" }, { distribution: "triangular" })).toBe("triangular");
  });

  it("may have degrees of freedom and no uncertainty yet, or gain words later", () => {
    expect(quantity("5 g", { degreesOfFreedom: 4 }).toJSON().degreesOfFreedom).toBe(4);
    expect(quantity("5 g", { degreesOfFreedom: 4 }).standardUncertainty).toBeUndefined();
    expect(quantity("5.0(1) g", { degreesOfFreedom: 4 }).toJSON().degreesOfFreedom).toBe(4);
    expect(quantity("5.0(1) g").toJSON().degreesOfFreedom).toBeUndefined();
    expect(quantity(quantity("5 g"), { label: "jar" }).label).toBe("jar");
    expect(quantity(quantity("5 g", { label: "jar" })).label).toBe("jar");
  });

  it.each([
    [{ value: "10", unit: "g", standardUncertainty: "-0.1" }, "uncertainty"],
    [{ value: "10", unit: "g", halfWidth: -1 }, "uncertainty"],
    [{ value: "10", unit: "g", readability: "-1" }, "uncertainty"],
    [{ value: "10", unit: "g", standardUncertainty: "0.1", degreesOfFreedom: 0 }, "uncertainty"],
    [{ value: "10", unit: "g", standardUncertainty: "0.1", degreesOfFreedom: "four" }, "uncertainty"],
    [{ value: "10", unit: "g", distribution: "flat" }, "bad-option"],
    [{ value: "10", unit: "g", uncertainty: "0.1" }, "unknown-option"],
    [{ value: "ten", unit: "g" }, "not-a-number"],
    [{ value: "10", unit: 5 }, "not-a-quantity"],
    [{ value: "10" }, "not-a-quantity"],
    [null, "not-a-quantity"],
    [[], "not-a-quantity"],
    [true, "not-a-quantity"],
  ])("is refused as %j", (measured, code) => {
    const outcome = tryQuantity(measured as never);
    expect(outcome.ok ? "" : outcome.error.code).toBe(`quantity.${code}`);
  });
});

describe("an argument of a known dimension", () => {
  const asked = (like: unknown, dimension: string, argument = dimension) =>
    refusal(() => expectDimension(like as never, dimension, argument));

  it("is let through, a bare part for a fraction too", () => {
    expect(expectDimension("5 g", "mass", "mass").toString()).toBe("5 g");
    expect(expectDimension("98 %", "mass fraction", "assay").toString()).toBe("98 %");
    expect(asked("98 % v/v", "mass fraction", "assay")[0]).toBe("wrong-dimension");
  });

  it("is refused by its name, with units that fit or what was meant", () => {
    expect(asked(5, "mass")).toEqual([
      "not-a-quantity",
      "expected a mass, not a bare number",
      "a unit is missing: 5 g, 5 kg or 5 mg?",
    ]);
    expect(asked(5, "molar mass", "M")).toEqual([
      "not-a-quantity",
      "M must be a molar mass, not a bare number",
      "a unit is missing: 5 g/mol?",
    ]);
    expect(asked("5", "volume")[2]).toBe("a unit is missing: 5 mL or 5 L?");
    expect(asked("5 mL", "mass")).toEqual(["wrong-dimension", "expected a mass, not a volume (5 mL)", undefined]);
    expect(asked("5 mol", "mass", "sample")[1]).toBe("sample must be a mass, not an amount of substance (5 mol)");
    expect(asked("25 C", "temperature")[2]).toBe("C is the coulomb; write °C");
    expect(asked("25 °C", "temperature difference", "rise")[2]).toBe(
      "°C is a point on the scale; a difference is written Δ°C or ΔK",
    );
    expect(asked("0.1 N", "concentration")[2]).toBe("N is the newton; write mol/L");
    expect(asked("0.1 m", "molality")[2]).toBe("m is the metre; write mol/kg");
  });
});

describe("exact fractions", () => {
  const q = (text: string) => toRational(text);
  const text = ({ n, d }: { n: bigint; d: bigint }) => {
    const r = reduce({ n, d });
    return `${r.n}/${r.d}`;
  };

  it("add, subtract, multiply and divide as by hand, with common, nested and foreign denominators", () => {
    expect(text(add(q("1/6"), q("1/6")))).toBe("1/3");
    expect(text(add(q("1/6"), q("1/3")))).toBe("1/2");
    expect(text(add(q("1/3"), q("1/6")))).toBe("1/2");
    expect(text(add(q("1/4"), q("1/6")))).toBe("5/12");
    expect(text(subtract(q("1/4"), q("1/6")))).toBe("1/12");
    expect(text(multiply(q("2/3"), q("3/4")))).toBe("1/2");
    expect(text(divide(q("2/3"), q("-4/3")))).toBe("-1/2");
    expect(text(power(q("2/3"), 3))).toBe("8/27");
    expect(text(power(q("-2/3"), -3))).toBe("-27/8");
    expect(text(power(q("5"), 0))).toBe("1/1");
    expect([compare(q("1/3"), q("1/2")), compare(q("1/2"), q("1/3")), compare(q("2/4"), q("1/2"))]).toEqual([-1, 1, 0]);
  });

  it("keep the value when they are shortened, however long they were", () => {
    const long = rational(3n ** 900n, 3n ** 899n * 2n);
    expect(text(long)).toBe("3/2");
    const vast = reduce({ n: 7n ** 1500n, d: 3n ** 1500n });
    expect(vast.d < 1n << 2048n).toBe(true);
    // (7/3)^1500 to sixty figures, by whole numbers
    const figures = ((7n ** 1500n * 10n ** 60n) / 3n ** 1500n).toString().slice(0, 40);
    expect(((vast.n * 10n ** 60n) / vast.d).toString().slice(0, 40)).toBe(figures);
    const tiny = reduce({ n: 3n ** 1500n, d: 7n ** 1500n });
    const small = ((3n ** 1500n * 10n ** 700n) / 7n ** 1500n).toString().slice(0, 40);
    expect(((tiny.n * 10n ** 700n) / tiny.d).toString().slice(0, 40)).toBe(small);
    expect(refusal(() => reduce({ n: 10n ** 5000n, d: 1n }))[0]).toBe("out-of-range");
    expect(refusal(() => reduce({ n: 1n, d: 10n ** 5000n }))[0]).toBe("out-of-range");
  });

  it("are rounded half to even or half up, by decimals or figures", () => {
    const rounded = (value: string, decimals: number, rounding?: "half-up") =>
      decimalText(scaled(q(value), decimals, rounding), decimals);
    expect([
      rounded("2.5", 0),
      rounded("3.5", 0),
      rounded("-2.5", 0),
      rounded("2.5", 0, "half-up"),
      rounded("-2.5", 0, "half-up"),
    ]).toEqual(["2", "4", "-2", "3", "-3"]);
    expect([rounded("2.51", 0), rounded("2.49", 0, "half-up"), rounded("0.125", 2), rounded("0.135", 2)]).toEqual([
      "3",
      "2",
      "0.12",
      "0.14",
    ]);
    expect([rounded("1250", -2), rounded("1350", -2), rounded("0", 2), rounded("-0.05", 1)]).toEqual([
      "1200",
      "1400",
      "0.00",
      "0.0",
    ]);
    const figures = (value: string, n: number) => significantText(q(value), n);
    expect([
      figures("9.996", 3),
      figures("0.00012345", 3),
      figures("1234.5", 2),
      figures("0", 3),
      figures("-0.0999", 2),
    ]).toEqual(["10.0", "0.000123", "1200", "0.00", "-0.10"]);
    expect([figures("1e25", 3), figures("1.5e-9", 2), figures("99.96", 3)]).toEqual(["1.00e25", "1.5e-9", "100"]);
  });

  it("know their leading figure and their whole text", () => {
    expect(
      ["1", "9.99", "10", "0.1", "0.0999", "-123", "999/1000", "1001/1000"].map((value) => leadingExponent(q(value))),
    ).toEqual([0, 0, 1, -1, -2, 2, -1, 0]);
    expect([
      exactText(q("1/8"), 5),
      exactText(q("1/3"), 50),
      exactText(q("1200"), 5),
      exactText(q("0"), 5),
      exactText(q("1/80000"), 4),
    ]).toEqual(["0.125", undefined, "1200", "0", "0.0000125"]);
    expect(exactText(q("123456"), 5)).toBeUndefined();
  });

  it("pass to decimals and back", () => {
    for (const value of ["12.5", "-0.00125", "1e30", "1.5e-30", "0"])
      expect(text(fromDecimal(toDecimal(q(value))))).toBe(text(q(value)));
    expect(toDecimal(q("1/3")).toString()).toBe(`0.${"3".repeat(40)}`);
  });

  it("are read from every number, and from nothing else", () => {
    expect(
      ["1.50", "-.5", "+2.", "1e3", "1.5E-2", "  7 ", "1/4", "-3 / -4", "3/-4"].map((one) => text(q(one))),
    ).toEqual(["3/2", "-1/2", "2/1", "1000/1", "3/200", "7/1", "1/4", "3/4", "-3/4"]);
    expect(["1.5/-2.5", "0.1 / 0.2", "-0.3/-0.07"].map((one) => text(q(one)))).toEqual(["-3/5", "1/2", "30/7"]);
    // the sign stands above, however it was written
    expect(["3/-4", "-3/-4", "-3/4"].map((one) => q(one).d > 0n)).toEqual([true, true, true]);
    expect(toRational(10n ** 400n).n).toBe(10n ** 400n);
    // a fraction as other code writes one: sign apart or within, and nothing else
    expect([text(toRational({ n: 2n, d: 6n, s: -1n } as never)), text(toRational({ n: -2n, d: 6n } as never))]).toEqual(
      ["-1/3", "-1/3"],
    );
    for (const wrong of [
      { n: 1, d: 2n },
      { n: 1n, d: 2 },
      { n: 1n, d: 2n, s: 1 },
      { n: 1n, d: 0n },
      { n: 1n, d: -2n },
    ])
      expect(refusal(() => toRational(wrong as never))[0]).toBe("not-a-number");
    expect([text(toRational(0.1)), text(toRational(5n)), text(toRational(new Fraction("-2/6")))]).toEqual([
      "1/10",
      "5/1",
      "-1/3",
    ]);
    for (const wrong of ["", "1e", "1.2.3", "0x10", "1_000", "--1", "one"])
      expect(refusal(() => readNumber(wrong))[0], wrong).toBe("not-a-number");
    for (const wrong of [null, undefined, true, () => 1, Number.NaN, Number.POSITIVE_INFINITY])
      expect(refusal(() => toRational(wrong as never))[0]).toBe("not-a-number");
    expect(refusal(() => readNumber("1e301"))).toEqual([
      "out-of-range",
      "an exponent of 301; the limit is ±300",
      undefined,
    ]);
    expect(readNumber("1e300").n).toBe(10n ** 300n);
    expect(readNumber("1e-300").d).toBe(10n ** 300n);
    expect(refusal(() => readNumber("1".repeat(301)))[1]).toBe("a number of 301 characters; the limit is 300");
    expect(["12.50", "12", "1.5e-3", "1.5e2", ".25"].map(writtenDecimals)).toEqual([2, 0, 4, -1, 2]);
  });
});

describe("the record of a quantity", () => {
  const record = { type: "quantity", schema: 1, value: "12.5", unit: "g" };
  const back = (change: object) => quantityFromJSON({ ...record, ...change } as never);

  it.each([
    [{ value: 5 }, "value is not text"],
    [{ unit: undefined }, "unit is not text"],
    [{ standardUncertainty: 0.1 }, "standardUncertainty is not text"],
    [{ label: 5 }, "label is not text"],
    [{ standardUncertainty: "-0.1" }, "an uncertainty below zero"],
    [{ distribution: "flat" }, "distribution 'flat'"],
    [{ degreesOfFreedom: 0 }, "degreesOfFreedom is not a number above zero"],
    [{ degreesOfFreedom: "4" }, "degreesOfFreedom is not a number above zero"],
    [{ decimals: 1.5 }, "decimals is not a whole number within ±600"],
    [{ decimals: 601 }, "decimals is not a whole number within ±600"],
    [{ decimals: -601 }, "decimals is not a whole number within ±600"],
    [{ decimals: "2" }, "decimals is not a whole number within ±600"],
    [{ dimension: "volume" }, "g is not a unit of volume"],
    [{ type: "mass" }, "type is not 'quantity'"],
  ])("with %j is refused: %s", (change, problem) => {
    const error = refusal(() => back(change));
    expect(error[0]).toBe("json");
    expect(error[1]).toBe(`not a quantity record: ${problem}`);
    expect(error[2]).toBe("pass what toJSON gave, parsed");
  });

  it("holds the decimals, the symbol, the label and the source of what was written", () => {
    const written = quantity("12.50(20) g", { symbol: "m", label: "jar", source: "pack" });
    expect(written.toJSON()).toMatchObject({ decimals: 2, symbol: "m", label: "jar", source: "pack" });
    expect(Object.keys(quantity("1 g").dividedBy(3).toJSON())).not.toContain("decimals");
    expect(quantity(written.toJSON() as never).toString()).toBe("12.50 ± 0.20 g");
  });

  it("gives back what it holds", () => {
    expect(back({ decimals: 2 }).toString()).toBe("12.50 g");
    expect(back({ decimals: 600 }).in("g").toString()).toBe("12.5");
    expect(back({ dimension: "mass", standardUncertainty: "0.2", label: "jar" }).toString()).toBe("12.50 ± 0.20 g");
  });
});

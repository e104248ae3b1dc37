// What quantities answer and refuse, in words and figures. Figures by hand or from JCGM 100:2008 (GUM), tables and clauses named
// beside each check.
import {
  applyFunction,
  correlationCoefficient,
  decimalLogarithm,
  effectiveDegreesOfFreedom,
  expandedUncertainty,
  explain,
  exponential,
  maximum,
  meanOfReadings,
  meansOfPairedReadings,
  minimum,
  molarMass,
  naturalLogarithm,
  type Quantity,
  quantity,
  significantFigures,
  squareRoot,
  sum,
  uncertaintyBudget,
  withCorrelation,
  withSignificantFigures,
} from "preparative";
import { describe, expect, it } from "vitest";
import { attempt } from "../../src/foundation/error";
import { expectDimension, solvedFigure, studentFactor } from "../../src/quantity/internal";

const refusal = (ask: () => unknown) => {
  const outcome = attempt(ask);
  if (outcome.ok) throw new Error(`answered: ${String(outcome.value)}`);
  const { code, position, problem, hint, details } = outcome.error;
  return { code: code.replace("quantity.", ""), position, problem, hint, details };
};
const read = (text: string) => quantity(text as "1 g");

describe("a text that is no quantity", () => {
  it.each([
    ["", "not-a-number", 0, "expected a number", "a quantity starts with its value, such as 12.5 g"],
    ["NaN g", "not-a-number", 0, "expected a number", "a quantity starts with its value, such as 12.5 g"],
    ["--5 g", "not-a-number", 0, "expected a number", "a quantity starts with its value, such as 12.5 g"],
    ["1/2 g", "not-a-number", 1, "a fraction is not a measured value", "write it with a decimal point"],
    [
      "12,5 g",
      "decimal-comma",
      2,
      "has two readings",
      "write 12.5 if the comma marks decimals, 125 if it groups thousands",
    ],
    [
      "1.234,5 g",
      "decimal-comma",
      5,
      "has two readings",
      "write 1234.5, with a point before the decimals and no other mark",
    ],
    [
      "1,234.5 g",
      "decimal-comma",
      1,
      "has two readings",
      "write 1234.5, with a point before the decimals and no other mark",
    ],
    ["1,234,567 g", "decimal-comma", 1, "has two readings", "write 1234567, with no mark in it"],
    [
      "1,234,567.8 g",
      "decimal-comma",
      1,
      "has two readings",
      "write 1234567.8, with a point before the decimals and no other mark",
    ],
    ["1-2 g", "not-a-quantity", 1, "two numbers", "write an interval: [1, ...] with the unit after it"],
    ["1 to 2 g", "not-a-quantity", 1, "two numbers", "write an interval: [1, ...] with the unit after it"],
    ["1.0..2.0 g", "not-a-quantity", 3, "two numbers", "write an interval: [1.0, ...] with the unit after it"],
    [
      "[1.0 1.2] g",
      "not-a-quantity",
      5,
      "expected a comma between the ends",
      "the unit is written once, after the number: [1.0, 1.2] g",
    ],
    ["[1.0, 1.2 g", "not-a-quantity", 10, "expected ']'", undefined],
    ["[2, 1] g", "empty-interval", 6, "the interval ends before it begins", "put the lower end first"],
    ["(12.5 ± 0.2 g", "not-a-quantity", 12, "expected ')'", "the unit is written after the number: (12.5 ± 0.2) g"],
    ["(12.5 0.2) g", "not-a-quantity", 6, "expected ± inside the brackets", undefined],
    ["(12.5 ± -0.2) g", "uncertainty", 13, "an uncertainty cannot be negative", undefined],
    ["12.5 ± -0.2 g", "uncertainty", 11, "an uncertainty cannot be negative", undefined],
    ["12.5 g ± -0.2 g", "uncertainty", 13, "an uncertainty cannot be negative", undefined],
    ["12.5 ± 0.2 g (k=0)", "uncertainty", 12, "a coverage factor of zero", undefined],
    ["12.5 g ± 3 mL", "wrong-dimension", 13, "an uncertainty in 'mL' does not fit a value in 'g'", undefined],
    ["25 °C ± 2 %", "wrong-dimension", 11, "an uncertainty in '%' does not fit a value in '°C'", undefined],
    ["5 G", "unknown-unit", 2, "unknown unit 'G'", "did you mean 'g'?"],
    [
      "5 grms",
      "unknown-unit",
      2,
      "unknown unit 'grms'",
      "units look like g, mg, mol, mL, g/mol, mol/L, °C, kPa, % w/w, EUR/kg",
    ],
    ["5 g/", "unknown-unit", 4, "an incomplete unit", "write what is below the solidus, as in g/mol"],
    ["1 J/(mol K", "unknown-unit", 10, "an incomplete unit", "write what is below the solidus, as in g/mol"],
    [
      "5 mg %",
      "ambiguous-unit",
      2,
      "'mg %' is not a product of mg and %",
      "mg in 100 mL is written mg/(100 mL), mg in 100 g mg/(100 g)",
    ],
    [
      "5 % g",
      "ambiguous-unit",
      2,
      "'% g' is not a product of % and g",
      "a relative uncertainty is written after the unit, as in 1.5 g ± 5 %",
    ],
    ["1 J/mol K", "ambiguous-unit", 8, "a product after a solidus: above or below it?", "write J/(mol K) if below"],
    ["5 M", "ambiguous-unit", 2, "'M' does not name one unit", "write 'mol/L'"],
    [
      "5 oz",
      "ambiguous-unit",
      2,
      "'oz' does not name one unit",
      "write 'oz av' for the ounce of weight, 'US fl oz' or 'imp fl oz' for volume",
    ],
    ["5½ g", "look-alike", 1, "the character '½' (U+00BD) is not part of a quantity", "write it with a decimal point"],
    [
      "5 gг",
      "look-alike",
      3,
      "the character 'г' (U+0433) is not part of a quantity",
      "it looks like a plain letter or digit; type it again in ASCII",
    ],
    ["5 g\u200b", "look-alike", 3, "(U+200B) is not part of a quantity", "remove it"],
    [
      "5 ∞",
      "look-alike",
      2,
      "(U+221E) is not part of a quantity",
      "it means nothing in a quantity; leave it out or write the unit in letters",
    ],
    ["1e400 g", "out-of-range", 1, "an exponent of 400; the limit is ±300", undefined],
    ["5 g^60", "out-of-range", 2, "a dimension with an exponent beyond ±48", undefined],
  ])("%j: %s at %d", (text, code, position, problem, hint) => {
    const error = refusal(() => read(text));
    expect([error.code, error.position]).toEqual([code, position]);
    expect(error.problem).toContain(problem);
    expect(error.hint).toBe(hint);
  });

  it("nor of any length", () => {
    expect(refusal(() => read("x".repeat(401))).problem).toBe("a text of 401 characters; the limit is 400");
    expect(refusal(() => read("x".repeat(400))).code).toBe("not-a-number");
    expect(refusal(() => read(`5 ${"g".repeat(90)}`)).problem).toBe("a unit of 90 characters; the limit is 80");
  });

  it("where decimals stand after a comma, with a point in it", () => {
    const comma = (text: string) => quantity(text as "1 g", { decimalSign: "," });
    expect([comma("12,5 g"), comma("1234,5 g"), comma("[1,0; 1,2] g")].map(String)).toEqual([
      "12.5 g",
      "1234.5 g",
      "1.100 ± 0.058 g",
    ]);
    const error = refusal(() => comma("1.234,5 g"));
    expect([error.code, error.position]).toEqual(["decimal-comma", 1]);
    expect(error.hint).toBe("write a comma before the decimals, and no mark between thousands");
    // the caret stands in the text that was typed, and a text too long to show has none
    const typed = attempt(() => comma("5,5 grms"));
    expect(typed.ok ? undefined : [typed.error.input, typed.error.position]).toEqual(["5,5 grms", 4]);
    const long = attempt(() => comma("5".repeat(401)));
    expect(long.ok ? undefined : [long.error.input, long.error.position]).toEqual([undefined, undefined]);
  });
});

describe("a text that is one", () => {
  // half-widths: rectangular a/√3, triangular a/√6 (GUM 4.3.7 and 4.3.9), k standard uncertainties (GUM 6.2.1)
  it.each([
    ["12.5 ± 0.2 g (k=2)", "12.5", 0.1],
    ["12.5 ± 0.6 g (rectangular)", "12.5", 0.6 / Math.sqrt(3)],
    ["12.5 ± 0.6 g (uniform)", "12.5", 0.6 / Math.sqrt(3)],
    ["12.5 ± 0.6 g (triangular)", "12.5", 0.6 / Math.sqrt(6)],
    ["12.5 ± 0.6 g (normal)", "12.5", 0.6],
    ["(12.5 ± 0.6) g (rectangular)", "12.5", 0.6 / Math.sqrt(3)],
    ["12.5 g ± 0.6 g (triangular)", "12.5", 0.6 / Math.sqrt(6)],
    ["[1.0, 1.2] g", "1.1", 0.1 / Math.sqrt(3)],
    ["[1; 2] g", "1.5", 0.5 / Math.sqrt(3)],
    ["12.5 g ± 2 %", "12.5", 0.25],
    ["-12.5 g ± 2 %", "-12.5", 0.25],
    ["12.5 g ± 200 mg", "12.5", 0.2],
    ["12.5 +/- 0.2 g", "12.5", 0.2],
    ["12.5+-0.2 g", "12.5", 0.2],
    ["12.5(2) g", "12.5", 0.2],
    ["12.5(0.2) g", "12.5", 0.2],
    ["12(2) g", "12", 2],
    ["1.25(2)e-3 g", "0.00125", 0.00002],
    ["1.25(2)×10^-3 g", "0.00125", 0.00002],
    ["(1.25 ± 0.02)×10^-3 g", "0.00125", 0.00002],
    ["1 000 g", "1000", undefined],
    ["12 345.67 g", "12345.67", undefined],
    ["1.5·10^-3 g", "0.0015", undefined],
    ["1.5 x 10⁻³ g", "0.0015", undefined],
    ["+5 g", "5", undefined],
    [".5 g", "0.5", undefined],
    ["5\u2009g", "5", undefined],
    ["\u22125 g", "-5", undefined],
  ])("%j is %s g, u = %d g", (text, value, u) => {
    const q = read(text);
    expect([q.in("g").toString(), q.dimension]).toEqual([value, "mass"]);
    if (u === undefined) expect(q.standardUncertainty).toBeUndefined();
    else expect(q.standardUncertainty!.toNumber()).toBeCloseTo(u, 12);
  });

  it("spreads as it is told, in words that exist", () => {
    expect(refusal(() => quantity("5 ± 1 g", { distribution: "flat" as never }))).toMatchObject({
      code: "bad-option",
      details: { argument: "distribution" },
    });
  });

  it("of a percentage has an uncertainty in percent of the whole, not of itself", () => {
    expect(read("50 % ± 2 %").standardUncertainty!.toString()).toBe("2");
    expect(read("25 °C ± 1 °C").standardUncertainty!.toString()).toBe("1");
    // a temperature in another scale is no difference
    expect(read("25 °C ± 1 K").standardUncertainty!.toString()).toBe("1");
    expect(refusal(() => read("300 K ± 1 °C")).code).toBe("wrong-dimension");
  });

  // factors of NIST SP 811 and the SI brochure; composed units by their parts
  it.each([
    ["1 kg m^-3", "g/L", "1", "density"],
    ["1 kg m⁻³", "g/L", "1", "density"],
    ["1 mg/(100 mL)", "mg/L", "10", "density"],
    ["1 g/100 g", "%", "1", "number"],
    ["1 J/mol/K", "kJ/(mol K)", "0.001", "molar heat capacity"],
    ["3 m2", "cm^2", "30000", "area"],
    ["1 N m", "J", "1", "energy"],
    ["1 A s", "C", "1", "electric charge"],
    ["6 mL/min", "L/h", "0.36", "volume flow rate"],
    ["1 m s^-2", "cm s^-2", "100", "length·time^-2"],
    ["2 EUR/kg", "EUR/g", "0.002", "price per mass (EUR)"],
    ["2 EUR/L", "EUR/mL", "0.002", "price per volume (EUR)"],
    ["2 EUR/mol", "EUR/mmol", "0.002", "price per amount of substance (EUR)"],
    ["2 EUR", "EUR", "2", "price (EUR)"],
  ])("%s is in %s %s, %s", (text, unit, value, dimension) => {
    const q = read(text);
    expect([q.in(unit).toString(), q.dimension]).toEqual([value, dimension]);
  });

  it.each([
    ["3 EUR", "2 kg", "0.0015 EUR/g"],
    ["3 EUR", "2 mol", "1.5 EUR/mol"],
    ["6 kJ", "2 mol", "3 kJ/mol"],
    ["6 J", "2 kg", "0.003 J/g"],
    ["6 m", "2 s", "3 m s^-1"],
    ["6 mol", "2 kg", "3 kg^-1 mol"],
    ["6 g", "2 mL", "3 g/mL"],
  ])("%s over %s is %s", (above, below, expected) => {
    expect(read(above).dividedBy(read(below)).toString()).toBe(expected);
  });
});

describe("how a working writes what was done", () => {
  const a = quantity("2.0(1) g", { symbol: "a" });
  const b = quantity("-3 g", { symbol: "b" });
  const c = quantity("4 g", { symbol: "c" });
  const k = quantity("5", { symbol: "k" });
  const half = Math.sqrt(0.5);

  // value in kg and kg^n where no unit is usual; u by d(result)/da times 0.1 g
  it.each<[string, () => Quantity, string, string, number, number | undefined]>([
    ["plus", () => a.plus(b), "a + b", "2.0 g + (-3 g)", -0.001, 0.0001],
    ["minus", () => a.minus(b), "a - b", "2.0 g - (-3 g)", 0.005, 0.0001],
    ["minus minus", () => a.minus(a.minus(c)), "a - (a - c)", "2.0 g - (2.0 g - 4 g)", 0.004, 0],
    ["minus plus", () => a.minus(b.plus(c)), "a - (b + c)", "2.0 g - (-3 g + 4 g)", 0.001, 0.0001],
    ["times", () => a.plus(c).times(b.minus(c)), "(a + c) × (b - c)", "(2.0 g + 4 g) × (-3 g - 4 g)", -42e-6, 7e-7],
    ["over times", () => a.dividedBy(b.times(c)), "a / (b × c)", "2.0 g / ((-3 g) × 4 g)", -1000 / 6, 1000 / 120],
    ["over over", () => a.dividedBy(c).dividedBy(b), "a / c / b", "2.0 g / 4 g / (-3 g)", -1000 / 6, 1000 / 120],
    ["threefold", () => a.times(3), "3 × a", "3 × 2.0 g", 0.006, 0.0003],
    ["a third", () => a.dividedBy(3), "a / 3", "2.0 g / 3", 0.002 / 3, 0.0001 / 3],
    ["a third of a sum", () => a.plus(c).dividedBy(3), "(a + c) / 3", "(2.0 g + 4 g) / 3", 0.002, 0.0001 / 3],
    ["half", () => a.times("0.5"), "5 × a / 10", "5 × 2.0 g / 10", 0.001, 0.00005],
    ["squared", () => a.plus(c).toThePower(2), "(a + c)^2", "(2.0 g + 4 g)^2", 36e-6, 1.2e-6],
    ["to the minus two", () => a.toThePower(-2), "a^(-2)", "2.0 g^(-2)", 250_000, 25_000],
    ["least", () => minimum([a, b]), "min(a, b)", "min(2.0 g, -3 g)", -0.003, 0],
    ["most", () => maximum([a, b]), "max(a, b)", "max(2.0 g, -3 g)", 0.002, 0.0001],
    ["root", () => squareRoot(a.times(c)), "sqrt(a × c)", "sqrt(2.0 g × 4 g)", Math.sqrt(8e-6), half * 0.0001],
    ["listed", () => sum([a, b, c]), "a + b + c", "2.0 g + (-3 g) + 4 g", 0.003, 0.0001],
    ["ln", () => naturalLogarithm(k), "ln(k)", "ln(5)", Math.log(5), undefined],
    ["exp", () => exponential(k), "exp(k)", "exp(5)", Math.exp(5), undefined],
    ["log", () => decimalLogarithm(k), "log10(k)", "log10(5)", Math.log10(5), undefined],
  ])("%s", (_, make, formula, substituted, value, u) => {
    const y = make().named({ symbol: "y" });
    const { steps } = explain(y);
    expect([steps.at(-1)!.formula, steps.at(-1)!.substituted]).toEqual([formula, substituted]);
    const scale = y.dimension === "mass" ? 1000 : 1;
    expect(y.value.toNumber()).toBeCloseTo(value * scale, 9);
    if (u === undefined) expect(y.standardUncertainty).toBeUndefined();
    else expect(y.standardUncertainty!.toNumber()).toBeCloseTo(u * scale, 9);
  });

  it("carries an uncertainty through logarithm and power of e", () => {
    // d(ln x) = dx/x, d(log10 x) = dx/(x ln 10), d(e^x) = e^x dx
    expect(naturalLogarithm("5.0(2)").standardUncertainty!.toNumber()).toBeCloseTo(0.04, 12);
    expect(decimalLogarithm("5.0(2)").standardUncertainty!.toNumber()).toBeCloseTo(0.04 / Math.LN10, 12);
    expect(exponential("2.0(1)").standardUncertainty!.toNumber()).toBeCloseTo(0.1 * Math.exp(2), 9);
    expect(quantity("0.0(1)").toThePower(1).standardUncertainty!.toString()).toBe("0.1");
    expect(quantity("0.0(1)").toThePower(2).standardUncertainty!.toString()).toBe("0");
    expect(squareRoot("0").value.toString()).toBe("0");
  });

  it.each([
    [() => naturalLogarithm("-1"), "out-of-range", "ln(-1): the argument must be positive"],
    [() => decimalLogarithm("0"), "out-of-range", "log10(0): the argument must be positive"],
    [() => exponential("501"), "out-of-range", "exp(501): the exponent may run from -500 to 500"],
    [() => naturalLogarithm("1 g"), "wrong-dimension", "ln needs a pure number, not a mass"],
    [() => squareRoot("-1"), "out-of-range", "the square root of a negative value"],
    [() => squareRoot("1 g"), "wrong-dimension", "the square root of a mass has no unit"],
    [() => squareRoot("1 mol"), "wrong-dimension", "the square root of an amount of substance has no unit"],
    [() => sum([]), "readings", "the sum of an empty list has no unit"],
    [() => minimum([]), "readings", "the min of an empty list"],
    [() => maximum(["1 g", "1 mL"]), "wrong-dimension", "mass"],
    [() => sum(["20 °C", "30 °C"]), "wrong-dimension", "temperature"],
    [() => sum("1 g" as never), "readings", "sum needs a list, not string"],
    [
      () => applyFunction(["3 g"], { name: "f", unit: "g", value: () => 1, partials: () => [1, 2] }),
      "not-a-number",
      "1 operands need as many derivatives, not 2",
    ],
    ...[
      { name: "f", unit: "g", value: 1 },
      { name: "f", unit: "g", value: 1, partials: () => [1] },
      { name: "f", unit: "g", value: () => 1, partials: 1 },
      { name: "f", unit: 5, value: () => 1, partials: () => [1] },
    ].map(
      (spec) =>
        [
          () => applyFunction(["3 g"], spec as never),
          "not-a-quantity",
          "apply needs { name, unit, value, partials }",
        ] as [() => unknown, string, string],
    ),
  ])("%s is refused: %s", (ask, code, problem) => {
    const error = refusal(ask);
    expect(error.code).toBe(code);
    expect(error.problem).toContain(problem);
  });

  it("takes ±500 into the power of e, and adds one temperature to nothing", () => {
    expect(exponential("500").value.toNumber()).toBeGreaterThan(1e217);
    expect(exponential("-500").value.toNumber()).toBeLessThan(1e-217);
    expect(sum(["20 °C"]).toString()).toBe("20 °C");
  });
});

describe("uncertainty", () => {
  // coverage factors of GUM, table G.2
  it.each([
    [0.95, 1, "12.71"],
    [0.95, 4, "2.78"],
    [0.95, 10, "2.23"],
    [0.99, 5, "4.03"],
    [0.6827, 3, "1.20"],
    [0.9545, 20, "2.13"],
    [0.9973, 2, "19.21"],
    [0.9, 50, "1.68"],
    [0.95, 100, "1.98"],
    [0.95, undefined, "1.96"],
    [0.99, undefined, "2.58"],
  ])("at %d with %s degrees of freedom is covered by k = %s", (level, degreesOfFreedom, k) => {
    const q = quantity({
      value: "10",
      unit: "g",
      standardUncertainty: "0.5",
      ...(degreesOfFreedom === undefined ? {} : { degreesOfFreedom }),
    });
    const expanded = expandedUncertainty(q, { level });
    // the table cuts its infinity at 1.984 for a hundred
    expect(expanded.coverageFactor.toFixed(2)).toBe(k);
    expect(expanded.expandedUncertainty.toNumber()).toBeCloseTo(0.5 * expanded.coverageFactor, 12);
    expect(expanded.standardUncertainty.toString()).toBe("0.5");
    expect([expanded.level, expanded.effectiveDegreesOfFreedom]).toEqual([level, degreesOfFreedom ?? Infinity]);
  });

  // the probability within ±t for n degrees of freedom, with tan θ = t/√n: sums of powers of cos θ, no gamma function
  // (Abramowitz and Stegun, Handbook of Mathematical Functions, 1964, 26.7.3 and 26.7.4)
  const within = (t: number, n: number): number => {
    const theta = Math.atan(t / Math.sqrt(n));
    let [term, total] = n % 2 === 0 ? [1, 1] : [Math.cos(theta), n === 1 ? 0 : Math.cos(theta)];
    for (let k = n % 2 === 0 ? 1 : 2; k < n - 2; k += 2) {
      term *= (k / (k + 1)) * Math.cos(theta) ** 2;
      total += term;
    }
    return n % 2 === 0 ? Math.sin(theta) * total : (2 / Math.PI) * (theta + Math.sin(theta) * total);
  };

  it("is covered to the part that is asked for, with any degrees of freedom", () => {
    expect(within(12.7062, 1)).toBeCloseTo(0.95, 6);
    expect(within(2.776445, 4)).toBeCloseTo(0.95, 6);
    for (let n = 1; n <= 60; n++)
      for (const level of [0.5, 0.6827, 0.9, 0.95, 0.99, 0.999])
        expect(Math.abs(within(studentFactor(level, n), n) - level), `${level} ${n}`).toBeLessThan(1e-11);
  });

  it("is 95 % unless another level is asked for", () => {
    expect(expandedUncertainty("10.0(5) g").coverageFactor.toFixed(2)).toBe("1.96");
    for (const level of [0, 1, -1, 2])
      expect(refusal(() => expandedUncertainty("10.0(5) g", { level })).problem).toBe(
        `a level of confidence lies between 0 and 1, not ${level}`,
      );
    expect(refusal(() => effectiveDegreesOfFreedom("5 g")).problem).toBe("the value carries no uncertainty");
  });

  // Welch and Satterthwaite, GUM G.2b: u^4 / Σ (u_i^4 / ν_i) with 0.3 (ν 3) and 0.4 (ν 8)
  it("has effective degrees of freedom", () => {
    const part = (standardUncertainty: string, degreesOfFreedom: number) =>
      quantity({ value: "1", unit: "g", standardUncertainty, degreesOfFreedom });
    const whole = part("0.3", 3).plus(part("0.4", 8));
    expect(effectiveDegreesOfFreedom(whole)).toBeCloseTo(0.5 ** 4 / (0.3 ** 4 / 3 + 0.4 ** 4 / 8), 9);
    expect(effectiveDegreesOfFreedom(part("0.3", 3).plus("1.0(4) g"))).toBeCloseTo(0.5 ** 4 / (0.3 ** 4 / 3), 9);
    expect(expandedUncertainty(whole).coverageFactor.toFixed(2)).toBe("2.23");
  });

  it("is told by input: sensitivity, contribution and share of the variance", () => {
    const a = quantity("2.0(1) g", { symbol: "a" });
    const b = quantity("3.0(3) g", { label: "second", source: "pack" });
    // y = a b: contributions 3 × 0.1 and 2 × 0.3, shares 0.09 and 0.36 of 0.45
    const lines = uncertaintyBudget(a.times(b).to("g^2"));
    expect(lines.map((line) => [line.input, line.share, line.source, line.distribution])).toEqual([
      ["second", 0.8, "pack", "normal"],
      ["a", 0.2, undefined, "normal"],
    ]);
    expect(lines.map((line) => [line.sensitivity.toNumber(), line.contribution.toNumber()])).toEqual([
      [2, 0.6],
      [3, 0.3],
    ]);
    expect(lines.map(String)).toEqual(["80.0 %  second = 3.00 ± 0.30 g", "20.0 %  a = 2.00 ± 0.10 g"]);
    expect(uncertaintyBudget(a.minus(a)).map(({ share }) => share)).toEqual([0]);
    expect(uncertaintyBudget("5 g")).toEqual([]);
    expect(uncertaintyBudget("5.0(1) g")[0]!.input).toBe("5.00 ± 0.10 g");
  });

  // s of 10.0, 10.2, 10.4 is 0.2; s/√3 (GUM 4.2.3)
  it("of a mean is its scatter over the root of the number", () => {
    const mean = meanOfReadings(["10.0 g", "10.2 g", "10.4 g"], { symbol: "m" });
    expect(mean.in("g").toString()).toBe("10.2");
    expect(mean.standardUncertainty!.toNumber()).toBeCloseTo(0.2 / Math.sqrt(3), 12);
    expect([effectiveDegreesOfFreedom(mean), mean.symbol]).toEqual([2, "m"]);
    expect(refusal(() => meanOfReadings(["1 g"])).problem).toBe("readings: 1 readings; give 2 to 10000");
    expect(refusal(() => meanOfReadings(["1 g", "1 mL"])).problem).toBe("readings: mass and volume mixed");
    expect(refusal(() => meanOfReadings(new Array(10_001).fill("1 g"))).code).toBe("readings");
  });

  it("of readings taken together knows their correlation", () => {
    // b falls as a rises: r = -1, so the sum has none and the difference twice that of one
    const { a, b } = meansOfPairedReadings({ a: ["1.0 g", "1.2 g", "1.1 g"], b: ["2.0 g", "1.8 g", "1.9 g"] });
    expect(a!.plus(b!).standardUncertainty!.toString()).toBe("0");
    expect(a!.minus(b!).standardUncertainty!.toNumber()).toBeCloseTo((2 * 0.1) / Math.sqrt(3), 12);
    expect(correlationCoefficient(a!, b!).toNumber()).toBeCloseTo(-1, 12);
    expect(effectiveDegreesOfFreedom(a!.minus(b!))).toBe(2);
    const error = refusal(() => meansOfPairedReadings({ a: ["1 g", "2 g"], b: ["1 g", "2 g", "3 g"] }));
    expect([error.problem, error.hint]).toEqual([
      "b has 3 readings, a has 2",
      "readings taken together come in series of one length",
    ]);
  });

  it("of correlated inputs follows the coefficient", () => {
    // u² = 0.1² + 0.2² ± 2 r 0.1 0.2 (GUM 5.2.2)
    for (const r of [0.5, -0.5, 1, -1, 0]) {
      const { x, y } = withCorrelation({ x: "1.0(1) g", y: "2.0(2) g" }, [["x", "y", r]]);
      expect(x!.plus(y!).standardUncertainty!.toNumber(), String(r)).toBeCloseTo(Math.sqrt(0.05 + 0.04 * r), 9);
      expect(x!.minus(y!).standardUncertainty!.toNumber(), String(r)).toBeCloseTo(Math.sqrt(0.05 - 0.04 * r), 9);
      expect(correlationCoefficient(x!, y!).toNumber()).toBeCloseTo(r, 12);
    }
  });

  it.each([
    [
      () => withCorrelation({ x: "1.0(1)", y: "2.0(2)" }, [["x", "z" as "y", 0.5]]),
      "correlation",
      "no pair 'x' and 'z'",
    ],
    [() => withCorrelation({ x: "1.0(1)", y: "2.0(2)" }, [["x", "x", 0.5]]), "correlation", "no pair 'x' and 'x'"],
    [
      () => withCorrelation({ x: "1.0(1)", y: "2.0(2)" }, [["x", "y", 1.5]]),
      "correlation",
      "r(x, y) = 1.5 is outside [-1, 1]",
    ],
    [() => withCorrelation({ x: "1.0(1)", y: "2.0(2)" }, [["x", "y", -1.01]]), "correlation", "is outside [-1, 1]"],
    [() => withCorrelation({ x: "1.0", y: "2.0(2)" }, []), "uncertainty", "x carries no uncertainty"],
    // two that equal a third are equal to each other
    [
      () =>
        withCorrelation({ x: "1(1)", y: "2(1)", z: "3(1)" }, [
          ["x", "y", 1],
          ["x", "z", 1],
        ]),
      "correlation",
      "these coefficients contradict each other",
    ],
    [() => correlationCoefficient("1", "2.0(1)"), "uncertainty", "is correlated with nothing"],
    [() => correlationCoefficient("2.0(1)", "1"), "uncertainty", "is correlated with nothing"],
    [
      () =>
        withCorrelation({ x: "1.0(1)", y: "2.0(2)", z: "1.0(1)" }, [
          ["x", "y", 0.9],
          ["y", "z", 0.9],
          ["x", "z", -0.9],
        ]),
      "correlation",
      "these coefficients contradict each other",
    ],
  ])("%s is refused: %s", (ask, code, problem) => {
    const error = refusal(ask);
    expect(error.code).toBe(code);
    expect(error.problem).toContain(problem);
  });
});

describe("inputs that say the same or the opposite", () => {
  it("add up in full, or leave nothing, and never less than nothing", () => {
    const { x, y, z } = withCorrelation({ x: "1(1)", y: "2(1)", z: "3(1)" }, [
      ["x", "y", 1],
      ["x", "z", 1],
      ["y", "z", 1],
    ]);
    expect(x.plus(y).plus(z).standardUncertainty!.toNumber()).toBeCloseTo(3, 12);
    // a of u = 0.1/√3 and b of k times that, wholly correlated: k a - b is sure, whichever way the root of u² v² is rounded
    for (let k = 2; k <= 9; k++) {
      const { a, b } = withCorrelation({ a: "1 ± 0.1 g (rectangular)", b: `1 ± 0.${k} g (rectangular)` as "1 g" }, [
        ["a", "b", 1],
      ]);
      expect(a.times(k).minus(b).standardUncertainty!.toNumber(), String(k)).toBeLessThan(1e-15);
    }
  });
});

describe("what is worked out when somebody looks", () => {
  const a = quantity("2.0(1) g", { symbol: "a" });
  const b = quantity("3.0(2) g", { symbol: "b" });
  const k = quantity("4", { symbol: "k" });

  it("stands in brackets where it is a sum", () => {
    expect(explain(sum([a, b]).times(k)).steps[0]!.formula).toBe("(a + b) × k");
    expect(explain(sum([a]).times(k)).steps[0]!.formula).toBe("a × k");
  });

  it("of a molar mass is its atoms", () => {
    const [step] = explain(molarMass("H2O")).steps;
    expect(step!.formula).toBe("2 × A(H) + A(O)");
    const budget = uncertaintyBudget(molarMass("H2O"));
    expect(budget.map(({ sensitivity }) => sensitivity.toNumber()).sort()).toEqual([1, 2]);
  });

  // u(y) = |dy/dx| u(x) (GUM 5.1.2)
  it("of a figure that a search found is what its inputs do to it", () => {
    const found = solvedFigure("2", "kg", "root", { symbol: "r" }, () => [{ input: a, partial: 3 }]);
    expect(found.toString()).toBe("2.00 ± 0.30 kg");
    expect(explain(found).steps[0]!.formula).toBe("root of 1 inputs");
  });
});

describe("a refusal for the sake of a dimension", () => {
  it.each<[() => unknown, string, string]>([
    [() => quantity("5 g").plus("5 mL"), "mass", "volume"],
    [() => quantity("5 g").minus("5 mL"), "mass", "volume"],
    [() => quantity("5 g").compare("5 mL"), "mass", "volume"],
    [() => quantity("5 g").in("mL"), "mass", "volume"],
    [() => quantity("5 g").to("mL"), "mass", "volume"],
    [() => quantity("5 g").toNumber("mL"), "mass", "volume"],
    [() => quantity("5 g").format({ unit: "mL" }), "mass", "volume"],
    [() => sum(["5 g", "5 mL"] as never), "mass", "volume"],
    [() => naturalLogarithm("5 g"), "number", "mass"],
    [() => expectDimension("5 g", "volume", "volume"), "volume", "mass"],
    [() => expectDimension(5 as never, "volume", "volume"), "volume", "number"],
  ])("tells what was expected and what came: %s", (ask, expected, received) => {
    expect(refusal(ask).details).toMatchObject({ expected, received });
  });

  it("is made for fractions of two kinds, and for no other pair", () => {
    expect(refusal(() => quantity("5 % w/w").plus("5 % v/v")).problem).toBe(
      "cannot add mass fraction and volume fraction",
    );
    expect(quantity("5 % w/w").plus("0.05").toString()).toBe("10 % w/w");
    expect([quantity("10 %").times("50 %").toString(), quantity("10 % w/w").times("50 % w/w").toString()]).toEqual([
      "5 %",
      "0.05",
    ]);
  });
});

describe("significant figures as taught", () => {
  // OpenStax Chemistry 2e, section 1.5: zeros before do not count, zeros after the point do, trailing ones without point do not
  it("are counted", () => {
    const counted = ["100", "1.00", "0.0050", "1e3", "1.20e-3", "0", "-12.30", "+7.0", "1200.", "1002"];
    expect(counted.map((text) => significantFigures(text))).toEqual([1, 3, 2, 1, 3, 0, 4, 2, 4, 4]);
  });

  it("are those of texts", () => {
    expect(refusal(() => significantFigures(5 as never))).toMatchObject({
      code: "not-a-number",
      problem: "a number must be text, not number",
    });
    expect(["-1.50e-3", "+0.0120E+5", "1e5", "-100", "100."].map(significantFigures)).toEqual([3, 3, 1, 1, 3]);
  });

  it("decide the figures of a result", () => {
    expect(withSignificantFigures("add", ["1.234", "2.1"])).toBe("3.3");
    expect(withSignificantFigures("subtract", ["10.5", "0.25"])).toBe("10.2");
    expect(withSignificantFigures("subtract", ["10.5", "0.25"], "half-up")).toBe("10.3");
    expect(withSignificantFigures("multiply", ["2.5", "3.42"])).toBe("8.6");
    expect(withSignificantFigures("divide", ["10.0", "3.0"])).toBe("3.3");
    expect(withSignificantFigures("multiply", ["0", "3"])).toBe("0");
    expect(withSignificantFigures("add", ["1.1", "2.22", "3.333"])).toBe("6.7");
    expect(refusal(() => withSignificantFigures("divide", ["1", "0"])).code).toBe("division-by-zero");
    expect(refusal(() => withSignificantFigures("add", ["1"])).problem).toBe("add needs two or more values, not 1");
  });
});

describe("printing", () => {
  it.each([
    ["1e-9 g", { prefix: "engineering" }, "0.001 µg"],
    ["0 g", { prefix: "engineering" }, "0 g"],
    ["5 K", { prefix: "engineering" }, "5 K"],
    ["1250 kg", { prefix: "engineering" }, "1250 kg"],
    ["0.25 mol", { prefix: "engineering" }, "250 mmol"],
    ["1500 J", { prefix: "engineering" }, "1.5 kJ"],
    ["0.002 L", { prefix: "engineering" }, "2 mL"],
    ["101325 Pa", { prefix: "engineering" }, "101.325 kPa"],
    ["12.46(999) g", { uncertainty: "concise" }, "12(10) g"],
    ["123456 ± 7890 g", { uncertainty: "concise" }, "123500(7900) g"],
    ["1.5 ± 0 g", {}, "1.5 ± 0 g"],
    ["1234.5 ± 0.25 g", { locale: "de" }, "1.234,50 ± 0,25 g"],
    ["12.5 ± 0.2 g", { decimals: 1 }, "12.5 g"],
    ["12.5 ± 0.2 g", { decimals: 1, uncertainty: "plus-minus" }, "12.5 ± 0.2 g"],
    ["0.09996 ± 0.00996 g", {}, "0.100 ± 0.010 g"],
    ["1e20 ± 1e-60 g", {}, "100000000000000000000 ± 1.0e-60 g"],
    ["1.005 g", { decimals: 60 }, `1.005${"0".repeat(57)} g`],
  ] as const)("%s with %j is %s", (text, options, expected) => {
    expect(read(text).format(options)).toBe(expected);
  });

  it.each([
    [{ unit: "mL" }, "wrong-dimension", "mass cannot be printed in 'mL'"],
    [{ decimals: 61 }, "format", "decimals must be a whole number from -60 to 60, not 61"],
    [{ decimals: -61 }, "format", "decimals must be a whole number from -60 to 60, not -61"],
    [{ significant: 0 }, "format", "significant must be a whole number from 1 to 60, not 0"],
    [{ uncertaintyFigures: 0 }, "format", "uncertaintyFigures must be a whole number from 1 to 60, not 0"],
    [{ locale: "zz-!!" }, "bad-option", 'locale must be a language tag such as "de"'],
    [{ rounding: "up" }, "bad-option", "rounding must be one of half-even, half-up, not 'up'"],
    [{ uncertainty: "some" }, "bad-option", "uncertainty must be one of none, plus-minus, concise"],
    [{ prefix: "kilo" }, "bad-option", "prefix must be one of engineering"],
    [{ decimal: 2 }, "unknown-option", "there is no option 'decimal'"],
  ])("with %j is refused: %s", (options, code, problem) => {
    const error = refusal(() => quantity("1 g").format(options as never));
    expect(error.code).toBe(code);
    expect(error.problem).toContain(problem);
  });
});

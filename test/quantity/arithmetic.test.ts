import {
  applyFunction,
  effectiveDegreesOfFreedom,
  explain,
  exponential,
  maximum,
  meanOfReadings,
  meansOfPairedReadings,
  minimum,
  naturalLogarithm,
  type Quantity,
  quantity,
  squareRoot,
  sum,
  uncertaintyBudget,
} from "preparative";
import { describe, expect, it } from "vitest";

const code = (run: () => unknown): string => {
  try {
    run();
  } catch (error) {
    return (error as { code: string }).code;
  }
  return "no error";
};

describe("the figures and the unit of a result", () => {
  // OpenStax Chemistry 2e, section 1.5: a difference has the decimals of what it is made from.
  it("keeps the decimals that both sides of a sum or difference have", () => {
    expect(quantity("24.40 mL").minus("0.10 mL").toString()).toBe("24.30 mL");
    expect(quantity("24.40 mL").plus("0.10 mL").toString()).toBe("24.50 mL");
    expect(sum(["1.10 g", "2.20 g", "3.30 g"]).toString()).toBe("6.60 g");
    expect(sum(["1.10 g", "2.2 g"]).toString()).toBe("3.3 g");
    expect(quantity("24.40 mL").minus("0.1234 mL").toString()).toBe("24.2766 mL");
    expect(quantity("1.00 L").minus("10.00 mL").toString()).toBe("0.99 L");
  });

  it("shows an aliquot in the unit of its flask", () => {
    expect(quantity("10.00 mL").times("25.00 mL").dividedBy("100.0 mL").toString()).toBe("2.5 mL");
    expect(quantity("10 °C").dividedBy("2 K").unit).toBe("");
  });
});

describe("arithmetic with dimensions", () => {
  it("multiplies and divides to the dimension that results", () => {
    const n = quantity("250.0 g").dividedBy("287.54 g/mol");
    expect([n.dimension, n.unit]).toEqual(["amount of substance", "mol"]);
    expect(quantity("4.20 EUR/kg").times("250 g").toString()).toBe("1.05 EUR");
    expect(quantity("2 mol").dividedBy("500 mL").toString()).toBe("4 mol/L");
    expect(quantity("9.00 EUR").dividedBy("2 mol").toString()).toBe("4.5 EUR/mol");
  });

  it("keeps temperatures and temperature differences apart", () => {
    expect(quantity("25 °C").minus("20 °C").dimension).toBe("temperature difference");
    expect(quantity("25 °C").plus("5 Δ°C").toString()).toBe("30 °C");
    expect(quantity("9 Δ°F").to("ΔK").toString()).toBe("5 ΔK");
    expect(quantity("212 °F").to("°C").toString()).toBe("100 °C");
    expect(code(() => quantity("25 °C").plus("5 °C"))).toBe("quantity.wrong-dimension");
    expect(quantity("4.184 J/(g K)").times("100 g").times("5 Δ°C").to("J").toString()).toBe("2092 J");
  });

  it("keeps fractions of mass, volume and amount apart", () => {
    expect(code(() => quantity("5 % w/w").plus("5 % v/v"))).toBe("quantity.wrong-dimension");
    expect(code(() => quantity("5 % w/w").in("% v/v"))).toBe("quantity.wrong-dimension");
    expect(code(() => quantity("5 % w/w").compare("5 % v/v"))).toBe("quantity.wrong-dimension");
    expect(quantity("5 % w/w").compare("5 %")).toBe(0);
    expect(quantity("5 % w/w").in("%").toString()).toBe("5");
    expect(quantity("1").minus("5 % w/w").dimension).toBe("mass fraction");
    expect(quantity("5 % w/w").times("200 g").toString()).toBe("10 g");
    expect(quantity("5 % w/v").to("g/L").toString()).toBe("50 g/L");
  });

  it("refuses what has no meaning, by code", () => {
    expect(code(() => quantity("1 g").plus("1 mL"))).toBe("quantity.wrong-dimension");
    expect(code(() => quantity("1 g").compare("1 mL"))).toBe("quantity.wrong-dimension");
    expect(code(() => quantity("1 g").dividedBy("0 g"))).toBe("quantity.division-by-zero");
    expect(code(() => quantity("1 g").dividedBy(0))).toBe("quantity.division-by-zero");
    expect(code(() => quantity("1 g").times(Number.NaN))).toBe("quantity.not-a-number");
    expect(code(() => quantity("1 g").times(Infinity))).toBe("quantity.not-a-number");
    expect(code(() => quantity("1 g").times(null as never))).toBe("quantity.not-a-quantity");
    expect(code(() => squareRoot("-1"))).toBe("quantity.out-of-range");
    expect(code(() => squareRoot("1 g"))).toBe("quantity.wrong-dimension");
    expect(code(() => naturalLogarithm("0"))).toBe("quantity.out-of-range");
    expect(code(() => exponential("1e9"))).toBe("quantity.out-of-range");
    expect(code(() => quantity("0 g").toThePower(-1))).toBe("quantity.division-by-zero");
    expect(code(() => quantity("2").toThePower(1e9))).toBe("quantity.out-of-range");
    expect(code(() => sum([]))).toBe("quantity.readings");
    expect(code(() => quantity("1 g").in("mol"))).toBe("quantity.wrong-dimension");
  });

  it("compares and chooses", () => {
    expect(quantity("1 kg").compare("999 g")).toBe(1);
    expect(quantity("1 kg").equals("1000 g")).toBe(true);
    expect(minimum(["2 mol", "900 mmol"]).toString()).toBe("900 mmol");
    expect(maximum(["2 mol", "900 mmol"]).toString()).toBe("2 mol");
    const [a, b] = [quantity("1.0(1) g", { label: "a" }), quantity("2.0(3) g", { label: "b" })];
    expect(uncertaintyBudget(minimum([a, b])).map((line) => [line.input, line.share])).toEqual([
      ["a", 1],
      ["b", 0],
    ]);
  });

  it("keeps its words where a new one comes beside them", () => {
    // the label of the caller is what a budget prints (JCGM 100, 8.1: the sources of uncertainty are to be recognised)
    const q = quantity("0.10(1) mol", { label: "my vinegar" });
    expect(quantity(q, { symbol: "n" }).label).toBe("my vinegar");
    expect(q.named({ symbol: "n", label: undefined }).label).toBe("my vinegar");
    expect(uncertaintyBudget(quantity(q, { symbol: "n" }).times(2))[0]?.input).toBe("my vinegar");
    const words = { label: "first" };
    const named = quantity("1 g").named(words);
    words.label = "changed later";
    expect(named.label).toBe("first");
  });

  it("is deeply immutable", () => {
    const q = quantity("12.5(2) g", { label: "jar" });
    expect(Object.isFrozen(q)).toBe(true);
    expect(() => Object.assign(q, { unit: "kg" })).toThrow(TypeError);
    expect(Reflect.ownKeys(q)).toEqual([]);
    const words = { label: "both" };
    const both = sum(["1 g", "2 g"], words);
    words.label = "changed later";
    expect(both.label).toBe("both");
    const line = uncertaintyBudget(q)[0]!;
    (line as { input: string }).input = "other";
    expect(uncertaintyBudget(q)[0]!.input).toBe("jar");
  });

  it("understands quantities of another loaded copy", () => {
    // Another copy shares nothing but the symbol registry: same brand, other class.
    const own = quantity("2.0(1) g");
    const brand = Symbol.for("preparative.quantity/1");
    const foreign = Object.create(null) as Quantity;
    Object.defineProperty(foreign, brand, { value: (own as unknown as Record<symbol, unknown>)[brand] });
    expect(quantity("1 g").plus(foreign).toString()).toBe("3.00 ± 0.10 g");
    expect(own.minus(foreign).standardUncertainty!.toString()).toBe("0");
  });

  it("stops runaway growth with a code instead of hanging", () => {
    expect(
      code(() => {
        let x: Quantity = quantity("1.5");
        for (let i = 0; i < 100; i++) x = x.times(x);
      }),
    ).toBe("quantity.out-of-range");
    expect(
      code(() => {
        let x: Quantity = quantity("1 g");
        for (let i = 0; i < 100; i++) x = x.times("2 g");
      }),
    ).toBe("quantity.out-of-range");
  });

  it("visits a shared node once, however often it is used", () => {
    let x: Quantity = quantity("1.0(1)", { symbol: "x" });
    for (let i = 0; i < 60; i++) x = x.plus(x).dividedBy(2); // 2^60 paths from the result to x
    expect(x.toString()).toBe("1.00 ± 0.10");
    expect(explain(x).steps.length).toBeLessThanOrEqual(60);
  });

  it("walks a chain of 20 000 operations without recursion", () => {
    let x: Quantity = quantity("1.0(1) g");
    for (let i = 0; i < 20_000; i++) x = x.plus("1 g");
    expect(x.standardUncertainty!.toString()).toBe("0.1");
    expect(explain(x).result).toContain("20001.00 g");
  });

  it("takes functions that are not built in", () => {
    const y = applyFunction(["3.0(1) g"], {
      name: "square",
      unit: "g2",
      value: ([x]) => x!.times(x!),
      partials: ([x]) => [x!.times(2)],
    });
    expect(y.toString()).toBe("9.00 ± 0.60 g2");
    expect(code(() => applyFunction(["3 g"], { name: "f", unit: "g", value: () => 1, partials: () => [] }))).toBe(
      "quantity.not-a-number",
    );
  });
});

// JCGM 100:2008, 4.3.10: what is stated beside the readings counts to the extent that their scatter does not show it; 5.2.2,
// note 1: inputs that are fully correlated add up linearly, so that the mean of ten readings on one instrument keeps its u.
describe("figures next to a power of ten", () => {
  it("have the exponent of their digits, however close they are and however long their fraction is", () => {
    for (let k = -40; k <= 40; k += 1) {
      const ten = quantity(`1e${k}`).dividedBy("7").times("7");
      const [below, above] = [ten.times("0.99999999999999999999"), ten.times("1.00000000000000000001")];
      expect(below.value.toExponential()).toBe(`9.9999999999999999999e${k > 0 ? "+" : ""}${k - 1}`);
      expect(ten.value.toExponential()).toBe(`1e${k < 0 ? "" : "+"}${k}`);
      expect(above.value.toExponential()).toBe(`1.00000000000000000001e${k < 0 ? "" : "+"}${k}`);
      expect(below.format({ significant: 3 })).toBe(ten.format({ significant: 3 }));
    }
  });
});

describe("the uncertainty of a long product", () => {
  it("is the root of the sum of squares, to the last of 40 digits that is not rounded", () => {
    // each factor is 1.001 with u = 0.001: u(product) / product = sqrt(n) × 0.001 / 1.001 (JCGM 100:2008, 5.1.6)
    for (const n of [1, 9, 64, 144]) {
      const factors = Array.from({ length: n }, () => quantity("1.001(1)"));
      const product = factors.reduce<Quantity>((all, one) => all.times(one), quantity("1"));
      const relative = product.standardUncertainty!.div(product.value).times("1.001").div(Math.sqrt(n)).minus("0.001");
      expect(relative.abs().lessThan("1e-40")).toBe(true);
    }
  });

  it("shares its parts out to exactly as much as there is, and cancels what is the same input", () => {
    const factors = Array.from({ length: 60 }, (_, i) => quantity(`${1 + i / 997}`.slice(0, 12).concat("(3)")));
    const product = factors.reduce((all, one) => all.times(one));
    const shares = uncertaintyBudget(product).map(({ share }) => share);
    expect(shares.length).toBe(60);
    expect(shares.reduce((a, b) => a + b)).toBeCloseTo(1, 14);
    expect(product.minus(product.times("2").dividedBy("2")).standardUncertainty!.toString()).toBe("0");
  });
});

describe("readings that state an uncertainty", () => {
  it("have it in their mean, beside the scatter", () => {
    // s/√2 of 10.01 and 10.03 is 0.01; √(0.01² + 0.5²)
    const mean = meanOfReadings(["10.01 ± 0.5 mL", "10.03 ± 0.5 mL"]);
    expect(mean.standardUncertainty!.toNumber()).toBeCloseTo(Math.hypot(0.01, 0.5), 12);
    expect(mean.in("mL").toString()).toBe("10.02");
    const agreeing = meanOfReadings(["5.00 ± 0.03 g", "5.00 ± 0.03 g", "5.00 ± 0.03 g"]);
    expect(agreeing.standardUncertainty!.toString()).toBe("0.03");
    expect(effectiveDegreesOfFreedom(agreeing)).toBe(Infinity);
    expect(meanOfReadings(["20.0(2) °C", "20.0(2) °C"]).standardUncertainty!.toString()).toBe("0.2");
    expect(meanOfReadings(["5.00(2) g", "5.00(4) g"]).standardUncertainty!.toString()).toBe("0.03");
  });

  it("keep it in joint readings too, together with their correlation", () => {
    const { a, b } = meansOfPairedReadings({
      a: ["1.0(3) g", "1.2(3) g", "1.1(3) g"],
      b: ["2.0(4) g", "1.8(4) g", "1.9(4) g"],
    });
    // the scatter of the sum cancels, the two stated ones do not: √(0.3² + 0.4²)
    expect(a!.plus(b!).standardUncertainty!.toNumber()).toBeCloseTo(0.5, 12);
    expect(a!.symbol).toBe("a");
  });
});

describe("temperatures and their differences", () => {
  it("an energy over a heat capacity is a difference", () => {
    // 3.14 kJ / (0.5 kJ/K) = 6.28 K: a rise, 6.28 degrees on the Celsius scale, and no point near absolute zero
    const rise = quantity("3.14 kJ").dividedBy("0.5 kJ/K");
    expect([rise.dimension, rise.toString()]).toEqual(["temperature difference", "6.28 ΔK"]);
    expect(quantity("20 °C").plus(rise).to("°C").format({ decimals: 2 })).toBe("26.28 °C");
    expect(() => rise.to("°C")).toThrow(expect.objectContaining({ code: "quantity.wrong-dimension" }));
  });

  it("a difference stays one when it is multiplied, divided, raised to the first power or found as a root", () => {
    for (const q of [
      quantity("5 ΔK").times(quantity("2")),
      quantity("2").times("5 ΔK"),
      quantity("5 ΔK").dividedBy(quantity("2")),
      quantity("5 ΔK").toThePower(1),
      squareRoot(quantity("5 ΔK").times("5 ΔK")),
      quantity("3 ΔK").times(2),
    ])
      expect(q.dimension).toBe("temperature difference");
  });

  it("a temperature times or over a number stays on the scale, in kelvin", () => {
    expect(quantity("300 K").times(quantity("2")).toString()).toBe("600 K");
    expect(quantity("2").times("300 K").toString()).toBe("600 K");
    expect(quantity("300 K").dividedBy(quantity("2")).toString()).toBe("150 K");
    expect(quantity("300 K").toThePower(1).dimension).toBe("temperature");
  });
});

